import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { afterAll, handleTube } from './handle-tube';
import { startOf, type BalanceAction, type BalanceBench } from './tube-bench';

/** 2 kg, balanced at 250 mm; the clutch holds it within 10 mm of that (2 × 9.80665 × 0.01 = 0.196). */
const bench: BalanceBench = {
  tube: { massKg: 2, alongMm: 250, aboveAxisMm: 0 },
  parts: [
    {
      id: 'eyepiece-25',
      name: '25 mm',
      massKg: 0.1,
      alongMm: 250,
      aboveAxisMm: 0,
      slot: 'eyepiece',
    },
    {
      id: 'eyepiece-9',
      name: '9 mm',
      massKg: 0.1,
      alongMm: 250,
      aboveAxisMm: 0,
      slot: 'eyepiece',
    },
    { id: 'brick', name: 'brick', massKg: 1, alongMm: 600, aboveAxisMm: 0, slot: null },
  ],
  bar: { leastMm: 200, mostMm: 300 },
  holdingTorqueNm: 0.197,
  range: { lowDeg: 0, highDeg: 90 },
  asksForesight: false,
  start: { clampMm: 250, on: [], handOn: true },
};
const run = (...actions: BalanceAction[]) => afterAll(bench, actions);
const letGo = { do: 'hand', on: false } as const;
const support = { do: 'hand', on: true } as const;
const open = { do: 'clamp', open: true } as const;
const lock = { do: 'clamp', open: false } as const;
const stopOut = { do: 'stop', in: false } as const;
const stopIn = { do: 'stop', in: true } as const;
const slide = (toMm: number) => ({ do: 'slide', toMm }) as const;
const why = (actions: BalanceAction[], next: BalanceAction) => {
  const handled = handleTube(bench, afterAll(bench, actions), next);
  return handled.ok ? 'done' : handled.why;
};

describe('sliding the tube', () => {
  it('takes a hand, the stop screw out and the clamp open, and stops at the bar’s end', () => {
    expect(run(stopOut, open, slide(281)).clampMm).toBe(281);
    expect(run(stopOut, open, slide(1000)).clampMm).toBe(300);
    expect(run(stopOut, open, slide(-1000)).clampMm).toBe(200);
  });

  it('is refused while the clamp is locked or the stop screw bites', () => {
    expect(why([stopOut], slide(260))).toBe('clamp-locked');
    expect(why([open], slide(260))).toBe('stop-screw-in');
  });

  it('begun with the tube raised is noted', () => {
    expect(run({ do: 'tip', toDeg: 40 }, stopOut, open).openedRaisedDeg).toEqual([40]);
    expect(run({ do: 'tip', toDeg: 15 }, stopOut, open).openedRaisedDeg).toEqual([]);
  });
});

describe('a tube that nobody holds', () => {
  it('falls out of a clamp that is opened with the stop screw out', () => {
    const state = run(stopOut, letGo, open);
    expect(state.fallen).toBe(true);
    expect(state.hazards.map(({ id, outcome }) => [id, outcome])).toEqual([
      // Let go with the stop screw out, it hung on the clamp alone already.
      ['let-go-loose', 'clamp-alone-held'],
      ['opened-unsupported', 'fell'],
    ]);
  });

  it('is caught by the stop screw, and falls when that is turned out too', () => {
    const caught = run(letGo, open);
    expect(caught.fallen).toBe(false);
    expect(caught.hazards).toEqual([{ id: 'opened-unsupported', outcome: 'caught-by-stop-screw' }]);
    expect(run(letGo, open, stopOut).fallen).toBe(true);
  });

  it('falls when the hand leaves it in an open clamp', () => {
    expect(run(stopOut, open, letGo).hazards).toEqual([{ id: 'let-go-loose', outcome: 'fell' }]);
  });

  it('must be picked up before anything else, and then is safe in a hand', () => {
    expect(why([stopOut, open, letGo], lock)).toBe('lies-on-the-ground');
    const back = run(stopOut, open, letGo, { do: 'pick-up' });
    expect(back).toMatchObject({ fallen: false, handOn: true, clampOpen: false });
    expect(back.hazards).toHaveLength(1);
  });

  it('leaves no hazard behind where all was locked first', () => {
    expect(run(stopOut, open, slide(255), lock, stopIn, letGo, support).hazards).toEqual([]);
  });
});

