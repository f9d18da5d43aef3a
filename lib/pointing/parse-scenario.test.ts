import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eveningJson } from '@/tests/support/evening';
import { parseScenario } from './parse-scenario';

const problemsOf = (changes: object) => {
  const parsed = parseScenario({ ...eveningJson, ...changes });
  return parsed.ok ? [] : parsed.problems;
};

describe('a scenario that can be used', () => {
  it('gets its defaults and its instant', () => {
    const parsed = parseScenario(eveningJson);
    if (!parsed.ok) throw new Error('refused');
    expect(parsed.instant).toBe('2026-12-06T00:30:00.000Z');
    expect(parsed.scenario.settings).toEqual({
      faintestMagnitude: 2.5,
      lowestAltitudeDeg: 20,
      highestAltitudeDeg: 70,
      horizonMarginDeg: 2,
      moonDistanceDeg: 5,
    });
    expect(parsed.scenario.sky).toEqual({ darkestLimitMagnitude: 5, extinction: 0.25 });
    expect(parsed.scenario.horizon).toEqual([]);
    expect(parsed.scenario.clouds).toEqual([]);
  });

  it('may name either of two equal hours by its offset', () => {
    const at = (localTime: string) => {
      const parsed = parseScenario({ ...eveningJson, localTime });
      return parsed.ok ? parsed.instant : null;
    };
    expect(at('2026-11-01T01:30-04:00')).toBe('2026-11-01T05:30:00.000Z');
    expect(at('2026-11-01T01:30-05:00')).toBe('2026-11-01T06:30:00.000Z');
    expect(at('2026-11-01T01:30-06:00')).toBeNull();
  });
});

describe('a scenario that cannot be used names its field', () => {
  const { telescope, eyepiece, place } = eveningJson;
  const point = (azimuthDeg: number) => ({ azimuthDeg, altitudeDeg: 5 });
  it.each<[string, object, RegExp]>([
    ['place.latitudeDeg', { place: { ...place, latitudeDeg: 90.5 } }, /at most 90/],
    ['place.longitudeDeg', { place: { ...place, longitudeDeg: -181 } }, /at least -180/],
    ['place.latitudeDeg', { place: { longitudeDeg: 0 } }, /is missing: give a number/],
    ['place.elevationM', { place: { ...place, elevationM: 'high' } }, /"high".*must be a number/],
    ['localTime', { localTime: 'tonight' }, /not a local time: write it like/],
    ['localTime', { localTime: '2026-02-30T20:00' }, /not in the calendar/],
    ['localTime', { localTime: '1066-10-14T20:00' }, /years 1900 to 2100/],
    [
      'localTime',
      { localTime: '2026-03-08T02:30' },
      /does not exist.*01:30-05:00 or .*03:30-04:00/,
    ],
    [
      'localTime',
      { localTime: '2026-11-01T01:30' },
      /give the offset: .*01:30-04:00 or .*01:30-05:00/,
    ],
    ['localTime', { localTime: '2026-12-05T19:30-07:00' }, /use 2026-12-05T19:30-05:00/],
    ['timeZone', { timeZone: 'Atlantis/Capital' }, /not a known time zone/],
    ['telescope.computer', { telescope: { ...telescope, computer: 'clever' } }, /"fixed-zero" or/],
    ['telescope.centringArcmin', { telescope: { ...telescope, centringArcmin: 0 } }, /more than 0/],
    ['eyepiece.focalLengthMm', { eyepiece: { ...eyepiece, focalLengthMm: -9 } }, /more than 0/],
    ['horizon[0].azimuthDeg', { horizon: [point(360)] }, /less than 360/],
    ['horizon[1]', { horizon: [point(10), point(10)] }, /give each azimuth once/],
    ['horizon[2]', { horizon: [point(10), point(100), point(50)] }, /cross itself/],
    ['horizon', { horizon: Array.from({ length: 73 }, (_, i) => point(i)) }, /at most 72/],
    ['clouds[0].radiusDeg', { clouds: [{ ...point(0), radiusDeg: 0 }] }, /more than 0/],
    ['settings.lowestAltitudeDeg', { settings: { lowestAltitudeDeg: 70 } }, /smaller than/],
    ['wind', { wind: 3 }, /not a field that a scenario has/],
    ['sky.seeing', { sky: { seeing: 1 } }, /not a field that a scenario has/],
    ['place', { place: null }, /is null, but must be a group of fields/],
  ])('%s', (field, changes, message) => {
    const problems = problemsOf(changes);
    expect(problems.map((problem) => problem.field)).toEqual([field]);
    expect(problems[0]?.message).toMatch(message);
  });

  it('all of them at once', () => {
    expect(
      problemsOf({ place: { latitudeDeg: 100, longitudeDeg: 200 }, eyepiece: 3 }).map(
        ({ field }) => field,
      ),
    ).toEqual(['place.latitudeDeg', 'place.longitudeDeg', 'eyepiece']);
  });

  it('and never throws, whatever the JSON', () => {
    fc.assert(
      fc.property(fc.jsonValue(), (json) => {
        const parsed = parseScenario(json);
        if (parsed.ok) return;
        expect(parsed.problems.length).toBeGreaterThan(0);
        expect(parsed.problems.every((p) => p.field !== '' && p.message.endsWith('.'))).toBe(true);
      }),
    );
  });
});
