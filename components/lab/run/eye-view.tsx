'use client';

import { useEffect, useMemo, useState } from 'react';
import { firstLookAltitudeDeg } from '@/components/sky/fullest-side';
import type { SkyLight } from '@/components/sky/sky-lights';
import type { SkyMark } from '@/components/sky/sky-mark';
import { SkySurface } from '@/components/sky/sky-surface';
import type { TubeAim } from '@/components/sky/tube-mark';
import { turnedDirection } from '@/lib/sky/turned-frame';
import { azAltFromDirection } from '@/lib/units/vector';
import { FollowingView } from './following-view';
import type { RunModel } from './run-model';
import type { PlacedSky } from './use-placed-sky';
import { SceneToggle } from './scene-toggle';
import { useRunSnapshot } from './use-run-lab';

/** The dot is drawn anew when it has moved by this much, degrees; the sky itself once a second. */
const movedDeg = 0.01;
const restingMs = 1000;

type EyeViewProps = {
  model: RunModel;
  placed: PlacedSky;
  /** Where tube and dot are drawn: the run's own, or the start that is being set. */
  aim: TubeAim;
  picked: SkyLight | null;
  onPick: (light: SkyLight | null) => void;
  settingStart: boolean;
  figuresOffered: boolean;
  steering: boolean;
  onLost: () => void;
};

/** The sky as the eye sees it, with the finder's dot and the stem that leads up to the tube. */
export function EyeView(props: EyeViewProps) {
  const { model, placed, aim, picked, settingStart, steering } = props;
  const { confirmed, moving } = useRunSnapshot(model);
  const [follows, setFollows] = useState(true);
  const [view] = useState(() => {
    const { azimuthDeg, altitudeDeg } = azAltFromDirection(aim.tube);
    const start = { azimuthDeg, altitudeDeg: Math.max(firstLookAltitudeDeg, altitudeDeg) };
    return new FollowingView(start, () => {
      setFollows(false);
    });
  });
  const [showFists, setShowFists] = useState(false);
  const [showFigures, setShowFigures] = useState(false);

  useEffect(() => {
    const drawn = { east: NaN, north: NaN, up: NaN, atMs: -Infinity };
    const step = (): void => {
      const [east, north, up] = aim.dot;
      const gap = Math.hypot(east - drawn.east, north - drawn.north, up - drawn.up);
      const moved = !(gap * 57.3 < movedDeg);
      const nowMs = performance.now();
      if (!moved && nowMs - drawn.atMs < restingMs) return;
      drawn.east = east;
      drawn.north = north;
      drawn.up = up;
      drawn.atMs = nowMs;
      if (follows && moved) {
        const { azimuthDeg, altitudeDeg } = azAltFromDirection(aim.tube);
        // The foot of the sky stays in the picture: one wants to see what one turns over.
        view.lookAt(azimuthDeg, Math.max(firstLookAltitudeDeg, altitudeDeg));
      } else {
        view.redraw();
      }
    };
    step();
    return model.onFrame(step);
  }, [model, aim, view, follows]);

  const marks = useMemo(() => {
    const made: SkyMark[] = [];
    for (const { hip, atMs, view: then } of model.confirms()) {
      // Where the tube pointed when the learner said so: whether it was that star is not told.
      const seconds = (placed.placedAtMs - atMs) / 1000;
      const { latitudeDeg } = placed.turn;
      const place = azAltFromDirection(turnedDirection(then.tube, latitudeDeg, seconds));
      made.push({ kind: 'kept', ...place, label: model.nameOf(hip) });
    }
    if (picked !== null) {
      const { azimuthDeg, altitudeDeg } = picked;
      made.push({ kind: 'selected', azimuthDeg, altitudeDeg, label: null });
    }
    return made;
    // The confirmed stars are what the snapshot says they are.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [model, placed, picked, confirmed]);

  return (
    <div className="relative size-full">
      <SkySurface
        view={view}
        catalogue={model.catalogue}
        frame={placed.frame}
        horizon={model.variant.scenario.horizon}
        clouds={model.variant.scenario.clouds}
        lights={placed.lights}
        marks={marks}
        lookedAt={picked?.id ?? null}
        showFigures={props.figuresOffered && showFigures}
        showFists={showFists}
        turn={placed.turn}
        aim={aim}
        hideSignposts={settingStart}
        onPick={props.onPick}
        onLost={props.onLost}
        keysText={
          steering
            ? 'Arrow keys steer the tube, 1 to 5 set the speed, Shift with an arrow key looks around, plus and minus zoom.'
            : 'Arrow keys look around, plus and minus zoom, Enter picks the light nearest the middle.'
        }
      />
      <div className="scene-extra absolute start-3 top-11 flex items-start gap-1.5 lg:flex-col">
        <SceneToggle
          pressed={follows}
          onPress={() => {
            setFollows(!follows);
          }}
          label={moving && follows ? 'Following the tube' : 'Follow the tube'}
        />
        <SceneToggle
          pressed={showFists}
          onPress={() => {
            setShowFists(!showFists);
          }}
          label="Fists"
        />
        {props.figuresOffered ? (
          <SceneToggle
            pressed={showFigures}
            onPress={() => {
              setShowFigures(!showFigures);
            }}
            label="Figures"
          />
        ) : null}
      </div>
    </div>
  );
}
