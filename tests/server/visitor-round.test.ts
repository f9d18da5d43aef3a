import { beforeAll, describe, expect, test } from 'vitest';
import { perfectLog } from '@/lib/alignment/perfect-operator';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import { db } from '@/lib/data/db';
import { tonightAt, defaultPlace } from '@/lib/data/default-evening';
import {
  gradeVisitorRound,
  makeFirstVisitorRound,
  makeVisitorRound,
  type VisitorRound,
} from '@/lib/data/practice-round';
import { labTasks } from '@/lib/data/lab-tasks/lab-tasks';
import { rightPairs } from '@/lib/grading/allowed-pairs';
import { storedAnswerKey } from '@/lib/pointing/stored-answer-key';
import type { PairVariant } from '@/lib/variants/pair-variant';
import { useSchoolDatabase } from '../support/school-database';
import { at, codeOf, monday, valueOf } from '../support/school';

useSchoolDatabase();
const task = labTasks['pick-the-pair'];
let round: VisitorRound<PairVariant>;
beforeAll(async () => {
  round = valueOf(await makeVisitorRound(task, { seed: 'a seed' }, monday));
});

const addressOf = ({ seed, kitId, siteId, placeId, localTime }: VisitorRound<PairVariant>) => ({
  seed,
  kitId,
  siteId,
  placeId,
  localTime,
});

test('the address alone makes the same round again, on any day', async () => {
  const again = valueOf(await makeVisitorRound(task, addressOf(round), at('2027-06-01T12:00:00Z')));
  expect(again).toEqual(round);
  const other = valueOf(
    await makeVisitorRound(task, { ...addressOf(round), seed: 'another' }, monday),
  );
  expect(other.variant).not.toEqual(round.variant);
});

test('an answer is marked from the round made again, and nothing is kept', async () => {
  const result = valueOf(await gradeVisitorRound(task, addressOf(round), { kind: 'none-usable' }));
  expect(result.template).toBe(round.variant.template);
  expect([0, 100]).toContain(result.total);
  expect(await db().attempt.count()).toBe(0);
});

describe('the first round of a newcomer', () => {
  const seedsFrom = (name: string) => {
    let drawn = 0;
    return () => `${name} ${(drawn += 1)}`;
  };
  const names = Array.from({ length: 12 }, (_, index) => `newcomer ${index}`);

  test('has a pair to choose under an open sky, though rounds by lot are of every kind', async () => {
    const byLot = new Set<string>();
    for (const name of names) {
      const lot = valueOf(await makeVisitorRound(task, { seed: seedsFrom(name)() }, monday));
      byLot.add(lot.variant.template);
      const first = valueOf(await makeFirstVisitorRound(task, {}, seedsFrom(name), monday));
      const { scenario, frame } = first.variant;
      expect(scenario.clouds).toEqual([]);
      const key = storedAnswerKey({
        scenario,
        frame,
        instant: frame.instant,
        catalogue: loadCatalogue(),
      });
      expect(rightPairs(first.variant, key)).not.toEqual([]);
      // Its address makes it again, like any other.
      expect(valueOf(await makeVisitorRound(task, addressOf(first), monday))).toEqual(first);
    }
    expect([...byLot].some((kind) => kind === 'none-usable' || kind === 'cloud-bank')).toBe(true);
  });

  test('of a run names the star to begin with', async () => {
    const run = labTasks['alignment-run'];
    for (const name of names.slice(0, 6)) {
      const first = valueOf(await makeFirstVisitorRound(run, {}, seedsFrom(name), monday));
      expect(['mount-proposes', 'first-given']).toContain(first.variant.template);
    }
  });

  test('is the first draw where the evening has no such round, after a few draws', async () => {
    const drawn: string[] = [];
    const next = seedsFrom('by day');
    const drawSeed = () => {
      const seed = next();
      drawn.push(seed);
      return seed;
    };
    const byDay = { localTime: '2026-06-21T13:00' };
    const first = valueOf(await makeFirstVisitorRound(task, byDay, drawSeed, monday));
    expect(first).toMatchObject({ seed: 'by day 1', variant: { template: 'none-usable' } });
    expect(drawn).toHaveLength(8);
  });

  test('under a sky that is none is refused like any other', async () => {
    const request = { localTime: 'tonight' };
    const refused = await makeFirstVisitorRound(task, request, seedsFrom('x'), monday);
    expect(codeOf(refused)).toBe('bad-input');
  });
});

const somePlace = {
  name: 'Summerby',
  foldedName: 'summerby',
  foldedAscii: 'summerby',
  country: 'XX',
  region: '',
  population: 1000,
  longitudeDeg: 15,
  elevationM: 10,
  timeZone: 'Europe/Berlin',
};

