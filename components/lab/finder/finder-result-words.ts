import { angleInWords, angleWordsFor } from '@/components/sky/angle-words';
import type { SlipWords } from '@/components/grading/bench-result-view';
import type {
  FinderCriterion,
  FinderResult,
  FinderSlip,
} from '@/lib/grading/bench/finder/finder-result';
import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import { aimInWords, eyepieceName, metresInWords } from './finder-words';
import { capitalised } from '@/lib/wording/capital';

export const finderCriterionNames: Readonly<Record<FinderCriterion, string>> = {
  target: 'What it was set on',
  day: 'Set by day on the best there was',
  centring: 'Target in the middle of the eyepiece when locked',
  dot: 'Dot on the target when locked',
  residual: 'What is left on a star',
  size: 'How far from the middle',
  direction: 'Towards which hour',
  fields: 'In which view',
  cause: 'What it had been set on',
  steps: 'Wide view first, checked in the narrow one',
};

const leftArcmin = ({ dot }: FinderResult): number => Math.hypot(dot.rightArcmin, dot.upArcmin);

/** The whole of it in one sentence. */
export function finderVerdict(variant: FinderVariant, result: FinderResult): string {
  const left = leftArcmin(result);
  const { low, high } = variant.eyepieces;
  const on = aimInWords(result.target);
  const size = angleInWords(left);
  if (left < high.radiusArcmin) {
    return `Set on ${on}. On a star the dot is ${size} off: the star is in the view of the ${eyepieceName(variant, 'high')} eyepiece.`;
  }
  if (left < low.radiusArcmin) {
    return `Set on ${on}. On a star the dot is ${size} off: the star is in the view of the ${eyepieceName(variant, 'low')} eyepiece, but not of the ${eyepieceName(variant, 'high')} one.`;
  }
  return `Set on ${on}. On a star the dot is ${size} off: the star is in the view of no eyepiece.`;
}

/** What the residual is made of, in the order of size. Parts along it, which sum to it. */
export function sharesInWords(result: FinderResult): string {
  const { shares } = result;
  const parts = [
    { arcmin: shares.distance, from: 'the distance of the target' },
    { arcmin: shares.centring, from: 'where it stood in the eyepiece' },
    { arcmin: shares.dot, from: 'the dot beside it' },
  ]
    .filter(({ arcmin }) => Math.abs(arcmin) >= 0.05)
    .sort((one, other) => Math.abs(other.arcmin) - Math.abs(one.arcmin));
  if (parts.length === 0) return 'Nothing is left: dot and tube point to the same place.';
  const left = leftArcmin(result);
  const inWords = angleWordsFor(left, ...parts.map(({ arcmin }) => arcmin));
  return `Of these ${inWords(left)}, ${parts
    .map(({ arcmin, from }) =>
      arcmin < 0
        ? `${inWords(arcmin)} were taken off again by ${from}`
        : `${inWords(arcmin)} came from ${from}`,
    )
    .join(', ')}.`;
}

const clock = (hour: number): string => `${String(hour)} o’clock`;

const asItShows: Readonly<Record<FinderVariant['orientation'], string>> = {
  true: 'This eyepiece shows things as they are.',
  mirrored: 'This eyepiece exchanges left and right, and leaves up and down.',
  turned: 'This eyepiece turns the picture upside down: left is right and up is down.',
};

