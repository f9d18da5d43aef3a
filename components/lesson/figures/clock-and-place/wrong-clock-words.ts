import { alignedOn, type WrongClockFacts } from './wrong-clock-facts';
import type { ToldWrong } from './starts';

const whole = (value: number): string => String(Math.round(Math.abs(value)));

/** "the clock 60 minutes ahead, the longitude 3° too far west". */
function toldInWords({ clockMinutes, longitudeDeg, latitudeDeg }: ToldWrong): string {
  const parts = [
    clockMinutes === 0
      ? ''
      : `the clock ${whole(clockMinutes)} minutes ${clockMinutes > 0 ? 'ahead' : 'behind'}`,
    longitudeDeg === 0
      ? ''
      : `the longitude ${whole(longitudeDeg)}° too far ${longitudeDeg > 0 ? 'east' : 'west'}`,
    latitudeDeg === 0
      ? ''
      : `the latitude ${whole(latitudeDeg)}° too far ${latitudeDeg > 0 ? 'north' : 'south'}`,
  ].filter((part) => part !== '');
  return parts.length === 0 ? 'clock and place right' : parts.join(', ');
}

/** Degrees with one decimal, or minutes of arc where that would be nought. */
const missed = (deg: number): string =>
  deg < 0.095 ? `${String(Math.round(60 * deg))}′` : `${deg.toFixed(1)}°`;

/** What a mount does that was told this, for the figure's status line and its label. */
export function wrongClockWords(told: ToldWrong, facts: WrongClockFacts, aligned: boolean): string {
  const miss = (name: string) => facts.stars.find((star) => star.name === name)?.missDeg ?? 0;
  const turned =
    Math.abs(facts.turnDeg) < 0.05
      ? 'the mount’s sky is not turned.'
      : `the mount’s sky is turned by ${missed(Math.abs(facts.turnDeg))}, ${facts.turnDeg > 0 ? 'the way that the stars go' : 'against the way of the stars'}.`;
  const told1 = `With ${toldInWords(told)}: ${turned}`;
  if (!aligned) {
    return `${told1} Sent to Vega, the tube misses by ${missed(miss('Vega'))}; sent to Aldebaran, by ${missed(miss('Aldebaran'))}; to Polaris, by ${missed(miss('Polaris'))}.`;
  }
  const worst = Math.max(...facts.stars.map(({ missDeg }) => missDeg));
  const within = worst < 1 / 60 ? 'to better than 1′' : `within ${missed(worst)}`;
  const lean =
    facts.leanDeg < 1 / 60
      ? 'To the mount, its base is level.'
      : `To the mount, its base leans by ${missed(facts.leanDeg)}.`;
  const moon =
    facts.moonDeg < 1 / 60
      ? 'The clock is right, and so the Moon is too.'
      : `It misses the Moon by ${missed(facts.moonDeg)}.`;
  return `${told1} Aligned on ${alignedOn.join(' and ')}, the tube finds all nine stars ${within}. ${lean} ${moon}`;
}
