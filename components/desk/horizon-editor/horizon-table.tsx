'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import type { HorizonPoint } from '@/lib/pointing/scenario';
import { whyNotMove, type HorizonChange } from './horizon-history';

/** The same points as numbers: the way to draw a skyline without dragging. */
export function HorizonTable({
  points,
  selected,
  onSelect,
  onChange,
}: {
  points: readonly HorizonPoint[];
  selected: number | null;
  onSelect: (index: number | null) => void;
  onChange: (change: HorizonChange) => void;
}) {
  if (points.length === 0) {
    return <p className="text-soft">No points: the horizon is taken as level, 0° all round.</p>;
  }
  return (
    <table className="w-full max-w-xl text-sm">
      <caption className="sr-only">Points of the skyline, from north round by east</caption>
      <thead>
        <tr className="border-b border-strong text-start">
          <th scope="col" className="py-1 text-start">
            Point
          </th>
          <th scope="col" className="py-1 text-start">
            Azimuth, °
          </th>
          <th scope="col" className="py-1 text-start">
            Altitude, °
          </th>
          <th scope="col" className="py-1">
            <span className="sr-only">Remove</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {points.map((point, index) => (
          <PointRow
            // The numbers are part of the key, so that a drag or an undo shows in the fields at once.
            key={`${index} ${point.azimuthDeg} ${point.altitudeDeg}`}
            point={point}
            index={index}
            points={points}
            selected={selected === index}
            onSelect={onSelect}
            onChange={onChange}
          />
        ))}
      </tbody>
    </table>
  );
}

function PointRow({
  point,
  index,
  points,
  selected,
  onSelect,
  onChange,
}: {
  point: HorizonPoint;
  index: number;
  points: readonly HorizonPoint[];
  selected: boolean;
  onSelect: (index: number | null) => void;
  onChange: (change: HorizonChange) => void;
}) {
  const [azimuth, setAzimuth] = useState(String(point.azimuthDeg));
  const [altitude, setAltitude] = useState(String(point.altitudeDeg));
  const [problem, setProblem] = useState<string | null>(null);
  const name = `Point ${index + 1}`;
  const problemId = `horizon-point-${index}-problem`;

  function commit(): void {
    const to = { azimuthDeg: readNumber(azimuth), altitudeDeg: readNumber(altitude) };
    if (to.azimuthDeg === point.azimuthDeg && to.altitudeDeg === point.altitudeDeg) {
      setProblem(null);
      return;
    }
    const refusal = whyNotType(points, index, to);
    setProblem(refusal);
    if (refusal === null) onChange({ kind: 'move', index, to });
  }

  const field = 'w-24 rounded-sm border border-strong bg-page px-2 py-1 font-figures';
  return (
    <tr className={selected ? 'bg-accent-soft' : undefined}>
      <th scope="row" className="py-1 pe-2 text-start font-semibold">
        {index + 1}
      </th>
      <td className="py-1 pe-2">
        <input
          className={field}
          inputMode="decimal"
          aria-label={`${name}, azimuth in degrees`}
          aria-invalid={problem !== null}
          aria-describedby={problem === null ? undefined : problemId}
          value={azimuth}
          onChange={(event) => setAzimuth(event.target.value)}
          onFocus={() => onSelect(index)}
          onBlur={commit}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            commit();
          }}
        />
        {problem === null ? null : (
          <p id={problemId} role="alert" className="mt-1 max-w-xs text-danger">
            {problem}
          </p>
        )}
      </td>
      <td className="py-1 pe-2 align-top">
        <input
          className={field}
          inputMode="decimal"
          aria-label={`${name}, altitude in degrees`}
          aria-invalid={problem !== null}
          value={altitude}
          onChange={(event) => setAltitude(event.target.value)}
          onFocus={() => onSelect(index)}
          onBlur={commit}
          onKeyDown={(event) => {
            if (event.key !== 'Enter') return;
            event.preventDefault();
            commit();
          }}
        />
      </td>
      <td className="py-1 text-end align-top">
        <Button variant="plain" type="button" onClick={() => onChange({ kind: 'remove', index })}>
          Remove<span className="sr-only"> point {index + 1}</span>
        </Button>
      </td>
    </tr>
  );
}

/** A decimal comma is a comma in half the world. NaN where it is no number. */
const readNumber = (text: string): number =>
  text.trim() === '' ? Number.NaN : Number(text.trim().replace(',', '.'));

function whyNotType(
  points: readonly HorizonPoint[],
  index: number,
  to: HorizonPoint,
): string | null {
  if (Number.isNaN(to.azimuthDeg)) return 'Type the azimuth as a number of degrees, 0 to 359.5.';
  if (!(to.altitudeDeg >= 0 && to.altitudeDeg <= 90))
    return 'Type the altitude as a number of degrees, 0 to 90.';
  return whyNotMove(points, index, to);
}
