'use client';

import { drawOrder } from './draw-order';
import { Lights } from './lights';
import type { SkyLight } from './sky-lights';
import type { SkyView } from './sky-view';

type StarsProps = { lights: readonly SkyLight[]; view: SkyView; lookedAt: string | null };

/** Stars, sized by how bright they look and tinted by B−V; they twinkle while one is looked at. */
export function Stars({ lights, view, lookedAt }: StarsProps) {
  return <Lights lights={lights} view={view} lookedAt={lookedAt} renderOrder={drawOrder.stars} />;
}
