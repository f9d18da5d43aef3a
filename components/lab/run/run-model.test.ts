import { describe, expect, test, vi } from 'vitest';
import { viewAt, replayRun } from '@/lib/alignment/alignment-run';
import { perfectLog } from '@/lib/alignment/perfect-operator';
import type { RunAction, RunLog } from '@/lib/alignment/run-log';
import { longestLog, rockerSpeedsDegPerSecond, runLogSchema } from '@/lib/alignment/run-log';
import { wrap180 } from '@/lib/units/angle';
import { randomRunNights } from '@/tests/support/run-nights';
import { runLabVariant } from './run-lab-variant';
import { RunModel } from './run-model';

const night = [...randomRunNights('the model', 1, [30, 60])][0];
if (night === undefined) throw new Error('no night');
const { input } = night;
const variant = runLabVariant(night.variant, { placeName: 'Testham' });
const perfect = perfectLog(input);

function open(log: RunLog = [], changes: { mode?: 'practice' | 'check'; mayPause?: boolean } = {}) {
  const onLog = vi.fn<(log: RunLog) => void>();
  const model = new RunModel({
    variant: { ...variant, mayPause: changes.mayPause ?? false },
    catalogue: input.catalogue,
    mode: changes.mode ?? 'check',
    log,
    onLog,
  });
  let nowMs = 1000;
  model.tick(nowMs);
  return {
    model,
    onLog,
    /** Frames of a sixtieth of a second. */
    pass: (seconds: number) => {
      for (let frame = 0; frame < seconds * 60; frame += 1) model.tick((nowMs += 1000 / 60));
    },
  };
}
const upTo = (what: RunAction['do'], count = 1): RunLog => {
  let seen = 0;
  const end = perfect.findIndex(({ do: done }) => done === what && (seen += 1) === count);
  return perfect.slice(0, end + 1);
};
/** In place on the first star, standing. */
const onFirstStar = (): RunLog => upTo('this-is-the-star').slice(0, -1);

describe('what is done', () => {
  test('is in the log, adds up when it is replayed, and what is refused is not in it', () => {
    const { model, onLog, pass } = open();
    expect(model.confirm(), 'nothing is centred yet').toBe(false);
    expect(model.snapshot().said).not.toBe('');
    expect(model.done).toEqual([]);
    expect(onLog).not.toHaveBeenCalled();

    expect(model.setStart(3, 0.5)).toBe(true);
    const hip = model.snapshot().proposedHip ?? model.lists.mountList()[0]?.hip ?? 0;
    pass(2);
    expect(model.goTo(hip)).toBe(true);
    pass(90);
    expect(model.snapshot().moving).toBe(false);
    model.setRockers(2, -1);
    pass(3);
    model.setRockers(0, 0);
    model.setFocus(0.5);
    pass(1);
    expect(model.confirm()).toBe(true);
    expect(model.snapshot().stage).toBe('choose-second');
    expect(runLogSchema.safeParse(model.done).success).toBe(true);
    expect(replayRun({ ...variant, catalogue: input.catalogue }, model.done).ok).toBe(true);
    expect(onLog).toHaveBeenLastCalledWith(model.done);
  });

  test('a perfect operator’s log taken up again stands where it ended, and can be judged', () => {
    const { model } = open(perfect.slice(0, -1));
    const replay = replayRun({ ...variant, catalogue: input.catalogue }, perfect.slice(0, -1));
    if (!replay.ok) throw new Error('the perfect log does not add up');
    expect(model.view()).toEqual(viewAt(replay.run, replay.run.lastMs));
    model.holdSky(true);
    expect(model.judge(true)).toBe(true);
    expect(model.snapshot()).toMatchObject({ stage: 'judged', trusted: true });
  });

  test('a log that stops adding up is taken up as far as it does', () => {
    const spoilt: RunLog = [
      ...upTo('go-to'),
      { at: 0, do: 'judge', trust: true },
      ...perfect.slice(upTo('go-to').length),
    ];
    expect(open(spoilt).model.done).toEqual(upTo('go-to'));
  });

  test('strips that were held when the page was left are let go of', () => {
    const log = onFirstStar();
    const at = log.at(-1)?.at ?? 0;
    const { model, pass } = open([
      ...log,
      { at: at + 9000, do: 'rockers', azimuth: 4, altitude: 0 },
    ]);
    expect(model.done.at(-1)).toEqual({ at: at + 9000, do: 'rockers', azimuth: 0, altitude: 0 });
    const before = model.view().readings;
    pass(5);
    expect(model.view().readings).toEqual(before);
  });
});

