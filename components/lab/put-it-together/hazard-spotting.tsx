'use client';

import { Checkbox } from '@/components/ui/checkbox';
import { Button } from '@/components/ui/button';
import type { PutItTogetherDraft } from '@/lib/grading/bench/put-it-together/put-it-together-submission';
import type { PutItTogetherVariant } from '@/lib/variants/bench/put-it-together/put-it-together-variant';
import type { BenchViewProps } from '../bench/bench-parts';
import { momentName, sightName } from './sight-words';

/** Three looks round: what of it could hurt somebody? */
export function HazardSpotting({
  variant,
  draft,
  change,
}: BenchViewProps<PutItTogetherVariant, PutItTogetherDraft>) {
  return (
    <div className="space-y-4">
      {variant.moments.map(({ moment, seen }) => {
        const marked = draft.hazards[moment];
        const set = (next: typeof marked, said: string) => {
          change({ ...draft, hazards: { ...draft.hazards, [moment]: next } }, said);
        };
        return (
          <fieldset key={moment} className="space-y-1">
            <legend className="font-semibold">{momentName[moment]}</legend>
            <p className="text-sm text-soft">Tick what could hurt somebody.</p>
            {seen.map((sight) => (
              <Checkbox
                key={sight}
                name={`${moment}-${sight}`}
                label={sightName[sight]}
                checked={marked?.includes(sight) ?? false}
                onChange={(event) => {
                  const rest = (marked ?? []).filter((one) => one !== sight);
                  const on = event.target.checked;
                  set(
                    on ? [...rest, sight] : rest,
                    `${sightName[sight]}: ${on ? 'marked as dangerous' : 'not marked'}.`,
                  );
                }}
              />
            ))}
            {marked === null ? (
              <Button
                onClick={() => {
                  set([], 'Nothing there is dangerous, you say.');
                }}
              >
                None of these
              </Button>
            ) : null}
          </fieldset>
        );
      })}
    </div>
  );
}
