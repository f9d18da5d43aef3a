import type { SlipWords } from '@/components/grading/bench-result-view';
import type {
  BalanceCriterion,
  BalanceGate,
  BalanceResult,
  BalanceSlip,
} from '@/lib/grading/bench/balance/balance-result';
import type { BalanceVariant } from '@/lib/variants/bench/balance/balance-variant';
import { degText, mmText, movesWords, slideText, torqueText } from './balance-words';

export const criterionWords: Readonly<Record<BalanceCriterion, string>> = {
  foreseen: 'What will happen, said before',
  reading: 'The balance point, in millimetres',
  holds: 'It holds over the whole range',
  reserve: 'Something to spare',
  tested: 'Let go low and high',
  handling: 'The tube in safe hands',
};

export function balanceVerdict(variant: BalanceVariant, { picture }: BalanceResult): string {
  const { holdingTorqueNm, range } = variant;
  const pull = Math.abs(picture.worstNm);
  const within = `between ${degText(range.lowDeg)} and ${degText(range.highDeg)}`;
  return pull <= holdingTorqueNm
    ? `It holds everywhere ${within}: at most ${torqueText(pull)}, and the clutch holds ${torqueText(holdingTorqueNm)}.`
    : `It creeps: at ${degText(picture.worstDeg)} the ${picture.worstNm > 0 ? 'front' : 'back'} pulls down with ${torqueText(pull)}, and the clutch holds ${torqueText(holdingTorqueNm)}.`;
}

const came: Readonly<Record<BalanceGate['outcome'], string>> = {
  fell: 'It fell. A falling tube breaks its glass, and feet.',
  'caught-by-stop-screw':
    'This time the stop screw caught it. It is made to catch once, not to carry.',
  'clamp-alone-held':
    'This time the clamp kept it. A cold hand locks a clamp less well than it believes; the stop screw is there for that night.',
};

export function gateWords({ id, times, outcome }: BalanceGate): { title: string; text: string } {
  const often = times > 1 ? ` That happened ${String(times)} times.` : '';
  return id === 'opened-unsupported'
    ? {
        title: 'nothing held the tube when it was set free',
        text: `The clamp was opened, or its last screw taken out, with no hand under the tube. ${came[outcome]}${often}`,
      }
    : {
        title: 'the hand left a tube that was not secured',
        text: `Before the hand goes, the clamp is locked and the stop screw is in. ${came[outcome]}${often}`,
      };
}

export function slipWords(variant: BalanceVariant, slip: BalanceSlip): SlipWords {
  switch (slip.code) {
    case 'creeps':
      return creepsWords(variant, slip);
    case 'little-reserve':
      return {
        what: `It holds with only ${slip.sparePercent.toFixed(0)} % to spare.`,
        why: 'A nudge in the dark, a cable or a heavier eyepiece uses that up, and the readings are no longer true.',
        next: `Slide it ${slideText(slip.slideMm)}. Find the places where either end begins to sink, and stay in the middle.`,
      };
    case 'part-missing':
      return {
        what: `Not on the tube: ${slip.names.join(', ')}.`,
        why: 'It is used tonight, so the tube was judged with it on. What is balanced without it is out of balance once it goes on.',
        next: 'First everything on that will be on, dust caps off, then balance.',
      };
    case 'foreseen-wrong':
      return {
        what: `You expected: ${movesWords[slip.said].toLowerCase()}. In fact: ${movesWords[slip.was].toLowerCase()}.`,
        why: foreseenWhy(variant),
        next: 'Before you let go, ask which side of the clamp has more mass times distance.',
      };
    case 'reading-off':
      return readingWords(slip);
    case 'not-tested':
      return {
        what:
          slip.low && slip.high
            ? 'As you left it, the tube was let go at neither end of its range.'
            : `As you left it, the tube was never let go ${slip.low ? 'low' : 'high up'}.`,
        why: 'A tube that stays put at one altitude may creep at another: level, only its length counts; raised, also what sits above or below the axis.',
        next: `Lock everything, then let go near ${degText(variant.range.lowDeg)} and near ${degText(variant.range.highDeg)}, with a hand close by.`,
      };
    case 'swung':
      return {
        what: `A part went on or off with no hand on the tube, and it swung from ${degText(slip.worstFromDeg)} to ${degText(slip.worstToDeg)}${slip.times > 1 ? `, the worst of ${String(slip.times)} times` : ''}.`,
        why: 'A tube that swings hits the tripod, a face or a hand, and its readings are lost.',
        next: 'One hand holds the tube while the other changes what is on it. Let go slowly afterwards.',
      };
    case 'opened-raised':
      return {
        what: `The clamp was opened with the tube raised to ${degText(slip.highestDeg)}.`,
        why: 'Raised, the tube runs down through the open clamp with its whole weight into your hand.',
        next: 'Bring it level first. Then open the clamp.',
      };
  }
}

