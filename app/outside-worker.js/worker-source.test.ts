import { createHash, webcrypto } from 'node:crypto';
import { describe, expect, it, test } from 'vitest';
import { workerSource } from './worker-source';

type Port = { postMessage: (answer: unknown) => void };
type WorkerEvent = {
  waitUntil: (work: Promise<unknown>) => void;
  request?: { method: string; mode: string; url: string };
  respondWith?: (answer: Promise<Response>) => void;
  data?: unknown;
  ports?: readonly Port[];
};
type Handler = (event: WorkerEvent) => void;
const site = 'https://school.example';

type Network = (asked: { url: string }, init?: RequestInit) => Promise<Response>;
const nameOf = (asked: string | { url: string }): string =>
  typeof asked === 'string' ? asked : asked.url.slice(site.length);

/** The worker's script with a network and a cache that are ours; `missing` is not answered. */
function begin(html: string, policy: string, missing: readonly string[] = []) {
  const handlers = new Map<string, Handler>();
  const kept = new Map<string, Response>();
  const asked: RequestInit[] = [];
  const outside: { network: Network; full: boolean } = {
    network: () => Promise.reject(new TypeError('no connection')),
    full: false,
  };
  const cache = {
    add: (file: string) =>
      missing.includes(file)
        ? Promise.reject(new TypeError('no answer'))
        : Promise.resolve(void kept.set(file, new Response(''))),
    put: (to: string | { url: string }, response: Response) =>
      outside.full
        ? Promise.reject(new DOMException('no room', 'QuotaExceededError'))
        : Promise.resolve(void kept.set(nameOf(to), response)),
    keys: () => Promise.resolve([...kept.keys()].map((name) => ({ url: `${site}${name}` }))),
    delete: ({ url }: { url: string }) => Promise.resolve(kept.delete(url.slice(site.length))),
  };
  const scope = {
    self: {
      addEventListener: (name: string, handler: Handler) => handlers.set(name, handler),
      skipWaiting: () => Promise.resolve(),
      location: { origin: site },
    },
    caches: {
      open: () => Promise.resolve(cache),
      match: (name: string | { url: string }) =>
        outside.full
          ? Promise.reject(new DOMException('broken', 'UnknownError'))
          : Promise.resolve(kept.get(nameOf(name))?.clone()),
    },
    crypto: webcrypto,
    fetch: (of: string | { url: string }, init?: RequestInit) => {
      if (typeof of !== 'string') return outside.network(of, init);
      if (init !== undefined) asked.push(init);
      const headers = { 'content-security-policy': policy };
      return Promise.resolve(new Response(html, { headers }));
    },
  };
  // The script as a browser runs it: in a scope of its own.
  // eslint-disable-next-line @typescript-eslint/no-implied-eval
  const run = new Function(...Object.keys(scope), workerSource) as (...with_: unknown[]) => void;
  run(...Object.values(scope));
  const tell = async (name: string, event: Omit<WorkerEvent, 'waitUntil'> = {}) => {
    const work: Promise<unknown>[] = [];
    handlers.get(name)?.({ ...event, waitUntil: (one) => work.push(one) });
    await Promise.all(work);
  };
  const open = async (
    path: string,
    mode: 'navigate' | 'no-cors',
  ): Promise<Response | undefined> => {
    const answers: Promise<Response>[] = [];
    const request = { method: 'GET', mode, url: `${site}${path}` };
    await tell('fetch', { request, respondWith: (one) => answers.push(one) });
    return answers[0];
  };
  return { kept, asked, tell, open, outside };
}

async function install(html: string, policy: string) {
  const worker = begin(html, policy);
  await worker.tell('install');
  return worker;
}

const html = `<html><head><style>p{}</style><link href="/_next/static/css/a.css">
<script src="/_next/static/chunks/b.js" nonce="n1"></script><script nonce="n1">one()</script></head>
<body><script nonce="n1">self.f=["static/chunks/c.js"]</script></body></html>`;
const policy =
  "default-src 'self'; script-src 'self' 'nonce-n1' 'strict-dynamic'; style-src 'self' 'nonce-n1'";

test('the shell is fetched without cookies and kept with the files that it names', async () => {
  const { kept, asked } = await install(html, policy);
  expect(asked).toMatchObject([{ credentials: 'omit' }]);
  expect([...kept.keys()].toSorted()).toEqual([
    '/_next/static/chunks/b.js',
    '/_next/static/chunks/c.js',
    '/_next/static/css/a.css',
    '/outside',
  ]);
});

