import { nakedEyePlanets } from '../sky/sky-frame';
import type { RunAdvice, RunCriterion, RunResult } from './run-result';
import type { JudgedStar } from './run-stars';

/** Less than this lost is not worth a sentence. */
const smallLoss = 1;
/** A start off by what the needle is off, to this, was made by the needle. */
const needleDeg = 1.5;
/** A needle nearer to true north than this misleads nobody. */
const harmlessDeclinationDeg = 3;

/** The one thing to do differently: what cost most, and of equals what came first. */
export function runAdvice(
  result: Omit<RunResult, 'advice'>,
  stars: readonly [JudgedStar, JudgedStar],
  minutesAllowed: number | null,
): RunAdvice {
  const [gate] = result.gates;
  if (gate !== undefined) return { code: 'sun', distanceDeg: gate.distanceDeg };

  const lostOf = ({ earned, possible }: RunCriterion) => possible - earned;
  // A wrong star loses its centring along with itself.
  const wrong = stars.findIndex(({ found }) => !found.right);
  if (wrong >= 0) return starAdvice(wrong === 0 ? 1 : 2, stars[wrong === 0 ? 0 : 1]);
  const [worst] = [...result.criteria].sort((a, b) => lostOf(b) - lostOf(a));
  if (worst === undefined || lostOf(worst) < smallLoss) return { code: 'well-done' };

  switch (worst.id) {
    case 'start-position':
      return startAdvice(result.start);
    case 'first-star':
    case 'first-centring':
      return centringAdvice(1, stars[0]);
    case 'second-star':
    case 'second-centring':
      return centringAdvice(2, stars[1]);
    case 'pair':
      return {
        code: 'pair',
        hitRate: result.pair.chosen?.hitRate ?? 0,
        bestHitRate: result.pair.best?.hitRate ?? 0,
      };
    case 'judgement':
      return {
        code: result.judgement?.trusted === true ? 'trusted-a-bad-one' : 'doubted-a-good-one',
        hitRate: result.achievedHitRate ?? 0,
      };
    case 'time':
      return {
        code: 'slow',
        minutes: result.minutes,
        minutesAllowed: minutesAllowed ?? result.minutes,
      };
  }
}

function starAdvice(which: 1 | 2, { found }: JudgedStar): RunAdvice {
  const { really, meant, offsetArcmin, separationDeg } = found;
  if (really === null) return { code: 'empty-field', which, name: meant.name, offsetArcmin };
  return nakedEyePlanets.some((body) => body === really.id)
    ? { code: 'planet-for-star', which, planet: really.name, name: meant.name }
    : { code: 'wrong-star', which, reallyName: really.name, name: meant.name, separationDeg };
}

/** Whichever did more harm: where the star stood, or the play that the readings carry. */
function centringAdvice(which: 1 | 2, { found, shown }: JudgedStar): RunAdvice {
  const { offsetArcmin, fieldRadiusArcmin } = found;
  return shown.backlashArcmin > offsetArcmin
    ? { code: 'final-approach', which, backlashArcmin: shown.backlashArcmin }
    : { code: 'off-centre', which, offsetArcmin, shareOfRadius: offsetArcmin / fieldRadiusArcmin };
}

function startAdvice({
  azimuthErrorDeg,
  altitudeErrorDeg,
  declinationDeg,
}: RunResult['start']): RunAdvice {
  const byNeedle =
    Math.abs(declinationDeg) > harmlessDeclinationDeg &&
    Math.abs(azimuthErrorDeg - declinationDeg) < needleDeg;
  return byNeedle
    ? { code: 'start-by-compass', declinationDeg }
    : { code: 'start-position', azimuthErrorDeg, altitudeErrorDeg };
}
