import type { Creep } from '@/lib/balance/creep';
import type { FigureKit } from '../figure-data';
import {
  clutchArmMm,
  creepWhenRaised,
  letGo,
  pullShare,
  wholeTube,
  type LoosePart,
  type RaisedTube,
} from './tube-facts';

const ends: Readonly<Record<Creep['moves'], string>> = {
  front: 'The front sinks.',
  back: 'The back sinks.',
  holds: 'It stays where it is.',
};

/** What the figure of the clamp shows, before and after the hand leaves the tube. */
export function clampWords(
  kit: FigureKit,
  on: readonly LoosePart[],
  clampMm: number,
  held: boolean,
): string {
  const whole = wholeTube(kit, on);
  const grips = `The clamp grips ${kit.name} at ${String(clampMm)} mm.`;
  if (held) return `${grips} A hand holds the tube level. Which end is heavy?`;
  const { moves } = letGo(kit, on, clampMm);
  const apart = Math.round(Math.abs(clampMm - whole.alongMm));
  const cure =
    moves === 'holds'
      ? ''
      : ` Slide the tube ${moves === 'front' ? 'back' : 'forward'}, a hand under it.`;
  return `${grips} ${ends[moves]} All together balances at ${String(Math.round(whole.alongMm))} mm, ${String(apart)} mm from the clamp; the clutch takes about ${String(clutchArmMm)} mm.${cure}`;
}

/** What the figure of the raised tube shows. */
export function raisedWords(tube: RaisedTube, altitudeDeg: number): string {
  const share = pullShare(tube, altitudeDeg);
  const { moves, restDeg } = creepWhenRaised(tube, altitudeDeg);
  const end = share >= 0 ? 'front' : 'back';
  const pull =
    Math.abs(share) < 0.05
      ? 'its weight pulls neither way'
      : `its weight pulls the ${end} down with ${Math.abs(share).toFixed(1)} of what the clutch holds`;
  const then =
    moves === 'holds'
      ? 'It stays.'
      : `It creeps ${moves === 'front' ? 'down' : 'up'} to ${String(Math.round(restDeg))}° before it comes to rest.`;
  return `At ${String(Math.round(altitudeDeg))}° ${pull}. ${then}`;
}
