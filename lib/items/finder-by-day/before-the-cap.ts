import type { Companion, StandingPlace } from '../../finder/day-hazard';
import { hazardsAtEnd, settingAfterAll, type SettingStart } from '../../finder/setting';
import { nearestToSunDeg } from '../../finder/way-past-sun';
import { choice, order, several } from '../build-item';
import { inNumber } from '../eyepieces-and-views/words';
import { pickOne } from '../../variants/pick-one';
import type { ItemDraw, ItemFamily } from '../item-family';
import { drawFar } from './day-scene';
import { whereToStand } from './where-to-stand';

const companions: Readonly<Record<Companion, readonly string[]>> = {
  nobody: ['Nobody else is there.', 'You are alone.'],
  classmate: ['A classmate helps you.', 'Your best friend stands by.', 'An older pupil helps.'],
  adult: ['Your teacher stays beside it.', 'A grown-up of the club stands by and stays.'],
};
const stands: Readonly<Record<StandingPlace, readonly string[]>> = {
  'open-ground': ['on the open grass', 'in the middle of the sunny yard', 'on the playing field'],
  'under-a-tree': ['under a big tree', 'in the broken shade of a birch'],
  'building-shadow': ['in the shadow of the school', 'behind the gym, in its shadow'],
};

/** One opening of a tube by day, judged by the same rules as in the lab. */
function hazardsOf(who: Companion, where: StandingPlace, fromSunDeg: number) {
  const start: SettingStart = {
    tube: { azimuthDeg: 180 + fromSunDeg, altitudeDeg: 0 },
    eyepiece: 'low',
    dot: { rightArcmin: 0, upArcmin: 0 },
    adjusters: [
      { alongDeg: 0, arcminPerTurn: 12 },
      { alongDeg: 90, arcminPerTurn: 12 },
    ],
    locked: false,
    targetId: null,
    sun: { azimuthDeg: 180, altitudeDeg: 0 },
    hasDusk: false,
  };
  const state = settingAfterAll(start, [
    { do: 'companion', who },
    { do: 'stand', where },
    { do: 'caps', on: false },
    { do: 'caps', on: true },
  ]);
  return state === null ? [] : hazardsAtEnd(state).map(({ id }) => id);
}

