import { cellResistanceOhm } from '../../power/cell';
import { bayCount } from '../../power/holder';
import { nightAhead, type PowerNight } from '../../power/night';
import { choice, match, numeric, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { pickOne, pickSome } from '../../variants/pick-one';
import { drawDials } from './draw-dials';
import { drawMeter } from '../../drawings/draw-meter';
import { telescopeNames } from './draw-needs';
import { drawNight } from './draw-night';
import { degreesText, voltsText } from '../../drawings/label-words';
import { kindNames } from '../../drawings/row-of-cells';

/** A slip that happens to come out near the key is no slip of this question. */
const awayFrom = <S extends { gives: number }>(key: number, near: number, slips: S[]): S[] =>
  slips.filter(({ gives }) => Math.abs(gives - key) > 2 * near);

const round1 = (value: number): number => Math.round(10 * value) / 10;
const round2 = (value: number): number => Math.round(100 * value) / 100;

function voltsAtThePeak({ random }: ItemDraw) {
  const { needs, kind, temperatureC, ahead } = drawNight(random);
  const ohm = round2(cellResistanceOhm({ kind, left: 1 }, temperatureC));
  const lost = needs.slewingA * bayCount * ohm;
  const key = round2(ahead.openV - lost);
  return numeric({
    prompt: `Eight cells in a row make ${voltsText(ahead.openV)} without a load. In this cold each of them has ${String(ohm)} ohms inside. A slew takes ${String(needs.slewingA)} A. How many volts are left at the plug?`,
    unit: 'volts',
    key,
    tolerance: { mode: 'absolute', full: 0.15, zero: 1 },
    explanation: `Volts lost are amperes times ohms: ${String(needs.slewingA)} × 8 × ${String(ohm)} = ${lost.toFixed(1)}. ${voltsText(ahead.openV)} less that is ${voltsText(key)}.`,
    slips: awayFrom(key, 0.15, [
      {
        gives: round2(ahead.openV - needs.slewingA * ohm),
        reason: 'You counted the ohms of one cell. The current passes through all eight.',
      },
      {
        gives: round2(lost),
        reason: 'Those are the volts lost. Take them from what the cells make.',
      },
      {
        gives: round2(ahead.openV),
        reason: 'That is without a load. As soon as a current flows, some volts are lost inside.',
      },
    ]),
  });
}

function readTheDials({ random }: ItemDraw) {
  const tracking = random.integer(20, 24) / 2;
  const slewing = tracking - random.integer(2, 11) / 2;
  return numeric({
    prompt: `Two dials at ${pickOne(random, telescopeNames)}’s plug: one while it tracks, one while it slews. By how many volts does the slew pull the supply down?`,
    drawing: drawDials(tracking, slewing),
    unit: 'volts',
    key: tracking - slewing,
    tolerance: { mode: 'absolute', full: 0.25, zero: 1.5 },
    explanation: `${voltsText(tracking)} while tracking, ${voltsText(slewing)} while slewing: ${voltsText(tracking - slewing)} are lost.`,
    slips: awayFrom(tracking - slewing, 0.25, [
      { gives: slewing, reason: 'That is what is left while slewing, not what is lost.' },
      {
        gives: 2 * (tracking - slewing),
        reason: 'You counted each short mark as a volt. There are two marks to a volt.',
      },
    ]),
  });
}

function predictTheSlew({ random }: ItemDraw) {
  const night = drawNight(random);
  const { needs, ahead, kind, temperatureC } = night;
  const onAt = (volts: number) => `It runs on, at ${voltsText(volts)}`;
  const againAt = (volts: number) => `It restarts, at ${voltsText(volts)}`;
  const { slewingV, openV } = ahead;
  const oneCell = openV - (openV - slewingV) / bayCount;
  return choice({
    prompt: `${pickOne(random, telescopeNames)} runs on eight fresh ${kindNames[kind]} cells at ${degreesText(temperatureC)}: ${voltsText(openV)} without a load, ${ahead.resistanceOhm.toFixed(1)} ohms in all. It restarts below ${voltsText(needs.resetBelowV)}. Predict what a slew at ${String(needs.slewingA)} A does.`,
    explanation: `${voltsText(openV)} − ${String(needs.slewingA)} A × ${ahead.resistanceOhm.toFixed(1)} ohms is about ${voltsText(slewingV)}, ${ahead.resets ? 'below' : 'above'} ${voltsText(needs.resetBelowV)}.`,
    afterwards: drawMeter({
      volts: slewingV,
      amperes: needs.slewingA,
      title: ahead.resets ? 'While slewing: the computer restarts' : 'While slewing: it runs on',
    }),
    right: {
      text: ahead.resets ? againAt(slewingV) : onAt(slewingV),
      reason: ahead.resets
        ? 'Too few volts: the computer starts afresh and its alignment is gone.'
        : 'The volts fall, but stay high enough for the computer.',
    },
    wrong: [
      {
        text: onAt(openV),
        reason: 'Those are the volts without a load. A current costs volts inside the cells.',
      },
      {
        text: onAt(oneCell),
        reason: 'That counts the ohms of one cell. The current passes through all eight.',
      },
      {
        text: ahead.resets ? onAt(slewingV) : againAt(slewingV),
        reason: ahead.resets
          ? `The volts are right, but they are below ${voltsText(needs.resetBelowV)}.`
          : `The volts are right, but they are not below ${voltsText(needs.resetBelowV)}.`,
      },
    ],
  });
}

/** A change to the evening, tried on the engine. */
type Change = { text: string; change: Partial<PowerNight>; why: string };

function changesOf({ temperatureC, needs, kind }: PowerNight): Change[] {
  const gentler = { ...needs, slewingA: needs.slewingA / 2 };
  return [
    {
      text: 'Keep the holder warm inside a coat all evening',
      change: { temperatureC: 20 },
      why: 'At 20 °C the same cells have fewer ohms inside, so fewer volts are lost.',
    },
    {
      text: `Take ${kindNames['nickel-metal-hydride']} cells, all charged`,
      change: { kind: 'nickel-metal-hydride' },
      why: 'They make fewer volts at rest, but have so few ohms that more are left in a slew.',
    },
    {
      text: 'Take fresh lithium cells',
      change: { kind: 'lithium' },
      why: 'They have fewer ohms inside, in the cold above all.',
    },
    {
      text: 'Slew at a lower speed, with one motor at a time',
      change: { needs: gentler },
      why: 'Half the current costs half the volts.',
    },
    {
      text: `Take eight other fresh ${kindNames[kind]} cells, just as cold`,
      change: {},
      why: 'The same cells at the same temperature lose the same volts.',
    },
    {
      text: 'Switch off and on again before each slew',
      change: {},
      why: 'That changes no volt of a slew, and the alignment is lost each time.',
    },
    {
      text: 'Observe for a shorter time',
      change: { hours: 1 },
      why: 'Fresh cells fall that far in the first slew. It is no matter of hours.',
    },
    {
      text: `Lay the cells in the grass, at ${degreesText(temperatureC - 10)}`,
      change: { temperatureC: temperatureC - 10 },
      why: 'Colder cells have more ohms inside.',
    },
  ];
}

function whatHelps({ random }: ItemDraw) {
  const night = drawNight(random, ({ ahead, kind }) => ahead.resets && kind === 'alkaline');
  const tried = changesOf(night).map((one) => ({
    text: one.text,
    reason: one.why,
    helps: !nightAhead({ ...night, ...one.change }).resets,
  }));
  const right = pickSome(
    random,
    tried.filter(({ helps }) => helps),
    2,
  );
  const wrong = pickSome(
    random,
    tried.filter(({ helps }) => !helps),
    3,
  );
  return several({
    prompt: `On eight fresh alkaline cells at ${degreesText(night.temperatureC)} a slew at ${String(night.needs.slewingA)} A leaves ${voltsText(night.ahead.slewingV)}, and ${pickOne(random, telescopeNames)} restarts. Tick all that would keep it above ${voltsText(night.needs.resetBelowV)}.`,
    explanation:
      'Volts are lost as amperes times ohms. Fewer ohms or fewer amperes help; more hours do not.',
    right: right.map(({ text, reason }) => ({ text, reason })),
    wrong: wrong.map(({ text, reason }) => ({ text, reason })),
  });
}

function matchTheReadings({ random }: ItemDraw) {
  const needs = { resetBelowV: 7.2 };
  const low = needs.resetBelowV - random.integer(5, 20) / 10;
  const fine = needs.resetBelowV + random.integer(10, 25) / 10;
  const rest = pickOne(random, [11.8, 12, 12.1, 12.2]);
  const pairs = pickSome(
    random,
    [
      {
        left: `${voltsText(rest)} at rest, ${voltsText(fine)} in a slew`,
        right: 'it serves',
        reason: `Even in a slew there are more than ${voltsText(needs.resetBelowV)}.`,
      },
      {
        left: `${voltsText(rest)} at rest, ${voltsText(low)} in a slew`,
        right: 'it will restart: too weak',
        reason: `In a slew there are fewer than ${voltsText(needs.resetBelowV)}.`,
      },
      {
        left: `${voltsText(-rest)} at rest`,
        right: 'plus and minus are exchanged',
        reason: 'A minus on the meter: leave the switch off.',
      },
      {
        left: '– – V',
        right: 'a bay is empty, or a lead is off',
        reason: 'An open circuit: nothing can flow.',
      },
      {
        left: `${voltsText(rest - 3)} at rest, with fresh cells`,
        right: 'one cell is the wrong way round',
        reason: 'One turned cell takes away 3 V.',
      },
      {
        left: `${voltsText(pickOne(random, [18, 19, 24]))} at rest`,
        right: 'too many volts: never switch on',
        reason: 'The telescope is made for 12 V.',
      },
    ],
    4,
  );
  return match({
    prompt: `A meter at the plug of ${pickOne(random, telescopeNames)}’s supply, eight cells of 1.5 V or another pack. The computer restarts below ${voltsText(needs.resetBelowV)}. What does each reading say?`,
    explanation: `Look at the sign first, then at the volts at rest, then at the volts in a slew. ${voltsText(round1(rest))} is right for eight cells.`,
    pairs,
  });
}

/** What a slew does to the volts, and what may be done about it. */
export const voltsWhileSlewing: ItemFamily = {
  id: 'volts-while-slewing',
  lesson: 'power-without-smoke',
  objective: 'sag',
  skill: 'power',
  title: 'What a slew does to the volts',
  version: 1,
  templates: {
    'volts-at-the-peak': voltsAtThePeak,
    'read-the-dials': readTheDials,
    'predict-the-slew': predictTheSlew,
    'what-helps': whatHelps,
    'match-the-readings': matchTheReadings,
  },
};
