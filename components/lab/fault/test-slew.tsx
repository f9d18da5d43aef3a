'use client';

import { useState } from 'react';
import { positionInWords } from '@/components/sky/position-words';
import { Field } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { AskButton, AskNotice } from './ask-button';
import { LandingBlock } from './evidence/landing-block';
import { testSlewTitle } from './evidence/look-words';
import { lookCost } from '@/lib/grading/grade-fault';
import { marksInWords } from './marks-in-words';
import { OpenItem } from './open-item';
import type { FaultLabModel } from './use-fault-lab';

/** One slew to a star of the learner's choice; it says the most where the others say least. */
export function TestSlew({ lab }: { lab: FaultLabModel }) {
  const { view, choice } = lab;
  const [wanted, setWanted] = useState(choice.draft.testSlew ?? view.testSlews[0]?.hip ?? null);
  const asked = lab.asked['test-slew'];
  const done = view.testSlew;
  if (done !== null) {
    return (
      <OpenItem title={testSlewTitle} note="asked for" focused={lab.justOpened === 'test-slew'}>
        <LandingBlock landing={done} view={view} />
      </OpenItem>
    );
  }
  if (wanted === null) return null;
  return (
    <section
      aria-label={testSlewTitle}
      className="space-y-3 self-start rounded-b-lg border border-t-2 border-dashed border-strong bg-sunken px-4 py-3 sm:px-5"
    >
      <div>
        <h2 className="font-semibold">{testSlewTitle}</h2>
        <p className="text-sm text-soft">
          {asked?.state === 'waiting'
            ? 'The telescope is on its way …'
            : 'You may send the telescope to one more star and see where it lands. Choose one in a part of the sky about which you know least.'}
        </p>
      </div>
      <div className="flex flex-wrap items-end gap-3">
        <div className="min-w-0 flex-1 basis-64">
          <Field label="To which star?">
            {(control) => (
              <Select
                {...control}
                value={wanted}
                // Where no answer came the telescope may have been sent: it goes to one star only.
                disabled={asked !== undefined && asked.state !== 'refused'}
                onChange={(event) => {
                  setWanted(Number(event.target.value));
                }}
              >
                {view.testSlews.map(({ hip, name }) => {
                  const place = view.places[hip];
                  return (
                    <option key={hip} value={hip}>
                      {place === undefined
                        ? name
                        : `${name}: ${positionInWords(place.azimuthDeg, place.altitudeDeg)}`}
                    </option>
                  );
                })}
              </Select>
            )}
          </Field>
        </div>
        <AskButton
          asked={asked}
          label={`Send the telescope there, costs ${marksInWords(lookCost)}`}
          againLabel="Try again: your test slew"
          onAsk={() => {
            lab.testSlew(wanted);
          }}
        >
          Send it there · {marksInWords(lookCost)}
        </AskButton>
      </div>
      <AskNotice asked={asked} />
    </section>
  );
}
