'use client';

import { useState, useTransition } from 'react';
import { Button } from '@/components/ui/button';
import { Field } from '@/components/ui/field';
import { StatusLine } from '@/components/ui/status-line';
import { TextInput } from '@/components/ui/text-input';
import { hasMoment } from '@/lib/variants/labs';
import { splitLocalTime } from '../local-time-text';
import type { AssignmentDraft } from './assignment-draft';
import type { AssignmentFormActions, MomentAnswer } from './form-actions';
import { Section, type SectionProps } from './section';
import { MomentNote, TimeFields } from './time-fields';
import { draftPlace } from './draft-input';

/** What a sentence about dusk holds for: once the place or the time is changed, it is not said any more. */
const settingOf = (draft: AssignmentDraft): string =>
  [
    draft.latitude,
    draft.latitudeSide,
    draft.longitude,
    draft.longitudeSide,
    draft.timeZone,
    draft.date,
    draft.time,
  ].join(' ');

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
  const [said, setSaid] = useState({ text: '', of: '' });
  const [looking, startLooking] = useTransition();

  function useDusk(): void {
    const place = draftPlace(draft);
    if (place === null || draft.timeZone.trim() === '') {
      setSaid({ text: 'Choose a place first: dusk depends on it.', of: settingOf(draft) });
      return;
    }
    startLooking(async () => {
      try {
        const dusk = await duskTonight({ ...place, timeZone: draft.timeZone.trim() });
        const set = dusk.ok ? splitLocalTime(dusk.localTime) : {};
        setSaid({
          text: dusk.ok ? dusk.text : dusk.message,
          of: settingOf({ ...draft, ...set }),
        });
        if (dusk.ok) change(set);
      } catch {
        setSaid({
          text: 'Dusk could not be looked up just now. Type the time, or try again.',
          of: settingOf(draft),
        });
      }
    });
  }

  return (
    <Section
      id="section-time"
      title="Date and time"
      lead={
        draft.parts.some(({ lab }) => hasMoment(lab))
          ? 'The clock at the place. Each student gets a time near it, within the window of time set with the tasks.'
          : 'The clock at the place.'
      }
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
        <StatusLine>
          {looking ? 'Looking up dusk…' : said.of === settingOf(draft) ? said.text : ''}
        </StatusLine>
      </div>
      <MomentNote answer={moment} onChoose={change} />
    </Section>
  );
}
