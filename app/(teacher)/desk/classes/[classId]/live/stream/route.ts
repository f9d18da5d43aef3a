import { liveView } from '@/components/desk/live/live-view';
import { viewerAgainAndAgain } from '@/lib/auth/session';
import { readLiveOptions } from '@/lib/data/live-input';
import { liveStream } from '@/lib/data/live-stream';

/** The live board's events. Who asks is asked again every ten seconds, in lib/data/live-stream.ts. */
export async function GET(
  request: Request,
  { params }: { params: Promise<{ classId: string }> },
): Promise<Response> {
  const { classId } = await params;
  const options = readLiveOptions(Object.fromEntries(new URL(request.url).searchParams));
  const { signal } = request;
  return new Response(
    liveStream({
      viewer: await viewerAgainAndAgain(),
      classId,
      options,
      present: liveView,
      signal,
    }),
    {
      headers: {
        'Content-Type': 'text/event-stream; charset=utf-8',
        // Neither kept nor packed nor held back on its way: a packed stream arrives in lumps.
        'Cache-Control': 'private, no-store, no-transform',
        'X-Accel-Buffering': 'no',
        'X-Content-Type-Options': 'nosniff',
      },
    },
  );
}
