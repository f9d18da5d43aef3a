import { beforeAll, describe, expect, it } from 'vitest';
import { turnBetweenDeg } from '@/tests/support/sky-turn';
import { act, startRun, viewAt } from '../alignment/alignment-run';
import { perfectOutcome, worthOfAlignment } from '../alignment/alignment-worth';
import type { RunInput } from '../alignment/run-input';
import { starSeenAt, trueSky } from '../alignment/run-sky';
import { standOf, truthAtStart } from '../alignment/start-position';
import { loadCatalogue, loadKits, loadSites, type Kit } from '../content/sky-catalogue';
import type { AnswerKey } from '../pointing/answer-key';
import { geometryFullMark, starMark } from '../pointing/pair-mark';
import { parseScenario } from '../pointing/parse-scenario';
import { scenarioSchema, type Scenario } from '../pointing/scenario';
import { seenSky } from '../pointing/seen-sky';
import { storedAnswerKey } from '../pointing/stored-answer-key';
import { directionFromAzAlt, separationDeg, type Vector3 } from '../units/vector';
import { generateRunVariant } from './generate-run-variant';
import { defaultWindowMinutes } from './moved-evenings';
import { runKitOf } from './run-kit';
import { runTemplates, type RunTemplate, type RunVariant } from './run-variant';

const catalogue = loadCatalogue();
const kits = loadKits();
const site = loadSites().find(({ id }) => id === 'school-yard');

/** Dark evenings from 70° north to 70° south. */
const places: { latitudeDeg: number; localTime: string; horizon?: Scenario['horizon'] }[] = [
  { latitudeDeg: 70, localTime: '2026-12-10T19:00' },
  { latitudeDeg: 52.5, localTime: '2027-02-12T20:15', horizon: site?.horizon ?? [] },
  { latitudeDeg: 35, localTime: '2027-09-30T21:00' },
  { latitudeDeg: 1, localTime: '2027-04-08T21:00' },
  { latitudeDeg: -34, localTime: '2027-05-05T20:00', horizon: site?.horizon ?? [] },
  { latitudeDeg: -52, localTime: '2027-07-20T20:00' },
  { latitudeDeg: -70, localTime: '2027-06-21T20:00' },
];

function scenarioOf(
  place: (typeof places)[number],
  kit: Kit,
  computer: 'solved-zero' | 'fixed-zero',
) {
  const eyepiece = kit.eyepieces.find(({ id }) => id === kit.observingEyepieceId);
  if (eyepiece === undefined) throw new Error(`${kit.id} has no observing eyepiece`);
  const { focalLengthMm, apparentFieldDeg } = eyepiece;
  return scenarioSchema.parse({
    place: { latitudeDeg: place.latitudeDeg, longitudeDeg: 0 },
    horizon: place.horizon ?? [],
    localTime: place.localTime,
    timeZone: 'UTC',
    // An index switch sets a fixed zero to 10′ (design, defaults).
    telescope: {
      ...kit.telescope,
      computer,
      altitudeZeroArcmin: computer === 'fixed-zero' ? 10 : kit.telescope.altitudeZeroArcmin,
    },
    eyepiece: { focalLengthMm, apparentFieldDeg },
  });
}

type Made = {
  asked: RunTemplate;
  base: Scenario;
  variant: RunVariant;
  run: RunInput;
  key: AnswerKey;
};
const made: Made[] = [];

beforeAll(() => {
  places.forEach((place, i) => {
    runTemplates.forEach((asked, j) => {
      for (const computer of ['solved-zero', 'fixed-zero'] as const) {
        const kit = kits[(i + j + (computer === 'fixed-zero' ? 1 : 0)) % kits.length];
        if (kit === undefined) throw new Error('no kits');
        const base = scenarioOf(place, kit, computer);
        const variant = generateRunVariant({
          seed: `${i}/${asked}/${kit.id}`,
          scenario: base,
          templates: [asked],
          catalogue,
          kit: runKitOf(kit),
          declinationDeg: -7.5,
        });
        const { scenario, frame } = variant;
        const key = storedAnswerKey({ scenario, instant: frame.instant, frame, catalogue });
        made.push({ asked, base, variant, run: { ...variant, catalogue }, key });
      }
    });
  });
}, 240_000);

const of = (template: RunTemplate) => made.filter(({ variant }) => variant.template === template);
const placeOf = (run: RunInput, hip: number): Vector3 => {
  const seen = starSeenAt(trueSky(run), hip, 0);
  if (seen === null) throw new Error(`no star ${hip}`);
  return seen;
};
const rightPairsOf = ({ variant, key }: Made) =>
  key.pairs.filter(
    ({ stars, expectedErrorArcmin }) =>
      expectedErrorArcmin !== null &&
      (variant.givenHip === null || stars.includes(variant.givenHip)) &&
      (variant.proposals === null || stars.every((hip) => variant.proposals?.includes(hip))),
  );

