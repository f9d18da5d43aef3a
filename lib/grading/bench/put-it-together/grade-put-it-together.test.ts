import { describe, expect, it } from 'vitest';
import { manyBenchTasks } from '@/tests/support/bench-tasks';
import { isHazard } from '../../../assembly/hazards';
import type { AssemblyStep } from '../../../assembly/steps';
import {
  putItTogetherResultSchema,
  putItTogetherVariantSchema,
} from '../../../data/lab-tasks/bench/stored-put-it-together';
import {
  putItTogetherTemplates,
  type PutItTogetherTemplate,
  type PutItTogetherVariant,
} from '../../../variants/bench/put-it-together/put-it-together-variant';
import { generatePutItTogether } from '../../../variants/bench/put-it-together/generate-put-it-together';
import { randomFrom } from '../../../variants/random';
import { forgottenStep, gradePutItTogether } from './grade-put-it-together';
import { putItTogetherModelAnswer } from './put-it-together-model-answer';
import type { PutItTogetherSubmission } from './put-it-together-submission';

const passMark = 70;
const tasks = manyBenchTasks(generatePutItTogether, putItTogetherTemplates, 200);
const of = (...templates: PutItTogetherTemplate[]): PutItTogetherVariant[] =>
  tasks.filter((task) => templates.includes(task.template));

function resultOf(variant: PutItTogetherVariant, change: Partial<PutItTogetherSubmission> = {}) {
  const submission = { ...putItTogetherModelAnswer(variant), ...change };
  const grading = gradePutItTogether({ variant, submission });
  if (!grading.ok) throw new Error(grading.refusal.code);
  return grading.result;
}
const rightOrder = (variant: PutItTogetherVariant) => putItTogetherModelAnswer(variant).order;
/** The right order, with one step put directly before another. */
const moved = (variant: PutItTogetherVariant, step: AssemblyStep, before: AssemblyStep) => {
  const rest = rightOrder(variant).filter((one) => one !== step);
  const at = rest.indexOf(before);
  return [...rest.slice(0, at), step, ...rest.slice(at)];
};

describe('who makes no mistake', () => {
  it('earns 100 in every task, and what is stored reads back the same', () => {
    for (const variant of tasks) {
      const result = resultOf(variant);
      expect(result.slips).toEqual([]);
      expect(result.gates).toEqual([]);
      expect(result.total).toBeCloseTo(100, 9);
      expect(putItTogetherResultSchema.parse(JSON.parse(JSON.stringify(result)))).toEqual(result);
      expect(putItTogetherVariantSchema.parse(JSON.parse(JSON.stringify(variant)))).toEqual(
        variant,
      );
    }
  });
});

describe('tasks', () => {
  it('show at each moment something dangerous and something that is not', () => {
    for (const { moments } of tasks)
      for (const { seen } of moments) {
        expect(seen.some(isHazard)).toBe(true);
        expect(seen.every(isHazard)).toBe(false);
      }
  });

  it('that somebody began lack just one thing, which bears a load already', () => {
    for (const variant of of('half-built')) expect(forgottenStep(variant)).not.toBeNull();
    for (const variant of of('from-the-case', 'mixed-case', 'by-day', 'take-down'))
      expect(forgottenStep(variant)).toBeNull();
  });

  it('differ from student to student', () => {
    const drawn = new Set(tasks.map((task) => JSON.stringify(task)));
    expect(drawn.size / tasks.length).toBeGreaterThan(0.99);
  });
});

