'use client';

import { useEffect, useMemo, useState } from 'react';
import { firstLookAltitudeDeg, fullestSideDeg } from '@/components/sky/fullest-side';
import { projectToScreen } from '@/components/sky/project';
import { SkySurface } from '@/components/sky/sky-surface';
import { SkyView } from '@/components/sky/sky-view';
import { skyMarks } from './mark-lights';
import type { PairLabModel } from './use-pair-lab';

type PairSkyProps = { lab: PairLabModel; figuresOffered: boolean; onLost: () => void };

/** Faces the given or proposed star, else the side of the sky with most bright lights. */
function startView(lab: PairLabModel): SkyView {
  const hip = lab.sky.givenHip ?? lab.proposalHip;
  const place = hip === null ? null : lab.placeOf(`hip-${hip}`);
  if (place !== null) return new SkyView(place);
  return new SkyView({
    azimuthDeg: fullestSideDeg(lab.lights),
    altitudeDeg: firstLookAltitudeDeg,
  });
}

/** The drawn sky with what the lab points out in it. */
export function PairSky({ lab, figuresOffered, onLost }: PairSkyProps) {
  const [view] = useState(() => startView(lab));
  const [showFigures, setShowFigures] = useState(false);
  const [showFists, setShowFists] = useState(false);
  const { sky, choice, selected, stage, proposalHip, placeOf, nameOf } = lab;
  const selectedId = selected?.id ?? null;
  const { picks } = choice.draft;
  const askedHip = stage.at === 'look-alike' ? stage.hip : null;

  const marks = useMemo(
    () =>
      skyMarks({
        lightOf: placeOf,
        selected: selectedId,
        kept: picks.map(({ hip }) => ({ hip, name: nameOf(`hip-${hip}`) })),
        proposedHip: proposalHip,
        askedHip,
      }),
    // Names follow from the picks.
    // eslint-disable-next-line react-hooks/exhaustive-deps
    [placeOf, selectedId, picks, proposalHip, askedHip],
  );

  // What the learner is asked about is brought into view.
  const asked = askedHip ?? proposalHip;
  useEffect(() => {
    if (asked === null) return;
    const place = placeOf(`hip-${asked}`);
    if (place !== null) view.lookAt(place.azimuthDeg, Math.max(8, place.altitudeDeg));
  }, [asked, placeOf, view]);

  // On a phone the sheet that opens leaves the picture less height: what was picked near its upper or
  // lower edge is brought to the middle.
  useEffect(() => {
    if (selectedId === null || !window.matchMedia('(max-width: 1023px)').matches) return;
    const place = placeOf(selectedId);
    const point =
      place === null ? null : projectToScreen(view, place.azimuthDeg, place.altitudeDeg);
    if (point === null) return;
    const belowMiddle = point.y - view.heightPx / 2;
    if (Math.abs(belowMiddle) < view.heightPx * 0.15) return;
    view.turnBy(0, -belowMiddle * view.degreesPerPixel());
  }, [selectedId, placeOf, view]);

  const toggleFigures = (): void => {
    if (figuresOffered) setShowFigures(!showFigures);
  };
  const toggleFists = (): void => {
    setShowFists(!showFists);
  };
  return (
    <div className="relative size-full">
      <SkySurface
        view={view}
        catalogue={lab.catalogue}
        frame={sky.frame}
        horizon={sky.horizon}
        clouds={sky.clouds}
        lights={lab.lights}
        marks={marks}
        lookedAt={selectedId}
        showFigures={figuresOffered && showFigures}
        showFists={showFists}
        onPick={lab.look}
        onLost={onLost}
        keys={{ f: toggleFists, g: toggleFigures, k: lab.keepSelected, u: lab.undo }}
      />
      <div className="absolute start-3 top-11 flex flex-col items-start gap-1.5">
        <SkyToggle pressed={showFists} onPress={toggleFists} label="Fists" />
        {figuresOffered ? (
          <SkyToggle pressed={showFigures} onPress={toggleFigures} label="Figures" />
        ) : null}
      </div>
    </div>
  );
}

function SkyToggle({
  pressed,
  onPress,
  label,
}: {
  pressed: boolean;
  onPress: () => void;
  label: string;
}) {
  return (
    <button
      type="button"
      aria-pressed={pressed}
      onClick={onPress}
      className="min-h-11 rounded-md border border-sky-line bg-land-near/75 px-3 text-sm font-semibold text-on-sky hover:border-sky-lamp aria-pressed:border-sky-lamp aria-pressed:bg-sky-lamp aria-pressed:text-land-near lg:min-h-9"
    >
      {label}
    </button>
  );
}
