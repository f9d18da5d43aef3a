import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { AccommodationsChoice, NamesChoice } from '@/components/desk/exports/file-choices';
import { FileForm } from '@/components/desk/exports/file-form';
import { RetentionPanel } from '@/components/desk/exports/retention-panel';
import { zonedDayText } from '@/components/grading/zoned-time';
import { Field } from '@/components/ui/field';
import { Notice } from '@/components/ui/notice';
import { Select } from '@/components/ui/select';
import type { ClassFile } from '@/lib/data/exports-input';
import { listRoster } from '@/lib/data/roster';
import { routes } from '@/lib/routes';
import { classOf } from '../class-of';

export const metadata: Metadata = { title: 'Exports' };

export default async function ExportsPage({ params }: { params: Promise<{ classId: string }> }) {
  const { details, viewer, mayOwn } = await classOf(params);
  const { id } = details;
  if (details.role !== 'owner' && details.role !== 'teacher') {
    return (
      <Notice title="Files are taken away by the teachers of the class">
        You have been asked to look on. Ask one of the teachers for what you need.
      </Notice>
    );
  }
  const roster = await listRoster(viewer, id);
  if (roster === null) notFound();
  const to = (file: ClassFile): string => routes.teacher.classExport(id, file);
  return (
    <div className="space-y-5">
      <div className="max-w-measure space-y-2">
        <h2 className="text-xl font-semibold">Exports</h2>
        <p>
          Each file is made afresh when you ask for it. Without “With names”, card numbers stand for
          the students: only whoever has your roster knows who they are. Take no more than you need,
          and delete a file when it has done its work.
        </p>
      </div>
      <div className="grid items-start gap-5 lg:grid-cols-2">
        <FileForm
          title="Marks"
          href={to('marks.csv')}
          inIt="Each student’s mark and state in each published assignment, as the gradebook shows them."
          forWhom="The school’s own records, or your spreadsheet."
          notInIt="Attempts, comments and reasons. Extra attempts and time only if you tick them."
          submitLabel="Download marks.csv"
        >
          <NamesChoice />
          <AccommodationsChoice />
        </FileForm>
        <FileForm
          title="Skills"
          href={to('skills.csv')}
          inIt="Where each student stands in the twelve skills, and whether the skill is signed off at the telescope."
          forWhom="Whoever takes the class over, or plans the evenings outside."
          notInIt="The single marks and notes behind it: those are on the Skills and Sign-off pages."
          submitLabel="Download skills.csv"
        >
          <NamesChoice />
        </FileForm>
        <FileForm
          title="Attempts"
          href={to('attempts.csv')}
          inIt="One row an attempt, practice too: when it began and was handed in, mark, lateness, what counts, failed safety gates, and the version of the grader."
          forWhom="Looking closely at how the class worked, or a statistics lesson."
          notInIt="What was done inside an attempt, and marks that a teacher set by hand: those are in the marks."
          submitLabel="Download attempts.csv"
        >
          <NamesChoice />
        </FileForm>
        <FileForm
          title="Statements (xAPI)"
          href={to('statements.json')}
          inIt="The same attempts, and the questions practised in lessons, as statements of the Experience API 1.0.3, which a learning record store takes in. Each has the same id in every file until its mark changes: then a new file adds a statement beside the old one."
          forWhom="A school or trust with a learning record store."
          notInIt="What was answered to a question. Names, unless you tick them: an opaque number stands for the student. Never extra attempts or time."
          submitLabel="Download statements.json"
        >
          <NamesChoice hint="A store may keep statements for ever. Without names is the usual choice." />
        </FileForm>
        <FileForm
          title="One student’s data"
          href={to('student.zip')}
          inIt="Everything kept about one student, as a folder: all of it as data.json, the marks as a table, and a page that says what is what."
          forWhom="The student or the family, who may ask for it."
          notInIt="The sign-in card’s words (nobody keeps them), answers to open questions, and other students."
          submitLabel="Download the folder"
        >
          {roster.length === 0 ? (
            <p className="text-soft">There are no students yet.</p>
          ) : (
            <Field label="Student">
              {(control) => (
                <Select {...control} name="student" className="max-w-72" required>
                  {roster.map(({ studentId, displayName, cardNumber }) => (
                    <option key={studentId} value={studentId}>
                      {cardNumber} · {displayName}
                    </option>
                  ))}
                </Select>
              )}
            </Field>
          )}
          <AccommodationsChoice />
        </FileForm>
        <RetentionPanel
          keptUntil={zonedDayText(new Date(details.retentionDate), 'UTC')}
          settingsHref={routes.teacher.classSettings(id)}
          rosterHref={routes.teacher.classRoster(id)}
          mayOwn={mayOwn}
        />
      </div>
    </div>
  );
}
