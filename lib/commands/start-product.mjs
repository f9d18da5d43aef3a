import { networkInterfaces } from 'node:os';
import { parseArgs } from 'node:util';
import { ensureBuilt, ensureGenerated } from './build.mjs';
import { dataFolderFor, prepareData } from './data-folder.mjs';
import { ensureInstalled } from './install.mjs';
import { serve, tryPort } from './server.mjs';
import { showFailure, step, StepFailure, stopAll } from './steps.mjs';

const help = `Usage: npm start [-- options]

Without options: the demonstration, for this computer alone, with an invented class.

  --school        serve a real class on the local network: data of its own, no demo accounts
  --port NUMBER   the port (also PORT=NUMBER), 3000 unless given
  --help          this text

Environment
  PORT            the port
  HOST            the address to listen on (127.0.0.1; with --school every address)
  DUSKBENCH_DATA  the folder of the database (data/demo; with --school data/school)
  DUSKBENCH_PUBLIC_URL     the address people use when a reverse proxy stands in front,
                           such as https://dusk.example.org
  DUSKBENCH_TRUST_PROXY=1  believe the proxy's X-Forwarded-For (only behind one of your own)
`;

const buildFolder = '.next-start';

/**
 * @param {string[]} args
 * @returns {{ mode: 'demo' | 'school', port: number, host: string } | 'help'}
 * @throws {StepFailure} when they make no sense
 */
export function parseCommandLine(args) {
  /** @type {{ school?: boolean, port?: string, help?: boolean }} */
  let values;
  try {
    ({ values } = parseArgs({
      args,
      options: {
        school: { type: 'boolean' },
        port: { type: 'string' },
        help: { type: 'boolean', short: 'h' },
      },
    }));
  } catch (error) {
    throw new StepFailure(`${error instanceof Error ? error.message : String(error)}\n\n${help}`);
  }
  if (values.help === true) return 'help';
  const portText = values.port ?? process.env['PORT'] ?? '3000';
  const port = Number(portText);
  if (!/^\d+$/.test(portText) || port < 1 || port > 65_535) {
    throw new StepFailure(`"${portText}" is no port: give a whole number from 1 to 65535.`);
  }
  const school = values.school === true;
  const host = process.env['HOST'] ?? (school ? '0.0.0.0' : '127.0.0.1');
  return { mode: school ? 'school' : 'demo', port, host };
}

/**
 * @param {string} host
 * @param {number} port
 */
async function requireFreePort(host, port) {
  const found = await tryPort(host, port);
  if (found.free) return;
  if (found.code === 'EADDRINUSE') {
    throw new StepFailure(
      `Port ${port} is taken, perhaps by Duskbench itself: look at http://127.0.0.1:${port}. ` +
        `To use another: PORT=${port + 1} npm start (or: npm start -- --port ${port + 1}).`,
    );
  }
  if (found.code === 'EACCES') {
    throw new StepFailure(
      `This computer does not let you serve on port ${port}: take one above 1023.`,
    );
  }
  throw new StepFailure(
    `Cannot listen on ${host}, port ${port} (${found.code}). Check HOST and PORT.`,
  );
}

/** This computer's IPv4 addresses on the networks it is part of. */
const networkAddresses = () =>
  Object.values(networkInterfaces())
    .flatMap((addresses) => addresses ?? [])
    .filter(({ family, internal }) => family === 'IPv4' && !internal)
    .map(({ address }) => address);

/** @param {import('./data-folder.mjs').SeedReport} report */
function printDemo({ signIns }) {
  console.log('\nDemo sign-ins (an invented class):');
  for (const { label, where, fields } of signIns) {
    const values = Object.entries(fields).map(([name, value]) => `${name} ${value}`);
    console.log(`  ${label}, at ${where}\n    ${values.join(' · ')}`);
  }
}

/**
 * @param {import('./data-folder.mjs').SeedReport} report
 * @param {{ host: string, port: number }} listening
 */
async function printSchool({ firstTeacherToken }, { host, port }) {
  const everywhere = host === '0.0.0.0' || host === '::';
  const hosts = everywhere ? networkAddresses() : [host];
  const addresses =
    process.env['DUSKBENCH_PUBLIC_URL'] === undefined
      ? hosts.map((name) => `http://${name}:${port}`)
      : [process.env['DUSKBENCH_PUBLIC_URL']];
  const [first] = addresses;
  if (first === undefined) {
    console.log('\nThis computer is on no network: students cannot reach it yet.');
  } else {
    const { default: qrcode } = await import('qrcode');
    console.log(`\nFor students: ${addresses.join('  or  ')}\n`);
    console.log(await qrcode.toString(first, { type: 'terminal', small: true }));
  }
  if (firstTeacherToken !== null) {
    console.log(
      'There is no teacher yet. Open /first-teacher and enter this token, good for one use:',
    );
    console.log(`\n  ${firstTeacherToken}\n`);
  }
}

/**
 * `npm start`: everything from a fresh clone to a page in the browser.
 *
 * @param {string[]} args
 * @returns {Promise<number>} the exit code
 */
export async function startProduct(args) {
  const state = {
    /** @type {{ stop: () => Promise<void>, ended: Promise<number | null> } | null} */
    server: null,
    stopped: false,
  };
  const stop = () => {
    if (state.stopped) return;
    state.stopped = true;
    stopAll();
    void state.server?.stop();
  };
  process.on('SIGINT', stop);
  process.on('SIGTERM', stop);
  try {
    const command = parseCommandLine(args);
    if (command === 'help') {
      console.log(help);
      return 0;
    }
    const { mode, port, host } = command;
    console.log(mode === 'demo' ? 'Duskbench, demonstration' : 'Duskbench, for a class');
    await requireFreePort(host, port);
    await ensureInstalled();
    await ensureGenerated();
    const dataFolder = dataFolderFor(mode);
    const report = await prepareData(mode, dataFolder);
    await ensureBuilt(buildFolder);
    const server = await step('Starting the server', () =>
      serve({ buildFolder, dataFolder, mode, host, port }),
    );
    state.server = server;
    console.log(`\nDuskbench is at http://${host === '0.0.0.0' ? '127.0.0.1' : host}:${port}`);
    if (mode === 'demo') printDemo(report);
    else await printSchool(report, { host, port });
    console.log(`\nData: ${dataFolder}\nCtrl-C stops it.`);
    const code = await server.ended;
    if (state.stopped) {
      console.log('\nStopped. Nothing is lost: npm start goes on from here.');
      return 0;
    }
    throw new StepFailure(`The server ended by itself with code ${String(code)}.`);
  } catch (error) {
    if (state.stopped) {
      console.log('\nStopped.');
      return 130;
    }
    showFailure(error);
    return 1;
  }
}
