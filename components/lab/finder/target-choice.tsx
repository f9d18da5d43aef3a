'use client';

import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { minus, tubeMoved } from '@/lib/finder/sights';
import { finderHand, viewsInWords, type FinderProps } from './finder-hand';
import { aimsNow, chosenAim } from './finder-work';
import { aimInWords, fromSunInWords, metresInWords } from './finder-words';
import { capitalised } from '@/lib/wording/capital';
import { lettersOf } from './scene-places';

/** Which thing or light it is set on, and the turn towards it. */
export function TargetChoice(props: FinderProps) {
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
            {capitalised(aimInWords(chosen))}
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
