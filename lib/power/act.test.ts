import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { act, replay } from './act';
import { bayEnds, otherEnd, type BayEnd } from './holder';
import { benchAtStart, loose, type PowerAction, type PowerSetup } from './power-bench';
import { slewingV, terminalsOf } from './terminals';

const springEnds: BayEnd[] = Array.from({ length: 8 }, (_, i) => bayEnds[i % 2] ?? 'top');
const letters = ['A', 'B', 'C', 'D', 'E', 'F', 'G', 'H'];
const full = springEnds.map((end, i) => ({ cell: letters[i] ?? '', plusEnd: otherEnd(end) }));
const backwards = full.map((put) => ({ ...put, plusEnd: otherEnd(put.plusEnd) }));

const setup = (over: Partial<PowerSetup['start']> = {}): PowerSetup => ({
  needs: {
    nominalV: 12,
    centre: 'positive',
    highestV: 14,
    resetBelowV: 7.2,
    trackingA: 0.2,
    slewingA: 1.2,
  },
  temperatureC: 20,
  springEnds,
  cells: letters.map((id) => ({ id, kind: 'alkaline', left: 1 })),
  supplies: [
    { id: 'P', form: 'battery-pack', volts: 12, ratedA: 2, centre: 'positive' },
    { id: 'Q', form: 'battery-pack', volts: 12, ratedA: 2, centre: 'negative' },
    { id: 'R', form: 'battery-pack', volts: 24, ratedA: 2, centre: 'positive' },
    { id: 'S', form: 'mains-adapter', volts: 12, ratedA: 2, centre: 'positive' },
    { id: 'T', form: 'battery-pack', volts: 12, ratedA: 0.5, centre: 'positive' },
  ],
  start: { bays: full, plugged: null, handControl: false, on: false, ...over },
});

function happenedWith(actions: readonly PowerAction[], over: Partial<PowerSetup['start']> = {}) {
  const bench = setup(over);
  const played = replay(bench, benchAtStart(bench), actions);
  if (played === null) throw new Error('cannot be done');
  return { ...played, codes: played.happened.map(({ code }) => code) };
}

const handControl: PowerAction = { do: 'hand-control', connected: true };
const switchOn: PowerAction = { do: 'switch', on: true };
const plug = (supply: string): PowerAction => ({ do: 'plug', supply });

describe('the order of the design', () => {
  it('hand control, supply, switch on: the telescope runs and nothing happened on the way', () => {
    const { bench, codes } = happenedWith([handControl, plug('holder'), switchOn, { do: 'slew' }]);
    expect(codes).toEqual([]);
    expect(terminalsOf(setup(), bench)).toMatchObject({ computer: 'running', currentA: 0.2 });
    expect([bench.supplyWentInAfter, bench.switchedOnLast]).toEqual([true, true]);
  });

  it('the hand control connected with the power on is seen, and so is pulling it', () => {
    expect(happenedWith([plug('P'), switchOn, handControl]).codes).toEqual(['hand-control-live']);
    expect(
      happenedWith([handControl, plug('P'), switchOn, { do: 'hand-control', connected: false }])
        .codes,
    ).toEqual(['hand-control-pulled-live']);
  });

  it('the supply before the hand control, or last with the switch on, is seen in the bench', () => {
    expect(happenedWith([plug('P'), handControl, switchOn]).bench.supplyWentInAfter).toBe(false);
    const late = happenedWith([handControl, switchOn, plug('P')]);
    expect(late.codes).toEqual(['supply-with-switch-on']);
    expect(late.bench.switchedOnLast).toBe(false);
  });

  it('put right, an order is right: what was plugged too early comes out and goes in again', () => {
    const { bench } = happenedWith([plug('P'), { do: 'unplug' }, handControl, plug('P'), switchOn]);
    expect([bench.supplyWentInAfter, bench.switchedOnLast]).toEqual([true, true]);
  });

  it('cells moved while the holder is plugged in are seen; while it is not, they are not', () => {
    expect(happenedWith([plug('holder'), { do: 'turn', bay: 3 }]).codes).toEqual([
      'cells-moved-while-plugged',
    ]);
    expect(happenedWith([{ do: 'turn', bay: 3 }, plug('holder')]).codes).toEqual([]);
  });
});

