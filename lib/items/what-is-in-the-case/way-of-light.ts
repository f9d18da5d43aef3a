import { capitalised } from '../../wording/capital';
import { isMirror, lightRay, lightTrain, type LightPart } from '../../optics/light-path';
import { choice, numeric, order, point } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { askedSpot, type KnownSpot } from './asked-spot';
import { gatheringSpot } from './gathering-spot';
import { someTube } from './item-tube';
import { starRays } from '../../optics/light-rays';
import { askers } from './askers';
import { pickOne } from '../../variants/pick-one';
import { drawTube, type DrawnTube } from '../../drawings/tube-drawing';
import { cutOpenInWords, kindName, partName } from '../../drawings/tube-words';

/** The parts that a ray past the small mirror meets, by tracing it. */
const partsMet = (tube: DrawnTube): readonly LightPart[] =>
  lightRay(lightTrain(tube), { heightMm: 0.4 * tube.apertureMm }).met;

/** What each part does to the light, after "because". */
const does: Readonly<Record<LightPart, string>> = {
  lens: 'the front lens bends the light together',
  corrector: 'the window lets the light in and mends what a round mirror gets wrong',
  'main-mirror': 'the main mirror throws the light back, closer and closer together',
  'small-mirror': 'the mirror spot throws the light back through the hole in the main mirror',
  'flat-mirror': 'the flat mirror throws the light out sideways',
  prism: 'the prism bends the light upward and sets the picture right',
  diagonal: 'the diagonal throws the light upward',
  eyepiece: 'the eyepiece makes the light fit for an eye',
};
const wayInWords = (tube: DrawnTube): string =>
  `In ${tube.name} the light meets ${partsMet(tube)
    .map((part) => partName[part])
    .join(', then ')}.`;

function inOrder(draw: ItemDraw) {
  const tube = someTube(draw);
  const met = partsMet(tube);
  return order({
    prompt: `${pickOne(draw.random, askers)} asks which way starlight takes through ${tube.name}, a ${kindName[tube.tubeType]}. Put the places in order.`,
    explanation: wayInWords(tube),
    steps: ['The open night', ...met.map((part) => capitalised(partName[part])), 'Your eye'],
    rules: [...met, undefined].map((part, index) => {
      const before = index === 0 ? undefined : met[index - 1];
      const reason =
        before === undefined
          ? `from outside the light first meets ${part === undefined ? 'the tube' : partName[part]}.`
          : `${does[before]}${part === undefined ? '' : `, and so on to ${partName[part]}`}.`;
      return { first: index, then: index + 1, reason };
    }),
  });
}

function whatNext(draw: ItemDraw) {
  const { random } = draw;
  const tube = someTube(draw);
  const met = partsMet(tube);
  const at = random.integer(0, met.length - 2);
  const [here, next] = [met[at] ?? 'lens', met[at + 1] ?? 'eyepiece'];
  const facing = pickOne(random, ['left', 'right']);
  const rays = starRays(tube).filter(({ ends }) => ends === 'in-the-eye');
  const drawn = drawTube(tube, {
    facing,
    rays: rays.map((ray) => ({ ...ray, points: ray.points.slice(0, at + 2) })),
  });
  const whole = drawTube(tube, { facing, rays });
  const words = cutOpenInWords(tube, facing);
  const never: LightPart[] = (['prism', 'flat-mirror', 'diagonal'] as const).filter(
    (part) => !met.includes(part),
  );
  const to = (part: LightPart) => `To ${tube.name}’s ${partName[part].replace('the ', '')}`;
  const elsewhere = [
    ...random
      .shuffle(met.filter((part) => part !== here && part !== next))
      .slice(0, 1)
      .map((part) => ({
        text: to(part),
        reason: `Its turn is at another time: ${does[here]}, straight on to ${partName[next]}.`,
      })),
    ...random.shuffle(never).map((part) => ({
      text: to(part),
      reason: `${tube.name} has none on its way: a ${kindName[tube.tubeType]} does without.`,
    })),
  ].slice(0, 2);
  return choice({
    prompt: `Starlight in ${tube.name} has come as far as ${partName[here]}. Where does it go next?`,
    drawing: { ...plain(drawn), alternative: `${words} Lines of light reach ${partName[here]}.` },
    explanation: wayInWords(tube),
    afterwards: { ...plain(whole), alternative: `${words} ${wayInWords(tube)}` },
    right: { text: to(next), reason: `${capitalised(does[here])}.` },
    wrong: [
      ...elsewhere,
      {
        text: `Out again at ${tube.name}’s front end`,
        reason: `Then nobody would see it. From here ${does[here]}.`,
      },
    ],
  });
}

