'use client';

import { useState, type KeyboardEvent } from 'react';
import { Button } from '@/components/ui/button';
import { StatusLine } from '@/components/ui/status-line';
import { HorizonPanorama } from './horizon-panorama';
import { HorizonTable } from './horizon-table';
import type { HorizonChange, HorizonHistory } from './horizon-history';

/** Draws the site's skyline: on the panorama by dragging or arrow keys, or in the table of numbers. */
export function HorizonEditor({
  history,
  lowestAltitudeDeg,
  highestAltitudeDeg,
  onChange,
}: {
  history: HorizonHistory;
  lowestAltitudeDeg: number;
  highestAltitudeDeg: number;
  onChange: (change: HorizonChange) => void;
}) {
  const [selected, setSelected] = useState<number | null>(null);

  function undoByKey(event: KeyboardEvent): void {
    // A text field keeps its own undo.
    if (event.target instanceof HTMLInputElement || !(event.ctrlKey || event.metaKey)) return;
    if (event.key.toLowerCase() !== 'z') return;
    event.preventDefault();
    onChange({ kind: event.shiftKey ? 'redo' : 'undo' });
  }

  const point = selected === null ? undefined : history.points[selected];
  return (
    // The keys are caught from the handles and buttons inside; the group itself takes no focus.
    // eslint-disable-next-line jsx-a11y/no-noninteractive-element-interactions
    <div role="group" aria-label="Skyline" className="space-y-3" onKeyDown={undoByKey}>
      <HorizonPanorama
        points={history.points}
        selected={selected}
        lowestAltitudeDeg={lowestAltitudeDeg}
        highestAltitudeDeg={highestAltitudeDeg}
        onSelect={setSelected}
        onChange={onChange}
      />
      <div className="flex flex-wrap items-center gap-2">
        <Button
          variant="quiet"
          type="button"
          onClick={() => onChange({ kind: 'add-in-widest-gap' })}
        >
          Add a point
        </Button>
        <Button
          variant="quiet"
          type="button"
          disabled={point === undefined}
          onClick={() => {
            if (selected !== null) onChange({ kind: 'remove', index: selected });
            setSelected(null);
          }}
        >
          Remove{' '}
          {selected === null || point === undefined ? 'the chosen point' : `point ${selected + 1}`}
        </Button>
        <Button
          variant="quiet"
          type="button"
          disabled={history.past.length === 0}
          onClick={() => onChange({ kind: 'undo' })}
        >
          Undo
        </Button>
        <Button
          variant="quiet"
          type="button"
          disabled={history.future.length === 0}
          onClick={() => onChange({ kind: 'redo' })}
        >
          Redo
        </Button>
        <StatusLine>
          {history.refusal ??
            (point === undefined || selected === null
              ? `${history.points.length} ${history.points.length === 1 ? 'point' : 'points'}`
              : `Point ${selected + 1}: azimuth ${point.azimuthDeg}°, altitude ${point.altitudeDeg}°`)}
        </StatusLine>
      </div>
      <p className="max-w-measure text-sm text-soft">
        Drag a point, or choose one with Tab and move it with the arrow keys (Shift: 5° at a time;
        Delete removes it). With a mouse, a press on the open sky adds one. Dashed lines: the lowest
        and highest altitude for an alignment star.
      </p>
      <details className="rounded-md border border-line bg-panel px-3 py-2">
        <summary className="font-semibold">Points as numbers</summary>
        <div className="mt-3">
          <HorizonTable
            points={history.points}
            selected={selected}
            onSelect={setSelected}
            onChange={onChange}
          />
        </div>
      </details>
    </div>
  );
}
