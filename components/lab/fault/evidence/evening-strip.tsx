import type { EveningFacts } from '../fault-view';

/** What is certain of the evening: a right clock, the map, the telescope. */
export function EveningStrip({ facts, kitName }: { facts: EveningFacts; kitName: string }) {
  const rows = [
    { name: 'A right clock shows', value: facts.localTimeText },
    {
      name: 'The zone, in winter',
      value: `${facts.zoneOffsetText} from UTC; ${facts.summerTimeInForce ? 'summer time is in force' : 'no summer time now'}`,
    },
    { name: facts.placeName, value: `${facts.latitudeText}, ${facts.longitudeText}` },
    { name: 'Telescope', value: kitName },
  ];
  return (
    <section aria-label="What is certain of the evening">
      <div className="bench-edge" aria-hidden="true" />
      <dl className="grid gap-x-8 gap-y-2 pt-1 sm:grid-cols-2 xl:grid-cols-4">
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
