import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { ensureMigrated } from './migrations.mjs';
import { parseJson, root, runTypeScript, step, StepFailure } from './steps.mjs';

/** @typedef {'demo' | 'school'} Mode */
/**
 * @typedef {{
 *   signIns: { label: string, where: string, fields: Record<string, string> }[],
 *   firstTeacherToken: string | null,
 * }} SeedReport
 */

/**
 * Where the database and the secret beside it are kept.
 *
 * @param {Mode} mode
 */
export const dataFolderFor = (mode) =>
  path.resolve(root, process.env['DUSKBENCH_DATA'] ?? `data/${mode}`);

/**
 * The last line of the seed's output, which is JSON.
 *
 * @param {string} output
 * @returns {SeedReport}
 */
function parseReport(output) {
  const lastLine = output.trimEnd().split('\n').at(-1) ?? '';
  try {
    return /** @type {SeedReport} */ (parseJson(lastLine));
  } catch {
    throw new StepFailure(
      'The data folder was prepared, but its report could not be read.',
      output,
    );
  }
}

/**
 * Creates the data folder or brings it up to date: migrations, places and, in demo mode, the demo
 * class. Does nothing to what is there already.
 *
 * @param {Mode} mode
 * @param {string} folder absolute
 * @returns {Promise<SeedReport>}
 */
export async function prepareData(mode, folder) {
  mkdirSync(folder, { recursive: true, mode: 0o700 });
  const env = { DUSKBENCH_DATA: folder, DUSKBENCH_SCHOOL: mode === 'school' ? '1' : '0' };
  await ensureMigrated(folder);
  return step(
    mode === 'demo' ? 'Filling in places and the demo class' : 'Filling in places',
    async () => parseReport(await seed(env)),
  );
}

/** @param {Record<string, string>} env */
async function seed(env) {
  try {
    return await runTypeScript('prisma/seed.ts', [], { env });
  } catch (error) {
    if (!(error instanceof StepFailure) || error.output === '') throw error;
    throw new StepFailure('The data folder could not be made ready.', error.output);
  }
}
