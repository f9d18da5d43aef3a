import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { eveningRun, faultless, honest } from '@/tests/support/evening-run';
import { azAltFromDirection, separationDeg } from '../units/vector';
import { wrap180 } from '../units/angle';
import { act, replayRun, startRun, tubeAt, viewAt } from './alignment-run';
import type { Run } from './run';
import type { RunInput } from './run-input';
import { rockerSpeedsDegPerSecond, runLogSchema, type RunAction } from './run-log';
import { starSeenAt, trueSky } from './run-sky';
import type { Disturbance } from './setup';
import { makePose } from './tube-pose';

/** Capella, Enif, Aldebaran, Vega: up over Ottawa that evening. */
const [capella, enif, aldebaran, vega] = [24608, 107315, 21421, 91262] as const;
/** Canopus never rises there. */
const canopus = 30438;

type WithoutTime<Action> = Action extends unknown ? Omit<Action, 'at'> : never;

/** Does one thing after another, each a second after the last or after the mount has arrived. */
function after(input: RunInput, ...actions: WithoutTime<RunAction>[]): Run {
  return actions.reduce<Run>((run, action) => next(run, action), startRun(input));
}
const next = (run: Run, action: WithoutTime<RunAction>): Run => {
  const at = Math.max(run.lastMs, run.arrivesAtMs ?? 0) + 1000;
  return act(run, { ...action, at });
};
const setNorth = { do: 'set-start', azimuthDeg: 0, altitudeDeg: 0 } as const;
const goTo = (hip: number) => ({ do: 'go-to', hip }) as const;
const confirmNow = (run: Run): Run => {
  const at = Math.max(run.lastMs, run.arrivesAtMs ?? 0) + 1000;
  return act(run, { at, do: 'this-is-the-star', readings: viewAt(run, at).readings });
};
const withoutRefraction = (input: RunInput): RunInput => {
  const frame = { ...input.frame, refractionScale: 0 };
  return { ...input, frame, setup: { ...input.setup, believed: frame } };
};
const offArcmin = (run: Run, hip: number, atMs: number): number =>
  separationDeg(
    viewAt(run, atMs).tube,
    starSeenAt(trueSky(run.input), hip, atMs) ?? [NaN, NaN, NaN],
  ) * 60;
/** Confirms two stars that a faultless mount has gone to. */
const alignedRun = (input: RunInput): Run =>
  confirmNow(next(confirmNow(after(input, setNorth, goTo(capella))), goTo(enif)));

describe('before an alignment', () => {
  it('a faultless mount that faces north lands on the star, and the star drifts off at 15.041″ · cos δ a second', () => {
    // Design, "Sidereal facts". δ of the catalogue is that of 2000; precession moves it by at most
    // 20″ a year, which changes the rate by less than 0.04″ a second.
    const input = withoutRefraction(eveningRun({ setup: faultless }));
    for (const hip of [capella, enif, aldebaran, vega]) {
      const run = after(input, setNorth, goTo(hip));
      const arrived = run.arrivesAtMs ?? NaN;
      // The millisecond that the arrival is rounded to, at 15″ a second, and the four rounds of aiming.
      expect(offArcmin(run, hip, arrived)).toBeLessThan(0.01);
      const star = input.catalogue.stars.find((one) => one.hip === hip);
      const rate = 15.041 * Math.cos(((star?.decDeg ?? NaN) * Math.PI) / 180);
      const drifted = (offArcmin(run, hip, arrived + 60_000) * 60) / 60;
      expect(Math.abs(drifted - rate)).toBeLessThan(0.05);
    }
  });

  it('set by a compass needle, the first slew is off by the declination, to the needle’s side', () => {
    const declinationDeg = -12.4;
    const input = eveningRun({ setup: { ...faultless, declinationDeg } });
    const run = after(
      input,
      { do: 'set-start', azimuthDeg: 360 + declinationDeg, altitudeDeg: 0 },
      goTo(capella),
    );
    const at = run.arrivesAtMs ?? NaN;
    const tube = azAltFromDirection(viewAt(run, at).tube);
    const star = azAltFromDirection(starSeenAt(trueSky(input), capella, at) ?? [NaN, NaN, NaN]);
    expect(wrap180(tube.azimuthDeg - star.azimuthDeg)).toBeCloseTo(declinationDeg, 3);
    expect(tube.altitudeDeg).toBeCloseTo(star.altitudeDeg, 3);
  });

  it('a clock that is an hour fast sends the tube where the star will be in an hour', () => {
    const input = eveningRun({ setup: faultless });
    const scenario = { ...input.scenario };
    const later = eveningRun({ scenario: { localTime: '2026-12-05T20:30' } }).frame;
    const run = after(
      { ...input, scenario, setup: { ...input.setup, believed: later } },
      setNorth,
      goTo(enif),
    );
    const at = run.arrivesAtMs ?? NaN;
    const inAnHour = starSeenAt(trueSky(input), enif, at + 3_600_000);
    expect(separationDeg(viewAt(run, at).tube, inAnHour ?? [0, 0, 1]) * 60).toBeLessThan(0.02);
  });
});

