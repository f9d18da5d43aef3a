import { nearestSignpost } from '@/components/sky/directions';
import {
  bubbleOf,
  legIndices,
  tiltOfHead,
  vialNow,
  type LegIndex,
  type TripodSite,
  type TripodState,
} from '@/lib/levelling/tripod';
import type { NotPossible, TripodAction } from '@/lib/levelling/tripod-actions';
import type { LevelVariant } from '@/lib/variants/bench/level/level-variant';
import { radiansToDegrees, wrap180, wrap360 } from '@/lib/units/angle';

export const legName = (leg: LegIndex): string => ['A', 'B', 'C'][leg] ?? '';

/** To a hundredth below one degree, where that is what is left; else to a tenth. */
export const degreesText = (deg: number): string =>
  `${deg < 0.995 ? deg.toFixed(2).replace(/0$/, '') : deg.toFixed(1)}°`;

/** To a quarter of a millimetre, as an eye reads a bubble. */
const quarters = (mm: number): number => Math.round(mm * 4) / 4;
const quarterText = (mm: number): string =>
  `${quarters(mm)
    .toFixed(2)
    .replace(/\.?0+$/, '')} mm`;

const onCircle = (deg: number): number => wrap360(10 * Math.round(deg / 10));

/** The bubble is read from beside the vial: with a leg open its reader is down at the lock. */
export const vialIsCovered = ({ template }: LevelVariant, state: TripodState): boolean =>
  template === 'read-then-move' && state.legs.some(({ open }) => open);

/** On a turned vial directions are read from its own mark, else from the legs around it. */
export const readsFromMark = ({ template }: LevelVariant): boolean => template === 'turned-vial';

/** Where in the vial the bubble stands, as an eye places it: never finer. */
export function bubbleInWords(variant: LevelVariant, state: TripodState): string {
  if (vialIsCovered(variant, state)) return 'out of sight while a leg is open';
  const { site } = variant;
  const { eastMm, northMm, atTheWall } = bubbleOf(site, state);
  const mm = Math.hypot(eastMm, northMm);
  if (quarters(mm) === 0) return 'in the middle of its ring';
  const azimuthDeg = radiansToDegrees(Math.atan2(eastMm, northMm));
  const from = readsFromMark(variant)
    ? { name: 'the vial’s mark', azimuthDeg: vialNow(site, state).markAzimuthDeg }
    : { name: 'leg A', azimuthDeg: site.legs[0].azimuthDeg };
  const clockwise = onCircle(azimuthDeg - from.azimuthDeg);
  const direction =
    clockwise === 0 ? `towards ${from.name}` : `${String(clockwise)}° clockwise from ${from.name}`;
  return atTheWall
    ? `at the wall of its glass, ${direction}`
    : `${quarterText(mm)} from the middle, ${direction}`;
}

/** How far off, without the direction: for one short line. */
export function bubbleInShort(variant: LevelVariant, state: TripodState): string {
  if (vialIsCovered(variant, state)) return 'out of sight';
  const { eastMm, northMm, atTheWall } = bubbleOf(variant.site, state);
  const mm = Math.hypot(eastMm, northMm);
  return atTheWall
    ? 'at the wall'
    : quarters(mm) === 0
      ? 'in the middle'
      : `${quarterText(mm)} off`;
}

/** The side that stands high, told by the legs. */
export function sideInWords(site: TripodSite, azimuthDeg: number): string {
  const apart = (leg: LegIndex) => Math.abs(wrap180(azimuthDeg - site.legs[leg].azimuthDeg));
  const [near = 0, next = 0] = [...legIndices].sort((a, b) => apart(a) - apart(b));
  if (apart(near) <= 30) return `towards leg ${legName(near)}`;
  const pair = [legName(near), legName(next)].sort();
  return `between legs ${pair.join(' and ')}`;
}

export const windInWords = (azimuthDeg: number): string => nearestSignpost(azimuthDeg).word;

export const notPossibleWords: Readonly<Record<NotPossible, string>> = {
  'one-leg-at-a-time':
    'Another leg is open. Lock it first: with two legs loose the tripod goes over.',
  locked: 'This leg is locked. Open its lock first.',
  'out-of-range': 'The leg is at its end and goes no further that way.',
  'nothing-to-do': 'That changes nothing.',
  'does-not-turn': 'The arm stays where it is.',
};

/** What the status line says of an action that was done. */
export function happenedInWords(
  variant: LevelVariant,
  before: TripodState,
  after: TripodState,
  action: TripodAction,
): string {
  if (after.ranIn !== null && before.ranIn === null)
    return `Leg ${legName(after.ranIn)} ran in under the tube: its lock was open and nobody held the weight. Outdoors the telescope goes over.`;
  const bubble = `Bubble ${bubbleInWords(variant, after)}.`;
  switch (action.do) {
    case 'tread-in':
      return variant.site.legs[action.leg].sinksMm > 0
        ? `Foot ${legName(action.leg)} went in by ${String(variant.site.legs[action.leg].sinksMm)} mm, and now it is firm. ${bubble}`
        : `Foot ${legName(action.leg)} stands firm: it went in no further.`;
    case 'open':
      return `Leg ${legName(action.leg)} is open. Hold it while it slides, fingers clear of the joint.`;
    case 'slide':
      return `Leg ${legName(action.leg)} ${String(action.toMm)} mm. ${bubble}`;
    case 'lock':
      return `Leg ${legName(action.leg)} is locked. ${bubble}`;
    case 'turn-arm':
      return `The arm went round by half a turn. ${bubble}`;
    case 'tube-on':
      return tubeOnInWords(variant, before, after);
    case 'tube-off':
      return 'The tube is off again, laid down safely.';
    case 'hold':
      return 'A second pair of hands has the weight.';
    case 'let-go':
      return 'The tripod carries the weight again.';
  }
}

function tubeOnInWords(variant: LevelVariant, before: TripodState, after: TripodState): string {
  const { site } = variant;
  const sank = legIndices.find(
    (leg) => site.legs[leg].sinksMm > 0 && !before.legs[leg].sunk && after.legs[leg].sunk,
  );
  const bubble = `Bubble ${bubbleInWords(variant, after)}.`;
  return sank === undefined
    ? `The tube is on. ${bubble}`
    : `The tube is on, and foot ${legName(sank)} sank by ${String(site.legs[sank].sinksMm)} mm. ${bubble}`;
}

/** "0.35° off level, rising towards leg B" */
export function tiltInWords(site: TripodSite, state: TripodState): string {
  const { tiltDeg, risesTowardsDeg } = tiltOfHead(site, state);
  return `${degreesText(tiltDeg)} off level, rising ${sideInWords(site, risesTowardsDeg)}`;
}
