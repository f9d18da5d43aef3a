import { ensureGenerated } from './build.mjs';
import { dataFolderFor, prepareData } from './data-folder.mjs';
import { ensureInstalled } from './install.mjs';
import { runPackage, showFailure } from './steps.mjs';

/**
 * `npm run dev`: the demonstration's data and a server that follows every change of the sources.
 *
 * @returns {Promise<number>} the exit code
 */
export async function startDevelopment() {
  // Ctrl-C reaches the server too, which then ends by itself.
  process.on('SIGINT', () => undefined);
  try {
    await ensureInstalled();
    await ensureGenerated();
    const dataFolder = dataFolderFor('demo');
    await prepareData('demo', dataFolder);
    const port = process.env['PORT'] ?? '3000';
    await runPackage('next/dist/bin/next', ['dev', '-H', '127.0.0.1', '-p', port], {
      env: { DUSKBENCH_DATA: dataFolder },
      show: true,
    });
    return 0;
  } catch (error) {
    showFailure(error);
    return 1;
  }
}