describe('alignment runs from 70° north to 70° south, three telescopes, both computers (70)', () => {
  it('are of the template that was asked for, where the sky has what it takes', () => {
    const changed = made.filter(({ asked, variant }) => asked !== variant.template);
    expect(changed.filter(({ asked }) => asked !== 'decoy' && asked !== 'in-the-way')).toEqual([]);
    expect(changed.length).toBeLessThanOrEqual(0.05 * made.length);
  });

  it('lie within the window, on their own wall clock', () => {
    for (const { base, variant } of made) {
      const [parsed, original] = [parseScenario(variant.scenario), parseScenario(base)];
      if (!parsed.ok || !original.ok) throw new Error('a variant is no scenario');
      expect(parsed.instant).toBe(variant.frame.instant);
      const minutes = (Date.parse(parsed.instant) - Date.parse(original.instant)) / 60_000;
      expect(Math.abs(minutes)).toBeLessThanOrEqual(defaultWindowMinutes);
    }
  });

  it('can be done right: a pair worth nine tenths of the best tonight, and centred well it points well', () => {
    for (const one of made) {
      const { variant, run, key } = one;
      const [best] = rightPairsOf(one);
      if (best === undefined) throw new Error('no right pair');
      expect(best.hitRate).toBeGreaterThanOrEqual(0.9 * (key.pairs[0]?.hitRate ?? 1) - 1e-9);
      const truth = truthAtStart(
        standOf(variant.setup),
        { azimuthDeg: 0, altitudeDeg: 0 },
        variant.setup.errors,
      );
      const [first, second] = best.stars;
      const outcome = perfectOutcome(
        run,
        [
          { hip: first, atMs: 0 },
          { hip: second, atMs: 90_000 },
        ],
        truth,
      );
      expect(outcome?.kind).toBe('agree');
      const worth = outcome && worthOfAlignment(run, outcome, truth);
      expect(worth?.hitRate).toBeGreaterThan(0.5 * best.hitRate);
    }
  });

  it('draw every error from its prior and never from its far tail', () => {
    for (const { variant } of made) {
      const { setup, scenario, frame, template } = variant;
      const { telescope } = scenario;
      expect(setup.base.tiltDeg).toBeLessThanOrEqual(1);
      expect(Math.abs(setup.errors.coneDeg)).toBeLessThanOrEqual((2 * telescope.coneArcmin) / 60);
      expect(Math.abs(setup.errors.axisSkewDeg)).toBeLessThanOrEqual(
        (2 * telescope.axisSkewArcmin) / 60,
      );
      const mostZeroDeg = Math.max(
        template === 'decoy' ? 1.2 : 0,
        telescope.altitudeZeroArcmin / 30,
      );
      expect(Math.abs(setup.errors.altitudeZeroDeg)).toBeLessThanOrEqual(mostZeroDeg);
      // A minute of clock is 0.25°, the place 0.1° each way; half an hour where a decoy is meant.
      const most = template === 'decoy' ? 7.7 : 0.4;
      expect(turnBetweenDeg(setup.believed, frame)).toBeLessThan(most);
      expect(setup.declinationDeg).toBe(-7.5);
      expect(setup.disturbances).toEqual([]);
    }
    const zeros = of('own-choice').map(({ variant }) => variant.setup.errors.altitudeZeroDeg);
    expect(new Set(zeros).size).toBe(zeros.length);
  });

  it('name stars to check on that lie well off whichever pair is aligned on', () => {
    for (const one of made) {
      const [best] = rightPairsOf(one);
      if (best === undefined) throw new Error('no right pair');
      const aligned = best.stars.map((hip) => placeOf(one.run, hip));
      const farthest = Math.max(
        ...one.variant.thirdHips.map((hip) =>
          Math.min(...aligned.map((other) => separationDeg(placeOf(one.run, hip), other))),
        ),
      );
      expect(farthest).toBeGreaterThan(20);
    }
  });
});

describe('a run in which the mount proposes', () => {
  it('offers a pair worth full marks and something doubtful before or between', () => {
    for (const one of [...of('mount-proposes'), ...of('in-the-way')]) {
      const { proposals } = one.variant;
      expect(proposals?.length).toBeGreaterThanOrEqual(5);
      expect(rightPairsOf(one)[0]?.mark).toBeGreaterThan(2 * starMark + geometryFullMark - 0.1);
    }
  });

  it('behind things proposes first what stands behind a cloud or the skyline', () => {
    expect(of('in-the-way').length).toBeGreaterThan(0);
    for (const { variant, key } of of('in-the-way')) {
      const first = key.stars.find(({ hip }) => hip === variant.proposals?.[0]);
      expect(first?.reasons.map(({ code }) => code)).toSatisfy(
        (codes: string[]) => codes.length === 1 && /behind/.test(codes[0] ?? ''),
      );
    }
  });
});

