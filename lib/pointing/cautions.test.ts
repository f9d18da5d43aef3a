import { describe, expect, it } from 'vitest';
import { skyLights } from '@/components/sky/sky-lights';
import { eveningScenario, frameOf } from '@/tests/support/evening';
import { loadCatalogue } from '../content/sky-catalogue';
import { answerKeyFor } from './answer-key-for';

const catalogue = loadCatalogue();
const late = { localTime: '2026-12-05T23:30' };

function keyOf(changes: object) {
  const scenario = eveningScenario({ ...late, ...changes });
  const frame = frameOf(scenario);
  return answerKeyFor({ scenario, instant: frame.instant, frame, catalogue });
}
const clear = keyOf({});
function placeOf(name: string) {
  const star = clear.stars.find((one) => one.name === name);
  if (star === undefined) throw new Error(`${name} is not in the key`);
  return { azimuthDeg: star.azimuthDeg, altitudeDeg: star.altitudeDeg };
}
const cautionsOfCastor = (changes: object) =>
  keyOf(changes)
    .stars.find((star) => star.name === 'Castor')
    ?.cautions.map((caution) => caution.neighbourName);

describe('a look-alike that cannot be seen is none', () => {
  const pollux = placeOf('Pollux');

  it('under a cloud, however small, and only there', () => {
    expect(cautionsOfCastor({})).toEqual(['Pollux']);
    const beside = { ...pollux, altitudeDeg: pollux.altitudeDeg - 2 };
    expect(cautionsOfCastor({ clouds: [{ ...beside, radiusDeg: 2.1 }] })).toEqual([]);
    expect(cautionsOfCastor({ clouds: [{ ...beside, radiusDeg: 1.9 }] })).toEqual(['Pollux']);
  });

  it('behind the skyline', () => {
    // A pole before Pollux, which ends a tenth of a degree above or below it.
    const pole = (topDeg: number) => ({
      horizon: [
        { azimuthDeg: pollux.azimuthDeg - 1, altitudeDeg: 0 },
        { azimuthDeg: pollux.azimuthDeg, altitudeDeg: topDeg },
        { azimuthDeg: pollux.azimuthDeg + 1, altitudeDeg: 0 },
      ],
    });
    expect(cautionsOfCastor(pole(pollux.altitudeDeg + 0.1))).toEqual([]);
    expect(cautionsOfCastor(pole(pollux.altitudeDeg - 0.1))).toEqual(['Pollux']);
  });

  it('too faint for the eye: no star, usable or not, has one that the lab does not show', () => {
    for (const darkestLimitMagnitude of [2, 3.5, 5]) {
      const scenario = eveningScenario({ ...late, sky: { darkestLimitMagnitude } });
      const { nakedEyeLimit, stars } = keyOf({ sky: { darkestLimitMagnitude } });
      const lights = skyLights({
        catalogue,
        frame: frameOf(scenario),
        horizon: scenario.horizon,
        clouds: scenario.clouds,
        nakedEyeLimit,
        extinction: scenario.sky.extinction,
      });
      const shown = new Set(lights.map((light) => light.id));
      const named = stars.flatMap((star) => star.cautions.map(({ neighbour }) => neighbour));
      expect(named.length).toBeGreaterThan(10);
      expect(named.filter((id) => !shown.has(id))).toEqual([]);
    }
  });
});
