import { magnification } from '../../optics/magnification';
import { roomRound, showsWhole } from '../../optics/shows';
import { skyTargets } from '../../optics/sky-targets';
import { trueFieldArcmin } from '../../optics/true-field';
import { choice, numeric, several } from '../build-item';
import type { ItemDraw, ItemFamily, ItemKit } from '../item-family';
import { viewDrawing } from './view-drawing';
import {
  eyepieceOf,
  inNumber,
  inThree,
  soldFocalLengths,
  usualFieldDeg,
  withFocalLength,
} from './words';
import { pickOne } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';

/** Mean width of the Moon as seen, arcminutes. */
const moonArcmin = 31;

const eyepiece = (focalLengthMm: number, apparentFieldDeg: number = usualFieldDeg) => ({
  focalLengthMm,
  apparentFieldDeg,
});
const fieldOf = (kit: ItemKit, focalLengthMm: number, apparentFieldDeg?: number): number =>
  trueFieldArcmin(kit, eyepiece(focalLengthMm, apparentFieldDeg));

function reckonField({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const focalLengthMm = pickOne(random, soldFocalLengths);
  const apparentFieldDeg = pickOne(random, [45, 50, 60, 65]);
  const key = fieldOf(kit, focalLengthMm, apparentFieldDeg);
  const times = magnification(kit, { focalLengthMm });
  return numeric({
    prompt: `${kit.name} magnifies ${inThree(times)} times with an eyepiece whose apparent field is ${String(apparentFieldDeg)}°. How wide a piece of sky does it show, in arcminutes?`,
    unit: 'arcminutes',
    key,
    tolerance: { mode: 'relative', full: 0.04, zero: 0.15 },
    explanation: `True field is apparent field over magnification: ${String(apparentFieldDeg)}° ÷ ${inThree(times)} is ${inNumber(key / 60, 2)}°, and a degree has 60 arcminutes.`,
    slips: [
      {
        gives: apparentFieldDeg * 60,
        reason:
          'That is the apparent field in arcminutes: how wide the picture looks. Divide it by the magnification.',
        misconception: 'field-is-apparent',
      },
      { gives: Number((key / 60).toFixed(3)), reason: 'That is the answer in degrees. Times 60.' },
      { gives: Number((key / 2).toFixed(2)), reason: 'That is from the middle to the edge.' },
    ],
  });
}

/** The Moon in the ring: read off how wide the field is. */
function moonForARuler({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const focalLengthMm = pickOne(
    random,
    soldFocalLengths.filter((one) => fieldOf(kit, one) >= 1.15 * moonArcmin),
  );
  const field = fieldOf(kit, focalLengthMm);
  const fits = field / moonArcmin;
  return numeric({
    prompt: `The full Moon is about ${String(moonArcmin)}′ wide. This is how it looks in ${kit.name} with ${eyepieceOf(focalLengthMm)}. How wide is the field, in arcminutes?`,
    drawing: viewDrawing(
      `The round view with the Moon in the middle. ${inNumber(fits, 1)} Moons in a row would reach from edge to edge.`,
      [{ right: 0, up: 0, size: 1 / fits }],
    ),
    unit: 'arcminutes',
    key: field,
    tolerance: { mode: 'relative', full: 0.12, zero: 0.35 },
    explanation: `${inNumber(fits, 1)} Moons of ${String(moonArcmin)}′ fit side by side, so the field is about ${inNumber(field)}′ wide.`,
    slips: [
      ...(fits > 1.4
        ? [{ gives: moonArcmin, reason: 'That is the Moon. The field is wider than the Moon.' }]
        : []),
      {
        gives: usualFieldDeg * 60,
        reason: 'That is the apparent field: how wide the picture looks, not the sky in it.',
        misconception: 'field-is-apparent',
      },
    ],
  });
}

const clusters = skyTargets.flatMap((one) => (one.kind === 'cluster' ? [one] : []));
/** Near the limit an eye may well call it whole or not. */
const plainly = (field: number, sizeArcmin: number): boolean =>
  field / sizeArcmin > roomRound * 1.1 || field / sizeArcmin < 0.95;

function whatIsWhole({ random, world }: ItemDraw) {
  for (;;) {
    const kit = pickOne(random, world.kits);
    const focalLengthMm = pickOne(random, soldFocalLengths);
    const field = fieldOf(kit, focalLengthMm);
    const four = random
      .shuffle(clusters.filter(({ sizeArcmin }) => plainly(field, sizeArcmin)))
      .slice(0, 4);
    const whole = four.filter((one) => showsWhole(kit, eyepiece(focalLengthMm), one.sizeArcmin));
    if (four.length < 4 || whole.length === 0 || whole.length === 4) continue;
    const written = ({ name, sizeArcmin }: (typeof four)[number]) => ({
      text: `${capitalised(name)}, ${String(sizeArcmin)}′ wide`,
      reason: `It is ${String(sizeArcmin)}′ wide and the ring ${inNumber(field)}′, so it ${sizeArcmin < field ? 'fits' : 'hangs over the edge'}.`,
    });
    return several({
      prompt: `${withFocalLength(kit)} with ${eyepieceOf(focalLengthMm)} of ${String(usualFieldDeg)}° apparent field: which of these are whole in view, with a little sky round them?`,
      explanation: `The magnification is ${inThree(magnification(kit, { focalLengthMm }))}, so the ring holds ${String(usualFieldDeg)}° ÷ ${inThree(magnification(kit, { focalLengthMm }))}: ${inNumber(field)}′ of sky.`,
      right: whole.map(written),
      wrong: four.filter((one) => !whole.includes(one)).map(written),
    });
  }
}

function sameFocalLength({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const focalLengthMm = pickOne(random, soldFocalLengths);
  const narrowDeg = pickOne(random, [40, 45, 50]);
  const wideDeg = pickOne(random, [60, 65, 70]);
  const times = inThree(magnification(kit, { focalLengthMm }));
  const narrow = inNumber(fieldOf(kit, focalLengthMm, narrowDeg));
  const wide = inNumber(fieldOf(kit, focalLengthMm, wideDeg));
  return choice({
    prompt: `Two ${String(focalLengthMm)} mm eyepieces for ${withFocalLength(kit)}: one has an apparent field of ${String(narrowDeg)}°, the other of ${String(wideDeg)}°. What is different in the view?`,
    explanation: `Both magnify ${times} times, for magnification asks for focal lengths only. The apparent field tells how much sky there is round the middle.`,
    right: {
      text: `The second shows ${wide}′ of sky and the first ${narrow}′; things look equally large.`,
      reason: `Equal focal lengths magnify equally, ${times} times; ${String(wideDeg)}° ÷ ${times} is more sky than ${String(narrowDeg)}° ÷ ${times}.`,
    },
    wrong: [
      {
        text: `The second magnifies more; both show ${narrow}′ of sky, from one edge to the other.`,
        reason: `Both magnify ${times} times, since both have ${String(focalLengthMm)} mm. The wider one shows more sky.`,
      },
      {
        text: `The second shows ${String(wideDeg)}° of sky and the first ${String(narrowDeg)}°, as their labels say.`,
        reason:
          'The label tells how wide the picture looks. The sky in it is smaller by the magnification.',
        misconception: 'field-is-apparent',
      },
      {
        text: `Nothing at all: ${String(focalLengthMm)} mm eyepieces show the same picture in ${kit.name}.`,
        reason: `They magnify the same, but one ring holds ${wide}′ of sky and the other ${narrow}′.`,
      },
    ],
  });
}

/** Predict, then see: a stronger eyepiece goes in. */
function closerIn({ random, world }: ItemDraw) {
  for (;;) {
    const kit = pickOne(random, world.kits);
    const target = pickOne(random, clusters);
    const strongMm = pickOne(random, [18, 15, 12, 10, 9]);
    const wide = fieldOf(kit, 25);
    const narrow = fieldOf(kit, strongMm);
    if (!plainly(narrow, target.sizeArcmin) || wide < 1.2 * target.sizeArcmin) continue;
    const whole = narrow > target.sizeArcmin;
    const Name = capitalised(target.name);
    const fits = {
      text: `${Name}: larger than before, and still whole in the ring.`,
      reason: `The ring now holds ${inNumber(narrow)}′, and ${target.name} is ${String(target.sizeArcmin)}′ wide.`,
    };
    const hangsOver = {
      text: `${Name}: larger than before, with its rim outside the ring.`,
      reason: `The ring now holds only ${inNumber(narrow)}′, and ${target.name} is ${String(target.sizeArcmin)}′ wide.`,
    };
    return choice({
      prompt: `In ${withFocalLength(kit)} ${eyepieceOf(25)} shows ${inNumber(wide)}′ of sky, with ${target.name} (${String(target.sizeArcmin)}′) whole in the middle. What will ${eyepieceOf(strongMm)} of the same apparent field show?`,
      explanation: `The field shrinks as the focal length does: ${inNumber(wide)}′ × ${String(strongMm)} ÷ 25 is ${inNumber(narrow)}′.`,
      right: whole ? fits : hangsOver,
      wrong: [
        whole ? hangsOver : fits,
        {
          text: `${Name}: smaller than before, with more dark sky round it.`,
          reason: `A shorter eyepiece magnifies more. The ring holds ${inNumber(narrow)}′ instead of ${inNumber(wide)}′.`,
          misconception: 'longer-eyepiece-stronger',
        },
      ],
      afterwards: viewDrawing(
        `The view with ${eyepieceOf(strongMm)}: the ring holds ${inNumber(narrow)}′, and ${target.name} ${whole ? 'fits inside' : 'hangs over its edge'}.`,
        [],
        [
          {
            kind: 'circle',
            cx: 160,
            cy: 120,
            r: Math.min(118, (105 * target.sizeArcmin) / narrow),
            stroke: 'sky-lamp',
            width: 2,
            dashed: true,
          },
        ],
      ),
    });
  }
}

/** How much sky there is in an eyepiece. */
export const skyInTheRing: ItemFamily = {
  id: 'sky-in-the-ring',
  lesson: 'eyepieces-and-views',
  objective: 'field',
  skill: 'field',
  title: 'How wide a piece of sky an eyepiece shows',
  version: 1,
  templates: {
    'reckon-field': reckonField,
    'moon-for-a-ruler': moonForARuler,
    'what-is-whole': whatIsWhole,
    'same-focal-length': sameFocalLength,
    'closer-in': closerIn,
  },
};
