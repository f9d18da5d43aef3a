import { createHash, webcrypto } from 'node:crypto';
import { describe, expect, it, test } from 'vitest';
import { workerSource } from './worker-source';

type Port = { postMessage: (answer: unknown) => void };
type WorkerEvent = {
  waitUntil: (work: Promise<unknown>) => void;
  data?: unknown;
  ports?: readonly Port[];
};
type Handler = (event: WorkerEvent) => void;
const site = 'https://school.example';

/** The worker's script with a network and a cache that are ours; `missing` is not answered. */
function begin(html: string, policy: string, missing: readonly string[] = []) {
  const handlers = new Map<string, Handler>();
  const kept = new Map<string, Response>();
  const asked: RequestInit[] = [];
  const cache = {
    add: (file: string) =>
      missing.includes(file)
        ? Promise.reject(new TypeError('no answer'))
        : Promise.resolve(void kept.set(file, new Response(''))),
    put: (name: string, response: Response) => Promise.resolve(void kept.set(name, response)),
    keys: () => Promise.resolve([...kept.keys()].map((name) => ({ url: `${site}${name}` }))),
    delete: ({ url }: { url: string }) => Promise.resolve(kept.delete(url.slice(site.length))),
  };
  const scope = {
    self: {
      addEventListener: (name: string, handler: Handler) => handlers.set(name, handler),
      skipWaiting: () => Promise.resolve(),
    },
    caches: { open: () => Promise.resolve(cache) },
    crypto: webcrypto,
    fetch: (_url: string, init: RequestInit) => {
      asked.push(init);
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
  return { kept, asked, tell };
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
