import { describe, expect, it } from 'vitest';
import { clickedAtRandom } from '@/tests/support/power-clicks';
import { manyPowerTasks, powerTask } from '@/tests/support/power-tasks';
import { powerResultSchema } from '../../../data/lab-tasks/bench/stored-power';
import { otherEnd } from '../../../power/holder';
import { nightAhead, powerPlans, type PowerNight } from '../../../power/night';
import { holderPlug, type PowerAction } from '../../../power/power-bench';
import { faultsOfSupply, type SupplyVerdict } from '../../../power/supply';
import {
  isWired,
  nightOf,
  powerTemplates,
  type PowerTemplate,
  type PowerVariant,
} from '../../../variants/bench/power/power-variant';
import { randomFrom } from '../../../variants/random';
import { gradePower } from './grade-power';
import { powerModelAnswer } from './power-model-answer';
import { emptyPowerDraft, powerSubmissionSchema, type PowerSubmission } from './power-submission';

const passMark = 70;
const tasks = manyPowerTasks(200);

function graded(variant: PowerVariant, submission: PowerSubmission) {
  const grading = gradePower({ variant, submission });
  if (!grading.ok) throw new Error(grading.refusal.message);
  return { ...grading.result, codes: grading.result.slips.map(({ code }) => code) };
}
const model = (variant: PowerVariant) => powerModelAnswer(variant);
const withActions = (variant: PowerVariant, actions: readonly PowerAction[]): PowerSubmission => ({
  ...model(variant),
  actions: [...actions],
});

describe('the model answer', () => {
  it('earns 100, fails no gate and makes no slip, on 200 benches of each template', () => {
    for (const task of tasks) {
      const submission = model(task);
      expect(powerSubmissionSchema.parse(JSON.parse(JSON.stringify(submission)))).toEqual(
        submission,
      );
      const { total, slips, gates, criteria } = graded(task, submission);
      expect({ total, slips, gates }, task.template).toEqual({ total: 100, slips: [], gates: [] });
      expect(criteria.reduce((sum, { possible }) => sum + possible, 0)).toBe(100);
    }
  });
});

describe('what is stored', () => {
  it('reads back whole, with every slip that a careless hand makes', () => {
    const random = randomFrom('stored');
    for (const task of tasks.filter((_, i) => i % 5 === 0)) {
      const grading = gradePower({ variant: task, submission: clickedAtRandom(task, random) });
      if (!grading.ok) throw new Error(grading.refusal.message);
      expect(powerResultSchema.parse(JSON.parse(JSON.stringify(grading.result)))).toEqual(
        grading.result,
      );
    }
  });
});

/** Measured: 29, 83, 35 and 40 %. Where cells lie about most clicks only move cells; nothing is wired in a sum. */
const leastGated: Readonly<Record<PowerTemplate, number>> = {
  'fill-the-holder': 0.2,
  'choose-the-supply': 2 / 3,
  'find-the-reversed': 0.25,
  'last-the-night': 0,
  'switch-on': 0.3,
};

describe('clicking at random', () => {
  it('passes next to nowhere, and fails a gate often where something is wired up', () => {
    const random = randomFrom('clicks');
    for (const template of powerTemplates) {
      const results = tasks
        .filter((task) => task.template === template)
        .map((task) => graded(task, clickedAtRandom(task, random)));
      const passed = results.filter(
        ({ total, gates }) => total >= passMark && gates.length === 0,
      ).length;
      const gated = results.filter(({ gates }) => gates.length > 0).length;
      expect(passed, template).toBe(0);
      if (isWired({ template }))
        expect(gated / results.length, template).toBeGreaterThan(leastGated[template]);
    }
  });
});

