'use client';

import { useEffect, useState, useTransition } from 'react';
import { Button } from '@/components/ui/button';
import { Checkbox } from '@/components/ui/checkbox';
import { ErrorSummary } from '@/components/ui/error-summary';
import { Notice } from '@/components/ui/notice';
import { RadioGroup } from '@/components/ui/radio-group';
import { StatusLine } from '@/components/ui/status-line';
import type { Problem, Result } from '@/lib/data/result';
import type { SignInCard } from '@/lib/data/roster';
import { CardSheets } from './card-sheets';

type CardStudent = { studentId: string; displayName: string; cardNumber: number; hasCard: boolean };
type Which = 'without-card' | 'all' | 'chosen';

/** Makes sign-in cards: chosen, made with new words, shown once, printed. */
export function CardMaker({
  students,
  chosenAtFirst,
  makeCards,
}: {
  students: readonly CardStudent[];
  /** One student whose card is to be made anew. */
  chosenAtFirst: string | null;
  makeCards: (which: string[] | 'all' | 'without-card') => Promise<Result<SignInCard[]>>;
}) {
  const withoutCard = students.filter((student) => !student.hasCard).length;
  const [which, setWhich] = useState<Which>(
    chosenAtFirst !== null ? 'chosen' : withoutCard > 0 ? 'without-card' : 'chosen',
  );
  const [chosen, setChosen] = useState<ReadonlySet<string>>(
    new Set(chosenAtFirst === null ? [] : [chosenAtFirst]),
  );
  const [cards, setCards] = useState<readonly SignInCard[] | null>(null);
  const [perSheet, setPerSheet] = useState<'8' | '10'>('8');
  const [problem, setProblem] = useState<Problem | null>(null);
  const [making, startMaking] = useTransition();

  const toMake = students.filter(
    (student) =>
      which === 'all' || (which === 'chosen' ? chosen.has(student.studentId) : !student.hasCard),
  );
  const replaced = toMake.filter((student) => student.hasCard).length;

  // The words are nowhere else: leaving before they are printed loses them.
  useEffect(() => {
    if (cards === null) return;
    const warn = (event: BeforeUnloadEvent): void => event.preventDefault();
    window.addEventListener('beforeunload', warn);
    return () => window.removeEventListener('beforeunload', warn);
  }, [cards]);

  function make(): void {
    startMaking(async () => {
      try {
        const answer = await makeCards(which === 'chosen' ? [...chosen] : which);
        setProblem(answer.ok ? null : answer.problem);
        if (answer.ok) setCards(answer.value);
      } catch {
        setProblem({
          code: 'unreachable',
          message:
            'The server did not answer. If cards were made meanwhile, make them again: only the last ones work.',
        });
      }
    });
  }

  if (cards !== null) {
    return (
      <div className="space-y-5">
        <div className="space-y-4 print:hidden">
          <Notice
            tone="caution"
            live="status"
            title={`${cards.length} ${cards.length === 1 ? 'card is' : 'cards are'} ready: print now`}
          >
            <p>
              The words are shown this once and kept nowhere. If the sheet is lost, make new cards.
              In the print dialog choose A4 or Letter, 100 % and no headers.
            </p>
          </Notice>
          <div className="flex flex-wrap items-end gap-x-8 gap-y-3">
            <RadioGroup
              legend="Cards on a sheet"
              name="per-sheet"
              inline
              value={perSheet}
              options={[
                { value: '8', label: '8, larger print' },
                { value: '10', label: '10' },
              ]}
              onValueChange={setPerSheet}
            />
            <Button variant="primary" onClick={() => window.print()}>
              Print the cards
            </Button>
            <Button onClick={() => setCards(null)}>Done: take them off the screen</Button>
          </div>
        </div>
        <CardSheets cards={cards} perSheet={perSheet === '8' ? 8 : 10} />
      </div>
    );
  }

  return (
    <div className="space-y-5">
      <h2 className="text-xl font-semibold">Sign-in cards</h2>
      <p className="max-w-measure text-soft">
        A card carries the class code, the student’s number and three secret words. That is all a
        student needs: no email, no password to forget.
      </p>
      <ErrorSummary problems={problem === null ? [] : [problem]} />
      <RadioGroup
        legend="Make cards for"
        name="which"
        value={which}
        options={[
          {
            value: 'without-card',
            label: `students without a card (${withoutCard})`,
            disabled: withoutCard === 0,
          },
          { value: 'chosen', label: 'chosen students' },
          { value: 'all', label: `the whole class (${students.length})` },
        ]}
        onValueChange={setWhich}
      />
      {which === 'chosen' ? (
        <fieldset id="which" tabIndex={-1}>
          <legend className="mb-1 font-semibold">Students</legend>
          <div className="grid max-h-96 gap-x-6 gap-y-1 overflow-y-auto border border-line bg-panel p-3 sm:grid-cols-2 lg:grid-cols-3">
            {students.map((student) => (
              <Checkbox
                key={student.studentId}
                label={`${student.cardNumber} ${student.displayName}${student.hasCard ? '' : ' (no card yet)'}`}
                checked={chosen.has(student.studentId)}
                onChange={(event) => {
                  const next = new Set(chosen);
                  if (event.target.checked) next.add(student.studentId);
                  else next.delete(student.studentId);
                  setChosen(next);
                }}
              />
            ))}
          </div>
        </fieldset>
      ) : null}
      {replaced === 0 ? null : (
        <Notice
          tone="caution"
          title={
            replaced === 1 ? 'One old card stops working' : `${replaced} old cards stop working`
          }
        >
          <p>
            New words replace the old ones, and whoever is signed in with an old card is signed out
            at once. Work that was saved stays.
          </p>
        </Notice>
      )}
      <div className="flex flex-wrap items-center gap-4">
        <Button
          variant="primary"
          size="large"
          busy={making}
          disabled={toMake.length === 0}
          onClick={make}
        >
          {toMake.length === 0
            ? 'Make cards'
            : `Make ${toMake.length} ${toMake.length === 1 ? 'card' : 'cards'}`}
        </Button>
        <StatusLine>
          {making ? 'Making new words for each card; a large class takes some seconds…' : ''}
        </StatusLine>
      </div>
    </div>
  );
}
