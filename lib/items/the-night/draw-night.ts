import type { ItemDrawing, Shape } from '../../drawings/drawing';
import { chartFrom, chartHours, clockText, type Night } from './night-of';

const left = 8;
const right = 312;
const xOf = (hours: number): number => left + ((hours - chartFrom) / chartHours) * (right - left);

/** Hours on the chart of an instant, from midnight of the date it begins on. */
const hoursOf = (instant: string, localDate: string): number =>
  (Date.parse(instant) - Date.parse(`${localDate}T00:00:00Z`)) / 3_600_000;

/** Stretches in which something holds, in hours. */
function stretches(
  marks: Night['marks'],
  holds: (mark: Night['marks'][number]) => boolean,
): { from: number; to: number }[] {
  const found: { from: number; to: number }[] = [];
  for (const mark of marks) {
    if (!holds(mark)) continue;
    const last = found.at(-1);
    const [from, to] = [mark.hours - 1 / 12, mark.hours + 1 / 12];
    if (last !== undefined && Math.abs(last.to - from) < 0.01) last.to = to;
    else found.push({ from, to });
  }
  return found;
}

const clock = (hours: number): string => {
  const minutes = Math.round(hours * 60);
  const [h, m] = [Math.floor(minutes / 60) % 24, minutes % 60];
  return `${String(h).padStart(2, '0')}:${String(m).padStart(2, '0')}`;
};

const hourText = (hour: number): Shape => ({
  kind: 'text',
  x: xOf(hour),
  y: 138,
  text: String(hour % 24),
  size: 13,
  anchor: hour === chartFrom ? 'start' : hour === chartFrom + chartHours ? 'end' : 'middle',
});

/** The Sun's bar above, the Moon's below, over a clock with a line at every hour. */
export function drawNightChart(night: Night): ItemDrawing {
  const { localDate, marks, sunset, sunrise } = night;
  const dark = stretches(marks, (mark) => mark.dark);
  const moon = stretches(marks, ({ moonUp }) => moonUp);
  const set = sunset === null ? chartFrom : hoursOf(sunset, localDate);
  const rise = sunrise === null ? chartFrom + chartHours : hoursOf(sunrise, localDate);
  const bar = (
    from: number,
    to: number,
    y: number,
    fill: 'land' | 'sky-line' | 'sky-lamp',
  ): Shape => ({
    kind: 'rect',
    x: xOf(from),
    y,
    w: xOf(to) - xOf(from),
    h: 26,
    fill,
  });
  const said = (all: readonly { from: number; to: number }[]): string =>
    all.length === 0
      ? 'at no time'
      : all.map(({ from, to }) => `from ${clock(from)} to ${clock(to)}`).join(' and ');
  return {
    width: 320,
    height: 148,
    alternative: `A chart of one night from 15:00 to 09:00. Sunset at ${sunset === null ? 'no time' : clockText(sunset)}, sunrise at ${sunrise === null ? 'no time' : clockText(sunrise)}. The Sun is more than 18° down ${said(dark)}. The Moon is up ${said(moon)}.`,
    shapes: [
      { kind: 'text', x: left, y: 16, text: 'Sun: day, twilight, dark', size: 13, tone: 'soft' },
      { kind: 'rect', x: left, y: 22, w: right - left, h: 26, fill: 'lamp', stroke: 'strong' },
      bar(set, rise, 22, 'sky-line'),
      ...dark.map(({ from, to }) => bar(from, to, 22, 'land')),
      { kind: 'text', x: left, y: 70, text: 'Moon: up', size: 13, tone: 'soft' },
      { kind: 'rect', x: left, y: 76, w: right - left, h: 26, fill: 'land', stroke: 'strong' },
      ...moon.map(({ from, to }) => bar(from, to, 76, 'sky-lamp')),
      ...Array.from({ length: chartHours + 1 }, (_, i) => chartFrom + i).flatMap(
        (hour): Shape[] => [
          {
            kind: 'line',
            x1: xOf(hour),
            x2: xOf(hour),
            y1: 108,
            y2: hour % 3 === 0 ? 120 : 114,
            stroke: 'ink',
          },
          ...(hour % 3 === 0 ? [hourText(hour)] : []),
        ],
      ),
    ],
  };
}
