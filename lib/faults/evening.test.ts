import { describe, expect, it } from 'vitest';
import { perfectEvening, someSizes } from '@/tests/support/perfect-evening';
import { starSeenAt } from '../alignment/run-sky';
import { latitudeOfFrameDeg } from '../sky/turned-frame';
import { degreesToRadians, radiansToDegrees } from '../units/angle';
import { azAltFromDirection } from '../units/vector';
import { runEvening, timetable } from './evening';
import type { Landing } from './evidence';
import { faultOf } from './faults';
import type { FaultId } from './fault-ids';
import type { Evening } from './faulty-evening';

const missArcmin = ({ rightDeg, upDeg }: Landing): number => 60 * Math.hypot(rightDeg, upDeg);
const worstArcmin = (landings: readonly Landing[]): number => {
  // An empty list would agree with anything.
  expect(landings.length).toBeGreaterThan(0);
  return Math.max(...landings.map(missArcmin));
};
const cosine = (angleDeg: number): number => Math.cos(degreesToRadians(angleDeg));
const sine = (angleDeg: number): number => Math.sin(degreesToRadians(angleDeg));

function form(id: FaultId, evening: Evening, index = 0): Evening {
  const made = faultOf(id).forms(evening, someSizes)[index];
  if (made === undefined) throw new Error(`${id} cannot happen on this evening`);
  // What was entered leads to a sky with refraction, which the perfect evening does without.
  const believed = { ...made.setup.believed, refractionScale: 0 };
  return { ...made, setup: { ...made.setup, believed } };
}

function placeOf(evening: Evening, { hip }: { hip: number }, seconds: number) {
  const sky = { ...evening, latitudeDeg: latitudeOfFrameDeg(evening.frame) };
  const direction = starSeenAt(sky, hip, seconds * 1000);
  if (direction === null) throw new Error(`no star ${String(hip)}`);
  return azAltFromDirection(direction);
}

describe('an evening without fault', () => {
  it.each(['fixed-zero', 'solved-zero'] as const)('lands on every star (%s)', (computer) => {
    const { evidence, testSlews } = runEvening(perfectEvening(computer));
    expect(evidence.outcome).toMatchObject({ kind: 'agree' });
    const all = [evidence.first, evidence.second, ...evidence.later, ...testSlews];
    expect(worstArcmin(all)).toBeLessThan(1e-5);
  });
});

// Design, "Which slip bites where"; every figure is that table's or follows from it by hand.
describe('a base off level', () => {
  it.each(['fixed-zero', 'solved-zero'] as const)(
    'by 1° is off by that in the first slews and absorbed to 0.001′ by a two-star fit (%s)',
    (computer) => {
      const level = perfectEvening(computer);
      const towards = placeOf(level, level.first, timetable.goTo[0]).azimuthDeg;
      const base = { tiltDeg: 1, risesTowardsDeg: towards };
      const { evidence } = runEvening({ ...level, setup: { ...level.setup, base } });
      // "pointing minus command is +t cos(A − A_t) in altitude"
      expect(evidence.first.upDeg).toBeCloseTo(1, 6);
      expect(evidence.outcome).toMatchObject({ kind: 'agree' });
      expect(worstArcmin(evidence.later)).toBeLessThan(0.001);
    },
  );
});

