import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mountDirection } from '../pointing/mount';
import { aboutAxis, transform, transpose } from '../units/matrix';
import { azAltFromDirection, dot, length, separationDeg, type Vector3 } from '../units/vector';
import { offsetFromTube } from '../optics/tube-offset';
import { makePose, writePose } from './tube-pose';
import { tilt, truthAtStart } from './start-position';
import { identity } from '../units/matrix';

const angle = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const errors = fc.record({ altitudeZeroDeg: angle(2), coneDeg: angle(2), axisSkewDeg: angle(2) });
const base = fc
  .tuple(angle(1), angle(1), fc.double({ min: 0.1, max: 1, noNaN: true }), angle(180))
  .map(([x, y, z, turn]) => aboutAxis([x, y, z], turn));
const noDot = { rightArcmin: 0, upArcmin: 0 };

describe('the pose of the tube', () => {
  it('is that of the exact mechanics of the mount', () => {
    fc.assert(
      fc.property(angle(400), angle(100), errors, base, (azimuthDeg, altitudeDeg, e, b) => {
        const pose = makePose();
        writePose(azimuthDeg, altitudeDeg, { base: b, errors: e }, noDot, pose);
        const expected = transform(transpose(b), mountDirection({ azimuthDeg, altitudeDeg }, e));
        expect(separationDeg(pose.tube, expected)).toBeLessThan(1e-10);
        expect(separationDeg(pose.dot, expected)).toBeLessThan(1e-10);
      }),
    );
  });

  it('has its up where a little more altitude takes the tube', () => {
    fc.assert(
      fc.property(angle(180), angle(90), errors, base, (azimuthDeg, altitudeDeg, e, b) => {
        const pose = makePose();
        const lifted = makePose();
        const truth = { base: b, errors: e };
        writePose(azimuthDeg, altitudeDeg, truth, noDot, pose);
        writePose(azimuthDeg, altitudeDeg + 0.001, truth, noDot, lifted);
        expect(dot(pose.tube, pose.tubeUp)).toBeCloseTo(0, 12);
        expect(length(pose.tubeUp)).toBeCloseTo(1, 12);
        const way: Vector3 = [
          lifted.tube[0] - pose.tube[0],
          lifted.tube[1] - pose.tube[1],
          lifted.tube[2] - pose.tube[2],
        ];
        // Half of the little step is what the chord is bent by.
        expect(separationDeg(way, pose.tubeUp)).toBeLessThan(0.001);
      }),
    );
  });

  it('has the dot where the set-up says, seen from behind the tube', () => {
    fc.assert(
      fc.property(
        angle(180),
        angle(89),
        errors,
        base,
        angle(300),
        angle(300),
        (a, h, e, b, x, y) => {
          const pose = makePose();
          writePose(a, h, { base: b, errors: e }, { rightArcmin: x, upArcmin: y }, pose);
          const offsets = offsetFromTube(pose.tube, pose.tubeUp, pose.dot);
          // A plane that touches the sky: 5° is tan(5°), 0.25 % more.
          expect(offsets?.rightArcmin).toBeCloseTo(
            Math.tan(x / 60 / 57.295779513) * 3437.7467708,
            5,
          );
          expect(offsets?.upArcmin).toBeCloseTo(Math.tan(y / 60 / 57.295779513) * 3437.7467708, 5);
        },
      ),
    );
  });

  it('facing north and level, right is east and up is the zenith', () => {
    const pose = makePose();
    writePose(
      0,
      0,
      { base: identity, errors: { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 } },
      { rightArcmin: 60, upArcmin: 120 },
      pose,
    );
    const { azimuthDeg, altitudeDeg } = azAltFromDirection(pose.dot);
    expect(azimuthDeg).toBeCloseTo(1, 2);
    expect(altitudeDeg).toBeCloseTo(2, 2);
    expect(pose.tubeUp[2]).toBeCloseTo(1, 12);
    expect(offsetFromTube(pose.tube, pose.tubeUp, [0, -1, 0])).toBeNull();
  });
});

describe('the start position', () => {
  const none = { altitudeZeroDeg: 0, coneDeg: 0, axisSkewDeg: 0 };

  it('reads zero where the tube was set', () => {
    fc.assert(
      fc.property(angle(180), angle(60), (azimuth, altitudeDeg) => {
        const azimuthDeg = azimuth + 180;
        const truth = truthAtStart(identity, { azimuthDeg, altitudeDeg }, none);
        const pose = makePose();
        writePose(0, 0, truth, noDot, pose);
        const at = azAltFromDirection(pose.tube);
        expect(at.altitudeDeg).toBeCloseTo(altitudeDeg, 9);
        expect(Math.cos(((at.azimuthDeg - azimuthDeg) * Math.PI) / 180)).toBeCloseTo(1, 12);
      }),
    );
  });

  // A base that rises by t towards A_t and is believed level: the pointing less the command is
  // +t cos(A − A_t) in altitude and +t sin(A − A_t) tan a in azimuth. Design, "Levelling", to first
  // order in t; what is left is below 1.5 t² / cos² a.
  it('on a base off level points off by the rule of levelling', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1, noNaN: true }),
        angle(180),
        angle(180),
        fc.double({ min: 0, max: 60, noNaN: true }),
        (tiltDeg, towards, azimuthDeg, altitudeDeg) => {
          const truth = truthAtStart(
            transpose(tilt(tiltDeg, towards)),
            { azimuthDeg: 0, altitudeDeg: 0 },
            none,
          );
          const pose = makePose();
          writePose(azimuthDeg, altitudeDeg, truth, noDot, pose);
          const at = azAltFromDirection(pose.tube);
          const from = ((azimuthDeg - towards) * Math.PI) / 180;
          const tangent = Math.tan((altitudeDeg * Math.PI) / 180);
          const bound = ((1.5 * tiltDeg * tiltDeg) / 57.3) * (1 + tangent * tangent) + 1e-9;
          expect(Math.abs(at.altitudeDeg - altitudeDeg - tiltDeg * Math.cos(from))).toBeLessThan(
            bound,
          );
          const turned = ((at.azimuthDeg - azimuthDeg + 900) % 360) - 180;
          expect(Math.abs(turned - tiltDeg * Math.sin(from) * tangent)).toBeLessThan(bound);
        },
      ),
    );
  });
});
