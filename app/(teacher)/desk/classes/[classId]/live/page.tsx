import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { NoStudentsYet } from '@/components/desk/people/no-students-yet';
import { LiveBoard } from '@/components/desk/live/live-board';
import { LiveForm } from '@/components/desk/live/live-form';
import { LiveLegend } from '@/components/desk/live/live-legend';
import { liveView } from '@/components/desk/live/live-view';
import { TextLink } from '@/components/ui/text-link';
import { getLiveBoard, getLiveChoices, liveRules } from '@/lib/data/live-board';
import { demoLapMinutes } from '@/lib/data/live-demo';
import { readLiveOptions } from '@/lib/data/live-input';
import { routes } from '@/lib/routes';
import { classOf } from '../class-of';

export const metadata: Metadata = { title: 'Live' };

export default async function LivePage({
  params,
  searchParams,
}: {
  params: Promise<{ classId: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
}) {
  const { details, viewer, mayTeach } = await classOf(params);
  const options = readLiveOptions(await searchParams);
  const [board, choices] = await Promise.all([
    getLiveBoard(viewer, details.id, options),
    getLiveChoices(viewer, details.id),
  ]);
  if (board === null || choices === null) notFound();
  if (details.studentCount === 0) {
    return (
      <NoStudentsYet addAt={mayTeach ? routes.teacher.classRoster(details.id) : null}>
        <p>Once there are students, each has a tile here, with what they are at during a lesson.</p>
      </NoStudentsYet>
    );
  }
  const address = routes.teacher.classLive(details.id, options);
  return (
    <div className="space-y-4">
      <div className="flex flex-wrap items-center gap-x-5 gap-y-2">
        <h2 className="me-auto text-xl font-semibold">Live</h2>
        {options.names === 'hidden' && options.size === 'large' ? null : (
          <TextLink
            className="max-sm:hidden"
            href={routes.teacher.classLive(details.id, {
              ...options,
              names: 'hidden',
              size: 'large',
            })}
          >
            For the projector
          </TextLink>
        )}
        {/* The fields follow the address, also when the browser goes back to it. */}
        <LiveForm key={address} {...{ options, choices }} />
      </div>
      {details.isDemo ? (
        <p className="max-w-measure text-sm text-soft">
          This class is invented, and its lesson comes round again every {demoLapMinutes} minutes.
          Sign in as one of its students, and the tile follows what you do.
        </p>
      ) : null}
      <noscript>
        <p className="mb-2">
          Without scripts this board stands still.{' '}
          <a className="link" href={address}>
            Load it again
          </a>{' '}
          to see what is new.
        </p>
      </noscript>
      <LiveBoard
        key={`board ${address}`}
        streamHref={routes.teacher.classLiveStream(details.id, options)}
        refreshHref={address}
        first={{ at: board.at.toISOString(), board: liveView(board) }}
        timeZone={details.timeZone}
        large={options.size === 'large'}
        order={options.order}
      />
      <LiveLegend rules={liveRules} />
    </div>
  );
}
