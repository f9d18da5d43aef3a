import { coldShare, usableCapacityAh } from '@/lib/power/capacity';
import { cellResistanceOhm, cellVoltage } from '@/lib/power/cell';
import { nightOf, type PowerVariant } from '@/lib/variants/bench/power/power-variant';
import { degreesCText, kindNames, voltsText } from './power-words';

const currentsA = [0.1, 0.2, 0.25, 0.3, 0.35, 0.4, 0.5];
const temperaturesC = [20, 10, 0, -10];

/** Everything that is known of the evening: what the sums start from. */
export function NightCard({ variant }: { variant: PowerVariant }) {
  const night = nightOf(variant);
  if (night === null) return null;
  const { needs, kind, temperatureC, hours, slewingShare } = night;
  const cell = { kind, left: 1 };
  const facts = [
    ['Tonight', `${degreesCText(temperatureC)}, ${String(hours)} hours planned`],
    ['Cells', `eight ${kindNames[kind]}, fresh, ${voltsText(cellVoltage(cell))} each`],
    ['Tracking', `${String(Math.round(needs.trackingA * 1000))} mA`],
    [
      'Slewing',
      `${String(Math.round(needs.slewingA * 1000))} mA, ${String(Math.round(slewingShare * 100))} % of the time`,
    ],
    ['One cell tonight', `${cellResistanceOhm(cell, temperatureC).toFixed(2)} ohm inside`],
    ['Starts afresh', `below ${voltsText(needs.resetBelowV)}`],
  ];
  return (
    <section aria-label="The card for tonight" className="space-y-3 text-sm">
      <dl className="grid grid-cols-[auto_minmax(0,1fr)] gap-x-3 gap-y-0.5 rounded-md bg-sunken px-3 py-2">
        {facts.map(([name, value]) => (
          <div key={name} className="contents">
            <dt className="text-soft">{name}</dt>
            <dd className="font-semibold tabular-nums">{value}</dd>
          </div>
        ))}
      </dl>
      <div className="grid grid-cols-2 items-start gap-3">
        <ShortTable
          caption="What one cell gives at 20 °C"
          heads={['Current', 'Usable']}
          rows={currentsA.map((a) => [
            `${String(Math.round(a * 1000))} mA`,
            `${usableCapacityAh(kind, a).toFixed(2)} Ah`,
          ])}
        />
        <ShortTable
          caption="What the cold leaves of it"
          heads={['Cells at', 'Left']}
          rows={temperaturesC.map((t) => [
            degreesCText(t),
            `${String(Math.round(coldShare(kind, t) * 100))} %`,
          ])}
        />
      </div>
      <p className="text-soft">
        {kind === 'alkaline'
          ? 'At 100 and 250 mA the least that the cells’ standard asks for; the rest, and the cold, typical.'
          : 'Typical of such cells; your own may do better or worse.'}{' '}
        Between two lines, read in proportion.
      </p>
    </section>
  );
}

type ShortTableProps = {
  caption: string;
  heads: readonly [string, string];
  rows: readonly (readonly [string, string])[];
};

function ShortTable({ caption, heads, rows }: ShortTableProps) {
  return (
    <div className="table-frame">
      <table>
        <caption className="mb-1 text-start font-semibold">{caption}</caption>
        <thead>
          <tr>
            {heads.map((head) => (
              <th key={head} scope="col" className="number">
                {head}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, value]) => (
            <tr key={name}>
              <th scope="row" className="number">
                {name}
              </th>
              <td className="number">{value}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