describe('after an alignment that agrees', () => {
  it('a faultless mount keeps a star in the middle for half an hour', () => {
    // What the confirms leave: encoder steps of 0.01″ and stars that drifted for a second, 15″.
    const input = eveningRun({ setup: { ...faultless, encoderStepArcsec: 0.01 } });
    const run = next(alignedRun(input), goTo(aldebaran));
    expect(run.outcome?.kind).toBe('agree');
    expect(run.progress.stage).toBe('check-third');
    const arrived = run.arrivesAtMs ?? NaN;
    for (let minute = 0; minute <= 30; minute += 3) {
      expect(offArcmin(run, aldebaran, arrived + minute * 60_000)).toBeLessThan(0.5);
    }
  });

  it('rockers and steps come on top of the tracking', () => {
    const run = next(alignedRun(eveningRun({ setup: faultless })), goTo(aldebaran));
    const stepped = next(run, { do: 'step', azimuthArcmin: 0, altitudeArcmin: 30 });
    const at = (stepped.arrivesAtMs ?? NaN) + 600_000;
    expect(offArcmin(stepped, aldebaran, at)).toBeGreaterThan(29.5);
    expect(offArcmin(stepped, aldebaran, at)).toBeLessThan(30.5);
    const back = next(stepped, { do: 'step', azimuthArcmin: 0, altitudeArcmin: -30 });
    expect(offArcmin(back, aldebaran, at)).toBeLessThan(0.5);
  });

  it('nothing jumps when an action starts another motion', () => {
    const run = next(alignedRun(eveningRun()), goTo(vega));
    for (const afterMs of [500, 7000, 120_000]) {
      const at = run.lastMs + afterMs;
      const stopped = act(run, { at, do: 'stop' });
      expect(separationDeg(viewAt(run, at).tube, viewAt(stopped, at).tube) * 3600).toBeLessThan(
        1e-5,
      );
    }
  });
});

describe('speeds', () => {
  it.each([1, 2, 3, 4, 5])('rocker step %d turns both axes at its speed', (step) => {
    const run = after(eveningRun({ setup: { ...faultless, encoderStepArcsec: 0.01 } }), setNorth);
    const held = next(run, { do: 'rockers', azimuth: -step, altitude: step });
    const { azimuthDeg, altitudeDeg } = viewAt(held, held.lastMs + 10_000).readings;
    const turned = 10 * (rockerSpeedsDegPerSecond[step] ?? NaN);
    expect(wrap180(azimuthDeg)).toBeCloseTo(-turned, 4);
    expect(altitudeDeg).toBeCloseTo(turned, 4);
    const stopped = act(held, { at: held.lastMs + 10_000, do: 'rockers', azimuth: 0, altitude: 0 });
    expect(viewAt(stopped, held.lastMs + 99_000).readings.altitudeDeg).toBeCloseTo(turned, 4);
  });

  it('a slew takes as long as the farther axis, at the speed of the set-up', () => {
    const run = after(eveningRun({ setup: faultless }), setNorth);
    const slewing = next(run, goTo(enif));
    const seconds = ((slewing.arrivesAtMs ?? NaN) - slewing.lastMs) / 1000;
    const view = viewAt(slewing, slewing.arrivesAtMs ?? NaN);
    // The shorter way round: westward.
    const farther = Math.max(
      Math.abs(wrap180(view.readings.azimuthDeg)),
      view.readings.altitudeDeg,
    );
    expect(Math.abs(seconds - farther / 3)).toBeLessThan(0.005);
    const half = viewAt(slewing, slewing.lastMs + 500 * seconds);
    expect(half.moving).toBe(true);
    expect(wrap180(half.readings.azimuthDeg)).toBeCloseTo(wrap180(view.readings.azimuthDeg) / 2, 1);
    expect(view.moving).toBe(false);
    expect(view.arrivesAtMs).toBeNull();
  });
});

