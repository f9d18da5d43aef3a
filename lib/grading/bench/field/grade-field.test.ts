import { describe, expect, it } from 'vitest';
import { manyBenchTasks } from '@/tests/support/bench-tasks';
import { fieldResultSchema, fieldVariantSchema } from '../../../data/lab-tasks/bench/stored-field';
import { driftTimeSeconds } from '../../../optics/drift-time';
import { bestEyepiece, does } from '../../../variants/bench/field/field-eyepieces';
import {
  fieldTemplates,
  type FieldTemplate,
  type FieldVariant,
} from '../../../variants/bench/field/field-variant';
import { generateField } from '../../../variants/bench/field/generate-field';
import { randomFrom } from '../../../variants/random';
import { fieldModelAnswer } from './field-model-answer';
import { fieldSubmissionSchema, focusTravelMm, type FieldSubmission } from './field-submission';
import { gradeField } from './grade-field';

const passMark = 70;
const tasks = manyBenchTasks(generateField, fieldTemplates, 200);
const of = (template: FieldTemplate): FieldVariant[] =>
  tasks.filter((task) => task.template === template);

function resultOf(variant: FieldVariant, change: Partial<FieldSubmission> = {}) {
  const submission = { ...fieldModelAnswer(variant), ...change };
  const grading = gradeField({ variant, submission });
  if (!grading.ok) throw new Error(grading.refusal.code);
  return grading.result;
}
const codes = (variant: FieldVariant, change: Partial<FieldSubmission>) =>
  resultOf(variant, change).slips.map(({ code }) => code);

describe('who makes no mistake', () => {
  it('earns 100 in every task, and what is stored reads back the same', () => {
    for (const variant of tasks) {
      const result = resultOf(variant);
      expect(result.slips).toEqual([]);
      expect(result.total).toBeCloseTo(100, 9);
      expect(fieldResultSchema.parse(JSON.parse(JSON.stringify(result)))).toEqual(result);
      expect(fieldVariantSchema.parse(JSON.parse(JSON.stringify(variant)))).toEqual(variant);
      expect(fieldSubmissionSchema.parse(fieldModelAnswer(variant))).toEqual(
        fieldModelAnswer(variant),
      );
    }
  });
});

describe('tasks', () => {
  it('leave something to choose: some eyepiece does it and some does not, or none can', () => {
    for (const variant of tasks) {
      const good = variant.eyepieces.filter((eyepiece) => does(variant, eyepiece)).length;
      expect(good).toBeLessThan(variant.eyepieces.length);
      if (variant.target.kind !== 'double') expect(good).toBeGreaterThan(0);
    }
  });

  it('of doubles are split by some telescopes and too close for others', () => {
    const none = of('split-the-double').filter((task) => bestEyepiece(task) === undefined).length;
    expect(none).toBeGreaterThan(10);
    expect(none).toBeLessThan(100);
  });

  it('are the same from the same seed and seldom the same from another', () => {
    const again = manyBenchTasks(generateField, fieldTemplates, 3);
    expect(again[0]).toEqual(tasks[0]);
    const answers = new Set(tasks.map((task) => JSON.stringify(fieldModelAnswer(task))));
    expect(answers.size / tasks.length).toBeGreaterThan(0.9);
  });
});

