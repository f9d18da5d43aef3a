import { nextClockChange, type ClockChange } from '../../../clock/clock-change';
import type { Scenario } from '../../../pointing/scenario';
import { instantOfLocalTime } from '../../../sky/local-time';
import type { Random } from '../../random';
import { awayPlaces } from './away-places';
import type { ChangeNight, ClockVerdict, TimeReading } from './clock-and-place-variant';
import { clockEvening, wallClock, type CardPlace, type ClockEvening } from './clock-evening';
import { baseMs, drawSpot } from './draw-clock-places';

const minuteMs = 60_000;
const dayMs = 1440 * minuteMs;

/**
 * A night on which the clocks are changed, and a time of it that somebody wrote down: one that comes
 * twice, one that the clocks jumped over, or a plain one before or after. In the scenario's own zone
 * half the time, where that has changes.
 */
export function drawChangeNight(
  random: Random,
  scenario: Scenario,
): { evening: ClockEvening; change: ChangeNight; written: TimeReading } {
  const from = new Date(baseMs(scenario) + random.integer(0, 180) * dayMs).toISOString();
  const { place, change } = drawChange(random, scenario, from);
  const { beforeMinutes, afterMinutes } = change;
  const forward = afterMinutes > beforeMinutes;
  const [winter, summer] = [
    Math.min(beforeMinutes, afterMinutes),
    Math.max(beforeMinutes, afterMinutes),
  ];
  const jump = summer - winter;
  const changeMs = Date.parse(change.instant);
  const at = changeMs + beforeMinutes * minuteMs;
  const becomes = changeMs + afterMinutes * minuteMs;

  const verdict: ClockVerdict = random.next() < 0.25 ? 'plain' : forward ? 'skipped' : 'twice';
  // Wall clocks are reckoned as if they were UTC.
  const wall =
    verdict === 'plain'
      ? random.next() < 0.5
        ? at - random.integer(24, 60) * 5 * minuteMs
        : Math.max(at, becomes) + random.integer(4, 30) * 5 * minuteMs
      : Math.min(at, becomes) + random.integer(1, Math.floor((jump - 1) / 5)) * 5 * minuteMs;

  const reading = (ms: number, summerTime: boolean): TimeReading => ({
    ...wallClock(new Date(ms).toISOString()),
    summerTime,
  });
  const readings = [
    reading(wall - jump * minuteMs, false),
    reading(wall, false),
    reading(wall, true),
    reading(wall + jump * minuteMs, true),
  ];
  const canMean = { plain: [], skipped: [0, 3], twice: [1, 2] }[verdict];
  const meant = verdict === 'plain' ? null : (random.pick(canMean) ?? null);
  return {
    evening: clockEvening(place, instantMeant()),
    written: reading(wall, verdict === 'plain' && wall < at ? !forward : forward),
    change: {
      verdict,
      forward,
      readings,
      canMean,
      meant,
      at: reading(at, !forward),
      becomes: reading(becomes, forward),
    },
  };

  function instantMeant(): string {
    if (meant === null) {
      const plain = instantOfLocalTime(new Date(wall).toISOString().slice(0, 16), place.timeZone);
      if (!plain.ok) throw new Error(`not a plain time: ${plain.reason}`);
      return plain.instant;
    }
    const shown = wall + ([-jump, 0, 0, jump][meant] ?? 0) * minuteMs;
    const ahead = meant < 2 ? winter : summer;
    return new Date(shown - ahead * minuteMs).toISOString();
  }
}

function drawChange(
  random: Random,
  scenario: Scenario,
  from: string,
): { place: CardPlace; change: ClockChange } {
  const home = drawSpot(random, scenario);
  const homeFirst = random.next() < 0.5;
  const away = random.shuffle(awayPlaces);
  for (const place of homeFirst ? [home, ...away] : [...away, home]) {
    const change = nextClockChange(from, place.timeZone);
    if (change !== null) return { place, change };
  }
  throw new Error('no zone changes its clocks any more');
}