describe('steering', () => {
  test('a strip held for ten seconds moves the axis by its speed times ten', () => {
    const { model, pass } = open(onFirstStar());
    pass(10);
    const before = model.view().readings.azimuthDeg;
    const from = model.atMs;
    model.setRockers(4, 0);
    pass(10);
    model.setRockers(0, 0);
    const seconds = (model.atMs - from) / 1000;
    // The first frame passes before the hand is read; readings are whole counts of the encoder.
    const slack = rockerSpeedsDegPerSecond[4] / 60 + variant.setup.encoderStepArcsec / 3600;
    const moved = wrap180(model.view().readings.azimuthDeg - before);
    expect(Math.abs(moved - seconds * rockerSpeedsDegPerSecond[4])).toBeLessThanOrEqual(slack);
  });

  test('a hand that changes its mind within a frame leaves one entry in the log', () => {
    const { model, pass } = open(onFirstStar());
    pass(10);
    const { length } = model.done;
    for (const step of [1, 2, 3, 4, 5]) model.setRockers(step, 0);
    pass(0.02);
    expect(model.done.slice(length)).toMatchObject([{ do: 'rockers', azimuth: 5, altitude: 0 }]);
  });

  test('the knob’s little turns become a few entries, the last of them where it was left', () => {
    const { model, pass } = open(onFirstStar());
    pass(10);
    const { length } = model.done;
    for (let turn = 0; turn < 60; turn += 1) {
      model.setFocus(3 - turn / 20);
      expect(model.focus).toBe(3 - turn / 20);
      pass(1 / 60);
    }
    pass(1);
    const turns = model.done.slice(length);
    expect(turns.length).toBeLessThan(8);
    expect(turns.at(-1)).toMatchObject({ do: 'focus', position: 3 - 59 / 20 });
  });

  test('while the mount drives by itself the strips do nothing and say why', () => {
    const { model, pass } = open(upTo('go-to'));
    model.setRockers(3, 0);
    pass(0.1);
    expect(model.snapshot()).toMatchObject({ moving: true, rockers: { azimuth: 0, altitude: 0 } });
    expect(model.snapshot().said).toMatch(/still driving/);
    expect(model.stop()).toBe(true);
    expect(model.snapshot().moving).toBe(false);
  });
});

describe('time', () => {
  test('runs with the wall, stands still for the table, and an arrival there is at once', () => {
    const { model, pass } = open(onFirstStar());
    const start = model.atMs;
    pass(3);
    expect(model.atMs - start).toBeGreaterThan(2900);
    model.holdSky(true);
    const held = model.atMs;
    pass(30);
    expect(model.atMs).toBe(held);
    expect(model.step(600, 0)).toBe(true);
    // Ten degrees at 0.6° a second.
    expect(model.atMs - held).toBeGreaterThanOrEqual(Math.floor(10_000 / 0.6));
    expect(model.snapshot().moving).toBe(false);
  });

  test('whoever asks for less motion sees a slew’s end at once, at the time that it takes', () => {
    const log = upTo('go-to').slice(0, -1);
    const hip = upTo('go-to').at(-1);
    if (hip?.do !== 'go-to') throw new Error('no go-to');
    const { model } = open(log);
    model.preferLessMotion(true);
    const before = model.atMs;
    expect(model.goTo(hip.hip)).toBe(true);
    expect(model.snapshot().moving).toBe(false);
    expect(model.atMs).toBeGreaterThan(before);
  });

  test('a page that was hidden for an hour costs a second', () => {
    const { model } = open();
    model.tick(5000);
    model.tick(5000 + 3_600_000);
    expect(model.atMs).toBeLessThanOrEqual(2000);
  });

  test('a check pauses only when it may, and then the log says for how long', () => {
    const strict = open(onFirstStar()).model;
    expect(strict.mayPause).toBe(false);
    expect(strict.pause(true, 0)).toBe(false);

    const { model, pass } = open(onFirstStar(), { mayPause: true });
    expect(model.pause(true, 10_000)).toBe(true);
    const { atMs } = model;
    pass(20);
    expect(model.atMs).toBe(atMs);
    expect(model.goTo(1), 'nothing drives while the sky stands still').toBe(false);
    expect(model.pause(false, 30_500)).toBe(true);
    expect(model.done.at(-1)).toEqual({ at: atMs, do: 'paused', waitedMs: 20_500 });
  });

  test('a practice may always pause', () => {
    const { model } = open(onFirstStar(), { mode: 'practice' });
    expect(model.pause(true, 0)).toBe(true);
    expect(model.snapshot().paused).toBe(true);
  });
});

