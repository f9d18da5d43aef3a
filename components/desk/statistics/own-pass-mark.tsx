'use client';

import { useState } from 'react';
import { Select } from '@/components/ui/select';
import { angoffCut, itemsToPass } from '@/lib/measurement/standard-setting';

const outOf = 10;
const choices = Array.from({ length: outOf + 1 }, (_, count) => count);

/**
 * A teacher's own pass mark: of ten students who only just deserve to pass, how many would have each
 * part right. One person's word, not a panel's; nothing is kept.
 */
export function OwnPassMark({
  id,
  title,
  criteria,
  passMark,
}: {
  /** Of the part, for the fields' ids. */
  id: string;
  title: string;
  criteria: readonly { id: string; name: string; possible: number }[];
  passMark: number;
}) {
  const [counts, setCounts] = useState<Readonly<Record<string, number>>>({});
  const points = criteria.map((one) => ((counts[one.id] ?? 0) / outOf) * one.possible);
  const possible = criteria.reduce((sum, one) => sum + one.possible, 0);
  const answered = criteria.every((one) => counts[one.id] !== undefined);
  const cut = (100 * angoffCut([points]).cut) / possible;
  return (
    <details className="no-print text-sm">
      <summary className="link inline-flex min-h-(--target-small) items-center">
        Where would you set the pass mark?<span className="sr-only"> {title}</span>
      </summary>
      <p className="mt-1 max-w-measure text-soft">
        Think of ten students who only just deserve to pass. How many of them would have each part
        right?
      </p>
      <ul className="mt-2 space-y-2">
        {criteria.map((one) => (
          <li key={one.id} className="flex flex-wrap items-center justify-between gap-2">
            <label htmlFor={`${id}-${one.id}`}>{one.name}</label>
            <Select
              id={`${id}-${one.id}`}
              className="w-28"
              value={counts[one.id] ?? ''}
              onChange={({ target }) => {
                const { value } = target;
                if (value !== '') setCounts({ ...counts, [one.id]: Number(value) });
              }}
            >
              <option value="">…</option>
              {choices.map((count) => (
                <option key={count} value={count}>
                  {count} of {outOf}
                </option>
              ))}
            </Select>
          </li>
        ))}
      </ul>
      <p role="status" className="mt-2 max-w-measure">
        {answered
          ? `By your word a pass is ${String(itemsToPass(cut))} of 100; set is ${String(passMark)}. It is one person’s estimate, not a panel’s: ask a colleague too. Nothing is changed by it.`
          : ''}
      </p>
    </details>
  );
}
