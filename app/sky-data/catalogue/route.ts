import { gzipSync } from 'node:zlib';
import { loadCatalogue, loadCatalogueText } from '@/lib/content/sky-catalogue';

let compressed: Uint8Array<ArrayBuffer> | undefined;

/**
 * The compact star catalogue, fetched once by a sky page. Its address carries its version, so that a
 * browser may keep it for good; any other version gets today's file, not to be kept.
 */
export function GET(request: Request): Response {
  const isCurrent = new URL(request.url).searchParams.get('v') === loadCatalogue().version;
  const headers = new Headers({
    'Content-Type': 'application/json; charset=utf-8',
    'Cache-Control': isCurrent ? 'public, max-age=31536000, immutable' : 'no-cache',
    Vary: 'Accept-Encoding',
  });
  if (!/\bgzip\b/.test(request.headers.get('Accept-Encoding') ?? '')) {
    return new Response(loadCatalogueText(), { headers });
  }
  compressed ??= new Uint8Array(gzipSync(loadCatalogueText(), { level: 9 }));
  headers.set('Content-Encoding', 'gzip');
  return new Response(compressed, { headers });
}
