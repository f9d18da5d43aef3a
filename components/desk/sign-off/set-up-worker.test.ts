import { afterEach, expect, test, vi } from 'vitest';
import { removeWorker, setUpWorker } from './set-up-worker';

afterEach(() => {
  vi.unstubAllGlobals();
});

const registers = (registration: object) =>
  vi.stubGlobal('navigator', { serviceWorker: { register: () => Promise.resolve(registration) } });

test.each([true, false])('a worker that was there before is asked: %s', async (kept) => {
  const active = { postMessage: (_: string, [port]: [MessagePort]) => port.postMessage(kept) };
  registers({ installing: null, waiting: null, active });
  expect(await setUpWorker('class')).toBe(kept);
});

test.each([
  ['activated', true],
  ['redundant', false],
] as const)('a new worker that ends %s is waited for', async (state, kept) => {
  const worker = Object.assign(new EventTarget(), { state: 'installing' });
  registers({ installing: worker, waiting: null, active: null });
  const answer = setUpWorker('class');
  // Not before it has been registered.
  await Promise.resolve();
  worker.state = state;
  worker.dispatchEvent(new Event('statechange'));
  expect(await answer).toBe(kept);
});

test('once nothing is kept our worker goes with its cache, and nobody else’s', async () => {
  const gone: string[] = [];
  const at = (path: string) => ({
    active: { scriptURL: `https://school.example${path}` },
    waiting: null,
    installing: null,
    unregister: () => Promise.resolve(gone.push(path)),
  });
  const getRegistrations = () => Promise.resolve([at('/outside-worker.js'), at('/other.js')]);
  vi.stubGlobal('navigator', { serviceWorker: { getRegistrations } });
  vi.stubGlobal('window', { caches: { delete: (name: string) => gone.push(name) } });
  await removeWorker();
  expect(gone).toEqual(['/outside-worker.js', 'duskbench-outside']);
});

test('where a browser allows no worker there is none to take away', async () => {
  vi.stubGlobal('navigator', {});
  await expect(removeWorker()).resolves.toBeUndefined();
});
