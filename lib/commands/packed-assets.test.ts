import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer, request, type IncomingHttpHeaders, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { packAssets, packedAssetSender } from './packed-assets.mjs';

const text = 'const star = "Vega";\n'.repeat(200);
const folder = mkdtempSync(path.join(tmpdir(), 'duskbench-static-'));
let server: Server;

beforeAll(async () => {
  mkdirSync(path.join(folder, 'static/chunks'), { recursive: true });
  writeFileSync(path.join(folder, 'static/chunks/a.js'), text);
  writeFileSync(path.join(folder, 'secret.js'), 'secret');
  await packAssets(path.join(folder, 'static'));
  const sendPacked = packedAssetSender(path.join(folder, 'static'));
  server = createServer((incoming, response) => {
    if (!sendPacked(incoming, response)) response.writeHead(204).end();
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
});
afterAll(() => {
  server.close();
  rmSync(folder, { recursive: true });
});

/** Straight from the socket: fetch would unpack the body and tidy the address. */
function get(address: string, encodings: string | null, method = 'GET') {
  const { port } = server.address() as AddressInfo;
  const headers = encodings === null ? {} : { 'accept-encoding': encodings };
  return new Promise<{ status: number; headers: IncomingHttpHeaders; body: Buffer }>(
    (resolve, reject) => {
      const options = { host: '127.0.0.1', port, path: address, method, headers };
      request(options, (response) => {
        const chunks: Buffer[] = [];
        response.on('data', (chunk: Buffer) => chunks.push(chunk));
        response.on('end', () => {
          const { statusCode = 0, headers: received } = response;
          resolve({ status: statusCode, headers: received, body: Buffer.concat(chunks) });
        });
      })
        .on('error', reject)
        .end();
    },
  );
}

test('a browser gets the best encoding that it takes, and the text comes out whole', async () => {
  const brotli = await get('/_next/static/chunks/a.js', 'gzip, deflate, br');
  expect(brotli.headers).toMatchObject({ 'content-encoding': 'br', vary: 'accept-encoding' });
  expect(brotliDecompressSync(brotli.body).toString()).toBe(text);
  const gzip = await get('/_next/static/chunks/a.js?dpl=1', 'gzip, br;q=0');
  expect(gzip.headers['content-encoding']).toBe('gzip');
  expect(gunzipSync(gzip.body).toString()).toBe(text);
});

test('a request for the head alone gets no body', async () => {
  const head = await get('/_next/static/chunks/a.js', 'br', 'HEAD');
  expect(head.headers['content-encoding']).toBe('br');
  expect(head.body.length).toBe(0);
});

test.each([
  ['no encoding that is packed', '/_next/static/chunks/a.js', null, 'GET'],
  ['a file that is not there', '/_next/static/chunks/b.js', 'br', 'GET'],
  ['the packed file by its own name', '/_next/static/chunks/a.js.br', 'br', 'GET'],
  ['a way out of the folder', '/_next/static/../secret.js', 'br', 'GET'],
  ['a way out of the folder, encoded', '/_next/static/%2e%2e/secret.js', 'br', 'GET'],
  ['another method', '/_next/static/chunks/a.js', 'br', 'POST'],
])('%s is left to the product', async (_, address, encodings, method) => {
  expect((await get(address, encodings, method)).status).toBe(204);
});
