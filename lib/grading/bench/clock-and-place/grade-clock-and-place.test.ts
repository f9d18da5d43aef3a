import { describe, expect, it } from 'vitest';
import { clockTask, manyClockTasks } from '@/tests/support/clock-tasks';
import { formEntries, type MountForm } from '../../../clock/mount-form';
import { clockAndPlaceResultSchema } from '../../../data/lab-tasks/bench/stored-clock-and-place';
import {
  clockAndPlaceTemplates,
  clockVerdicts,
  type ClockAndPlaceTemplate,
  type ClockAndPlaceVariant,
} from '../../../variants/bench/clock-and-place/clock-and-place-variant';
import { randomFrom, type Random } from '../../../variants/random';
import { clockAndPlaceModelAnswer } from './clock-and-place-model-answer';
import {
  clockAndPlaceSubmissionSchema,
  mountFormSchema,
  type ClockAndPlaceSubmission,
} from './clock-and-place-submission';
import { gradeClockAndPlace } from './grade-clock-and-place';

/* Over 250 lines: every mistake that is known is tried on one set of tasks, which takes long to draw. */

const passMark = 70;

/** As many as a large school would hand out. */
const tasks = manyClockTasks(200);

function resultOf(variant: ClockAndPlaceVariant, submission: ClockAndPlaceSubmission) {
  const grading = gradeClockAndPlace({ variant, submission });
  if (!grading.ok) throw new Error(grading.refusal.code);
  return grading.result;
}
const entered = (variant: ClockAndPlaceVariant, slip: Partial<MountForm>) => {
  const model = clockAndPlaceModelAnswer(variant);
  return resultOf(variant, { ...model, form: { ...model.form, ...slip } });
};
const codesOf = ({ slips }: ReturnType<typeof resultOf>) => slips.map(({ code }) => code);

/** A task at a site; Ottawa is 0, Frankfurt in summer 1. */
const task = (template: ClockAndPlaceTemplate, site = 0, seed = 'one') =>
  clockTask(seed, template, site);

/** The first task that is as wanted. */
function taskWith(
  template: ClockAndPlaceTemplate,
  wanted: (variant: ClockAndPlaceVariant) => boolean,
  site = 0,
): ClockAndPlaceVariant {
  for (let index = 0; index < 300; index += 1) {
    const found = task(template, site, `wanted ${String(index)}`);
    if (wanted(found)) return found;
  }
  throw new Error('no such task');
}

describe('who makes no mistake', () => {
  it('earns 100 in every task of every template, with no slip', () => {
    for (const variant of tasks) {
      const submission = clockAndPlaceModelAnswer(variant);
      expect(clockAndPlaceSubmissionSchema.parse(submission)).toEqual(submission);
      const result = resultOf(variant, submission);
      expect(result.total, JSON.stringify({ variant, result })).toBeCloseTo(100, 9);
      expect(result.slips).toEqual([]);
      expect(result.missDeg).toBeLessThan(1e-9);
    }
  });

  it('has criteria that sum to 100', () => {
    for (const template of clockAndPlaceTemplates) {
      const variant = task(template);
      const { criteria } = resultOf(variant, clockAndPlaceModelAnswer(variant));
      expect(criteria.reduce((sum, { possible }) => sum + possible, 0)).toBe(100);
    }
  });

  it('may enter the watch’s time with the watch’s own zone: the sky is the same', () => {
    const variant = task('far-from-home');
    const { card } = variant;
    const { year, month, day } = card.date;
    const { hour, minute } = card.time;
    const zoneMinutes = card.watch?.aheadMinutes ?? NaN;
    const result = entered(variant, {
      year,
      month,
      day,
      hour,
      minute,
      zoneMinutes,
      summerTime: false,
    });
    expect(result.total).toBeCloseTo(100, 9);
  });
});

it('a result is read back from its JSON whole', () => {
  for (const variant of manyClockTasks(3)) {
    const submission = { ...clockAndPlaceModelAnswer(variant), flagged: [...formEntries] };
    const result = resultOf(variant, submission);
    expect(clockAndPlaceResultSchema.parse(JSON.parse(JSON.stringify(result)))).toEqual(result);
  }
});

