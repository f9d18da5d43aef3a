import { Body, Equator, Horizon, MakeTime, Observer, DefineStar } from 'astronomy-engine';
import { loadCatalogue, loadKits } from '../content/sky-catalogue';
import { answerKeyFor } from '../pointing/answer-key-for';
import { fieldRadiusArcmin } from '../pointing/field-radius';
import { pairErrorModel, type PairErrorModel } from '../pointing/pair-error-model';
import { expectedErrorArcmin, hitRate } from '../pointing/pair-worth';
import { pairWorthDirect } from '../pointing/pair-worth-direct';
import { rankPairs } from '../pointing/rank-pairs';
import { scenarioSchema } from '../pointing/scenario';
import { skyFrameAt } from '../sky/frame-at';
import { makeStarPlaces, placeCatalogue } from '../sky/star-places';

// The night with the most usable stars that a search of all latitudes and sidereal times found,
// with the default settings: the worst that a default scenario can ask for.
const worstNight = { latitudeDeg: -24, longitudeDeg: 0, instant: '2026-02-17T00:00:00.000Z' };
/** Beyond the default settings, to see how it grows with the number of stars. */
const manyStarsMagnitude = 3.5;

/** About how many pairs the direct sum is timed on. */
const directSample = 150;

/** Milliseconds of one call: the median of several rounds, after warming up. */
function medianMs(run: () => unknown, rounds: number, callsPerRound = 1): number {
  const times: number[] = [];
  for (let round = -Math.ceil(rounds / 3); round < rounds; round++) {
    const start = performance.now();
    for (let call = 0; call < callsPerRound; call++) run();
    if (round >= 0) times.push((performance.now() - start) / callsPerRound);
  }
  times.sort((a, b) => a - b);
  return times[Math.floor(times.length / 2)] ?? NaN;
}

type Line = {
  what: string;
  ms: number;
  barMs: number | null;
  beside: { what: string; ms: number } | null;
};

function placing(): Line {
  const catalogue = loadCatalogue();
  const place = { ...worstNight, elevationM: 0 };
  const frame = skyFrameAt({ instant: worstNight.instant, place });
  const into = makeStarPlaces(catalogue.stars.length);
  const ms = medianMs(() => placeCatalogue(catalogue, frame, into), 51, 10);

  // The library's own way: define each star, ask for its place of date, then for the horizon.
  const observer = new Observer(worstNight.latitudeDeg, worstNight.longitudeDeg, 0);
  const time = MakeTime(new Date(worstNight.instant));
  const oneByOne = () => {
    for (const star of catalogue.stars) {
      DefineStar(Body.Star1, star.raDeg / 15, star.decDeg, 1000);
      const equator = Equator(Body.Star1, time, observer, true, true);
      Horizon(time, observer, equator.ra, equator.dec, 'normal');
    }
  };
  return {
    what: `whole catalogue (${catalogue.stars.length} stars) to altitude and azimuth`,
    ms,
    barMs: 0.3,
    beside: { what: 'astronomy-engine, star by star', ms: medianMs(oneByOne, 5) },
  };
}

function ranking(faintestMagnitude: number, withBars: boolean): Line[] {
  const kit = loadKits().find(({ id }) => id === 'wren');
  const observing = kit?.eyepieces.find(({ id }) => id === kit.observingEyepieceId);
  if (kit === undefined || observing === undefined) throw new Error('the kit Wren is missing');
  const { focalLengthMm, apparentFieldDeg } = observing;
  const { telescope } = kit;
  const { latitudeDeg, longitudeDeg, instant } = worstNight;
  const scenario = scenarioSchema.parse({
    place: { latitudeDeg, longitudeDeg },
    localTime: instant.slice(0, 16),
    timeZone: 'UTC',
    telescope,
    eyepiece: { focalLengthMm, apparentFieldDeg },
    sky: { darkestLimitMagnitude: 6 },
    settings: { faintestMagnitude },
  });
  const frame = skyFrameAt({ instant, place: scenario.place });
  const key = answerKeyFor({
    scenario,
    instant,
    frame,
    catalogue: loadCatalogue(),
    faintestListed: faintestMagnitude,
  });
  const stars = key.stars.filter((star) => star.usable);
  const radius = fieldRadiusArcmin(telescope, scenario.eyepiece);
  const pairs = stars.flatMap((one, i) => stars.slice(i + 1).map((other) => [one, other] as const));
  const models = () =>
    pairs
      .map(([one, other]) => pairErrorModel(telescope, one, other))
      .filter((model): model is PairErrorModel => model !== null);
  const byError = () =>
    models()
      .map((model) => expectedErrorArcmin(model))
      .sort((a, b) => a - b);
  const made = models();
  // The slow way takes seconds: timed on every so many pairs and multiplied.
  const sample = pairs.filter((_, i) => i % Math.ceil(pairs.length / directSample) === 0);
  const directMs =
    medianMs(
      () => sample.map(([one, other]) => pairWorthDirect(telescope, radius, one, other)),
      3,
    ) *
    (pairs.length / sample.length);
  const beside = {
    what: `direct sum over the grid (from ${sample.length} of the pairs)`,
    ms: directMs,
  };
  const night = `${stars.length} usable stars, ${pairs.length} pairs`;
  return [
    {
      what: `${night}: ranked by expected error`,
      ms: medianMs(byError, 31),
      barMs: withBars ? 10 : null,
      beside,
    },
    {
      what: `${night}: hit rates of all`,
      ms: medianMs(() => made.map((model) => hitRate(model, radius)), 31),
      barMs: withBars ? 50 : null,
      beside,
    },
    {
      what: `${night}: ranked by hit rate, with marks`,
      ms: medianMs(() => rankPairs(stars, telescope, radius), 31),
      barMs: null,
      beside,
    },
  ];
}

const lines = [placing(), ...ranking(2.5, true), ...ranking(manyStarsMagnitude, false)];
let missed = 0;
for (const { what, ms, barMs, beside } of lines) {
  console.log(what);
  const verdict = barMs === null ? '' : `   bar ${barMs} ms: ${ms <= barMs ? 'met' : 'MISSED'}`;
  console.log(`  ${ms.toFixed(3)} ms${verdict}`);
  if (beside !== null) {
    console.log(
      `  ${beside.what}: ${beside.ms.toFixed(1)} ms, ${(beside.ms / ms).toFixed(0)} times as long`,
    );
  }
  if (barMs !== null && ms > barMs) missed++;
}
console.log('Medians, one thread, in one run on this machine.');
process.exitCode = missed === 0 ? 0 : 1;
