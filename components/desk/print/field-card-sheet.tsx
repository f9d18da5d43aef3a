import type { ReactNode } from 'react';
import type { SkyPictureStar } from '@/components/sky/sky-picture-stars';
import type { ClassFieldCards, FieldCard } from '@/lib/data/field-cards';
import { clockTime } from '@/lib/night/evening';
import { packUpName } from '@/lib/drawings/pack-up-words';
import { orientationOf } from '@/lib/optics/image-orientation';
import { packUpSteps } from '@/lib/rehearsal/pack-up';
import { groupWithTelescope } from '@/lib/wording/group-name';
import { dayInWords } from '../night/night-words';
import { CardPairs } from './card-pairs';
import { cardSteps, type CardStep } from './card-steps';
import { fieldInWords, needleInWords, orientationInWords, settingsInWords } from './card-words';
import { curesOf, faultRows } from './fault-rows';
import styles from './paper.module.css';

type Evening = Extract<ClassFieldCards['evening'], { ok: true }>;
type SheetProps = {
  card: FieldCard;
  night: Pick<ClassFieldCards, 'className' | 'localDate' | 'placeName' | 'timeZone' | 'horizon'>;
  evening: Evening;
  /** The bright stars when the first pair begins. */
  stars: readonly SkyPictureStar[];
};

/** One telescope's sheet: setting up on the front, tonight's stars overleaf. */
export function FieldCardSheet({ card, night, evening, stars }: SheetProps) {
  // A group that is called by its telescope is not named twice.
  const name =
    card.groupName === null ? card.kitName : groupWithTelescope(card.groupName, card.kitName);
  return (
    <article aria-label={`Field card, ${name}`} className={`${styles.card ?? ''} text-ink`}>
      <Front card={card} name={name} night={night} evening={evening} />
      <section aria-label={`${name}, tonight`} className={`${styles.side ?? ''} mt-6 print:mt-0`}>
        <CardHead name={name} what="Tonight" night={night} />
        <p className="mb-2">
          Sunset {at(evening.evening.times.sunset, night.timeZone)} · dark{' '}
          {at(evening.evening.times.nauticalDusk, night.timeZone)} · pack up{' '}
          {at(evening.evening.to, night.timeZone)}
        </p>
        <CardPairs name={name} card={card} night={night} stars={stars} />
        <CardTitle>Packing up</CardTitle>
        <ol className="list-decimal gap-x-6 ps-6 text-sm sm:columns-2 print:columns-3 print:text-[10.5pt]">
          {packUpSteps.map((step) => (
            <li key={step}>{packUpName(step)}</li>
          ))}
        </ol>
      </section>
    </article>
  );
}

const at = (instant: string | null, timeZone: string): string =>
  instant === null ? 'not tonight' : clockTime(instant, timeZone);

function Front({ card, name, night, evening }: Omit<SheetProps, 'stars'> & { name: string }) {
  const { build, then } = cardSteps(card.tubeType);
  const { centring, observing } = card;
  const needle = needleInWords(evening.declinationDeg);
  return (
    <section aria-label={`${name}, setting up`} className={styles.side}>
      <CardHead name={name} what="Setting up" night={night} />
      <Cautions />
      <div className="mt-2 grid gap-x-6 sm:grid-cols-2 print:grid-cols-2">
        <div>
          <CardTitle>1. Build it by day</CardTitle>
          <Steps steps={build} />
          <CardTitle>Enter</CardTitle>
          <dl>
            {settingsInWords(evening.entered).map(([what, value]) => (
              <div key={what} className="flex justify-between gap-3 border-b border-ink">
                <dt>{what}</dt>
                <dd className="font-figures">{value}</dd>
              </div>
            ))}
          </dl>
        </div>
        <div>
          <CardTitle>2. Make it ready, then align</CardTitle>
          <Steps steps={then} />
          <p className="mt-1.5">
            {needle === null
              ? ''
              : `True north: ${needle.charAt(0).toLowerCase()}${needle.slice(1)} `}
            Centre with {centring.focalLengthMm} mm ({fieldInWords(centring.fieldArcmin)} across)
            {observing.focalLengthMm === centring.focalLengthMm
              ? ', and observe with it.'
              : `, observe with ${String(observing.focalLengthMm)} mm (${fieldInWords(observing.fieldArcmin)}).`}{' '}
            {card.tubeType === null ? '' : orientationInWords[orientationOf(card.tubeType)]}
          </p>
        </div>
      </div>
      <CardTitle>If this, then that</CardTitle>
      <table className="w-full border-collapse text-start">
        <caption className="sr-only">What is seen, and what puts it right</caption>
        <tbody>
          {faultRows.map((row) => (
            <tr key={row.sign} className="border-t border-ink align-top">
              <th scope="row" className="w-1/2 py-0.5 pe-3 text-start font-[inherit]">
                {row.sign}
              </th>
              <td className="py-0.5">→ {curesOf(row).join(' · ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

function CardHead({
  name,
  what,
  night,
}: {
  name: string;
  what: string;
  night: SheetProps['night'];
}) {
  return (
    <header className="mb-1.5 flex flex-wrap items-baseline justify-between gap-x-4 border-b-4 border-ink pb-1">
      <h2 className="text-2xl font-bold">
        {name} <span className="text-lg">{what}</span>
      </h2>
      <p>
        {dayInWords(night.localDate)} · {night.placeName} · {night.className}
      </p>
    </header>
  );
}

const CardTitle = ({ children }: { children: ReactNode }) => (
  <h3 className="mt-1.5 mb-0.5 text-lg font-bold">{children}</h3>
);

/** Before all steps, since each of these can meet any of them. */
function Cautions() {
  return (
    <ul className="border-2 border-ink px-2 py-1">
      <li>
        <strong className="font-black">SUN: tube and finder stay capped until it has set.</strong>{' '}
        One look blinds. No telescope stands alone by day.
      </li>
      <li>
        Batteries only. Mains is the teacher’s, dry and on a protected socket. Never mix cells,
        never charge primary ones.
      </li>
      <li>
        Two people lift. Fingers clear of folding legs. Mark legs and leads; walk, do not run.
      </li>
      <li>Thunder, or something not as it should be: step back, call the teacher.</li>
    </ul>
  );
}

function Steps({ steps }: { steps: readonly CardStep[] }) {
  return (
    <ol className="list-decimal ps-6">
      {steps.map(({ text, caution }) => (
        <li key={text}>
          {caution === undefined ? null : <strong className="font-black">{caution} </strong>}
          {text}
        </li>
      ))}
    </ol>
  );
}
