import { headSlope, tiltOf } from '../../levelling/head-slope';
import type { LegIndex } from '../../levelling/tripod';
import { vialMm } from '../../levelling/vial';
import { radiansToDegrees } from '../../units/angle';
import type { Random } from '../../variants/random';
import { choice, match, numeric } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import {
  afterChange,
  leaningHead,
  legAndOthers,
  legMmPerDeg,
  legNames,
  reachesOf,
  type LeaningHead,
} from './leaning-head';
import { placeAt, placeWords, vialShowing } from './vial-drawing';
import { figures, grounds, one } from './words';

const lengthMm = 900;

/** A head whose bubble stands on one leg's own line, on that leg's side or opposite. */
function onALine(random: Random, mm: number): { head: LeaningHead; leg: LegIndex; high: boolean } {
  const { leg } = legAndOthers(random);
  const high = random.next() < 0.5;
  const legADeg = 30 * random.integer(0, 11);
  const head = leaningHead({
    legADeg,
    tiltDeg: radiansToDegrees(Math.asin(mm / vialMm.curvatureRadius)),
    risesTowardsDeg: (legADeg + 120 * leg + (high ? 0 : 180)) % 360,
    footCircleRadiusMm: one(random, [360, 400, 450, 500, 550]),
    splayDeg: one(random, [20, 24, 28]),
  });
  return { head, leg, high };
}

function mmForBubble({ random }: ItemDraw) {
  const mm = random.integer(3, 16) / 2;
  const { head, leg, high } = onALine(random, mm);
  const perDeg = Math.round(legMmPerDeg(head.site));
  const [reach] = reachesOf(head);
  if (reach?.leg !== leg) throw new Error('the leg on whose line it stands does most');
  const key = Math.abs(reach.toMm - lengthMm);
  const way = high ? 'in' : 'out';
  return numeric({
    prompt: `Two millimetres of bubble are one degree, and on this tripod ${String(perDeg)} mm of one leg are one degree. How far must leg ${legNames[leg]} go ${way}?`,
    drawing: vialShowing(head.site, head.bubble),
    unit: 'millimetres',
    key,
    tolerance: { mode: 'relative', full: 0.1, zero: 0.35 },
    explanation: `${figures(mm, 1)} mm of bubble are ${figures(mm / 2, 2)}°, and ${figures(mm / 2, 2)} × ${String(perDeg)} mm is about ${figures((mm / 2) * perDeg)} mm.`,
    slips: [
      {
        gives: mm * perDeg,
        reason: `You took ${figures(mm, 1)} mm of bubble for ${figures(mm, 1)}°. Two millimetres make one degree, so it is half of that.`,
      },
      {
        gives: mm,
        reason: `${figures(mm, 1)} mm is how far the bubble stands off. The leg has to go farther: the head is small, the tripod is wide.`,
      },
    ],
  });
}

/** Height under one foot that tips a head by 1°, millimetres: the triangle of feet is 1.5 r deep. */
const heightPerDeg = (radiusMm: number): number => 1.5 * radiusMm * Math.tan(Math.PI / 180);

function sunkFoot({ random }: ItemDraw) {
  const radiusMm = one(random, [360, 400, 450, 500, 550]);
  const perDeg = heightPerDeg(radiusMm);
  const sinksMm = random.integer(6, 24);
  const foot = one(random, legNames);
  const feet = [0, 120, 240].map((azimuthDeg, index) => ({
    azimuthDeg,
    heightMm: index === 0 ? -sinksMm : 0,
  }));
  const { tiltDeg } = tiltOf(headSlope(radiusMm, feet));
  const asked = `the head was level ${one(random, grounds)}. Then foot ${foot} sinks ${String(sinksMm)} mm into the ground. On this tripod ${figures(perDeg)} mm of height under one foot are one degree.`;
  return numeric({
    prompt: `With the bubble in its ring ${asked} By how much does the head lean now?`,
    unit: 'degrees',
    key: tiltDeg,
    tolerance: { mode: 'relative', full: 0.1, zero: 0.4 },
    explanation: `${String(sinksMm)} ÷ ${figures(perDeg)} is about ${figures(tiltDeg, 1)}°. The bubble now stands ${figures(2 * tiltDeg, 1)} mm off, on the side away from foot ${foot}.`,
    slips: [
      {
        gives: Number(((2 * sinksMm) / perDeg).toFixed(2)),
        reason: `That is how many millimetres the bubble stands off. Two of them are one degree.`,
      },
      {
        gives: Number((sinksMm * perDeg).toFixed(0)),
        reason: 'You multiplied. More millimetres to the degree means fewer degrees: divide.',
      },
    ],
  });
}

