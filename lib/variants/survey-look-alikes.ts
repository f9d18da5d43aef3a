import type { RunKit } from '../alignment/setup';
import { runEvening, type EveningShown } from '../faults/evening';
import { faultIds, type FaultId } from '../faults/fault-ids';
import { faults } from '../faults/faults';
import { topics, type Evening } from '../faults/faulty-evening';
import { cluesBetween, shownBy } from '../faults/look-alikes';
import { scenarioSchema, type Eyepiece, type Telescope } from '../pointing/scenario';
import type { StarCatalogue } from '../sky/catalogue';
import { drawEvening, type DrawnEvening } from './draw-evening';
import { nightAt } from './night';
import { randomFrom, type Random } from './random';

/** Latitude, east longitude, zone: on every continent but one, from 70° N to 55° S. */
const sites: readonly (readonly [number, number, string])[] = [
  [69.65, 18.96, 'Europe/Oslo'],
  [64.15, -21.94, 'Atlantic/Reykjavik'],
  [54.6, -3.13, 'Europe/London'],
  [50.11, 8.68, 'Europe/Berlin'],
  [45.42, -75.7, 'America/Toronto'],
  [40.42, -3.7, 'Europe/Madrid'],
  [35.69, 139.69, 'Asia/Tokyo'],
  [28.61, 77.21, 'Asia/Kolkata'],
  [19.43, -99.13, 'America/Mexico_City'],
  [1.29, 103.85, 'Asia/Singapore'],
  [-1.29, 36.82, 'Africa/Nairobi'],
  [-12.05, -77.04, 'America/Lima'],
  [-23.55, -46.63, 'America/Sao_Paulo'],
  [-33.87, 151.21, 'Australia/Sydney'],
  [-34.93, 138.6, 'Australia/Adelaide'],
  [-41.29, 174.78, 'Pacific/Auckland'],
  [-54.8, -68.3, 'America/Argentina/Ushuaia'],
];

type SurveyedKit = RunKit & { telescope: Telescope; eyepiece: Eyepiece };

/** An evening without fault somewhere on Earth in 2025–2028, with either kind of computer. */
export function anyEvening(
  random: Random,
  kits: readonly SurveyedKit[],
  catalogue: StarCatalogue,
): DrawnEvening | null {
  const [latitudeDeg, longitudeDeg, timeZone] = random.pick(sites) ?? [0, 0, 'UTC'];
  const kit = random.pick(kits);
  if (kit === undefined) throw new RangeError('a survey needs a kit');
  const computer = random.integer(0, 1) === 0 ? 'fixed-zero' : 'solved-zero';
  const day = random.integer(0, 4 * 365);
  // Between eight and eleven in the evening by the Sun.
  const hour = random.between(20, 23) - longitudeDeg / 15;
  const instant = new Date(Date.UTC(2025, 0, 1 + day) + hour * 3_600_000);
  const scenario = scenarioSchema.parse({
    place: { latitudeDeg, longitudeDeg },
    localTime: instant.toISOString().slice(0, 16),
    timeZone,
    // Where the zone is not solved for, an index switch keeps it within 10′ (design, "Defaults").
    telescope: {
      ...kit.telescope,
      computer,
      altitudeZeroArcmin: computer === 'fixed-zero' ? 10 : kit.telescope.altitudeZeroArcmin,
    },
    eyepiece: kit.eyepiece,
  });
  const { night } = nightAt(scenario, instant.toISOString(), catalogue);
  return drawEvening({ random, night, catalogue, kit });
}

/** Two faults, on how many evenings one of them could be asked about, and on how many they were alike. */
type LookAlikes = {
  faults: readonly [FaultId, FaultId];
  both: number;
  /** Alike in some form with nobody beside the telescope who noticed anything. */
  unnoticed: number;
  /** Alike in some form though all was noticed that could be. */
  noticed: number;
};

/**
 * Draws evenings from a seed and compares every form of every fault with every form of every other.
 * One of the two forms must show in where the telescope goes or in what the computer says: nobody asks
 * about a fault that does nothing. The pairs that were ever alike, most often first.
 */
export function surveyLookAlikes(input: {
  seed: string;
  evenings: number;
  kits: readonly SurveyedKit[];
  catalogue: StarCatalogue;
}): { evenings: number; pairs: readonly LookAlikes[] } {
  const { seed, kits, catalogue } = input;
  const tally = new Map<string, { -readonly [K in keyof LookAlikes]: LookAlikes[K] }>();
  let counted = 0;
  for (let i = 0; i < input.evenings; i++) {
    const drawn = anyEvening(randomFrom(`${seed}/${String(i)}`), kits, catalogue);
    if (drawn === null || runEvening(drawn.evening).evidence.outcome.kind !== 'agree') continue;
    counted++;
    const blind = signatures(drawn, []);
    const seen = signatures(drawn, topics);
    eachPair((one, other) => {
      if (!canBeAsked(blind, one, other)) return;
      const key = `${one} ${other}`;
      const entry = tally.get(key) ?? { faults: [one, other], both: 0, unnoticed: 0, noticed: 0 };
      tally.set(key, entry);
      entry.both++;
      // What bystanders noticed can only tell more apart.
      if (!areAlike(drawn.evening, blind, one, other)) return;
      entry.unnoticed++;
      if (areAlike(drawn.evening, seen, one, other)) entry.noticed++;
    });
  }
  const pairs = [...tally.values()]
    .filter(({ unnoticed }) => unnoticed > 0)
    .sort((a, b) => b.unnoticed / b.both - a.unnoticed / a.both);
  return { evenings: counted, pairs };
}

/** What each fault would show in each of its forms, and which of those anybody would ask about. */
type Signatures = ReadonlyMap<
  FaultId,
  { all: readonly EveningShown[]; inTheSky: readonly EveningShown[] }
>;

function signatures({ evening, sizes }: DrawnEvening, noticed: Evening['noticed']): Signatures {
  const witnessed = { ...evening, noticed };
  const faultless = runEvening(witnessed);
  const showsInTheSky = (shown: EveningShown): boolean =>
    cluesBetween(evening, faultless, shown).some(
      (clue) => clue !== 'card' && clue !== 'observations',
    );
  return new Map(
    faults.map((fault) => {
      const all = shownBy(fault, witnessed, sizes);
      return [fault.id, { all, inTheSky: all.filter(showsInTheSky) }];
    }),
  );
}

const none = { all: [], inTheSky: [] };

function canBeAsked(signatures: Signatures, one: FaultId, other: FaultId): boolean {
  const [a, b] = [signatures.get(one) ?? none, signatures.get(other) ?? none];
  return a.all.length > 0 && b.all.length > 0 && a.inTheSky.length + b.inTheSky.length > 0;
}

function areAlike(evening: Evening, signatures: Signatures, one: FaultId, other: FaultId): boolean {
  const [a, b] = [signatures.get(one) ?? none, signatures.get(other) ?? none];
  const anyAlike = (some: readonly EveningShown[], others: readonly EveningShown[]): boolean =>
    some.some((x) => others.some((y) => cluesBetween(evening, x, y).length === 0));
  return anyAlike(a.inTheSky, b.all) || anyAlike(b.inTheSky, a.all);
}

function eachPair(visit: (one: FaultId, other: FaultId) => void): void {
  faultIds.forEach((one, i) => {
    for (const other of faultIds.slice(i + 1)) visit(one, other);
  });
}
