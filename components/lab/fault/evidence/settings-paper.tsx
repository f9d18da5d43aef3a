import type { SettingsCard } from '@/lib/faults/evidence';
import { localTimeInWords } from '@/components/lab/pair/pair-lab-sky';

/** The rows of a card as it is read. */
export const settingsRows = (card: SettingsCard): readonly { name: string; value: string }[] => [
  { name: 'Date and time', value: localTimeInWords(card.localTime) },
  { name: 'Zone, in winter', value: `${card.timeZoneOffset} from UTC` },
  { name: 'Summer time', value: card.summerTime ? 'yes' : 'no' },
  { name: 'Latitude', value: card.latitudeText },
  { name: 'Longitude', value: card.longitudeText },
];

/** The card on which whoever set the telescope up wrote what they entered: ruled, with a folded corner. */
export function SettingsPaper({ card }: { card: SettingsCard }) {
  return (
    <div className="relative max-w-sm border border-strong bg-page [clip-path:polygon(0_0,calc(100%-1.4rem)_0,100%_1.4rem,100%_100%,0_100%)]">
      <span
        aria-hidden="true"
        className="absolute end-0 top-0 size-[1.4rem] border-s border-b border-strong bg-sunken"
      />
      <p className="border-b-2 border-accent px-3 pt-2 pb-1 text-sm font-semibold">
        Entered at the start
      </p>
      <dl className="px-3 pb-2">
        {settingsRows(card).map(({ name, value }) => (
          <div
            key={name}
            className="flex flex-wrap justify-between gap-x-4 border-b border-line py-1.5 last:border-b-0"
          >
            <dt className="text-sm text-soft">{name}</dt>
            <dd className="font-figures font-semibold">{value}</dd>
          </div>
        ))}
      </dl>
    </div>
  );
}
