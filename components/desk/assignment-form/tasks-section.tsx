'use client';

import { Checkbox } from '@/components/ui/checkbox';
import { FieldError } from '@/components/ui/field';
import { labOptions } from '@/lib/variants/labs';
import { DecimalField } from '../decimal-field';
import { templateText } from '@/components/grading/template-text';
import type { AssignmentDraft } from './assignment-draft';
import { Section, type SectionProps } from './section';

const tasksLead =
  'Each attempt draws one of these kinds and its own moment, so that one copied answer does not serve the class.';
const questionsLead =
  'Each attempt draws eight questions, spread over all the lessons chosen here, so that one copied answer does not serve the class. With more than eight lessons there is one on each.';

export function TasksSection({ draft, change, problemAt }: SectionProps<AssignmentDraft>) {
  const problem = problemAt('templates');
  const { templates, canBeTimed, ofAllKinds = false, withoutSky = false } = labOptions[draft.lab];
  return (
    <Section
      id="section-tasks"
      title={ofAllKinds ? 'Lessons' : 'Tasks'}
      lead={ofAllKinds ? questionsLead : tasksLead}
    >
      <fieldset
        id="templates"
        tabIndex={-1}
        className="space-y-2"
        aria-describedby={problem === null ? undefined : 'templates-error'}
      >
        <legend className="mb-1 font-semibold">
          {ofAllKinds ? 'Lessons to ask about' : 'Kinds of task'}
        </legend>
        {templates.map((template) => (
          <Checkbox
            key={template}
            label={templateText(draft.lab, template).name}
            hint={templateText(draft.lab, template).hint}
            checked={draft.templates.includes(template)}
            onChange={(event) =>
              change({
                templates: templates.filter((other) =>
                  other === template ? event.target.checked : draft.templates.includes(other),
                ),
              })
            }
          />
        ))}
        {problem === null ? null : <FieldError id="templates-error">{problem}</FieldError>}
      </fieldset>
      {withoutSky ? null : (
        <DecimalField
          id="windowMinutes"
          label="Window of time"
          unit="± minutes"
          hint="How far a task’s moment may lie from the one above. In 40 minutes the sky turns by 10°. With 0 everyone gets the same moment."
          error={problemAt('windowMinutes')}
          value={draft.windowMinutes}
          onChange={(windowMinutes) => change({ windowMinutes })}
        />
      )}
      {canBeTimed ? (
        <DecimalField
          id="minutesAllowed"
          label="Time for full marks"
          unit="minutes"
          hint="Empty: time does not count, which is best for beginners. It is the sky’s own time, which stands still in the table and while an answer is read once more; a student who is given more time gets more of it."
          error={problemAt('minutesAllowed')}
          value={draft.minutesAllowed}
          onChange={(minutesAllowed) => change({ minutesAllowed })}
        />
      ) : null}
    </Section>
  );
}