describe('a typical mistake is told as what it is', () => {
  it('all power, and the cluster hangs over the edge', () => {
    for (const variant of of('whole-cluster')) {
      const tooSmall = variant.eyepieces.find((eyepiece) => !does(variant, eyepiece));
      expect(codes(variant, { eyepieceId: tooSmall?.id ?? '' })).toContain('field-too-small');
    }
  });

  it('half the field, the apparent field, degrees written for arcminutes', () => {
    const [variant] = of('whole-moon');
    if (variant === undefined) throw new Error('no task');
    const { fieldArcmin } = resultOf(variant);
    const slipOf = (said: number) => resultOf(variant, { fieldArcmin: said }).slips[0];
    expect(slipOf(fieldArcmin / 2)).toMatchObject({ code: 'field-off', slip: 'half-of-it' });
    expect(slipOf(fieldArcmin / 60)).toMatchObject({ slip: 'degrees-for-arcminutes' });
    const eyepiece = bestEyepiece(variant);
    expect(slipOf(eyepiece?.apparentFieldDeg ?? 0)).toMatchObject({ slip: 'apparent-field' });
  });

  it('a drift time without the declination, where that matters', () => {
    const high = of('whole-cluster').filter(({ target }) => Math.abs(target.declinationDeg) > 35);
    expect(high.length).toBeGreaterThan(10);
    for (const variant of high) {
      const { fieldArcmin } = resultOf(variant);
      const [slip] = resultOf(variant, { driftSeconds: driftTimeSeconds(fieldArcmin, 0) }).slips;
      expect(slip).toMatchObject({ code: 'drift-off', forgotDeclination: true });
    }
  });

  it('the tube sent where the star seems to be, in a view that is not true', () => {
    for (const variant of tasks.filter(({ asks }) => asks.includes('way'))) {
      const { starInView, orientation } = variant;
      const along = starInView.right > 0 ? ('right' as const) : ('left' as const);
      const up = starInView.up > 0 ? ('up' as const) : ('down' as const);
      const naive = resultOf(variant, { way: { along, up } });
      if (orientation === 'true') expect(naive.total).toBeCloseTo(100, 9);
      else expect(naive.slips[0]).toMatchObject({ code: 'way-wrong', asInTrueView: true });
    }
  });

  it('out of focus by two millimetres', () => {
    for (const variant of of('lost-star')) {
      const { focusMm } = fieldModelAnswer(variant);
      const off = focusMm + (focusMm > 0 ? -2 : 2);
      expect(codes(variant, { focusMm: off })).toContain('out-of-focus');
    }
  });

  it('an eyepiece that would have let the star through in another time', () => {
    for (const variant of of('by-the-drift')) {
      const other = variant.eyepieces.find(({ id }) => id !== variant.unlabelled?.eyepieceId);
      expect(codes(variant, { eyepieceId: other?.id ?? '' })).toContain('wrong-eyepiece-in');
    }
  });

  it('"none will do" where one does, and any eyepiece where none does', () => {
    for (const variant of of('split-the-double')) {
      const best = bestEyepiece(variant);
      if (best === undefined) {
        const [any] = variant.eyepieces;
        expect(codes(variant, { eyepieceId: any?.id ?? '' })).toContain(
          'closer-than-the-aperture-splits',
        );
      } else expect(codes(variant, { eyepieceId: 'none' })).toContain('it-could-be-done');
    }
  });
});

it('an eyepiece that is not on the bench, or an answer left out, is refused and not marked', () => {
  for (const variant of tasks.slice(0, 5)) {
    const submission = fieldModelAnswer(variant);
    const wrong = [
      { ...submission, eyepieceId: 'another' },
      { ...submission, fieldArcmin: null },
    ];
    for (const one of wrong) expect(gradeField({ variant, submission: one }).ok).toBe(false);
  }
});

it('clicking at random stays below the pass mark', () => {
  const random = randomFrom('a restless hand');
  const side = () => ({
    along: random.pick(['left', 'right'] as const) ?? 'left',
    up: random.pick(['up', 'down'] as const) ?? 'up',
  });
  const passed = tasks.filter((variant) => {
    const { asks } = variant;
    const submission: FieldSubmission = {
      eyepieceId: random.pick(variant.eyepieces)?.id ?? 'none',
      focusMm: random.between(-focusTravelMm, focusTravelMm),
      fieldArcmin: asks.includes('field') ? random.between(5, 200) : null,
      driftSeconds: asks.includes('drift') ? random.between(30, 1200) : null,
      limitArcsec: asks.includes('limit') ? random.between(0.2, 5) : null,
      way: asks.includes('way') ? side() : null,
      view: asks.includes('view') ? side() : null,
    };
    const grading = gradeField({ variant, submission });
    return grading.ok && grading.result.total >= passMark;
  });
  expect(passed.length / tasks.length).toBeLessThan(0.05);
});