const plain = ({ width, height, shapes }: ReturnType<typeof drawTube>) => ({
  width,
  height,
  shapes,
});

function countMirrors(draw: ItemDraw) {
  const tube = someTube(draw);
  const bare = draw.random.next() < 0.4 && tube.tubeType === 'maksutov-cassegrain';
  const mirrors = partsMet(tube).filter((part) => isMirror(part) && !(bare && part === 'diagonal'));
  const how = bare ? ', with its diagonal taken out' : '';
  const counted = mirrors.map((part) => partName[part]).join(', ');
  const lens = tube.tubeType === 'refractor';
  return numeric({
    prompt: `${pickOne(draw.random, askers)} asks: on how many mirrors is starlight thrown back on its way through ${tube.name}${how}? Leave a prism out of the count.`,
    unit: 'mirrors',
    key: mirrors.length,
    tolerance: { mode: 'absolute', full: 0.1, zero: 0.9 },
    explanation: lens
      ? 'A refractor’s lens bends the light straight to the back: no mirror is needed.'
      : `Count along the way of the light: ${counted}.`,
    slips: lens
      ? [
          {
            gives: 1,
            reason: 'The lens bends the light and lets it through. It throws nothing back.',
          },
        ]
      : [
          {
            gives: 1,
            reason: 'That counts the big one alone. A small mirror takes the light on from there.',
          },
        ],
  });
}

const asked = ['focus', 'gathers', 'enters'] as const;
const meaning = {
  focus: 'where the light of one star meets in a point',
  gathers: 'where the light is first turned towards one point',
  enters: 'where the light of one star still runs side by side',
};

function pointOnTheWay(draw: ItemDraw) {
  const { random } = draw;
  const tube = someTube(draw);
  const facing = pickOne(random, ['left', 'right']);
  const what = pickOne(random, asked);
  const drawn = drawTube(tube, { facing, rays: starRays(tube) });
  const gather = gatheringSpot(tube);
  const spots: KnownSpot<(typeof asked)[number] | 'wall'>[] = [
    {
      is: 'focus',
      ...drawn.place(lightTrain(tube).focus),
      where: 'a little before the small box above the slanting glass or mirror',
      reason: 'Here all lines of the star cross: this is the focus.',
    },
    {
      is: 'gathers',
      ...drawn.place(gather.spot),
      where: gather.where(facing),
      reason: `${gather.reason} From here on the lines run together.`,
    },
    {
      is: 'enters',
      ...drawn.place({ xMm: -45, yMm: 0 }),
      where: `outside the tube, before its ${facing}-hand end`,
      reason:
        'A star is so far away that its light comes in side by side. Nothing has turned it yet.',
    },
    {
      is: 'wall',
      ...drawn.place({ xMm: tube.lengthMm * 0.55, yMm: -tube.diameterMm / 2 }),
      where: 'on the lower wall, about halfway along',
      reason: 'The wall only shuts out stray light. The star’s light passes inside it.',
    },
  ];
  return point({
    prompt: `The light of one star in ${tube.name}. Point at ${meaning[what]}.`,
    drawing: {
      ...plain(drawn),
      alternative: `${cutOpenInWords(tube, facing)} Lines of light run in and on to the box.`,
    },
    explanation: `${wayInWords(tube)} Before the eyepiece the lines of one star cross in the focus.`,
    ...askedSpot(spots, what),
  });
}

export const wayOfLight: ItemFamily = {
  id: 'way-of-light',
  lesson: 'what-is-in-the-case',
  objective: 'light',
  skill: 'kit',
  title: 'Which way the light goes',
  version: 1,
  templates: {
    'in-order': inOrder,
    'what-next': whatNext,
    'count-mirrors': countMirrors,
    'point-on-the-way': pointOnTheWay,
  },
};