describe('what makes no sense is refused', () => {
  test.each([
    ['a place that is not there', { placeId: 99_999_999 }, 'unknown-place'],
    ['a time that is none', { localTime: 'tonight' }, 'bad-input'],
    ['a time that does not exist', { localTime: '2027-03-28T01:30' }, 'bad-input'],
    ['no seed', { seed: '' }, 'bad-input'],
  ])('%s', async (_, wrong, code) => {
    expect(codeOf(await makeVisitorRound(task, { ...addressOf(round), ...wrong }, monday))).toBe(
      code,
    );
  });

  test.each([
    ['where the Sun does not set', { id: 1, latitudeDeg: 69.6 }, '2026-06-21T22:00'],
    ['at noon', { id: 2, latitudeDeg: 52.5 }, '2026-06-21T12:00'],
  ])('a run under a sky that is too bright, %s', async (_, where, localTime) => {
    const { id: placeId } = await db().place.create({
      data: { ...somePlace, ...where },
      select: { id: true },
    });
    const request = { seed: 'bright', placeId, localTime };
    const run = labTasks['alignment-run'];
    expect(codeOf(await makeVisitorRound(run, request, monday))).toBe('too-bright');
    expect(codeOf(await makeFirstVisitorRound(run, request, () => 'bright', monday))).toBe(
      'too-bright',
    );
    const winter = { ...request, localTime: '2026-12-21T20:00' };
    expect(codeOf(await makeVisitorRound(run, winter, monday))).toBe('ok');
    // In the other labs a bright sky is a fair question.
    expect(codeOf(await makeVisitorRound(task, request, monday))).toBe('ok');
  });

  test('an answer with a score', async () => {
    expect(
      codeOf(await gradeVisitorRound(task, addressOf(round), { kind: 'none-usable', score: 100 })),
    ).toBe('bad-input');
  });
});

describe('tonight', () => {
  test('is at nautical dusk by the clock of the place', () => {
    // By hand: cos H = (sin −12° − sin 54.6° sin −21.6°)/(cos 54.6° cos −21.6°) gives H = 5.34 h; the
    // Sun's transit at 3.13° W with an equation of time of +11.3 min is at 12:01.2: 17:21.8.
    expect(tonightAt(defaultPlace, monday.now())).toBe('2026-11-30T17:22');
  });

  test('is at ten where the Sun does not set', () => {
    const far = {
      ...defaultPlace,
      latitudeDeg: 78.2,
      longitudeDeg: 15.6,
      timeZone: 'Arctic/Longyearbyen',
    };
    expect(tonightAt(far, new Date('2026-06-21T10:00:00Z'))).toBe('2026-06-21T22:00');
  });
});

test('the rounds of the other labs are made again from their addresses too, on any day', async () => {
  const again = async <V>(lab: Parameters<typeof makeVisitorRound<V>>[0]) => {
    const made = valueOf(await makeVisitorRound(lab, { seed: 'a seed' }, monday));
    const { seed, kitId, siteId, placeId, localTime } = made;
    const address = { seed, kitId, siteId, placeId, localTime };
    const later = at('2027-06-01T12:00:00Z');
    expect(valueOf(await makeVisitorRound(lab, address, later))).toEqual(made);
    return made.variant;
  };
  expect((await again(labTasks['alignment-run'])).lab).toBe('alignment-run');
  expect((await again(labTasks['what-went-wrong'])).lab).toBe('what-went-wrong');
});

test('a run is marked by doing it again on the round made again, with leave to pause', async () => {
  const run = labTasks['alignment-run'];
  const made = valueOf(await makeVisitorRound(run, { seed: 'steady' }, monday));
  expect(made.variant).toMatchObject({ mayPause: true, minutesAllowed: null });
  const log = perfectLog({ ...made.variant, catalogue: loadCatalogue() });
  const { seed, kitId, siteId, placeId, localTime } = made;
  const address = { seed, kitId, siteId, placeId, localTime };
  const result = valueOf(await gradeVisitorRound(run, address, { log }));
  expect(result.total).toBeGreaterThan(99);
  const moved = log.map((action) =>
    action.do === 'this-is-the-star'
      ? { ...action, readings: { ...action.readings, altitudeDeg: 12 } }
      : action,
  );
  expect(codeOf(await gradeVisitorRound(run, address, { log: moved }))).toBe('does-not-add-up');
  expect(codeOf(await gradeVisitorRound(run, address, { log: [], total: 100 }))).toBe('bad-input');
  expect(await db().attempt.count()).toBe(0);
});

test('a fault is marked on the evening made again; what was not offered is refused', async () => {
  const fault = labTasks['what-went-wrong'];
  const made = valueOf(await makeVisitorRound(fault, { seed: 'a slip' }, monday));
  const { seed, kitId, siteId, placeId, localTime, variant } = made;
  const address = { seed, kitId, siteId, placeId, localTime };
  const [cure] = variant.cures;
  const answers = await Promise.all(
    variant.faults.map(async (named) => {
      const sent = { looked: [], testSlew: null, fault: named, cure };
      return valueOf(await gradeVisitorRound(fault, address, sent));
    }),
  );
  const right = answers.filter(({ criteria }) => criteria[0]?.earned === criteria[0]?.possible);
  expect(right.map(({ named }) => named).toSorted()).toEqual(
    variant.faults.filter((one) => answers[0]?.alike.includes(one)).toSorted(),
  );
  const stranger = { looked: [], testSlew: 1, fault: variant.faults[0], cure };
  expect(codeOf(await gradeVisitorRound(fault, address, stranger))).toBe('not-offered');
});