describe('a typical mistake is told as what it is', () => {
  it('the tube let go before the clamp is tight: the tube falls', () => {
    for (const variant of of('from-the-case', 'by-day', 'mixed-case')) {
      const { slips, gates } = resultOf(variant, {
        order: moved(variant, 'let-go', 'clamp-tight'),
      });
      expect(slips[0]).toMatchObject({ code: 'too-early', before: 'clamp-tight', after: 'let-go' });
      expect(gates).toEqual([{ id: 'tube-fell' }]);
    }
  });

  it('the clamp opened at the evening’s end before a hand is at the tube', () => {
    for (const variant of of('take-down')) {
      const { gates } = resultOf(variant, { order: moved(variant, 'open-clamp', 'hold-tube') });
      expect(gates).toEqual([{ id: 'tube-fell' }]);
    }
  });

  it('the mount on legs that are not locked tips over', () => {
    for (const variant of of('from-the-case', 'by-day')) {
      const { gates } = resultOf(variant, { order: moved(variant, 'mount-on', 'lock-legs') });
      expect(gates).toEqual([{ id: 'tipped-over' }]);
    }
  });

  it('the tube put on top of what somebody had left out', () => {
    for (const variant of of('half-built')) {
      const forgotten = forgottenStep(variant);
      if (forgotten === null) throw new Error('nothing was left out');
      const order = [...rightOrder(variant).filter((one) => one !== forgotten), forgotten];
      const { slips, gates } = resultOf(variant, { order });
      expect(slips[0]).toEqual({ code: 'left-undone', step: forgotten });
      expect(gates.map(({ id }) => id)).toContain('tipped-over');
    }
  });

  it('caps off by day fail the task, whatever the mark', () => {
    for (const variant of of('by-day')) {
      const { gates, slips } = resultOf(variant, { order: [...rightOrder(variant), 'caps-off'] });
      expect(gates).toEqual([{ id: 'caps-off-by-day' }]);
      expect(slips).toContainEqual({ code: 'stray', step: 'caps-off' });
    }
  });

  it('a prism on a mirror telescope, a step left out, a hazard not seen, a fear of nothing', () => {
    for (const variant of of('mixed-case')) {
      const stray = variant.cards.find((step) => !rightOrder(variant).includes(step));
      const [first] = variant.moments;
      if (stray === undefined || first === undefined) throw new Error('nothing to choose');
      const order = [...rightOrder(variant).filter((step) => step !== 'finder-on'), stray];
      const model = putItTogetherModelAnswer(variant).hazards;
      const hazards = { ...model, [first.moment]: first.seen.filter((one) => !isHazard(one)) };
      const codes = resultOf(variant, { order, hazards }).slips.map(({ code }) => code);
      for (const code of ['missing', 'stray', 'hazard-missed', 'not-a-hazard'])
        expect(codes).toContain(code);
    }
  });
});

it('a step done twice, or one that lies on no bench, is refused and not marked', () => {
  for (const variant of tasks.slice(0, 20)) {
    const { hazards, order } = putItTogetherModelAnswer(variant);
    const [first] = order;
    if (first === undefined) throw new Error('nothing to do');
    for (const wrong of [
      [first, first],
      ['caps-on', 'spread-legs', 'tube-off', 'lock-legs'],
    ])
      expect(
        gradePutItTogether({
          variant,
          submission: { order: wrong as AssemblyStep[], hazards },
        }).ok,
      ).toBe(false);
  }
});

it('clicking at random stays below the pass mark and mostly fails a gate', () => {
  const random = randomFrom('a restless hand');
  let passed = 0;
  let failed = 0;
  for (const variant of tasks) {
    const coin = () => random.next() < 0.5;
    const marked = (index: number) => variant.moments[index]?.seen.filter(coin) ?? [];
    const submission: PutItTogetherSubmission = {
      order: random.shuffle(variant.cards),
      hazards: { unfolding: marked(0), lifting: marked(1), finishing: marked(2) },
    };
    const grading = gradePutItTogether({ variant, submission });
    if (!grading.ok) throw new Error(grading.refusal.code);
    if (grading.result.total >= passMark) passed++;
    if (grading.result.gates.length > 0) failed++;
  }
  expect(passed).toBe(0);
  expect(failed / tasks.length).toBeGreaterThan(0.6);
});
