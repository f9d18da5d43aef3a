'use client';

import type { ReactNode } from 'react';
import { labText, templateText } from '@/components/grading/template-text';
import { Button } from '@/components/ui/button';
import { Checkbox } from '@/components/ui/checkbox';
import { Field, FieldError } from '@/components/ui/field';
import { Select } from '@/components/ui/select';
import { hasMoment, labOptions, labs, type Lab } from '@/lib/variants/labs';
import { DecimalField } from '../decimal-field';
import { Fold } from './fold';
import type { PartDraft } from './part-draft';
import { partDraftName, partDraftSettings } from './part-words';

const drawsLead = (hasOwnMoment: boolean): string =>
  `Each attempt draws one of these kinds${hasOwnMoment ? ' and its own moment' : ', with numbers of its own'}, so that one copied answer does not serve the class.`;
const questionsLead =
  'Each attempt draws eight questions, spread over all the lessons chosen here, so that one copied answer does not serve the class. With more than eight lessons there is one on each.';

type PartEditorProps = {
  part: PartDraft;
  /** From 0. */
  index: number;
  /** How many parts there are: one alone is shown as it is, several fold away. */
  count: number;
  startsOpen: boolean;
  problemAt: (field: string) => string | null;
  onLab: (lab: Lab) => void;
  onChange: (part: PartDraft) => void;
  onMove: (by: -1 | 1) => void;
  onRemove: () => void;
};

/** One marked part: what is done, its kinds of task, and how much it counts. */
export function PartEditor(props: PartEditorProps) {
  const { part, index, count, startsOpen, problemAt, onMove, onRemove } = props;
  if (count === 1) return <PartFields {...props} />;
  return (
    <Fold
      title={`Part ${String(index + 1)}: ${partDraftName(part)}`}
      now={`${partDraftSettings(part)}, weight ${part.weight}`}
      startsOpen={startsOpen}
      hasProblem={hasProblemIn(['lab', ...settingNames], index, problemAt)}
    >
      <PartFields {...props} />
      <div className="flex flex-wrap gap-2">
        {index === 0 ? null : (
          <Button onClick={() => onMove(-1)}>
            Move up<span className="sr-only">: part {index + 1}</span>
          </Button>
        )}
        {index === count - 1 ? null : (
          <Button onClick={() => onMove(1)}>
            Move down<span className="sr-only">: part {index + 1}</span>
          </Button>
        )}
        <Button variant="danger" onClick={onRemove}>
          Take away<span className="sr-only">: part {index + 1}</span>
        </Button>
      </div>
    </Fold>
  );
}

const settingNames = ['templates', 'windowMinutes', 'minutesAllowed', 'weight'];
const hasProblemIn = (
  names: readonly string[],
  index: number,
  problemAt: (field: string) => string | null,
): boolean => names.some((name) => problemAt(`parts.${String(index)}.${name}`) !== null);

function PartFields(props: PartEditorProps) {
  const { part, index, count, problemAt, onLab } = props;
  const path = `parts.${String(index)}`;
  const isLab = (value: string): value is Lab => labs.some((lab) => lab === value);
  return (
    <div className="space-y-4">
      <Field
        id={`${path}.lab`}
        label="What students do"
        hint={labText[part.lab].hint}
        error={problemAt(`${path}.lab`)}
      >
        {(control) => (
          <Select
            {...control}
            className="max-w-md"
            value={part.lab}
            onChange={({ target: { value } }) => {
              if (isLab(value)) onLab(value);
            }}
          >
            {labs.map((lab) => (
              <option key={lab} value={lab}>
                {labText[lab].name}
              </option>
            ))}
          </Select>
        )}
      </Field>
      {count === 1 ? (
        <Fold
          // Which lessons are asked about is the teacher's to say; kinds of task are all as good.
          key={part.lab}
          startsOpen={labOptions[part.lab].ofAllKinds === true}
          title={labOptions[part.lab].ofAllKinds === true ? 'Lessons' : 'Tasks'}
          now={partDraftSettings(part)}
          hasProblem={hasProblemIn(settingNames, index, problemAt)}
        >
          <PartSettings {...props} />
        </Fold>
      ) : (
        <PartSettings {...props} />
      )}
    </div>
  );
}

function PartSettings({ part, index, count, problemAt, onChange }: PartEditorProps) {
  const path = `parts.${String(index)}`;
  const { canBeTimed } = labOptions[part.lab];
  return (
    <>
      <Kinds
        id={`${path}.templates`}
        part={part}
        problem={problemAt(`${path}.templates`)}
        onChange={onChange}
      />
      <div className="flex flex-wrap gap-x-6 gap-y-4">
        {hasMoment(part.lab) ? (
          <DecimalField
            id={`${path}.windowMinutes`}
            label="Window of time"
            unit="± minutes"
            hint="How far each student’s time of the evening may lie from the one set below. In 40 minutes the sky turns by 10°. With 0 everyone gets the same moment."
            error={problemAt(`${path}.windowMinutes`)}
            value={part.windowMinutes}
            onChange={(windowMinutes) => onChange({ ...part, windowMinutes })}
          />
        ) : null}
        {canBeTimed ? (
          <DecimalField
            id={`${path}.minutesAllowed`}
            label="Time for full marks"
            unit="minutes"
            hint="Empty: time does not count, which is best for beginners. It is the sky’s own time, which stands still in the table and while an answer is read once more; a student who is given more time gets more of it."
            error={problemAt(`${path}.minutesAllowed`)}
            value={part.minutesAllowed}
            onChange={(minutesAllowed) => onChange({ ...part, minutesAllowed })}
          />
        ) : null}
        {count === 1 ? null : (
          <DecimalField
            id={`${path}.weight`}
            label="Weight"
            hint="Beside the other parts. With 0 it is done and counts for nothing."
            error={problemAt(`${path}.weight`)}
            value={part.weight}
            onChange={(weight) => onChange({ ...part, weight })}
          />
        )}
      </div>
    </>
  );
}

/** The kinds of task that an attempt may draw; of questions, the lessons that they are all about. */
function Kinds({
  id,
  part,
  problem,
  onChange,
}: {
  id: string;
  part: PartDraft;
  problem: string | null;
  onChange: (part: PartDraft) => void;
}): ReactNode {
  const { templates, ofAllKinds = false } = labOptions[part.lab];
  return (
    <fieldset
      id={id}
      tabIndex={-1}
      className="space-y-2"
      aria-describedby={problem === null ? undefined : `${id}-error`}
    >
      <legend className="mb-1 font-semibold">
        {ofAllKinds ? 'Lessons to ask about' : 'Kinds of task'}
      </legend>
      <p className="max-w-measure text-sm text-soft">
        {ofAllKinds ? questionsLead : drawsLead(hasMoment(part.lab))}
      </p>
      {templates.map((template) => (
        <Checkbox
          key={template}
          label={templateText(part.lab, template).name}
          hint={templateText(part.lab, template).hint}
          checked={part.templates.includes(template)}
          onChange={(event) =>
            onChange({
              ...part,
              templates: templates.filter((other) =>
                other === template ? event.target.checked : part.templates.includes(other),
              ),
            })
          }
        />
      ))}
      {problem === null ? null : <FieldError id={`${id}-error`}>{problem}</FieldError>}
    </fieldset>
  );
}
