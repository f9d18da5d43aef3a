import { capitalised } from '../../wording/capital';
import { answerKeyFor } from '../../pointing/answer-key-for';
import type { AnswerKey, Caution, UnusableReason } from '../../pointing/answer-key';
import { fieldRadiusArcmin } from '../../pointing/field-radius';
import { parseScenario } from '../../pointing/parse-scenario';
import type { Telescope } from '../../pointing/scenario';
import type { StarCatalogue } from '../../sky/catalogue';
import { skyFrameAt } from '../../sky/frame-at';
import { sunAltitudeDeg } from '../../sky/twilight';
import { directionFromAzAlt, separationDeg } from '../../units/vector';
import { randomFrom } from '../../variants/random';
import { dayInWords, type Position } from '../clock-and-place/drawn-sky';
import { whereabouts } from '../clock-and-place/words';
import type { ItemDraw, ItemWorld } from '../item-family';

/** A bright light over the horizon. */
export type Light = Position & {
  name: string;
  kind: 'star' | 'planet';
  magnitude: number;
  /** Null for a planet. */
  hip: number | null;
  /** By the answer key; a planet never is. */
  usable: boolean;
  reasons: readonly UnusableReason[];
  cautions: readonly Caution[];
};

export type DrawnEvening = {
  /**
   * "At 52° north, 5 December, 20:00": by local mean time, which with the latitude says what is up, whatever
   * the longitude.
   */
  when: string;
  latitudeDeg: number;
  ms: number;
  kit: { name: string; telescope: Telescope; fieldRadiusArcmin: number };
  /** At least 5° up, brightest first. */
  lights: readonly Light[];
  answerKey: AnswerKey;
};

/** Fainter than this nothing is taken for a star that may serve (V 2.5 and 0.7 more, with the air between). */
const faintestNeighbour = 4.5;
const brightOnly = new WeakMap<StarCatalogue, StarCatalogue>();

/** The bright part of a catalogue: an evening of it takes a tenth of the time. */
function brightPart(catalogue: StarCatalogue): StarCatalogue {
  const known = brightOnly.get(catalogue);
  if (known !== undefined) return known;
  const stars = catalogue.stars.filter(({ magnitude }) => magnitude <= faintestNeighbour);
  const made: StarCatalogue = { version: catalogue.version, stars, figures: [] };
  brightOnly.set(catalogue, made);
  return made;
}

/** Fainter ones nobody is asked about. */
const faintestLight = 2.6;
/** Below this it is dark enough for every star of the list. */
const darkDeg = -13;

/**
 * So many evenings are there to draw from: an answer key takes a hundredth of a second, which is nothing
 * to a learner and much to whoever draws thousands of questions. Stars, pairs and wording vary besides.
 */
const evenings = 160;
const drawnBefore = new WeakMap<StarCatalogue, Map<number, DrawnEvening>>();

/** A dark evening of 2026 or 2027 at longitude 0°, with the answer key of one of the telescopes. */
export function drawEvening({ random, world }: ItemDraw): DrawnEvening {
  const index = random.integer(0, evenings - 1);
  const known = drawnBefore.get(world.catalogue) ?? new Map<number, DrawnEvening>();
  drawnBefore.set(world.catalogue, known);
  const evening = known.get(index) ?? eveningOf(index, world);
  known.set(index, evening);
  return evening;
}

function eveningOf(index: number, world: ItemWorld): DrawnEvening {
  const random = randomFrom(`evening ${String(index)}`);
  for (;;) {
    const latitudeDeg = random.integer(36, 56);
    const ms = Date.UTC(2026, 0, 1 + random.integer(0, 729), 0, 30 * random.integer(36, 47));
    const place = { latitudeDeg, longitudeDeg: 0, elevationM: 0 };
    // Every winter evening is dark enough, so that this ends.
    if (sunAltitudeDeg(place, new Date(ms)) > darkDeg) continue;
    return eveningAt({
      latitudeDeg,
      ms,
      world,
      kitIndex: random.integer(0, world.kits.length - 1),
    });
  }
}

