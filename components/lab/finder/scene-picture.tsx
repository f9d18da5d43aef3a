import type { ReactNode } from 'react';
import { signpostDirections } from '@/components/sky/directions';
import type { StandingPlace } from '@/lib/finder/day-hazard';
import type {
  DayTarget,
  DuskLight,
  FinderVariant,
} from '@/lib/variants/bench/finder/finder-variant';
import { degreesToRadians, wrap180 } from '@/lib/units/angle';
import { metresInWords } from './finder-words';
import { lettersOf, pathOf, sceneBottom, sceneHalfWidth, sceneTop, toScene } from './scene-places';
import { SunInScene, Wall } from './scene-sun';
import { TargetShape } from './target-shape';

type ScenePictureProps = {
  variant: FinderVariant;
  dusk: boolean;
  stand: StandingPlace | null;
  chosenId: string | null;
  /** Over the scene, in its degrees. */
  children?: ReactNode;
};

/** The scene round the telescope, in degrees: ground, things and Sun by day; the first lights at dusk. */
export function ScenePicture({ variant, dusk, stand, chosenId, children }: ScenePictureProps) {
  const { day, middleAzimuthDeg } = variant;
  const letters = lettersOf(variant);
  const lights = dusk ? (variant.dusk?.lights ?? []) : [];
  return (
    <>
      <rect
        x={-sceneHalfWidth}
        y={sceneTop}
        width={2 * sceneHalfWidth}
        height={sceneBottom - sceneTop}
        fill={dusk ? 'var(--sky)' : 'var(--sky-low)'}
      />
      {day === null || dusk ? null : <SunInScene variant={variant} sun={day.sun} />}
      <path d={hillsPath(middleAzimuthDeg)} fill="var(--land)" />
      {(day?.targets ?? []).map((target) => (
        <ThingInScene key={target.id} target={target} middleAzimuthDeg={middleAzimuthDeg} />
      ))}
      {day !== null && !dusk && stand === 'building-shadow' ? (
        <Wall x={toScene(day.sun, middleAzimuthDeg).x} top={-day.sun.altitudeDeg - 7} />
      ) : null}
      <Signposts middleAzimuthDeg={middleAzimuthDeg} />
      {lights.map((light) => (
        <LightInScene key={light.id} light={light} middleAzimuthDeg={middleAzimuthDeg} />
      ))}
      {(dusk ? lights : (day?.targets ?? [])).map((aim) => {
        const { x, y } = toScene(aim, middleAzimuthDeg);
        return (
          <Tag
            key={aim.id}
            aimId={aim.id}
            x={x}
            y={Math.max(sceneTop + 9, y - (dusk ? 4 : 5))}
            letter={letters.get(aim.id) ?? ''}
            below={'distanceM' in aim ? metresInWords(aim.distanceM) : ''}
            chosen={aim.id === chosenId}
          />
        );
      })}
      {children}
    </>
  );
}

function hillsPath(middleAzimuthDeg: number): string {
  const points = Array.from({ length: 81 }, (_, i) => {
    const x = -sceneHalfWidth + i * 3;
    // Its own hills for every direction, and the same whenever one looks there again.
    const turn = degreesToRadians(middleAzimuthDeg + x);
    const heightDeg = 1.3 + 0.7 * Math.sin(3 * turn + 1) + 0.5 * Math.sin(11 * turn) + 0.2;
    return { x, y: -heightDeg };
  });
  return `${pathOf(points)} L${String(sceneHalfWidth)} ${String(sceneBottom)} L${String(-sceneHalfWidth)} ${String(sceneBottom)} Z`;
}

/** Far things are drawn larger than they look, or they would not be seen here. */
const enlarged: Readonly<Record<DayTarget['kind'], number>> = {
  'fence-post': 1,
  'tree-trunk': 1,
  chimney: 1,
  mast: 1,
  spire: 2.5,
  'hill-tower': 7,
};

function ThingInScene({
  target,
  middleAzimuthDeg,
}: {
  target: DayTarget;
  middleAzimuthDeg: number;
}) {
  const { x, y } = toScene(target, middleAzimuthDeg);
  const degreesPerMetre = (57.3 / target.distanceM) * enlarged[target.kind];
  return (
    <g
      transform={`translate(${x.toFixed(2)} ${y.toFixed(2)}) scale(${degreesPerMetre.toFixed(4)})`}
    >
      <TargetShape kind={target.kind} line={0.25 / degreesPerMetre} />
    </g>
  );
}

function LightInScene({ light, middleAzimuthDeg }: { light: DuskLight; middleAzimuthDeg: number }) {
  const { x, y } = toScene(light, middleAzimuthDeg);
  const radius =
    light.kind === 'moon' ? 1.6 : 0.85 - 0.2 * Math.min(2, Math.max(0, light.magnitude));
  return <circle cx={x} cy={y} r={radius} fill="var(--on-sky)" />;
}

function Signposts({ middleAzimuthDeg }: { middleAzimuthDeg: number }) {
  return signpostDirections.map(({ azimuthDeg, sign }) => {
    const x = wrap180(azimuthDeg - middleAzimuthDeg);
    return Math.abs(x) > sceneHalfWidth - 3 ? null : (
      <text
        key={sign}
        x={x}
        y={sceneBottom - 1.6}
        textAnchor="middle"
        fontSize="4"
        fill="var(--on-sky-soft)"
      >
        {sign}
      </text>
    );
  });
}

type TagProps = {
  aimId: string;
  x: number;
  y: number;
  letter: string;
  below: string;
  chosen: boolean;
};

function Tag(props: TagProps) {
  const { letter, below, chosen } = props;
  return (
    <g
      data-aim={props.aimId}
      transform={`translate(${props.x.toFixed(2)} ${props.y.toFixed(2)})`}
      fontSize="3.6"
    >
      <rect
        x="-2.6"
        y="-4.4"
        width="5.2"
        height="5.2"
        rx="0.8"
        fill={chosen ? 'var(--sky-lamp)' : 'var(--land-near)'}
        stroke="var(--on-sky)"
        strokeWidth={chosen ? 0.8 : 0.3}
      />
      <text
        y="-0.5"
        textAnchor="middle"
        fontWeight="700"
        fill={chosen ? 'var(--land-near)' : 'var(--on-sky)'}
      >
        {letter}
      </text>
      {below === '' ? null : (
        <text y="-5.4" textAnchor="middle" fontSize="3.1" fill="var(--on-sky)">
          {below}
        </text>
      )}
    </g>
  );
}
