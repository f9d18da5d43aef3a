import { describe, expect, it } from 'vitest';
import { balanceTask, manyBalanceTasks } from '@/tests/support/balance-tasks';
import { bestClampMm, edgeMm } from '../../../balance/answers';
import { afterAll } from '../../../balance/handle-tube';
import { wholeTube } from '../../../balance/tube-in-clamp';
import type { BalanceAction } from '../../../balance/tube-bench';
import { balanceResultSchema } from '../../../data/lab-tasks/bench/stored-balance';
import { randomFrom, type Random } from '../../../variants/random';
import {
  balanceTemplates,
  type BalanceVariant,
} from '../../../variants/bench/balance/balance-variant';
import { balanceModelAnswer } from './balance-model-answer';
import { balanceSubmissionSchema, type BalanceSubmission } from './balance-submission';
import { movesAskedAbout, readingAskedFor } from './balance-truth';
import { gradeBalance } from './grade-balance';

const passMark = 70;

function resultOf(variant: BalanceVariant, submission: BalanceSubmission) {
  const grading = gradeBalance({ variant, submission });
  if (!grading.ok) throw new Error(grading.refusal.code);
  return grading.result;
}
const codes = (variant: BalanceVariant, submission: BalanceSubmission) =>
  resultOf(variant, submission).slips.map(({ code }) => code);

/** The model answer with some of its actions replaced. */
function changed(
  variant: BalanceVariant,
  change: (action: BalanceAction) => BalanceAction | BalanceAction[],
): BalanceSubmission {
  const model = balanceModelAnswer(variant);
  return { ...model, actions: model.actions.flatMap(change) };
}
const slidTo = (variant: BalanceVariant, toMm: number): BalanceSubmission =>
  changed(variant, (action) => (action.do === 'slide' ? { ...action, toMm } : action));

describe('who makes no mistake', () => {
  it('earns 100 in every task of every template, with no gate and no slip', () => {
    const tasks = manyBalanceTasks(200);
    expect(tasks).toHaveLength(200 * balanceTemplates.length);
    for (const variant of tasks) {
      const submission = balanceModelAnswer(variant);
      expect(balanceSubmissionSchema.parse(submission)).toEqual(submission);
      const result = resultOf(variant, submission);
      expect(result.total, JSON.stringify({ variant, result })).toBeCloseTo(100, 9);
      expect(result.gates).toEqual([]);
      expect(result.slips).toEqual([]);
    }
  });

  it('has criteria that sum to 100', () => {
    for (const template of balanceTemplates) {
      const task = balanceTask('sum', template);
      const { criteria } = resultOf(task, balanceModelAnswer(task));
      expect(criteria.reduce((sum, { possible }) => sum + possible, 0)).toBe(100);
    }
  });
});

it('a result is read back from its JSON whole', () => {
  for (const variant of manyBalanceTasks(6))
    for (const submission of [
      balanceModelAnswer(variant),
      slidTo(variant, variant.bar.leastMm),
      randomClicks(variant, randomFrom('stored')),
    ]) {
      const result = resultOf(variant, submission);
      expect(balanceResultSchema.parse(JSON.parse(JSON.stringify(result)))).toEqual(result);
    }
});

