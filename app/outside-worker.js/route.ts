import { workerSource } from './worker-source';

/** From the root, so that it may look after a page of the desk; it registers for the sign-off page alone. */
export const GET = (): Response =>
  new Response(workerSource, {
    headers: {
      'Content-Type': 'text/javascript; charset=utf-8',
      // A browser asks anew whenever the page registers it.
      'Cache-Control': 'no-cache',
    },
  });
