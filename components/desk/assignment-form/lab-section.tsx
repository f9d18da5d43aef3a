'use client';

import { labText } from '@/components/grading/template-text';
import { RadioGroup } from '@/components/ui/radio-group';
import { labOptions, labs, type Lab } from '@/lib/variants/labs';
import type { AssignmentDraft } from './assignment-draft';
import { Section, type SectionProps } from './section';

/** Every kind of task of a lab; of lessons the one that goes with the task, as twelve are seldom meant. */
function firstKinds(lab: Lab, lessonSlug: string | null): readonly string[] {
  const { templates, ofAllKinds } = labOptions[lab];
  if (ofAllKinds !== true) return templates;
  const offered = templates.filter((template) => template === lessonSlug);
  return offered.length > 0 ? offered : templates.slice(0, 1);
}

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
          change({ lab, title, templates: firstKinds(lab, draft.lessonSlug) });
        }}
      />
    </Section>
  );
}
