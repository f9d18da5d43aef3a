import { dotResidualArcmin } from '../../finder/dot-residual';
import { trueFieldArcmin } from '../../optics/true-field';
import { choice, numeric, order, several } from '../build-item';
import { viewDrawing } from '../eyepieces-and-views/view-drawing';
import { inNumber, inThree } from '../eyepieces-and-views/words';
import { pickOne } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';
import type { ItemDraw, ItemFamily, ItemKit } from '../item-family';

const stars = ['Vega', 'Capella', 'Arcturus', 'Deneb', 'Aldebaran', 'Regulus', 'Polaris'] as const;
const radiusOf = (kit: ItemKit, eyepiece: ItemKit['eyepieces'][number]): number =>
  trueFieldArcmin(kit, eyepiece) / 2;

/** The dot is on a star: how far off, read in the eyepiece. */
function readOff({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const eyepiece = pickOne(random, kit.eyepieces);
  const radius = radiusOf(kit, eyepiece);
  const tenths = random.integer(2, 8);
  const star = pickOne(random, stars);
  const key = (radius * tenths) / 10;
  return numeric({
    prompt: `The dot is right on ${star}. In ${kit.name} with the ${String(eyepiece.focalLengthMm)} mm eyepiece, which shows ${inThree(2 * radius)}′ from edge to edge, the star looks like this. How far is the dot off, in arcminutes?`,
    drawing: viewDrawing(
      `The round view. The star stands ${String(tenths)} tenths of the way from the middle to the edge.`,
      [{ right: tenths / 10, up: 0, size: 0.04 }],
    ),
    unit: 'arcminutes',
    key,
    tolerance: { mode: 'relative', full: 0.12, zero: 0.4 },
    explanation: `From the middle to the edge it is ${inThree(radius)}′, and ${String(tenths)} tenths of that are ${inThree(key)}′.`,
    slips: [
      {
        gives: Number((2 * key).toFixed(2)),
        reason: `That takes tenths of the whole width. From the middle to the edge it is half: ${inThree(radius)}′.`,
      },
      {
        gives: Number((radius - key).toFixed(2)),
        reason: 'That is from the star to the edge. The dot is off by what lies from the middle.',
      },
    ].filter(({ gives }) => Math.abs(gives / key - 1) > 0.13),
  });
}

function stillInIt({ random, world }: ItemDraw) {
  const asked = world.kits.flatMap((kit) =>
    kit.eyepieces.map((eyepiece) => ({ kit, eyepiece, radius: radiusOf(kit, eyepiece) })),
  );
  for (;;) {
    const residual = random.integer(6, 60);
    const four = random.shuffle(asked).slice(0, 4);
    if (four.some(({ radius }) => Math.abs(residual / radius - 1) < 0.12)) continue;
    const holds = four.filter(({ radius }) => residual < radius);
    if (holds.length === 0 || holds.length === 4) continue;
    const written = ({ kit, eyepiece, radius }: (typeof four)[number]) => ({
      text: `${kit.name} with its ${String(eyepiece.focalLengthMm)} mm, ${inThree(2 * radius)}′ across`,
      reason: `From the middle to the edge it is ${inThree(radius)}′, ${residual < radius ? 'more' : 'less'} than ${String(residual)}′.`,
    });
    return several({
      prompt: `The dot is on ${pickOne(random, stars)}, but it is off by ${String(residual)}′. In which of these is the star in view?`,
      explanation: `Off by ${String(residual)}′ is in view where the field reaches farther than that from its middle: half its width.`,
      right: holds.map(written),
      wrong: four.filter((one) => !holds.includes(one)).map(written),
    });
  }
}

function emptyField({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const star = pickOne(random, stars);
  const inIt = pickOne(random, [18, 15, 12, 10, 9]);
  const [narrow, wide] = [inIt, 25].map((focalLengthMm) =>
    inThree(trueFieldArcmin(kit, { focalLengthMm, apparentFieldDeg: 50 })),
  );
  return choice({
    prompt: `The dot is on ${star}, and the ${String(inIt)} mm eyepiece of ${kit.name}, which shows ${narrow ?? ''}′, is empty. The stars are in focus. What first?`,
    explanation: `First see more sky: the 25 mm eyepiece shows ${wide ?? ''}′. Bring ${star} to its middle, and then let the dot come to ${star}.`,
    right: {
      text: `Put in the 25 mm, which shows ${wide ?? ''}′, and look for ${star}`,
      reason: 'The dot is a little off. A wider field may hold the star all the same.',
    },
    wrong: [
      {
        text: `Turn the finder’s screws until ${star} comes into the ${String(inIt)} mm`,
        reason: 'The screws move the dot and not the tube. They bring no star into the eyepiece.',
        misconception: 'screws-move-the-tube',
      },
      {
        text: `Put in a stronger one than the ${String(inIt)} mm, so ${star} looks larger`,
        reason: 'A stronger eyepiece shows less sky still, and a star stays a point.',
        misconception: 'more-power-better',
      },
      {
        text: `Tell the mount that ${star} is centred: the dot is on it, after all`,
        reason: 'Only the middle of the eyepiece counts. The mount would learn the dot’s error.',
      },
    ],
  });
}

function mendIt({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const star = pickOne(random, stars);
  return order({
    prompt: `After sunset you find that ${kit.name}’s dot is off. Set it on ${star}: in which order?`,
    explanation: `A star is as far as a target can be, and the Sun is down. Eyepiece first, then the dot; and the motors hold ${star} meanwhile, or you centre it again.`,
    steps: [
      `Find ${star} in the 25 mm eyepiece`,
      `Bring it to the middle with the 9 mm eyepiece`,
      `Turn the screws until the dot is on ${star}`,
      `Lock the screws`,
      `Look once more: is ${star} in the middle, and under the dot?`,
    ],
    rules: [
      { first: 0, then: 1, reason: 'the narrow field shows only what is already near its middle.' },
      {
        first: 1,
        then: 2,
        reason: 'the dot is set by the eyepiece, and the middle must be exact.',
      },
      { first: 2, then: 3, reason: 'locked screws do not turn.' },
      { first: 3, then: 4, reason: 'locking may shift the dot, so the look comes last.' },
    ],
  });
}

/** From the error back to what the finder was set on. */
function howNearWasIt({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const apartMm = 10 * random.integer(6, 10);
  const distanceM = pickOne(random, [5, 6, 8, 10, 12, 15, 20, 25, 30]);
  const residual = dotResidualArcmin({ apartMm, distanceM });
  const star = capitalised(pickOne(random, stars));
  return numeric({
    prompt: `With the dot on ${star} the star is ${inThree(residual)}′ beside the middle of ${kit.name}’s view. The finder sits ${String(apartMm)} mm beside the tube and was set with care. How far away was the thing that it was set on? (1 mm at 1 m is 3.44′.)`,
    unit: 'm',
    key: distanceM,
    tolerance: { mode: 'relative', full: 0.08, zero: 0.3 },
    explanation: `${String(apartMm)} × 3.44′ ÷ ${inThree(residual)}′ is ${inNumber(distanceM)} m. Farther would have been better.`,
    slips: [
      {
        gives: Number((residual / 3.44).toFixed(2)),
        reason: `That leaves out how far the finder sits beside the tube, ${String(apartMm)} mm.`,
      },
      {
        gives: Number((apartMm / residual).toFixed(2)),
        reason: 'That forgets that 1 mm at 1 m is 3.44′.',
      },
    ].filter(({ gives }) => Math.abs(gives / distanceM - 1) > 0.1),
  });
}

/** What an error of the dot costs at night, and how it is mended. */
export const dotAtNight: ItemFamily = {
  id: 'dot-at-night',
  lesson: 'finder-by-day',
  objective: 'at-night',
  skill: 'finder',
  title: 'What the dot is worth at night',
  version: 1,
  templates: {
    'read-off': readOff,
    'still-in-it': stillInIt,
    'empty-field': emptyField,
    'mend-it': mendIt,
    'how-near-was-it': howNearWasIt,
  },
};
