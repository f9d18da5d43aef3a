'use client';

import { ChevronDown, ChevronLeft, ChevronRight, ChevronUp, ZoomIn, ZoomOut } from 'lucide-react';
import type { ReactNode } from 'react';
import { useSyncExternalStore } from 'react';
import { nearestSignpost } from './directions';
import type { SkyView } from './sky-view';

/** One press turns by this share of what is in view. */
export const stepShare = 0.35;

type SkyButtonProps = { label: string; onPress: () => void; children: ReactNode };

function SkyButton({ label, onPress, children }: SkyButtonProps) {
  return (
    <button
      type="button"
      aria-label={label}
      title={label}
      onClick={onPress}
      className="grid size-11 place-items-center rounded-md border border-sky-line bg-land-near/75 text-on-sky hover:border-sky-lamp hover:text-sky-lamp"
    >
      {children}
    </button>
  );
}

/** The same as dragging and pinching, for whoever cannot or would rather not. */
export function SkyControls({ view }: { view: SkyView }) {
  const turn = (right: number, up: number) => () => {
    const step = view.wanted().fieldDeg * stepShare;
    view.turnBy(right * step, up * step);
  };
  const icon = 'size-5';
  return (
    <div role="group" aria-label="Look around" className="flex items-end gap-2">
      <div className="grid grid-cols-3 gap-1">
        <span />
        <SkyButton label="Look up" onPress={turn(0, 1)}>
          <ChevronUp aria-hidden="true" className={icon} />
        </SkyButton>
        <span />
        <SkyButton label="Look left" onPress={turn(-1, 0)}>
          <ChevronLeft aria-hidden="true" className={icon} />
        </SkyButton>
        <SkyButton label="Look down" onPress={turn(0, -1)}>
          <ChevronDown aria-hidden="true" className={icon} />
        </SkyButton>
        <SkyButton label="Look right" onPress={turn(1, 0)}>
          <ChevronRight aria-hidden="true" className={icon} />
        </SkyButton>
      </div>
      <div className="grid gap-1">
        <SkyButton label="See less, larger" onPress={() => view.zoomBy(0.75)}>
          <ZoomIn aria-hidden="true" className={icon} />
        </SkyButton>
        <SkyButton label="See more, smaller" onPress={() => view.zoomBy(1 / 0.75)}>
          <ZoomOut aria-hidden="true" className={icon} />
        </SkyButton>
      </div>
    </div>
  );
}

/** "Looking south-east, 30° up", in steps of 5° so that it changes seldom. */
export function useLookingText(view: SkyView): string {
  return useSyncExternalStore(
    view.subscribe,
    () => {
      const { azimuthDeg, altitudeDeg } = view.wanted();
      const up = Math.round(altitudeDeg / 5) * 5;
      const height = up > 85 ? 'straight up' : up < 0 ? 'at the ground' : `${up}° up`;
      return `Looking ${nearestSignpost(azimuthDeg).word}, ${height}`;
    },
    () => '',
  );
}
