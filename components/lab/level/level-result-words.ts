import type { SlipWords } from '@/components/grading/bench-result-view';
import { angleInWords } from '@/components/sky/angle-words';
import type {
  LegWay,
  LevelCriterion,
  LevelGate,
  LevelResult,
  LevelSlip,
} from '@/lib/grading/bench/level/level-result';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import { vialShowsDeg } from '@/lib/levelling/vial';
import { heightInWords, leftOverInWords } from './level-question';
import { degreesText, legName, sideInWords } from './level-words';

const mmText = (mm: number): string => `${String(Math.abs(Math.round(mm)))} mm`;
const waysWords: Readonly<Record<LegWay, string>> = { out: 'out', in: 'in' };

export const criterionNames: Readonly<Record<LevelCriterion, string>> = {
  tilt: 'How level the head was left',
  'first-leg': 'The first leg and its way',
  moves: 'Few moves',
  'how-level': 'How level is level enough?',
};

/** The whole of it in one sentence. */
export function levelVerdict({ site }: LevelVariant, { left, moves }: LevelResult): string {
  const inMoves = moves === 1 ? 'one move' : `${String(moves)} moves`;
  if (left.tiltDeg <= vialShowsDeg)
    return `Level, as far as a vial can show: ${degreesText(left.tiltDeg)} is left after ${inMoves}.`;
  const side = sideInWords(site, left.risesTowardsDeg);
  return moves === 0
    ? `Nothing was moved: the head leans by ${degreesText(left.tiltDeg)}, rising ${side}.`
    : `${degreesText(left.tiltDeg)} off level after ${inMoves}, rising ${side}.`;
}

export const gateWords = ({ leg }: LevelGate): { title: string; text: string } => ({
  title: 'a leg was left open under the tube',
  text: `Leg ${legName(leg)} had its lock open while the tube was on and nobody held the weight. The leg runs in at once and the telescope goes over, onto the ground or onto somebody. First take the tube off or have it held; lock the leg before any hand lets go.`,
});

/** What happened and how far off, why, and what to do next. */
export function slipWords({ site }: LevelVariant, slip: LevelSlip): SlipWords {
  switch (slip.code) {
    case 'left-tilted':
      return {
        what: `The head was left ${degreesText(slip.tiltDeg)} off level, rising ${sideInWords(site, slip.risesTowardsDeg)}.`,
        why: `That is ${(2 * slip.tiltDeg).toFixed(1)} mm of bubble, and a first slew can miss by as much as ${angleInWords(60 * slip.tiltDeg)}.`,
        next:
          slip.byMm === 0
            ? 'Take the other two legs, one after the other, until the bubble stands in its ring.'
            : `Leg ${legName(slip.leg)} ${slip.byMm > 0 ? 'out' : 'in'} by ${mmText(slip.byMm)} would have done most about it. Look at the bubble once more after the tube is on.`,
      };
    case 'sank-under-tube':
      return {
        what: `Foot ${legName(slip.leg)} sank by ${mmText(slip.sunkMm)} when the tube came on.`,
        why: `That alone leans the head by ${degreesText(slip.leansDeg)}: a level found before the weight is there does not last on soft ground.${slip.mended ? ' You saw it and made up for it.' : ''}`,
        next: 'Tread every foot in before you level, and look at the bubble again when the weight is on.',
      };
    case 'trusted-untrue-vial':
      return {
        what: `The bubble stood in its ring, and the head leaned by ${degreesText(slip.tiltDeg)}.`,
        why: slip.armWasTurned
          ? 'The vial is out of adjustment, and with the arm turned its fault points the other way. Bringing the bubble right in, this way round or that, makes the head wrong by the vial’s own fault.'
          : 'The vial is out of adjustment. A bubble in its ring shows a level head only if it stays there when the vial is turned half round.',
        next: 'Turn the arm half round and see how far the bubble goes. Half of that is the vial’s: take out the other half with the legs, and leave the bubble off by the same amount both ways round.',
      };
    case 'wrong-way':
      return {
        what: `Your first move let leg ${legName(slip.leg)} ${waysWords[slip.way]}, and the head went from ${degreesText(slip.beforeDeg)} to ${degreesText(slip.afterDeg)}.`,
        why: 'Many take the bubble for a ball that rolls downhill. It is air: it goes up, to the high side.',
        next: 'The leg on the bubble’s side goes in, or the one right opposite goes out.',
      };
    case 'head-not-turned':
      return {
        what: `You began with leg ${legName(slip.leg)}; the bubble meant leg ${legName(slip.bestLeg)}.`,
        why: 'Read as if the vial’s mark pointed straight away from you, the bubble seems to mean the other leg. The vial was turned on its arm.',
        next: 'Find the mark on the tripod first, then count from the mark to the bubble the same way round as in the vial.',
      };
    case 'other-leg-first':
      return {
        what: `You began with leg ${legName(slip.leg)}; leg ${legName(slip.bestLeg)} ${waysWords[slip.bestWay]} would have done more.`,
        why: `The one leaves ${degreesText(slip.leavesDeg)} at best, the other ${degreesText(slip.couldLeaveDeg)}: a leg only moves the bubble along its own line.`,
        next: 'Work in the bubble’s own direction: first the leg nearest to the line through bubble and middle, then the next for what is left across.',
      };
    case 'more-moves':
      return {
        what: `It took ${String(slip.moves)} moves; ${slip.fewest === 1 ? 'one was' : `${String(slip.fewest)} were`} enough here.`,
        why: 'Each leg moves the bubble along its own line. Two lines reach every place in the glass, so a third move only makes up for a first that stopped short or went too far.',
        next: 'Move the first leg until the bubble is abreast of the middle on the next leg’s line, not until it is nearest.',
      };
    case 'first-slew':
      return {
        what: `The first slew would land ${heightInWords(slip.rightArcmin)}; you said ${heightInWords(slip.chosenArcmin)}.`,
        why: 'A base that rises on one side carries every direction on that side up with it: the whole tilt there, none across, the whole tilt down on the other side.',
        next: 'Ask how far the star is from the high side: at 0° it is all of the tilt, at 45° 0.7 of it, at 90° nothing.',
      };
    case 'after-two-stars':
      return {
        what: `After two stars nothing is left of the tilt; you said ${leftOverInWords(slip.chosenArcmin)}.`,
        why: 'Two stars show the computer how the base really stands, and from then on it reckons with the slope. Many think that a base off level spoils every go-to: it costs the first slews only.',
        next: 'Level well enough that the first star is easily found. Do not chase the last tenth of a degree, and do not let the tripod move afterwards: that no fit takes out.',
      };
    case 'taken-as-level':
      return {
        what: `On the second star it would land ${heightInWords(slip.rightArcmin)}; you said ${heightInWords(slip.chosenArcmin)}.`,
        why: 'Setting it right on one star only shifts its circles. The slope is still there and does something else in every direction.',
        next: 'Take what the tilt does at the second star, less what it did at the first. With such a computer, level as well as the vial shows.',
      };
  }
}