describe('letting go', () => {
  it('shows which end sinks, and the tube stays where it comes to rest', () => {
    const front = run(stopOut, open, slide(261), lock, stopIn, { do: 'tip', toDeg: 30 }, letGo);
    expect(front.trials).toHaveLength(1);
    // 11 mm · cos 30° is less than the 10.04 mm that the clutch stands: it holds there, not at 20°.
    expect(front.trials[0]?.moves).toBe('holds');
    const lower = run(stopOut, open, slide(261), lock, stopIn, { do: 'tip', toDeg: 20 }, letGo);
    expect(lower.trials[0]?.moves).toBe('front');
    expect(lower.altitudeDeg).toBe(-10);
    const back = run(stopOut, open, slide(239), lock, stopIn, letGo);
    expect(back.trials[0]?.moves).toBe('back');
    // cos a = 10.04 / 11
    expect(back.altitudeDeg).toBeCloseTo(24.1, 1);
  });

  it('counts for the arrangement it was tried in, and for no later one', () => {
    const tried = run(letGo, support, stopOut, open, slide(252), lock);
    expect(tried.trials[0]?.arrangement).toBe(0);
    expect(tried.arrangement).toBe(1);
  });
});

describe('parts', () => {
  it('of one slot take each other’s place', () => {
    const both = run(
      { do: 'part', id: 'eyepiece-25', on: true },
      { do: 'part', id: 'eyepiece-9', on: true },
    );
    expect(both.on).toEqual(['eyepiece-9']);
  });

  it('put on with no hand on the tube let it swing, and in a hand do not', () => {
    // 3 kg with its centre (500 + 600) / 3 − 250 mm behind: cos a = 0.197 / (3 g · 0.11667).
    const brick = { do: 'part', id: 'brick', on: true } as const;
    const [swing] = run(letGo, brick).swings;
    expect(swing?.fromDeg).toBe(0);
    expect(swing?.toDeg).toBeCloseTo(86.71, 2);
    expect(run(brick).swings).toEqual([]);
  });

  it('that the bench does not have cannot be put on', () => {
    expect(run({ do: 'part', id: 'anvil', on: true })).toEqual(startOf(bench));
  });
});

describe('a foresight', () => {
  const asking = { ...bench, asksForesight: true };
  it('comes before anything is touched, and not after', () => {
    expect(handleTube(asking, startOf(asking), letGo)).toMatchObject({
      ok: false,
      why: 'foresee-first',
    });
    const foresee = { do: 'foresee', moves: 'front' } as const;
    const touched = afterAll(asking, [foresee, letGo]);
    expect(touched.foreseen).toBe('front');
    expect(afterAll(asking, [foresee, letGo, { do: 'foresee', moves: 'back' }])).toEqual(touched);
    // Until then one may think again.
    expect(afterAll(asking, [foresee, { do: 'foresee', moves: 'back' }]).foreseen).toBe('back');
  });
});

it('whatever is done, the tube stays on the bar and between the stops, and a fall is a hazard', () => {
  const action: fc.Arbitrary<BalanceAction> = fc.oneof(
    fc.boolean().map((on) => ({ do: 'hand', on }) as const),
    fc.boolean().map((is) => ({ do: 'clamp', open: is }) as const),
    fc.boolean().map((is) => ({ do: 'stop', in: is }) as const),
    fc.integer({ min: 150, max: 350 }).map(slide),
    fc.integer({ min: 0, max: 90 }).map((toDeg) => ({ do: 'tip', toDeg }) as const),
    fc
      .record({ id: fc.constantFrom('eyepiece-25', 'eyepiece-9', 'brick'), on: fc.boolean() })
      .map((part) => ({ do: 'part', ...part }) as const),
    fc.constant({ do: 'pick-up' } as const),
  );
  fc.assert(
    fc.property(fc.array(action, { maxLength: 60 }), (actions) => {
      const state = afterAll(bench, actions);
      expect(state.clampMm).toBeGreaterThanOrEqual(200);
      expect(state.clampMm).toBeLessThanOrEqual(300);
      expect(state.altitudeDeg).toBeGreaterThanOrEqual(-10);
      expect(state.altitudeDeg).toBeLessThanOrEqual(95);
      if (state.fallen) expect(state.hazards.some(({ outcome }) => outcome === 'fell')).toBe(true);
      if (!state.handOn && state.clampOpen) expect(state.hazards.length).toBeGreaterThan(0);
    }),
  );
});
