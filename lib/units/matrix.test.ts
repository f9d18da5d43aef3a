import fc from 'fast-check';
import { Matrix4, Vector3 as ThreeVector } from 'three';
import { describe, expect, it } from 'vitest';
import {
  aboutAxis,
  aboutX,
  aboutY,
  aboutZ,
  angle,
  identity,
  multiply,
  transform,
  transpose,
  type Matrix3,
} from './matrix';
import { directionFromAzAlt, dot, type Vector3 } from './vector';

const turn = fc.double({ min: -720, max: 720, noNaN: true });
const direction = fc
  .tuple(
    fc.double({ min: 0, max: 360, noNaN: true }),
    fc.double({ min: -90, max: 90, noNaN: true }),
  )
  .map(([azimuth, altitude]) => directionFromAzAlt(azimuth, altitude));
const rotation = fc.tuple(direction, turn).map(([axis, deg]) => aboutAxis(axis, deg));

function expectClose(actual: readonly number[], expected: readonly number[]): void {
  expect(actual).toHaveLength(expected.length);
  actual.forEach((value, i) => {
    expect(value).toBeCloseTo(expected[i] ?? NaN, 12);
  });
}

/** The same turn by a general 3D library, for comparison. */
function byThree(axis: Vector3, angleDeg: number): Matrix4 {
  return new Matrix4().makeRotationAxis(new ThreeVector(...axis), (angleDeg * Math.PI) / 180);
}

const rowsOf = ({ elements: e }: Matrix4): number[] =>
  [0, 4, 8, 1, 5, 9, 2, 6, 10].map((i) => e[i] ?? NaN);

describe('turns follow the right hand', () => {
  it('a quarter about z takes east to north, about x north to up, about y up to east', () => {
    expectClose(transform(aboutZ(90), [1, 0, 0]), [0, 1, 0]);
    expectClose(transform(aboutX(90), [0, 1, 0]), [0, 0, 1]);
    expectClose(transform(aboutY(90), [0, 0, 1]), [1, 0, 0]);
  });

  it('azimuth counts the other way: about z by −20° turns 350° into 10°', () => {
    expectClose(transform(aboutZ(-20), directionFromAzAlt(350, 30)), directionFromAzAlt(10, 30));
  });

  it('are those of three.js, alone and one after the other', () => {
    fc.assert(
      fc.property(direction, turn, direction, turn, (axis1, deg1, axis2, deg2) => {
        const [one, two] = [aboutAxis(axis1, deg1), aboutAxis(axis2, deg2)];
        expectClose(one, rowsOf(byThree(axis1, deg1)));
        const both = byThree(axis1, deg1).multiply(byThree(axis2, deg2));
        expectClose(multiply(one, two), rowsOf(both));
      }),
    );
  });

  it('do not ask for an axis of length one, and refuse none at all', () => {
    expectClose(aboutAxis([0, 0, 5], 30), aboutZ(30));
    expect(() => aboutAxis([0, 0, 0], 30)).toThrow(RangeError);
  });
});

describe('rotations', () => {
  it('are undone by their transpose and leave their axis and every angle alone', () => {
    fc.assert(
      fc.property(direction, turn, direction, direction, (axis, deg, u, v) => {
        const m = aboutAxis(axis, deg);
        expectClose(multiply(m, transpose(m)), identity);
        expectClose(transform(m, axis), axis);
        expect(dot(transform(m, u), transform(m, v))).toBeCloseTo(dot(u, v), 12);
      }),
    );
  });

  it('multiplied do first what stands on the right', () => {
    fc.assert(
      fc.property(rotation, rotation, direction, (a, b, u) => {
        expectClose(transform(multiply(a, b), u), transform(a, transform(b, u)));
      }),
    );
  });
});

describe('the angle of a rotation', () => {
  it('is what it was turned by, whatever the axis', () => {
    fc.assert(
      fc.property(direction, fc.double({ min: 0, max: 180, noNaN: true }), (axis, deg) => {
        expect(angle(aboutAxis(axis, deg))).toBeCloseTo(deg, 10);
      }),
    );
  });

  it('is nothing for no turn, resolves a milliarcsecond and half a turn alike', () => {
    const milliarcsecond = 1 / 3_600_000;
    const axis = directionFromAzAlt(200, 35);
    const tiny: Matrix3 = aboutAxis(axis, milliarcsecond);
    expect(angle(identity)).toBe(0);
    expect(angle(tiny) / milliarcsecond).toBeCloseTo(1, 6);
    expect((180 - angle(aboutAxis(axis, 180 - milliarcsecond))) / milliarcsecond).toBeCloseTo(1, 5);
  });
});
