import { replayRun } from '../alignment/alignment-run';
import { worthOfAlignment } from '../alignment/alignment-worth';
import type { OperatorStars } from '../alignment/operator-stars';
import { perfectLog } from '../alignment/perfect-operator';
import type { RunInput } from '../alignment/run-input';
import { believedSky, starSeenAt } from '../alignment/run-sky';
import type { AnswerKey } from '../pointing/answer-key';
import type { AlignmentOutcome } from '../pointing/pointing-model';
import { azAltFromDirection } from '../units/vector';
import { nightAt } from '../variants/night';
import { thirdStars } from '../variants/third-stars';
import { judgeThird } from './run-third';

/** What somebody gets who makes no mistake, on the mount as it is. Names of a public format. */
export type PerfectRun = {
  stars: OperatorStars;
  outcome: {
    kind: AlignmentOutcome['kind'];
    /** What the computer says of it; null where such an outcome has no such figure. */
    mismatchArcmin: number | null;
    baseTiltDeg: number | null;
    altitudeZeroDeg: number | null;
  };
  /** Share of the 533 targets in the observing eyepiece, and by how much all are missed; null unless the two agree. */
  hitRate: number | null;
  rmsArcmin: number | null;
  /** From the first go-to to the second confirm, as the sky counts. */
  minutes: number;
  /** Stars to check on, each gone to right after the alignment. */
  thirds: { hip: number; missArcmin: number; inField: boolean }[];
};

/** A run that cannot be made: no two stars may serve, or the computer holds one of any two to be down. */
export type NoPerfectRun = {
  stars: null;
  reason: 'no-usable-pair' | 'believed-below-the-horizon';
};

/**
 * The run of an operator who steers by the true sky: the best pair of the key whose stars the mount
 * goes to, both centred in the final approach direction, then each third star for itself. `key` is the
 * answer key of the input's own scenario and sky.
 */
export function perfectRun(input: RunInput, key: AnswerKey): PerfectRun | NoPerfectRun {
  if (key.pairs.length === 0) return { stars: null, reason: 'no-usable-pair' };
  const stars = key.pairs.find((pair) => pair.stars.every((hip) => staysUp(input, hip)))?.stars;
  if (stars === undefined) return { stars: null, reason: 'believed-below-the-horizon' };

  const log = perfectLog(input, stars, { thirdHip: null, trust: true });
  const replay = replayRun(input, log);
  if (!replay.ok) throw new Error(`a perfect log was refused: ${replay.refusal.code}`);
  const { outcome, motion, confirms } = replay.run;
  const last = confirms.at(-1);
  if (outcome === null || last === undefined) throw new Error('a perfect run ends aligned');
  const worth = worthOfAlignment(input, outcome, motion.truth);
  const firstGoToMs = log.find((action) => action.do === 'go-to')?.at ?? 0;
  return {
    stars,
    outcome: {
      kind: outcome.kind,
      mismatchArcmin: 'mismatchArcmin' in outcome ? outcome.mismatchArcmin : null,
      baseTiltDeg: 'baseTiltDeg' in outcome ? outcome.baseTiltDeg : null,
      altitudeZeroDeg:
        outcome.kind === 'agree'
          ? outcome.model.altitudeZeroDeg
          : outcome.kind === 'absurd-zero'
            ? outcome.altitudeZeroDeg
            : null,
    },
    hitRate: worth?.hitRate ?? null,
    rmsArcmin: worth?.rmsArcmin ?? null,
    minutes: (last.atMs - firstGoToMs) / 60_000,
    thirds: thirdsOf(input, stars),
  };
}

/** Where the two do not agree, a go-to is as bad as before them: it tells as much. */
function thirdsOf(input: RunInput, stars: OperatorStars): PerfectRun['thirds'] {
  const { night } = nightAt(input.scenario, input.frame.instant, input.catalogue);
  return thirdStars(night, null)
    .filter((hip) => !stars.includes(hip) && staysUp(input, hip))
    .flatMap((thirdHip) => {
      const third = judgeThird(input, perfectLog(input, stars, { thirdHip, trust: true }));
      if (third === null) return [];
      const { hip, missArcmin, inField } = third;
      return [{ hip, missArcmin, inField }];
    });
}

/** Longer than two go-tos half round and their centring take with the slowest mount that is allowed. */
const longestRunMs = 30 * 60_000;
/** No mount drives to a star that it takes to be down. The margin is for the lowest point of a star's circle. */
const surelyUpDeg = 0.5;

const staysUp = (input: RunInput, hip: number): boolean =>
  [0, longestRunMs].every((atMs) => {
    const seen = starSeenAt(believedSky(input), hip, atMs);
    return seen !== null && azAltFromDirection(seen).altitudeDeg >= surelyUpDeg;
  });
