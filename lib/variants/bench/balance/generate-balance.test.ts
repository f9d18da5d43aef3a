import { describe, expect, it } from 'vitest';
import { balanceKits, balanceTask, manyBalanceTasks } from '@/tests/support/balance-tasks';
import { bestClampMm, canHold } from '../../../balance/answers';
import { creepFrom } from '../../../balance/creep';
import { afterAll } from '../../../balance/handle-tube';
import { tubeInClamp, wholeTube } from '../../../balance/tube-in-clamp';
import { balanceVariantSchema } from '../../../data/lab-tasks/bench/stored-balance';
import { torqueNm } from '../../../balance/torque';
import { isFairBalance } from './balance-fairness';
import { balanceTemplates, type BalanceVariant } from './balance-variant';

const tasks = manyBalanceTasks(120);
const ofTemplate = (template: string) => tasks.filter((task) => task.template === template);
const movesLevel = (variant: BalanceVariant, on: readonly string[], clampMm: number) =>
  creepFrom(tubeInClamp(variant, { on, clampMm }), 0, variant.holdingTorqueNm).moves;

describe('a task of "Balance"', () => {
  it('is the same for the same seed, and its JSON is read back whole', () => {
    for (const template of balanceTemplates) {
      const task = balanceTask('again', template);
      expect(balanceTask('again', template)).toEqual(task);
      expect(balanceVariantSchema.parse(JSON.parse(JSON.stringify(task)))).toEqual(task);
    }
  });

  it('is fair, with every kit and template', () => {
    for (const task of tasks) expect(isFairBalance(task), JSON.stringify(task)).toBe(true);
  });

  it('can be solved with parts that are there, on a bar that reaches', () => {
    for (const task of tasks) {
      const choices = [
        task.needed,
        [...task.needed, 'weight-front'],
        [...task.needed, 'weight-back'],
      ];
      expect(choices.some((on) => canHold(task, on))).toBe(true);
    }
  });

  it('lets no single place of the clamp serve two students', () => {
    for (const template of balanceTemplates)
      for (const kit of balanceKits) {
        const thirty = Array.from({ length: 30 }, (_, i) =>
          balanceTask(`class-${String(i)}`, template, kit),
        );
        // A place copied from the first holds for few of the others.
        const [first, ...others] = thirty;
        if (first === undefined) throw new Error('no task');
        const copied = bestClampMm(first, first.needed);
        const served = others.filter((other) => {
          const on = other.needed;
          const tube = tubeInClamp(other, { on, clampMm: copied });
          return [0, 15, 30, 45, 60, 75, 90]
            .filter((deg) => deg >= other.range.lowDeg && deg <= other.range.highDeg)
            .every((deg) => Math.abs(torqueNm(tube, deg)) <= other.holdingTorqueNm);
        });
        expect(served.length, `${template} ${kit}`).toBeLessThan(10);
      }
  });

  it('asks about either end', () => {
    for (const template of ['first-balance', 'raised'] as const) {
      const ends = ofTemplate(template).map((task) => {
        const altitudeDeg = template === 'raised' ? task.range.highDeg : 0;
        const tube = tubeInClamp(task, { on: task.needed, clampMm: task.start.clampMm });
        return creepFrom(tube, altitudeDeg, task.holdingTorqueNm).moves;
      });
      for (const end of ['front', 'back'] as const)
        expect(ends.filter((one) => one === end).length, template).toBeGreaterThan(30);
      expect(ends).not.toContain('holds');
    }
  });
});

it('a first balance begins off balance, with a hand on the tube', () => {
  for (const task of ofTemplate('first-balance')) {
    expect(task.start.handOn).toBe(true);
    expect(movesLevel(task, task.start.on, task.start.clampMm)).not.toBe('holds');
  }
});

it('a phone joins a tube that held until then at every altitude', () => {
  for (const task of ofTemplate('phone-joins')) {
    const hung = tubeInClamp(task, { on: task.start.on, clampMm: task.start.clampMm });
    for (let deg = 0; deg <= 90; deg += 5)
      expect(Math.abs(torqueNm(hung, deg))).toBeLessThanOrEqual(task.holdingTorqueNm);
    expect(movesLevel(task, task.needed, task.start.clampMm)).not.toBe('holds');
  }
});

it('a bar that is too short leaves one end heavy wherever the tube is slid', () => {
  for (const task of ofTemplate('short-bar')) {
    const { leastMm, mostMm } = task.bar;
    const ends = [leastMm, (leastMm + mostMm) / 2, mostMm].map((clampMm) =>
      movesLevel(task, task.needed, clampMm),
    );
    expect(new Set(ends).size).toBe(1);
    expect(ends).not.toContain('holds');
  }
});

it('a raised tube holds level where it is, and not at the top of its range', () => {
  for (const task of ofTemplate('raised')) {
    expect(movesLevel(task, task.needed, task.start.clampMm)).toBe('holds');
    const state = afterAll(task, [
      { do: 'foresee', moves: 'holds' },
      { do: 'hand', on: true },
      { do: 'tip', toDeg: task.range.highDeg },
      { do: 'hand', on: false },
    ]);
    expect(state.trials.at(-1)?.moves).not.toBe('holds');
  }
});

it('a tube of unknown weight tips over either edge within the bar', () => {
  for (const task of ofTemplate('two-edges')) {
    const middle = wholeTube(task, task.needed).alongMm;
    const { leastMm, mostMm } = task.bar;
    expect(movesLevel(task, task.needed, leastMm)).toBe('back');
    expect(movesLevel(task, task.needed, mostMm)).toBe('front');
    expect(movesLevel(task, task.needed, middle)).toBe('holds');
  }
});
