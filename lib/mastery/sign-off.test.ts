import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { skills } from '../course/skills';
import { eveningOf, lastEveningBegun } from './evening';
import { countedDates, enough, standingOf, type Observation } from './sign-off';
import { failedGatesText, gateIds, gatesOfSkill } from './sign-off-gates';
import { meetEarlier } from './sign-off-note';

const seen = (date: string, level: 1 | 2 | 3 | 4, gate: string | null = null): Observation => ({
  date,
  level,
  gate,
});

// The design's rule (assessment, "Practical skills"): two dated observations at least, level 3 or 4 as the
// teacher sets it, and a failed gate that nothing offsets.
describe('signing off', () => {
  it.each([
    ['nothing seen', [], 3, 'one-date'],
    ['one evening', [seen('1', 4)], 3, 'one-date'],
    ['twice the same evening', [seen('1', 4), seen('1', 3)], 3, 'one-date'],
    ['two evenings', [seen('1', 3), seen('2', 3)], 3, 'signed off'],
    ['two evenings below the level', [seen('1', 3), seen('2', 3)], 4, 'level'],
    ['a gate on the second', [seen('1', 4), seen('2', 4, 'cap off')], 3, 'gate'],
    ['a gate, and two good ones', [seen('1', 4), seen('2', 4, 'x'), seen('3', 3)], 3, 'signed off'],
    ['two assessors, one saw a gate', [seen('1', 4), seen('2', 4), seen('2', 4, 'x')], 3, 'gate'],
  ] as const)('%s', (_, observations, needed, outcome) => {
    const standing = standingOf(observations, needed);
    expect(standing.signedOff ? 'signed off' : standing.because).toBe(outcome);
  });

  it('never comes from fewer than two dates, nor is it taken away by a better level', () => {
    const level = fc.constantFrom(1, 2, 3, 4);
    const one = fc.record({
      date: fc.constantFrom('1', '2', '3'),
      level,
      gate: fc.constantFrom(null, 'cap off'),
    });
    fc.assert(
      fc.property(fc.array(one), fc.constantFrom(3, 4), (observations, needed) => {
        const better = observations.map((each) => ({ ...each, level: 4 as const }));
        const dates = countedDates(observations, needed);
        expect(standingOf(observations, needed).signedOff).toBe(dates.length >= 2);
        if (standingOf(observations, needed).signedOff) {
          expect(new Set(observations.map(({ date }) => date)).size).toBeGreaterThan(1);
          expect(standingOf(better, needed).signedOff).toBe(true);
        }
        const failed = observations.filter(({ gate }) => gate !== null).map(({ date }) => date);
        for (const date of failed) expect(dates).not.toContain(date);
      }),
    );
  });
});

test('every skill’s gates are gates that there are, and safety is about all of them', () => {
  for (const skill of skills) {
    for (const gate of gatesOfSkill[skill]) expect(gateIds).toContain(gate);
  }
  expect(gatesOfSkill.safety).toEqual(gateIds);
  expect(failedGatesText([])).toBeNull();
  expect(failedGatesText(['tube-let-go', 'lifted-alone'])).toBe(
    'tube let go in an open clamp, mount lifted alone',
  );
});

// The clock changes of these zones are those of the IANA time zone database.
describe('an evening', () => {
  it.each([
    [
      'in the evening, its own date',
      '2026-12-05T19:30:00Z',
      'Europe/London',
      'night',
      '2026-12-05',
    ],
    [
      'after midnight, the date before',
      '2026-12-06T01:00:00Z',
      'Europe/London',
      'night',
      '2026-12-05',
    ],
    ['until noon', '2026-12-06T11:59:59Z', 'Europe/London', 'night', '2026-12-05'],
    ['from noon on, the next', '2026-12-06T12:00:00Z', 'Europe/London', 'night', '2026-12-06'],
    [
      'by day, its own date before noon',
      '2026-12-06T10:00:00Z',
      'Europe/London',
      'day',
      '2026-12-06',
    ],
    [
      'on the class’s clock, not the server’s',
      '2026-12-05T02:00:00Z',
      'America/Denver',
      'night',
      '2026-12-04',
    ],
    ['over the turn of the year', '2026-12-31T23:30:00Z', 'Asia/Tokyo', 'night', '2026-12-31'],
    ['over a leap day', '2028-03-01T03:00:00Z', 'Europe/London', 'night', '2028-02-29'],
    [
      'over the hour that comes twice',
      '2026-10-25T01:30:00Z',
      'Europe/London',
      'night',
      '2026-10-24',
    ],
  ] as const)('is %s', (_, at, zone, light, evening) => {
    expect(eveningOf(new Date(at), zone, light)).toBe(evening);
  });
});

// Four o'clock is our judgement.
describe('the last evening that has begun', () => {
  it.each([
    ['at one in the morning', '2026-07-04T00:00:00Z', 'night', '2026-07-03'],
    ['in the morning', '2026-07-03T08:00:00Z', 'night', '2026-07-02'],
    ['at three in the afternoon', '2026-07-03T14:00:00Z', 'night', '2026-07-02'],
    ['at four', '2026-07-03T15:00:00Z', 'night', '2026-07-03'],
    ['by day', '2026-07-03T08:00:00Z', 'day', '2026-07-03'],
  ] as const)('is known %s', (_, now, light, evening) => {
    expect(lastEveningBegun(new Date(now), 'Europe/London', light)).toBe(evening);
  });
});

test('there is no level above 4 that would be enough', () => {
  expect([enough(3), enough(4)]).toEqual(['level 3 or above', 'level 4']);
});

type Newer = Parameters<typeof meetEarlier>[0];
type Said = Omit<Newer, 'over'>;

describe('a note that meets an earlier one of the same evening', () => {
  const earlier: Said = { key: 'a', level: 2, gates: [], prompts: 1, note: '' };
  const later: Newer = { key: 'b', level: 3, gates: [], prompts: 0, note: '', over: null };
  const reads = (note: Newer, old: readonly Said[]) => meetEarlier(note, old).kind;

  it('is new where there is none', () => {
    expect(reads(later, [])).toBe('new');
  });
  it('is the same when it says the same', () => {
    expect(reads({ ...earlier, key: 'b', over: null }, [earlier])).toBe('same');
  });
  it('is a conflict in any difference: level, gates, prompts, words', () => {
    for (const change of [
      { level: 3 as const },
      { gates: ['tube-let-go' as const] },
      { prompts: 2 },
      { note: 'second try' },
    ]) {
      expect(reads({ ...earlier, key: 'b', over: null, ...change }, [earlier])).toBe('conflict');
    }
  });
  it('takes the place of one that it knows, or stands beside it', () => {
    const replace = { ...later, over: { keys: ['a'], how: 'replace' as const } };
    expect(meetEarlier(replace, [earlier])).toEqual({ kind: 'new', replaces: [earlier] });
    const beside = { ...later, over: { keys: ['a'], how: 'beside' as const } };
    expect(meetEarlier(beside, [earlier])).toEqual({ kind: 'new', replaces: [] });
  });
  it('is a conflict with one that it does not know', () => {
    const unknown = { ...later, over: { keys: ['z'], how: 'replace' as const } };
    expect(meetEarlier(unknown, [earlier])).toEqual({ kind: 'conflict', with: [earlier] });
  });
});
