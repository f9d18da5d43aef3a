import { describe, expect, it } from 'vitest';
import { eveningJson, frameOf } from '@/tests/support/evening';
import { separationDeg } from '../units/vector';
import { parseRunScenario } from './parse-run-scenario';
import { kitFrom, setupFrom } from './run-scenario';
import { starSeenAt } from './run-sky';
import { loadCatalogue } from '../content/sky-catalogue';

const problemsOf = (added: object) => {
  const parsed = parseRunScenario({ ...eveningJson, ...added });
  return parsed.ok ? [] : parsed.problems;
};

function madeFrom(added: object) {
  const parsed = parseRunScenario({ ...eveningJson, ...added });
  if (!parsed.ok) throw new Error('refused');
  const { scenario, groups } = parsed;
  const frame = frameOf(scenario);
  return { frame, setup: setupFrom(groups, scenario, frame), kit: kitFrom(groups, scenario) };
}

describe('a scenario without a set-up', () => {
  it('has a mount that gets nothing wrong and believes in the true sky', () => {
    const { setup, frame } = madeFrom({});
    expect(setup.errors).toEqual({ altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 });
    expect(setup.base.tiltDeg).toBe(0);
    expect(setup.backlashArcmin).toEqual({ azimuth: 0, altitude: 0 });
    expect(setup.believed).toBe(frame);
  });

  it('is centred with the eyepiece the targets are looked at with', () => {
    expect(madeFrom({}).kit.centringEyepiece).toEqual(eveningJson.eyepiece);
  });
});

describe('a set-up', () => {
  it('is told in arcminutes and made in degrees', () => {
    const { setup } = madeFrom({ setup: { altitudeZeroArcmin: -90, coneArcmin: 12 } });
    expect(setup.errors).toEqual({ altitudeZeroDeg: -1.5, coneDeg: 0.2, axisSkewDeg: 0 });
  });

  it('with a clock four minutes fast believes in a sky turned by a degree', () => {
    const { setup, frame } = madeFrom({ setup: { clockErrorSeconds: 240 } });
    const catalogue = loadCatalogue();
    const seen = (sky: typeof frame) =>
      starSeenAt({ frame: sky, latitudeDeg: eveningJson.place.latitudeDeg, catalogue }, 24608, 0);
    const [true_, believed] = [seen(frame), seen(setup.believed)];
    if (true_ === null || believed === null) throw new Error('no Capella');
    // 240 s × 15.041″/s on its circle, at declination 46.0° (and a little refraction).
    expect(separationDeg(true_, believed)).toBeCloseTo(1.0027 * Math.cos((46 * Math.PI) / 180), 2);
  });

  it('believes in the place that was entered, at the height of the true one', () => {
    const place = { ...eveningJson.place, latitudeDeg: 44.4 };
    const entered = { latitudeDeg: 44.4, longitudeDeg: eveningJson.place.longitudeDeg };
    const { setup } = madeFrom({ setup: { believedPlace: entered } });
    expect(setup.believed).toEqual(madeFrom({ place }).frame);
  });
});

describe('a set-up that cannot be used names its field', () => {
  it.each<[string, object, RegExp]>([
    ['setup', { setup: 5 }, /is 5, but must be a group of fields/],
    ['setup.cone', { setup: { cone: 5 } }, /is not a field/],
    ['setup.coneArcmin', { setup: { coneArcmin: '5' } }, /"5", but must be a number/],
    ['setup.coneArcmin', { setup: { coneArcmin: 121 } }, /at most 120/],
    ['setup.altitudeZeroArcmin', { setup: { altitudeZeroArcmin: -601 } }, /at least -600/],
    ['setup.base.tiltDeg', { setup: { base: { tiltDeg: -1 } } }, /at least 0/],
    ['setup.base.risesTowardsDeg', { setup: { base: { risesTowardsDeg: 360 } } }, /less than 360/],
    ['setup.backlashArcmin', { setup: { backlashArcmin: 4 } }, /group of fields/],
    ['setup.backlashArcmin.azimuth', { setup: { backlashArcmin: { azimuth: null } } }, /null/],
    ['setup.finalApproach.altitude', { setup: { finalApproach: { altitude: 0 } } }, /1 or -1/],
    ['setup.encoderStepArcsec', { setup: { encoderStepArcsec: 0 } }, /at least 0\.1/],
    ['setup.slewDegPerSecond', { setup: { slewDegPerSecond: 0 } }, /at least 0\.5/],
    ['setup.clockErrorSeconds', { setup: { clockErrorSeconds: 1e9 } }, /at most 86400/],
    [
      'setup.believedPlace.longitudeDeg',
      { setup: { believedPlace: { latitudeDeg: 0 } } },
      /missing/,
    ],
    ['setup.dot.upArcmin', { setup: { dot: { upArcmin: [] } } }, /a list/],
    ['kit.tubeType', { kit: { tubeType: 'spyglass' } }, /"spyglass", but must be "refractor" or/],
    ['kit.centringEyepiece.focalLengthMm', { kit: { centringEyepiece: {} } }, /missing/],
  ])('%s', (field, added, message) => {
    const named = problemsOf(added).find((problem) => problem.field === field);
    expect(named?.message).toMatch(message);
  });

  it('together with what is wrong with the scenario itself', () => {
    const fields = problemsOf({ timeZone: 'Nowhere', setup: { coneArcmin: 999 } }).map(
      ({ field }) => field,
    );
    expect(fields).toEqual(['timeZone', 'setup.coneArcmin']);
  });

  it.each([null, 'text', [], 7])('and what is no scenario at all is refused: %j', (json) => {
    expect(parseRunScenario(json)).toMatchObject({ ok: false, problems: [{ field: 'scenario' }] });
  });
});