describe('refused, and the run stays as it was', () => {
  const input = eveningRun();
  const ready = after(input, setNorth);
  const slewing = next(ready, goTo(capella));
  const there = act(slewing, { at: slewing.arrivesAtMs ?? NaN, do: 'focus', position: 1 });
  const halfway = confirmNow(there);
  const proposing = after(eveningRun({ proposals: [capella, enif] }), setNorth);
  const given = after(eveningRun({ givenHip: vega }), setNorth);
  const at = (run: Run, ms = 1) => run.lastMs + ms;
  const shown = (run: Run, ms = 1) => viewAt(run, at(run, ms)).readings;

  it.each<[string, Run, RunAction, string]>([
    ['a go-to before the start position', startRun(input), { at: 5, ...goTo(capella) }, 'not-now'],
    [
      'rockers before the start position',
      startRun(input),
      { at: 5, do: 'rockers', azimuth: 1, altitude: 0 },
      'not-now',
    ],
    ['a second start position while centring', there, { at: at(there), ...setNorth }, 'not-now'],
    [
      'what is older than the last action',
      there,
      { at: there.lastMs - 1, do: 'stop' },
      'out-of-order',
    ],
    [
      'rockers while slewing',
      slewing,
      { at: at(slewing), do: 'rockers', azimuth: 1, altitude: 0 },
      'still-moving',
    ],
    [
      'a step while slewing',
      slewing,
      { at: at(slewing), do: 'step', azimuthArcmin: 1, altitudeArcmin: 0 },
      'still-moving',
    ],
    [
      'a confirm while slewing',
      slewing,
      { at: at(slewing), do: 'this-is-the-star', readings: shown(slewing) },
      'still-moving',
    ],
    ['a star of no catalogue', ready, { at: at(ready), ...goTo(999_999) }, 'not-in-this-sky'],
    ['a star below the horizon', ready, { at: at(ready), ...goTo(canopus) }, 'below-the-horizon'],
    [
      'the first star again as the second',
      halfway,
      { at: at(halfway), ...goTo(capella) },
      'same-star-twice',
    ],
    [
      'another star than the proposed one',
      proposing,
      { at: at(proposing), ...goTo(enif) },
      'not-proposed',
    ],
    ['another star than the given one', given, { at: at(given), ...goTo(enif) }, 'not-proposed'],
    [
      'turning the given star down',
      next(given, goTo(vega)),
      { at: 99_999, do: 'another-star' },
      'no-more-proposals',
    ],
    [
      'turning the last proposal down',
      next(proposing, { do: 'another-star' }),
      { at: 9999, do: 'another-star' },
      'no-more-proposals',
    ],
    ['turning down what nobody chose', ready, { at: at(ready), do: 'another-star' }, 'not-now'],
    [
      'a confirm without a star',
      ready,
      { at: at(ready), do: 'this-is-the-star', readings: shown(ready) },
      'not-now',
    ],
    [
      'a judgement before there is a result',
      halfway,
      { at: at(halfway), do: 'judge', trust: true },
      'not-now',
    ],
    [
      'pausing where that is not allowed',
      ready,
      { at: at(ready), do: 'paused', waitedMs: 60_000 },
      'may-not-pause',
    ],
    [
      'an azimuth that was tampered with',
      there,
      {
        at: at(there),
        do: 'this-is-the-star',
        readings: { ...shown(there), azimuthDeg: shown(there).azimuthDeg + 0.02 },
      },
      'does-not-add-up',
    ],
    [
      'an altitude that was tampered with',
      there,
      {
        at: at(there),
        do: 'this-is-the-star',
        readings: { ...shown(there), altitudeDeg: shown(there).altitudeDeg - 0.02 },
      },
      'does-not-add-up',
    ],
    [
      'readings of another moment of a moving axis',
      next(there, { do: 'rockers', azimuth: 3, altitude: 0 }),
      { at: at(there, 5000), do: 'this-is-the-star', readings: shown(there) },
      'does-not-add-up',
    ],
  ])('%s', (_, run, action, code) => {
    const after = act(run, action);
    expect(after.refusal?.code).toBe(code);
    expect({ ...after, refusal: null }).toEqual({ ...run, refusal: null });
    expect(viewAt(after, run.lastMs + 5000).refusal?.code).toBe(code);
  });

  it('a reading one count of the encoder off still counts: another machine may round it so', () => {
    const readings = shown(there);
    const action = {
      at: at(there),
      do: 'this-is-the-star',
      readings: { ...readings, altitudeDeg: readings.altitudeDeg + 20 / 3600 },
    } as const;
    expect(act(there, action).refusal).toBeNull();
  });

  it('the next action that is taken clears what was said', () => {
    const refused = act(slewing, { at: at(slewing), do: 'rockers', azimuth: 1, altitude: 0 });
    expect(act(refused, { at: at(slewing, 2), do: 'stop' }).refusal).toBeNull();
  });

  it('a log that holds a refused action does not add up, and says where', () => {
    const log: RunAction[] = [
      { at: 0, ...setNorth },
      { at: 1000, ...goTo(capella) },
      { at: 2000, do: 'step', azimuthArcmin: 1, altitudeArcmin: 1 },
    ];
    expect(replayRun(input, log)).toEqual({
      ok: false,
      action: 2,
      refusal: { code: 'still-moving' },
    });
  });
});

