import { wrap180 } from '../units/angle';
import type { SettingAction } from './setting';
import type { AzAlt } from './way-past-sun';

/** No setting of a finder needs more; a page that runs on for ever is stopped here. */
export const mostActions = 800;

/** A bend of the way smaller than this is no bend, degrees. */
const straightDeg = 0.05;
/** A straight piece of the way is joined to the one before only up to this length, degrees. */
const longestJoinedDeg = 3;

/**
 * The record with one more action. What leaves no trace is joined to what was done before it: the way of
 * a capped tube, the straight way of an open one, a screw turned on and on. `capsOn` before the action.
 */
export function recorded(
  actions: readonly SettingAction[],
  action: SettingAction,
  capsOn: boolean,
): readonly SettingAction[] {
  const last = actions.at(-1);
  const joins =
    last !== undefined &&
    (action.do === 'turn'
      ? last.do === 'turn' && last.screw === action.screw
      : action.do === 'move'
        ? last.do === 'move' && (capsOn || straightOn(actions.at(-2), last, action))
        : last.do === action.do && (action.do === 'companion' || action.do === 'stand') && capsOn);
  return [...(joins ? actions.slice(0, -1) : actions), action];
}

/** Whether a move goes on in the direction of the one before. */
function straightOn(before: SettingAction | undefined, last: AzAlt, next: AzAlt): boolean {
  if (before?.do !== 'move') return false;
  const [x, y] = fromTo(before, next);
  const [lastX, lastY] = fromTo(before, last);
  const size = Math.hypot(x, y);
  if (size === 0 || size > longestJoinedDeg) return false;
  const ahead = (lastX * x + lastY * y) / size;
  const aside = Math.abs(lastX * y - lastY * x) / size;
  return ahead >= 0 && ahead <= size && aside < straightDeg;
}

const fromTo = (from: AzAlt, to: AzAlt): [number, number] => [
  wrap180(to.azimuthDeg - from.azimuthDeg),
  to.altitudeDeg - from.altitudeDeg,
];