function creepsWords(
  variant: BalanceVariant,
  slip: Extract<BalanceSlip, { code: 'creeps' }>,
): SlipWords {
  const what = `At ${degText(slip.atDeg)} the ${slip.end} sinks: ${torqueText(slip.torqueNm)} against the ${torqueText(variant.holdingTorqueNm)} that the clutch holds.`;
  const harm =
    'A tube that creeps after a star was confirmed leaves every reading untrue by as much as it crept.';
  const tighter =
    'Do not answer by tightening the clutch harder: the motors still have to lift the difference.';
  switch (slip.because) {
    case 'off-balance':
      return {
        what,
        why: harm,
        next: `Slide the tube ${slideText(slip.slideMm)}, a hand under it. ${tighter}`,
      };
    case 'bar-too-short':
      return {
        what,
        why: `With what is on it no place on the bar balances it. ${harm}`,
        next: 'Weigh down the light end: the strap weight there, or take off what is not used tonight. Then slide again.',
      };
    case 'balanced-level-only':
      return {
        what,
        why: `It was balanced level and nowhere else. The centre of mass does not lie on the axis, so raising the tube moves it to one side. ${harm}`,
        next: `Slide it ${slideText(slip.slideMm)}: a small pull one way at the low end, an equal one the other way at the high end.`,
      };
  }
}

function foreseenWhy(variant: BalanceVariant): string {
  const above = variant.template === 'raised';
  return above
    ? 'Level, it balances. Raised, a centre of mass above the axis falls back over it, and one below the axis swings to the front: it is not the tube’s length alone that counts.'
    : 'Masses far from the clamp count for more than masses near it: what turns the tube is mass times distance, added up on either side.';
}

function readingWords(slip: Extract<BalanceSlip, { code: 'reading-off' }>): SlipWords {
  const off = Math.abs(slip.saidMm - slip.wasMm);
  const what = `You told ${mmText(slip.saidMm)}; the balance point is at ${mmText(slip.wasMm)}, ${mmText(off)} away.`;
  switch (slip.mistake) {
    case 'one-edge':
      return {
        what,
        why: `That is where one end just begins to sink. The clutch hides ${mmText(slip.edgeMm)} of imbalance on either side.`,
        next: 'Find the place on the other side as well: the balance point is halfway.',
      };
    case 'wrong-way':
      return {
        what,
        why: 'The distance is right and the way is not: the balance point moves towards what is added.',
        next: 'Ask which side got heavier. The clamp has to go towards it.',
      };
    case 'mass-left-out':
      return {
        what,
        why: 'That is what comes out when the mass of the phone is left out of the whole: m (x − x₀) / M.',
        next: 'Divide by all that is on the mount, M + m: what is added is carried, too.',
      };
    case 'none':
      return {
        what,
        why: 'The balance point is the mean of all places, each weighted by its mass.',
        next: 'Add up mass × place for everything that is on, and divide by the whole mass; or halve the way between the places where either end begins to sink.',
      };
  }
}