export function finderSlipWords(slip: FinderSlip, variant: FinderVariant): SlipWords {
  const narrow = eyepieceName(variant, 'high');
  const narrowArcmin = variant.eyepieces.high.radiusArcmin;
  switch (slip.code) {
    case 'near-target':
      return {
        what: `${capitalised(slip.name)} is only ${metresInWords(slip.distanceM)} away.`,
        why: `Finder and tube cross there; on a star they differ by ${angleInWords(slip.parallaxArcmin)}, while half the view of the ${narrow} eyepiece is ${angleInWords(narrowArcmin)}. Centring with more care cannot help.`,
        next: 'Take the farthest thing that is well clear of the Sun, or a light at dusk. At 300 m the 80 mm between finder and tube are less than 1′.',
      };
    case 'nearer-than-needed':
      return {
        what: `${capitalised(slip.name)} was nearer than need be: ${metresInWords(slip.distanceM)}.`,
        why: `${capitalised(slip.betterName)} is farther and as clear of the Sun, so the dot would have been nearer to right when dusk came.`,
        next: 'Twice the distance halves the shift.',
      };
    case 'target-by-the-sun':
      return {
        what: `${capitalised(slip.name)} stands ${slip.fromSunDeg.toFixed(0)}° from the Sun.`,
        why: 'Anybody who searches there with an open tube or finder sweeps towards the Sun.',
        next: 'By day nothing within 30° of the Sun. Take something nearer elsewhere, or wait for dusk with the caps on.',
      };
    case 'not-centred':
      return {
        what: `${capitalised(slip.name)} was ${angleInWords(slip.offArcmin)} from the middle of the eyepiece when you locked.`,
        why: `The tube is the ruler: by as much as the target is off its middle, the dot is set beside it. Half the ${narrow} view is ${angleInWords(slip.fieldRadiusArcmin)}.`,
        next: 'Centre it in the narrow view, then turn the screws, then look into the eyepiece once more.',
      };
    case 'dot-beside-target':
      return {
        what: `The dot was ${angleInWords(slip.gapArcmin)} beside ${slip.name} when you locked.`,
        why: 'On a star it will be off by the same.',
        next: 'Go to and fro between the screws until the dot covers the target: each of them moves it a little the other way too.',
      };
    case 'tube-moved-to-the-dot':
      return {
        what: `The tube was moved until ${slip.name} was under the dot; in the eyepiece it was then ${angleInWords(slip.offArcmin)} off.`,
        why: 'That is how a finder is used once it is set. To set it, the tube stays on the target and the dot comes to it.',
        next: 'Centre the target in the eyepiece, leave the tube alone, turn the two screws.',
      };
    case 'high-power-first': {
      const inWords = angleWordsFor(2 * slip.lowRadiusArcmin, 2 * slip.highRadiusArcmin);
      return {
        what: 'You searched with the narrow view.',
        why: `It shows ${inWords(2 * slip.highRadiusArcmin)} of the scene, the wide one ${inWords(2 * slip.lowRadiusArcmin)}.`,
        next: 'Find and centre with the long eyepiece, then change to the short one to check.',
      };
    }
    case 'not-checked-in-high-power':
      return {
        what: `The target was not in the ${narrow} view when you locked.`,
        why: 'The wide view hides a few arcminutes; the narrow one shows them.',
        next: 'Change the eyepiece, centre once more, and only then lock.',
      };
    case 'locked-under-the-cap':
      return {
        what: 'The screws were locked with the caps on.',
        why: 'Nobody could see whether the dot was still on the target.',
        next: 'Lock while you look, look once more, then cap.',
      };
    case 'day-left-out':
      return {
        what: 'The finder was not set by day at all.',
        why: 'At dusk it then pointed more than a degree beside, and a light had to be searched for.',
        next: 'Half an hour before sunset, with an adult, on something clear of the Sun: at dusk only a touch is left to do.',
      };
    case 'not-refined':
      return {
        what: 'It was left as it was set by day.',
        why: 'Everything that could be used by day was near, and near things shift the dot.',
        next: 'At dusk loosen the screws and set it again on the Moon or a bright star.',
      };
    case 'size-misjudged':
      return {
        what: `You said ${angleInWords(slip.saidArcmin)}; it is ${angleInWords(slip.reallyArcmin)}.`,
        why: 'It is the finder’s distance from the tube over the distance of what it was set on; a thousandth is 3.4′.',
        next:
          variant.template === 'set-by-another'
            ? 'Put the dot on the light without touching the screws and read off how far from the middle it is, in tenths of the half view.'
            : 'Divide first, then turn the fraction into an angle: 0.01 is 34′.',
      };
    case 'wrong-side':
      return {
        what: `You said ${clock(slip.saidHour)}; it is ${clock(slip.reallyHour)}, the other side.`,
        why: 'Finder and tube cross at the near thing. Beyond it they have changed sides.',
        next: 'Draw the two lines from above: they meet at the target and part again behind it.',
      };
    case 'not-as-the-eyepiece-shows':
      return {
        what: `You said ${clock(slip.saidHour)}, which is right on the sky; in this eyepiece it is ${clock(slip.reallyHour)}.`,
        why: asItShows[variant.orientation],
        next: 'First say where it is on the sky, then turn that as the eyepiece does.',
      };
    case 'direction-misjudged':
      return {
        what: `You said ${clock(slip.saidHour)}; it is ${clock(slip.reallyHour)}.`,
        why: `The star is on the side of the tube where the finder is not. ${asItShows[variant.orientation]}`,
        next: 'Where does the finder sit? Opposite on the sky; then as the eyepiece shows it.',
      };
    case 'field-misjudged': {
      const inWords = angleWordsFor(slip.reallyArcmin, slip.radiusArcmin);
      return {
        what: `In or out of the ${String(slip.eyepieceMm)} mm view was not right: the star is ${inWords(slip.reallyArcmin)} from the middle, and the edge is at ${inWords(slip.radiusArcmin)}.`,
        why: slip.tookTheWholeField
          ? 'The view across counts from edge to edge; from the middle to the edge it is half of that.'
          : 'In view is what is nearer to the middle than half the view.',
        next: 'Halve the true field before you compare.',
      };
    }
    case 'cause-misjudged': {
      const inWords = angleWordsFor(slip.saidArcmin, slip.reallyArcmin);
      return {
        what: `It had been set on something ${metresInWords(slip.reallyM)} away, not ${metresInWords(slip.saidM)}.`,
        why: `${metresInWords(slip.saidM)} would have left ${inWords(slip.saidArcmin)}; it was ${inWords(slip.reallyArcmin)}.`,
        next: 'Measure first, then ask at what distance the finder’s place beside the tube makes that angle.',
      };
    }
  }
}
