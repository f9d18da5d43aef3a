import { canBeBegun, runEvening, type EveningShown } from '../../faults/evening';
import type { Landing } from '../../faults/evidence';
import type { FaultId } from '../../faults/fault-ids';
import { faultOf } from '../../faults/faults';
import type { Evening, FaultSizes } from '../../faults/faulty-evening';
import { parseScenario } from '../../pointing/parse-scenario';
import { drawEvening } from '../../variants/draw-evening';
import { nightAt, type Night } from '../../variants/night';
import { randomFrom } from '../../variants/random';
import type { ItemDraw, ItemKit, ItemWorld } from '../item-family';

/** Four evenings, one on each side of the equator and of Greenwich; winter and summer time. */
const scenes = [
  {
    place: { latitudeDeg: 52, longitudeDeg: -2 },
    localTime: '2026-12-05T19:30',
    timeZone: 'Europe/London',
  },
  {
    place: { latitudeDeg: 45.4, longitudeDeg: -75.7 },
    localTime: '2026-10-10T20:30',
    timeZone: 'America/Toronto',
  },
  {
    place: { latitudeDeg: -37.8, longitudeDeg: 145 },
    localTime: '2026-08-14T20:00',
    timeZone: 'Australia/Melbourne',
  },
  {
    place: { latitudeDeg: 35.7, longitudeDeg: 139.7 },
    localTime: '2027-03-03T20:00',
    timeZone: 'Asia/Tokyo',
  },
] as const;

type Scene = { kit: ItemKit; night: Night };
const known = new WeakMap<ItemWorld['catalogue'], Map<number, Scene>>();

/** An ephemeris and a ranking of pairs: done once for each of the few evenings, not for each question. */
function sceneOf(world: ItemWorld, index: number): Scene {
  const scenesKnown = known.get(world.catalogue) ?? new Map<number, Scene>();
  known.set(world.catalogue, scenesKnown);
  const before = scenesKnown.get(index);
  if (before !== undefined) return before;
  const kit = world.kits[index % world.kits.length];
  const eyepiece = kit?.eyepieces.find(({ id }) => id === kit.observingEyepieceId);
  if (kit === undefined || eyepiece === undefined) throw new Error('no telescope to set up');
  const parsed = parseScenario({
    ...scenes[index],
    telescope: kit.telescope,
    eyepiece: {
      focalLengthMm: eyepiece.focalLengthMm,
      apparentFieldDeg: eyepiece.apparentFieldDeg,
    },
  });
  if (!parsed.ok) throw new Error(`an evening of the questions is no scenario: ${String(index)}`);
  const scene = { kit, night: nightAt(parsed.scenario, parsed.instant, world.catalogue).night };
  scenesKnown.set(index, scene);
  return scene;
}

export type SomeEvening = { evening: Evening; sizes: FaultSizes; kit: ItemKit; place: string };

const placeText = ({ place }: (typeof scenes)[number]): string =>
  `${String(Math.round(Math.abs(place.latitudeDeg)))}° ${place.latitudeDeg < 0 ? 'south' : 'north'}`;

/** So many different evenings: enough that none comes up often, and few enough to be reckoned once. */
const eveningsKept = 12;
const evenings = new WeakMap<ItemWorld['catalogue'], Map<number, SomeEvening>>();

/** One of a few evenings, each made once. */
export function someEvening({ random, world }: ItemDraw): SomeEvening {
  const kept = evenings.get(world.catalogue) ?? new Map<number, SomeEvening>();
  evenings.set(world.catalogue, kept);
  const number = random.integer(0, eveningsKept - 1);
  const made = kept.get(number) ?? eveningNumber(number, world);
  kept.set(number, made);
  return made;
}

/**
 * An evening on which nothing went wrong, of steady hands: north and level as found by a careful eye, so
 * that what a fault does stands out from what hands do.
 */
function eveningNumber(number: number, world: ItemWorld): SomeEvening {
  const index = number % scenes.length;
  const random = randomFrom(`evening ${String(number)}`);
  const { kit, night } = sceneOf(world, index);
  const centringEyepiece = kit.eyepieces.find(({ id }) => id === kit.centringEyepieceId);
  const scene = scenes[index];
  if (centringEyepiece === undefined || scene === undefined)
    throw new Error('an evening of nothing');
  for (;;) {
    const drawn = drawEvening({
      random,
      night,
      catalogue: world.catalogue,
      kit: { centringEyepiece },
    });
    if (drawn === null) continue;
    const { evening, sizes } = drawn;
    const { start } = evening.habits;
    const steady: Evening = {
      ...evening,
      setup: { ...evening.setup, base: { ...evening.setup.base, tiltDeg: 0.1 } },
      habits: {
        ...evening.habits,
        start: {
          ...start,
          azimuthDeg: start.azimuthDeg / 3,
          altitudeDeg: start.altitudeDeg / 3,
        },
      },
    };
    if (runEvening(steady).evidence.outcome.kind !== 'agree') continue;
    return { evening: steady, sizes, kit, place: placeText(scene) };
  }
}

/** One way in which a fault happened, and what it showed. */
export type Way = { way: Evening; signature: Signature };
const waysKnown = new WeakMap<SomeEvening, Map<FaultId, readonly Way[]>>();

/** Every way in which a fault can happen on an evening, that the computer would begin at all. */
export function waysOf(id: FaultId, some: SomeEvening): readonly Way[] {
  const known = waysKnown.get(some) ?? new Map<FaultId, readonly Way[]>();
  waysKnown.set(some, known);
  const ways =
    known.get(id) ??
    faultOf(id)
      .forms(some.evening, some.sizes)
      .filter(canBeBegun)
      .map((way) => ({ way, signature: signatureOf(way) }));
  known.set(id, ways);
  return ways;
}

export const missDeg = ({ rightDeg, upDeg }: Landing): number => Math.hypot(rightDeg, upDeg);

/** What an evening shows, in the few numbers that the questions speak of. */
export type Signature = {
  shown: EveningShown;
  firstDeg: number;
  secondDeg: number;
  agreed: boolean;
  /** The largest and least of the go-tos afterwards; null without any. */
  laterDeg: { most: number; least: number } | null;
};

function signatureOf(evening: Evening): Signature {
  const shown = runEvening(evening);
  const { first, second, outcome, later } = shown.evidence;
  const misses = later.map(missDeg);
  return {
    shown,
    firstDeg: missDeg(first),
    secondDeg: missDeg(second),
    agreed: outcome.kind === 'agree',
    laterDeg:
      misses.length === 0 ? null : { most: Math.max(...misses), least: Math.min(...misses) },
  };
}
