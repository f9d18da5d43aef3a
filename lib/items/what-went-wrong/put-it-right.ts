import { faultIds, type CureId, type FaultId } from '../../faults/fault-ids';
import { faultOf } from '../../faults/faults';
import { pickOne } from '../../variants/pick-one';
import { choice, match } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { cureReason, cureText, happened } from './fault-phrases';
import { needsAligning, safeHands, stepsOfCure } from './safe-hands';

const cureOf = (fault: FaultId): CureId => {
  const [cure] = faultOf(fault).cures;
  if (cure === undefined) throw new Error(`nothing cures ${fault}`);
  return cure;
};

/** Faults with cures that differ. */
function someFaults(draw: ItemDraw, count: number): readonly FaultId[] {
  const taken = new Set<CureId>();
  return draw.random
    .shuffle(faultIds)
    .filter((fault) => {
      const cure = cureOf(fault);
      if (taken.has(cure)) return false;
      taken.add(cure);
      return true;
    })
    .slice(0, count);
}

function cureMatch(draw: ItemDraw) {
  const kit = pickOne(draw.random, draw.world.kits);
  const who = pickOne(draw.random, [
    'Four classes',
    'Four evenings',
    'Four pupils',
    'Four friends',
  ]);
  return match({
    prompt: `${who}, one ${kit.name}, four faults. What puts each one right?`,
    pairs: someFaults(draw, 4).map((fault) => ({
      left: happened[fault],
      right: cureText[cureOf(fault)],
      reason: cureReason[cureOf(fault)],
    })),
    explanation: 'The cure goes to the cause. An alignment alone cures only what no longer is.',
  });
}

function whichCure(draw: ItemDraw) {
  const { random, world } = draw;
  const kit = pickOne(random, world.kits);
  const [fault, ...others] = someFaults(draw, 4);
  if (fault === undefined) throw new Error('there are faults');
  const cure = cureOf(fault);
  return choice({
    prompt: `At ${kit.name} you have found out: ${happened[fault].charAt(0).toLowerCase()}${happened[fault].slice(1)}. What puts it right?`,
    right: { text: cureText[cure], reason: cureReason[cure] },
    wrong: others.map((other) => ({
      text: cureText[cureOf(other)],
      reason: `That is for another fault: ${happened[other].charAt(0).toLowerCase()}${happened[other].slice(1)}.`,
    })),
    explanation: cureReason[cure],
  });
}

const alignAgain = [
  'tripod-bumped',
  'clutch-unlocked',
  'cable-snag',
  'tube-slips',
  'supply-reset',
] as const satisfies readonly FaultId[];

function onlyAlignAgain({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const fault = pickOne(random, alignAgain);
  const cure = cureOf(fault);
  const again = pickOne(random, [
    'aligns again at once',
    'starts a new alignment',
    'aligns once more',
  ]);
  const other = pickOne(
    random,
    alignAgain.filter((one) => one !== fault),
  );
  return choice({
    prompt: `${happened[fault]} during an evening with ${kit.name}. Somebody ${again} and does nothing else. What will come of it?`,
    right: {
      text: `It may soon be spoilt again: before aligning, ${cureText[cure].charAt(0).toLowerCase()}${cureText[cure].slice(1).split(/,| and /)[0] ?? ''}`,
      reason: cureReason[cure],
    },
    wrong: [
      {
        text: 'All is well again: a new alignment takes every fault out for good',
        reason: 'It takes out how the mount stands now. It cannot keep it from moving again.',
        misconception: 'align-again-cures-all',
      },
      {
        text: 'Nothing comes of it: the mount keeps its old alignment and points as before',
        reason: 'A new alignment takes the place of the old one.',
      },
      {
        text: `It was no use: ${cureText[cureOf(other)].charAt(0).toLowerCase()}${cureText[cureOf(other)].slice(1)}, that is what was needed`,
        reason: `That is for another fault: ${happened[other].charAt(0).toLowerCase()}${happened[other].slice(1)}.`,
      },
    ],
    explanation: 'Mend the cause, then align, then check on a third star.',
  });
}

/** The cure that goes to the cause, done with care. */
export const putItRight: ItemFamily = {
  id: 'put-it-right',
  lesson: 'what-went-wrong',
  objective: 'cure',
  skill: 'diagnose',
  title: 'What puts it right, and safely',
  version: 2,
  templates: {
    'cure-match': cureMatch,
    'which-cure': whichCure,
    'only-align-again': onlyAlignAgain,
    'steps-of-cure': stepsOfCure,
    'safe-hands': safeHands,
    'needs-aligning': needsAligning,
  },
};
