import { capitalised } from '../wording/capital';
import type { SkyObjectId } from '../pointing/answer-key';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { mergedStarOf } from '../pointing/merged-stars';
import { seenSky } from '../pointing/seen-sky';
import type { ConfirmedMoment } from '../alignment/run';
import type { RunInput } from '../alignment/run-input';
import type { FieldOffset } from '../optics/image-orientation';
import { offsetFromTube } from '../optics/tube-offset';
import { turnedFrame } from '../sky/turned-frame';
import { separationDeg } from '../units/vector';

/** What stood in the eyepiece when "This is the star" was pressed. */
export type ReallyInField = {
  meant: { hip: number; name: string; azimuthDeg: number; altitudeDeg: number };
  /** Null for an empty field. */
  really: { id: SkyObjectId; name: string } | null;
  right: boolean;
  /** From the star that was meant to what was confirmed; 0 where they are one or nothing was. */
  separationDeg: number;
  /** From the middle of the field to what was confirmed, or to the star that was meant. */
  offsetArcmin: number;
  /** The same as a place beside the tube's axis; null behind it. */
  offset: FieldOffset | null;
  fieldRadiusArcmin: number;
};

// How lights are weighed against each other is ours, without a source.
/** A light ten times fainter than another is not taken for it … */
const fainterByMagnitudes = 2.5;
/** … unless, being among those that a finder shows well, it was brought towards the middle. */
const finderMagnitude = 5;
const towardsMiddleShare = 0.5;
/** Centred as well as full marks ask for, it is the star, whatever else shines at the field's edge. */
export const centredShare = 0.2;

/**
 * Which light was confirmed: the star that was meant when it is well centred or outshines all else in
 * the centring eyepiece, else what is well centred, else the brightest light in the field. Stars come
 * as the eye sees them, close components as one.
 */
export function reallyInField(input: RunInput, moment: ConfirmedMoment): ReallyInField {
  const { catalogue, scenario, frame, kit } = input;
  const star = mergedStarOf(catalogue, moment.hip);
  if (star === undefined) throw new Error(`star ${moment.hip} was gone to and is in no catalogue`);
  const now = turnedFrame(frame, scenario.place.latitudeDeg, moment.atMs / 1000);
  // Lower in the sky a star may look fainter by a magnitude and more than its V says.
  const faintest = Math.max(finderMagnitude, star.magnitude + 2 * fainterByMagnitudes);
  const sky = seenSky({
    scenario,
    frame: now,
    catalogue,
    keep: (one) => one.magnitude <= faintest,
  });
  const meant = sky.stars.find(({ hip }) => hip === star.hip);
  if (meant === undefined) throw new Error(`star ${star.hip} is not in its own sky`);

  const radius = fieldRadiusArcmin(scenario.telescope, kit.centringEyepiece);
  const { tube, tubeUp } = moment.view;
  const lights = [
    ...sky.stars.map((one) => ({ ...one, id: `hip-${one.hip}` as const })),
    ...sky.planets.map((one) => ({ ...one, id: one.body, name: capitalised(one.body) })),
  ]
    .map((light) => ({ ...light, share: (separationDeg(tube, light.direction) * 60) / radius }))
    .filter(
      ({ share, looksMagnitude }) =>
        share <= towardsMiddleShare ||
        (share <= 1 && looksMagnitude <= meant.looksMagnitude + fainterByMagnitudes),
    )
    .sort((a, b) => a.looksMagnitude - b.looksMagnitude);
  const [brightest] = lights;
  const inField = lights.find(({ id }) => id === `hip-${meant.hip}`);
  const centred = lights.find(
    ({ share, looksMagnitude }) =>
      share <= centredShare &&
      looksMagnitude <= (brightest?.looksMagnitude ?? 0) + fainterByMagnitudes,
  );
  const isMeant = inField !== undefined && (inField === brightest || inField.share <= centredShare);
  const found = (isMeant ? inField : (centred ?? brightest)) ?? null;
  const shown = found?.direction ?? meant.direction;
  const { hip, name, azimuthDeg, altitudeDeg } = meant;
  return {
    meant: { hip, name, azimuthDeg, altitudeDeg },
    really: found && { id: found.id, name: found.name },
    right: found?.id === `hip-${hip}`,
    separationDeg: separationDeg(shown, meant.direction),
    offsetArcmin: separationDeg(tube, shown) * 60,
    offset: offsetFromTube(tube, tubeUp, shown),
    fieldRadiusArcmin: radius,
  };
}
