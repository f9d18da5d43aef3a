import { describe, expect, it } from 'vitest';
import { eveningScenario } from '@/tests/support/evening';
import { surveyedKits } from '@/tests/support/perfect-evening';
import { faultlessEvening } from '@/tests/support/rehearsed-evening';
import { act, replayRun } from '../alignment/alignment-run';
import { perfectLog, type OperatorOptions } from '../alignment/perfect-operator';
import type { RunInput } from '../alignment/run-input';
import type { RunAction } from '../alignment/run-log';
import type { Attribution } from './attribution';
import { eveningSetup } from './evening-setup';
import { noSlips, type Slips } from './slips';
import { tracedGoTos, type LightOf } from './trace-run';

const [capella, alpheratz, aldebaran, hamal] = [24608, 677, 21421, 9884];
const [kit] = surveyedKits;
if (kit === undefined) throw new Error('no kit');
const { telescope, eyepiece, ...runKit } = kit;

const asMeant: LightOf = ({ hip }) => ({ hip });

function rehearsed(changes: Partial<Slips>, options: OperatorOptions = {}, lightOf = asMeant) {
  const slips = { ...noSlips, ...changes };
  const evening = faultlessEvening('solved-zero', { slips });
  const own = { ...evening.telescope, encoderStepArcsec: 0.1 };
  const input: RunInput = {
    scenario: eveningScenario({ telescope: { ...telescope, computer: 'solved-zero' }, eyepiece }),
    frame: evening.frame,
    kit: runKit,
    setup: eveningSetup(slips, own, evening),
    givenHip: null,
    proposals: null,
    mayPause: false,
    catalogue: evening.catalogue,
  };
  const log = perfectLog(input, [capella, alpheratz], {
    thirdHip: aldebaran,
    trust: true,
    ...options,
  });
  return {
    input,
    log,
    traced: (all: readonly RunAction[] = log) =>
      tracedGoTos(input, all, { slips, telescope: own, lightOf }),
  };
}

function ofKind(traced: ReturnType<typeof tracedGoTos>, kind: string) {
  const found = traced.find((one) => one.kind === kind)?.attribution;
  if (found?.ok !== true) throw new Error(`no ${kind}`);
  return found;
}
const mainCause = (attribution: Extract<Attribution, { ok: true }>) => attribution.shares[0]?.cause;

describe('tracing a run', () => {
  it('finds both first slews and the third star, and next to nothing missed when all is well', () => {
    const traced = rehearsed({}).traced();
    expect(traced.map(({ kind, hip }) => [kind, hip])).toEqual([
      ['first-slew', capella],
      ['second-slew', alpheratz],
      ['third', aldebaran],
    ]);
    expect(ofKind(traced, 'first-slew').missArcmin).toBeLessThan(0.001);
    // The operator stops within a hundredth of an arcminute; the play it takes up to as much.
    expect(ofKind(traced, 'third').missArcmin).toBeLessThan(0.2);
  });

  it('traces a first slew to the tilt and to the start position of the log', () => {
    const traced = rehearsed(
      { tilt: { tiltDeg: 1, risesTowardsDeg: 60 } },
      { startErrorDeg: { azimuth: 6, altitude: 0 } },
    ).traced();
    const first = ofKind(traced, 'first-slew');
    expect(first.shares.map(({ cause }) => cause)).toEqual(
      expect.arrayContaining(['tilt', 'start-azimuth']),
    );
    expect(mainCause(first)).toBe('start-azimuth');
    expect(ofKind(traced, 'third').missArcmin).toBeLessThan(0.2);
  });

  // The design's example: "24′ of the 31′ came from the tube creeping after the second star".
  it('traces a third star that is missed to the tube that crept after the second', () => {
    const { traced } = rehearsed(
      { creep: { betweenStarsDeg: 0, afterSecondDeg: -0.4 } },
      { second: { offByShareOfField: 0.1, offTowardsDeg: 0 } },
    );
    const third = ofKind(traced(), 'third');
    expect(mainCause(third)).toBe('creep');
    expect(third.shares[0]?.arcmin).toBeGreaterThan(20);
    const sum = third.shares.reduce((total, { arcmin }) => total + arcmin, third.togetherArcmin);
    expect(sum).toBeCloseTo(third.missArcmin, 9);
  });

  it('traces play that was left in the readings to the last move', () => {
    const wrongWay = { againstFinalApproach: true };
    const third = ofKind(rehearsed({}, { first: wrongWay, second: wrongWay }).traced(), 'third');
    expect(mainCause(third)).toBe('final-approach');
  });

  it('traces a star that was left off the middle to that centring', () => {
    const off = { offByShareOfField: 0.4, offTowardsDeg: 0 };
    const third = ofKind(rehearsed({}, { first: off }).traced(), 'third');
    expect(mainCause(third)).toBe('first-centring');
  });

  it('traces a star of the sky that was taken for another to the wrong light', () => {
    const other = { hip: 28360 };
    const lightOf: LightOf = ({ hip }) => (hip === capella ? other : { hip });
    const { traced, input, log } = rehearsed({}, { first: { instead: other } }, lightOf);
    const replay = replayRun(input, log);
    expect(replay.ok && replay.run.outcome?.kind).not.toBe('agree');
    expect(traced().find(({ kind }) => kind === 'third')?.attribution).toMatchObject({
      ok: false,
      reason: 'refused',
      mends: expect.arrayContaining(['wrong-light']) as unknown,
    });
  });

  it('knows a star that was confirmed under the dot, and lays it on the finder', () => {
    const dot = { rightArcmin: 0, upArcmin: 80 };
    // 80′ above the middle, where the 25 mm eyepiece of Wren shows 75′: centred by the dot alone.
    const under = { offByShareOfField: 80 / 75, offTowardsDeg: 180 };
    const third = ofKind(rehearsed({ dot }, { first: under, second: under }).traced(), 'third');
    expect(mainCause(third)).toBe('finder');
  });

  it('tells only of the alignment that stands in the end', () => {
    const { input, log, traced } = rehearsed({});
    const upToJudgement = log.slice(0, -1);
    const done = replayRun(input, upToJudgement);
    if (!done.ok) throw new Error(done.refusal.code);
    const at = Math.max(done.run.lastMs, done.run.arrivesAtMs ?? 0);
    const again: RunAction[] = [
      ...upToJudgement,
      { at, do: 'start-again' },
      { at, do: 'go-to', hip: hamal },
    ];
    const replay = replayRun(input, again);
    expect(replay.ok && act(replay.run, { at: at + 600_000, do: 'stop' }).refusal).toBeNull();
    expect(traced(again).map(({ kind, hip }) => [kind, hip])).toEqual([['first-slew', hamal]]);
  });

  it('leaves out a go-to that was stopped on its way', () => {
    const { log, traced } = rehearsed({});
    const goTo = log.findIndex((action) => action.do === 'go-to');
    const sent = log[goTo];
    if (sent === undefined) throw new Error('no go-to');
    const stopped: RunAction[] = [...log.slice(0, goTo + 1), { at: sent.at + 100, do: 'stop' }];
    expect(traced(stopped)).toEqual([]);
  });
});
