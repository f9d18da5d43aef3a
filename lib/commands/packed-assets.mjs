import { createReadStream, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';

const contentTypes = new Map([
  ['.js', 'application/javascript; charset=UTF-8'],
  ['.css', 'text/css; charset=UTF-8'],
]);
/** Best first. */
const encodings = [
  { name: 'br', ending: '.br' },
  { name: 'gzip', ending: '.gz' },
];

/** @param {string} folder absolute */
const packable = (folder) =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile() && contentTypes.has(path.extname(entry.name)))
    .map((entry) => path.join(entry.parentPath, entry.name));

/**
 * Writes a Brotli and a gzip file beside every script and style sheet of a build, once and as small
 * as they get: a class that comes in together then costs an old laptop no compressing at all.
 *
 * @param {string} folder the build's `static`, absolute
 */
export async function packAssets(folder) {
  const pack = packable(folder).map(async (file) => {
    const content = readFileSync(file);
    const quality = { [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY };
    writeFileSync(`${file}.br`, await promisify(brotliCompress)(content, { params: quality }));
    writeFileSync(`${file}.gz`, await promisify(gzip)(content, { level: 9 }));
  });
  await Promise.all(pack);
}

/**
 * Answers requests for the packed files; false for anything else, which is then the product's.
 * Only files that were there at the start are known, so no address leads outside the folder.
 *
 * @param {string} folder the build's `static`, absolute
 * @returns {(request: import('node:http').IncomingMessage, response: import('node:http').ServerResponse) => boolean}
 */
export function packedAssetSender(folder) {
  const known = new Map(
    packable(folder).map((file) => [
      `/_next/static/${path.relative(folder, file).split(path.sep).join('/')}`,
      file,
    ]),
  );
  return (request, response) => {
    if (request.method !== 'GET' && request.method !== 'HEAD') return false;
    const file = known.get(request.url?.split('?')[0] ?? '');
    if (file === undefined) return false;
    const accepted = acceptedEncodings(request.headers['accept-encoding']);
    const encoding = encodings.find(({ name }) => accepted.has(name));
    if (encoding === undefined) return false;
    const packed = `${file}${encoding.ending}`;
    response.writeHead(200, {
      'content-type': contentTypes.get(path.extname(file)) ?? 'application/octet-stream',
      'content-encoding': encoding.name,
      'content-length': statSync(packed).size,
      // A build names its files by their content.
      'cache-control': 'public, max-age=31536000, immutable',
      vary: 'accept-encoding',
      'x-content-type-options': 'nosniff',
    });
    if (request.method === 'HEAD') response.end();
    else createReadStream(packed).pipe(response);
    return true;
  };
}

/**
 * The encodings a browser takes; one with weight zero is one it does not (RFC 9110, 12.5.3).
 *
 * @param {string | string[] | undefined} header
 * @returns {Set<string>}
 */
function acceptedEncodings(header) {
  const parts = String(header ?? '')
    .toLowerCase()
    .split(',');
  return new Set(
    parts
      .map((part) => part.trim().split(/\s*;\s*/))
      .filter(([, weight]) => weight === undefined || !/^q=0(\.0*)?$/.test(weight))
      .map(([name = '']) => name),
  );
}
