import { describe, expect, it } from 'vitest';
import { eveningScenario } from '@/tests/support/evening';
import { perfectEvening, someSizes, surveyedKits } from '@/tests/support/perfect-evening';
import { replayRun } from '../alignment/alignment-run';
import { perfectLog, type CentringSlip } from '../alignment/perfect-operator';
import type { RunInput } from '../alignment/run-input';
import type { AlignmentOutcome } from '../pointing/pointing-model';
import { canBeBegun, runEvening, timetable } from './evening';
import type { FaultId } from './fault-ids';
import { faults } from './faults';
import type { Evening } from './faulty-evening';

/*
 * An evening is reckoned in a few steps; the alignment run steers the same set-up second by second,
 * with motors, play and a hand on the rockers. Both must come to the same alignment.
 */

const [kit] = surveyedKits;
if (kit === undefined) throw new Error('no kit');
const { telescope, eyepiece, ...runKit } = kit;

function steered(evening: Evening): {
  outcome: AlignmentOutcome;
  /** When the stars were confirmed, seconds. */
  confirm: readonly [number, number];
} {
  const input: RunInput = {
    scenario: eveningScenario({
      telescope: { ...telescope, computer: evening.computer },
      eyepiece,
    }),
    frame: evening.frame,
    kit: runKit,
    // The steered axes count in steps of a second of arc, as encoders do.
    setup: { ...evening.setup, encoderStepArcsec: 1 },
    givenHip: null,
    proposals: null,
    mayPause: false,
    catalogue: evening.catalogue,
  };
  const { habits, setup } = evening;
  const slip = (index: 0 | 1): CentringSlip => ({
    instead: habits.centres[index],
    againstFinalApproach: habits.lastMoves[index].azimuth !== setup.finalApproach.azimuth,
  });
  const log = perfectLog(input, [evening.first.hip, evening.second.hip], {
    first: slip(0),
    second: slip(1),
    startErrorDeg: { azimuth: habits.start.azimuthDeg, altitude: habits.start.altitudeDeg },
    thirdHip: null,
    trust: true,
  });
  const replay = replayRun(input, log);
  if (!replay.ok) throw new Error(JSON.stringify(replay.refusal));
  const [alignment] = replay.run.alignments;
  const [first, second] = alignment?.confirms ?? [];
  if (alignment === undefined || first === undefined || second === undefined) {
    throw new Error('the run came to no alignment');
  }
  return { outcome: alignment.outcome, confirm: [first.atMs / 1000, second.atMs / 1000] };
}

/** As little play as the operator of the run takes up by the way, arcminutes. */
const play = 4;
const eveningOf = (computer: Evening['computer']): Evening => {
  const evening = perfectEvening(computer);
  const backlashArcmin = { azimuth: play, altitude: play };
  return { ...evening, setup: { ...evening.setup, backlashArcmin } };
};

/** A hand that trusts the dot and a computer that forgets the first star: the operator can be neither. */
const leftOut: readonly FaultId[] = ['finder-off', 'supply-reset'];
const comparable = faults.filter(({ id }) => !leftOut.includes(id));

describe.each(['fixed-zero', 'solved-zero'] as const)('a computer with %s', (computer) => {
  it.each(comparable.map((fault) => [fault.id, fault] as const))(
    'comes to the same alignment in an evening and in a run: %s',
    (id, fault) => {
      const forms = fault.forms(eveningOf(computer), someSizes).filter(canBeBegun);
      // Ottawa's longitude taken for an eastern one puts both stars below the ground.
      if (id !== 'longitude-sign') expect(forms.length).toBeGreaterThan(0);
      for (const evening of forms) {
        const { outcome: other, confirm } = steered(evening);
        const { outcome } = runEvening(evening, { ...timetable, confirm }).evidence;
        expect(other.kind).toBe(outcome.kind);
        for (const [name, value] of Object.entries(outcome)) {
          if (typeof value !== 'number') continue;
          const also = (other as Record<string, unknown>)[name];
          // The operator stops within about an arcminute at each star, which comes to a few in
          // whatever is made of both.
          const limit = name === 'mismatchArcmin' ? 3 : 3 / 60;
          expect(Math.abs(Number(also) - value), name).toBeLessThan(limit);
        }
      }
    },
  );
});
