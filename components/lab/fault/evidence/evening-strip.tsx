import { localTimeInWords } from '@/components/lab/pair/pair-lab-sky';
import type { EveningFacts } from '../fault-view';

/** What is certain of the evening: a right clock, the map, the telescope. */
export function EveningStrip({ facts, kitName }: { facts: EveningFacts; kitName: string }) {
  const { right } = facts;
  const rows = [
    { name: 'A right clock shows', value: localTimeInWords(right.localTime) },
    {
      name: 'The zone, in winter',
      value: `${right.timeZoneOffset} from UTC; ${right.summerTime ? 'summer time is in force' : 'no summer time now'}`,
    },
    { name: facts.placeName, value: `${right.latitudeText}, ${right.longitudeText}` },
    { name: 'Telescope', value: kitName },
  ];
  return (
    <section aria-label="What is certain of the evening" className="@container">
      <div className="bench-edge" aria-hidden="true" />
      <dl className="grid grid-cols-2 gap-x-6 gap-y-2 pt-1 @3xl:grid-cols-[1.5fr_1.3fr_1.1fr_auto]">
        {rows.map(({ name, value }) => (
          <div key={name}>
            <dt className="text-sm text-soft">{name}</dt>
            <dd className="font-figures leading-snug font-semibold">{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
