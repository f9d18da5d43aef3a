/**
 * Play between motor and tube. The reading follows the motor, the tube hangs back: with a final
 * approach of +1 it stands at the reading while the axis rises and stays behind, by at most the play,
 * when it falls. `lag` is tube minus reading: within [0, play] for an approach of +1, [−play, 0] for
 * −1. Any one unit of angle. This is the play operator of hysteresis theory (Visintin 1994), from memory.
 */
export function lagAfter(lag: number, moved: number, play: number, approach: 1 | -1): number {
  const least = approach === 1 ? 0 : -play;
  const most = approach === 1 ? play : 0;
  return Math.min(Math.max(lag - moved, least), most);
}
