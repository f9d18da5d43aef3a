import type { FieldOffset } from '../optics/image-orientation';
import type { AlignmentOutcome } from '../pointing/pointing-model';
import { causeIds, without, withoutAny, withOnly, type CauseId } from './causes';
import { landingOf, type GoToLanding, type NoLanding } from './landing';
import type { GoTo, RehearsedEvening } from './rehearsed-evening';

/** What one cause has to do with a miss. */
export type Share = {
  /** `counts`: readings come in whole counts of the encoders. */
  cause: CauseId | 'counts';
  /** How far it moved the point of landing: right along the horizon on the sky, and up. */
  moved: FieldOffset;
  /** That along the miss, arcminutes; negative where it moved the tube towards the star. */
  arcmin: number;
};

/** A miss at the eyepiece, traced to its causes. */
export type Attribution =
  | {
      ok: true;
      /** Where the tube came to rest beside the star. */
      miss: FieldOffset;
      missArcmin: number;
      /** Of every cause that moved it, the largest first. With what is shared they sum to the miss. */
      shares: readonly Share[];
      /** What no cause does by itself, arcminutes along the miss; small unless slips are large. */
      togetherArcmin: number;
    }
  | {
      ok: false;
      /** The computer had two stars and would not have them. */
      reason: 'refused';
      outcome: Exclude<AlignmentOutcome['kind'], 'agree'>;
      /** Each of these causes gone, and it would have agreed. */
      mends: readonly CauseId[];
    }
  | {
      ok: false;
      /** Two stars were confirmed, and the computer has lost them since. */
      reason: 'forgotten';
    }
  | { ok: false; reason: NoLanding };

/**
 * Traces a go-to's miss to its causes (design, "Attribution"). Each cause is switched off alone, and
 * left on alone; the vector by which it moves the point of landing is the mean of the two differences.
 * Either by itself is right to first order: the one counts what two causes do to each other with both
 * of them, the other with neither; their mean gives each a half, so that the vectors sum to the miss to
 * second order (where causes act by pairs, it is the value of Shapley 1953, *A Value for n-Person
 * Games*). A cause's share is its vector's component along the miss. A miss of nothing has no shares.
 */
export function attributionOf(evening: RehearsedEvening, goTo: GoTo): Attribution {
  const counted = landingOf(evening, goTo);
  if (!counted.ok) return counted;
  const { miss, outcome } = counted;
  if (outcome !== null && outcome !== 'agree') {
    return { ok: false, reason: 'refused', outcome, mends: mendedBy(evening, goTo) };
  }
  const confirmed = evening.hands.filter((hand) => hand.confirmsBefore < goTo.confirmsBefore);
  if (outcome === null && confirmed.length === 2) return { ok: false, reason: 'forgotten' };

  // Counted readings jump where the causes let them slide, so each cause is weighed without the counts.
  const all = smooth(evening, goTo);
  const none = smooth(withoutAny(evening), goTo);
  if (!all.ok) return all;
  if (!none.ok) return none;
  const missArcmin = Math.hypot(miss.rightArcmin, miss.upArcmin);
  const share = (cause: Share['cause'], moved: FieldOffset): Share => ({
    cause,
    moved,
    arcmin:
      missArcmin === 0
        ? 0
        : (moved.rightArcmin * miss.rightArcmin + moved.upArcmin * miss.upArcmin) / missArcmin,
  });
  const shares = [share('counts', between(all.miss, miss))];
  for (const cause of causeIds) {
    const off = smooth(without(evening, cause), goTo);
    const alone = smooth(withOnly(evening, cause), goTo);
    if (!off.ok) return off;
    if (!alone.ok) return alone;
    shares.push(share(cause, mean(between(off.miss, all.miss), between(none.miss, alone.miss))));
  }
  const sum = shares.reduce((total, { arcmin }) => total + arcmin, 0);
  return {
    ok: true,
    miss,
    missArcmin,
    shares: shares
      .filter(({ moved }) => moved.rightArcmin !== 0 || moved.upArcmin !== 0)
      .sort((a, b) => Math.abs(b.arcmin) - Math.abs(a.arcmin)),
    togetherArcmin: missArcmin - sum,
  };
}

const smooth = (evening: RehearsedEvening, goTo: GoTo): GoToLanding =>
  landingOf(evening, goTo, 'smoothly');

const between = (from: FieldOffset, to: FieldOffset): FieldOffset => ({
  rightArcmin: to.rightArcmin - from.rightArcmin,
  upArcmin: to.upArcmin - from.upArcmin,
});

const mean = (one: FieldOffset, other: FieldOffset): FieldOffset => ({
  rightArcmin: (one.rightArcmin + other.rightArcmin) / 2,
  upArcmin: (one.upArcmin + other.upArcmin) / 2,
});

const mendedBy = (evening: RehearsedEvening, goTo: GoTo): CauseId[] =>
  causeIds.filter((cause) => {
    const landing = landingOf(without(evening, cause), goTo);
    return landing.ok && landing.outcome === 'agree';
  });