describe('a typical mistake is named, and costs what the sky misses by', () => {
  const summer = () => task('enter-the-card', 1);
  const winter = () => task('enter-the-card', 0);

  it.each<[string, () => ClockAndPlaceVariant, Partial<MountForm>, string, number]>([
    ['summer time forgotten', summer, { summerTime: false }, 'summer-hour-forgotten', 15.04],
    ['summer time in winter', winter, { summerTime: true }, 'summer-hour-added', 15.04],
    ['the summer hour in the zone too', summer, { zoneMinutes: 120 }, 'summer-hour-twice', 15.04],
    ['the zone’s sign', winter, { zoneMinutes: 300 }, 'zone-sign', 150.41],
    ['the zone', winter, { zoneMinutes: -360 }, 'zone-off', 15.04],
    ['the day after', winter, { day: 6 }, 'day-off', 0.986],
    ['another month', winter, { month: 11 }, 'date-off', 29.57],
    // 207 days back: 204.03° the one way, 155.97° the other.
    ['day and month exchanged', winter, { day: 12, month: 5 }, 'day-and-month', 155.97],
  ])('%s', (_name, variant, slip, code, turnDeg) => {
    const result = entered(variant(), slip);
    expect(codesOf(result)).toEqual([code]);
    expect(Math.abs(result.turnDeg)).toBeGreaterThan(turnDeg - 1.1);
    expect(Math.abs(result.turnDeg)).toBeLessThan(turnDeg + 1.1);
    expect(result.slips[0]?.missDeg).toBeCloseTo(result.missDeg, 9);
    if (turnDeg > 6) expect(result.total).toBeLessThan(passMark);
  });

  it('morning for evening', () => {
    const variant = winter();
    const result = entered(variant, { hour: variant.right.hour - 12 });
    expect(codesOf(result)).toEqual(['twelve-hours']);
    expect(result.clockAheadMinutes).toBe(-720);
  });

  it('east for west, north for south, one for the other', () => {
    const variant = winter();
    const { right } = variant;
    const longitude = right.longitudeDegrees + right.longitudeMinutes / 60;
    const west = entered(variant, { longitudeSide: 'E' });
    expect(codesOf(west)).toEqual(['longitude-side']);
    expect(Math.abs(west.turnDeg)).toBeCloseTo(2 * longitude, 6);
    expect(codesOf(entered(variant, { latitudeSide: 'S' }))).toEqual(['latitude-side']);
    const exchanged = entered(variant, {
      latitudeDegrees: right.longitudeDegrees,
      latitudeMinutes: right.longitudeMinutes,
      longitudeDegrees: right.latitudeDegrees,
      longitudeMinutes: right.latitudeMinutes,
    });
    expect(codesOf(exchanged)).toEqual(['place-exchanged']);
  });

  it('decimals of a degree read as minutes: named, though the sky hardly notices', () => {
    const variant = taskWith('enter-the-card', ({ right }) => right.latitudeMinutes === 30);
    const result = entered(variant, { latitudeMinutes: 50 });
    expect(codesOf(result)).toEqual(['decimals-as-minutes']);
    expect(result.missDeg).toBeLessThan(0.34);
    expect(result.total).toBeGreaterThan(85);
  });

  it('a watch that was not put to local time, and one put the wrong way', () => {
    const variant = task('far-from-home', 1, 'watch');
    const { card, right } = variant;
    const wall = Date.UTC(right.year, right.month - 1, right.day, right.hour, right.minute);
    const { year, month, day } = card.date;
    const watch = Date.UTC(year, month - 1, day, card.time.hour, card.time.minute);
    const fields = (ms: number): Partial<MountForm> => {
      const at = new Date(ms);
      return {
        year: at.getUTCFullYear(),
        month: at.getUTCMonth() + 1,
        day: at.getUTCDate(),
        hour: at.getUTCHours(),
        minute: at.getUTCMinutes(),
      };
    };
    expect(codesOf(entered(variant, fields(watch)))).toEqual(['watch-not-converted']);
    expect(codesOf(entered(variant, fields(2 * watch - wall)))).toEqual(['watch-wrong-way']);
  });

  it('the needle as it is, and corrected the wrong way', () => {
    const variant = task('by-the-needle');
    const model = clockAndPlaceModelAnswer(variant);
    const asItIs = resultOf(variant, { ...model, compassDeg: 0 });
    expect(codesOf(asItIs)).toEqual(['needle-not-corrected']);
    expect(asItIs.total).toBeLessThan(passMark);
    const declinationDeg = variant.declinationDeg ?? NaN;
    const wrongWay = resultOf(variant, { ...model, compassDeg: (declinationDeg + 360) % 360 });
    expect(codesOf(wrongWay)).toEqual(['needle-wrong-way']);
    // A degree is how well a compass is read: full marks.
    const nearly = { ...model, compassDeg: ((model.compassDeg ?? 0) + 0.9) % 360 };
    const start = resultOf(variant, nearly).criteria.find(({ id }) => id === 'start');
    expect(start?.earned).toBe(start?.possible);
  });

  it('a doubled hour that was guessed, not asked about, though the guess was lucky', () => {
    const variant = taskWith('night-of-the-change', ({ change }) => change?.verdict === 'twice', 1);
    const model = clockAndPlaceModelAnswer(variant);
    const result = resultOf(variant, { ...model, verdict: 'plain', readings: [], asked: false });
    expect(codesOf(result)).toEqual(['guessed']);
    expect(result.missDeg).toBe(0);
    expect(result.total).toBeLessThan(passMark);
  });

  it('a plain hour that was asked about, and the wrong two readings', () => {
    const plain = taskWith('night-of-the-change', ({ change }) => change?.verdict === 'plain');
    const model = clockAndPlaceModelAnswer(plain);
    const asked = { ...model, verdict: 'twice' as const, readings: [1, 2], asked: true };
    expect(codesOf(resultOf(plain, asked))).toEqual(['asked-for-nothing']);
    const twice = taskWith('night-of-the-change', ({ change }) => change?.verdict === 'twice');
    const others = { ...clockAndPlaceModelAnswer(twice), readings: [0, 1] };
    expect(codesOf(resultOf(twice, others))).toEqual(['other-readings']);
  });

  it('a form to check: one row missed, one crossed out besides, nothing done', () => {
    const variant = task('check-the-form');
    const model = clockAndPlaceModelAnswer(variant);
    const [first, second] = model.flagged;
    const right = formEntries.find((row) => !model.flagged.includes(row));
    if (first === undefined || second === undefined || right === undefined) throw new Error();
    const missed = resultOf(variant, { ...model, flagged: [first] });
    expect(codesOf(missed)).toContain('wrong-row-missed');
    expect(missed.total).toBeLessThan(passMark);
    const besides = resultOf(variant, { ...model, flagged: [first, second, right] });
    expect(codesOf(besides)).toEqual(['right-row-crossed-out']);
    expect(besides.total).toBeCloseTo(85, 9);
    expect(resultOf(variant, { ...model, flagged: [] }).total).toBeLessThan(20);
  });

  it('another row named by the landing, which then stays as it was', () => {
    const variant = task('dew-on-the-card');
    const model = clockAndPlaceModelAnswer(variant);
    const other = variant.card.smudged.find((row) => row !== model.named) ?? null;
    const result = resultOf(variant, { ...model, named: other });
    expect(codesOf(result)).toContain('other-row-named');
    expect(result.total).toBeLessThan(31);
  });
});

