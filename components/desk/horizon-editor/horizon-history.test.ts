import { describe, expect, it } from 'vitest';
import {
  changeHorizon,
  horizonHistory,
  mostHorizonPoints,
  whyNotMove,
  type HorizonHistory,
} from './horizon-history';

const start = horizonHistory([
  { azimuthDeg: 40, altitudeDeg: 10 },
  { azimuthDeg: 120, altitudeDeg: 30 },
  { azimuthDeg: 300, altitudeDeg: 5 },
]);
const azimuths = (history: HorizonHistory) => history.points.map((point) => point.azimuthDeg);

describe('a skyline being edited', () => {
  it('lists its points from north round by east', () => {
    expect(
      azimuths(
        horizonHistory([
          { azimuthDeg: 300, altitudeDeg: 0 },
          { azimuthDeg: 40, altitudeDeg: 0 },
        ]),
      ),
    ).toEqual([40, 300]);
  });

  it('moves a point to the half degree', () => {
    const moved = changeHorizon(start, {
      kind: 'move',
      index: 1,
      to: { azimuthDeg: 119.8, altitudeDeg: 31.3 },
    });
    expect(moved.points[1]).toEqual({ azimuthDeg: 120, altitudeDeg: 31.5 });
    expect(moved.refusal).toBeNull();
  });

  it('stops a point at its neighbour and names both', () => {
    const moved = changeHorizon(start, {
      kind: 'move',
      index: 1,
      to: { azimuthDeg: 330, altitudeDeg: 30 },
    });
    expect(azimuths(moved)).toEqual([40, 299, 300]);
    expect(moved.refusal).toContain('Point 2 cannot pass point 3 at azimuth 300°');
  });

  it('does not let a point pass north', () => {
    const moved = changeHorizon(start, {
      kind: 'move',
      index: 0,
      to: { azimuthDeg: -4, altitudeDeg: 3 },
    });
    expect(moved.points[0]).toEqual({ azimuthDeg: 0, altitudeDeg: 3 });
    expect(moved.refusal).toContain('between 0° and 359.5°');
  });

  it('keeps altitudes between the ground and the zenith', () => {
    expect(
      changeHorizon(start, { kind: 'move', index: 0, to: { azimuthDeg: 40, altitudeDeg: -8 } })
        .points[0]?.altitudeDeg,
    ).toBe(0);
  });

  it('takes a whole drag back with one undo, and forward again', () => {
    let history = changeHorizon(start, {
      kind: 'move',
      index: 0,
      to: { azimuthDeg: 41, altitudeDeg: 11 },
    });
    history = changeHorizon(history, {
      kind: 'move',
      index: 0,
      to: { azimuthDeg: 45, altitudeDeg: 15 },
      continues: true,
    });
    const undone = changeHorizon(history, { kind: 'undo' });
    expect(undone.points).toEqual(start.points);
    expect(changeHorizon(undone, { kind: 'redo' }).points[0]).toEqual({
      azimuthDeg: 45,
      altitudeDeg: 15,
    });
  });

  it('says when there is nothing to undo', () => {
    expect(changeHorizon(start, { kind: 'undo' }).refusal).toBe('There is nothing to undo.');
  });

  it('adds in the middle of the widest gap, on the line', () => {
    const added = changeHorizon(start, { kind: 'add-in-widest-gap' });
    expect(added.points[2]).toEqual({ azimuthDeg: 210, altitudeDeg: 17.5 });
  });

  it('adds the first point of an empty skyline in the south, on the ground', () => {
    expect(changeHorizon(horizonHistory([]), { kind: 'add-in-widest-gap' }).points).toEqual([
      { azimuthDeg: 180, altitudeDeg: 0 },
    ]);
  });

  it('refuses a second point at the same azimuth', () => {
    const added = changeHorizon(start, {
      kind: 'add',
      point: { azimuthDeg: 120.3, altitudeDeg: 0 },
    });
    expect(added.points).toBe(start.points);
    expect(added.refusal).toContain('Point 2 is there already');
  });

  it('refuses more points than the format takes', () => {
    const full = horizonHistory(
      Array.from({ length: mostHorizonPoints }, (_, i) => ({ azimuthDeg: i * 5, altitudeDeg: 0 })),
    );
    expect(
      changeHorizon(full, { kind: 'add', point: { azimuthDeg: 2.5, altitudeDeg: 0 } }).refusal,
    ).toContain('at most 72');
  });

  it('removes a point and brings it back', () => {
    const removed = changeHorizon(start, { kind: 'remove', index: 1 });
    expect(azimuths(removed)).toEqual([40, 300]);
    expect(azimuths(changeHorizon(removed, { kind: 'undo' }))).toEqual([40, 120, 300]);
  });
});

it('names the neighbour that a typed azimuth would cross', () => {
  expect(whyNotMove(start.points, 2, { azimuthDeg: 100, altitudeDeg: 5 })).toContain(
    'Point 3 cannot pass point 2',
  );
  expect(whyNotMove(start.points, 2, { azimuthDeg: 130, altitudeDeg: 5 })).toBeNull();
});
