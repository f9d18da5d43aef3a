import {
  CircleCheck,
  CircleDashed,
  Hand,
  PencilLine,
  TriangleAlert,
  UserRound,
  type LucideIcon,
} from 'lucide-react';
import { classNames } from '@/components/ui/class-names';
import { TextLink } from '@/components/ui/text-link';
import type { LiveState } from '@/lib/data/live-board';
import type { LiveTileView } from './live-message';
import { forHowLong, howLongAgo } from './minutes-text';

/** Each state by its sign, its word and the kind of its edge; the tint comes on top. */
export const stateLooks: Readonly<
  Record<LiveState, { word: string; Icon: LucideIcon; box: string; tone: string }>
> = {
  'needs-help': {
    word: 'May need you',
    Icon: Hand,
    box: 'border-s-8 border-caution bg-caution-soft',
    tone: 'text-caution',
  },
  working: {
    word: 'Working',
    Icon: PencilLine,
    box: 'border-s-4 border-strong bg-panel',
    tone: 'text-ink',
  },
  here: { word: 'Here', Icon: UserRound, box: 'border-line bg-panel', tone: 'text-ink' },
  done: {
    word: 'Handed in',
    Icon: CircleCheck,
    box: 'border-double border-4 border-good bg-good-soft',
    tone: 'text-good',
  },
  away: {
    word: 'Not here',
    Icon: CircleDashed,
    box: 'border-dashed border-strong bg-page',
    tone: 'text-soft',
  },
};

/** One student. What happened how long ago is reckoned by the page, so that a quiet board sends nothing. */
export function LiveTile({
  tile,
  nowMs,
  large,
}: {
  tile: LiveTileView;
  nowMs: number;
  large: boolean;
}) {
  const { word, Icon, box, tone } = stateLooks[tile.state];
  const { need, gates, last } = tile;
  return (
    <li
      className={classNames(
        'keep-together min-w-0 rounded-md border px-3 py-2 sm:py-2.5',
        large ? 'text-xl leading-snug' : 'text-base leading-snug',
        box,
      )}
    >
      <div className="flex items-center justify-between gap-2">
        <p className={classNames('min-w-0 font-semibold break-words', large && 'text-2xl')}>
          {tile.href === null ? tile.label : <TextLink href={tile.href}>{tile.label}</TextLink>}
        </p>
        <p className={classNames('flex shrink-0 items-center gap-1 font-semibold', tone)}>
          <Icon aria-hidden="true" className="size-[1.1em]" />
          {word}
        </p>
      </div>
      {need === null ? null : (
        <p className="font-semibold">
          {need.text}
          {need.sinceAt === null ? '' : ` ${forHowLong(need.sinceAt, nowMs)}`}
        </p>
      )}
      {gates === null ? null : (
        <p className="flex items-start gap-1.5 font-semibold text-danger">
          <TriangleAlert aria-hidden="true" className="mt-[0.15em] size-[1.1em] shrink-0" />
          <span>
            Safety gate: {gates.text}
            {gates.href === null ? null : (
              <>
                {' '}
                <TextLink href={gates.href}>
                  See it<span className="sr-only"> ({tile.label})</span>
                </TextLink>
              </>
            )}
          </span>
        </p>
      )}
      {tile.where === null ? null : (
        <p className="break-words">
          {tile.where}
          {tile.sinceAt === null || tile.state === 'done'
            ? ''
            : ` ${forHowLong(tile.sinceAt, nowMs)}`}
        </p>
      )}
      {tile.detail === null ? null : <p className="break-words text-soft">{tile.detail}</p>}
      {/* What has come to a stop says how long above. */}
      {last === null || (need !== null && need.sinceAt !== null) ? null : (
        <p className={large ? 'text-lg text-soft' : 'text-sm text-soft'}>
          {last.text} {howLongAgo(last.at, nowMs)}
        </p>
      )}
    </li>
  );
}

/** One who is not here, under a heading that says so. */
export function AwayTile({ tile, large }: { tile: LiveTileView; large: boolean }) {
  return (
    <li
      className={classNames(
        'min-w-0 rounded-md border px-3 py-1.5 break-words',
        large && 'text-xl',
        stateLooks.away.box,
      )}
    >
      {tile.href === null ? tile.label : <TextLink href={tile.href}>{tile.label}</TextLink>}
      {tile.where === null ? null : (
        <span className="text-soft"> · {tile.where.toLowerCase()}</span>
      )}
    </li>
  );
}