describe('a forgotten summer-time hour', () => {
  const hourDeg = 15.041;
  /** Far enough north for a computer to take the turned sky for a base that leans. */
  const tromso = perfectEvening('solved-zero', {
    place: { latitudeDeg: 75, longitudeDeg: 18.9 },
    localTime: '2026-12-05T20:00',
    timeZone: 'Europe/Oslo',
  });

  it('moves each star of the first slews by 15.04° along its circle', () => {
    for (const evening of [perfectEvening(), tromso]) {
      const { evidence } = runEvening(form('summer-time', evening));
      // The chord of a circle of radius cos δ; declinations of date from the apparent places (Capella
      // 46.0°, Alpheratz 29.2°, an almanac's to a tenth of a degree).
      const chordDeg = (declinationDeg: number) =>
        2 * radiansToDegrees(Math.asin(cosine(declinationDeg) * sine(hourDeg / 2)));
      expect(missArcmin(evidence.first) / 60).toBeCloseTo(chordDeg(46.01), 1);
      expect(missArcmin(evidence.second) / 60).toBeCloseTo(chordDeg(29.24), 1);
    }
  });

  it('is absorbed for the stars where the computer takes it', () => {
    const { evidence } = runEvening(form('summer-time', tromso));
    expect(evidence.outcome).toMatchObject({ kind: 'agree' });
    expect(worstArcmin(evidence.later)).toBeLessThan(0.01);
  });

  it('is refused as a base on its side elsewhere: it leans the pole’s turn times cos φ', () => {
    const { outcome } = runEvening(form('summer-time', perfectEvening())).evidence;
    expect(outcome.kind).toBe('base-on-its-side');
    const leanDeg = 2 * radiansToDegrees(Math.asin(cosine(45.4) * sine(hourDeg / 2)));
    if (outcome.kind === 'base-on-its-side') {
      expect(outcome.baseTiltDeg).toBeCloseTo(leanDeg, 2);
      expect(Math.abs(outcome.mismatchArcmin)).toBeLessThan(0.01);
    }
  });
});

describe('a start by compass', () => {
  it('is off by the declination along the horizon, and absorbed', () => {
    const { evidence } = runEvening(form('compass-north', perfectEvening()));
    const { altitudeDeg } = placeOf(perfectEvening(), perfectEvening().first, timetable.goTo[0]);
    const chordDeg = 2 * radiansToDegrees(Math.asin(cosine(altitudeDeg) * sine(12.7 / 2)));
    expect(evidence.first.rightDeg).toBeLessThan(0);
    expect(missArcmin(evidence.first) / 60).toBeCloseTo(chordDeg, 6);
    expect(worstArcmin(evidence.later)).toBeLessThan(0.001);
  });
});

describe('a tube that did not lie level at the start', () => {
  it('is off by that, and absorbed where the zero is solved for', () => {
    const { evidence } = runEvening(form('tube-not-level-at-start', perfectEvening()));
    expect(evidence.first.upDeg).toBeCloseTo(2, 6);
    expect(worstArcmin(evidence.later)).toBeLessThan(0.001);
  });

  it('tilts the whole sky where the zero is fixed', () => {
    const { outcome } = runEvening(
      form('tube-not-level-at-start', perfectEvening('fixed-zero')),
    ).evidence;
    expect(outcome.kind).not.toBe('agree');
  });
});

describe('a finder 80 mm beside the tube', () => {
  it.each([
    [8, 34.4],
    [20, 13.75],
  ])('set on something %i m away leaves a star that was confirmed by it %f′ off', (m, arcmin) => {
    const evening = perfectEvening();
    const backToBoth = { ...evening, later: [evening.first, evening.second] };
    const sizes = { ...someSizes, finderDistanceM: m };
    for (const trusting of faultOf('finder-off').forms(backToBoth, sizes)) {
      const { first, later, outcome } = runEvening(trusting).evidence;
      expect(missArcmin(first)).toBeLessThan(1e-5);
      expect(outcome).toMatchObject({ kind: 'agree' });
      expect(later).toHaveLength(2);
      // The solved zero lets both stars agree. Between confirm and go-to the sky turns by up to 1.25°,
      // and over such a distance an error of that size changes by about that angle in radians.
      const changesBy = 2 * arcmin * degreesToRadians(1.25);
      for (const landing of later) {
        expect(Math.abs(missArcmin(landing) - arcmin)).toBeLessThan(changesBy);
      }
    }
  });
});

