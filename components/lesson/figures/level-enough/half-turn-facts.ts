import { bubblePlace, type BubblePlace } from '@/lib/levelling/vial';

/** A head that leans along one line, and a vial with a fault of its own along the same line. */
export type HalfTurn = {
  /** Positive towards the top of the drawing. */
  leanDeg: number;
  ownMm: number;
};

export const vials: readonly HalfTurn[] = [
  { leanDeg: 1, ownMm: 2 },
  { leanDeg: -0.5, ownMm: 3 },
  { leanDeg: 1.5, ownMm: 0 },
];

/** Where the bubble stands over the ground, the vial as it was or turned half round. */
export function bubbleOverGround({ leanDeg, ownMm }: HalfTurn, turned: boolean): BubblePlace {
  return bubblePlace(
    { tiltDeg: Math.abs(leanDeg), risesTowardsDeg: leanDeg >= 0 ? 0 : 180 },
    { markAzimuthDeg: turned ? 180 : 0, zeroRightMm: 0, zeroUpMm: ownMm },
  );
}

const away = (mm: number): string => {
  const half = Math.round(2 * Math.abs(mm)) / 2;
  if (half === 0) return 'in the middle';
  return `${String(half)} mm towards the ${mm > 0 ? 'tree' : 'gate'}`;
};

/** What has been seen so far, and what it says. */
export function halfTurnWords(one: HalfTurn, turned: boolean, seenBoth: boolean): string {
  const now = bubbleOverGround(one, turned).northMm;
  const before = bubbleOverGround(one, !turned).northMm;
  if (!seenBoth) return `The bubble stands ${away(now)}. Turn the vial half round to test it.`;
  const own = Math.abs(now - before) / 2;
  const head = (now + before) / 2;
  const lean = Math.abs(head) / 2;
  const moved =
    own < 0.25
      ? `The bubble stood ${away(before)} and stands there still. The vial is true.`
      : `The bubble stood ${away(before)}; now it stands ${away(now)}. Half the way, ${own.toFixed(1)} mm, is the vial’s own.`;
  const said =
    lean < 0.08
      ? 'Halfway between the two is the middle: the head is level.'
      : `Halfway between the two is ${Math.abs(head).toFixed(1)} mm off: the head leans by ${lean.toFixed(1)}°, high towards the ${head > 0 ? 'tree' : 'gate'}.`;
  return `${moved} ${said}`;
}
