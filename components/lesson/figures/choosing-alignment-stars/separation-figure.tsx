'use client';

import { useDeferredValue, useId, useMemo, useRef, useState, type PointerEvent } from 'react';
import { Button } from '@/components/ui/button';
import { Meter } from '@/components/ui/meter';
import { Select } from '@/components/ui/select';
import { DegreeControl } from '../degree-control';
import type { FigureData, FigureKit } from '../figure-data';
import { startingPair } from './starts';
import { pairFacts, type PairFacts } from './pair-facts';
import { SeparationDrawing } from './separation-drawing';
import { discPoint, discPosition, type SkyPosition } from '../sky-disc';

type Pair = readonly [SkyPosition, SkyPosition];

const examples: readonly { title: string; pair: Pair }[] = [
  {
    title: 'Side by side',
    pair: [
      { azimuthDeg: 170, altitudeDeg: 40 },
      { azimuthDeg: 180, altitudeDeg: 40 },
    ],
  },
  {
    title: 'One above the other',
    pair: [
      { azimuthDeg: 120, altitudeDeg: 25 },
      { azimuthDeg: 120, altitudeDeg: 65 },
    ],
  },
  {
    title: 'Nine fists apart',
    pair: [
      { azimuthDeg: 110, altitudeDeg: 35 },
      { azimuthDeg: 235, altitudeDeg: 45 },
    ],
  },
];

/** Two stars to move about, and what aligning on them is worth. */
export function SeparationFigure({ kits }: FigureData) {
  const [pair, setPair] = useState<Pair>(startingPair);
  const [kitId, setKitId] = useState(kits[0]?.id ?? '');
  const kit = kits.find((one) => one.id === kitId) ?? kits[0];
  if (kit === undefined) return null;
  const move = (index: 0 | 1, to: SkyPosition) =>
    setPair(([a, b]) => (index === 0 ? [to, b] : [a, to]));
  return (
    <div className="grid gap-x-8 gap-y-4 md:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
      <Worth kit={kit} pair={pair} onMove={move} />
      <div className="no-print flex flex-col gap-3">
        <KitChoice kits={kits} value={kit.id} onChange={setKitId} />
        {([0, 1] as const).map((index) => (
          <StarControls
            key={index}
            letter={index === 0 ? 'A' : 'B'}
            star={pair[index]}
            onMove={(to) => move(index, to)}
          />
        ))}
        <div className="flex flex-wrap gap-2">
          {examples.map((example) => (
            <Button key={example.title} onClick={() => setPair(example.pair)}>
              {example.title}
            </Button>
          ))}
        </div>
      </div>
    </div>
  );
}

function KitChoice(props: {
  kits: readonly FigureKit[];
  value: string;
  onChange: (id: string) => void;
}) {
  const id = useId();
  return (
    <div>
      <label htmlFor={id} className="text-sm font-semibold">
        Telescope
      </label>
      <Select id={id} value={props.value} onChange={(event) => props.onChange(event.target.value)}>
        {props.kits.map((kit) => (
          <option key={kit.id} value={kit.id}>
            {kit.name}
          </option>
        ))}
      </Select>
    </div>
  );
}

type StarControlsProps = {
  letter: string;
  star: SkyPosition;
  onMove: (to: SkyPosition) => void;
};

function StarControls({ letter, star, onMove }: StarControlsProps) {
  return (
    <fieldset className="min-w-0">
      <legend className="sr-only">Star {letter}</legend>
      <DegreeControl
        label={`Star ${letter}: azimuth`}
        value={star.azimuthDeg}
        min={0}
        max={359}
        onChange={(azimuthDeg) => onMove({ ...star, azimuthDeg })}
      />
      <DegreeControl
        label={`Star ${letter}: altitude`}
        value={star.altitudeDeg}
        min={0}
        max={89}
        onChange={(altitudeDeg) => onMove({ ...star, altitudeDeg })}
      />
    </fieldset>
  );
}

type WorthProps = { kit: FigureKit; pair: Pair; onMove: (index: 0 | 1, to: SkyPosition) => void };

function Worth({ kit, pair, onMove }: WorthProps) {
  // The stars follow the finger at once; the two hundred targets may come a moment later.
  const deferredPair = useDeferredValue(pair);
  const facts = useMemo(() => pairFacts(kit, deferredPair), [kit, deferredPair]);
  return (
    <div>
      <SeparationDrawing stars={pair} facts={facts} label={inWords(kit, facts)}>
        {([0, 1] as const).map((index) => (
          <Handle key={index} star={pair[index]} onMove={(to) => onMove(index, to)} />
        ))}
      </SeparationDrawing>
      <Meter
        value={facts.hits}
        label={`Hit rate with ${kit.name}`}
        valueText={`${String(Math.round(facts.hits))} of 100`}
      />
      <p role="status" className="mt-2">
        <strong className="font-semibold">{facts.advice}</strong> {inWords(kit, facts)}
      </p>
    </div>
  );
}

function inWords(kit: FigureKit, facts: PairFacts): string {
  const error =
    facts.expectedErrorArcmin === null
      ? 'the alignment stays undetermined'
      : facts.expectedErrorArcmin >= 600
        ? `a target is typically missed by ${String(Math.round(facts.expectedErrorArcmin / 60))}°`
        : `a target is typically missed by ${String(Math.round(facts.expectedErrorArcmin))}′`;
  return `The stars are ${String(Math.round(facts.separationDeg))}° apart, ${String(Math.round(facts.azimuthGapDeg))}° in azimuth; ${error}, and ${String(Math.round(facts.hits))} of 100 land in the eyepiece of ${kit.name}, which shows ${String(Math.round(kit.fieldRadiusArcmin))}′ to each side.`;
}

/** A round patch over a star to drag it by; keyboard and reader use the fields beside the picture. */
function Handle({ star, onMove }: { star: SkyPosition; onMove: (to: SkyPosition) => void }) {
  const dragging = useRef(false);
  const { x, y } = discPoint(star);
  const follow = (event: PointerEvent<SVGCircleElement>) => {
    const picture = event.currentTarget.ownerSVGElement;
    const matrix = picture?.getScreenCTM()?.inverse();
    if (picture === null || matrix === undefined) return;
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
    const { azimuthDeg, altitudeDeg } = discPosition({ x: at.x, y: at.y });
    onMove({
      azimuthDeg: Math.round(azimuthDeg) % 360,
      altitudeDeg: Math.min(89, Math.round(altitudeDeg)),
    });
  };
  return (
    <circle
      cx={x}
      cy={y}
      r="14"
      className="cursor-grab touch-none fill-transparent active:cursor-grabbing"
      onPointerDown={(event) => {
        dragging.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={(event) => {
        if (dragging.current) follow(event);
      }}
      onPointerUp={() => {
        dragging.current = false;
      }}
      onPointerCancel={() => {
        dragging.current = false;
      }}
    />
  );
}