describe('the course of a run', () => {
  it('proposals come one after another, go on for the second star and leave out the first', () => {
    let run = after(eveningRun({ proposals: [vega, capella, enif] }), setNorth);
    expect(viewAt(run, run.lastMs)).toMatchObject({ proposedHip: vega, targetHip: vega });
    run = next(run, { do: 'another-star' });
    expect(viewAt(run, run.lastMs).proposedHip).toBe(capella);
    run = next(run, goTo(capella));
    expect(viewAt(run, run.lastMs)).toMatchObject({ stage: 'centre-first', targetHip: capella });
    run = confirmNow(run);
    expect(viewAt(run, run.lastMs)).toMatchObject({ stage: 'choose-second', proposedHip: enif });
    run = next(next(run, goTo(enif)), { do: 'start-again' });
    expect(viewAt(run, run.lastMs)).toMatchObject({
      stage: 'choose-first',
      proposedHip: vega,
      confirmed: [],
    });
  });

  it('with the last proposal confirmed as the first star, those turned down come again', () => {
    let run = after(eveningRun({ proposals: [vega, capella] }), setNorth, { do: 'another-star' });
    run = confirmNow(next(run, goTo(capella)));
    expect(viewAt(run, run.lastMs).proposedHip).toBe(vega);
  });

  it('a given first star leaves the second to the learner', () => {
    let run = after(eveningRun({ givenHip: capella }), setNorth);
    expect(viewAt(run, run.lastMs).targetHip).toBe(capella);
    run = next(confirmNow(next(run, goTo(capella))), goTo(enif));
    expect(viewAt(run, run.lastMs)).toMatchObject({ stage: 'centre-second', targetHip: enif });
  });

  it('ends with the judgement', () => {
    const run = next(alignedRun(eveningRun()), { do: 'judge', trust: true });
    expect(run.progress.stage).toBe('judged');
    expect(next(run, goTo(vega)).refusal).toEqual({ code: 'not-now' });
  });

  it('swapped stars do not agree, and the mount goes on without an alignment', () => {
    // The first slew lands on Capella; by hand the second star is sought and confirmed as the first.
    const input = eveningRun({ setup: faultless });
    const onto = (run: Run, hip: number): Run => {
      const at = (run.arrivesAtMs ?? 0) + 1000;
      const tube = azAltFromDirection(viewAt(run, at).tube);
      const star = azAltFromDirection(starSeenAt(trueSky(input), hip, at) ?? [0, 0, 1]);
      return next(run, {
        do: 'step',
        azimuthArcmin: wrap180(star.azimuthDeg - tube.azimuthDeg) * 60,
        altitudeArcmin: (star.altitudeDeg - tube.altitudeDeg) * 60,
      });
    };
    let run = confirmNow(onto(after(input, setNorth, goTo(capella)), vega));
    run = confirmNow(onto(next(run, goTo(vega)), capella));
    expect(['base-on-its-side', 'disagree', 'absurd-zero']).toContain(run.outcome?.kind);
    const still = viewAt(run, run.lastMs).readings;
    expect(viewAt(run, run.lastMs + 600_000).readings).toEqual(still);
  });
});

