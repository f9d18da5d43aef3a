import type { Evidence, Landing } from '../faults/evidence';
import type { StarCatalogue } from '../sky/catalogue';
import { placeCatalogue } from '../sky/star-places';
import { looks, type FaultVariant, type Look } from './fault-variant';

/** One question to the evening: a look at an item of evidence, or the one test slew, by HIP number. */
export type FaultAsk = Look | { testSlew: number };

/** Where a star stood when the evening began, for words and drawings. */
export type StarPlace = { azimuthDeg: number; altitudeDeg: number };
type StarPlaces = Readonly<Record<number, StarPlace>>;

/** What has been seen of an evening: all of it that may leave the server before the answer. */
export type FaultSeen = {
  evidence: Partial<Evidence>;
  /** Where the test slew landed; null while there was none. */
  testSlew: Landing | null;
  /** By HIP number, for the stars of these slews. */
  places: StarPlaces;
};

type Asked = { looked: readonly Look[]; testSlew: number | null };

/** What these looks and this test slew show; a slew to a star that was not offered shows nothing. */
export function faultSeen(
  { evidence, testSlews, frame }: FaultVariant,
  { looked, testSlew: hip }: Asked,
  catalogue: StarCatalogue,
): FaultSeen {
  const testSlew = testSlews.find((slew) => slew.hip === hip) ?? null;
  const shown: Partial<Evidence> = Object.fromEntries(
    looks.filter((look) => looked.includes(look)).map((look) => [look, evidence[look]]),
  );
  const landings = [shown.first, shown.second, ...(shown.later ?? []), testSlew];
  return {
    evidence: shown,
    testSlew,
    places: starPlaces(
      landings.flatMap((landing) => landing?.hip ?? []),
      frame,
      catalogue,
    ),
  };
}

/** What one question shows. */
export const faultPiece = (
  variant: FaultVariant,
  ask: FaultAsk,
  catalogue: StarCatalogue,
): FaultSeen =>
  faultSeen(
    variant,
    typeof ask === 'string'
      ? { looked: [ask], testSlew: null }
      : { looked: [], testSlew: ask.testSlew },
    catalogue,
  );

/** Both together. */
export const seenWith = (before: FaultSeen, piece: FaultSeen): FaultSeen => ({
  evidence: { ...before.evidence, ...piece.evidence },
  testSlew: before.testSlew ?? piece.testSlew,
  places: { ...before.places, ...piece.places },
});

/** Where stars stand at a frame's moment, refracted; those the catalogue lacks are left out. */
export function starPlaces(
  hips: readonly number[],
  frame: FaultVariant['frame'],
  catalogue: StarCatalogue,
): StarPlaces {
  const { azimuthDeg, altitudeDeg } = placeCatalogue(catalogue, frame);
  const places: Record<number, StarPlace> = {};
  catalogue.stars.forEach(({ hip }, index) => {
    if (!hips.includes(hip)) return;
    places[hip] = { azimuthDeg: azimuthDeg[index] ?? 0, altitudeDeg: altitudeDeg[index] ?? 0 };
  });
  return places;
}
