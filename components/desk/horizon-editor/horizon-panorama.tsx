'use client';

import { useRef, type KeyboardEvent, type PointerEvent } from 'react';
import type { HorizonPoint } from '@/lib/pointing/scenario';
import { horizonAltitudeDeg } from '@/lib/sky/horizon';
import type { HorizonChange } from './horizon-history';

/** Two units a degree along the horizon and upward, so that the skyline keeps its shape. */
const unitsPerDegree = 2;
const width = 360 * unitsPerDegree;
const skyHeight = 60 * unitsPerDegree;
const ground = 22;
const height = skyHeight + ground;
const topDeg = 60;

const x = (azimuthDeg: number): number => azimuthDeg * unitsPerDegree;
/** Above 60° the panorama is squeezed: nothing on a skyline that high needs fine placing. */
const y = (altitudeDeg: number): number =>
  skyHeight - Math.min(altitudeDeg, topDeg) * unitsPerDegree;

const directions = [
  [0, 'N'],
  [45, 'NE'],
  [90, 'E'],
  [135, 'SE'],
  [180, 'S'],
  [225, 'SW'],
  [270, 'W'],
  [315, 'NW'],
  [360, 'N'],
] as const;

/** The skyline as a polygon from north to north, closed along the ground. */
export function skylinePath(points: readonly HorizonPoint[]): string {
  const across = horizonAltitudeDeg(points, 0);
  const line = [
    `0,${y(across)}`,
    ...points.map((point) => `${x(point.azimuthDeg)},${y(point.altitudeDeg)}`),
    `${width},${y(across)}`,
  ];
  return `M0,${height} L${line.join(' L')} L${width},${height} Z`;
}

/**
 * The horizon all round, north at both ends, with a handle at each point. Handles move by dragging
 * or by arrow keys; a press on the open sky adds a point.
 */
