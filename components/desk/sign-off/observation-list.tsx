import { CircleCheck, Telescope } from 'lucide-react';
import { ConfirmAction } from '@/components/desk/confirm-action';
import type { FormActionFunction } from '@/components/desk/action-form';
import { zonedTimeText } from '@/components/grading/zoned-time';
import type { RecordedObservation, SkillRecord } from '@/lib/data/skill-progress';
import { helpWords, observationsNeeded } from '@/lib/mastery/sign-off';
import { failedGatesText } from '@/lib/mastery/sign-off-gates';
import { eveningText } from './cell-view';
import { cloudText } from './condition-fields';

/** An hour: what came later had waited on a device, and says so. */
const longMs = 3_600_000;

/** What was seen of one skill at the real telescope, by evening. */
export function ObservationList({
  observations,
  signOff,
  timeZone,
  takeBack,
}: Pick<SkillRecord, 'observations' | 'signOff'> & {
  timeZone: string;
  /** The action that takes one back, by its key. */
  takeBack: (key: string) => FormActionFunction;
}) {
  return (
    <div className="space-y-3">
      <p className="flex flex-wrap items-center gap-2">
        <Telescope aria-hidden="true" className="size-5" />
        {signOff?.evenings ?? 0} of {observationsNeeded} evenings count
        {signOff?.standing.signedOff === true ? (
          <span className="inline-flex items-center gap-1 font-semibold text-good">
            <CircleCheck aria-hidden="true" className="size-4" />
            signed off
          </span>
        ) : (
          <span className="text-soft">not yet signed off</span>
        )}
      </p>
      <ol className="divide-y divide-line rounded-b-lg border border-t-2 border-line border-t-strong bg-panel">
        {observations.map((one) => (
          <li
            key={one.key}
            className="grid gap-x-4 gap-y-1 p-3 sm:grid-cols-[11rem_minmax(0,1fr)_auto] sm:px-4"
          >
            <p className="text-sm text-soft">{eveningText(one.evening)}</p>
            <div className="min-w-0">
              <p className="font-semibold">
                Level {one.level}: {helpWords[one.level]}
              </p>
              {one.gates.length === 0 ? null : (
                <p className="font-semibold text-danger">
                  Gate failed: {failedGatesText(one.gates)}
                </p>
              )}
              <p className="text-sm text-soft">{factsOf(one, timeZone)}</p>
              {one.note === '' ? null : <p className="max-w-measure">{one.note}</p>}
            </div>
            {one.mayTakeBack ? (
              <div className="no-print">
                <ConfirmAction
                  action={takeBack(one.key)}
                  title="Take this observation back?"
                  description="It no longer counts. It stays in the trail of the class, with your name."
                  confirmLabel="Take it back"
                  busyLabel="Taking it back"
                >
                  Take back
                </ConfirmAction>
              </div>
            ) : null}
          </li>
        ))}
      </ol>
    </div>
  );
}

function factsOf(one: RecordedObservation, timeZone: string): string {
  const { assessor, instrument, conditions, prompts, observedAt, receivedAt } = one;
  const late = receivedAt.getTime() - observedAt.getTime() > longMs;
  return [
    assessor ?? 'an assessor whose account is gone',
    instrument,
    `${conditions.light}, ${cloudText[conditions.cloud]}`,
    prompts === 0 ? 'no prompts' : `${String(prompts)} ${prompts === 1 ? 'prompt' : 'prompts'}`,
    late ? `arrived ${zonedTimeText(receivedAt.toISOString(), timeZone)}` : '',
  ]
    .filter((part) => part !== '')
    .join(' · ');
}
