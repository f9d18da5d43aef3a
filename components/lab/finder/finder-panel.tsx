'use client';

import { arcminuteInWords } from '@/components/sky/angle-words';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Notice } from '@/components/ui/notice';
import { RadioGroup } from '@/components/ui/radio-group';
import { Select } from '@/components/ui/select';
import { SunCaution } from '@/components/ui/sun-caution';
import {
  companions,
  standingPlaces,
  type Companion,
  type StandingPlace,
} from '@/lib/finder/setting';
import { minus, tubeMoved } from '@/lib/finder/sights';
import { finderHand, viewsInWords, type FinderProps } from './finder-hand';
import { FinderQuestions } from './finder-questions';
import { hourInWords, taskInWords } from './finder-task';
import { aimsNow, chosenAim, dangersNow } from './finder-work';
import {
  aimInWords,
  companionNames,
  finderPlaceInWords,
  fromSunInWords,
  hazardInWords,
  metresInWords,
  standNames,
  startingCapital,
} from './finder-words';
import { lettersOf } from './scene-places';

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

/** Which thing or light it is set on, and the turn towards it. */
function TargetChoice(props: FinderProps) {
  const { variant } = props;
  const { state, act } = finderHand(props);
  const letters = lettersOf(variant);
  const chosen = chosenAim(variant, state);
  const given = variant.givenTargetId !== null;
  return (
    <div className="space-y-2">
      {given ? null : (
        <Field label="Set it on">
          {(control) => (
            <Select
              {...control}
              value={chosen?.id ?? ''}
              onChange={(event) => {
                const target = event.target.value;
                if (target === '') return;
                act({ do: 'choose', target }, (after) => {
                  const aim = chosenAim(variant, after);
                  return aim === null ? '' : `Chosen: ${aimInWords(aim)}.`;
                });
              }}
            >
              {chosen === null ? <option value="">Choose</option> : null}
              {aimsNow(variant, state).map((aim) => (
                <option key={aim.id} value={aim.id}>
                  {`${letters.get(aim.id) ?? ''} · ${aim.name}${aim.distanceM === null ? '' : `, ${metresInWords(aim.distanceM)}`}`}
                </option>
              ))}
            </Select>
          )}
        </Field>
      )}
      {chosen === null ? null : (
        <>
          <p className="text-sm">
            {startingCapital(aimInWords(chosen))}
            {byDayInWords(fromSunInWords(variant, state, chosen))}.
          </p>
          <Button
            onClick={() => {
              const landing = variant.landings[chosen.id] ?? { rightArcmin: 0, upArcmin: 0 };
              const to = tubeMoved(chosen, minus({ rightArcmin: 0, upArcmin: 0 }, landing));
              act({ do: 'move', ...to }, (after) =>
                [
                  `The tube points about towards ${chosen.name}, by eye along it.`,
                  viewsInWords(variant, after),
                ].join(' '),
              );
            }}
          >
            Turn the tube straight there
          </Button>
        </>
      )}
    </div>
  );
}

const byDayInWords = (fromSun: string): string => (fromSun === '' ? '' : `: ${fromSun}`);
