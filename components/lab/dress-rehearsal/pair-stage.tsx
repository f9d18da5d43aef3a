'use client';

import { useMemo } from 'react';
import { SkyPicture } from '@/components/sky/sky-picture';
import { skyPictureStars } from '@/components/sky/sky-picture-stars';
import type { Evening } from './evening';
import { namedOnPaper, starsToPlanWith, type PlannedStar } from './planned-lights';
import { StageFrame, TableSpace } from './stage-frame';
import { StagePanel } from './stage-panel';
import { StarChoice, StarTable } from './star-choice';

const hints = [
  'Bright stars that stand alone are hardest to mistake for another.',
  'Neither low, where the air bends and dims them, nor almost straight up, where the mount has to whirl.',
  'About nine fists apart along the sky tells the mount most: not close together, and not right opposite.',
];

/** Two stars are planned on paper, before a motor turns. */
export function PairStage({ evening }: { evening: Evening }) {
  const { variant, catalogue, draft } = evening;
  const stars = useMemo(() => starsToPlanWith(variant, catalogue), [variant, catalogue]);
  const starOf = (hip: number | null) => stars.find((star) => star.hip === hip) ?? null;
  const first = starOf(draft.plannedPair.first);
  const second = starOf(draft.plannedPair.second);
  return (
    <StageFrame
      evening={evening}
      viewLabel="How to look at the sky"
      drawingName="Sky"
      scene={
        evening.view === 'drawing' ? (
          <SkyPaper evening={evening} stars={stars} first={first} second={second} />
        ) : (
          <TableSpace>
            <StarTable stars={stars} />
          </TableSpace>
        )
      }
      summary={`${first?.name ?? 'no first star'} and ${second?.name ?? 'no second star'}`}
      panel={
        <StagePanel evening={evening} stage="pick-the-pair" hints={hints}>
          <p>
            Plan the two stars you will align on. Mind trees, roofs and cloud: the paper shows what
            stands in the way.
          </p>
          <StarChoice evening={evening} which="first" label="First star" stars={stars} />
          <StarChoice evening={evening} which="second" label="Second star" stars={stars} />
        </StagePanel>
      }
    />
  );
}

function SkyPaper({
  evening,
  stars,
  first,
  second,
}: {
  evening: Evening;
  stars: readonly PlannedStar[];
  first: PlannedStar | null;
  second: PlannedStar | null;
}) {
  const { frame, scenario } = evening.variant;
  const backdrop = useMemo(
    () => skyPictureStars(evening.catalogue, frame),
    [evening.catalogue, frame],
  );
  const { moon, sun } = frame;
  return (
    <div className="h-full overflow-y-auto bg-page p-3">
      <SkyPicture
        className="mx-auto max-w-[40rem] lg:max-w-[min(40rem,calc(100dvh-18rem))]"
        title={`The whole sky at the beginning of the evening, on paper; the table lists where each star stands`}
        stars={backdrop}
        horizon={scenario.horizon}
        clouds={scenario.clouds}
        moon={moon}
        sun={{ azimuthDeg: sun.azimuthDeg, altitudeDeg: sun.trueAltitudeDeg }}
        named={namedOnPaper(stars, [first, second])}
        pairs={
          first === null || second === null || first === second
            ? []
            : [{ kind: 'chosen', stars: [first, second] }]
        }
      />
    </div>
  );
}
