'use client';

import { useRouter } from 'next/navigation';
import { useState, useTransition, type SubmitEvent } from 'react';
import { Button } from '@/components/ui/button';
import { ErrorSummary } from '@/components/ui/error-summary';
import { Field } from '@/components/ui/field';
import { StatusLine } from '@/components/ui/status-line';
import { TextInput } from '@/components/ui/text-input';
import type { Lab } from '@/lib/variants/labs';
import { joinLocalTime } from '../local-time-text';
import {
  assignmentDraft,
  type AssignmentDraft,
  type DraftSource,
  type KitChoice,
  type SiteChoice,
} from './assignment-draft';
import {
  draftPlace,
  draftProblems,
  draftToInput,
  isWithoutSky,
  type DraftProblem,
} from './draft-input';
import type { AssignmentFormActions, SaveQuestion } from './form-actions';
import { draftGivenText, formParts, FormPartsList, type ClassChoice } from './form-parts';
import { HorizonSection } from './horizon-section';
import { KitSection } from './kit-section';
import { LessonsSection, type LessonChoice } from './lessons-section';
import { LimitsSection } from './limits-section';
import { PartsSection } from './parts-section';
import { PlaceSection } from './place-section';
import { PresetSection } from './preset-section';
import { RulesSection } from './rules-section';
import { SaveQuestionDialog } from './save-question';
import { TimeSection } from './time-section';
import { UndoLine } from './undo-line';
import { useMoment } from './use-moment';

const timeKeys: readonly string[] = [
  'date',
  'time',
  'offset',
  'timeZone',
  'latitude',
  'latitudeSide',
  'longitude',
  'longitudeSide',
];
type Undo = { said: string; back: Pick<AssignmentDraft, 'parts' | 'lessons' | 'title'> };

const dueKeys: readonly string[] = ['dueDate', 'dueTime', 'dueOffset'];
const touches = (patch: Partial<AssignmentDraft>, keys: readonly string[]): boolean =>
  Object.keys(patch).some((key) => keys.includes(key));