it('another row that puts the sky right counts as much: the landing cannot tell', () => {
  const variant = taskWith(
    'dew-on-the-card',
    ({ card, given, right }) =>
      card.smudged.includes('longitude') && given.zoneMinutes === right.zoneMinutes - 60,
  );
  const model = clockAndPlaceModelAnswer(variant);
  expect(model.named).toBe('zone');
  // An hour less ahead of UTC turns the sky on by 15.041°: 15° 2′ further west turns it back.
  const { longitudeDegrees, longitudeMinutes } = variant.right;
  const minutes = longitudeDegrees * 60 + longitudeMinutes + 15 * 60 + 2;
  const result = resultOf(variant, {
    ...model,
    named: 'longitude',
    form: {
      ...model.form,
      longitudeDegrees: Math.floor(minutes / 60),
      longitudeMinutes: minutes % 60,
    },
  });
  expect(codesOf(result)).toEqual(['other-row-same-sky']);
  expect(result.total).toBeCloseTo(100, 9);
});

describe('what cannot be anybody’s answer is refused', () => {
  it('a day that is none, a place off the globe, a question left open', () => {
    const variant = task('enter-the-card');
    const model = clockAndPlaceModelAnswer(variant);
    const refused = (of: ClockAndPlaceVariant, submission: ClockAndPlaceSubmission) => {
      const grading = gradeClockAndPlace({ variant: of, submission });
      return grading.ok ? null : grading.refusal.code;
    };
    const withForm = (slip: Partial<MountForm>) => ({ ...model, form: { ...model.form, ...slip } });
    expect(refused(variant, withForm({ month: 2, day: 30 }))).toBe('no-such-date');
    expect(refused(variant, withForm({ latitudeDegrees: 90, latitudeMinutes: 5 }))).toBe(
      'latitude-beyond-90',
    );
    const dew = task('dew-on-the-card');
    expect(refused(dew, { ...clockAndPlaceModelAnswer(dew), named: null })).toBe('incomplete');
    const needle = task('by-the-needle');
    const open = { ...clockAndPlaceModelAnswer(needle), compassDeg: null };
    expect(refused(needle, open)).toBe('incomplete');
  });
});

