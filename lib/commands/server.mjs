import { spawn } from 'node:child_process';
import { createServer } from 'node:net';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { root, StepFailure, track } from './steps.mjs';

/**
 * Whether nobody listens there yet.
 *
 * @param {string} host
 * @param {number} port 0 for any free one
 * @returns {Promise<{ free: true, port: number } | { free: false, code: string }>}
 */
export function tryPort(host, port) {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      resolve({ free: false, code: error.code ?? 'unknown' });
    });
    probe.listen(port, host, () => {
      const address = probe.address();
      const taken = typeof address === 'object' && address !== null ? address.port : port;
      probe.close(() => resolve({ free: true, port: taken }));
    });
  });
}

/**
 * @param {string} address
 * @returns {Promise<boolean>}
 */
async function answers(address) {
  try {
    const response = await fetch(address, { redirect: 'manual' });
    await response.arrayBuffer();
    return response.status < 500;
  } catch {
    return false;
  }
}

/**
 * Serves a finished build until `stop` is called.
 *
 * @param {{
 *   buildFolder: string, dataFolder: string, mode: 'demo' | 'school',
 *   host: string, port: number, env?: Record<string, string>,
 * }} options
 * @returns {Promise<{ address: string, stop: () => Promise<void>, ended: Promise<number | null>, output: () => string }>}
 * @throws {StepFailure} when it ends before it answers
 */
export async function serve({ buildFolder, dataFolder, mode, host, port, env = {} }) {
  const server = path.join(root, 'lib/commands/web-server.mjs');
  const child = spawn(process.execPath, [server, host, String(port)], {
    cwd: root,
    env: {
      ...process.env,
      NODE_ENV: 'production',
      NEXT_TELEMETRY_DISABLED: '1',
      DUSKBENCH_BUILD: buildFolder,
      DUSKBENCH_DATA: dataFolder,
      DUSKBENCH_SCHOOL: mode === 'school' ? '1' : '0',
      ...env,
    },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  track(child);
  let ready = false;
  let output = '';
  const keep = (/** @type {Buffer} */ chunk) => {
    output += chunk.toString();
    // Until it answers it only introduces itself; after that, what it says is a report of trouble.
    if (ready) process.stderr.write(chunk);
  };
  child.stdout.on('data', keep);
  child.stderr.on('data', keep);
  /** @type {Promise<number | null>} */
  const ended = new Promise((resolve) => child.once('exit', (code) => resolve(code)));
  const reachable = host === '0.0.0.0' || host === '::' ? '127.0.0.1' : host;
  const address = `http://${reachable.includes(':') ? `[${reachable}]` : reachable}:${port}`;

  const stop = async () => {
    ready = false;
    child.kill('SIGTERM');
    await ended;
  };
  while (!(await answers(address))) {
    if (child.exitCode !== null || child.signalCode !== null) {
      throw new StepFailure('The server ended before it could answer.', output.trimEnd());
    }
    await pause(100);
  }
  ready = true;
  return { address, stop, ended, output: () => output };
}
