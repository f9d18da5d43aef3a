'use client';

import { labText } from '@/components/grading/template-text';
import { RadioGroup } from '@/components/ui/radio-group';
import { labOptions, labs, type Lab } from '@/lib/variants/labs';
import type { AssignmentDraft } from './assignment-draft';
import { Section, type SectionProps } from './section';

/** What is done: the first question, since the kinds of task depend on it. */
export function LabSection({
  draft,
  change,
  titles,
}: Pick<SectionProps<AssignmentDraft>, 'draft' | 'change'> & {
  /** What a new assignment of each lab is called until the teacher says otherwise. */
  titles: Readonly<Record<Lab, string>>;
}) {
  return (
    <Section id="section-lab" title="Lab">
      <RadioGroup
        legend="What students do"
        name="lab"
        value={draft.lab}
        options={labs.map((lab) => ({
          value: lab,
          label: labText[lab].name,
          hint: labText[lab].hint,
        }))}
        onValueChange={(lab) => {
          if (lab === draft.lab) return;
          const title = draft.title === titles[draft.lab] ? titles[lab] : draft.title;
          change({ lab, title, templates: labOptions[lab].templates });
        }}
      />
    </Section>
  );
}