describe('what happens unseen', () => {
  const before = confirmNow(after(eveningRun({ setup: faultless }), setNorth, goTo(capella)));
  const stood = azAltFromDirection(viewAt(before, before.lastMs).tube);
  const standing = (disturbance: Disturbance): Run =>
    confirmNow(
      after(
        eveningRun({ setup: { ...faultless, disturbances: [disturbance] } }),
        setNorth,
        goTo(capella),
      ),
    );
  const tubeOf = (run: Run) => azAltFromDirection(viewAt(run, run.lastMs).tube);

  it('a stand that is turned takes the tube with it, and no reading changes', () => {
    const run = standing({ kind: 'base-turns', afterConfirm: 1, azimuthDeg: 7 });
    expect(wrap180(tubeOf(run).azimuthDeg - stood.azimuthDeg)).toBeCloseTo(7, 9);
    expect(viewAt(run, run.lastMs).readings).toEqual(viewAt(before, before.lastMs).readings);
  });

  it('a tripod that rises under the tube lifts it', () => {
    const run = standing({
      kind: 'base-moves',
      afterConfirm: 1,
      tiltDeg: 2,
      risesTowardsDeg: stood.azimuthDeg,
    });
    expect(tubeOf(run).altitudeDeg - stood.altitudeDeg).toBeCloseTo(2, 9);
    expect(viewAt(run, run.lastMs).readings).toEqual(viewAt(before, before.lastMs).readings);
  });

  it('a clutch that slips moves the tube alone', () => {
    const run = standing({ kind: 'axis-slips', afterConfirm: 1, azimuthDeg: -3, altitudeDeg: 1.5 });
    expect(wrap180(tubeOf(run).azimuthDeg - stood.azimuthDeg)).toBeCloseTo(-3, 9);
    expect(tubeOf(run).altitudeDeg - stood.altitudeDeg).toBeCloseTo(1.5, 9);
    expect(viewAt(run, run.lastMs).readings).toEqual(viewAt(before, before.lastMs).readings);
  });

  it('a computer that resets forgets the first star and reads zero, and the tube stays', () => {
    const run = standing({ kind: 'computer-resets', afterConfirm: 1 });
    expect(tubeOf(run).azimuthDeg).toBeCloseTo(stood.azimuthDeg, 9);
    expect(tubeOf(run).altitudeDeg).toBeCloseTo(stood.altitudeDeg, 9);
    expect(viewAt(run, run.lastMs)).toMatchObject({
      stage: 'choose-first',
      confirmed: [],
      readings: { azimuthDeg: 0, altitudeDeg: 0 },
    });
  });
});

