import { lowerFirst } from '../../wording/capital';
import { duskAndDawn } from '../../sky/twilight';
import { choice } from '../build-item';
import type { Shape } from '../../drawings/drawing';
import type { ItemDraw } from '../item-family';
import { pickSome } from '../../variants/pick-one';
import { dateText } from './night-of';

const latitudes = [0, 20, 35, 45, 52, 57] as const;
const seasons = ['2027-03-20', '2027-06-21', '2027-09-23', '2026-12-21'] as const;

type Dusk = { latitudeDeg: number; localDate: string; minutes: number | null };

const known = new Map<string, Dusk>();

/** Minutes from sunset to astronomical dusk; null where the Sun never gets 18° down that night. */
export function duskAt(latitudeDeg: number, localDate: string): Dusk {
  const key = `${String(latitudeDeg)} ${localDate}`;
  const before = known.get(key);
  if (before !== undefined) return before;
  const place = { latitudeDeg, longitudeDeg: 0, elevationM: 0 };
  const { sunset, astronomicalDusk } = duskAndDawn({ place, localDate, timeZone: 'UTC' });
  const minutes =
    sunset === null || astronomicalDusk === null
      ? null
      : Math.round((Date.parse(astronomicalDusk) - Date.parse(sunset)) / 60_000);
  const dusk = { latitudeDeg, localDate, minutes };
  known.set(key, dusk);
  return dusk;
}

const where = ({ latitudeDeg, localDate }: Dusk): string =>
  `${latitudeDeg === 0 ? 'On the equator' : `At ${String(latitudeDeg)}° north`}, ${dateText(localDate)}`;
const length = ({ minutes }: Dusk): string =>
  minutes === null ? 'all night' : `${String(minutes)} minutes`;
const orEndless = ({ minutes }: Dusk): number => minutes ?? 600;

/** Predict where twilight lasts longest, then see how long it is at each. */
export function predictTheTwilight({ random }: ItemDraw) {
  const chosen: Dusk[] = [];
  const all = latitudes.flatMap((latitude) => seasons.map((date) => [latitude, date] as const));
  for (const [latitude, date] of random.shuffle(all)) {
    const dusk = duskAt(latitude, date);
    // Only what differs by a good quarter is fair to foretell.
    const clear = chosen.every(
      (one) => Math.abs(Math.log(orEndless(one) / orEndless(dusk))) > Math.log(1.25),
    );
    if (clear && chosen.length < 3) chosen.push(dusk);
  }
  const [longest, ...others] = [...chosen].sort((a, b) => orEndless(b) - orEndless(a));
  if (longest === undefined || others.length < 2) throw new Error('three dusks are that different');
  const most = 190;
  const bars = pickSome(random, chosen, 3).flatMap((dusk, i): Shape[] => [
    { kind: 'text', x: 8, y: 22 + 48 * i, text: where(dusk), size: 13 },
    {
      kind: 'rect',
      x: 8,
      y: 28 + 48 * i,
      h: 16,
      fill: 'accent',
      stroke: 'ink',
      w: (Math.min(orEndless(dusk), most) / most) * 220,
    },
    { kind: 'text', x: 312, y: 41 + 48 * i, text: length(dusk), size: 13, anchor: 'end' },
  ]);
  return choice({
    prompt: `Predict at which of these it takes longest from sunset until it is dark: ${chosen.map((one) => lowerFirst(where(one))).join('; ')}.`,
    explanation:
      'Near the equator the Sun sinks straight down. Farther north it sinks on a slant, in summer so flatly that twilight may last all night.',
    afterwards: {
      width: 320,
      height: 154,
      alternative: `From sunset to astronomical dusk: ${chosen.map((one) => `${where(one)}: ${length(one)}`).join('; ')}.`,
      shapes: bars,
    },
    right: { text: where(longest), reason: `There it takes ${length(longest)}.` },
    wrong: others.map((one) => ({
      text: where(one),
      reason: `There it takes ${length(one)}: the Sun sinks more steeply.`,
    })),
  });
}
