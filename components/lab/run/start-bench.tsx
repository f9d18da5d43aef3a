'use client';

import type { KeyboardEvent, PointerEvent, ReactNode } from 'react';
import { useRef } from 'react';
import type { TubeType } from '@/lib/optics/image-orientation';
import { radiansToDegrees, wrap360 } from '@/lib/units/angle';
import { LevelDrawing } from './level-drawing';
import { PlanDrawing } from './plan-drawing';
import { highestTubeDeg, lowestTubeDeg, type StartChoice } from './start-choice';

/** The tube seen from above over a compass, and from the side with its level. */
export function StartBench({ start, tubeType }: { start: StartChoice; tubeType: TubeType }) {
  return (
    <div className="flex size-full flex-col items-center justify-center gap-3 overflow-hidden p-3 pb-32 lg:flex-row lg:gap-10 lg:p-8 lg:pb-20">
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
        className="aspect-square h-3/5 min-h-0 lg:h-auto lg:w-[min(52%,34rem)]"
      >
        <PlanDrawing
          tubeType={tubeType}
          bearingDeg={start.bearingDeg}
          altitudeDeg={start.altitudeDeg}
        />
      </Turnable>
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
        className="aspect-[10/9] h-2/5 min-h-0 lg:h-auto lg:w-[min(40%,26rem)]"
      >
        <LevelDrawing tubeType={tubeType} altitudeDeg={start.altitudeDeg} />
      </Turnable>
    </div>
  );
}

const bubbleInWords = (altitudeDeg: number): string =>
  Math.abs(altitudeDeg) < 0.25
    ? 'in the middle'
    : `${altitudeDeg > 0 ? 'towards the front' : 'towards the back'}, tube ${Math.abs(altitudeDeg).toFixed(1)}° off level`;

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
      className={`cursor-grab touch-none select-none active:cursor-grabbing ${props.className}`}
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
