import { skyFrameAt } from '../../sky/frame-at';
import type { NakedEyePlanet } from '../../sky/sky-frame';
import {
  discDrawing,
  onDisc,
  pathShape,
  ringShape,
  starShape,
} from '../clock-and-place/sky-drawings';
import { whereabouts } from '../clock-and-place/words';
import { pickOne, pickSome } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';
import { choice, match, order, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import {
  apartDeg,
  drawEvening,
  magnitudeInWords,
  whole,
  type DrawnEvening,
  type Light,
} from './drawn-evening';

/** An evening with a planet well up, and enough bright stars that stand elsewhere. */
function eveningWithPlanet(draw: ItemDraw, stars: number) {
  for (;;) {
    const evening = drawEvening(draw);
    const planet = draw.random.pick(
      evening.lights.filter(
        (one) => one.kind === 'planet' && one.altitudeDeg > 12 && one.altitudeDeg < 75,
      ),
    );
    if (planet === undefined) continue;
    const chosen: Light[] = [];
    for (const light of draw.random.shuffle(evening.lights)) {
      const clear = [planet, ...chosen].every(
        (one) => apartDeg(one, light) > 15 && whereabouts(one) !== whereabouts(light),
      );
      const fits =
        light.kind === 'star' &&
        light.magnitude < 1.7 &&
        light.altitudeDeg > 8 &&
        light.altitudeDeg < 78;
      if (fits && clear && chosen.length < stars) chosen.push(light);
    }
    if (chosen.length === stars) return { evening, planet, stars: chosen };
  }
}

const listed = (stars: readonly Light[]): string =>
  stars.map((star) => `${star.name} ${whereabouts(star)}`).join('; ');

function notOnTheChart(draw: ItemDraw) {
  const { evening, planet, stars } = eveningWithPlanet(draw, 3);
  const text = (light: Light) => capitalised(`${whereabouts(light)}.`);
  return choice({
    prompt: `${evening.when}. Your chart of the bright stars has, at this hour: ${listed(stars)}. You see four bright lights. Which of them must you not take for a star?`,
    explanation: `The one that is not on the chart: ${planet.name}, ${whereabouts(planet)}. Planets wander among the stars, so no chart of stars has them.`,
    right: {
      text: text(planet),
      reason: `It is not on the chart, since it is ${planet.name}, a planet.`,
    },
    wrong: stars.map((star) => ({
      text: text(star),
      reason: `The chart has it: it is ${star.name}.`,
    })),
  });
}

function pointAtTheWanderer(draw: ItemDraw) {
  const { evening, planet, stars } = eveningWithPlanet(draw, 4);
  const spot = (light: Light) => ({ ...onDisc(light), where: capitalised(whereabouts(light)) });
  const all = draw.random.shuffle([planet, ...stars]);
  return point({
    prompt: `${evening.when}. The list of the stars has ${listed(draw.random.shuffle(stars))}. Point at the light that is no star.`,
    drawing: discDrawing(all.map(ringShape).concat(all.map((light) => starShape(light))), {
      alternative: `A round chart of the sky, north at the top and east on the left, with five bright lights: ${all.map(whereabouts).join('; ')}.`,
    }),
    explanation: `${planet.name} is not on a list of stars: it wanders among them.`,
    right: { ...spot(planet), reason: `${planet.name}, a planet.` },
    wrong: stars.map((star) => ({
      ...spot(star),
      reason: `That is ${star.name}. It is on the list.`,
    })),
  });
}

function whatToCallIt(draw: ItemDraw) {
  const { evening, stars } = eveningWithPlanet(draw, 3);
  const planets = evening.lights.filter(({ kind }) => kind === 'planet');
  const chosen = draw.random.shuffle([...stars.slice(0, 3), ...planets.slice(0, 2)]);
  return match({
    prompt: `${evening.when}. Bright lights are up: ${chosen.map(({ name }) => name).join(', ')}. Which of them does the mount’s list of stars have?`,
    explanation:
      'Five planets can be seen with the naked eye: Mercury, Venus, Mars, Jupiter and Saturn. All the others here are stars.',
    pairs: chosen.map((light) => ({
      left: light.name,
      right: light.kind === 'planet' ? 'A planet: not on the list' : 'A star: on the list',
      reason:
        light.kind === 'planet'
          ? 'it goes round the Sun, and wanders among the stars.'
          : 'it keeps its place among the stars.',
    })),
  });
}

/** What speaks for a planet (common practice, no source), and what does not. */
const signs = [
  { text: 'No star of the chart stands there', reason: 'A chart of stars has no planets.' },
  {
    text: 'It is brighter than every star of the chart',
    reason: 'Venus and Jupiter outshine all stars.',
  },
  {
    text: 'It hardly twinkles, high up',
    reason: 'A planet is a tiny disc; the air shakes it less than a point.',
  },
  {
    text: 'A week ago it stood elsewhere among the stars',
    reason: 'That is what planets do: they wander.',
  },
  {
    text: 'In the 9 mm eyepiece it shows a small disc',
    reason: 'No star shows a true disc in these telescopes.',
  },
  {
    text: 'It stands on the band where the Moon goes',
    reason: 'Planets keep to nearly the same band as Sun and Moon.',
  },
];
const noSigns = [
  { text: 'It stands low in the west', reason: 'stars set in the west as well.' },
  {
    text: 'It is higher than it was an hour ago',
    reason: 'the whole sky turns, stars and planets alike.',
  },
  {
    text: 'It has a reddish tint',
    reason: 'so have Antares, Aldebaran and Betelgeuse, and they are stars.',
  },
  {
    text: 'It twinkles in many colours, low down',
    reason: 'a star near the horizon does just that.',
  },
  { text: 'It is up at midnight', reason: 'so are many stars.' },
  {
    text: 'The mount has it on its list of stars',
    reason: 'then it is a star.',
  },
];

function signsOfAPlanet(draw: ItemDraw) {
  const { evening, planet } = eveningWithPlanet(draw, 2);
  return several({
    prompt: `${evening.when}. A bright light stands ${whereabouts(planet)}. Which of these would speak for a planet?`,
    explanation:
      'A planet is on no chart of stars, wanders from week to week, often outshines the stars, and hardly twinkles.',
    right: pickSome(draw.random, signs, 2),
    wrong: pickSome(draw.random, noSigns, 3),
  });
}

/** Where a planet stands after whole turns of the sky, so that every star stands where it stood. */
function afterTurns(evening: DrawnEvening, body: NakedEyePlanet, turns: number): Light | null {
  // A turn of the sky takes 23 h 56 m 4.09 s.
  const ms = evening.ms + turns * 86_164_091;
  const place = { latitudeDeg: evening.latitudeDeg, longitudeDeg: 0, elevationM: 0 };
  const planet = skyFrameAt({ instant: new Date(ms), place }).planets.find(
    (one) => one.body === body,
  );
  const light = evening.lights.find(({ name }) => name.toLowerCase() === body);
  return planet === undefined || light === undefined ? null : { ...light, ...planet };
}

const bodies = ['mercury', 'venus', 'mars', 'jupiter', 'saturn'] as const;

function whichOneWanders(draw: ItemDraw) {
  for (;;) {
    const { evening, planet, stars } = eveningWithPlanet(draw, 3);
    const body = bodies.find((one) => one === planet.name.toLowerCase());
    const weeks = pickOne(draw.random, [3, 4, 5, 6]);
    const later = body === undefined ? null : afterTurns(evening, body, 7 * weeks);
    if (later === null || apartDeg(planet, later) < 4 || later.altitudeDeg < 5) continue;
    const text = (light: Light) =>
      `The light ${whereabouts(light)}, ${magnitudeInWords(light.magnitude)}`;
    return choice({
      prompt: `${evening.when}, you note four bright lights. ${String(weeks)} weeks later you look when the stars stand just as they did. Your list says that ${stars.map(({ name }) => name).join(', ')} are up, and no other star so bright stood ${whereabouts(planet)}. Which of the four has moved among the others?`,
      explanation: `${planet.name} is a planet. In ${String(weeks)} weeks it has gone ${whole(apartDeg(planet, later))}° among the stars.`,
      right: {
        text: text(planet),
        reason: `That is ${planet.name}: ${whole(apartDeg(planet, later))}° in ${String(weeks)} weeks.`,
      },
      wrong: stars.map((star) => ({
        text: text(star),
        reason: `That is ${star.name}. Stars keep their places among each other.`,
      })),
      afterwards: discDrawing(
        [
          ...stars.map((star) => starShape(star)),
          ringShape(planet),
          pathShape([planet, later]),
          starShape(later, true),
        ],
        {
          names: [...stars.map((at) => ({ at, name: at.name })), { at: later, name: planet.name }],
          alternative: `The whole sky with the three stars where they were. ${planet.name} has gone ${whole(apartDeg(planet, later))}° from its ring.`,
        },
      ),
    });
  }
}

function brightestFirst(draw: ItemDraw) {
  for (;;) {
    const { evening, planet, stars } = eveningWithPlanet(draw, 3);
    const sorted = [planet, ...stars].sort((a, b) => a.magnitude - b.magnitude);
    // Half a magnitude can be seen at a glance.
    if (sorted.some((one, i) => i > 0 && one.magnitude - (sorted[i - 1]?.magnitude ?? 0) < 0.4))
      continue;
    return order({
      prompt: `${evening.when}. Bright lights are up: ${draw.random
        .shuffle(sorted)
        .map((light) => `${light.name} of ${magnitudeInWords(light.magnitude)}`)
        .join(', ')}. Put them in order, the brightest first.`,
      explanation: `The smaller the magnitude, the brighter. ${planet.name} is a planet: however bright, it is no alignment star.`,
      steps: sorted.map(({ name }) => name),
      rules: sorted.slice(1).map((light, i) => ({
        first: i,
        then: i + 1,
        reason: `a smaller magnitude is brighter, and ${magnitudeInWords(sorted[i]?.magnitude ?? 0)} is less than ${magnitudeInWords(light.magnitude)}.`,
      })),
    });
  }
}

export const starOrPlanet: ItemFamily = {
  id: 'star-or-planet',
  lesson: 'choosing-alignment-stars',
  objective: 'usable',
  skill: 'choose-stars',
  title: 'A star, or a planet?',
  version: 2,
  templates: {
    'not-on-the-chart': notOnTheChart,
    'point-at-the-wanderer': pointAtTheWanderer,
    'what-to-call-it': whatToCallIt,
    'signs-of-a-planet': signsOfAPlanet,
    'which-one-wanders': whichOneWanders,
    'brightest-first': brightestFirst,
  },
};
