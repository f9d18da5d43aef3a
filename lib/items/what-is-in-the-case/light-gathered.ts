import { darkPupilMm, lightRatio } from '../../optics/light-gathered';
import { choice, numeric, order } from '../build-item';
import type { ItemDrawing } from '../../drawings/drawing';
import type { ItemDraw, ItemFamily } from '../item-family';
import { askers } from './askers';
import { pickOne } from '../../variants/pick-one';

const apertures = [50, 60, 70, 80, 90, 100, 105, 114, 120, 130, 150] as const;
const mm = (value: number): string => `${String(value)} mm`;
const timesOf = (ratio: number): string =>
  `${ratio < 10 ? ratio.toFixed(1) : String(Math.round(ratio))} times`;

function thanYourEye({ random }: ItemDraw) {
  const aperture = pickOne(random, apertures);
  const ratio = lightRatio(aperture, darkPupilMm);
  return numeric({
    prompt: `${pickOne(random, askers)} asks: how many times as much light does a front ${mm(aperture)} wide gather as an eye whose pupil is ${mm(darkPupilMm)} wide?`,
    unit: 'times',
    key: ratio,
    tolerance: { mode: 'relative', full: 0.06, zero: 0.3 },
    explanation: `${String(aperture)} ÷ ${String(darkPupilMm)} is ${(aperture / darkPupilMm).toFixed(1)}; squared, since light goes by area, that is about ${String(Math.round(ratio))}.`,
    slips: [
      {
        gives: Number((aperture / darkPupilMm).toFixed(1)),
        reason: 'That is how many times as wide it is. Light goes by area: square it.',
        misconception: 'light-goes-by-width',
      },
    ],
  });
}

function whichGathers({ random }: ItemDraw) {
  const [small, large] = random
    .shuffle(
      apertures
        .flatMap((a) => apertures.map((b) => [a, b] as const))
        .filter(([a, b]) => b / a > 1.3),
    )
    .at(0) ?? [80, 120];
  const longMm = 100 * random.integer(9, 14);
  const shortMm = 100 * random.integer(4, 7);
  const ratio = lightRatio(large, small);
  const wide = `the one ${mm(large)} wide`;
  return choice({
    prompt: `One telescope is ${mm(small)} wide and ${mm(longMm)} long, another ${mm(large)} wide and ${mm(shortMm)} long. Which gathers more light, and how much more?`,
    explanation:
      'Light goes by the area of the front, so by its width squared. Length gathers none.',
    right: {
      text: `${wide.replace('the', 'The')}: ${timesOf(ratio)} as much`,
      reason: `(${String(large)} ÷ ${String(small)})² is ${ratio.toFixed(1)}.`,
    },
    wrong: [
      {
        text: `The one ${mm(large)} wide: ${timesOf(large / small)} as much`,
        reason: `That compares the widths. Light goes by area: ${ratio.toFixed(1)} times.`,
        misconception: 'light-goes-by-width',
      },
      {
        text: `The one ${mm(longMm)} long: ${timesOf(longMm / shortMm)} as much`,
        reason: 'Length gathers no light. The front does, and it goes by its width.',
        misconception: 'long-tube-gathers-light',
      },
    ],
  });
}

/** What is printed beside a front: both numbers that tell a tube. */
function label(name: string, apertureMm: number, focalMm: number): ItemDrawing {
  return {
    width: 320,
    height: 130,
    alternative: `A label on a tube. First line: ${name}. Second line: D = ${String(apertureMm)} mm. Third line: F = ${String(focalMm)} mm.`,
    shapes: [
      { kind: 'rect', x: 30, y: 12, w: 260, h: 106, round: 8, fill: 'sunken', stroke: 'strong' },
      { kind: 'circle', cx: 46, cy: 65, r: 4, stroke: 'strong' },
      { kind: 'circle', cx: 274, cy: 65, r: 4, stroke: 'strong' },
      { kind: 'text', x: 160, y: 42, text: name, size: 18, bold: true, anchor: 'middle' },
      { kind: 'text', x: 160, y: 72, text: `D = ${mm(apertureMm)}`, size: 18, anchor: 'middle' },
      { kind: 'text', x: 160, y: 100, text: `F = ${mm(focalMm)}`, size: 18, anchor: 'middle' },
    ],
  };
}

function readTheLabel(draw: ItemDraw) {
  const { random, world } = draw;
  const kit = random.pick(world.kits);
  const own = random.next() < 0.3 && kit !== undefined;
  const apertureMm = own ? kit.apertureMm : pickOne(random, apertures);
  const focalMm = own ? kit.focalLengthMm : 50 * random.integer(8, 28);
  const name = own ? kit.name : pickOne(random, ['Swift', 'Plover', 'Rook', 'Martin', 'Dunlin']);
  const key = focalMm / apertureMm;
  return numeric({
    prompt:
      'Read the label: D is the width of the front, F the focal length. How many times as long as wide is the way to the focus?',
    drawing: label(name, apertureMm, focalMm),
    unit: 'times',
    key,
    tolerance: { mode: 'absolute', full: 0.1, zero: 0.8 },
    explanation: `F ÷ D is ${String(focalMm)} ÷ ${String(apertureMm)}, so ${key.toFixed(1)}. It is called the focal ratio and written f/${key.toFixed(1)}.`,
    slips: [
      {
        gives: Number((apertureMm / focalMm).toFixed(2)),
        reason: 'That is upside down: width over length. Divide F by D.',
      },
    ],
  });
}

function leastToMost({ random }: ItemDraw) {
  const chosen = random
    .shuffle(apertures)
    .reduce<number[]>(
      (kept, next) =>
        kept.length < 4 && kept.every((one) => Math.abs(one - next) > 8) ? [...kept, next] : kept,
      [],
    )
    .sort((a, b) => a - b);
  const named = chosen.map((aperture) => {
    const focal = 50 * random.integer(8, 28);
    return `D = ${mm(aperture)}, F = ${mm(focal)}`;
  });
  return order({
    prompt: `${pickOne(random, askers)} reads the labels of four telescopes. Put them in order, from the one that gathers least light to the one that gathers most.`,
    explanation:
      'Only D counts: the wider the front, the more light. F says where the light meets.',
    steps: named,
    rules: chosen.slice(1).map((aperture, index) => ({
      first: index,
      then: index + 1,
      reason: `its front is narrower, and the other gathers ${lightRatio(aperture, chosen[index] ?? aperture).toFixed(1)} times as much.`,
    })),
  });
}

export const lightGathered: ItemFamily = {
  id: 'light-gathered',
  lesson: 'what-is-in-the-case',
  objective: 'gather',
  skill: 'kit',
  title: 'How much light a front gathers',
  version: 1,
  templates: {
    'than-your-eye': thanYourEye,
    'which-gathers': whichGathers,
    'read-the-label': readTheLabel,
    'least-to-most': leastToMost,
  },
};
