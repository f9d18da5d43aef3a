import { accessSync, constants } from 'node:fs';
import path from 'node:path';
import { run, step, StepFailure } from './steps.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const usualPlaces = [
  '/usr/bin/chromium',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** @param {string} file */
function isProgram(file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * The Chromium that tests and pictures are made with: CHROMIUM if it is set, else the first found.
 *
 * @returns {string | null}
 */
export function findChromium() {
  const given = process.env['CHROMIUM'];
  if (given !== undefined && given !== '') return isProgram(given) ? given : null;
  const onPath = (process.env['PATH'] ?? '')
    .split(path.delimiter)
    .filter((folder) => folder !== '')
    .flatMap((folder) => names.map((name) => path.join(folder, name)));
  return [...onPath, ...usualPlaces].find(isProgram) ?? null;
}

/**
 * Finds the browser, installs it where that can be done without asking, or says what to do.
 *
 * @returns {Promise<string>}
 * @throws {StepFailure}
 */
export async function requireChromium() {
  const given = process.env['CHROMIUM'];
  if (given !== undefined && given !== '' && !isProgram(given)) {
    throw new StepFailure(`CHROMIUM names ${given}, which is no program that can be run.`);
  }
  const found = findChromium();
  if (found !== null) return found;
  if (process.getuid?.() === 0 && isProgram('/usr/bin/apt-get')) {
    await step('Installing a browser for the tests (Debian package chromium)', async () => {
      await run('apt-get', ['update', '-q']);
      await run('apt-get', ['install', '-y', '-q', '--no-install-recommends', 'chromium'], {
        env: { DEBIAN_FRONTEND: 'noninteractive' },
      });
    });
    const installed = findChromium();
    if (installed !== null) return installed;
  }
  throw new StepFailure(
    'The browser tests need Chromium, and none was found. Install it (on Debian: ' +
      'sudo apt-get install chromium) or set CHROMIUM to the path of the program, then run npm test again.',
  );
}

/**
 * What Chromium is started with: it looks up nothing outside, and draws 3D in software so that
 * every machine shows the same.
 */
export const chromiumArguments = [
  '--no-sandbox',
  '--no-first-run',
  '--disable-quic',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
];
