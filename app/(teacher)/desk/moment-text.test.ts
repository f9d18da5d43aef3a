import { describe, expect, it } from 'vitest';
import { instantOfLocalTime } from '@/lib/sky/local-time';
import { describeSky, localTimeProblem, nauticalDuskOn, todayIn } from './moment-text';

const newYork = 'America/New_York';
const bergen = { latitudeDeg: 60.39, longitudeDeg: 5.32, elevationM: 12 };

function problemWith(localTime: string) {
  const refused = instantOfLocalTime(localTime, newYork);
  if (refused.ok) throw new Error('expected to be refused');
  return localTimeProblem(refused, localTime, newYork);
}

describe('a wall-clock time that cannot be taken as it is', () => {
  it('offers both hours where it comes twice', () => {
    const problem = problemWith('2026-11-01T01:30');
    expect(problem.message).toContain('comes twice');
    expect(problem.candidates).toEqual([
      { localTime: '2026-11-01T01:30-04:00', label: 'the first: 01:30 (UTC −04:00)' },
      { localTime: '2026-11-01T01:30-05:00', label: 'the second: 01:30 (UTC −05:00)' },
    ]);
  });

  it('offers the times on both sides where the clocks jump over it, and each is accepted', () => {
    const problem = problemWith('2026-03-08T02:30');
    expect(problem.message).toContain('does not exist');
    expect(problem.candidates).toHaveLength(2);
    for (const { localTime } of problem.candidates)
      expect(instantOfLocalTime(localTime, newYork).ok).toBe(true);
  });
});

describe('nautical dusk tonight', () => {
  it('leaves the Sun 12° down, and no higher', () => {
    const dusk = nauticalDuskOn('2026-12-05', bergen, 'Europe/Oslo');
    if (!dusk.ok) throw new Error(dusk.message);
    const resolved = instantOfLocalTime(dusk.localTime, 'Europe/Oslo');
    if (!resolved.ok) throw new Error(resolved.reason);
    expect(describeSky(resolved.instant, bergen).text).toContain(
      'The Sun is 12° below the horizon',
    );
  });

  it('is told to be missing in a light summer night and under the midnight sun', () => {
    expect(nauticalDuskOn('2026-06-21', bergen, 'Europe/Oslo')).toMatchObject({ ok: false });
    const cape = nauticalDuskOn('2026-06-21', { ...bergen, latitudeDeg: 71.2 }, 'Europe/Oslo');
    expect(!cape.ok && cape.message).toContain('no dusk');
  });
});

it('says when the Sun is up', () => {
  expect(describeSky('2026-12-05T12:00:00.000Z', bergen).sunIsUp).toBe(true);
});

it('takes the date from the clock of the place', () => {
  expect(todayIn('Pacific/Auckland', new Date('2026-12-05T12:00:00Z'))).toBe('2026-12-06');
});
