import { choice, match, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { askedSpot, type KnownSpot } from './asked-spot';
import { gatheringSpot } from './gathering-spot';
import { someTube, tubeOf } from './item-tube';
import { askers } from './askers';
import { pickOne } from '../../variants/pick-one';
import { drawTube, type DrawnTube } from '../../drawings/tube-drawing';
import { cutOpenInWords, kindName, looks, traits } from '../../drawings/tube-words';

const others = ({ world }: ItemDraw, { tubeType }: DrawnTube): DrawnTube[] =>
  world.kits.map(tubeOf).filter((tube) => tube.tubeType !== tubeType);

/** What is so of this tube and of none of the others. */
const markOf = (draw: ItemDraw, tube: DrawnTube) =>
  draw.random.shuffle(
    traits.filter(
      (trait) => trait.holds(tube) && !others(draw, tube).some((other) => trait.holds(other)),
    ),
  )[0];

function fromWords(draw: ItemDraw) {
  const tube = someTube(draw);
  const mark = markOf(draw, tube);
  const who = pickOne(draw.random, askers);
  const said = mark?.text ?? 'stands on the bench';
  const named = (one: DrawnTube) => `A ${kindName[one.tubeType]}, like ${one.name}`;
  return choice({
    prompt: `${who} has a tube that ${said}. Which kind is it?`,
    explanation: `Look at the two ends: what lets the light in, and where one looks in. ${looks[tube.tubeType]}`,
    right: { text: named(tube), reason: `${looks[tube.tubeType]} ${mark?.why(tube) ?? ''}`.trim() },
    wrong: others(draw, tube).map((other) => ({
      text: named(other),
      reason: `${looks[other.tubeType]} ${mark?.why(other) ?? ''}`.trim(),
    })),
  });
}

function tickTraits(draw: ItemDraw) {
  const { random } = draw;
  const tube = someTube(draw);
  const said = ({ text, why }: (typeof traits)[number]) => ({
    text: `It ${text}`,
    reason: why(tube),
  });
  const holding = random.shuffle(traits.filter((trait) => trait.holds(tube))).slice(0, 2);
  const not = random.shuffle(traits.filter((trait) => !trait.holds(tube))).slice(0, 3);
  return several({
    prompt: `${pickOne(random, askers)} asks about ${tube.name}, the ${kindName[tube.tubeType]}. Tick all that is true.`,
    explanation: looks[tube.tubeType],
    right: holding.map(said),
    wrong: not.map(said),
  });
}

function pairUp(draw: ItemDraw) {
  const { random, world } = draw;
  const tubes = random.shuffle(world.kits.map(tubeOf));
  const named = tubes.map(({ name }) => name).join(', ');
  return match({
    prompt: `${pickOne(random, askers)} opens three cases: ${named}. Which of them fits which words?`,
    explanation: 'A lens in front, a mirror behind an open front, or mirrors behind a window.',
    pairs: tubes.map((tube) => {
      const mark = markOf(draw, tube);
      return {
        left: `${tube.name}, the ${kindName[tube.tubeType]}`,
        right: `It ${mark?.text ?? 'stands there'}`,
        reason: `${looks[tube.tubeType]} ${mark?.why(tube) ?? ''}`.trim(),
      };
    }),
  });
}

const asked = ['in', 'gathers', 'eye'] as const;

function pointAt(draw: ItemDraw) {
  const { random } = draw;
  const tube = someTube(draw);
  const facing = pickOne(random, ['left', 'right']);
  const what = pickOne(random, asked);
  const { width, height, shapes, place } = drawTube(tube, { facing, rays: [] });
  const eye = gatheringSpot(tube);
  const spots: KnownSpot<(typeof asked)[number] | 'wall'>[] = [
    {
      is: 'in',
      ...place({ xMm: -45, yMm: 0 }),
      where: `outside the tube, before its ${facing}-hand end`,
      reason: 'That is before the front end: here the starlight comes in.',
    },
    { is: 'gathers', ...place(eye.spot), where: eye.where(facing), reason: eye.reason },
    {
      is: 'eye',
      ...place(eye.lookIn),
      where: 'at the small box above the slanting glass or mirror',
      reason: 'That is the eyepiece: here one looks in.',
    },
    {
      is: 'wall',
      ...place({ xMm: tube.lengthMm * 0.55, yMm: -tube.diameterMm / 2 }),
      where: 'on the lower wall, about halfway along',
      reason: 'That is the wall of the tube. It holds the parts in line and keeps stray light out.',
    },
  ];
  const questions = {
    in: 'Point at where the starlight comes in.',
    gathers: 'Point at what gathers the light.',
    eye: 'Point at where you would look in.',
  };
  return point({
    prompt: `${tube.name} is drawn cut open. ${questions[what]}`,
    drawing: { width, height, shapes, alternative: cutOpenInWords(tube, facing) },
    explanation: looks[tube.tubeType],
    ...askedSpot(spots, what),
  });
}

export const threeTubes: ItemFamily = {
  id: 'three-tubes',
  lesson: 'what-is-in-the-case',
  objective: 'types',
  skill: 'kit',
  title: 'Which of the three kinds of tube it is',
  version: 1,
  templates: {
    'from-words': fromWords,
    'tick-traits': tickTraits,
    'pair-up': pairUp,
    'point-at': pointAt,
  },
};
