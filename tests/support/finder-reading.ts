import type { FieldOffset, ImageOrientation } from '@/lib/optics/image-orientation';
import { asSeen } from '@/lib/optics/image-orientation';

const nowhere: FieldOffset = { rightArcmin: 0, upArcmin: 0 };

/**
 * How far the tube has to go so that a thing told of in the eyepiece's words comes to the middle; null
 * where the words do not tell of it.
 */
export function tubeWayFrom(
  words: string,
  name: string,
  { radiusArcmin, orientation }: { radiusArcmin: number; orientation: ImageOrientation },
): FieldOffset | null {
  const found = new RegExp(
    `${name} is (in the middle|towards (\\d+) o’clock, (at the edge|one tenth|(\\d+) tenths))`,
    'i',
  ).exec(words);
  if (found === null) return null;
  const [, place, hour, out, tenths] = found;
  if (place === 'in the middle') return nowhere;
  const share = out === 'at the edge' ? 1 : out === 'one tenth' ? 0.1 : Number(tenths) / 10;
  const turn = (Number(hour) / 6) * Math.PI;
  const size = share * radiusArcmin;
  return asSeen(
    { rightArcmin: size * Math.sin(turn), upArcmin: size * Math.cos(turn) },
    orientation,
  );
}

/** Where a thing stands beside the red dot, from the finder's words; null where it is not in the window. */
export function besideDotFrom(words: string): FieldOffset | null {
  if (words.includes('right under the dot')) return nowhere;
  const across = /(\d+)′ to the (right|left) of the dot/.exec(words);
  const upward = /(\d+)′ (above|below) (?:it|the dot)/.exec(words);
  if (across === null && upward === null) return null;
  const sized = (found: RegExpExecArray | null, plus: string): number =>
    found === null ? 0 : Number(found[1]) * (found[2] === plus ? 1 : -1);
  return { rightArcmin: sized(across, 'right'), upArcmin: sized(upward, 'above') };
}

/** A size as presses of buttons that each give one of these steps, the largest first. */
export function pressesFor(
  size: number,
  steps: readonly number[],
): { step: number; times: number }[] {
  let left = Math.abs(size);
  return [...steps]
    .sort((one, other) => other - one)
    .map((step, i) => {
      const times =
        i === steps.length - 1 ? Math.round(left / step) : Math.floor(left / step + 1e-9);
      left -= times * step;
      return { step, times };
    })
    .filter(({ times }) => times > 0);
}

/** How far two screws must turn to bring the dot by `wanted`, from what a turn of each was seen to do. */
export function turnsFrom(
  wanted: FieldOffset,
  one: FieldOffset,
  two: FieldOffset,
): readonly [number, number] {
  const area = one.rightArcmin * two.upArcmin - one.upArcmin * two.rightArcmin;
  return [
    (wanted.rightArcmin * two.upArcmin - wanted.upArcmin * two.rightArcmin) / area,
    (one.rightArcmin * wanted.upArcmin - one.upArcmin * wanted.rightArcmin) / area,
  ];
}
