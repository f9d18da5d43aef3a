import 'server-only';
import { loadKits } from '@/lib/content/sky-catalogue';
import { fieldRadiusArcmin } from '@/lib/pointing/field-radius';
import { pairWorth } from '@/lib/pointing/pair-worth';
import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';

type Position = { azimuthDeg: number; altitudeDeg: number };

/**
 * What aligning the Heron kit on two stars of the front page's drawing would be worth. Computed when
 * the page is made, so that the drawing never promises what the lab does not give.
 */
export function drawnPair(
  one: Position,
  other: Position,
): { separationDeg: number; hitRate: number } {
  const kit = loadKits().find(({ id }) => id === 'heron');
  const eyepiece = kit?.eyepieces.find(({ id }) => id === kit.observingEyepieceId);
  if (kit === undefined || eyepiece === undefined) throw new Error('the kit Heron is missing');
  const { hitRate } = pairWorth(
    kit.telescope,
    fieldRadiusArcmin(kit.telescope, eyepiece),
    one,
    other,
  );
  return {
    separationDeg: separationDeg(
      directionFromAzAlt(one.azimuthDeg, one.altitudeDeg),
      directionFromAzAlt(other.azimuthDeg, other.altitudeDeg),
    ),
    hitRate,
  };
}
