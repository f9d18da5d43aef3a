import type { ReactNode } from 'react';
import { markText } from '@/components/grading/mark-text';
import { zonedTimeText } from '@/components/grading/zoned-time';
import type { ReportedWork, StudentReport } from '@/lib/data/student-report';
import { indoorsWords, nextStepWords, outsideWords, plainSkill, workWords } from './report-words';
import styles from './paper.module.css';

/** As much as a page holds beside the twelve skills. */
const mostWork = 10;
const mostComments = 4;

/** One student's page for the family: skills, work, comments, next steps. */
export function ReportView({
  report,
  withMarks,
}: {
  report: StudentReport;
  /** Else states alone are told. */
  withMarks: boolean;
}) {
  const { student, skills, work, timeZone, madeAt } = report;
  const shown = work.slice(-mostWork);
  const earlier = work.length - shown.length;
  return (
    <article className={`max-w-[56rem] text-ink ${styles.report ?? ''}`}>
      <header className="mb-3 flex flex-wrap items-baseline justify-between gap-x-6 border-b-4 border-strong pb-1.5">
        <h1 className="text-2xl font-bold">{student.displayName}</h1>
        <p className="text-soft">
          {student.className} · {dayText(madeAt, timeZone)}
        </p>
      </header>
      <Part title="What it takes to use a telescope">
        <table className="w-full border-collapse">
          <caption className="sr-only">The twelve skills</caption>
          <thead>
            <tr className="border-b border-strong text-sm">
              <th scope="col" className="text-start font-semibold">
                Skill
              </th>
              <th scope="col" className="px-3 text-start font-semibold">
                Indoors
              </th>
              <th scope="col" className="text-start font-semibold">
                At the real telescope
              </th>
            </tr>
          </thead>
          <tbody>
            {skills.map(({ skill, seen, ...mastery }) => (
              <tr key={skill} className="border-b border-line align-top">
                <th scope="row" className="py-0.5 text-start font-[inherit]">
                  {plainSkill[skill]}
                </th>
                <td className="px-3 py-0.5">{indoorsWords(mastery)}</td>
                <td className="py-0.5">{outsideWords(seen)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </Part>
      <Part title="Work that was set">
        {shown.length === 0 ? (
          <p>Nothing has been set yet.</p>
        ) : (
          <WorkTable work={shown} timeZone={timeZone} withMarks={withMarks} />
        )}
        {earlier === 0 ? null : (
          <p className="mt-1 text-sm text-soft">
            And {earlier} earlier {earlier === 1 ? 'piece' : 'pieces'} of work, not listed here.
          </p>
        )}
      </Part>
      <Comments work={shown} />
      <Part title="Next steps">
        {report.nextSteps.length === 0 ? (
          <p>Everything has been shown, indoors and outside. Come and look at the sky.</p>
        ) : (
          <ul className="list-disc ps-5">
            {report.nextSteps.map((step) => (
              <li key={nextStepWords(step)}>{nextStepWords(step)}</li>
            ))}
          </ul>
        )}
      </Part>
      <p className="mt-3 text-sm text-soft">
        “Has shown it” means three different tasks passed in a row; it is asked for again after 2, 7
        and 21 days. A skill is signed off when a teacher has seen it on two evenings at the
        telescope, with little help or none.
      </p>
    </article>
  );
}

const dayText = (instant: string, timeZone: string): string =>
  new Intl.DateTimeFormat('en-GB', { dateStyle: 'long', timeZone }).format(new Date(instant));

function Part({ title, children }: { title: string; children: ReactNode }) {
  return (
    <section aria-label={title} className="mb-4 print:mb-2.5">
      <h2 className="mb-1 text-lg font-semibold">{title}</h2>
      {children}
    </section>
  );
}

function WorkTable({
  work,
  timeZone,
  withMarks,
}: {
  work: readonly ReportedWork[];
  timeZone: string;
  withMarks: boolean;
}) {
  return (
    <table className="w-full border-collapse">
      <caption className="sr-only">Work that was set, the newest last</caption>
      <thead>
        <tr className="border-b border-strong text-sm">
          <th scope="col" className="text-start font-semibold">
            Title
          </th>
          <th scope="col" className="px-3 text-start font-semibold">
            Due
          </th>
          <th scope="col" className="text-start font-semibold">
            How it stands
          </th>
          {withMarks ? (
            <th scope="col" className="text-end font-semibold">
              Mark of 100
            </th>
          ) : null}
        </tr>
      </thead>
      <tbody>
        {work.map(({ id, title, dueAt, mark, ...standing }) => (
          <tr key={id} className="border-b border-line align-top">
            <th scope="row" className="py-0.5 text-start font-[inherit]">
              {title}
            </th>
            <td className="px-3 py-0.5">{dueAt === null ? '–' : zonedTimeText(dueAt, timeZone)}</td>
            <td className="py-0.5">{workWords(standing)}</td>
            {withMarks ? (
              <td className="py-0.5 text-end font-figures">
                {mark === null ? '–' : markText(mark)}
              </td>
            ) : null}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Comments({ work }: { work: readonly ReportedWork[] }) {
  const written = work
    .toReversed()
    .flatMap(({ id, title, comments }) => comments.map((comment) => ({ id, title, ...comment })))
    .slice(0, mostComments);
  if (written.length === 0) return null;
  return (
    <Part title="What was written beside it">
      <ul className="space-y-1">
        {written.map(({ id, title, text, by }, index) => (
          <li key={`${id} ${String(index)}`} className="keep-together">
            <span className="whitespace-pre-line">{text}</span>{' '}
            <span className="text-sm text-soft">
              {title}
              {by === null ? '' : `, ${by}`}
            </span>
          </li>
        ))}
      </ul>
    </Part>
  );
}
