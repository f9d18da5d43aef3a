import { Meter } from '@/components/ui/meter';
import type { AttemptResult } from '@/lib/data/attempts';
import { lessonName } from '@/lib/wording/lesson-name';
import { labText, templateText } from './template-text';
import { zonedTimeText } from './zoned-time';
import { markText } from './mark-text';

/** What one attempt came to: when, which kind of task, the mark with what lateness took. */
export function AttemptFacts({
  attempt,
  timeZone,
  counting,
}: {
  attempt: AttemptResult;
  timeZone: string;
  /** What the gradebook shows for the assignment, where that differs from this attempt. */
  counting: { mark: number; overridden: boolean } | null;
}) {
  const { mode, mark, result, passMark, late, latePenalty, variant, lab } = attempt;
  return (
    <div className="grid gap-x-10 gap-y-4 sm:grid-cols-2">
      <dl className="grid grid-cols-[auto_1fr] gap-x-4 gap-y-1 self-start">
        <dt className="text-soft">{mode === 'check' ? 'Check' : 'Practice'}</dt>
        <dd>attempt {attempt.attemptNumber}</dd>
        <dt className="text-soft">Lab</dt>
        <dd>{labText[lab].name}</dd>
        <dt className="text-soft">{'lessons' in variant ? 'Lessons' : 'Kind of task'}</dt>
        <dd>
          {'lessons' in variant
            ? variant.lessons.map(lessonName).join(' · ')
            : templateText(lab, variant.template).name}
        </dd>
        {'lessons' in variant ? null : (
          <>
            <dt className="text-soft">{'scenario' in variant ? 'Sky' : 'Place'}</dt>
            <dd>
              {attempt.placeName}
              {'scenario' in variant
                ? `, ${variant.scenario.localTime.slice(0, 16).replace('T', ', ')}`
                : ''}
            </dd>
          </>
        )}
        <dt className="text-soft">Submitted</dt>
        <dd>
          {zonedTimeText(attempt.submittedAt, timeZone)}
          {late ? <span className="text-caution">, late</span> : null}
        </dd>
        <dt className="text-soft">Student sees it</dt>
        <dd>
          {attempt.feedbackVisibleFrom === 'now'
            ? 'now'
            : attempt.feedbackVisibleFrom === 'when-released'
              ? 'when you release it'
              : `from ${zonedTimeText(attempt.feedbackVisibleFrom, timeZone)}`}
        </dd>
      </dl>
      <div className="space-y-2">
        {mark === null || result === null ? null : (
          <Meter
            value={mark}
            label={mode === 'check' ? 'Mark of this attempt' : 'Practice, not counted'}
            valueText={`${markText(mark)} of 100`}
            markAt={passMark ?? undefined}
            markLabel={passMark === null ? undefined : `${markText(passMark)} to pass`}
          />
        )}
        {latePenalty > 0 && result !== null ? (
          <p className="text-sm text-caution">
            {markText(result.total)} less {markText(latePenalty * 100)} % for lateness.
          </p>
        ) : null}
        {counting === null ? null : (
          <p className="text-sm">
            In the gradebook:{' '}
            <span className="font-figures font-semibold">{markText(counting.mark)}</span>
            {counting.overridden ? ', set by hand' : ', by the rule which attempt counts'}.
          </p>
        )}
      </div>
    </div>
  );
}
