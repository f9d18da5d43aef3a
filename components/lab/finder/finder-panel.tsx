'use client';

import { arcminuteInWords } from '@/components/sky/angle-words';
import { Button } from '@/components/ui/button';
import { Notice } from '@/components/ui/notice';
import { RadioGroup } from '@/components/ui/radio-group';
import { SunCaution } from '@/components/ui/sun-caution';
import {
  companions,
  standingPlaces,
  type Companion,
  type StandingPlace,
} from '@/lib/finder/day-hazard';
import { finderHand, type FinderProps } from './finder-hand';
import { FinderQuestions } from './finder-questions';
import { hourInWords, taskInWords } from './finder-task';
import { dangersNow } from './finder-work';
import { companionNames, finderPlaceInWords, hazardInWords, standNames } from './finder-words';
import { TargetChoice } from './target-choice';

/** What is asked, who and where, what to set it on, and when it is done. */
export function FinderPanel(props: FinderProps) {
  const { variant, draft, mode } = props;
  const { state, act } = finderHand(props);
  const byDay = !state.dusk;
  return (
    <div className="space-y-4">
      <p>{taskInWords(variant)}</p>
      <p className="text-sm text-soft">{hourInWords(variant, state)}</p>
      {mode === 'practice'
        ? dangersNow(variant, draft).map((hazard) => {
            const { title, text } = hazardInWords(hazard);
            return (
              <Notice key={hazard.id} tone="danger" title={`Stop: ${title}`} live="alert">
                {text}
              </Notice>
            );
          })
        : null}
      {byDay ? (
        <>
          <SunCaution />
          <RadioGroup<Companion | ''>
            legend="Who is beside you?"
            name="finder-companion"
            options={companions.map((value) => ({ value, label: companionNames[value] }))}
            value={state.companion ?? ''}
            onValueChange={(who) => {
              if (who === '') return;
              act({ do: 'companion', who }, () => `Beside you: ${companionNames[who]}.`);
            }}
          />
          <RadioGroup<StandingPlace | ''>
            legend="Where does the telescope stand?"
            name="finder-stand"
            options={standingPlaces.map((value) => ({ value, label: standNames[value] }))}
            value={state.stand ?? ''}
            onValueChange={(where) => {
              if (where === '') return;
              act({ do: 'stand', where }, () => `It stands so: ${standNames[where]}.`);
            }}
          />
        </>
      ) : null}
      <TargetChoice {...props} />
      <p className="text-sm text-soft">
        {finderPlaceInWords(variant)} {arcminuteInWords}
      </p>
      <div className="flex flex-wrap gap-2">
        <Button
          aria-pressed={state.locked}
          onClick={() => {
            act({ do: 'lock', on: !state.locked }, (after) =>
              after.locked ? 'The screws are locked.' : 'The screws are loose: they can be turned.',
            );
          }}
        >
          {state.locked ? 'Loosen the screws' : 'Lock the screws'}
        </Button>
        {variant.dusk !== null && byDay ? (
          <Button
            onClick={() => {
              act({ do: 'wait' }, () => 'The Sun has set. The first lights are out.');
            }}
          >
            Wait for dusk
          </Button>
        ) : null}
      </div>
      <FinderQuestions {...props} />
    </div>
  );
}
