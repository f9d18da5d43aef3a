import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { ensureBuilt, ensureGenerated } from '../../lib/commands/build.mjs';
import { prepareData } from '../../lib/commands/data-folder.mjs';
import { testBuildFolder } from '../../lib/commands/test-product.mjs';
import { seededFolderVariable, signInsVariable } from './product';

/**
 * Once before all browser tests: a production build, and one data folder with migrations, places
 * and the demo class, which every worker copies.
 */
export default async function prepareProduct(): Promise<() => void> {
  await ensureGenerated();
  await ensureBuilt(testBuildFolder);
  const folder = mkdtempSync(path.join(tmpdir(), 'duskbench-seed-'));
  const report = await prepareData('demo', folder);
  process.env[seededFolderVariable] = folder;
  process.env[signInsVariable] = JSON.stringify(report.signIns);
  return () => {
    rmSync(folder, { recursive: true, force: true });
  };
}