function whatIsMissing({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const wrong = pickOne(random, ['adult', 'shadow', 'sun', 'nothing'] as const);
  const who: Companion = wrong === 'adult' ? pickOne(random, ['nobody', 'classmate']) : 'adult';
  const where: StandingPlace =
    wrong === 'shadow' ? pickOne(random, ['open-ground', 'under-a-tree']) : 'building-shadow';
  const fists = wrong === 'sun' ? pickOne(random, [1, 2]) : pickOne(random, [4, 5, 6, 7, 8]);
  const found = hazardsOf(who, where, fists * 10);
  const [whoTold, whereTold] = [pickOne(random, companions[who]), pickOne(random, stands[where])];
  const distance = `${String(fists)} ${fists === 1 ? 'fist' : 'fists'}`;
  const options = {
    adult: {
      text: `An adult who stays beside ${kit.name}`,
      reason: found.includes('no-adult')
        ? 'By day an adult opens it, or stands by all the time, and sees that nobody looks or turns it towards the Sun.'
        : 'An adult is there and stays. That is as it should be.',
    },
    shadow: {
      text: `A place for ${kit.name} where a building hides the Sun`,
      reason: found.includes('not-in-shadow')
        ? 'In the shadow of a building the Sun cannot come into view, whoever bumps into the tube. Leaves and open ground let it in.'
        : 'It stands in the shadow of a building already.',
    },
    sun: {
      text: `A target farther from the Sun than ${distance}`,
      reason: found.includes('near-sun')
        ? `Three fists, ${String(nearestToSunDeg)}°, are the least. ${distance} are too near.`
        : `${distance} from the Sun are enough: three, ${String(nearestToSunDeg)}°, are the least.`,
    },
    nothing: {
      text: `Nothing: with the adult beside ${kit.name} it may be opened`,
      reason:
        found.length === 0
          ? `Adult, shadow, and ${distance} from the Sun: all three hold.`
          : 'One thing is missing, and each of the three must hold.',
    },
  };
  const hour = pickOne(random, ['Ten in the morning', 'Noon', 'Two o’clock', 'Four o’clock']);
  const { [wrong]: right, ...others } = options;
  return choice({
    prompt: `${hour}, a clear sky. ${kit.name} stands ${whereTold}, capped, and points ${distance} away from the Sun. ${whoTold} What is missing before the cap may come off?`,
    explanation: `By day three things must hold: an adult who stays, the shadow of a building, and ${String(nearestToSunDeg)}° between tube and Sun.`,
    right,
    wrong: Object.values(others),
  });
}

const needed = [
  ['An adult stays beside it all the time', 'Someone must watch that nobody looks at the Sun.'],
  ['A building hides the Sun from it', 'Then the Sun cannot come into view, whatever is bumped.'],
  ['It points three fists or more from the Sun', '30° is the least for tube and finder.'],
  ['The capped tube has been turned to the target', 'Turned open, it could sweep past the Sun.'],
] as const;
const notNeeded = [
  ['The strongest eyepiece is in', 'Start with the weakest: it shows the most.'],
  ['A thin cloud is in front of the Sun', 'Cloud is no cap. It lets enough through to burn.'],
  ['Everyone has sunglasses on', 'Sunglasses are no help against gathered sunlight.'],
  ['A tree gives it some shade', 'Leaves let the Sun through.'],
  ['The motors are on', 'Nothing on the ground needs following.'],
  ['A friend promises to be careful', 'A promise is no adult and no shadow.'],
] as const;

function whatMustHold({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const { name } = drawFar(random);
  return several({
    prompt: `You want to set the finder of ${kit.name} on a ${name} by day. Which of these must hold before the cap comes off?`,
    explanation:
      'An adult, a building’s shadow, three fists from the Sun, and the way there with the cap on. Nothing else makes it safe.',
    right: random
      .shuffle(needed)
      .slice(0, random.integer(2, 3))
      .map(([text, reason]) => ({ text, reason })),
    wrong: random
      .shuffle(notNeeded)
      .slice(0, 2)
      .map(([text, reason]) => ({
        text,
        reason,
        ...(/cloud|sunglasses/i.test(text) ? { misconception: 'sun-harmless' as const } : {}),
      })),
  });
}

function inWhichOrder({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const { name, distanceM } = drawFar(random);
  return order({
    prompt: `By day, with a ${name} ${inNumber(distanceM)} m away to set the finder of ${kit.name} on: in which order?`,
    explanation:
      'First the place and the adult, then the way with the cap on, and only then light comes in. The cap goes on before the adult goes.',
    steps: [
      'Put the capped telescope into the shadow of a building, an adult beside it',
      `Turn the capped tube towards the ${name}, three fists or more from the Sun`,
      'Take the caps off tube and finder',
      'Set the dot',
      'Put both caps back on',
      'The adult may go',
    ],
    rules: [
      { first: 0, then: 1, reason: 'where it stands decides what is safe to point at.' },
      { first: 1, then: 2, reason: 'an open tube that is turned may sweep past the Sun.' },
      { first: 2, then: 3, reason: 'with the caps on there is nothing to see.' },
      { first: 3, then: 4, reason: 'the caps go on as soon as the work is done.' },
      { first: 4, then: 5, reason: 'an open telescope is never left alone by day.' },
    ],
  });
}

/** What must hold before a cap comes off by day. */
export const beforeTheCap: ItemFamily = {
  id: 'before-the-cap',
  lesson: 'finder-by-day',
  objective: 'before-cap',
  skill: 'safety',
  title: 'Before a cap comes off by day',
  version: 2,
  templates: {
    'what-is-missing': whatIsMissing,
    'what-must-hold': whatMustHold,
    'in-which-order': inWhichOrder,
    'where-to-stand': whereToStand,
  },
};
