import { loadCatalogue, loadCatalogueText } from '@/lib/content/sky-catalogue';

/**
 * The compact star catalogue, fetched once by a sky page. Its address carries its version, so that a
 * browser may keep it for good; any other version gets today's file, not to be kept. The server
 * compresses it: what is compressed here already would be compressed twice and could not be read.
 */
export function GET(request: Request): Response {
  const isCurrent = new URL(request.url).searchParams.get('v') === loadCatalogue().version;
  return new Response(loadCatalogueText(), {
    headers: {
      'Content-Type': 'application/json; charset=utf-8',
      'Cache-Control': isCurrent ? 'public, max-age=31536000, immutable' : 'no-cache',
    },
  });
}
