import { describe, expect, it } from 'vitest';
import { manyPowerTasks, powerTask } from '@/tests/support/power-tasks';
import { powerVariantSchema } from '../../../data/lab-tasks/bench/stored-power';
import { gradePower } from '../../../grading/bench/power/grade-power';
import { powerModelAnswer } from '../../../grading/bench/power/power-model-answer';
import { isFresh } from '../../../power/cell';
import { isReversed, seriesSource } from '../../../power/holder';
import { nightAhead } from '../../../power/night';
import { benchAtStart } from '../../../power/power-bench';
import { faultsOfSupply, supplyVerdicts } from '../../../power/supply';
import { nightOf, powerTemplates, type PowerTemplate } from './power-variant';

const tasks = manyPowerTasks(200);
const of = (template: PowerTemplate) => tasks.filter((task) => task.template === template);

describe('a task of "Power"', () => {
  it('is the same for the same seed, and its JSON is read back whole', () => {
    for (const template of powerTemplates) {
      const task = powerTask('again', template);
      expect(powerTask('again', template)).toEqual(task);
      expect(powerVariantSchema.parse(JSON.parse(JSON.stringify(task)))).toEqual(task);
    }
  });

  it('lets one student’s right answer earn full marks on few other benches', () => {
    for (const template of powerTemplates) {
      const thirty = of(template).slice(0, 30);
      let served = 0;
      for (const [i, own] of thirty.entries())
        for (const [j, other] of thirty.entries()) {
          if (i === j) continue;
          const copied = gradePower({ variant: other, submission: powerModelAnswer(own) });
          if (copied.ok && copied.result.total > 99 && copied.result.gates.length === 0)
            served += 1;
        }
      expect(served / (30 * 29), template).toBeLessThan(0.02);
    }
  });
});

describe('a holder to be filled', () => {
  it('has exactly eight cells that belong together, and four that do not', () => {
    for (const { setup } of of('fill-the-holder')) {
      const sets = new Map<string, number>();
      for (const cell of setup.cells.filter(isFresh))
        sets.set(cell.kind, (sets.get(cell.kind) ?? 0) + 1);
      expect([...sets.values()].filter((count) => count >= 8)).toEqual([8]);
      expect(setup.cells).toHaveLength(12);
      expect(new Set(setup.cells.map(({ id }) => id)).size).toBe(12);
    }
  });
});

describe('a choice of supplies', () => {
  it('has one that fits, one of each thing that can be wrong, and nothing wrong twice', () => {
    for (const { setup } of of('choose-the-supply')) {
      const faults = setup.supplies.map((one) => faultsOfSupply(one, setup.needs));
      expect(faults.map((one) => one[0] ?? 'fits').sort()).toEqual([...supplyVerdicts].sort());
      expect(Math.max(...faults.map((one) => one.length))).toBe(1);
    }
  });
});

describe('a closed holder', () => {
  it('has one or two cells the wrong way round, and its total tells how many', () => {
    const counts = new Set<number>();
    for (const { setup } of of('find-the-reversed')) {
      const { bays } = benchAtStart(setup);
      const reversed = bays.filter(isReversed).length;
      counts.add(reversed);
      const total = seriesSource(bays, 20)?.openV ?? NaN;
      expect(Math.round((12 - total) / 3)).toBe(reversed);
    }
    expect([...counts].sort()).toEqual([1, 2]);
  });
});

describe('an evening to be foretold', () => {
  it('is no close call in volts or hours', () => {
    for (const variant of of('last-the-night')) {
      const night = nightOf(variant);
      if (night === null) throw new Error('holds its evening');
      const { slewingV, runTimeHours } = nightAhead(night);
      expect(Math.abs(slewingV - night.needs.resetBelowV)).toBeGreaterThanOrEqual(0.5);
      expect(Math.abs(runTimeHours / night.hours - 1)).toBeGreaterThanOrEqual(0.2);
    }
  });

  it('has each of its three outcomes about as often', () => {
    const counts = { go: 0, 'spare-set': 0, 'other-supply': 0 };
    for (const variant of of('last-the-night')) {
      const night = nightOf(variant);
      const [plan] = night === null ? [] : nightAhead(night).plans;
      if (plan !== undefined) counts[plan] += 1;
    }
    for (const [plan, count] of Object.entries(counts)) expect(count, plan).toBeGreaterThan(40);
  });
});

describe('a bench as somebody left it', () => {
  it('has power on it or a switch that is on, and one bay that is not as it should be', () => {
    for (const { setup } of of('switch-on')) {
      const bench = benchAtStart(setup);
      expect(bench.on || bench.plugged !== null).toBe(true);
      expect(bench.handControl).toBe(false);
      const kinds = bench.bays.map(({ put }) => put?.cell.kind);
      const common = kinds.filter((kind) => kinds.filter((one) => one === kind).length > 2)[0];
      const wrong = bench.bays.filter(
        (bay) =>
          bay.put === null ||
          isReversed(bay) ||
          !isFresh(bay.put.cell) ||
          bay.put.cell.kind !== common,
      );
      expect(wrong).toHaveLength(1);
    }
  });
});