describe('guessing what is likely', () => {
  it('passes a night’s sums less than once in two hundred tries', () => {
    const random = randomFrom('guesses');
    const night = tasks.filter(({ template }) => template === 'last-the-night');
    const passed = night.flatMap((task) =>
      Array.from({ length: 20 }, () =>
        graded(task, {
          ...clickedAtRandom(task, random),
          meanMilliamperes: random.between(0, 1000),
          runTimeHours: random.between(0, 20),
          slewingVolts: random.between(0, 12),
        }),
      ).filter(({ total }) => total >= passMark),
    );
    // Measured: 6 of 4,000.
    expect(passed.length / (20 * night.length)).toBeLessThan(0.005);
  });
});

describe('mistakes of wiring', () => {
  const order = powerTask('order', 'fill-the-holder');
  const filling = model(order).actions.filter((one) => one.do === 'put');
  const handControl: PowerAction = { do: 'hand-control', connected: true };
  const plug: PowerAction = { do: 'plug', supply: holderPlug };
  const on: PowerAction = { do: 'switch', on: true };

  it('the hand control connected with the power on fails its gate and costs a quarter of the order', () => {
    const { gates, codes, criteria } = graded(
      order,
      withActions(order, [...filling, plug, on, handControl]),
    );
    expect(gates).toEqual([{ id: 'hand-control-live' }]);
    expect(codes).toEqual(
      expect.arrayContaining([
        'hand-control-live',
        'supply-before-hand-control',
        'switch-not-last',
      ]),
    );
    expect(criteria.find(({ id }) => id === 'order')).toMatchObject({ earned: 25 / 4 });
  });

  it('the supply plugged in with the switch on, and before the hand control, are told apart', () => {
    const switchFirst = graded(order, withActions(order, [...filling, handControl, on, plug]));
    expect(switchFirst.codes).toEqual(['supply-with-switch-on']);
    const supplyFirst = graded(order, withActions(order, [...filling, plug, handControl, on]));
    expect(supplyFirst.codes).toEqual(['supply-before-hand-control']);
  });

  it('cells that go in while the holder is plugged in cost a quarter of the order', () => {
    const { codes, total } = graded(
      order,
      withActions(order, [plug, ...filling, { do: 'unplug' }, handControl, plug, on]),
    );
    expect(codes).toEqual(['cells-moved-while-plugged']);
    expect(total).toBe(100 - 25 / 4);
  });

  it('all cells the wrong way round is reverse polarity', () => {
    const backwards = filling.map((one) => ({ ...one, plusEnd: otherEnd(one.plusEnd) }));
    const { gates, codes, total } = graded(
      order,
      withActions(order, [...backwards, handControl, plug, on]),
    );
    expect(gates).toEqual([{ id: 'reverse-polarity' }]);
    expect(codes.slice(0, 2)).toEqual(['reverse-polarity', 'cells-reversed']);
    expect(total).toBeLessThan(passMark);
  });

  it('one cell the wrong way round is named with its bay and what is left of the volts', () => {
    const oneTurned = filling.map((one, i) =>
      i === 4 ? { ...one, plusEnd: otherEnd(one.plusEnd) } : one,
    );
    const { slips } = graded(order, withActions(order, [...oneTurned, handControl, plug, on]));
    const slip = slips.find(({ code }) => code === 'cells-reversed');
    if (slip?.code !== 'cells-reversed') throw new Error('the slip is there');
    expect(slip.bays).toEqual([4]);
    expect(slip.openV).toBeGreaterThan(6.8);
    expect(slip.openV).toBeLessThan(9.01);
  });

  it('a used cell, and one of another kind, among the eight are each named', () => {
    const { setup } = order;
    const chosen = filling.map(({ cell }) => cell);
    const spare = setup.cells.filter(({ id }) => !chosen.includes(id));
    const usedCell = spare.find(({ left }) => left < 0.5);
    const stranger = spare.find(({ left }) => left > 0.5);
    const swap = (id: string) => filling.map((one, i) => (i === 0 ? { ...one, cell: id } : one));
    const after = [handControl, plug, on];
    expect(
      graded(order, withActions(order, [...swap(usedCell?.id ?? ''), ...after])).codes,
    ).toContain('used-among-fresh');
    expect(
      graded(order, withActions(order, [...swap(stranger?.id ?? ''), ...after])).codes,
    ).toContain('kinds-mixed');
  });
});