function eveningAt({
  latitudeDeg,
  ms,
  world,
  kitIndex,
}: {
  latitudeDeg: number;
  ms: number;
  world: ItemWorld;
  kitIndex: number;
}): DrawnEvening {
  const kit = world.kits[kitIndex];
  const eyepiece = kit?.eyepieces.find(({ id }) => id === kit.observingEyepieceId);
  if (kit === undefined || eyepiece === undefined) throw new Error('a kit has its eyepiece');
  const { focalLengthMm, apparentFieldDeg } = eyepiece;
  const parsed = parseScenario({
    place: { latitudeDeg, longitudeDeg: 0 },
    localTime: new Date(ms).toISOString().slice(0, 16),
    timeZone: 'UTC',
    telescope: kit.telescope,
    eyepiece: { focalLengthMm, apparentFieldDeg },
  });
  if (!parsed.ok) throw new Error('an evening of a kit is a scenario');
  const { scenario, instant } = parsed;
  const frame = skyFrameAt({ instant, place: scenario.place });
  const catalogue = brightPart(world.catalogue);
  const answerKey = answerKeyFor({
    scenario,
    instant,
    frame,
    catalogue,
    faintestListed: faintestLight,
  });
  const named = new Set(catalogue.stars.flatMap(({ hip, name }) => (name === null ? [] : [hip])));
  const stars = answerKey.stars
    .filter(({ hip }) => named.has(hip))
    .map((star): Light => ({ ...star, kind: 'star' }));
  const planets = frame.planets.map(({ body, azimuthDeg, altitudeDeg, magnitude }): Light => ({
    name: capitalised(body),
    kind: 'planet',
    azimuthDeg,
    altitudeDeg,
    magnitude,
    hip: null,
    usable: false,
    reasons: [],
    cautions: [],
  }));
  const clock = new Date(ms).toISOString().slice(11, 16);
  return {
    when: `At ${String(latitudeDeg)}° north, ${dayInWords(ms)}, ${clock}`,
    latitudeDeg,
    ms,
    answerKey,
    kit: {
      name: kit.name,
      telescope: kit.telescope,
      fieldRadiusArcmin: fieldRadiusArcmin(kit.telescope, { focalLengthMm, apparentFieldDeg }),
    },
    lights: [...stars, ...planets]
      .filter(({ altitudeDeg, magnitude }) => altitudeDeg >= 5 && magnitude <= faintestLight)
      .sort((a, b) => a.magnitude - b.magnitude),
  };
}

export const apartDeg = (one: Position, other: Position): number =>
  separationDeg(
    directionFromAzAlt(one.azimuthDeg, one.altitudeDeg),
    directionFromAzAlt(other.azimuthDeg, other.altitudeDeg),
  );

export const whole = (value: number): string => String(Math.round(value)).replace('-', '−');
export const magnitudeInWords = (magnitude: number): string =>
  `magnitude ${magnitude.toFixed(1).replace('-', '−').replace('−0.0', '0.0')}`;

/** "Vega, in the west, 3 fists up". */
export const lightInWords = (light: Light): string => `${light.name}, ${whereabouts(light)}`;

/** What speaks against a light, in the words of the lesson; null when nothing does. */
export function objection(light: Light): { code: string; reason: string } | null {
  if (light.kind === 'planet') {
    return {
      code: 'planet',
      reason: 'It is a planet: it wanders, and so it is not on the mount’s list of stars.',
    };
  }
  const [first] = light.reasons;
  if (first === undefined) return null;
  const altitude = `${light.altitudeDeg.toFixed(0)}°`;
  switch (first.code) {
    case 'too-low':
      return {
        code: 'too-low',
        reason: `At ${altitude} it is below 20°: the air dims it, lifts it and makes it unsteady.`,
      };
    case 'too-high':
      return {
        code: 'too-high',
        reason: `At ${altitude} it is above 70°: up there a small step is a huge step in azimuth.`,
      };
    case 'variable':
      return {
        code: 'variable',
        reason: 'Its light changes by a lot, so nobody can be sure to know it again.',
      };
    case 'near-moon':
      return { code: 'near-moon', reason: 'It stands beside the Moon, which drowns it.' };
    case 'too-faint':
      return {
        code: 'too-faint',
        reason: `With ${magnitudeInWords(light.magnitude)} it is fainter than 2.5.`,
      };
    case 'sky-too-bright':
      return { code: 'sky-too-bright', reason: 'The sky is too bright for it: it is hard to see.' };
    case 'no-name':
    case 'behind-horizon':
    case 'behind-cloud':
      return { code: first.code, reason: 'It cannot be seen, or the mount does not know it.' };
  }
}

/** Whether a light is that far from each limit of altitude that nobody who counts fists can doubt it, degrees. */
export const clearOfLimits = ({ altitudeDeg }: Position, byDeg = 1.5): boolean =>
  [20, 70].every((limit) => Math.abs(altitudeDeg - limit) > byDeg);
