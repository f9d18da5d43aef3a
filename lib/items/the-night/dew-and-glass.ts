import { choice, numeric, order, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { telescopeNames as scopes } from '../power-without-smoke/draw-needs';
import { pickOne, pickSome } from '../../variants/pick-one';
import { dewPointByRuleC, dewPointC, isDewy } from '../../night/dew-point';
import { drawThermometers } from '../../drawings/draw-thermometers';

const round1 = (value: number): number => Math.round(10 * value) / 10;
const degrees = (celsius: number): string => `${String(celsius).replace('-', '−')} °C`;
const forms =
  'Dew forms on what is as cold as the dew point or colder. Glass under a clear sky gets colder than the air.';

function dewPointByRule({ random }: ItemDraw) {
  const airC = random.integer(2, 18);
  const humidity = 5 * random.integer(11, 19);
  const key = round1(dewPointC(airC, humidity));
  return numeric({
    prompt: `The air has ${degrees(airC)} and a humidity of ${String(humidity)} %. By the rule of thumb, one degree below the air for every 5 % below 100 %, about where is the dew point?`,
    unit: 'degrees Celsius',
    key,
    tolerance: { mode: 'absolute', full: 1.3, zero: 4 },
    explanation: `${String(100 - humidity)} % below 100 % come to ${humidity === 95 ? '1 degree' : `${String((100 - humidity) / 5)} degrees`}: ${degrees(airC)} less that is ${degrees(dewPointByRuleC(airC, humidity))}. Reckoned exactly it is ${degrees(key)}.`,
    slips: [
      {
        gives: airC,
        reason: 'At the air’s own temperature dew forms only when the humidity is 100 %.',
      },
      {
        gives: airC + (100 - humidity) / 5,
        reason: 'The dew point lies below the air’s temperature, never above it.',
      },
      {
        gives: (100 - humidity) / 5,
        reason: 'So far the dew point lies below the air. Take it from the air’s temperature.',
      },
    ].filter(({ gives }) => Math.abs(gives - key) > 2),
  });
}

function readTheMargin({ random }: ItemDraw) {
  const airC = random.integer(3, 16);
  const margin = random.integer(2, 8);
  const dewC = airC - margin;
  return numeric({
    prompt: `One thermometer shows the air at ${pickOne(random, scopes)}, the other the dew point. By how many degrees may the glass get colder than the air before it dews over?`,
    drawing: drawThermometers(
      { title: 'air', celsius: airC },
      { title: 'dew point', celsius: dewC },
    ),
    unit: 'degrees',
    key: margin,
    tolerance: { mode: 'absolute', full: 0.5, zero: 3 },
    explanation: `${degrees(airC)} less ${degrees(dewC)} are ${String(margin)} degrees.`,
    slips: [
      {
        gives: dewC,
        reason: 'That is the dew point itself. Asked is how far the air is above it.',
      },
      { gives: 2 * margin, reason: 'Each line is one degree, not two.' },
    ].filter(({ gives }) => Math.abs(gives - margin) > 1),
  });
}

function predictTheDew({ random }: ItemDraw) {
  // Warm and damp enough that no glass gets to 0 °C, where it would be frost.
  const airC = random.integer(8, 16);
  const humidity = 5 * random.integer(14, 18);
  const dewC = Math.round(dewPointC(airC, humidity));
  const below = pickOne(random, [1, 2, 3, 4, 5, 6]);
  // Never within a degree of the limit.
  const glassC = Math.abs(airC - below - dewC) <= 1 ? dewC - 2 : airC - below;
  const dewy = isDewy(glassC, airC, humidity);
  const gap = Math.abs(glassC - dewC);
  const apart = `${String(gap)} degrees`;
  return choice({
    prompt: `The air at ${pickOne(random, scopes)} has ${degrees(airC)}, the dew point is ${degrees(dewC)}. Under the clear sky the front glass has cooled to ${degrees(glassC)}. Predict what is on the glass.`,
    explanation: forms,
    afterwards: {
      ...drawThermometers(
        { title: dewy ? 'glass: wet' : 'glass: dry', celsius: glassC },
        { title: 'dew point', celsius: dewC },
      ),
      alternative: `The glass at ${degrees(glassC)}, the dew point at ${degrees(dewC)}: the glass is ${dewy ? 'wet' : 'dry'}.`,
    },
    right: {
      text: dewy
        ? `Dew: at ${degrees(glassC)} it is ${apart} below the dew point`
        : `Nothing: at ${degrees(glassC)} it is ${apart} above the dew point`,
      reason: dewy
        ? 'Colder than the dew point, so water forms on it.'
        : 'It has not come down to the dew point.',
    },
    wrong: [
      dewy
        ? {
            text: 'Nothing: it does not rain and no fog falls',
            reason: 'Dew does not fall. It forms where it is cold enough.',
            misconception: 'dew-falls' as const,
          }
        : {
            text: 'Dew: at night it falls on everything',
            reason: 'Dew does not fall. It forms where it is cold enough.',
            misconception: 'dew-falls' as const,
          },
      dewy
        ? {
            text: `Nothing: the air is ${String(airC - dewC)} degrees above the dew point`,
            reason: 'The air is, the glass is not. The glass is what counts.',
          }
        : {
            text: `Dew: it is ${String(airC - glassC)} degrees colder than the air`,
            reason:
              'Colder than the air is not enough. It would have to be as cold as the dew point.',
          },
      {
        text: dewy
          ? `Frost: at ${degrees(glassC)} it is ${apart} below the dew point`
          : `Frost: it is below the air’s ${degrees(airC)}`,
        reason: 'Frost needs glass below 0 °C that is also at the dew point.',
      },
    ],
  });
}

const helping = [
  { text: 'Put the dew shield on', reason: 'It hides the glass from most of the cold sky.' },
  { text: 'Cap the tube between looks', reason: 'Under a cap the glass does not face the sky.' },
  {
    text: 'Point the tube below level while it waits',
    reason: 'Then the glass faces the ground, which is warmer than the sky.',
  },
  {
    text: 'Cap the eyepiece that is not in use and keep it in a pocket',
    reason: 'A little warmth keeps it above the dew point.',
  },
  {
    text: 'Let wet glass dry by itself, indoors, caps off',
    reason: 'The water goes without a trace and without a scratch.',
  },
];
const harming = [
  { text: 'Wipe the glass with a sleeve', reason: 'Dust and cloth scratch the coating for good.' },
  { text: 'Breathe on the glass to warm it', reason: 'Breath is moist: it puts more water on.' },
  { text: 'Run a hair dryer on a lead through the grass', reason: 'Mains in wet grass can kill.' },
  {
    text: 'Shut the wet tube tight in its case',
    reason: 'It stays wet for days, and mould grows on the glass.',
  },
  {
    text: 'Leave all caps off, so that the wind dries it',
    reason: 'Open to the sky it gets colder still.',
  },
];

function keepItDry({ random }: ItemDraw) {
  return several({
    prompt: `The air is damp, and ${pickOne(random, scopes)}’s glass begins to mist. Tick all that is right.`,
    explanation: 'Keep the glass from the sky and a little warm, and never wipe it.',
    right: pickSome(random, helping, random.integer(2, 3)),
    wrong: pickSome(random, harming, 2),
  });
}

function dryingOut({ random }: ItemDraw) {
  const what = pickOne(random, [
    'came in with dew on its glass',
    'is wet all over after a foggy evening',
    'was packed in a hurry when the drizzle came',
    'has mist on its front after a clear, damp night',
  ]);
  return order({
    prompt: `${pickOne(random, scopes)} ${what}. Put in order what is done with it.`,
    explanation:
      'Caps on for the way in, off to dry, on again for the case. No cloth touches the glass.',
    steps: [
      'Outside: caps on, so that the cold glass meets no warm, damp air at once',
      'Carry it into a dry room',
      'When it is as warm as the room, take the caps off and let it dry by itself',
      'Dry all over: caps on again',
      'Shut it in its case',
    ],
    rules: [
      { first: 0, then: 1, reason: 'warm room air would dew on cold open glass.' },
      { first: 1, then: 2, reason: 'outside it does not get dry.' },
      { first: 2, then: 3, reason: 'wet glass under a cap stays wet.' },
      { first: 3, then: 4, reason: 'a case is no place for open glass, nor for a wet tube.' },
    ],
  });
}

/** Dew point, cold glass, and what keeps it dry. */
export const dewAndGlass: ItemFamily = {
  id: 'dew-and-glass',
  lesson: 'the-night',
  objective: 'dew',
  skill: 'safety',
  title: 'Dew, and dry glass',
  version: 2,
  templates: {
    'dew-point-by-rule': dewPointByRule,
    'read-the-margin': readTheMargin,
    'predict-the-dew': predictTheDew,
    'keep-it-dry': keepItDry,
    'drying-out': dryingOut,
  },
};