test('panels hear of news only: standing under the drifting sky is none', () => {
  const { model, pass } = open(onFirstStar());
  pass(10);
  const heard = vi.fn();
  model.subscribe(heard);
  const drawn = vi.fn();
  model.onFrame(drawn);
  pass(2);
  expect(heard.mock.calls.length).toBeLessThanOrEqual(1);
  expect(drawn.mock.calls.length).toBeGreaterThan(100);
});

test('the mount’s list has named stars only, in order, and never one that it believes is down', () => {
  const { model } = open(onFirstStar());
  const names = model.lists.mountList().map(({ name }) => name);
  expect(names.length).toBeGreaterThan(5);
  expect(names).toEqual([...names].sort((a, b) => a.localeCompare(b, 'en')));
});

test('the star that a perfect operator confirms stands in the middle of the eyepiece', () => {
  const { model } = open(onFirstStar());
  const { targetHip } = model.snapshot();
  const star = model.lists.inEyepiece().find(({ id }) => id === `hip-${String(targetHip)}`);
  expect(star).toBeDefined();
  const off = Math.hypot(star?.rightArcmin ?? NaN, star?.upArcmin ?? NaN);
  expect(off).toBeLessThan(0.2 * model.lists.eyepieceRadiusArcmin);
});

test('near the Sun by day the model says how near, and at night nothing', () => {
  const { sun } = variant.frame;
  const day = {
    ...variant,
    frame: {
      ...variant.frame,
      sun: { ...sun, azimuthDeg: 20, altitudeDeg: 25, trueAltitudeDeg: 25 },
    },
  };
  const model = new RunModel({
    variant: day,
    catalogue: input.catalogue,
    mode: 'check',
    log: [],
    onLog: () => undefined,
  });
  // As carried out the tube faces north, level but for its hidden errors: acos(cos 25° cos 20°) = 31.6°.
  expect(model.snapshot().sunDeg).toBeGreaterThanOrEqual(29);
  expect(model.snapshot().sunDeg).toBeLessThanOrEqual(34);
  expect(open().model.snapshot().sunDeg).toBeNull();
});

describe('a run that has used itself up', () => {
  test('begins again where nothing can be judged, and only there', () => {
    const { model, onLog, pass } = open(onFirstStar());
    expect(model.beginAnew(), 'there is time').toBe(false);
    pass(7200);
    expect(model.snapshot()).toMatchObject({ over: true, stage: 'centre-first' });
    expect(model.step(1, 1)).toBe(false);
    expect(model.snapshot().said).toMatch(/two stars are confirmed: begin it again/);
    expect(model.beginAnew()).toBe(true);
    expect(onLog).toHaveBeenLastCalledWith([]);
    expect(model.snapshot()).toMatchObject({ over: false, stage: 'start-position', minutes: 0 });
    expect(model.setStart(0, 0)).toBe(true);
  });

  test('by its moves ends with the judgement where there is one to give', () => {
    const idle = (log: RunLog, count: number): RunLog => [
      ...log,
      ...Array.from({ length: count }, () => ({
        at: log.at(-1)?.at ?? 0,
        do: 'focus' as const,
        position: 1,
      })),
    ];
    const early = open(idle(upTo('set-start'), longestLog - 4)).model;
    expect(early.setStart(1, 1)).toBe(true);
    expect(early.anotherStar() || early.stop()).toBe(false);
    expect(early.snapshot().full).toBe(true);
    expect(early.snapshot().said).toMatch(/begin it again/);
    expect(early.beginAnew()).toBe(true);
    expect(early.snapshot().full).toBe(false);

    const confirmed = upTo('this-is-the-star', 2);
    const late = open(idle(confirmed, longestLog - 2 - confirmed.length)).model;
    expect(late.stop()).toBe(false);
    expect(late.snapshot().said).toMatch(/Judge what you have/);
    expect(late.beginAnew()).toBe(false);
    expect(late.judge(true)).toBe(true);
    expect(runLogSchema.safeParse(late.done).success).toBe(true);
  });
});
