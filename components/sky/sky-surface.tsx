'use client';

import type { KeyboardEvent } from 'react';
import { useEffect, useRef } from 'react';
import { pickLight } from './pick-light';
import { SkyCanvas } from './sky-canvas';
import { SkyControls, stepShare, useLookingText } from './sky-controls';
import type { SkyLight } from './sky-lights';
import type { SkySceneProps } from './sky-scene';
import { SkyScene } from './sky-scene';
import { useSkyGestures } from './use-sky-gestures';

/** How far from the middle the key for picking reaches, CSS pixels. */
const middleReachPx = 70;

const usualKeys = 'Arrow keys turn, plus and minus zoom, Enter picks the light nearest the middle.';

export type SkySurfaceProps = SkySceneProps & {
  onPick: (light: SkyLight | null) => void;
  onLost: () => void;
  /** Keys that the lab adds, by `event.key`. They work only while the sky has the focus. */
  keys?: Readonly<Record<string, () => void>>;
  /** What the keys do where it is not the usual, for who cannot see. */
  keysText?: string;
};

/** The sky with its gestures, keys and buttons. */
export function SkySurface({
  onPick,
  onLost,
  keys,
  keysText = usualKeys,
  ...scene
}: SkySurfaceProps) {
  const { view, lights } = scene;
  const surface = useRef<HTMLDivElement>(null);
  const latestLights = useRef<readonly SkyLight[]>(lights);
  const latestPick = useRef(onPick);
  useEffect(() => {
    latestLights.current = lights;
    latestPick.current = onPick;
  });
  useEffect(() => {
    const wish = window.matchMedia('(prefers-reduced-motion: reduce)');
    const follow = (): void => {
      view.preferLessMotion(wish.matches);
    };
    follow();
    wish.addEventListener('change', follow);
    return () => {
      wish.removeEventListener('change', follow);
    };
  }, [view]);
  const gestures = useSkyGestures({ surface, view, lights: latestLights, onPick: latestPick });
  const looking = useLookingText(view);

  const onKeyDown = (event: KeyboardEvent<HTMLElement>): void => {
    if (event.altKey || event.ctrlKey || event.metaKey) return;
    const step = view.wanted().fieldDeg * stepShare * (event.shiftKey ? 0.2 : 0.6);
    const own: Readonly<Record<string, () => void>> = {
      ArrowLeft: () => view.turnBy(-step, 0),
      ArrowRight: () => view.turnBy(step, 0),
      ArrowUp: () => view.turnBy(0, step),
      ArrowDown: () => view.turnBy(0, -step),
      '+': () => view.zoomBy(0.85),
      '=': () => view.zoomBy(0.85),
      '-': () => view.zoomBy(1 / 0.85),
      Enter: () => {
        const middle = { x: view.widthPx / 2, y: view.heightPx / 2 };
        onPick(pickLight(lights, view, middle, middleReachPx));
      },
    };
    const act = own[event.key] ?? keys?.[event.key];
    if (act === undefined) return;
    event.preventDefault();
    act();
  };

  return (
    <div className="relative size-full overflow-hidden bg-[#0d1424]">
      {/* A sky one can turn is an application of its own: it takes the arrow keys. */}
      {/* eslint-disable-next-line jsx-a11y/no-noninteractive-element-interactions -- role application takes keys by definition */}
      <div
        ref={surface}
        role="application"
        aria-roledescription="sky"
        aria-label={`The sky. ${looking}. ${keysText} The table does the same without a picture.`}
        // eslint-disable-next-line jsx-a11y/no-noninteractive-tabindex -- see above
        tabIndex={0}
        className="group absolute inset-0 cursor-crosshair touch-none select-none focus-visible:outline-none"
        onKeyDown={onKeyDown}
        {...gestures}
      >
        <SkyCanvas view={view} onLost={onLost}>
          <SkyScene {...scene} />
        </SkyCanvas>
        {/* In the after-dark theme the picture is seen through red glass. */}
        <div
          aria-hidden="true"
          className="pointer-events-none absolute inset-0 hidden bg-[#ff5a30] mix-blend-multiply [html[data-theme=after-dark]_&]:block"
        />
        <div
          aria-hidden="true"
          className="pointer-events-none absolute inset-0 hidden border-[3px] border-sky-lamp group-focus-visible:block"
        />
        <div
          aria-hidden="true"
          className="pointer-events-none absolute top-1/2 left-1/2 hidden size-8 -translate-1/2 rounded-full border border-dashed border-sky-lamp group-focus-visible:block"
        />
      </div>
      <p
        aria-hidden="true"
        className="pointer-events-none absolute start-3 top-3 rounded-sm bg-land-near/70 px-2 py-0.5 font-figures text-sm text-on-sky"
      >
        {looking}
      </p>
      <div className="scene-extra absolute end-3 bottom-3">
        <SkyControls view={view} />
      </div>
    </div>
  );
}
