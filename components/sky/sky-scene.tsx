'use client';

import { useMemo } from 'react';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import type { SkyFrame } from '@/lib/sky/sky-frame';
import type { CloudPatch, HorizonPoint } from '@/lib/pointing/scenario';
import { Clouds } from './clouds';
import { ConstellationFigures } from './constellation-figures';
import { Fists } from './fists';
import { LookAround } from './look-around';
import { Moon } from './moon';
import { NameTags } from './name-tags';
import { Planets } from './planets';
import { Rings } from './rings';
import { Signposts } from './signposts';
import { SkyDome } from './sky-dome';
import type { SkyLight } from './sky-lights';
import type { SkyMark } from './sky-mark';
import type { SkyView } from './sky-view';
import { Skyline } from './skyline';
import { Stars } from './stars';
import type { TubeAim } from './tube-mark';
import { TubeMark } from './tube-mark';
import type { SkyTurn } from './turning-sky';
import { TurningSky } from './turning-sky';

export type SkySceneProps = {
  view: SkyView;
  catalogue: StarCatalogue;
  frame: SkyFrame;
  horizon: readonly HorizonPoint[];
  clouds: readonly CloudPatch[];
  lights: readonly SkyLight[];
  marks: readonly SkyMark[];
  /** Changes when the learner looks closely at a light: the stars then twinkle for a moment. */
  lookedAt: string | null;
  showFigures: boolean;
  showFists: boolean;
  /** Where the sky turns while one looks. */
  turn?: SkyTurn;
  /** Where a telescope stands among it. */
  aim?: TubeAim;
  /** Left out where finding north is the task. */
  hideSignposts?: boolean;
};

/** Everything that is in the sky, from the back to the front. */
export function SkyScene(props: SkySceneProps) {
  const { view, frame, horizon, lights } = props;
  const stars = useMemo(() => lights.filter((light) => light.star !== null), [lights]);
  const planets = useMemo(() => lights.filter((light) => light.planet !== null), [lights]);
  return (
    <>
      <LookAround view={view} />
      <SkyDome frame={frame} />
      <TurningSky turn={props.turn}>
        {props.showFigures ? (
          <ConstellationFigures catalogue={props.catalogue} frame={frame} lights={stars} />
        ) : null}
        <Stars lights={stars} view={view} lookedAt={props.lookedAt} />
        <Planets lights={planets} view={view} />
        <Moon frame={frame} />
        <NameTags marks={props.marks} view={view} />
        <Rings marks={props.marks} view={view} />
      </TurningSky>
      <Clouds clouds={props.clouds} frame={frame} />
      <Skyline horizon={horizon} frame={frame} />
      {props.showFists ? <Fists view={view} /> : null}
      {props.hideSignposts === true ? null : <Signposts />}
      {props.aim === undefined ? null : <TubeMark aim={props.aim} />}
    </>
  );
}
