'use client';

import { useFrame } from '@react-three/fiber';
import type { ReactNode } from 'react';
import { useMemo, useRef } from 'react';
import type { Group } from 'three';
import { Vector3 } from 'three';
import { siderealDegPerSecond } from '@/lib/sky/turned-frame';
import { degreesToRadians } from '@/lib/units/angle';
import { sceneDirection } from './to-scene';

/** What turns the sky: the pole's height, and how long ago the lights stood where they are placed. */
export type SkyTurn = {
  latitudeDeg: number;
  /** Read in every frame. */
  secondsSincePlaced: () => number;
};

type TurningSkyProps = { turn: SkyTurn | undefined; children: ReactNode };

/** Turns all that is in it about the celestial pole. Without a turn it stands still. */
export function TurningSky({ turn, children }: TurningSkyProps) {
  const group = useRef<Group>(null);
  // The north pole, below the horizon in the south: the sky turns about it all the same.
  const axis = useMemo(() => new Vector3(...sceneDirection(0, turn?.latitudeDeg ?? 90)), [turn]);
  useFrame(() => {
    if (turn === undefined || group.current === null) return;
    const turnedDeg = -siderealDegPerSecond * turn.secondsSincePlaced();
    group.current.quaternion.setFromAxisAngle(axis, degreesToRadians(turnedDeg));
  });
  return <group ref={group}>{children}</group>;
}