export function HorizonPanorama({
  points,
  selected,
  lowestAltitudeDeg,
  highestAltitudeDeg,
  onSelect,
  onChange,
}: {
  points: readonly HorizonPoint[];
  selected: number | null;
  lowestAltitudeDeg: number;
  highestAltitudeDeg: number;
  onSelect: (index: number | null) => void;
  onChange: (change: HorizonChange) => void;
}) {
  const svg = useRef<SVGSVGElement>(null);
  const drag = useRef<{ index: number; moved: boolean } | null>(null);

  function pointUnder(event: PointerEvent): HorizonPoint | null {
    const box = svg.current?.getBoundingClientRect();
    if (box === undefined || box.width === 0 || box.height === 0) return null;
    return {
      azimuthDeg: Math.min(359.5, Math.max(0, ((event.clientX - box.left) / box.width) * 360)),
      altitudeDeg: (skyHeight - ((event.clientY - box.top) / box.height) * height) / unitsPerDegree,
    };
  }

  function startDrag(event: PointerEvent<SVGGElement>, index: number): void {
    if (event.button !== 0) return;
    event.stopPropagation();
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus();
    drag.current = { index, moved: false };
    onSelect(index);
  }

  function continueDrag(event: PointerEvent): void {
    const to = pointUnder(event);
    if (drag.current === null || to === null) return;
    onChange({ kind: 'move', index: drag.current.index, to, continues: drag.current.moved });
    drag.current.moved = true;
  }

  function moveByKey(event: KeyboardEvent, index: number, point: HorizonPoint): void {
    const stepDeg = event.shiftKey ? 5 : 1;
    const moves: Record<string, readonly [number, number]> = {
      ArrowLeft: [-stepDeg, 0],
      ArrowRight: [stepDeg, 0],
      ArrowUp: [0, stepDeg],
      ArrowDown: [0, -stepDeg],
    };
    const move = moves[event.key];
    if (move !== undefined) {
      event.preventDefault();
      const to = {
        azimuthDeg: point.azimuthDeg + move[0],
        altitudeDeg: point.altitudeDeg + move[1],
      };
      onChange({ kind: 'move', index, to, continues: event.repeat });
    } else if (event.key === 'Delete' || event.key === 'Backspace') {
      event.preventDefault();
      onChange({ kind: 'remove', index });
      onSelect(null);
    }
  }

  function addAt(event: PointerEvent<SVGSVGElement>): void {
    if (event.button !== 0 || event.pointerType === 'touch') return;
    const point = pointUnder(event);
    if (point !== null) onChange({ kind: 'add', point });
  }

  return (
    <div className="overflow-x-auto rounded-md border border-line">
      <svg
        ref={svg}
        viewBox={`0 0 ${width} ${height}`}
        className="on-sky block w-full min-w-[46rem] select-none font-figures"
        role="group"
        aria-label="Panorama of the horizon, from north through east, south and west back to north"
        onPointerDown={addAt}
      >
        <AltitudeLines
          lowestAltitudeDeg={lowestAltitudeDeg}
          highestAltitudeDeg={highestAltitudeDeg}
        />
        <path
          d={skylinePath(points)}
          className="fill-land"
          stroke="var(--sky-line)"
          strokeWidth={1.5}
        />
        {directions.map(([azimuthDeg, label]) => (
          <g key={azimuthDeg} aria-hidden="true">
            <line
              x1={x(azimuthDeg)}
              x2={x(azimuthDeg)}
              y1={skyHeight}
              y2={skyHeight + 5}
              stroke="var(--sky-line)"
            />
            <text
              x={x(azimuthDeg)}
              y={skyHeight + 17}
              fontSize={11}
              className="fill-on-sky"
              textAnchor={azimuthDeg === 0 ? 'start' : azimuthDeg === 360 ? 'end' : 'middle'}
            >
              {label}
            </text>
          </g>
        ))}
        {points.map((point, index) => (
          <g
            key={index}
            role="slider"
            tabIndex={0}
            aria-label={`Point ${index + 1}`}
            aria-valuemin={0}
            aria-valuemax={90}
            aria-valuenow={point.altitudeDeg}
            aria-valuetext={`azimuth ${point.azimuthDeg}°, altitude ${point.altitudeDeg}°`}
            transform={`translate(${x(point.azimuthDeg)} ${y(point.altitudeDeg)})`}
            className="horizon-handle touch-none cursor-grab active:cursor-grabbing"
            onPointerDown={(event) => startDrag(event, index)}
            onPointerMove={continueDrag}
            onPointerUp={() => (drag.current = null)}
            onPointerCancel={() => (drag.current = null)}
            onKeyDown={(event) => moveByKey(event, index, point)}
            onFocus={() => onSelect(index)}
          >
            {/* The target is larger than the dot: 24 px at least where the panorama is smallest. */}
            <circle r={13} fill="transparent" />
            <circle
              r={selected === index ? 7 : 5}
              fill={selected === index ? 'var(--sky-lamp)' : 'var(--sky)'}
              stroke="var(--sky-lamp)"
              strokeWidth={2}
            />
          </g>
        ))}
      </svg>
    </div>
  );
}

function AltitudeLines({
  lowestAltitudeDeg,
  highestAltitudeDeg,
}: {
  lowestAltitudeDeg: number;
  highestAltitudeDeg: number;
}) {
  return (
    <g aria-hidden="true">
      {[10, 20, 30, 40, 50].map((altitudeDeg) => (
        <g key={altitudeDeg}>
          <line
            x1={0}
            x2={width}
            y1={y(altitudeDeg)}
            y2={y(altitudeDeg)}
            stroke="var(--sky-line)"
            strokeOpacity={0.35}
            strokeWidth={0.75}
          />
          <text x={3} y={y(altitudeDeg) - 2} fontSize={8} className="fill-on-sky-soft">
            {altitudeDeg}°
          </text>
        </g>
      ))}
      {[lowestAltitudeDeg, highestAltitudeDeg]
        .filter((limit) => limit <= topDeg)
        .map((limit) => (
          <line
            key={limit}
            x1={0}
            x2={width}
            y1={y(limit)}
            y2={y(limit)}
            stroke="var(--sky-lamp)"
            strokeDasharray="5 4"
            strokeWidth={1}
          />
        ))}
    </g>
  );
}
