import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { separationDeg, directionFromAzAlt } from '../units/vector';
import { recorded } from './setting-record';
import {
  hazardsAtEnd,
  mostTurns,
  settingAfterAll,
  type SettingAction,
  type SettingStart,
  type SettingState,
} from './setting';

/** The Sun stands in the south-west, 15° up; the tube points south-east. */
const start: SettingStart = {
  tube: { azimuthDeg: 140, altitudeDeg: 5 },
  eyepiece: 'low',
  dot: { rightArcmin: 60, upArcmin: -30 },
  adjusters: [
    { alongDeg: 10, arcminPerTurn: 15 },
    { alongDeg: 95, arcminPerTurn: -18 },
  ],
  locked: false,
  targetId: null,
  sun: { azimuthDeg: 220, altitudeDeg: 15 },
  hasDusk: true,
};
const open: SettingAction = { do: 'caps', on: false };
const cap: SettingAction = { do: 'caps', on: true };
const careful: SettingAction[] = [
  { do: 'companion', who: 'adult' },
  { do: 'stand', where: 'building-shadow' },
];
const move = (azimuthDeg: number, altitudeDeg: number): SettingAction => ({
  do: 'move',
  azimuthDeg,
  altitudeDeg,
});

function after(...actions: SettingAction[]): SettingState {
  const state = settingAfterAll(start, actions);
  if (state === null) throw new Error('cannot be done');
  return state;
}
const hazardsOf = (...actions: SettingAction[]): string[] =>
  hazardsAtEnd(after(...actions)).map(({ id }) => id);

describe('a finder set by day', () => {
  it('is safe with an adult beside, in a building’s shadow, away from the Sun, capped afterwards', () => {
    expect(hazardsOf(...careful, open, move(150, 4), move(165, 4), cap)).toEqual([]);
  });

  it('may be turned anywhere with the caps on, past the Sun as well', () => {
    expect(hazardsOf(move(220, 15), move(300, 4), ...careful, open, cap)).toEqual([]);
  });

  it('fails when the open tube sweeps past the Sun, though both ends are far from it', () => {
    const swept = after(...careful, open, move(300, 5), cap);
    expect(swept.hazards).toHaveLength(1);
    const [hazard] = swept.hazards;
    expect(hazard?.id === 'near-sun' && hazard.how).toBe('on-the-way');
    // At altitude 5° right below a Sun 15° up.
    expect(hazard?.id === 'near-sun' ? hazard.distanceDeg : NaN).toBeCloseTo(10, 1);
  });

  it('fails when the caps come off within 30° of the Sun, at once', () => {
    const opened = after(...careful, move(200, 4), open);
    expect(opened.hazards).toMatchObject([{ id: 'near-sun', how: 'opened-there' }]);
  });

  it('fails with nobody or a classmate beside, out of the shadow, or left open', () => {
    const away = move(100, 4);
    const [adult, shadow] = careful;
    if (adult === undefined || shadow === undefined) throw new Error('two of them');
    expect(hazardsOf(shadow, away, open, cap)).toEqual(['no-adult']);
    expect(hazardsOf(shadow, { do: 'companion', who: 'classmate' }, away, open, cap)).toEqual([
      'no-adult',
    ]);
    expect(hazardsOf(adult, away, open, cap)).toEqual(['not-in-shadow']);
    expect(hazardsOf(adult, { do: 'stand', where: 'under-a-tree' }, away, open, cap)).toEqual([
      'not-in-shadow',
    ]);
    expect(hazardsOf(...careful, away, open)).toEqual(['left-open']);
    expect(hazardsOf(...careful, away, open, { do: 'wait' }, cap)).toEqual(['left-open']);
  });

  it('fails when the adult leaves while the tube is open', () => {
    const leaves: SettingAction = { do: 'companion', who: 'nobody' };
    expect(hazardsOf(...careful, move(100, 4), open, leaves, cap)).toEqual(['no-adult']);
  });

  it('remembers a hazard after the caps are on again, and the nearest of several', () => {
    const twice = after(...careful, open, move(300, -5), move(300, 5), move(140, 5), cap);
    expect(twice.hazards).toHaveLength(1);
    const [hazard] = twice.hazards;
    expect(hazard?.id === 'near-sun' ? hazard.distanceDeg : NaN).toBeCloseTo(10, 1);
  });

  it('needs none of this once the Sun is down', () => {
    expect(hazardsOf({ do: 'wait' }, open, move(220, 5))).toEqual([]);
    const dusk = settingAfterAll({ ...start, sun: null }, [open, move(220, 5)]);
    expect(dusk?.hazards).toEqual([]);
  });
});

