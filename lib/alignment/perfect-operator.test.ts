import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eveningRun, faultless, honest } from '@/tests/support/evening-run';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { separationDeg } from '../units/vector';
import { replayRun } from './alignment-run';
import { deservedJudgement } from './deserved-judgement';
import { perfectLog, type OperatorOptions } from './perfect-operator';
import type { RunInput } from './run-input';
import { runLogSchema } from './run-log';
import { lightSeenAt, type SkyLight } from './lights';
import { trueSky } from './run-sky';

const [capella, enif, aldebaran, vega] = [24608, 107315, 21421, 91262] as const;

function replayed(input: RunInput, log = perfectLog(input)) {
  const replay = replayRun(input, runLogSchema.parse(log));
  if (!replay.ok) throw new Error(`action ${replay.action}: ${replay.refusal.code}`);
  const [first, second] = replay.confirms;
  if (first === undefined || second === undefined) throw new Error('two stars were expected');
  return { run: replay.run, first, second, last: log.at(-1) };
}
const offArcmin = (
  input: RunInput,
  { view, atMs, hip }: ReturnType<typeof replayed>['first'],
  light: SkyLight = { hip },
) => separationDeg(view.tube, lightSeenAt(trueSky(input), light, atMs) ?? [0, 0, -1]) * 60;

const evenings = [
  {},
  {
    place: { latitudeDeg: -33.9, longitudeDeg: 151.2 },
    timeZone: 'Australia/Sydney',
    localTime: '2027-05-05T20:00',
  },
  {
    place: { latitudeDeg: 1.3, longitudeDeg: 103.8 },
    timeZone: 'Asia/Singapore',
    localTime: '2027-08-05T21:00',
  },
  {
    place: { latitudeDeg: 69.6, longitudeDeg: 18.9 },
    timeZone: 'Europe/Oslo',
    localTime: '2027-01-10T19:00',
  },
  {
    place: { latitudeDeg: -54.8, longitudeDeg: -68.3 },
    timeZone: 'America/Argentina/Ushuaia',
    localTime: '2027-06-21T20:00',
  },
];
const telescopeWith = (computer: string) => ({
  ...eveningRun().scenario.telescope,
  computer,
});
const angle = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const way = fc.constantFrom(1 as const, -1 as const);
const hidden = fc.record({
  base: fc.record({
    tiltDeg: fc.double({ min: 0, max: 1, noNaN: true }),
    risesTowardsDeg: angle(180),
  }),
  coneDeg: angle(0.2),
  axisSkewDeg: angle(0.1),
  zero: angle(1),
  play: fc.record({
    azimuth: fc.integer({ min: 0, max: 12 }),
    altitude: fc.integer({ min: 0, max: 12 }),
  }),
  finalApproach: fc.record({ azimuth: way, altitude: way }),
});

