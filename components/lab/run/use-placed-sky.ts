'use client';

import { useMemo } from 'react';
import type { SkyLight } from '@/components/sky/sky-lights';
import type { SkyTurn } from '@/components/sky/turning-sky';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import type { RunModel } from './run-model';
import { useRunSnapshot } from './use-run-lab';

/** Lights are placed anew this often; in between the whole sky is turned (refraction stays behind). */
const everyMinutes = 2;

export type PlacedSky = {
  frame: SkyFrame;
  lights: readonly SkyLight[];
  turn: SkyTurn;
  placedAtMs: number;
};

/** The sky for the drawing: lights where they stood a moment ago, and how far it has turned since. */
export function usePlacedSky(model: RunModel): PlacedSky {
  const { minutes } = useRunSnapshot(model);
  const round = Math.floor(minutes / everyMinutes);
  return useMemo(() => {
    const placedAtMs = model.atMs;
    return {
      frame: model.lists.frameNow(),
      lights: model.lists.lights(),
      placedAtMs,
      turn: {
        latitudeDeg: model.variant.scenario.place.latitudeDeg,
        secondsSincePlaced: () => (model.atMs - placedAtMs) / 1000,
      },
    };
    // A new round is what asks for new places.
    // eslint-disable-next-line react-hooks/exhaustive-deps
  }, [model, round]);
}