it('the same path with caps on or off ends in the same place, and is a hazard exactly where it is near', () => {
  const place = fc.tuple(
    fc.double({ min: 0, max: 359, noNaN: true }),
    fc.double({ min: -5, max: 60, noNaN: true }),
  );
  const sunwards = directionFromAzAlt(220, 15);
  fc.assert(
    fc.property(fc.array(place, { minLength: 1, maxLength: 6 }), (places) => {
      const moves = places.map(([azimuthDeg, altitudeDeg]) => move(azimuthDeg, altitudeDeg));
      const closed = after(...careful, ...moves);
      const opened = after(...careful, open, ...moves, cap);
      expect(opened.tube).toEqual(closed.tube);
      expect(closed.hazards).toEqual([]);
      const nearAtAnEnd = places.some(
        ([azimuthDeg, altitudeDeg]) =>
          separationDeg(directionFromAzAlt(azimuthDeg, altitudeDeg), sunwards) < 29.89,
      );
      if (nearAtAnEnd) expect(opened.hazards.map(({ id }) => id)).toEqual(['near-sun']);
    }),
  );
});

describe('the screws', () => {
  it('do not turn when locked, and the dot stays', () => {
    expect(
      settingAfterAll(start, [
        { do: 'lock', on: true },
        { do: 'turn', screw: 0, toTurns: 1 },
      ]),
    ).toBe(null);
    expect(settingAfterAll(start, [{ do: 'turn', screw: 0, toTurns: mostTurns + 1 }])).toBe(null);
    const locked = after(
      { do: 'turn', screw: 0, toTurns: 1 },
      { do: 'lock', on: true },
      move(1, 2),
    );
    expect(locked.atLock?.dot).toEqual(locked.dot);
    expect(locked.atLock?.tube).toEqual(start.tube);
  });

  it('keep what was locked by day when dusk comes, and dusk comes once', () => {
    const state = after({ do: 'choose', target: 'mast' }, { do: 'lock', on: true }, { do: 'wait' });
    expect(state.dayLock?.targetId).toBe('mast');
    expect(state.targetId).toBeNull();
    expect(settingAfterAll(start, [{ do: 'wait' }, { do: 'wait' }])).toBeNull();
    expect(settingAfterAll({ ...start, hasDusk: false }, [{ do: 'wait' }])).toBeNull();
  });
});

describe('the record', () => {
  it('joins a screw turned on and on, and the way of a capped tube', () => {
    let actions: readonly SettingAction[] = [];
    for (const toTurns of [0.2, 0.4, 0.6]) {
      actions = recorded(actions, { do: 'turn', screw: 1, toTurns }, true);
    }
    for (const azimuthDeg of [10, 90, 200]) actions = recorded(actions, move(azimuthDeg, 4), true);
    expect(actions).toEqual([{ do: 'turn', screw: 1, toTurns: 0.6 }, move(200, 4)]);
  });

  it('keeps the bends of an open tube’s way to 0.1°', () => {
    // A circle of 30° round the place of the Sun, drawn in steps of a finger.
    let actions: readonly SettingAction[] = [open];
    const round = Array.from({ length: 361 }, (_, i) => {
      const turn = (i * Math.PI) / 180;
      return [180 + 30 * Math.cos(turn), 35 + 30 * Math.sin(turn)] as const;
    });
    for (const [azimuthDeg, altitudeDeg] of round) {
      actions = recorded(actions, move(azimuthDeg, altitudeDeg), false);
    }
    const kept = actions.filter((action) => action.do === 'move');
    expect(kept.length).toBeLessThan(361);
    for (const [x, y] of round) {
      const nearest = kept.slice(1).map((to, i) => {
        const from = kept[i] ?? to;
        return fromSegment([x, y], from, to);
      });
      expect(Math.min(...nearest)).toBeLessThan(0.1);
    }
  });
});

function fromSegment(
  [x, y]: readonly [number, number],
  from: { azimuthDeg: number; altitudeDeg: number },
  to: { azimuthDeg: number; altitudeDeg: number },
): number {
  const alongX = to.azimuthDeg - from.azimuthDeg;
  const alongY = to.altitudeDeg - from.altitudeDeg;
  const size = alongX ** 2 + alongY ** 2;
  const share =
    size === 0
      ? 0
      : Math.min(
          1,
          Math.max(0, ((x - from.azimuthDeg) * alongX + (y - from.altitudeDeg) * alongY) / size),
        );
  return Math.hypot(x - from.azimuthDeg - share * alongX, y - from.altitudeDeg - share * alongY);
}
