import { localTimeInWords } from '@/components/lab/pair/pair-lab-sky';
import type { SettingsCard } from '@/lib/faults/evidence';
import type { FaultId } from '@/lib/faults/fault-ids';
import type { EveningFacts } from '../fault-view';

type Row = { fault: FaultId; name: string; entered: string; right: string };

const yesNo = (value: boolean): string => (value ? 'yes' : 'no');

const rowsOf = (card: SettingsCard, facts: EveningFacts): readonly Row[] => [
  {
    fault: 'date',
    name: 'Date and time',
    entered: localTimeInWords(card.localTime),
    right: facts.localTimeText,
  },
  {
    fault: 'time-zone',
    name: 'Zone, in winter',
    entered: `${card.timeZoneOffset} from UTC`,
    right: `${facts.zoneOffsetText} from UTC`,
  },
  {
    fault: 'summer-time',
    name: 'Summer time',
    entered: yesNo(card.summerTime),
    right: yesNo(facts.summerTimeInForce),
  },
  {
    fault: 'latitude',
    name: 'Latitude',
    entered: card.latitudeText,
    right: facts.latitudeText,
  },
  {
    fault: 'longitude-sign',
    name: 'Longitude',
    entered: card.longitudeText,
    right: facts.longitudeText,
  },
];

type SettingsBesideTruthProps = {
  card: SettingsCard;
  facts: EveningFacts;
  /** What it was; its line on the card is pointed at. */
  fault: FaultId;
};

/** What was entered beside what would have been right. */
export function SettingsBesideTruth({ card, facts, fault }: SettingsBesideTruthProps) {
  const rows = rowsOf(card, facts);
  return (
    <>
      <div className="table-frame overflow-x-auto">
        <table>
          <caption className="sr-only">What was entered, and what would have been right</caption>
          <thead>
            <tr>
              <td />
              <th scope="col">Entered</th>
              <th scope="col">Right</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.name}>
                <th scope="row">
                  {row.name}
                  {row.fault === fault ? (
                    <span className="block font-normal text-danger">here it is</span>
                  ) : null}
                </th>
                <td className={row.fault === fault ? 'bg-danger-soft font-semibold' : undefined}>
                  {row.entered}
                </td>
                <td>{row.right}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {rows.some((row) => row.fault === fault) ? null : (
        <p className="mt-2 text-sm text-soft">Every line is right: it was not the settings.</p>
      )}
    </>
  );
}
