import { darkPaint, mountPaint } from '@/components/telescope/paint';
import type { PowerResult } from '@/lib/grading/bench/power/power-result';
import { isFresh, type CellKind } from '@/lib/power/cell';
import { isReversed, type Bay } from '@/lib/power/holder';
import { nightAhead } from '@/lib/power/night';
import type { BenchCell } from '@/lib/power/power-bench';
import { faultsOfSupply } from '@/lib/power/supply';
import { nightOf, type PowerVariant } from '@/lib/variants/bench/power/power-variant';
import { BayContacts } from './bay-contacts';
import { CellFigure } from './cell-figure';
import { NightFigure } from './night-figure';
import { computerWords, listed, verdictNames, voltsText } from './power-words';
import { SupplyFigure } from './supply-figure';

type PowerResultPictureProps = { variant: PowerVariant; result: PowerResult };

/** The bench as it was handed in, with what was right and wrong of it; or the night as it would have gone. */
export function PowerResultPicture({ variant, result }: PowerResultPictureProps) {
  const night = nightOf(variant);
  const { end } = result;
  return (
    <figure className="space-y-2">
      <div className="on-sky max-w-3xl overflow-x-auto rounded-md p-3">
        {night !== null ? (
          <svg viewBox="0 0 560 280" className="block w-full min-w-[22rem]" aria-hidden="true">
            <NightFigure
              x={10}
              y={6}
              width={540}
              night={night}
              runTimeHours={result.foretold?.runTimeHours ?? null}
              slewingVolts={result.foretold?.slewingVolts ?? null}
              right={rightOf(nightAhead(night))}
            />
          </svg>
        ) : variant.setup.supplies.length > 0 ? (
          <Supplies variant={variant} plugged={end.plugged} />
        ) : (
          <Holder bays={baysOf(variant, result)} />
        )}
      </div>
      <figcaption className="max-w-measure text-sm text-soft">
        {night !== null
          ? nightCaption(variant)
          : `As it was handed in: ${voltsText(end.volts)} at the socket, ${end.slewingV === null ? 'no slew possible' : `${voltsText(end.slewingV)} while slewing`}. ${computerWords[end.computer]}.`}
      </figcaption>
    </figure>
  );
}

const rightOf = ({ runTimeHours, slewingV }: { runTimeHours: number; slewingV: number }) => ({
  runTimeHours,
  slewingVolts: slewingV,
});

/** The sum, step by step. */
function nightCaption(variant: PowerVariant): string {
  const night = nightOf(variant);
  if (night === null) return '';
  const { meanA, capacityAh, coldShare, runTimeHours, openV, resistanceOhm, slewingV } =
    nightAhead(night);
  const { slewingShare, needs } = night;
  const share = Math.round(slewingShare * 100);
  return [
    `Mean current: ${String(share)} % of ${String(Math.round(needs.slewingA * 1000))} mA and ${String(100 - share)} % of ${String(Math.round(needs.trackingA * 1000))} mA make ${String(Math.round(meanA * 1000))} mA.`,
    `Run time: ${capacityAh.toFixed(2)} Ah × ${coldShare.toFixed(2)} ÷ ${meanA.toFixed(2)} A = ${runTimeHours.toFixed(1)} hours.`,
    `Slewing: ${openV.toFixed(1)} V − ${needs.slewingA.toFixed(1)} A × ${resistanceOhm.toFixed(2)} ohm = ${voltsText(slewingV)}.`,
  ].join(' ');
}

const baysOf = ({ setup }: PowerVariant, { end }: PowerResult): Bay<BenchCell>[] =>
  setup.springEnds.map((springEnd, i) => {
    const put = end.bays[i] ?? null;
    const cell = put && setup.cells.find(({ id }) => id === put.cell);
    return { springEnd, put: put && cell ? { cell, plusEnd: put.plusEnd } : null };
  });

/** Eight bays, each with a word below it. */
function Holder({ bays }: { bays: readonly Bay<BenchCell>[] }) {
  const kind = commonKind(bays);
  const slot = { width: 54, height: 128 };
  const words = bays.map((bay) => wordOf(bay, kind));
  return (
    <svg
      viewBox="0 0 592 190"
      className="block w-full min-w-[30rem]"
      role="img"
      aria-label={`The holder: ${listed(words.map((word, i) => `bay ${String(i + 1)} ${word}`))}.`}
    >
      <rect x="2" y="2" width="588" height="152" rx="8" {...mountPaint} />
      {bays.map(({ springEnd, put }, i) => (
        // Bays are known by their place.
        <g key={i} transform={`translate(${String(20 + i * 71)} 14)`}>
          <rect {...slot} rx="3" {...darkPaint} />
          <BayContacts springTop={springEnd === 'top'} tight={put !== null} {...slot} />
          {put === null ? null : (
            <g transform="translate(4 12)">
              <CellFigure cell={put.cell} plusEnd={put.plusEnd} width={46} height={104} />
            </g>
          )}
          <text
            x="27"
            y="162"
            fontSize="14"
            fontWeight={words[i] === 'right' ? 400 : 700}
            textAnchor="middle"
            fill={words[i] === 'right' ? 'var(--on-sky-soft)' : 'var(--sky-lamp)'}
          >
            {words[i]}
          </text>
        </g>
      ))}
    </svg>
  );
}

function wordOf(bay: Bay<BenchCell>, kind: CellKind | null): string {
  if (bay.put === null) return 'empty';
  if (isReversed(bay)) return 'turned';
  if (bay.put.cell.kind !== kind) return 'other kind';
  return isFresh(bay.put.cell) ? 'right' : 'used';
}

/** The kind that most of them are. */
function commonKind(bays: readonly Bay<BenchCell>[]): CellKind | null {
  const kinds = bays.flatMap(({ put }) => (put ? [put.cell.kind] : []));
  const counted = kinds.map((kind) => ({
    kind,
    count: kinds.filter((one) => one === kind).length,
  }));
  return counted.sort((one, other) => other.count - one.count)[0]?.kind ?? null;
}

/** The six labels, each with what is to be said of it. */
function Supplies({ variant, plugged }: { variant: PowerVariant; plugged: string | null }) {
  const { supplies, needs } = variant.setup;
  return (
    <svg viewBox="0 0 600 400" className="block w-full min-w-[30rem]" aria-hidden="true">
      {supplies.map((supply, i) => (
        <g
          key={supply.id}
          transform={`translate(${String(8 + (i % 3) * 198)} ${String(16 + Math.floor(i / 3) * 196)})`}
        >
          <SupplyFigure supply={supply} width={184} height={150} isIn={plugged === supply.id} />
          <text
            x="92"
            y="170"
            fontSize="14"
            fontWeight="700"
            textAnchor="middle"
            fill="var(--on-sky)"
          >
            {listed(faultsOfSupply(supply, needs).map((fault) => verdictNames[fault])) ||
              verdictNames.fits}
          </text>
        </g>
      ))}
    </svg>
  );
}
