import { Euler, Vector3 as ThreeVector } from 'three';
import { describe, expect, test } from 'vitest';
import { directionFromAzAlt } from '@/lib/units/vector';
import { cameraTurn, fromScene, sceneDirection, toScene } from './to-scene';

describe('to-scene', () => {
  test('north lies ahead, east to the right, the zenith above', () => {
    expect(toScene([0, 1, 0])).toEqual([0, 0, -1]);
    expect(toScene([1, 0, 0])).toEqual([1, 0, -0]);
    expect(toScene([0, 0, 1])).toEqual([0, 1, -0]);
  });

  test('going to the scene and back changes nothing', () => {
    for (const [azimuth, altitude] of [
      [0, 0],
      [37, 12],
      [181, -5],
      [300, 89],
    ] as const) {
      const u = directionFromAzAlt(azimuth, altitude);
      const back = fromScene(toScene(u));
      for (const axis of [0, 1, 2] as const) expect(back[axis]).toBeCloseTo(u[axis], 14);
    }
  });

  test('handedness is kept: east × north is up on both sides', () => {
    const east = new ThreeVector(...toScene([1, 0, 0]));
    const north = new ThreeVector(...toScene([0, 1, 0]));
    const up = east.cross(north);
    expect([up.x, up.y, up.z]).toEqual([0, 1, 0]);
  });

  test('a camera turned to a direction looks along it', () => {
    for (const [azimuth, altitude] of [
      [0, 0],
      [90, 0],
      [215, 40],
      [359, 85],
    ] as const) {
      const { aboutY, aboutX } = cameraTurn(azimuth, altitude);
      const looks = new ThreeVector(0, 0, -1).applyEuler(new Euler(aboutX, aboutY, 0, 'YXZ'));
      const wanted = sceneDirection(azimuth, altitude);
      expect(looks.x).toBeCloseTo(wanted[0], 12);
      expect(looks.y).toBeCloseTo(wanted[1], 12);
      expect(looks.z).toBeCloseTo(wanted[2], 12);
    }
  });
});
