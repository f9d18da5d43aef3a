import { describe, expect, it } from 'vitest';
import { eveningScenario } from '@/tests/support/evening';
import { surveyedKits } from '@/tests/support/perfect-evening';
import { carefulHand, faultlessEvening } from '@/tests/support/rehearsed-evening';
import { act, replayRun, viewAt } from '../alignment/alignment-run';
import { perfectLog } from '../alignment/perfect-operator';
import type { RunInput } from '../alignment/run-input';
import { starSeenAt, trueSky } from '../alignment/run-sky';
import { landingBeside } from '../faults/where-it-lands';
import { eveningSetup } from './evening-setup';
import { landingOf } from './landing';
import type { RehearsedEvening } from './rehearsed-evening';
import { noSlips, type Slips } from './slips';

/*
 * A go-to is reckoned in a few steps; the alignment run steers the same set-up second by second, with
 * motors, play and a hand on the rockers. Both must land beside the star alike.
 */

const [capella, alpheratz, aldebaran] = [24608, 677, 21421];
const [kit] = surveyedKits;
if (kit === undefined) throw new Error('no kit');
const { telescope, eyepiece, ...runKit } = kit;

function steered(evening: RehearsedEvening) {
  const { frame, latitudeDeg, slips, catalogue, computer } = evening;
  const input: RunInput = {
    scenario: eveningScenario({ telescope: { ...telescope, computer }, eyepiece }),
    frame,
    kit: runKit,
    setup: eveningSetup(slips, { ...evening.telescope, encoderStepArcsec: 0.1 }, evening),
    givenHip: null,
    proposals: null,
    mayPause: false,
    catalogue,
  };
  expect(input.scenario.place.latitudeDeg).toBe(latitudeDeg);
  const log = perfectLog(input, [capella, alpheratz], {
    startErrorDeg: { azimuth: slips.start.azimuthDeg, altitude: slips.start.altitudeDeg },
    thirdHip: null,
    trust: true,
  });
  const upToResult = replayRun(input, log.slice(0, -1));
  if (!upToResult.ok) throw new Error(upToResult.refusal.code);
  const sent = act(upToResult.run, {
    at: upToResult.run.lastMs + 10_000,
    do: 'go-to',
    hip: aldebaran,
  });
  if (sent.refusal !== null) throw new Error(sent.refusal.code);
  const atMs = sent.arrivesAtMs ?? NaN;
  const star = starSeenAt(trueSky(input), aldebaran, atMs);
  if (star === null) throw new Error('no such star');
  const { rightDeg, upDeg } = landingBeside(
    { hip: aldebaran, name: '' },
    star,
    viewAt(sent, atMs).tube,
  );
  const [first, second] = sent.confirms;
  if (first === undefined || second === undefined) throw new Error('it was not aligned');
  return {
    atMs,
    outcome: sent.outcome?.kind,
    confirmsMs: [first.atMs, second.atMs] as const,
    rightArcmin: rightDeg * 60,
    upArcmin: upDeg * 60,
  };
}

const cases: readonly (readonly [string, Partial<Slips>])[] = [
  ['nothing', {}],
  ['a tilt', { tilt: { tiltDeg: 1.5, risesTowardsDeg: 200 } }],
  ['a clock', { clockAndPlace: { clockSeconds: -800, latitudeDeg: 0.5, longitudeDeg: 0.3 } }],
  ['a start', { start: { azimuthDeg: 7, altitudeDeg: -0.3 } }],
  ['a creep', { creep: { betweenStarsDeg: -0.2, afterSecondDeg: -0.4 } }],
  ['a clutch', { clutch: { afterConfirm: 1, azimuthDeg: 0.6, altitudeDeg: 0.2 } }],
  ['a clutch at the start', { clutch: { afterConfirm: 0, azimuthDeg: 2, altitudeDeg: 0.3 } }],
  ['a kick', { kick: { afterConfirm: 2, tiltDeg: 0.8, risesTowardsDeg: 30, azimuthDeg: 1.5 } }],
  [
    'a kick between',
    { kick: { afterConfirm: 1, tiltDeg: 0.5, risesTowardsDeg: 99, azimuthDeg: 0 } },
  ],
];

describe.each(['fixed-zero', 'solved-zero'] as const)('a computer with %s', (computer) => {
  it.each(cases)('lands beside the third star as the run does with %s', (_, slips) => {
    const evening = faultlessEvening(computer, { slips: { ...noSlips, ...slips } });
    const run = steered(evening);
    const hands = [carefulHand(capella, 0), carefulHand(alpheratz, 1)].map((hand, i) => ({
      ...hand,
      atMs: run.confirmsMs[i] ?? NaN,
    }));
    const landing = landingOf(
      { ...evening, hands },
      { hip: aldebaran, atMs: run.atMs, confirmsBefore: 2 },
    );
    if (!landing.ok) throw new Error(landing.reason);
    expect([landing.outcome, run.outcome]).toEqual(['agree', 'agree']);
    // The operator's steps are a hundredth of an arcminute, the play it takes up to as much.
    expect(Math.abs(landing.miss.rightArcmin - run.rightArcmin)).toBeLessThan(0.1);
    expect(Math.abs(landing.miss.upArcmin - run.upArcmin)).toBeLessThan(0.1);
  });
});
