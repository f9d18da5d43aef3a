import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plainTripod, someTripod } from './some-tripod.fixture';
import { bubbleOf, startOf, tiltOfHead, type TripodSite } from './tripod';
import { act, logged, replay, type TripodAction } from './tripod-actions';

const last = (site: TripodSite, actions: TripodAction[]) => {
  const state = replay(site, actions)?.at(-1);
  if (state === undefined) throw new Error('that cannot be done');
  return state;
};
const reasonOf = (site: TripodSite, actions: TripodAction[], action: TripodAction) => {
  const outcome = act(site, last(site, actions), action);
  return outcome.ok ? null : outcome.reason;
};

const onSoftGround: TripodSite = {
  ...plainTripod,
  legs: [plainTripod.legs[0], { ...plainTripod.legs[1], sinksMm: 12 }, plainTripod.legs[2]],
};

describe('hands at a tripod', () => {
  it('a leg let out by ΔL raises the head there by ΔL cos β', () => {
    // Design, "Levelling": 20 mm at a splay of 60° are 10 mm of height, 0.849° at 0.45 m.
    const site = { ...plainTripod, splayDeg: 60 };
    const state = last(site, [
      { do: 'open', leg: 2 },
      { do: 'slide', leg: 2, toMm: 920 },
    ]);
    expect(tiltOfHead(site, state).tiltDeg).toBeCloseTo(0.8488, 4);
    expect(tiltOfHead(site, state).risesTowardsDeg).toBeCloseTo(240, 6);
  });

  it('a leg slides only while its lock is open, within its ends, and one leg at a time', () => {
    const slide: TripodAction = { do: 'slide', leg: 0, toMm: 950 };
    expect(reasonOf(plainTripod, [], slide)).toBe('locked');
    const open: TripodAction = { do: 'open', leg: 0 };
    expect(reasonOf(plainTripod, [open], { ...slide, toMm: 1201 })).toBe('out-of-range');
    expect(reasonOf(plainTripod, [open], { ...slide, toMm: 699 })).toBe('out-of-range');
    expect(reasonOf(plainTripod, [open], { do: 'open', leg: 1 })).toBe('one-leg-at-a-time');
    expect(reasonOf(plainTripod, [open, slide, { do: 'lock', leg: 0 }], slide)).toBe('locked');
  });

  it('a move is a lock opened and a leg slid, however often it is pushed on before it is locked', () => {
    const state = last(plainTripod, [
      { do: 'open', leg: 0 },
      { do: 'slide', leg: 0, toMm: 950 },
      { do: 'slide', leg: 0, toMm: 940 },
      { do: 'lock', leg: 0 },
      { do: 'open', leg: 1 },
      { do: 'lock', leg: 1 },
      { do: 'open', leg: 0 },
      { do: 'slide', leg: 0, toMm: 941 },
      { do: 'lock', leg: 0 },
    ]);
    expect(state.moves).toBe(2);
  });

  it('a foot on soft ground goes in once: when it is trodden in, or else under the tube', () => {
    const trodden = last(onSoftGround, [{ do: 'tread-in', leg: 1 }]);
    expect(tiltOfHead(onSoftGround, trodden).tiltDeg).toBeCloseTo(1.0185, 3);
    const loaded = last(onSoftGround, [{ do: 'tread-in', leg: 1 }, { do: 'tube-on' }]);
    expect(tiltOfHead(onSoftGround, loaded)).toEqual(tiltOfHead(onSoftGround, trodden));
    const untrodden = last(onSoftGround, [{ do: 'tube-on' }]);
    expect(tiltOfHead(onSoftGround, untrodden)).toEqual(tiltOfHead(onSoftGround, trodden));
    expect(tiltOfHead(onSoftGround, startOf(onSoftGround)).tiltDeg).toBeLessThan(1e-9);
  });

  it('a leg left open runs in under the tube when nobody holds it, and stands when somebody does', () => {
    const open: TripodAction = { do: 'open', leg: 2 };
    const ran = last(plainTripod, [open, { do: 'tube-on' }]);
    expect(ran).toMatchObject({ ranIn: 2, moves: 0 });
    expect(ran.legs[2].lengthMm).toBe(plainTripod.legMinMm);
    const held = last(plainTripod, [{ do: 'tube-on' }, { do: 'hold' }, open]);
    expect(held).toMatchObject({ ranIn: null });
    expect(act(plainTripod, held, { do: 'let-go' })).toMatchObject({
      ok: true,
      state: { ranIn: 2 },
    });
  });

  it('only an arm that turns can be turned, and it takes the vial with it', () => {
    expect(reasonOf(plainTripod, [], { do: 'turn-arm' })).toBe('does-not-turn');
    const site = { ...plainTripod, armTurns: true, vial: { ...plainTripod.vial, zeroUpMm: 1 } };
    expect(bubbleOf(site, startOf(site)).northMm).toBeCloseTo(1, 9);
    expect(bubbleOf(site, last(site, [{ do: 'turn-arm' }])).northMm).toBeCloseTo(-1, 9);
  });

  it('a log with an impossible action has no end', () => {
    expect(replay(plainTripod, [{ do: 'lock', leg: 0 }])).toBeNull();
  });

  it('keeps one entry for a leg that slides on, and comes to the same', () => {
    const steps = fc.array(fc.integer({ min: 850, max: 950 }), { minLength: 1, maxLength: 8 });
    fc.assert(
      fc.property(someTripod, steps, (site, lengths) => {
        const open: TripodAction = { do: 'open', leg: 1 };
        let log: readonly TripodAction[] = [open];
        for (const toMm of lengths) log = logged(log, { do: 'slide', leg: 1, toMm });
        expect(log).toHaveLength(2);
        const { leg, toMm } = { leg: 1 as const, toMm: lengths.at(-1) ?? 0 };
        fc.pre(toMm !== site.legs[1].startMm);
        expect(last(site, [...log]).legs[leg].lengthMm).toBe(toMm);
      }),
    );
  });
});