// CSP level 3: a hash source is the base64 of the digest of the element's text, as node:crypto reckons it.
test('the kept shell runs its own scripts by their hashes and by no nonce', async () => {
  const { kept } = await install(html, policy);
  const found = kept.get('/outside')?.headers.get('content-security-policy') ?? '';
  const hash = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
  const rule = (name: string) => found.split('; ').find((one) => one.startsWith(`${name} `));
  const scripts = [hash('one()'), hash('self.f=["static/chunks/c.js"]')].join(' ');
  expect(rule('default-src')).toBe("default-src 'self'");
  expect(rule('script-src')).toBe(`script-src 'self' ${scripts}`);
});

// The dialog's library puts a style in while the page runs, under the nonce that the page lends it.
test('the kept shell still takes styles under the nonce that stands in its page', async () => {
  const { kept } = await install(html, policy);
  const found = kept.get('/outside')?.headers.get('content-security-policy') ?? '';
  expect(found).toMatch(/; style-src 'self' 'nonce-n1' 'sha256-[^']*'$/);
});

describe('a shell of which one file does not come', () => {
  const missing = ['/_next/static/chunks/c.js'];

  it('is not installed', async () => {
    const { tell, kept } = begin(html, policy, missing);
    await expect(tell('install')).rejects.toThrow('no answer');
    expect(kept.has('/outside')).toBe(false);
  });

  it('is told to the page that asked to keep it anew, as is one that is whole', async () => {
    const answers: unknown[] = [];
    const ports = [{ postMessage: (answer: unknown) => answers.push(answer) }];
    await begin(html, policy, missing).tell('message', { data: 'keep-shell', ports });
    await begin(html, policy).tell('message', { data: 'keep-shell', ports });
    expect(answers).toEqual([false, true]);
  });
});

test('a shell that was kept whole leaves nothing of an earlier one behind', async () => {
  const { tell, kept } = begin(html, policy);
  kept.set('/_next/static/chunks/old.js', new Response(''));
  await tell('install');
  expect(kept.has('/_next/static/chunks/old.js')).toBe(false);
  expect(kept.size).toBe(4);
});

describe('while the worker looks after the sign-off page', () => {
  const pagePath = '/desk/classes/c/sign-off';
  const file = '/_next/static/chunks/b.js';
  const ready = async () => {
    const worker = await install(html, policy);
    /** Whose text the answer is: the kept shell's, or the network's. */
    const says = async (path: string, mode: 'navigate' | 'no-cors' = 'navigate') => {
      const text = await (await worker.open(path, mode))?.text();
      return text === html ? 'the shell' : text;
    };
    return { ...worker, says };
  };
  const answering = (text: string, status = 200): Network => {
    return () => Promise.resolve(new Response(text, { status }));
  };

  it('gives the server’s page while the server answers, also one that says no', async () => {
    const { says, outside } = await ready();
    for (const status of [200, 404, 500]) {
      outside.network = answering('of the server', status);
      expect(await says(pagePath)).toBe('of the server');
    }
  });

  it('gives the shell without a connection, and where the proxy says that the server is away', async () => {
    const { says, outside } = await ready();
    expect(await says(pagePath)).toBe('the shell');
    for (const status of [502, 503, 504]) {
      outside.network = answering('of the proxy', status);
      expect(await says(pagePath)).toBe('the shell');
    }
  });

  it('waits for a slow page where no shell is kept, and breaks nothing', async () => {
    const { says, outside, kept } = await ready();
    kept.clear();
    outside.network = (_, init) => {
      expect(init?.signal).toBeUndefined();
      return Promise.resolve(new Response('late'));
    };
    expect(await says(pagePath)).toBe('late');
  });

  it('asks for no file over a connection that did not bring the page', async () => {
    const { says, outside, kept } = await ready();
    kept.set(file, new Response('kept'));
    await says(pagePath);
    outside.network = () => Promise.reject(new Error('it was asked'));
    expect(await says(file, 'no-cors')).toBe('kept');
  });

  it('passes on what the server gives although the device has no room for it', async () => {
    const { says, outside } = await ready();
    outside.full = true;
    outside.network = answering('of the server');
    expect(await says(pagePath)).toBe('of the server');
    expect(await says(file, 'no-cors')).toBe('of the server');
  });

  // A new version of the product has other files; the server may have forgotten the old ones.
  it('gives the kept file where the server has it no more', async () => {
    const { says, outside, kept } = await ready();
    kept.set(file, new Response('kept'));
    outside.network = answering('gone', 404);
    expect(await says(file, 'no-cors')).toBe('kept');
  });

  it('keeps no page that the server gave to somebody who is signed in', async () => {
    const { says, outside, kept } = await ready();
    outside.network = answering('Alder, level 3');
    await says(pagePath);
    expect([...kept.keys()]).not.toContain(pagePath);
  });

  it('leaves everything else alone', async () => {
    const { open } = await ready();
    expect(await open('/desk/classes/c/sign-off/notes', 'no-cors')).toBeUndefined();
  });
});
