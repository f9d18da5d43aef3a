'use client';

import { useState } from 'react';
import { Button } from '@/components/ui/button';
import { Drawn } from './drawn';
import { cellWays, rowFacts, rowWords, startingRow, type CellWay } from './row-facts';

const wayWords: Readonly<Record<CellWay, string>> = {
  right: 'the right way round',
  turned: 'turned round',
  out: 'out',
};
const nextOf = (way: CellWay): CellWay =>
  cellWays[(cellWays.indexOf(way) + 1) % cellWays.length] ?? 'right';

/** Eight cells in a row, each to be turned or taken out, and what the meter shows. */
export function RowFigure() {
  const [ways, setWays] = useState(startingRow);
  const facts = rowFacts(ways);
  const words = rowWords(facts);
  const change = (bay: number) =>
    setWays((before) => before.map((way, i) => (i === bay ? nextOf(way) : way)));
  return (
    <div>
      <Drawn width={320} height={216} shapes={facts.shapes} label={words} />
      <p role="status" className="mt-2">
        {words}
      </p>
      <div className="no-print mt-3">
        <p className="text-sm font-semibold">
          Press a number: turned round, then out, then right again
        </p>
        <div className="mx-auto mt-1 grid max-w-[32rem] grid-cols-8 gap-1">
          {ways.map((way, i) => (
            <Button
              key={i}
              className="px-0"
              aria-label={`Cell ${String(i + 1)}, ${wayWords[way]}. Press: ${wayWords[nextOf(way)]}`}
              onClick={() => change(i)}
            >
              {i + 1}
            </Button>
          ))}
        </div>
        <div className="mt-2">
          <Button onClick={() => setWays(ways.map(() => 'right'))}>All the right way round</Button>
        </div>
      </div>
    </div>
  );
}