describe('what harms', () => {
  it('all cells the wrong way round is reverse polarity, at minus twelve volts', () => {
    const { happened } = happenedWith([handControl, plug('holder'), switchOn], { bays: backwards });
    expect(happened).toEqual([{ code: 'reverse-polarity', volts: -12 }]);
  });

  it('a plug with its middle negative is reverse polarity once the switch is on, not before', () => {
    expect(happenedWith([handControl, plug('Q')]).codes).toEqual([]);
    expect(happenedWith([handControl, plug('Q'), switchOn]).happened).toEqual([
      { code: 'reverse-polarity', volts: -12 },
    ]);
  });

  it('24 volts are too many, and a mains adapter is seen as soon as it is plugged in', () => {
    expect(happenedWith([handControl, plug('R'), switchOn]).happened).toEqual([
      { code: 'over-voltage', volts: 24 },
    ]);
    expect(happenedWith([plug('S')]).happened).toEqual([{ code: 'mains-outdoors', supply: 'S' }]);
  });
});

describe('sag', () => {
  it('a supply of 0.5 A runs the computer and drops it in the first slew', () => {
    const { happened } = happenedWith([handControl, plug('T'), switchOn, { do: 'slew' }]);
    // By hand: 12 V × 0.5 A / 1.2 A.
    expect(happened).toEqual([{ code: 'reset', volts: 5 }]);
  });

  it('one cell the wrong way round still starts the computer, and a slew makes it restart', () => {
    const oneTurned = full.map((put, i) => (i === 2 ? (backwards[i] ?? null) : put));
    const start = { bays: oneTurned };
    const { bench, happened } = happenedWith(
      [handControl, plug('holder'), switchOn, { do: 'slew' }],
      start,
    );
    // By hand: six cells of 1.5 V; eight of 0.2 ohm: 9 − 0.2 × 1.6 = 8.68 V, 9 − 1.2 × 1.6 = 7.08 V.
    expect(terminalsOf(setup(start), bench).volts).toBeCloseTo(8.68, 12);
    expect(slewingV(setup(start), bench)).toBeCloseTo(7.08, 12);
    expect(happened.map(({ code }) => code)).toEqual(['reset']);
  });
});

describe('what cannot be done', () => {
  it.each<PowerAction>([
    { do: 'put', cell: 'A', bay: 0, plusEnd: 'top' },
    { do: 'put', cell: 'Z', bay: 0, plusEnd: 'top' },
    { do: 'take', bay: 8 },
    { do: 'turn', bay: 9 },
    { do: 'plug', supply: 'Z' },
    { do: 'unplug' },
    { do: 'switch', on: false },
    { do: 'hand-control', connected: false },
    { do: 'slew' },
    { do: 'read', red: 3, black: 3 },
    { do: 'read', red: 9, black: 0 },
  ])('%o is refused', (action) => {
    expect(act(setup(), benchAtStart(setup()), action)).toBeNull();
  });
});

it('no cell is lost or doubled, whatever is done', () => {
  const bay = fc.nat(7);
  const action: fc.Arbitrary<PowerAction> = fc.oneof(
    fc.record({
      do: fc.constant('put' as const),
      cell: fc.constantFrom(...letters),
      bay,
      plusEnd: fc.constantFrom(...bayEnds),
    }),
    fc.record({ do: fc.constant('take' as const), bay }),
    fc.record({ do: fc.constant('turn' as const), bay }),
  );
  fc.assert(
    fc.property(fc.array(action, { maxLength: 60 }), (actions) => {
      const start = setup();
      let bench = benchAtStart(start);
      for (const one of actions) bench = act(start, bench, one)?.bench ?? bench;
      const inBays = bench.bays.flatMap(({ put }) => (put ? [put.cell.id] : []));
      const all = [...inBays, ...loose(start, bench).map(({ id }) => id)];
      expect(all.sort()).toEqual(letters);
    }),
  );
});
