import type { Shape } from '@/lib/drawings/drawing';
import { sunDown, type SunDown } from './sun-down';

type DuskOf = { latitudeDeg: number; dayOfYear: number };
export const startingDusk: DuskOf = { latitudeDeg: 52, dayOfYear: 339 };

const left = 8;
const width = 304;
/** From noon to noon. */
const xOf = (hoursAfterNoon: number): number => left + (hoursAfterNoon / 24) * width;

/** A band that is the same before and after midnight, which lies in the middle. */
const band = (from: number | null, fill: 'sky-line' | 'land'): Shape[] =>
  from === null
    ? []
    : [{ kind: 'rect', x: xOf(from), y: 44, w: xOf(24 - from) - xOf(from), h: 56, fill }];

const mark = (at: number | null, y: number, text: string): Shape[] =>
  at === null
    ? []
    : [
        { kind: 'line', x1: xOf(at), x2: xOf(at), y1: y, y2: 100, stroke: 'ink' },
        { kind: 'text', x: xOf(at) - 4, y: y + 10, text, size: 12, anchor: 'end' },
      ];

const middleText: Shape = {
  kind: 'text',
  x: xOf(12),
  y: 77,
  text: 'dark',
  tone: 'on-sky',
  anchor: 'middle',
};

/** The Sun's day from noon to noon as a bar: light, twilight, dark. */
export const duskShapes = ({ sunset, civil, nautical, astronomical }: SunDown): Shape[] => [
  { kind: 'rect', x: left, y: 44, w: width, h: 56, fill: 'lamp', stroke: 'strong', width: 1.5 },
  ...band(sunset, 'sky-line'),
  ...band(astronomical, 'land'),
  ...[civil, nautical].flatMap((at): Shape[] =>
    at === null
      ? []
      : [at, 24 - at].map((hours) => ({
          kind: 'line',
          x1: xOf(hours),
          x2: xOf(hours),
          y1: 44,
          y2: 100,
          stroke: 'sky',
          width: 1.5,
          dashed: true,
        })),
  ),
  ...(astronomical === null || astronomical > 10 ? [] : [middleText]),
  ...mark(sunset, 22, 'sunset'),
  ...mark(astronomical, 4, 'dark'),
  ...[0, 6, 12, 18, 24].map((hours): Shape => ({
    kind: 'text',
    x: xOf(hours),
    y: 118,
    size: 12,
    tone: 'soft',
    text: ['noon', '6 pm', 'midnight', '6 am', 'noon'][hours / 6] ?? '',
    anchor: hours === 0 ? 'start' : hours === 24 ? 'end' : 'middle',
  })),
  // A key: each tone with its word, so that nothing hangs on the tone alone.
  ...(['lamp', 'sky-line', 'land'] as const).flatMap((fill, i): Shape[] => [
    { kind: 'rect', x: 8 + 96 * i, y: 130, w: 18, h: 14, fill, stroke: 'strong' },
    {
      kind: 'text',
      x: 32 + 96 * i,
      y: 142,
      text: ['Sun up', 'twilight', 'dark'][i] ?? '',
      size: 13,
    },
  ]),
];

const inHours = (hours: number): string => {
  const minutes = Math.round(hours * 60);
  const [h, m] = [Math.floor(minutes / 60), minutes % 60];
  return h === 0 ? `${String(m)} minutes` : `${String(h)} h ${String(m)} min`;
};

/** Day and month of a day of 2026, "5 December". */
export const dayText = (dayOfYear: number): string =>
  new Date(Date.UTC(2026, 0, dayOfYear)).toLocaleDateString('en-GB', {
    day: 'numeric',
    month: 'long',
    timeZone: 'UTC',
  });

export function duskWords({ latitudeDeg, dayOfYear }: DuskOf, facts: SunDown): string {
  const where = `${dayText(dayOfYear)} at ${String(Math.abs(latitudeDeg))}° ${latitudeDeg < 0 ? 'south' : 'north'}.`;
  const { sunset, astronomical } = facts;
  if (sunset === null) return `${where} The Sun does not set at all: the caps stay on.`;
  if (astronomical === null)
    return `${where} The Sun sets, but never gets 18° down: twilight lasts all night.`;
  if (sunset === 0)
    return `${where} The Sun does not rise at all, and it is dark for ${inHours(24 - 2 * astronomical)}.`;
  return `${where} From sunset until it is dark it takes ${inHours(astronomical - sunset)}, and it stays dark for ${inHours(24 - 2 * astronomical)}.`;
}

export const duskFacts = ({ latitudeDeg, dayOfYear }: DuskOf): SunDown =>
  sunDown(latitudeDeg, dayOfYear);
