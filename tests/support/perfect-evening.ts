import { rightSettings } from '@/lib/clock/entered-settings';
import { loadCatalogue, loadKits } from '@/lib/content/sky-catalogue';
import { telescopeAndEyepiece } from '@/lib/data/default-evening';
import type { Evening, FaultSizes } from '@/lib/faults/faulty-evening';
import { fieldRadiusArcmin } from '@/lib/pointing/field-radius';
import type { Telescope } from '@/lib/pointing/scenario';
import { runKitOf } from '@/lib/variants/run-kit';
import { eveningScenario, frameOf } from './evening';

/** The three kits as a survey of faults takes them. */
export const surveyedKits = loadKits().map((kit) => ({
  ...runKitOf(kit),
  ...telescopeAndEyepiece(kit),
}));

const wren = (() => {
  const [widest] = surveyedKits;
  if (widest === undefined) throw new Error('content/ holds no kit');
  return widest;
})();

/** Both well up in Ottawa and in Oslo on the evening, 64° apart: Capella and Alpheratz. */
const stars = {
  first: { hip: 24608, name: 'Capella' },
  second: { hip: 677, name: 'Alpheratz' },
};

/**
 * An evening on which hands, telescope and clock are perfect, with Wren; by default Ottawa's of
 * `eveningJson`. Refraction is left out, so that a turned sky is nothing but a turned sky.
 */
export function perfectEvening(
  computer: Telescope['computer'] = 'solved-zero',
  changes: object = {},
): Evening {
  const scenario = eveningScenario({ telescope: { ...wren.telescope, computer }, ...changes });
  const frame = { ...frameOf(scenario), refractionScale: 0 };
  return {
    frame,
    place: scenario.place,
    catalogue: loadCatalogue(),
    computer,
    centringArcmin: scenario.telescope.centringArcmin,
    centringFieldRadiusArcmin: fieldRadiusArcmin(scenario.telescope, wren.centringEyepiece),
    setup: {
      base: { tiltDeg: 0, risesTowardsDeg: 0 },
      errors: { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 },
      dot: { rightArcmin: 0, upArcmin: 0 },
      backlashArcmin: { azimuth: 30, altitude: 30 },
      finalApproach: { azimuth: 1, altitude: 1 },
      encoderStepArcsec: 1e-6,
      slewDegPerSecond: 3,
      declinationDeg: -12.7,
      believed: frame,
      disturbances: [],
    },
    entered: rightSettings(frame.instant, scenario.place, scenario.timeZone),
    habits: {
      start: { azimuthDeg: 0, altitudeDeg: 0, northBy: 'pole' },
      centres: [{ hip: stars.first.hip }, { hip: stars.second.hip }],
      centresBy: 'eyepiece',
      centring: [
        { rightArcmin: 0, upArcmin: 0 },
        { rightArcmin: 0, upArcmin: 0 },
      ],
      lastMoves: [
        { azimuth: 1, altitude: 1 },
        { azimuth: 1, altitude: 1 },
      ],
    },
    surroundings: { clutches: 'firm', tripod: 'untouched', lamp: 'steady', cable: 'free' },
    ...stars,
    later: [
      { hip: 21421, name: 'Aldebaran' },
      { hip: 9884, name: 'Hamal' },
      { hip: 11767, name: 'Polaris' },
    ],
    test: [{ hip: 102098, name: 'Deneb' }],
    mistakable: [[{ hip: 28360 }], [{ planet: 'saturn' }]],
    noticed: [],
  };
}

export const someSizes: FaultSizes = {
  tiltDeg: 3,
  tiltTowardsDeg: 20,
  startAltitudeDeg: 2,
  push: { azimuthDeg: 2, altitudeDeg: 1.5 },
  leanDeg: 1,
  finderDistanceM: 8,
  finderSide: 1,
};
