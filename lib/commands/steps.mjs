import { spawn } from 'node:child_process';
import path from 'node:path';

export const root = path.resolve(import.meta.dirname, '../..');

/** A step that failed, with what to tell the person in front of the terminal. */
export class StepFailure extends Error {
  /**
   * @param {string} message what went wrong, in a sentence
   * @param {string} [output] the last lines the program wrote
   */
  constructor(message, output = '') {
    super(message);
    this.name = 'StepFailure';
    this.output = output;
  }
}

/**
 * JSON of a file or a program of our own, to be given its type by the caller.
 *
 * @param {string} text
 * @returns {unknown}
 */
export const parseJson = (text) => JSON.parse(text);

/** @type {Set<import('node:child_process').ChildProcess>} */
const running = new Set();
let stopping = false;

/**
 * Makes sure that {@link stopAll} ends the process too.
 *
 * @param {import('node:child_process').ChildProcess} child
 */
export function track(child) {
  running.add(child);
  child.once('exit', () => running.delete(child));
}

/** Ends whatever runs. The processes get the signal and the time they need. */
export function stopAll() {
  stopping = true;
  for (const child of running) child.kill('SIGTERM');
}

/**
 * Runs a program in the project's folder and returns what it wrote on its standard output.
 *
 * @param {string} program
 * @param {string[]} args
 * @param {{ env?: Record<string, string>, show?: boolean }} [options] `show` lets the output through
 * @returns {Promise<string>}
 * @throws {StepFailure} when the program fails; its last lines are kept
 */
export function run(program, args, { env = {}, show = false } = {}) {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, {
      cwd: root,
      env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1', ...env },
      stdio: show ? 'inherit' : ['ignore', 'pipe', 'pipe'],
      shell: process.platform === 'win32' && program === 'npm',
    });
    track(child);
    let out = '';
    let all = '';
    child.stdout?.on('data', (/** @type {Buffer} */ chunk) => {
      out += chunk.toString();
      all += chunk.toString();
    });
    child.stderr?.on('data', (/** @type {Buffer} */ chunk) => (all += chunk.toString()));
    child.on('error', (cause) => {
      reject(new StepFailure(`Could not run ${program}: ${cause.message}.`));
    });
    child.on('close', (code, signal) => {
      if (code === 0) resolve(out);
      else if (stopping || signal === 'SIGINT') reject(new StepFailure('Stopped.'));
      else {
        const lastLines = all.trimEnd().split('\n').slice(-40).join('\n');
        reject(
          new StepFailure(`${path.basename(program)} ended with code ${String(code)}.`, lastLines),
        );
      }
    });
  });
}

/**
 * Runs a program written for Node out of the installed packages.
 *
 * @param {string} file below node_modules
 * @param {string[]} args
 * @param {{ env?: Record<string, string>, show?: boolean }} [options]
 */
export const runPackage = (file, args, options) =>
  run(process.execPath, [path.join(root, 'node_modules', file), ...args], options);

/**
 * Runs one of the project's own TypeScript files. The condition is the one under which the server's
 * modules load: without it `server-only` refuses them.
 *
 * @param {string} file relative to the project
 * @param {string[]} [args]
 * @param {{ env?: Record<string, string>, show?: boolean }} [options]
 */
export const runTypeScript = (file, args = [], options = {}) =>
  run(
    process.execPath,
    ['--conditions=react-server', '--import', 'tsx', path.join(root, file), ...args],
    options,
  );

/** @param {number} startedAt from performance.now() */
const seconds = (startedAt) => `${((performance.now() - startedAt) / 1000).toFixed(1)} s`;

/**
 * Does one step and shows that it is under way, how long it has taken, and how it ended.
 *
 * @template T
 * @param {string} title
 * @param {() => Promise<T>} work
 * @param {{ quiet?: boolean }} [options] `quiet` for a step that shows its own output
 * @returns {Promise<T>}
 */
export async function step(title, work, { quiet = false } = {}) {
  const startedAt = performance.now();
  const live = process.stdout.isTTY && !quiet;
  if (live) process.stdout.write(`  … ${title}`);
  else console.log(`  … ${title}`);
  const timer = setInterval(
    () => {
      if (live) process.stdout.write(`\r  … ${title} (${seconds(startedAt)})`);
      else if (!quiet) console.log(`    still at it (${seconds(startedAt)})`);
    },
    live ? 1000 : 30_000,
  );
  const start = live ? '\r\u001b[K' : '';
  try {
    const result = await work();
    console.log(`${start}  ✓ ${title} (${seconds(startedAt)})`);
    return result;
  } catch (error) {
    console.log(`${start}  ✗ ${title} (${seconds(startedAt)})`);
    throw error;
  } finally {
    clearInterval(timer);
  }
}

/**
 * Shows a failure to a person: a sentence and the program's last lines, no stack trace of ours.
 *
 * @param {unknown} error
 */
export function showFailure(error) {
  if (!(error instanceof StepFailure)) {
    console.error(error);
    return;
  }
  if (error.output !== '') console.error(`\n${error.output}`);
  console.error(`\n${error.message}`);
}
