import { outsideCache } from '@/components/desk/sign-off/outside-cache';
import { routes } from '@/lib/routes';

/**
 * The service worker that opens the sign-off page without a connection. It keeps one page, the shell,
 * which was fetched without cookies and so is nobody's, with the scripts and styles that it names. A
 * page's nonce is good for one answer only: the kept one is given the hashes of its scripts instead. For
 * styles the nonce stays: a dialog puts its own in under the nonce that stands in the kept page, and what it
 * says is not known beforehand. A style runs nothing.
 * Nothing else is kept, and nothing is answered from here while the server answers. It goes, with what it
 * kept, when the class is cleared from the device (set-up-worker).
 */
export const workerSource = `
const cacheName = ${JSON.stringify(outsideCache)};
const shell = ${JSON.stringify(routes.outside())};
/** Milliseconds until a bad connection counts as none. */
const patience = 6000;

async function hashOf(text) {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return "'sha256-" + btoa(String.fromCharCode(...new Uint8Array(digest))) + "'";
}

async function policyFor(html, policy) {
  const inline = (tag) => [...html.matchAll(new RegExp('<' + tag + '(?![^>]*\\\\ssrc=)[^>]*>([\\\\s\\\\S]*?)</' + tag + '>', 'g'))];
  const hashes = async (tag) => (await Promise.all(inline(tag).map(([, text]) => hashOf(text)))).join(' ');
  const [scripts, styles] = [await hashes('script'), await hashes('style')];
  const isStyle = (rule) => /^style-src(?:-elem)? /.test(rule);
  return policy
    .split(';')
    .map((rule) => {
      const given = rule.trim();
      if (isStyle(given)) return given.includes("'unsafe-inline'") ? given : given + ' ' + styles;
      const kept = given.replace(/ *'nonce-[^']*'/g, '').replace(" 'strict-dynamic'", '');
      return kept.startsWith('script-src ') ? kept + ' ' + scripts : kept;
    })
    .join('; ');
}

/** Rejects when anything could not be kept: half a shell opens nothing. */
async function keepShell() {
  const answer = await fetch(shell, { credentials: 'omit', cache: 'no-store' });
  if (!answer.ok) throw new Error('no shell');
  const html = await answer.text();
  const named = html.match(/(?:\\/_next\\/)?static\\/(?:chunks|css)\\/[^"'\\\\\\s<>]+?\\.(?:js|css)/g) ?? [];
  const files = new Set(named.map((name) => (name.startsWith('/') ? name : '/_next/' + name)));
  const cache = await caches.open(cacheName);
  await Promise.all([...files].map((file) => cache.add(file)));
  const policy = await policyFor(html, answer.headers.get('content-security-policy') ?? '');
  const headers = { 'Content-Type': 'text/html; charset=utf-8', 'Content-Security-Policy': policy };
  await cache.put(shell, new Response(html, { headers }));
  // What an earlier version of the product named is not asked for again.
  const wanted = (request) => [shell, ...files].includes(new URL(request.url).pathname);
  const others = (await cache.keys()).filter((request) => !wanted(request));
  await Promise.all(others.map((request) => cache.delete(request)));
}

self.addEventListener('install', (event) => {
  event.waitUntil(keepShell().then(() => self.skipWaiting()));
});
self.addEventListener('activate', (event) => {
  event.waitUntil(self.clients.claim());
});
self.addEventListener('message', (event) => {
  if (event.data !== 'keep-shell') return;
  const answer = (kept) => event.ports[0]?.postMessage(kept);
  event.waitUntil(keepShell().then(() => answer(true), () => answer(false)));
});

/** The last page that was asked for did not come: its files are not waited for either. */
let cutOff = false;

/** No answer within the patience counts as none; what is said after that is heard by nobody. */
async function inTime(request) {
  const stop = new AbortController();
  const timer = setTimeout(() => stop.abort(), patience);
  try {
    return await fetch(request, { signal: stop.signal });
  } finally {
    clearTimeout(timer);
  }
}

/** A cache that fails, or is full, must never cost a page that the server would give. */
const fromCache = (request, options) => caches.match(request, options).catch(() => undefined);

/** The server, or the proxy before it, says that it is away: 502, 503 and 504. */
const isAway = ({ status }) => status >= 502 && status <= 504;

async function page(request) {
  const kept = await fromCache(shell);
  // Without a shell a slow page is better than none.
  if (kept === undefined) return fetch(request);
  try {
    const answer = await inTime(request);
    cutOff = isAway(answer);
    return cutOff ? kept : answer;
  } catch {
    cutOff = true;
    return kept;
  }
}

/** What the page itself has fetched is kept beside what the shell names: they share most of it. */
async function script(request) {
  const kept = await fromCache(request, { ignoreSearch: true });
  if (cutOff && kept !== undefined) return kept;
  try {
    const answer = await (kept === undefined ? fetch(request) : inTime(request));
    if (!answer.ok) return kept ?? answer;
    const copy = answer.clone();
    caches.open(cacheName).then((cache) => cache.put(request, copy)).catch(() => {});
    return answer;
  } catch {
    return kept ?? Response.error();
  }
}

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== 'GET' || url.origin !== self.location.origin) return;
  if (request.mode === 'navigate') event.respondWith(page(request));
  else if (url.pathname.startsWith('/_next/static/')) {
    event.respondWith(script(request));
  }
});
`;
