import type { LevelDraft } from '@/lib/grading/bench/level/level-submission';
import { vialShowsDeg } from '@/lib/levelling/vial';
import { legIndices, tiltOfHead } from '@/lib/levelling/tripod';
import { degreesToRadians } from '@/lib/units/angle';
import type { LevelTemplate, LevelVariant } from '@/lib/variants/bench/level/level-variant';
import { stateOf } from './level-work';

const ofTemplate: Readonly<Record<LevelTemplate, string>> = {
  'one-slope':
    'Work in the bubble’s own direction. Draw its line through the middle: the leg nearest to that line does the most. Stop when the bubble is abreast of the middle, then the next leg takes the rest.',
  'soft-foot':
    'Weight will come on every foot in the end. Put it there first: step on each foot before you level, and see which one goes in.',
  'leg-at-its-end':
    'If the leg you want to let out is fully out, take the two others in; if it is fully in, let the two others out. It is the difference that counts.',
  'turned-vial':
    'Turn your head until the vial’s mark is in front of you as it is drawn. From the mark, count round to the bubble; then find the mark on the tripod and count the same way round to a leg.',
  'untrue-vial':
    'Turn the arm by half a turn. If the bubble moves over the ground, half of that is the vial’s own fault. Level until the bubble stands off the middle by the same amount, on the same side of the vial, both ways round.',
  'read-then-move':
    'Read two things while all legs are locked: which leg’s line the bubble lies on, and how many millimetres off it is. Two millimetres of bubble are one degree.',
};

/** Three hints, each telling more; none names the leg. */
export function levelHints(variant: LevelVariant, draft: LevelDraft): readonly string[] {
  const { site } = variant;
  const state = stateOf(draft, variant);
  const isLevel = tiltOfHead(site, state).tiltDeg <= vialShowsDeg;
  if (isLevel && legIndices.every((leg) => !state.legs[leg].open))
    return [
      'A base that rises on one side carries the whole sky up with it there: the tube lands high on the high side, low on the low side, and at the right height across the slope.',
      'Halfway between, at 45° from the high side, it is 0.7 of the tilt. At the opposite side it is the whole tilt, the other way.',
      'Two stars show the computer how the base stands, so it takes the slope into account. A computer that takes the base as level only shifts its circles: at the second star it is wrong by what is wrong there, less what was wrong where it was set.',
    ];
  const heightPerDegMm = 1.5 * site.footCircleRadiusMm * Math.tan(degreesToRadians(1));
  const legPerDegMm = heightPerDegMm / Math.cos(degreesToRadians(site.splayDeg));
  return [
    'The bubble goes to the high side. So the leg on the bubble’s side goes in, or the leg right opposite goes out.',
    ofTemplate[variant.template],
    `One degree is ${heightPerDegMm.toFixed(0)} mm of height at one leg (the feet stand 1.5 × ${String(site.footCircleRadiusMm)} mm deep), which is ${legPerDegMm.toFixed(0)} mm along a leg that leans out by ${String(site.splayDeg)}°. So each millimetre of bubble is ${(legPerDegMm / 2).toFixed(1)} mm of leg.`,
  ];
}