const whole = (min: number, max: number) => fc.integer({ min, max });
const readings = { azimuthDeg: 0, altitudeDeg: 0 };
const anything: fc.Arbitrary<WithoutTime<RunAction>> = fc.oneof(
  {
    weight: 5,
    arbitrary: fc
      .constantFrom(capella, enif, aldebaran, vega, canopus)
      .map((hip) => ({ do: 'go-to' as const, hip })),
  },
  { weight: 5, arbitrary: fc.constant({ do: 'this-is-the-star' as const, readings }) },
  {
    weight: 3,
    arbitrary: fc
      .tuple(whole(-300, 300), whole(-300, 300))
      .map(([azimuthArcmin, altitudeArcmin]) => ({
        do: 'step' as const,
        azimuthArcmin,
        altitudeArcmin,
      })),
  },
  {
    weight: 3,
    arbitrary: fc
      .tuple(whole(-5, 5), whole(-5, 5))
      .map(([azimuth, altitude]) => ({ do: 'rockers' as const, azimuth, altitude })),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(whole(0, 359), whole(-20, 90))
      .map(([azimuthDeg, altitudeDeg]) => ({ do: 'set-start' as const, azimuthDeg, altitudeDeg })),
  },
  { weight: 1, arbitrary: whole(-10, 10).map((position) => ({ do: 'focus' as const, position })) },
  { weight: 1, arbitrary: fc.constant({ do: 'stop' as const }) },
  { weight: 1, arbitrary: fc.constant({ do: 'another-star' as const }) },
  { weight: 1, arbitrary: fc.constant({ do: 'start-again' as const }) },
  { weight: 1, arbitrary: fc.constant({ do: 'paused' as const, waitedMs: 1000 }) },
);
const anyAction = fc
  .tuple(anything, fc.oneof(whole(-50, 400), whole(0, 90_000), whole(30_000, 90_000)))
  .map(([action, waitMs]) => ({ action, waitMs }));

describe('any hand at the telescope', () => {
  it('the log alone gives the same run again, and refused actions leave no trace', () => {
    let alignments = 0;
    let refusals = 0;
    fc.assert(
      fc.property(
        fc.array(anyAction, { minLength: 5, maxLength: 40, size: 'max' }),
        fc.boolean(),
        (actions, mayPause) => {
          const input = eveningRun({
            mayPause,
            setup: {
              ...honest,
              disturbances: [
                { kind: 'axis-slips', afterConfirm: 1, azimuthDeg: 0.2, altitudeDeg: -0.1 },
                { kind: 'computer-resets', afterConfirm: 4 },
              ],
            },
          });
          let run = act(startRun(input), { at: 0, ...setNorth });
          const log: RunAction[] = [{ at: 0, ...setNorth }];
          for (const { waitMs, action } of actions) {
            const at = Math.max(0, run.lastMs + waitMs);
            const full: RunAction =
              action.do === 'this-is-the-star'
                ? { ...action, at, readings: viewAt(run, at).readings }
                : { ...action, at };
            const { refusal, ...rest } = act(run, full);
            if (refusal === null) log.push(full);
            else {
              refusals += 1;
              expect({ ...rest, refusal: null }).toEqual({ ...run, refusal: null });
            }
            run = { ...rest, refusal };
          }
          const sent = runLogSchema.parse(JSON.parse(JSON.stringify(log)));
          const replayed = replayRun(input, sent);
          if (!replayed.ok) throw new Error(`action ${replayed.action} was refused`);
          alignments += run.alignments.length;
          for (const later of [0, 1234, 600_000]) {
            const view = viewAt({ ...run, refusal: null }, run.lastMs + later);
            expect(viewAt(replayed.run, run.lastMs + later)).toEqual(view);
            expect(Math.hypot(...view.tube)).toBeCloseTo(1, 9);
            expect(view.readings.altitudeDeg).toBeGreaterThanOrEqual(-90);
            expect(view.readings.altitudeDeg).toBeLessThanOrEqual(180);
          }
        },
      ),
      { numRuns: 300, seed: 20261205 },
    );
    // Hands as restless as these do come to a result now and then.
    expect(alignments).toBeGreaterThan(10);
    expect(refusals).toBeGreaterThan(1000);
  });

  it('the pose of a frame is the view’s', () => {
    const run = next(alignedRun(eveningRun()), goTo(vega));
    const pose = makePose();
    for (const later of [0, 3333, 20_000, 400_000]) {
      const view = viewAt(run, run.lastMs + later);
      tubeAt(run, run.lastMs + later, pose);
      expect([pose.tube, pose.tubeUp, pose.dot]).toEqual([view.tube, view.tubeUp, view.dot]);
    }
  });
});
