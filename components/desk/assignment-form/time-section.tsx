'use client';

import { useState, useTransition } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { StatusLine } from '@/components/ui/status-line';
import { TextInput } from '@/components/ui/text-input';
import { splitLocalTime, type AssignmentDraft } from './assignment-draft';
import type { AssignmentFormActions, MomentAnswer } from './form-actions';
import { Section, type SectionProps } from './section';
import { MomentNote, TimeFields } from './time-fields';
import { draftPlace } from './draft-input';

export function TimeSection({
  draft,
  change,
  problemAt,
  zones,
  moment,
  duskTonight,
}: SectionProps<AssignmentDraft> & {
  zones: readonly string[];
  moment: MomentAnswer | null;
  duskTonight: AssignmentFormActions['duskTonight'];
}) {
  const [said, setSaid] = useState('');
  const [looking, startLooking] = useTransition();

  function useDusk(): void {
    const place = draftPlace(draft);
    if (place === null || draft.timeZone.trim() === '') {
      setSaid('Choose a place first: dusk depends on it.');
      return;
    }
    startLooking(async () => {
      try {
        const dusk = await duskTonight({ ...place, timeZone: draft.timeZone.trim() });
        setSaid(dusk.ok ? dusk.text : dusk.message);
        if (dusk.ok) change(splitLocalTime(dusk.localTime));
      } catch {
        setSaid('Dusk could not be looked up just now. Type the time, or try again.');
      }
    });
  }

  return (
    <Section
      id="section-time"
      title="Date and time"
      lead="The clock at the place. Each student gets a time near it, within the window set further down."
    >
      <div className="flex flex-wrap gap-x-6 gap-y-4">
        <TimeFields
          id="scenario.localTime"
          dateLabel="Date"
          timeLabel="Time"
          value={draft}
          error={problemAt('scenario.localTime')}
          onChange={change}
        />
        <Field id="scenario.timeZone" label="Time zone" error={problemAt('scenario.timeZone')}>
          {(control) => (
            <TextInput
              {...control}
              list="known-time-zones"
              autoComplete="off"
              spellCheck={false}
              className="max-w-64"
              value={draft.timeZone}
              onChange={(event) => change({ timeZone: event.target.value, offset: null })}
            />
          )}
        </Field>
        <datalist id="known-time-zones">
          {zones.map((zone) => (
            <option key={zone} value={zone} />
          ))}
        </datalist>
      </div>
      <div className="flex flex-wrap items-center gap-3">
        <Button busy={looking} onClick={useDusk}>
          Tonight at nautical dusk
        </Button>
        <StatusLine>{looking ? 'Looking up dusk…' : said}</StatusLine>
      </div>
      <MomentNote answer={moment} onChoose={change} />
    </Section>
  );
}