describe('play that is left in the readings', () => {
  it('leaves every go-to the play short along both axes when always approached the wrong way', () => {
    const { evidence } = runEvening(form('wrong-final-approach', perfectEvening()));
    expect(missArcmin(evidence.first)).toBeLessThan(1e-5);
    for (const [i, landing] of evidence.later.entries()) {
      const target = perfectEvening().later[i];
      if (target === undefined) throw new Error('a go-to without a target');
      const seconds = timetable.later + i * timetable.betweenLater;
      const { altitudeDeg } = placeOf(perfectEvening(), target, seconds);
      // 30′ each; where they land the horizon is a little turned (0.5° of azimuth times sin a).
      expect(Math.abs(60 * landing.upDeg + 30)).toBeLessThan(0.15);
      expect(Math.abs(60 * landing.rightDeg + 30 * cosine(altitudeDeg))).toBeLessThan(0.3);
    }
  });

  it('costs nothing to whoever keeps the final approach', () => {
    const loose = perfectEvening();
    const setup = { ...loose.setup, backlashArcmin: { azimuth: 90, altitude: 90 } };
    expect(worstArcmin(runEvening({ ...loose, setup }).evidence.later)).toBeLessThan(1e-5);
  });
});

describe('what happens after the alignment', () => {
  it('a slip makes the readings untrue by that much, everywhere', () => {
    // The second form slips after the second star alone.
    const { evidence } = runEvening(form('tube-slips', perfectEvening(), 1));
    expect(evidence.outcome).toMatchObject({ kind: 'agree' });
    for (const { rightDeg, upDeg } of evidence.later) {
      expect(upDeg).toBeCloseTo(1.5, 6);
      expect(rightDeg).toBeCloseTo(0, 6);
    }
  });

  it('a tripod that leans is a tilt nobody corrects', () => {
    const still = perfectEvening();
    const lean = { kind: 'base-moves', afterConfirm: 2, tiltDeg: 1, risesTowardsDeg: 20 } as const;
    const { later } = runEvening({
      ...still,
      setup: { ...still.setup, disturbances: [lean] },
    }).evidence;
    expect(later.length).toBeGreaterThan(0);
    later.forEach((landing, i) => {
      const target = still.later[i];
      if (target === undefined) throw new Error('a go-to without a target');
      const { azimuthDeg, altitudeDeg } = placeOf(
        still,
        target,
        timetable.later + i * timetable.betweenLater,
      );
      // Design, "Levelling": +t cos(A − A_t) in altitude, and in azimuth t sin(A − A_t) tan a; on the
      // sky the latter times cos a. To second order in 1°.
      expect(landing.upDeg).toBeCloseTo(cosine(azimuthDeg - 20), 1);
      expect(landing.rightDeg).toBeCloseTo(sine(azimuthDeg - 20) * sine(altitudeDeg), 1);
    });
  });

  it('a supply that gives way loses the alignment', () => {
    const [between, after] = [0, 1].map((i) =>
      runEvening(form('supply-reset', perfectEvening(), i)),
    );
    expect(between?.evidence.outcome).toEqual({ kind: 'undetermined' });
    expect(between?.evidence.later).toEqual([]);
    expect(after?.evidence.outcome).toMatchObject({ kind: 'agree' });
    expect(worstArcmin(after?.evidence.later ?? [])).toBeGreaterThan(600);
  });
});

describe('other lights than the ones that were asked for', () => {
  it('swapped stars turn the base on its side, with a perfect angle', () => {
    const { evidence } = runEvening(form('swapped-stars', perfectEvening('fixed-zero')));
    expect(missArcmin(evidence.second)).toBeLessThan(1e-5);
    // The sky turns between the two confirms: 0.75° about the pole.
    expect(evidence.outcome.kind).toBe('base-on-its-side');
  });

  it('a wrong star shows by the angle where the zero is fixed', () => {
    const { outcome } = runEvening(form('wrong-star', perfectEvening('fixed-zero'))).evidence;
    expect(outcome.kind).toBe('disagree');
  });
});
