import { createServer } from 'node:net';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { isSupportedNode } from './node-version.mjs';
import { tryPort } from './server.mjs';
import { parseCommandLine } from './start-product.mjs';

afterEach(() => {
  vi.unstubAllEnvs();
});

describe('the versions of Node', () => {
  test.each(['20.19.0', '20.20.2', '22.13.0', '24.0.0', '26.1.0'])('%s is accepted', (version) => {
    expect(isSupportedNode(version)).toBe(true);
  });
  test.each(['18.20.8', '20.18.3', '21.7.3', '22.12.0', '23.11.0'])('%s is refused', (version) => {
    expect(isSupportedNode(version)).toBe(false);
  });
});

describe('the command line of the start command', () => {
  test('serves the demonstration to this computer alone unless told otherwise', () => {
    expect(parseCommandLine([])).toEqual({ mode: 'demo', port: 3000, host: '127.0.0.1' });
  });
  test('serves a class to every address', () => {
    expect(parseCommandLine(['--school'])).toEqual({ mode: 'school', port: 3000, host: '0.0.0.0' });
  });
  test('takes port and address from the environment, the port on the line first', () => {
    vi.stubEnv('PORT', '4000');
    vi.stubEnv('HOST', '192.0.2.7');
    expect(parseCommandLine([])).toMatchObject({ port: 4000, host: '192.0.2.7' });
    expect(parseCommandLine(['--port', '5000'])).toMatchObject({ port: 5000 });
  });
  test.each(['0', '65536', '-1', '80a', '3000.5', ''])('says that "%s" is no port', (port) => {
    expect(() => parseCommandLine([`--port=${port}`])).toThrow('is no port');
  });
  test('names an option that it does not know', () => {
    expect(() => parseCommandLine(['--scool'])).toThrow("Unknown option '--scool'");
  });
});

test('a port that somebody listens on is told apart from a free one', async () => {
  const free = await tryPort('127.0.0.1', 0);
  if (!free.free) throw new Error(free.code);
  const other = createServer();
  await new Promise<void>((resolve) => other.listen(free.port, '127.0.0.1', resolve));
  expect(await tryPort('127.0.0.1', free.port)).toEqual({ free: false, code: 'EADDRINUSE' });
  await new Promise((resolve) => other.close(resolve));
  expect(await tryPort('127.0.0.1', free.port)).toEqual({ free: true, port: free.port });
});