describe('a run with a decoy', () => {
  it('is to be had in both halves of the Earth', () => {
    const latitudes = of('decoy').map(({ variant }) => variant.scenario.place.latitudeDeg);
    expect(Math.max(...latitudes)).toBeGreaterThan(50);
    expect(Math.min(...latitudes)).toBeLessThan(-50);
  });

  it('lands its first slew nearer to a light as bright as the given star than to the star', () => {
    for (const { variant, run } of of('decoy')) {
      const { givenHip, frame, scenario } = variant;
      if (givenHip === null) throw new Error('no star was given');
      let now = act(startRun(run), { at: 0, do: 'set-start', azimuthDeg: 0, altitudeDeg: 0 });
      now = act(now, { at: 0, do: 'go-to', hip: givenHip });
      const { arrivesAtMs } = viewAt(now, 0);
      if (arrivesAtMs === null) throw new Error('it does not move');
      const { tube } = viewAt(now, arrivesAtMs);
      const meant = starSeenAt(trueSky(run), givenHip, arrivesAtMs);
      const sky = seenSky({ scenario, frame, catalogue, keep: ({ magnitude }) => magnitude < 5 });
      const star = sky.stars.find(({ hip }) => hip === givenHip);
      if (star === undefined || meant === null) throw new Error('the given star is not up');
      const rivals = [...sky.stars.filter((one) => one !== star), ...sky.planets].filter(
        ({ looksMagnitude }) => looksMagnitude < star.looksMagnitude + 0.7,
      );
      const nearest = Math.min(
        ...rivals.map(({ azimuthDeg, altitudeDeg }) =>
          separationDeg(tube, directionFromAzAlt(azimuthDeg, altitudeDeg)),
        ),
      );
      // The slew takes up to a minute, in which the sky goes on by a quarter of a degree.
      expect(nearest).toBeLessThan(separationDeg(tube, meant) + 0.25);
    }
  });
});

describe('the generator', () => {
  const input = () => {
    const [kit] = kits;
    const [place] = places.slice(1);
    if (kit === undefined || place === undefined) throw new Error('no kit or place');
    return {
      seed: 'a',
      scenario: scenarioOf(place, kit, 'solved-zero'),
      templates: runTemplates,
      catalogue,
      kit: runKitOf(kit),
      declinationDeg: 3,
    };
  };

  it('gives the same variant for the same input, and another for another seed', () => {
    expect(generateRunVariant(input())).toEqual(generateRunVariant(input()));
    expect(generateRunVariant({ ...input(), seed: 'b' })).not.toEqual(generateRunVariant(input()));
  });

  it('passes on what the teacher said of time and pausing', () => {
    const variant = generateRunVariant({ ...input(), minutesAllowed: 12, mayPause: true });
    expect(variant).toMatchObject({ minutesAllowed: 12, mayPause: true });
    expect(generateRunVariant(input())).toMatchObject({ minutesAllowed: null, mayPause: false });
  });

  it('passes over a day and a bright dusk where the window has a dark enough evening', () => {
    // At 52.5° N and 0° E on 12 February the Sun sets at about 17:10 (USNO's tables: 17:08 to 17:12).
    const scenario = { ...input().scenario, localTime: '2027-02-12T16:50' };
    const made = Array.from({ length: 12 }, (_, i) =>
      generateRunVariant({ ...input(), seed: `dusk ${i}`, scenario, windowMinutes: 80 }),
    );
    for (const { frame, scenario: moved } of made) {
      expect(frame.sun.trueAltitudeDeg).toBeLessThan(-0.833);
      const key = storedAnswerKey({
        scenario: moved,
        frame,
        catalogue,
        instant: frame.instant,
      });
      expect(key.pairs.length).toBeGreaterThan(0);
    }
    // Chance alone would have met the day: the seed's own evenings are spread over the window.
    expect(new Set(made.map(({ frame }) => frame.instant)).size).toBeGreaterThan(3);
  });

  it('searches the whole window where the seed’s own evenings all fall short', () => {
    const scenario = { ...input().scenario, localTime: '2027-02-12T14:40' };
    const ends = Array.from({ length: 6 }, (_, i) =>
      generateRunVariant({ ...input(), seed: `late ${i}`, scenario, windowMinutes: 190 }),
    );
    for (const { frame } of ends) expect(frame.sun.trueAltitudeDeg).toBeLessThan(-0.833);
  });

  it('leaves the choice to the learner in daylight, where no pair will do', () => {
    const noon = { ...input().scenario, localTime: '2027-06-12T12:00' };
    const variant = generateRunVariant({ ...input(), scenario: noon, templates: ['decoy'] });
    expect(variant).toMatchObject({ template: 'own-choice', givenHip: null, proposals: null });
  });
});