function bubbleAfter({ random }: ItemDraw) {
  const mm = random.integer(8, 16) / 2;
  const { head, leg, high } = onALine(random, mm);
  const perMm = legMmPerDeg(head.site) / 2;
  // A quarter to all of it, never so near that two answers read alike.
  const walks = random.integer(2, Math.floor(mm));
  const byMm = Math.round(walks * perMm);
  const after = afterChange(head, leg, high ? -byMm : byMm);
  const way = high ? 'in' : 'out';
  const at = (left: number) => placeWords(placeAt(left, head.risesTowardsDeg));
  const left = Math.round(2 * (mm - walks)) / 2;
  const text = (where: string) => `Now ${where}`;
  const wrongs = [
    {
      text: text(at(mm + walks)),
      reason: `It went the other way: leg ${legNames[leg]} is on the ${high ? 'high' : 'low'} side, and going ${way} it makes the head more level.`,
      misconception: 'bubble-shows-low-side' as const,
    },
    {
      text: text(at(mm - walks / 2)),
      reason: `${String(byMm)} ÷ ${figures(perMm, 1)} is ${String(walks)} mm of bubble, not ${figures(walks / 2, 1)}. That rule already counts in millimetres of bubble.`,
    },
    {
      text: text(at(mm)),
      reason: 'Then the leg would have done nothing. Each millimetre of it moves the bubble.',
    },
  ];
  return choice({
    prompt:
      `On this tripod ${figures(perMm, 1)} mm of leg move the bubble by 1 mm. You let leg ${legNames[leg]} ${way} by ${String(byMm)} mm. Where does the bubble stand then?`.replace(
        'let leg',
        high ? 'take leg' : 'let leg',
      ),
    drawing: vialShowing(head.site, head.bubble),
    afterwards: vialShowing(head.site, after.bubble, head.bubble),
    explanation: `${String(byMm)} ÷ ${figures(perMm, 1)} is ${String(walks)}: the bubble walks ${String(walks)} mm towards the middle, from ${figures(mm, 1)} mm to ${figures(left, 1)} mm.`,
    right: {
      text: text(at(left)),
      reason: `It walked ${String(walks)} of its ${figures(mm, 1)} mm.`,
    },
    wrong: wrongs,
  });
}

function wideOrNarrow({ random }: ItemDraw) {
  const radii = random
    .shuffle([300, 360, 420, 480, 540, 600])
    .slice(0, 3)
    .sort((a, b) => a - b);
  const heightMm = random.integer(8, 20);
  const tilt = (radiusMm: number): string => {
    const feet = [0, 120, 240].map((azimuthDeg, index) => ({
      azimuthDeg,
      heightMm: index === 0 ? heightMm : 0,
    }));
    return `${tiltOf(headSlope(radiusMm, feet)).tiltDeg.toFixed(1)}°`;
  };
  return match({
    prompt: `Three level tripods stand on the ground, their feet nearer to the middle or farther from it. Under one foot of each you push a board ${String(heightMm)} mm thick. How far does each head lean?`,
    explanation:
      'The wider the feet stand, the less a millimetre does: the head turns about the line through the two other feet, and that line is farther away.',
    pairs: radii.map((radiusMm) => ({
      left: `Feet ${String(radiusMm)} mm from the middle`,
      right: tilt(radiusMm),
      reason: `${String(heightMm)} mm over ${figures(1.5 * radiusMm)} mm, from the lifted foot to the line of the others, is a slope of ${tilt(radiusMm)}.`,
    })),
  });
}

/** Millimetres of bubble, of leg, of ground. */
export const howFarTheLeg: ItemFamily = {
  id: 'how-far-the-leg',
  lesson: 'level-enough',
  objective: 'far',
  skill: 'level',
  title: 'How far the leg has to go',
  version: 2,
  templates: {
    'mm-for-bubble': mmForBubble,
    'sunk-foot': sunkFoot,
    'bubble-after': bubbleAfter,
    'wide-or-narrow': wideOrNarrow,
  },
};