describe('a typical mistake', () => {
  const first = balanceTask('mistakes', 'first-balance');

  it('left at the bar’s end: it creeps, and is told which end sinks and how far to slide', () => {
    const { leastMm, mostMm } = first.bar;
    for (const end of [leastMm, mostMm]) {
      const result = resultOf(first, slidTo(first, end));
      const [worst] = result.slips;
      expect(worst).toMatchObject({ code: 'creeps', because: 'off-balance' });
      if (worst?.code !== 'creeps') throw new Error('no creep');
      // The clamp at the front end of the bar leaves most of the tube behind it.
      expect(worst.end).toBe(end === leastMm ? 'back' : 'front');
      expect(worst.slideMm).toBeCloseTo(bestClampMm(first, first.needed) - end, 9);
      expect(result.total).toBeLessThan(passMark);
    }
  });

  it('held, but by little: the reserve alone is lost', () => {
    const tube = wholeTube(first, first.needed);
    const edge = edgeMm(tube, first.holdingTorqueNm);
    const result = resultOf(first, slidTo(first, tube.alongMm + 0.97 * edge));
    expect(result.slips).toMatchObject([{ code: 'little-reserve' }]);
    expect(result.total).toBeGreaterThanOrEqual(85);
    expect(result.total).toBeLessThan(90);
  });

  it('the wrong end foreseen', () => {
    const was = movesAskedAbout(first);
    const said = was === 'front' ? 'back' : 'front';
    const submission = changed(first, (action) =>
      action.do === 'foresee' ? { ...action, moves: said } : action,
    );
    const result = resultOf(first, submission);
    expect(result.slips).toEqual([{ code: 'foreseen-wrong', said, was }]);
    expect(result.total).toBeCloseTo(85, 9);
  });

  it('never let go high up: the upper half of the trials is lost', () => {
    const submission = changed(first, (action) =>
      action.do === 'tip' ? { ...action, toDeg: 0 } : action,
    );
    expect(resultOf(first, submission).slips).toEqual([
      { code: 'not-tested', low: false, high: true },
    ]);
  });

  it('opened the clamp with the tube raised', () => {
    const submission = changed(first, (action) =>
      action.do === 'stop' && !action.in ? [{ do: 'tip', toDeg: 50 }, action] : action,
    );
    expect(resultOf(first, submission).slips).toEqual([
      { code: 'opened-raised', times: 1, highestDeg: 50 },
    ]);
  });

  it('a needed part left off: the tube is judged with it on', () => {
    const submission = changed(first, (action) =>
      action.do === 'stop' && !action.in
        ? [{ do: 'part', id: 'eyepiece-25', on: false }, action]
        : action,
    );
    const [name] = first.parts.filter(({ id }) => id === 'eyepiece-25').map((part) => part.name);
    const result = resultOf(first, submission);
    expect(result.slips).toContainEqual({ code: 'part-missing', names: [name] });
  });

  it('the phone put on with no hand on the tube: it swings', () => {
    const phone = balanceTask('mistakes', 'phone-joins');
    const submission = changed(phone, (action) =>
      action.do === 'part'
        ? [{ do: 'hand', on: false }, action, { do: 'hand', on: true }, { do: 'tip', toDeg: 0 }]
        : action,
    );
    expect(codes(phone, submission)).toEqual(['swung']);
  });

  it.each([
    ['wrong-way', (v: BalanceVariant) => readingAskedFor(v).wrongWayMm],
    ['mass-left-out', (v: BalanceVariant) => readingAskedFor(v).massLeftOutMm],
  ] as const)('a new balance point reckoned %s is told by its name', (mistake, figure) => {
    const phone = balanceTask('mistakes', 'phone-joins');
    const readingMm = figure(phone);
    const result = resultOf(phone, { ...balanceModelAnswer(phone), readingMm });
    expect(result.slips).toMatchObject([{ code: 'reading-off', mistake }]);
  });

  it('one edge taken for the balance point is told by its name, and earns nothing for it', () => {
    const edges = balanceTask('mistakes', 'two-edges');
    for (const readingMm of readingAskedFor(edges).edgesMm) {
      const result = resultOf(edges, { ...balanceModelAnswer(edges), readingMm });
      expect(result.slips).toMatchObject([{ code: 'reading-off', mistake: 'one-edge' }]);
      expect(result.total).toBeCloseTo(85, 9);
    }
  });

  it('a weight left in its box: the bar is too short for what is on the tube', () => {
    const short = balanceTask('mistakes', 'short-bar');
    const end = bestClampMm(short, short.needed);
    const submission = changed(short, (action) =>
      action.do === 'part' && action.id.startsWith('weight')
        ? []
        : action.do === 'slide'
          ? { ...action, toMm: end }
          : action,
    );
    const result = resultOf(short, submission);
    expect(result.slips).toContainEqual(
      expect.objectContaining({ code: 'creeps', because: 'bar-too-short' }),
    );
    expect(result.picture.bestClampMm).toBeNull();
  });

  it('a raised tube balanced level only', () => {
    for (const kit of ['wren', 'heron', 'owl'] as const) {
      const raised = balanceTask('mistakes', 'raised', kit);
      const result = resultOf(raised, slidTo(raised, raised.start.clampMm));
      expect(result.slips).toContainEqual(
        expect.objectContaining({ code: 'creeps', because: 'balanced-level-only' }),
      );
    }
  });
});