describe('mistakes in choosing a supply', () => {
  const choice = powerTask('choice', 'choose-the-supply');
  const using = (verdict: SupplyVerdict) => {
    const { setup } = choice;
    const supply = setup.supplies.find((one) => faultsOfSupply(one, setup.needs)[0] === verdict);
    const actions = model(choice).actions.flatMap((one): PowerAction[] =>
      one.do === 'plug'
        ? [{ do: 'plug', supply: supply?.id ?? '' }]
        : one.do === 'slew'
          ? []
          : [one],
    );
    return graded(choice, withActions(choice, actions));
  };

  it.each([
    ['wrong-polarity', 'reverse-polarity'],
    ['too-many-volts', 'over-voltage'],
    ['mains-outdoors', 'mains-outdoors'],
  ] as const)('a supply with %s fails the gate %s', (verdict, gate) => {
    const { gates, codes } = using(verdict);
    expect(gates).toEqual([{ id: gate }]);
    expect(codes).toContain(gate);
    expect(codes.includes('wrong-supply')).toBe(verdict !== 'mains-outdoors');
  });

  it.each(['too-few-volts', 'too-little-current'] as const)(
    'a supply with %s costs its 40 marks and no gate',
    (verdict) => {
      const { gates, total, slips } = using(verdict);
      expect(gates).toEqual([]);
      expect(total).toBe(60);
      expect(slips).toContainEqual(expect.objectContaining({ code: 'wrong-supply', why: verdict }));
    },
  );

  it('a label misread costs a sixth of 30 and is told with what it says', () => {
    const { setup } = choice;
    const right = setup.supplies.find((one) => faultsOfSupply(one, setup.needs).length === 0);
    const verdicts = { ...model(choice).verdicts, [right?.id ?? '']: 'too-few-volts' as const };
    const { total, slips } = graded(choice, { ...model(choice), verdicts });
    expect(total).toBeCloseTo(95, 9);
    expect(slips).toEqual([
      { code: 'verdict-wrong', supply: right?.id, said: 'too-few-volts', right: 'fits' },
    ]);
  });
});

describe('mistakes with the meter', () => {
  const closed = powerTask('closed', 'find-the-reversed');

  it('a wrong count is told with the volts that tell the right one', () => {
    const { total, slips } = graded(closed, { ...model(closed), reversedCount: 3 });
    expect(total).toBe(80);
    expect(slips[0]).toMatchObject({ code: 'count-wrong', said: 3 });
  });

  it('reading every cell twice costs some of ten marks, turning none all of forty and ten', () => {
    const reads = Array.from({ length: 16 }, (_, i): PowerAction => ({
      do: 'read',
      red: (i % 8) + 1,
      black: i % 8,
    }));
    const { codes, criteria } = graded(
      closed,
      withActions(closed, [...reads, ...model(closed).actions]),
    );
    expect(codes).toEqual(['many-readings']);
    expect(criteria.find(({ id }) => id === 'readings')?.earned).toBeLessThan(5);
    const untouched = model(closed).actions.filter(
      ({ do: done }) => done !== 'turn' && done !== 'slew',
    );
    const left = graded(closed, withActions(closed, untouched));
    expect(left.codes).toContain('cells-reversed');
    expect(left.total).toBe(50);
  });
});