describe('an operator who steers by the true sky', () => {
  it.each(['fixed-zero', 'solved-zero'])(
    'centres both stars with the play taken up and rightly trusts the result, anywhere (%s)',
    (computer) => {
      fc.assert(
        fc.property(fc.constantFrom(...evenings), hidden, (evening, telescope) => {
          const { base, coneDeg, axisSkewDeg, zero, play, finalApproach } = telescope;
          const input = eveningRun({
            scenario: { ...evening, telescope: telescopeWith(computer) },
            setup: {
              ...faultless,
              base,
              // An index switch sets a fixed zero well.
              errors: {
                altitudeZeroDeg: computer === 'fixed-zero' ? zero / 6 : zero,
                coneDeg,
                axisSkewDeg,
              },
              backlashArcmin: play,
              finalApproach,
            },
          });
          const { run, first, second, last } = replayed(input);
          for (const moment of [first, second]) {
            // Steps are typed to 0.01′ in each axis.
            expect(offArcmin(input, moment)).toBeLessThan(0.02);
            expect(Math.abs(moment.playArcmin.azimuth)).toBeLessThan(1e-9);
            expect(Math.abs(moment.playArcmin.altitude)).toBeLessThan(1e-9);
          }
          expect(run.outcome?.kind).toBe('agree');
          expect(last).toMatchObject({ do: 'judge', trust: true });
          // A quarter of an hour is ample, even with the slowest speeds.
          expect(run.lastMs).toBeLessThan(900_000);
        }),
        { numRuns: 40 },
      );
    },
    60_000,
  );

  it('finds the zero, the base and no more: a faultless making is solved for exactly', () => {
    const input = eveningRun({
      setup: { ...honest, errors: { altitudeZeroDeg: 0.7, coneDeg: 0, axisSkewDeg: 0 } },
    });
    const { outcome } = replayed(input).run;
    if (outcome?.kind !== 'agree') throw new Error('no alignment');
    // The encoders count 20″, half of it is rounded away at each reading.
    expect(outcome.model.altitudeZeroDeg).toBeCloseTo(0.7, 2);
    expect(outcome.baseTiltDeg).toBeCloseTo(0.5, 2);
  });

  it('turns proposals down until the wanted star comes', () => {
    const input = eveningRun({ proposals: [vega, capella, aldebaran, enif] });
    const log = perfectLog(input, [capella, enif]);
    expect(log.filter((action) => action.do === 'another-star')).toHaveLength(2);
    const { first, second } = replayed(input, log);
    expect([first.hip, second.hip]).toEqual([capella, enif]);
  });

  it('begins with the star that is given', () => {
    expect(replayed(eveningRun({ givenHip: aldebaran })).first.hip).toBe(aldebaran);
  });

  it('takes a pair out of the proposals by itself', () => {
    const proposals: number[] = [aldebaran, enif, capella];
    const { first, second } = replayed(eveningRun({ proposals }));
    expect(proposals.indexOf(first.hip)).toBeLessThan(proposals.indexOf(second.hip));
  });

  it('checks on a third star, which is then in the field', () => {
    const input = eveningRun({ thirdHips: [aldebaran] });
    const log = perfectLog(input, [capella, enif]);
    const { run } = replayed(input, log);
    expect(log.filter((action) => action.do === 'go-to').map(({ hip }) => hip)).toEqual([
      capella,
      enif,
      aldebaran,
    ]);
    expect(run.alignments).toHaveLength(1);
  });
});

describe('the same operator with a slip on purpose', () => {
  const input = eveningRun();
  const radius = fieldRadiusArcmin(input.scenario.telescope, input.kit.centringEyepiece);
  const with_ = (options: OperatorOptions) =>
    replayed(input, perfectLog(input, [capella, enif], options));

  it('centres another star and confirms it for the one that was meant', () => {
    const { first, run, last } = with_({ first: { instead: { hip: aldebaran } } });
    expect(first.hip).toBe(capella);
    expect(offArcmin(input, first, { hip: aldebaran })).toBeLessThan(0.02);
    expect(offArcmin(input, first) / 60).toBeGreaterThan(20);
    expect(run.outcome?.kind).not.toBe('agree');
    expect(last).toMatchObject({ trust: false });
  });

  it('centres a planet', () => {
    const { second } = with_({ second: { instead: { planet: 'saturn' } } });
    expect(second.hip).toBe(enif);
    expect(offArcmin(input, second, { planet: 'saturn' })).toBeLessThan(0.02);
  });

  it.each([0.3, 0.5, 1])('stops off by %d of the field', (share) => {
    const { first, second } = with_({ second: { offByShareOfField: share, offTowardsDeg: 120 } });
    expect(offArcmin(input, second) / radius).toBeCloseTo(share, 2);
    expect(offArcmin(input, first)).toBeLessThan(0.02);
  });

  it('finishes from the wrong side: the star is in the middle and the readings carry the play', () => {
    const { first, second } = with_({ first: { againstFinalApproach: true } });
    expect(offArcmin(input, first)).toBeLessThan(0.02);
    expect(first.playArcmin.azimuth).toBeCloseTo(6, 9);
    expect(first.playArcmin.altitude).toBeCloseTo(4, 9);
    expect(second.playArcmin).toEqual({ azimuth: 0, altitude: 0 });
  });

  it('starts where it is told to', () => {
    const { run } = with_({ startErrorDeg: { azimuth: -11, altitude: 3 } });
    expect(run.start).toEqual({ azimuthDeg: 349, altitudeDeg: 3 });
    expect(run.outcome?.kind).not.toBe('undetermined');
  });

  it('judges as it is told to', () => {
    expect(with_({ trust: false }).last).toMatchObject({ trust: false });
  });
});

describe('what an alignment deserves', () => {
  it.each([
    [0.9, 0.95, 'trust'],
    [0.665, 0.95, 'trust'],
    [0.6, 0.95, 'either'],
    [0.38, 0.95, 'either'],
    [0.37, 0.95, 'doubt'],
    [null, 0.95, 'doubt'],
  ] as const)('%d of a possible %d: %s', (achieved, perfect, deserved) => {
    expect(deservedJudgement(achieved, perfect)).toBe(deserved);
  });
});
