import type { Shape } from '@/lib/drawings/drawing';
import { degreesText, voltsText } from '@/lib/drawings/label-words';
import { kindNames } from '@/lib/drawings/row-of-cells';
import type { CellKind } from '@/lib/power/cell';
import { nightAhead, type NightAhead } from '@/lib/power/night';

type ColdNight = { kind: CellKind; temperatureC: number; slewingMinutes: number };
export const startingCold: ColdNight = { kind: 'alkaline', temperatureC: 0, slewingMinutes: 6 };

const resetBelowV = 7.2;
/** The evening that the bars are held against. */
const eveningHours = 3;

/** Eight fresh cells, 0.2 A while tracking, 1.2 A while slewing; minutes of slewing in each hour. */
export const coldNight = ({ kind, temperatureC, slewingMinutes }: ColdNight): NightAhead =>
  nightAhead({
    needs: {
      nominalV: 12,
      centre: 'positive',
      highestV: 14,
      resetBelowV,
      trackingA: 0.2,
      slewingA: 1.2,
    },
    kind,
    temperatureC,
    hours: eveningHours,
    slewingShare: slewingMinutes / 60,
  });

const mostHours = 16;
const mostV = 12;

function bar(y: number, title: string, text: string, share: number): Shape[] {
  return [
    { kind: 'text', x: 8, y: y - 7, text: title, size: 13, tone: 'soft' },
    { kind: 'text', x: 312, y: y - 7, text, size: 15, anchor: 'end', bold: true },
    { kind: 'rect', x: 8, y, w: 304, h: 24, fill: 'sunken', stroke: 'strong' },
    { kind: 'rect', x: 8, y, w: 304 * Math.min(1, share), h: 24, fill: 'accent' },
  ];
}

const limit = (y: number, share: number, text: string): Shape[] => [
  {
    kind: 'line',
    x1: 8 + 304 * share,
    x2: 8 + 304 * share,
    y1: y - 3,
    y2: y + 30,
    stroke: 'ink',
    width: 2.5,
  },
  { kind: 'text', x: 8 + 304 * share + 6, y: y + 41, text, size: 12 },
];

export const coldShapes = ({ runTimeHours, slewingV }: NightAhead): Shape[] => [
  ...bar(26, 'The cells last', `${runTimeHours.toFixed(1)} h`, runTimeHours / mostHours),
  ...limit(26, eveningHours / mostHours, `an evening of ${String(eveningHours)} h`),
  ...bar(110, 'Volts left in a slew', voltsText(slewingV), Math.max(0, slewingV) / mostV),
  ...limit(110, resetBelowV / mostV, `restarts below ${voltsText(resetBelowV)}`),
];

export function coldWords({ kind, temperatureC }: ColdNight, ahead: NightAhead): string {
  const lasts = `Eight ${kindNames[kind]} cells at ${degreesText(temperatureC)}: the mean current is ${ahead.meanA.toFixed(2)} A, the cold leaves ${String(Math.round(100 * ahead.coldShare))} % of their charge, and they last ${ahead.runTimeHours.toFixed(1)} hours.`;
  const slews = `In a slew ${voltsText(ahead.slewingV)} are left${ahead.resets ? ': the computer restarts, so these cells will not do' : ''}.`;
  const plan = {
    go: `Enough for ${String(eveningHours)} hours.`,
    'spare-set': `Not enough for ${String(eveningHours)} hours: take a spare set.`,
    'other-supply': '',
  }[ahead.plans[0] ?? 'go'];
  return [lasts, slews, plan].filter((one) => one !== '').join(' ');
}
