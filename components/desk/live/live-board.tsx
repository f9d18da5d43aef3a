'use client';

import { CircleAlert, Radio, WifiOff } from 'lucide-react';
import type { LiveState } from '@/lib/data/live-board';
import type { LiveOptions } from '@/lib/data/live-input';
import { StatusLine } from '@/components/ui/status-line';
import { AwayTile, LiveTile, stateLooks } from './live-tile';
import type { LiveBoardView } from './live-message';
import { clockText } from './minutes-text';
import { useLiveBoard, type LiveNow } from './use-live-board';

const states: readonly LiveState[] = ['needs-help', 'working', 'here', 'done', 'away'];

/** The board, kept up to date by the server's events. */
export function LiveBoard({
  streamHref,
  refreshHref,
  first,
  timeZone,
  large,
  order,
}: {
  streamHref: string;
  /** This page again: for a browser without scripts, and for when the line is gone. */
  refreshHref: string;
  first: { at: string; board: LiveBoardView };
  timeZone: string;
  large: boolean;
  order: LiveOptions['order'];
}) {
  const live = useLiveBoard(streamHref, first);
  const { tiles, leftOut } = live.board;
  // By card each stays in its place; by need, who is not here needs no room.
  const apart = order === 'need' ? tiles.filter(({ state }) => state === 'away') : [];
  const inPlace = tiles.filter((tile) => !apart.includes(tile));
  return (
    <section aria-label="Live board" className="space-y-4">
      <div className="flex flex-wrap items-baseline justify-between gap-x-6 gap-y-1">
        <ul className={`flex flex-wrap gap-x-4 gap-y-1 sm:gap-x-5 ${large ? 'text-xl' : ''}`}>
          {states.map((state) => {
            const { word, Icon, tone } = stateLooks[state];
            const count = tiles.filter((tile) => tile.state === state).length;
            return (
              <li key={state} className={`flex items-center gap-1.5 ${tone}`}>
                <Icon aria-hidden="true" className="size-[1.1em]" />
                <span className="font-figures font-semibold">{count}</span> {word.toLowerCase()}
              </li>
            );
          })}
        </ul>
        <Line {...live} timeZone={timeZone} refreshHref={refreshHref} />
      </div>
      <StatusLine className="sr-only">{live.said}</StatusLine>
      {tiles.length === 0 ? (
        <p className="py-6 text-soft">
          Nobody is here in what was chosen. Choose another group or assignment, or the whole class.
        </p>
      ) : (
        <>
          {inPlace.length > 0 ? null : (
            <p className="py-4 text-soft">Nobody is at work just now.</p>
          )}
          <ul
            aria-label="In the lesson"
            className={
              large
                ? 'grid grid-cols-[repeat(auto-fill,minmax(min(100%,22rem),1fr))] gap-4'
                : 'grid grid-cols-[repeat(auto-fill,minmax(min(100%,16.5rem),1fr))] gap-2 sm:gap-3'
            }
          >
            {inPlace.map((tile) => (
              <LiveTile key={tile.cardNumber} tile={tile} nowMs={live.nowMs} large={large} />
            ))}
          </ul>
          {apart.length === 0 ? null : (
            <section aria-labelledby="live-away" className="space-y-2">
              <h3
                id="live-away"
                className={`flex items-center gap-1.5 font-semibold text-soft ${large ? 'text-xl' : ''}`}
              >
                <stateLooks.away.Icon aria-hidden="true" className="size-[1.1em]" />
                {stateLooks.away.word}
              </h3>
              <ul className="flex flex-wrap gap-2">
                {apart.map((tile) => (
                  <AwayTile key={tile.cardNumber} tile={tile} large={large} />
                ))}
              </ul>
            </section>
          )}
        </>
      )}
      {leftOut === 0 || tiles.length === 0 ? null : (
        <p className="text-sm text-soft">
          {leftOut === 1 ? 'One student is' : `${String(leftOut)} students are`} not in what was
          chosen.
        </p>
      )}
    </section>
  );
}

/** How the board is connected. Not a live region: it would speak every few seconds. */
function Line({
  line,
  heardMs,
  timeZone,
  refreshHref,
}: Pick<LiveNow, 'line' | 'heardMs'> & { timeZone: string; refreshHref: string }) {
  const heard = `last heard ${clockText(heardMs, timeZone)}`;
  // Plain links: they load the page anew, which is the point.
  const again = (
    <a href={refreshHref} className="link">
      Refresh
    </a>
  );
  switch (line) {
    case 'connecting':
      return (
        <p className="text-sm text-soft">
          As of {clockText(heardMs, timeZone)} · {again}
        </p>
      );
    case 'live':
      return (
        <p className="flex items-center gap-1.5 text-sm text-soft">
          <Radio aria-hidden="true" className="size-4" />
          Live · {heard}
        </p>
      );
    case 'lost':
      return (
        <p className="flex flex-wrap items-center gap-1.5 text-sm font-semibold text-caution">
          <WifiOff aria-hidden="true" className="size-4" />
          Connection lost, trying again · {heard} · {again}
        </p>
      );
    case 'over':
      return (
        <p
          role="alert"
          className="flex flex-wrap items-center gap-1.5 text-sm font-semibold text-danger"
        >
          <CircleAlert aria-hidden="true" className="size-4" />
          You are signed out, so this board stands still · {heard} · {again}
        </p>
      );
  }
}
