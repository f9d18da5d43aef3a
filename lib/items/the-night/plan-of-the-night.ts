import { choice, match, order, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { telescopeNames as scopes } from '../power-without-smoke/draw-needs';
import { pickOne, pickSome } from '../../variants/pick-one';
import { drawSite, siteSpot, siteWhere, type Site, type SitePlace } from './draw-site';

type Case = { asks: string; right: string; why: string };
const cases: readonly [Case, ...Case[]] = [
  {
    asks: 'It is clear, but thunder is heard far off.',
    right: 'Pack up now, and all go indoors',
    why: 'Whoever hears thunder is near enough to be struck. A tripod in an open field is no place to stand.',
  },
  {
    asks: 'The sky is clear, and no adult can come after all.',
    right: 'Put it off to another evening',
    why: 'Nobody goes out alone in the dark, however good the sky is.',
  },
  {
    asks: 'The forecast says cloud until nine and clear after that.',
    right: 'Set up by daylight, align after nine',
    why: 'Legs, cables and levels are done in the light. The stars are needed only for the last part.',
  },
  {
    asks: 'A gusty wind shakes the tripod, and the tube swings.',
    right: 'Stay indoors with the labs tonight',
    why: 'Gusts throw telescopes over, and nothing holds still in the eyepiece.',
  },
  {
    asks: 'The ground has frozen, and the way to the field is sheet ice.',
    right: 'Leave it in the case: nobody carries it on ice',
    why: 'Whoever carries a tube cannot catch a fall.',
  },
  {
    asks: 'The Sun stands a hand’s breadth above the roofs, and the class is ready.',
    right: 'Set up with every cap on, and wait for sunset',
    why: 'Caps stay on tube and finder until the Sun has set. The rest can be done.',
  },
];
const tempting = [
  {
    text: 'Carry on and be quick about it',
    reason: 'Haste is how people fall and tubes are dropped.',
  },
  { text: 'Let the oldest student decide', reason: 'Going out at night is an adult’s word.' },
  {
    text: 'Start, and stop once somebody gets hurt',
    reason: 'Then it is too late. The plan is there for before.',
  },
  {
    text: 'Take the caps off and have a first look',
    reason: 'That mends nothing, and by day it can cost an eye.',
  },
];

function goOrNot({ random }: ItemDraw) {
  const one = pickOne(random, cases);
  return choice({
    prompt: `${pickOne(random, scopes)} stands ready for an evening with the class. ${one.asks} What is the plan?`,
    explanation: 'Weather, ground, adults, Sun: any one of them can call a night off.',
    right: { text: one.right, reason: one.why },
    wrong: pickSome(random, tempting, 3),
  });
}

function theEvening({ random }: ItemDraw) {
  const when = pickOne(random, ['in March', 'in October', 'in December', 'in May', 'in September']);
  return order({
    prompt: `A class plans an evening ${when} with ${pickOne(random, scopes)}. Put the plan in order.`,
    explanation:
      'What needs light is done by daylight; caps come off after sunset; stars come last.',
    steps: [
      'Noon: look at the forecast, say yes or no',
      'By daylight: walk the ground and mark what one could trip over',
      'By daylight: set up, level and balance, caps on',
      'After sunset: caps off',
      'In the dark, eyes used to it: align',
      'At the agreed end: pack up and count everything',
    ],
    rules: [
      { first: 0, then: 1, reason: 'nobody sets out before the evening is on.' },
      { first: 1, then: 2, reason: 'heavy things are carried over ground that is known.' },
      { first: 2, then: 3, reason: 'the caps come off a telescope that stands.' },
      { first: 3, then: 4, reason: 'through a cap there are no stars.' },
      { first: 4, then: 5, reason: 'what is packed up cannot be aligned.' },
    ],
  });
}

const beforeDark = [
  {
    text: 'Walk the ground and move what lies about',
    reason: 'In the dark people trip over what they have not seen.',
  },
  { text: 'Tie a white ribbon to each tripod leg', reason: 'Legs are what feet find at night.' },
  { text: 'Level the tripod', reason: 'The bubble is read in the light.' },
  { text: 'Balance the tube', reason: 'Loosening clamps is no work for dark hands.' },
  {
    text: 'Put the cells in and read the meter',
    reason: 'Plus and minus are hard to tell in the dark.',
  },
  {
    text: 'Agree on an end and on who calls it',
    reason: 'Late and cold, nobody agrees on anything.',
  },
];
const afterSunset = [
  { text: 'Take the caps off', reason: 'Not before the Sun has set.' },
  { text: 'Choose two stars and align', reason: 'There are no stars by daylight.' },
  {
    text: 'Set the finder on a star',
    reason: 'By day it is set on something far away, with an adult beside. Stars come later.',
  },
  { text: 'Get the eyes used to the dark', reason: 'That takes half an hour without white light.' },
];

function beforeItIsDark({ random }: ItemDraw) {
  return several({
    prompt: `${pickOne(random, scopes)} goes out tonight. The Sun is still up. Tick all that should be done before it is dark.`,
    explanation:
      'All that needs good light or sure feet is done before; caps and stars come after sunset.',
    right: pickSome(random, beforeDark, 3),
    wrong: pickSome(random, afterSunset, 2),
  });
}

const cautions = [
  {
    left: 'Unfolding the tripod',
    right: 'fingers in the hinges',
    reason: 'Hands keep to the middle of the leg.',
  },
  {
    left: 'Lifting tube and mount',
    right: 'a dropped load',
    reason: 'Two people, one of them counting aloud.',
  },
  {
    left: 'Setting the finder by day',
    right: 'the Sun',
    reason: 'With an adult, away from the Sun, in the shadow of a building.',
  },
  {
    left: 'Putting cells in',
    right: 'a hot or leaking battery',
    reason: 'One kind, all fresh, none the wrong way round.',
  },
  {
    left: 'The teacher’s adapter in damp grass',
    right: 'electric shock',
    reason: 'The mains outdoors is the teacher’s, dry and protected.',
  },
  {
    left: 'Walking about at night',
    right: 'tripping over legs and leads',
    reason: 'A dim red lamp, marked legs, leads tied away.',
  },
  {
    left: 'Standing still for two hours',
    right: 'cold',
    reason: 'Warmer clothes than you think, and a set end.',
  },
] as const;

function whichCaution({ random }: ItemDraw) {
  return match({
    prompt: `What must be watched at each of these, on an evening with ${pickOne(random, scopes)}?`,
    explanation: 'The caution comes before the step that meets the danger.',
    pairs: pickSome(random, cautions, 4),
  });
}

const whyOf: Readonly<Record<SitePlace, string>> = {
  grass: 'Firm and level, nothing above it, nobody walks there, no lamp near.',
  path: 'People walk there in the dark, and trip over the legs.',
  lamp: 'No eye gets used to the dark below a lamp.',
  tree: 'Branches hide the sky and drip, and roots lie about.',
  puddle: 'On soft ground the legs sink, and the level goes; and it is wet.',
  slope: 'On a steep slope a loaded tripod tips over, and so do people.',
};
const places: readonly SitePlace[] = ['grass', 'path', 'lamp', 'tree', 'puddle', 'slope'];

function whereToStand({ random }: ItemDraw) {
  const squares = random.shuffle(
    Array.from({ length: 24 }, (_, i) => ({ column: i % 6, row: Math.floor(i / 6) })),
  );
  const at = (i: number) => squares[i] ?? { column: 0, row: 0 };
  const site: Site = {
    grass: at(0),
    path: at(1),
    lamp: at(2),
    tree: at(3),
    puddle: at(4),
    slope: at(5),
  };
  const spot = (place: SitePlace) => ({
    ...siteSpot(site[place]),
    where: siteWhere(site[place]),
    reason: whyOf[place],
  });
  return point({
    prompt: `You look for a place for ${pickOne(random, scopes)} while it is light. Point at the best of the drawn places.`,
    drawing: drawSite(site),
    explanation: 'Firm, level, dry, dark, open to the sky, and out of everybody’s way.',
    right: spot('grass'),
    wrong: places.filter((place) => place !== 'grass').map(spot),
  });
}

/** The plan: go or not, what by daylight, where, and what to watch. */
export const planOfTheNight: ItemFamily = {
  id: 'plan-of-the-night',
  lesson: 'the-night',
  objective: 'plan',
  skill: 'safety',
  title: 'The plan of an evening',
  version: 2,
  templates: {
    'go-or-not': goOrNot,
    'the-evening': theEvening,
    'before-it-is-dark': beforeItIsDark,
    'which-caution': whichCaution,
    'where-to-stand': whereToStand,
  },
};
