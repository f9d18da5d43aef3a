import type { FieldOffset } from '../optics/image-orientation';
import { degreesToRadians } from '../units/angle';

/** One of the finder's two set screws: which way a turn to the right carries the dot, and how far. */
export type Adjuster = {
  /** On the sky as seen from behind the tube: from the right, counted towards up, degrees. */
  alongDeg: number;
  arcminPerTurn: number;
};
export type Adjusters = readonly [Adjuster, Adjuster];
export type Turns = readonly [number, number];

const perTurn = ({ alongDeg, arcminPerTurn }: Adjuster): FieldOffset => ({
  rightArcmin: arcminPerTurn * Math.cos(degreesToRadians(alongDeg)),
  upArcmin: arcminPerTurn * Math.sin(degreesToRadians(alongDeg)),
});

/**
 * Where the dot points beside the tube, arcminutes, after so many turns of the two screws from where it
 * stood. Each moves it along a straight line; the lines need not be square to each other. Flat to a
 * part in a thousand within 2°.
 */
export function dotAfterTurns(
  atFirst: FieldOffset,
  [first, second]: Adjusters,
  turns: Turns,
): FieldOffset {
  const one = perTurn(first);
  const two = perTurn(second);
  return {
    rightArcmin: atFirst.rightArcmin + turns[0] * one.rightArcmin + turns[1] * two.rightArcmin,
    upArcmin: atFirst.upArcmin + turns[0] * one.upArcmin + turns[1] * two.upArcmin,
  };
}

/**
 * How far each screw must be turned to carry the dot by an offset; inverse of {@link dotAfterTurns}.
 *
 * @throws {RangeError} for two screws that move the dot along one line: no such finder is built.
 */
export function turnsToMove(by: FieldOffset, [first, second]: Adjusters): Turns {
  const one = perTurn(first);
  const two = perTurn(second);
  const area = one.rightArcmin * two.upArcmin - one.upArcmin * two.rightArcmin;
  if (Math.abs(area) < 1e-9) throw new RangeError('both screws move the dot along one line');
  return [
    (by.rightArcmin * two.upArcmin - by.upArcmin * two.rightArcmin) / area,
    (one.rightArcmin * by.upArcmin - one.upArcmin * by.rightArcmin) / area,
  ];
}
