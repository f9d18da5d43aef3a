import { scenarioSchema } from '@/lib/pointing/scenario';
import type { FaultResult } from '@/lib/grading/fault-result';
import { skyFrameAt } from '@/lib/sky/frame-at';
import type { FaultVariant } from '@/lib/variants/fault-variant';
import { cureIds, faultIds } from '@/lib/faults/fault-ids';

const vega = 91262;
const altair = 97649;
const capella = 24608;

/** An evening near Greenwich with summer time ticked in December, written by hand. */
export function faultyEvening(changes: Partial<FaultVariant> = {}): FaultVariant {
  const scenario = scenarioSchema.parse({
    place: { latitudeDeg: 51.5, longitudeDeg: -0.1, elevationM: 30 },
    localTime: '2026-12-05T18:10',
    timeZone: 'Europe/London',
    telescope: {
      focalLengthMm: 500,
      apertureMm: 80,
      computer: 'solved-zero',
      centringArcmin: 7.5,
      altitudeZeroArcmin: 30,
      coneArcmin: 8,
      axisSkewArcmin: 4,
    },
    eyepiece: { focalLengthMm: 9, apparentFieldDeg: 50 },
  });
  return {
    lab: 'what-went-wrong',
    generatorVersion: 1,
    catalogueVersion: 'by-hand',
    template: 'first-slews',
    scenario,
    frame: skyFrameAt({ instant: '2026-12-05T18:10:00Z', place: scenario.place }),
    nakedEyeLimit: 5,
    kit: {
      name: 'Wren',
      tubeType: 'refractor',
      orientation: 'true',
      centringEyepiece: { focalLengthMm: 25, apparentFieldDeg: 50 },
    },
    evidence: {
      first: { hip: vega, name: 'Vega', rightDeg: -9.43, upDeg: 6.21 },
      second: { hip: altair, name: 'Altair', rightDeg: -11.5, upDeg: 8.4 },
      outcome: { kind: 'base-on-its-side', baseTiltDeg: 9.32, mismatchArcmin: 3.6 },
      later: [],
      card: {
        localTime: '2026-12-05T18:10',
        timeZoneOffset: '+00:00',
        summerTime: true,
        latitudeText: '51.50° N',
        longitudeText: '0.10° W',
      },
      observations: ['bubble-in-the-ring', 'tripod-untouched'],
    },
    open: ['first', 'second', 'outcome'],
    testSlews: [
      { hip: capella, name: 'Capella', rightDeg: 10.1, upDeg: -7.25 },
      { hip: 11767, name: 'Polaris', rightDeg: -0.2, upDeg: 0.05 },
    ],
    faults: [...faultIds],
    cures: [...cureIds],
    ...changes,
  };
}

/** What a marker could say of that evening; the changes make it right or wrong. */
export function faultResult(changes: Partial<FaultResult> = {}): FaultResult {
  return {
    lab: 'what-went-wrong',
    graderVersion: 1,
    template: 'first-slews',
    total: 96,
    criteria: [
      { id: 'fault', earned: 60, possible: 60 },
      { id: 'cure', earned: 30, possible: 30 },
      { id: 'looks', earned: 6, possible: 10 },
    ],
    named: 'summer-time',
    cure: 'correct-summer-time',
    fault: 'summer-time',
    alike: ['summer-time'],
    rightCures: ['correct-summer-time'],
    looked: ['card'],
    testSlew: capella,
    tellTale: null,
    ...changes,
  };
}