describe('who clicks at random', () => {
  const submissionBy = (random: Random, variant: ClockAndPlaceVariant): ClockAndPlaceSubmission => {
    const coin = () => random.next() < 0.5;
    const verdict = random.pick(clockVerdicts) ?? 'plain';
    const odd = variant.change !== null && verdict !== 'plain';
    return {
      form: mountFormSchema.parse({
        year: 2026,
        month: random.integer(1, 12),
        day: random.integer(1, 28),
        hour: random.integer(0, 23),
        minute: random.integer(0, 59),
        zoneMinutes: 60 * random.integer(-12, 14),
        summerTime: coin(),
        latitudeDegrees: random.integer(0, 89),
        latitudeMinutes: random.integer(0, 59),
        latitudeSide: coin() ? 'N' : 'S',
        longitudeDegrees: random.integer(0, 179),
        longitudeMinutes: random.integer(0, 59),
        longitudeSide: coin() ? 'E' : 'W',
      }),
      flagged: formEntries.filter(coin),
      named: random.pick(variant.card.smudged) ?? null,
      verdict: variant.change === null ? null : verdict,
      readings: odd ? random.shuffle([0, 1, 2, 3]).slice(0, 2) : [],
      asked: odd,
      compassDeg: random.between(0, 359),
    };
  };

  it('stays below the pass mark on nearly every task, and far below on the whole', () => {
    const random = randomFrom('random clicking');
    const totals = tasks.map((variant) => resultOf(variant, submissionBy(random, variant)).total);
    expect(totals.filter((total) => total >= passMark).length / totals.length).toBeLessThan(0.02);
    expect(totals.reduce((sum, total) => sum + total, 0) / totals.length).toBeLessThan(25);
  });
});

describe('what is told beside the marks', () => {
  it('the Moon stays off by what the clock is off, and the base seems to lean', () => {
    const result = entered(task('enter-the-card', 1), { summerTime: false });
    expect(result.clockAheadMinutes).toBe(60);
    expect(result.moonDeg).toBeCloseTo(0.549, 3);
    // 2 asin(cos φ sin(15.04°/2)) at about 50° N, by hand: 9.65°.
    expect(result.leanDeg).toBeGreaterThan(9.4);
    expect(result.leanDeg).toBeLessThan(9.9);
  });

  it('each star’s shares and what is left sum to its miss', () => {
    const result = entered(task('enter-the-card', 1), { summerTime: false, longitudeSide: 'W' });
    for (const { shares, togetherDeg, missDeg } of result.stars) {
      expect(shares).toHaveLength(2);
      expect(shares.reduce((sum, { deg }) => sum + deg, togetherDeg)).toBeCloseTo(missDeg, 9);
    }
  });
});