/** Makes or changes an assignment. All that is typed stays in the page until the server has taken it. */
export function AssignmentForm({
  source,
  dueIsOver = false,
  kits,
  sites,
  zones,
  lessons,
  titles,
  givenTo,
  saveLabel,
  withPresets = false,
  actions,
}: {
  source: DraftSource;
  /** The due time that the form opens with lies in the past. */
  dueIsOver?: boolean;
  kits: readonly KitChoice[];
  sites: readonly SiteChoice[];
  /** IANA names to choose from. */
  zones: readonly string[];
  /** The lessons of the course. */
  lessons: readonly LessonChoice[];
  /** What a new assignment of each lab is called until the teacher says otherwise. */
  titles: Readonly<Record<Lab, string>>;
  givenTo: ClassChoice;
  saveLabel: string;
  /** Offers a whole lesson's work at one choice: for what is new. */
  withPresets?: boolean;
  actions: AssignmentFormActions;
}) {
  const router = useRouter();
  const [draft, setDraft] = useState(() => assignmentDraft(source));
  const [problems, setProblems] = useState<readonly DraftProblem[]>([]);
  const [refusals, setRefusals] = useState(0);
  const [undo, setUndo] = useState<Undo | null>(null);
  const [question, setQuestion] = useState<SaveQuestion | null>(null);
  const [moment, askMoment] = useMoment(actions.lookUpMoment);
  const [due, askDue] = useMoment(
    actions.lookUpMoment,
    dueIsOver ? { ok: true, text: '', sunIsUp: false, isOver: true } : null,
  );
  const [saving, startSaving] = useTransition();

  function change(patch: Partial<AssignmentDraft>): void {
    // What was typed since would be lost with it.
    setUndo(null);
    const next = { ...draft, ...patch };
    setDraft((current) => ({ ...current, ...patch }));
    // What has been mended is no longer accused; an untouched form is not accused before it is sent.
    if (problems.length > 0) setProblems(draftProblems(next));
    if (touches(patch, timeKeys)) {
      const complete = next.date !== '' && next.time !== '' && next.timeZone.trim() !== '';
      askMoment(
        complete
          ? {
              localTime: joinLocalTime(next.date, next.time, next.offset),
              timeZone: next.timeZone.trim(),
              place: draftPlace(next),
            }
          : null,
      );
    }
    if (touches(patch, dueKeys)) {
      askDue(
        next.dueDate !== '' && next.dueTime !== ''
          ? {
              localTime: joinLocalTime(next.dueDate, next.dueTime, next.dueOffset),
              timeZone: next.dueTimeZone,
              place: null,
            }
          : null,
      );
    }
  }

  /** Parts, lessons and title go together: a step back gives all three. */
  function changeWithUndo(patch: Partial<AssignmentDraft>, said: string): void {
    const { parts, lessons: read, title } = draft;
    change(patch);
    setUndo({ said, back: { parts, lessons: read, title } });
  }

  function refuse(found: readonly DraftProblem[]): void {
    setProblems(found);
    setRefusals((count) => count + 1);
  }

  function submit(event: SubmitEvent): void {
    event.preventDefault();
    const found = draftProblems(draft);
    refuse(found);
    if (found.length === 0) save(false);
  }

  function save(confirmed: boolean): void {
    setQuestion(null);
    startSaving(async () => {
      try {
        const answer = await actions.save(draftToInput(draft), confirmed);
        if (answer.ok) router.push(answer.href);
        else if ('question' in answer) setQuestion(answer.question);
        else refuse(answer.problems);
      } catch {
        refuse([
          {
            code: 'unreachable',
            message:
              'It could not be saved: the server did not answer. Everything you typed is still here; try again.',
          },
        ]);
      }
    });
  }

  const problemAt = (field: string): string | null =>
    problems.find((problem) => problem.field === field)?.message ?? null;
  const section = { draft, change, problemAt };
  return (
    <>
      <form
        onSubmit={submit}
        noValidate
        className="grid gap-x-10 min-[1100px]:grid-cols-[minmax(0,1fr)_15rem]"
      >
        <FormPartsList parts={formParts(draft, kits, sites)} saving={saving} />
        <div className="max-w-4xl min-w-0 space-y-8">
          <ErrorSummary problems={problems} refusal={refusals} />
          {withPresets ? (
            <PresetSection draft={draft} lessons={lessons} changeWithUndo={changeWithUndo} />
          ) : null}
          <UndoLine
            said={undo?.said ?? null}
            onUndo={() => {
              if (undo !== null) change(undo.back);
            }}
          />
          <Field id="title" label="Title" error={problemAt('title')}>
            {(control) => (
              <TextInput
                {...control}
                className="max-w-md"
                maxLength={120}
                value={draft.title}
                onChange={(event) => change({ title: event.target.value })}
              />
            )}
          </Field>
          <PartsSection {...section} changeWithUndo={changeWithUndo} titles={titles} />
          <div className="space-y-3">
            <LessonsSection {...section} lessons={lessons} />
            {isWithoutSky(draft) ? null : (
              <PlaceSection {...section} searchPlaces={actions.searchPlaces} />
            )}
          </div>
          {isWithoutSky(draft) ? null : (
            <>
              <TimeSection
                {...section}
                zones={zones}
                moment={moment}
                duskTonight={actions.duskTonight}
              />
              <div className="space-y-3">
                <HorizonSection {...section} sites={sites} />
                <KitSection {...section} kits={kits} />
                <LimitsSection {...section} />
              </div>
            </>
          )}
          <RulesSection {...section} due={due} />
          <div className="flex flex-wrap items-center gap-4 border-t border-line pt-5">
            <p className="w-full max-w-measure">
              <span className="font-semibold">In short: </span>
              {draftGivenText(draft, givenTo, lessons)}
            </p>
            <Button type="submit" variant="primary" size="large" busy={saving}>
              {saveLabel}
            </Button>
            <StatusLine>{saving ? 'Saving, and working out the sky…' : ''}</StatusLine>
          </div>
        </div>
      </form>
      <SaveQuestionDialog
        question={question}
        onConfirm={() => save(true)}
        onLeave={() => setQuestion(null)}
      />
    </>
  );
}
