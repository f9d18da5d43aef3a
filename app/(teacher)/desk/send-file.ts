/** A download that no cache keeps: it names students. */
export const sendFile = (
  content: string | Uint8Array<ArrayBuffer>,
  fileName: string,
  type: string,
): Response =>
  new Response(content, {
    headers: {
      'Content-Type': type,
      'Content-Disposition': `attachment; filename="${fileName}"`,
      'Cache-Control': 'private, no-store',
      'X-Content-Type-Options': 'nosniff',
    },
  });

export const nothingHere = (): Response =>
  new Response('There is nothing here that you may see.', {
    status: 404,
    headers: { 'Cache-Control': 'no-store' },
  });
