'use client';

import { drawOrder } from './draw-order';
import { Lights } from './lights';
import type { SkyLight } from './sky-lights';
import type { SkyView } from './sky-view';

/** Planets look like stars, but shine steadily. */
export function Planets({ lights, view }: { lights: readonly SkyLight[]; view: SkyView }) {
  return <Lights lights={lights} view={view} lookedAt={null} renderOrder={drawOrder.planets} />;
}
