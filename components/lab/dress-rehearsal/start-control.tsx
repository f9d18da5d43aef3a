'use client';

import { Button } from '@/components/ui/button';
import type { StartChoice } from '../run/start-choice';
import type { Evening } from './evening';
import { onlyStarted, startedAt, withClutches } from './rehearsal-work';
import { runBeginsAgainText } from './stage-words';

type StartControlProps = { evening: Evening; start: StartChoice; laid: boolean };

/** The start as it stands in the drawing, and the two clutches. */
export function StartControl({ evening, start, laid }: StartControlProps) {
  const { draft, work } = evening;
  const { clutchesLocked } = draft;
  const lost = onlyStarted(draft.log) ? '' : ` ${runBeginsAgainText}`;
  return (
    <section
      aria-label="Clutches"
      className="grid grid-cols-2 gap-2 border-t-2 border-strong bg-panel px-3 py-2.5 select-none lg:border-s-2 lg:px-5 lg:py-4"
    >
      {evening.view === 'drawing' ? (
        <Button
          variant={laid ? 'quiet' : 'primary'}
          className="px-2"
          onClick={() => {
            work(
              'start-position',
              startedAt(start.azimuthDeg, start.altitudeDeg),
              `The tube lies as you have set it; its clutches are loose.${lost}`,
            );
          }}
        >
          {laid ? 'Lay it anew' : 'Leave it like this'}
        </Button>
      ) : null}
      <Button
        variant={laid && !clutchesLocked ? 'primary' : 'quiet'}
        className={evening.view === 'drawing' ? 'px-2' : 'col-span-2'}
        aria-pressed={clutchesLocked}
        onClick={() => {
          if (!laid) {
            evening.tell('Lay the tube at its start position first.');
            return;
          }
          work(
            'start-position',
            withClutches(draft, !clutchesLocked),
            clutchesLocked
              ? `Both clutches are loose.${lost}`
              : 'Both clutches are locked. From now on only the motors move the tube.',
          );
        }}
      >
        {clutchesLocked ? 'Clutches locked' : 'Lock both clutches'}
      </Button>
    </section>
  );
}
