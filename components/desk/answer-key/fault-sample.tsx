import { evidenceInFigures } from '@/components/grading/fault/fault-result-words';
import { cureWords } from '@/components/lab/fault/cure-words';
import { lookWords } from '@/components/lab/fault/evidence/look-words';
import { faultWords } from '@/components/lab/fault/fault-words';
import type { LabSamples } from '@/lib/data/lab-tasks/lab-tasks';

type Sample = Extract<LabSamples, { lab: 'what-went-wrong' }>['variants'][number]['sample'];

/** One faulty evening: what was behind it, what else would be right, and what it shows. */
export function FaultSample({ sample }: { sample: Sample }) {
  const { fault, alike, cures, evidence } = sample;
  const others = alike.filter((one) => one !== fault);
  return (
    <>
      <p>
        The fault: <strong className="font-semibold">{faultWords[fault].name}</strong>.{' '}
        {others.length === 0
          ? 'Nothing else looks the same that evening.'
          : `As right, since the evidence is the same: ${others.map((one) => faultWords[one].name).join(', ')}.`}
      </p>
      <p>Cure: {(cures[fault] ?? []).map((cure) => cureWords[cure].name).join(', or ')}.</p>
      <dl>
        {(['first', 'second', 'outcome', 'later'] as const).map((look) => (
          <div key={look}>
            <dt className="inline font-semibold">{lookWords[look].title}: </dt>
            <dd className="inline">{evidenceInFigures(look, { evidence })}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
