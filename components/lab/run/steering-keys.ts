import type { KeyboardEvent } from 'react';
import { useMemo, useRef } from 'react';
import type { RunModel } from './run-model';

const directions: Readonly<Record<string, { azimuth: -1 | 0 | 1; altitude: -1 | 0 | 1 }>> = {
  ArrowLeft: { azimuth: -1, altitude: 0 },
  ArrowRight: { azimuth: 1, altitude: 0 },
  ArrowUp: { azimuth: 0, altitude: 1 },
  ArrowDown: { azimuth: 0, altitude: -1 },
};

export type SteeringKeys = {
  onKeyDownCapture: (event: KeyboardEvent<HTMLElement>) => void;
  onKeyUpCapture: (event: KeyboardEvent<HTMLElement>) => void;
  onBlurCapture: () => void;
};

/**
 * Arrow keys hold a strip, 1 to 5 set how far. They come before what the scene does with them, and
 * only from the scene itself, never from a button on it. With Shift they are the scene's.
 */
export function useSteeringKeys(
  model: RunModel,
  speed: number,
  onSpeed: (speed: number) => void,
  steering: boolean,
): SteeringKeys {
  const held = useRef(new Set<string>());
  return useMemo(() => {
    const follow = (by: number): void => {
      let azimuth = 0;
      let altitude = 0;
      for (const key of held.current) {
        azimuth += (directions[key]?.azimuth ?? 0) * by;
        altitude += (directions[key]?.altitude ?? 0) * by;
      }
      model.setRockers(azimuth, altitude);
    };
    const letGo = (): void => {
      if (held.current.size === 0) return;
      held.current.clear();
      model.setRockers(0, 0);
    };
    return {
      onKeyDownCapture(event) {
        const { target } = event;
        if (!steering || !(target instanceof HTMLElement)) return;
        if (target.getAttribute('role') !== 'application') return;
        if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
        const digit = /^[1-5]$/.test(event.key) ? Number(event.key) : null;
        if (digit === null && directions[event.key] === undefined) return;
        event.preventDefault();
        event.stopPropagation();
        if (event.repeat) return;
        if (digit === null) held.current.add(event.key);
        else onSpeed(digit);
        if (digit === null || held.current.size > 0) follow(digit ?? speed);
      },
      onKeyUpCapture(event) {
        if (!held.current.delete(event.key)) return;
        event.stopPropagation();
        follow(speed);
      },
      // Whoever leaves the scene with a key down has let go of it.
      onBlurCapture: letGo,
    };
  }, [model, speed, onSpeed, steering]);
}
