'use client';

import { useState } from 'react';
import { ChoiceControl } from '../align-on-two-stars/choice-control';
import { faultKinds, patternFacts, type FaultKind } from './pattern-facts';
import { PatternDrawing } from './pattern-drawing';
import { patternWords } from './pattern-words';
import { SizeControl } from './size-control';

const stages = [
  { id: 'before', title: 'First slews, not aligned' },
  { id: 'after', title: 'Go-tos, aligned on 1 and 2' },
] as const;

/** One fault, its size, before or after the alignment: what slews all over the sky do. */
export function PatternFigure() {
  const [kindId, setKind] = useState<FaultKind>('lean');
  const [size, setSize] = useState(3);
  const [stage, setStage] = useState<'before' | 'after'>('before');
  const kind = faultKinds.find(({ id }) => id === kindId) ?? faultKinds[0];
  const facts = patternFacts(kind.id, size, stage);
  const words = patternWords(kind.id, stage, facts);
  return (
    <div className="grid gap-x-8 gap-y-4 md:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
      <div>
        <PatternDrawing facts={facts} label={words} />
        <p role="status" className="mt-2 min-h-[3.2em]">
          {words}
        </p>
      </div>
      <div className="no-print flex flex-col gap-3">
        <ChoiceControl
          label="What is wrong"
          value={kind.id}
          options={faultKinds}
          onChange={(id) => {
            const next = faultKinds.find((one) => one.id === id) ?? faultKinds[0];
            setKind(next.id);
            setSize(Math.min(size, next.most));
          }}
        />
        <SizeControl
          label={`By how much, ${kind.unit}`}
          value={size}
          most={kind.most}
          onChange={setSize}
        />
        <ChoiceControl
          label="When"
          value={stage}
          options={stages}
          onChange={(id) => setStage(id === 'after' ? 'after' : 'before')}
        />
      </div>
    </div>
  );
}
