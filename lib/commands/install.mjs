import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { parseJson, root, run, step, StepFailure } from './steps.mjs';

/**
 * @typedef {{ version?: string, optional?: boolean, devOptional?: boolean, peer?: boolean, link?: boolean }} LockedPackage
 */

/**
 * @param {string} file
 * @returns {Map<string, LockedPackage>}
 */
function lockedPackages(file) {
  const lock = /** @type {{ packages: Record<string, LockedPackage> }} */ (
    parseJson(readFileSync(file, 'utf8'))
  );
  return new Map(Object.entries(lock.packages).filter(([where]) => where !== ''));
}

/** Whether node_modules holds what package-lock.json asks for, whoever put it there. */
function isInstalled() {
  const installedLock = path.join(root, 'node_modules/.package-lock.json');
  if (!existsSync(installedLock)) return false;
  const wanted = lockedPackages(path.join(root, 'package-lock.json'));
  const installed = lockedPackages(installedLock);
  for (const [where, { version, optional, devOptional, peer }] of wanted) {
    const there = installed.get(where);
    if (there === undefined) {
      if (optional !== true && devOptional !== true && peer !== true) return false;
    } else if (there.version !== version) return false;
  }
  return true;
}

/** Runs npm: the one that started this process if there is one, else the one on the PATH. */
const npm = (/** @type {string[]} */ ...args) => {
  const started = process.env['npm_execpath'];
  return started?.endsWith('.js') === true
    ? run(process.execPath, [started, ...args])
    : run('npm', args);
};

/** Loads the database driver in a process of its own: a driver for another Node can crash it. */
async function driverLoads() {
  try {
    await run(process.execPath, ['-e', "new (require('better-sqlite3'))(':memory:').close()"]);
    return true;
  } catch {
    return false;
  }
}

/**
 * Installs the packages if they are missing or other than the lockfile says. No package may run
 * scripts of its own except the database driver, which has to be fetched or compiled.
 */
export async function ensureInstalled() {
  if (!isInstalled()) {
    await step('Installing packages', () =>
      npm('ci', '--ignore-scripts', '--no-audit', '--no-fund'),
    );
  }
  if (await driverLoads()) return;
  await step('Preparing the database driver (compiling it can take two minutes)', async () => {
    try {
      await npm('rebuild', 'better-sqlite3');
    } catch (error) {
      const output = error instanceof StepFailure ? error.output : String(error);
      throw new StepFailure(
        'The database driver could not be compiled. It needs Python 3, make and a C++ compiler ' +
          '(on Debian: apt-get install python3 make g++).',
        output,
      );
    }
    if (!(await driverLoads())) {
      throw new StepFailure(
        'The database driver does not load. Delete the node_modules folder and run the command again.',
      );
    }
  });
}