describe('mistakes in foretelling the night', () => {
  const night = tasks.filter(({ template }) => template === 'last-the-night');

  it.each([
    ['capacities-added', (right: number) => right * 8],
    ['cold-forgotten', (right: number, share: number) => right / share],
  ] as const)('%s is recognised by its hours', (mistake, wrong) => {
    const cold = night.find((one) => {
      const all = nightOf(one);
      return all !== null && nightAhead(all).coldShare < 0.6;
    });
    const all = cold && nightOf(cold);
    if (cold === undefined || all === null || all === undefined)
      throw new Error('one of them is cold');
    const { runTimeHours, coldShare } = nightAhead(all);
    const { slips, total } = graded(cold, {
      ...model(cold),
      runTimeHours: wrong(runTimeHours, coldShare),
    });
    expect(slips).toEqual([
      expect.objectContaining({ code: 'run-time-off', mistake, right: runTimeHours }),
    ]);
    expect(total).toBe(50);
  });

  it.each([
    ['tracking-only', (night: PowerNight) => night.needs.trackingA],
    ['slewing-only', (night: PowerNight) => night.needs.slewingA],
    ['plain-mean', ({ needs }: PowerNight) => (needs.trackingA + needs.slewingA) / 2],
  ] as const)('a mean current that is %s is recognised', (mistake, wrongA) => {
    for (const task of night.slice(0, 40)) {
      const all = nightOf(task);
      if (all === null) throw new Error('holds its evening');
      const { slips } = graded(task, { ...model(task), meanMilliamperes: 1000 * wrongA(all) });
      expect(slips).toEqual([expect.objectContaining({ code: 'mean-current-off', mistake })]);
    }
  });

  it('the volts without a load are recognised as such, and earn nothing with any kind of cell', () => {
    for (const task of night.slice(0, 60)) {
      const all = nightOf(task);
      if (all === null) throw new Error('holds its evening');
      const { openV } = nightAhead(all);
      const { slips, criteria } = graded(task, { ...model(task), slewingVolts: openV });
      expect(slips[0]).toMatchObject({ code: 'slewing-volts-off', mistake: 'no-load' });
      expect(criteria.find(({ id }) => id === 'slewing-volts')?.earned).toBe(0);
    }
  });

  it('earns full marks within a tenth of the hours, and none three tenths off', () => {
    for (const task of night.slice(0, 40)) {
      const all = nightOf(task);
      if (all === null) throw new Error('holds its evening');
      const { runTimeHours } = nightAhead(all);
      const marksAt = (factor: number) =>
        graded(task, { ...model(task), runTimeHours: runTimeHours * factor }).total;
      expect(marksAt(1.09)).toBe(100);
      expect(marksAt(0.91)).toBe(100);
      // Half the hours' 40 marks, and half of the plan's ten that rests on them.
      expect(marksAt(1.2)).toBeCloseTo(100 - 25, 6);
      expect(marksAt(1.31)).toBe(50);
    }
  });

  it('a plan that does not fit the evening costs its ten marks', () => {
    for (const task of night.slice(0, 20)) {
      const all = nightOf(task);
      const plans = all === null ? [] : nightAhead(all).plans;
      const wrong = powerPlans.find((one) => !plans.includes(one)) ?? 'go';
      const { total, codes } = graded(task, { ...model(task), plan: wrong });
      expect([total, codes]).toEqual([90, ['plan-wrong']]);
    }
  });
});

describe('what cannot be an answer', () => {
  it('is refused: a step that cannot be done, a supply that is not there', () => {
    const task = powerTask('refused', 'choose-the-supply');
    expect(
      gradePower({ variant: task, submission: withActions(task, [{ do: 'take', bay: 1 }]) }),
    ).toMatchObject({ ok: false, refusal: { code: 'impossible-action' } });
    expect(
      gradePower({ variant: task, submission: { ...emptyPowerDraft, verdicts: { Z: 'fits' } } }),
    ).toMatchObject({ ok: false, refusal: { code: 'unknown-supply' } });
  });

  it('nothing done at all is an answer, and earns next to nothing', () => {
    for (const task of tasks.slice(0, 1000)) {
      expect(graded(task, emptyPowerDraft).total).toBeLessThan(20);
    }
  });
});
