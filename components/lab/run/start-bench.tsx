'use client';

import type { KeyboardEvent, PointerEvent, ReactNode } from 'react';
import { useRef } from 'react';
import type { TubeType } from '@/lib/optics/image-orientation';
import { radiansToDegrees, wrap360 } from '@/lib/units/angle';
import { LevelDrawing } from './level-drawing';
import { PlanDrawing } from './plan-drawing';
import type { BenchSide } from './side-switch';
import { highestTubeDeg, lowestTubeDeg, type StartChoice } from './start-choice';

type StartBenchProps = {
  start: StartChoice;
  tubeType: TubeType;
  /** On a phone one drawing at a time. */
  shown: BenchSide;
};

/** The tube seen from above over a compass, and from the side with its level. */
export function StartBench({ start, tubeType, shown }: StartBenchProps) {
  return (
    <div className="flex size-full flex-col items-center justify-center overflow-hidden p-2 pb-0 lg:flex-row lg:gap-10 lg:p-8 lg:pb-20">
      <Side
        shown={shown === 'above'}
        className="lg:w-[min(52%,34rem)]"
        reading={`The tube faces ${String(Math.round(start.bearingDeg) % 360)}° on the compass.`}
      >
        <Turnable
          label="Which way the tube faces, from the compass needle"
          value={start.bearingDeg}
          least={0}
          most={360}
          valueText={`${String(start.bearingDeg)}° clockwise from the needle`}
          onStep={(by) => {
            start.turnTo(start.bearingDeg + by);
          }}
          onDrag={(angleDeg, beforeDeg) => {
            start.turnTo(wrap360(start.bearingDeg + angleDeg - beforeDeg));
          }}
          className="lg:aspect-square lg:flex-none"
        >
          <PlanDrawing
            tubeType={tubeType}
            bearingDeg={start.bearingDeg}
            altitudeDeg={start.altitudeDeg}
          />
        </Turnable>
      </Side>
      <Side
        shown={shown === 'side'}
        className="lg:w-[min(40%,26rem)]"
        reading={`The bubble stands ${bubbleSide(start.altitudeDeg)}.`}
      >
        <Turnable
          label="How far the tube is tipped up"
          value={start.altitudeDeg}
          least={lowestTubeDeg}
          most={highestTubeDeg}
          valueText={`the bubble stands ${bubbleInWords(start.altitudeDeg)}`}
          onStep={(by) => {
            start.tipTo(start.altitudeDeg + by);
          }}
          onDrag={(angleDeg, beforeDeg) => {
            // Clockwise on the screen tips the tube, which points to the right, downward.
            const turned = angleDeg - beforeDeg;
            start.tipTo(
              start.altitudeDeg -
                (turned > 180 ? turned - 360 : turned < -180 ? turned + 360 : turned),
            );
          }}
          className="lg:aspect-[10/9] lg:flex-none"
        >
          <LevelDrawing tubeType={tubeType} altitudeDeg={start.altitudeDeg} />
        </Turnable>
      </Side>
    </div>
  );
}

type SideProps = { shown: boolean; reading: string; className: string; children: ReactNode };

/** One drawing with what is read off it below. */
function Side({ shown, reading, className, children }: SideProps) {
  return (
    <div
      className={`min-h-0 w-full flex-1 flex-col lg:flex lg:flex-none ${shown ? 'flex' : 'hidden'} ${className}`}
    >
      {children}
      <p className="pt-1 text-center text-sm">{reading}</p>
    </div>
  );
}

const bubbleSide = (altitudeDeg: number): string =>
  Math.abs(altitudeDeg) < 0.25
    ? 'in the middle'
    : altitudeDeg > 0
      ? 'towards the front'
      : 'towards the back';

const bubbleInWords = (altitudeDeg: number): string =>
  Math.abs(altitudeDeg) < 0.25
    ? bubbleSide(altitudeDeg)
    : `${bubbleSide(altitudeDeg)}, tube ${Math.abs(altitudeDeg).toFixed(1)}° off level`;

type TurnableProps = {
  label: string;
  value: number;
  least: number;
  most: number;
  valueText: string;
  onStep: (byDeg: number) => void;
  /** Angles of the hand about the drawing's middle, clockwise from the top. */
  onDrag: (angleDeg: number, beforeDeg: number) => void;
  className: string;
  children: ReactNode;
};

/** A drawing that is turned about its middle by hand or by arrow keys. */
function Turnable(props: TurnableProps) {
  const hand = useRef<{ pointer: number; angleDeg: number } | null>(null);
  const angleOf = (event: PointerEvent<HTMLElement>): number => {
    const box = event.currentTarget.getBoundingClientRect();
    const x = event.clientX - (box.left + box.width / 2);
    const y = event.clientY - (box.top + box.height / 2);
    return radiansToDegrees(Math.atan2(x, -y));
  };
  const onKeyDown = (event: KeyboardEvent<HTMLElement>): void => {
    const by = event.shiftKey ? 10 : 0.5;
    const step =
      event.key === 'ArrowRight' || event.key === 'ArrowUp'
        ? by
        : event.key === 'ArrowLeft' || event.key === 'ArrowDown'
          ? -by
          : null;
    if (step === null) return;
    event.preventDefault();
    props.onStep(step);
  };
  return (
    <div
      role="slider"
      tabIndex={0}
      aria-label={props.label}
      aria-valuenow={props.value}
      aria-valuemin={props.least}
      aria-valuemax={props.most}
      aria-valuetext={props.valueText}
      className={`min-h-0 flex-1 cursor-grab touch-none select-none active:cursor-grabbing ${props.className}`}
      onKeyDown={onKeyDown}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        hand.current = { pointer: event.pointerId, angleDeg: angleOf(event) };
      }}
      onPointerMove={(event) => {
        const held = hand.current;
        if (held?.pointer !== event.pointerId) return;
        const angleDeg = angleOf(event);
        props.onDrag(angleDeg, held.angleDeg);
        held.angleDeg = angleDeg;
      }}
      onPointerUp={() => {
        hand.current = null;
      }}
      onPointerCancel={() => {
        hand.current = null;
      }}
    >
      {props.children}
    </div>
  );
}