describe('the gates', () => {
  const variant = balanceTask('gates', 'first-balance');
  const gatesOf = (submission: BalanceSubmission) => resultOf(variant, submission).gates;

  it('fail who opens the clamp with no hand under the tube, whatever the mark', () => {
    const submission = changed(variant, (action) =>
      action.do === 'stop' && !action.in
        ? [
            { do: 'hand', on: false },
            { do: 'clamp', open: true },
            { do: 'hand', on: true },
            { do: 'tip', toDeg: 0 },
            action,
          ]
        : action,
    );
    expect(gatesOf(submission)).toEqual([
      { id: 'opened-unsupported', times: 1, outcome: 'caught-by-stop-screw' },
    ]);
    expect(resultOf(variant, submission).total).toBeGreaterThanOrEqual(passMark);
  });

  it('fail who lets go with the stop screw out', () => {
    const submission = changed(variant, (action) =>
      action.do === 'stop' && action.in ? [] : action,
    );
    expect(gatesOf(submission)).toEqual([
      { id: 'let-go-loose', times: 2, outcome: 'clamp-alone-held' },
    ]);
  });

  it('fail who turns the stop screw out once the hand has gone', () => {
    const model = balanceModelAnswer(variant);
    const actions: BalanceAction[] = [...model.actions, { do: 'stop', in: false }];
    expect(gatesOf({ ...model, actions })).toEqual([
      { id: 'let-go-loose', times: 1, outcome: 'clamp-alone-held' },
    ]);
  });

  it('fail who lets the tube fall, and it is told that it fell', () => {
    const submission = changed(variant, (action) =>
      action.do === 'clamp' && !action.open
        ? [{ do: 'hand', on: false }, { do: 'pick-up' }]
        : action,
    );
    expect(gatesOf(submission)).toMatchObject([{ id: 'let-go-loose', outcome: 'fell' }]);
  });
});

describe('no answer', () => {
  const variant = balanceTask('refused', 'first-balance');
  it.each([
    ['a tube that is still held', [], 'still-held'],
    [
      'a tube on the ground',
      [
        { do: 'foresee', moves: 'front' },
        { do: 'stop', in: false },
        { do: 'clamp', open: true },
        { do: 'hand', on: false },
      ],
      'on-the-ground',
    ],
  ] as const)('is %s', (_, actions, code) => {
    const grading = gradeBalance({
      variant,
      submission: { actions: [...actions], readingMm: null },
    });
    expect(grading).toMatchObject({ ok: false, refusal: { code } });
  });

  it('is a score from outside', () => {
    expect(
      balanceSubmissionSchema.safeParse({ ...balanceModelAnswer(variant), total: 100 }).success,
    ).toBe(false);
  });
});

/** Whatever a page offers, pressed at random; then let go of, as the page asks before it sends. */
function randomClicks(variant: BalanceVariant, random: Random): BalanceSubmission {
  const { bar, parts } = variant;
  const one = (): BalanceAction => {
    const yes = random.next() < 0.5;
    switch (random.integer(0, 5)) {
      case 0:
        return { do: 'hand', on: yes };
      case 1:
        return { do: 'clamp', open: yes };
      case 2:
        return { do: 'stop', in: yes };
      case 3:
        return { do: 'slide', toMm: random.integer(bar.leastMm, bar.mostMm) };
      case 4:
        return { do: 'tip', toDeg: random.integer(0, 90) };
      default:
        return { do: 'part', id: random.pick(parts)?.id ?? '', on: yes };
    }
  };
  const actions: BalanceAction[] = [
    { do: 'foresee', moves: random.pick(['front', 'back', 'holds'] as const) ?? 'holds' },
    ...Array.from({ length: random.integer(5, 60) }, one).flatMap((action) => [
      action,
      { do: 'pick-up' } as const,
    ]),
  ];
  const end = afterAll(variant, actions);
  const last: BalanceAction[] = end.handOn
    ? [
        { do: 'clamp', open: false },
        { do: 'hand', on: false },
      ]
    : [];
  return { actions: [...actions, ...last], readingMm: random.integer(bar.leastMm, bar.mostMm) };
}

describe('clicking at random', () => {
  const tried = manyBalanceTasks(80).map((variant, index) =>
    resultOf(variant, randomClicks(variant, randomFrom(`clicks-${String(index)}`))),
  );

  it('never reaches the pass mark in 400 tasks', () => {
    const highest = Math.max(...tried.map(({ total }) => total));
    expect(highest).toBeLessThan(passMark);
  });

  it('fails a gate in three rounds of four and more', () => {
    const gated = tried.filter(({ gates }) => gates.length > 0);
    expect(gated.length / tried.length).toBeGreaterThan(0.75);
  });
});
