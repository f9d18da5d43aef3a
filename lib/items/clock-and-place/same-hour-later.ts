import { choice } from '../build-item';
import type { ItemDraw } from '../item-family';
import type { MisconceptionId } from '../misconceptions';
import {
  drawSky,
  siderealDegPerHour,
  type DrawnSky,
  type Position,
  type SkyStar,
} from './drawn-sky';
import { journeyDrawing } from './sky-drawings';
import { span, whereabouts } from './words';
import { pickOne } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';

/** Hours by which a star is earlier after so many days: 24 h less a turn of the sky, 3 m 56 s a day. */
export const hoursEarlier = (days: number): number => days * (24 - 360 / siderealDegPerHour);

/** A span of days as people say it, and how many days it is. */
const spans = [
  { words: 'two weeks', days: 14 },
  { words: 'three weeks', days: 21 },
  { words: 'a month', days: 30 },
  { words: 'six weeks', days: 42 },
  { words: 'two months', days: 61 },
] as const;

/** "Predict, then see": the same star at the same hour, weeks later. */
export function sameHourLater({ random }: ItemDraw) {
  for (;;) {
    const { words, days } = pickOne(random, spans);
    const hours = hoursEarlier(days);
    const sky = drawSky(random);
    const clear = (star: SkyStar, hour: number) => {
      const { altitudeDeg } = sky.at(star, hour);
      return altitudeDeg > 10 && altitudeDeg < 72;
    };
    const star = random.pick(
      sky.stars.filter(
        (one) => Math.abs(one.declinationDeg) < 45 && clear(one, 0) && clear(one, hours),
      ),
    );
    if (star === undefined) continue;
    const made = askSameHourLater(sky, star, { words, days, hours });
    if (made !== null) return made;
  }
}

type Guess = { at: Position; reason: string; misconception?: MisconceptionId };

function askSameHourLater(
  sky: DrawnSky,
  star: SkyStar,
  { words, days, hours }: { words: string; days: number; hours: number },
) {
  const [now, then] = [sky.at(star), sky.at(star, hours)];
  const text = (at: Position) => capitalised(`${whereabouts(at)}.`);
  const guesses: Guess[] = [
    {
      at: now,
      reason: 'A star does not keep the same hours. It is four minutes earlier each night.',
      misconception: 'same-hours-all-year',
    },
    {
      at: sky.at(star, -hours),
      reason:
        'That is the wrong way. Each night it is earlier, so at the same hour it is farther on.',
      misconception: 'sky-turns-the-other-way',
    },
    {
      at: sky.at(star, 2 * hours),
      reason: 'That is twice as far, and takes twice as long.',
    },
    {
      at: sky.at(star, 3 * hours),
      reason: 'That is much too far. A month is worth two hours, no more.',
    },
  ];
  const wrong = guesses.filter(({ at }, i) =>
    [then, ...guesses.slice(0, i).map((one) => one.at)].every((other) => text(other) !== text(at)),
  );
  if (wrong.length < 3 || wrong[0]?.at !== now) return null;
  return choice({
    prompt: `${sky.where}, ${sky.when}. ${star.name} stands ${whereabouts(now)}. Where does it stand ${words} later, at the same hour?`,
    explanation: `${capitalised(words)} makes it about ${span(30 * Math.round(2 * hours))} earlier. So it stands where it stood that much later on the first night: ${whereabouts(then)}.`,
    right: {
      text: text(then),
      reason: `${String(days)} days make about ${String(Math.round(siderealDegPerHour * hours))}° of turn.`,
    },
    wrong: wrong.map(({ at, ...why }) => ({ ...why, text: text(at) })),
    afterwards: journeyDrawing((share) => sky.at(star, share * hours), {
      name: star.name,
      alternative: `The whole sky at the same hour, ${words} apart. ${star.name} has gone from its old place (${whereabouts(now)}) to its new one (${whereabouts(then)}).`,
    }),
  });
}
