import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { packAssets } from './packed-assets.mjs';
import { root, runPackage, step } from './steps.mjs';

/** What a build is made from. Tests and commands are no part of it. */
const sources = [
  'app',
  'components',
  'content',
  'lib',
  'prisma/schema.prisma',
  'public',
  'proxy.ts',
  'next.config.ts',
  'tsconfig.json',
  'package-lock.json',
  '.config/postcssrc.json',
  '.config/tsconfig.base.json',
];
const notSources = /(\.test\.tsx?$)|(^lib[\\/]commands[\\/])|(^content[\\/]screenshots[\\/])/;

/**
 * @param {string} relative
 * @returns {string[]}
 */
function filesBelow(relative) {
  const absolute = path.join(root, relative);
  if (!existsSync(absolute)) return [];
  const entries = readdirSync(path.dirname(absolute), { withFileTypes: true });
  const isFolder = entries.find((entry) => entry.name === path.basename(absolute))?.isDirectory();
  if (isFolder !== true) return [relative];
  return readdirSync(absolute, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)))
    .filter((file) => !notSources.test(file))
    .sort();
}

/**
 * A fingerprint of the content and the names of the given files and folders.
 *
 * @param {string[]} filesAndFolders relative to the project
 */
export function fingerprint(filesAndFolders) {
  const hash = createHash('sha256');
  for (const file of filesAndFolders.flatMap(filesBelow)) {
    hash
      .update(file)
      .update('\0')
      .update(readFileSync(path.join(root, file)))
      .update('\0');
  }
  return hash.digest('hex');
}

/**
 * Does the work if the fingerprint differs from the one kept from last time.
 *
 * @param {string} keptIn a file
 * @param {string} current
 * @param {() => Promise<void>} work
 */
async function unlessUnchanged(keptIn, current, work) {
  if (existsSync(keptIn) && readFileSync(keptIn, 'utf8') === current) return;
  await work();
  mkdirSync(path.dirname(keptIn), { recursive: true });
  writeFileSync(keptIn, current);
}

/** Writes the database client from the schema, when the schema or Prisma changed. */
export function ensureGenerated() {
  const keptIn = path.join(root, 'node_modules/.cache/duskbench/schema');
  if (!existsSync(path.join(root, 'lib/data/generated'))) rmSync(keptIn, { force: true });
  return unlessUnchanged(keptIn, fingerprint(['prisma/schema.prisma', 'package-lock.json']), () =>
    step('Writing the database client', async () => {
      await runPackage('prisma/build/index.js', ['generate', '--config', '.config/prisma.ts']);
    }),
  );
}

/**
 * Builds the product into its folder, when any source changed since it was last built there.
 *
 * @param {string} buildFolder relative to the project
 */
export function ensureBuilt(buildFolder) {
  return unlessUnchanged(path.join(root, buildFolder, 'built-from'), fingerprint(sources), () =>
    step('Building the pages (about a minute)', async () => {
      await runPackage('next/dist/bin/next', ['build'], { env: { DUSKBENCH_BUILD: buildFolder } });
      await packAssets(path.join(root, buildFolder, 'static'));
    }),
  );
}
