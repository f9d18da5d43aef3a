import { describe, expect, it } from 'vitest';
import { levelTask, levelTasksOf, manyLevelTasks } from '@/tests/support/level-tasks';
import { levelResultSchema } from '../../../data/lab-tasks/bench/stored-level';
import { legReaches } from '../../../levelling/leg-to-move';
import {
  bubbleOf,
  legIndices,
  slopeOf,
  startOf,
  tiltOfHead,
  type LegIndex,
  type TripodState,
} from '../../../levelling/tripod';
import { act, replay, type TripodAction } from '../../../levelling/tripod-actions';
import { slopeReadUnturned } from '../../../levelling/vial';
import { levelTemplates, type LevelVariant } from '../../../variants/bench/level/level-variant';
import { randomFrom, type Random } from '../../../variants/random';
import { rightAnswers } from './level-answers';
import { levelModelAnswer } from './level-model-answer';
import { levelSubmissionSchema, type LevelSubmission } from './level-submission';
import { gradeLevel } from './grade-level';

const passMark = 70;

function resultOf(variant: LevelVariant, submission: LevelSubmission) {
  const grading = gradeLevel({ variant, submission });
  if (!grading.ok) throw new Error(grading.refusal.code);
  return grading.result;
}
const codesOf = (variant: LevelVariant, submission: LevelSubmission) =>
  resultOf(variant, submission).slips.map(({ code }) => code);
const earnedFor = (variant: LevelVariant, submission: LevelSubmission, id: string) =>
  resultOf(variant, submission).criteria.find((criterion) => criterion.id === id)?.earned;

const moved = (leg: LegIndex, toMm: number): TripodAction[] => [
  { do: 'open', leg },
  { do: 'slide', leg, toMm },
  { do: 'lock', leg },
];
const withActions = (variant: LevelVariant, actions: TripodAction[]): LevelSubmission => ({
  actions,
  answers: rightAnswers(variant.question),
});
const stateAfter = (variant: LevelVariant, actions: TripodAction[]): TripodState => {
  const state = replay(variant.site, actions)?.at(-1);
  if (state === undefined) throw new Error('that cannot be done');
  return state;
};

/** Levels by eye from wherever the tripod stands: always the most helpful leg, until little is left. */
function levelledFrom(variant: LevelVariant, before: TripodAction[], within = 0.1): TripodAction[] {
  let actions = before;
  for (let step = 0; step < 8; step += 1) {
    const state = stateAfter(variant, actions);
    if (tiltOfHead(variant.site, state).tiltDeg <= within) break;
    const [reach] = legReaches(variant.site, state, slopeOf(variant.site, state));
    if (reach === undefined || reach.toMm === state.legs[reach.leg].lengthMm) break;
    actions = [...actions, ...moved(reach.leg, reach.toMm)];
  }
  return actions;
}

describe('who makes no mistake', () => {
  it('earns 100 in every task of every template, with no gate and no slip', () => {
    const tasks = manyLevelTasks(200);
    expect(tasks).toHaveLength(200 * levelTemplates.length);
    for (const variant of tasks) {
      const submission = levelModelAnswer(variant);
      expect(levelSubmissionSchema.parse(submission)).toEqual(submission);
      const result = resultOf(variant, submission);
      expect(result.total, JSON.stringify({ variant, result })).toBeCloseTo(100, 9);
      expect(result.gates).toEqual([]);
      expect(result.slips).toEqual([]);
    }
  });

  it('can be told by marks that sum to 100', () => {
    const task = levelTask('one-slope');
    const { criteria } = resultOf(task, levelModelAnswer(task));
    expect(criteria.reduce((sum, { possible }) => sum + possible, 0)).toBe(100);
  });
});

it('a result is read back from its JSON whole', () => {
  for (const variant of manyLevelTasks(4)) {
    const result = resultOf(variant, withActions(variant, [{ do: 'tube-on' }]));
    expect(levelResultSchema.parse(JSON.parse(JSON.stringify(result)))).toEqual(result);
  }
});

describe('the tilt', () => {
  it('earns full marks within what the vial can show, none at 1.25°, and falls evenly between', () => {
    const task = levelTask('one-slope');
    const model = levelModelAnswer(task).actions;
    const levelled = stateAfter(task, [...model]);
    for (const byMm of [0, 1, 4, 7, 10, 13, 16, 20]) {
      const loadsLast = model.slice(0, -1);
      const toMm = levelled.legs[0].lengthMm + byMm;
      const actions: TripodAction[] =
        byMm === 0 ? [...model] : [...loadsLast, ...moved(0, toMm), { do: 'tube-on' }];
      const { left } = resultOf(task, withActions(task, actions));
      const share = Math.min(1, Math.max(0, (1.25 - left.tiltDeg) / 1.1));
      expect(earnedFor(task, withActions(task, actions), 'tilt')).toBeCloseTo(60 * share, 9);
    }
    // 20 mm · cos 24° / 675 mm = 1.55°.
    expect(
      earnedFor(
        task,
        withActions(task, [
          ...model.slice(0, -1),
          ...moved(0, levelled.legs[0].lengthMm + 20),
          { do: 'tube-on' },
        ]),
        'tilt',
      ),
    ).toBe(0);
  });

  it('left as it was found is told with the one leg that would do most, and how far', () => {
    const task = levelTask('read-then-move');
    const result = resultOf(task, withActions(task, [{ do: 'tube-on' }]));
    const [slip] = result.slips;
    if (slip?.code !== 'left-tilted') throw new Error('the tilt comes first');
    const cured = resultOf(
      task,
      withActions(task, [
        ...moved(slip.leg, task.site.legs[slip.leg].startMm + slip.byMm),
        { do: 'tube-on' },
      ]),
    );
    expect(cured.total).toBeCloseTo(100, 9);
    expect(result.total).toBeLessThan(passMark);
  });

  it('tells what the tilt costs: the first slews by as much as it is, two stars nothing', () => {
    const task = levelTask('one-slope');
    const { left, leftCosts } = resultOf(task, withActions(task, [{ do: 'tube-on' }]));
    expect(leftCosts.firstSlewsArcmin).toBeLessThanOrEqual(60 * left.tiltDeg + 1e-6);
    expect(leftCosts.firstSlewsArcmin).toBeGreaterThan(0.99 * 60 * left.tiltDeg);
    expect(leftCosts.afterTwoStarsArcmin).toBeLessThan(0.001);
    expect(leftCosts.takenAsLevelArcmin).toBeGreaterThan(60 * left.tiltDeg);
  });
});

describe('typical mistakes are told by name', () => {
  it('a soft foot that was not trodden in: it sank under the tube and nobody looked again', () => {
    for (const task of levelTasksOf('soft-foot', 40)) {
      const submission = withActions(task, [...levelledFrom(task, []), { do: 'tube-on' }]);
      const result = resultOf(task, submission);
      expect(result.slips[0]).toMatchObject({ code: 'sank-under-tube', mended: false });
      expect(result.slips.map(({ code }) => code)).toContain('left-tilted');
      expect(result.total).toBeLessThan(passMark);
    }
  });

  it('a soft foot that sank and was made up for: mended, mostly at the price of more moves', () => {
    let moreMoves = 0;
    for (const task of levelTasksOf('soft-foot', 40)) {
      const loaded: TripodAction[] = [...levelledFrom(task, []), { do: 'tube-on' }, { do: 'hold' }];
      const submission = withActions(task, [...levelledFrom(task, loaded), { do: 'let-go' }]);
      const result = resultOf(task, submission);
      expect(result.gates).toEqual([]);
      expect(result.slips).toContainEqual(
        expect.objectContaining({ code: 'sank-under-tube', mended: true }),
      );
      if (result.slips.some(({ code }) => code === 'more-moves')) moreMoves += 1;
      expect(earnedFor(task, submission, 'tilt')).toBe(60);
    }
    expect(moreMoves).toBeGreaterThan(30);
  });

  it('an untrue vial believed: the bubble stands in the ring and the head leans', () => {
    for (const task of levelTasksOf('untrue-vial', 40)) {
      let actions: TripodAction[] = [];
      for (let step = 0; step < 8; step += 1) {
        const state = stateAfter(task, actions);
        const { eastMm, northMm } = bubbleOf(task.site, state);
        if (Math.hypot(eastMm, northMm) < 0.25) break;
        const seen = { east: eastMm / 114.6, north: northMm / 114.6 };
        const [reach] = legReaches(task.site, state, seen);
        if (reach === undefined || reach.toMm === state.legs[reach.leg].lengthMm) break;
        actions = [...actions, ...moved(reach.leg, reach.toMm)];
      }
      const submission = withActions(task, [...actions, { do: 'tube-on' }]);
      const result = resultOf(task, submission);
      expect(result.slips[0]).toMatchObject({ code: 'trusted-untrue-vial', armWasTurned: false });
      expect(result.total).toBeLessThan(passMark);
      // Nobody can know at the first leg: it is not held against them.
      expect(earnedFor(task, submission, 'first-leg')).toBe(10);
    }
  });

  it('a bubble taken for the low side: the best leg, the wrong way', () => {
    for (const task of levelTasksOf('one-slope', 40)) {
      const start = startOf(task.site);
      const [reach] = legReaches(task.site, start, slopeOf(task.site, start));
      if (reach === undefined) throw new Error('three legs');
      const { startMm } = task.site.legs[reach.leg];
      const wrong = moved(reach.leg, 2 * startMm - reach.toMm);
      const submission = withActions(task, [...levelledFrom(task, wrong), { do: 'tube-on' }]);
      expect(codesOf(task, submission)).toContain('wrong-way');
      expect(earnedFor(task, submission, 'first-leg')).toBe(0);
    }
  });

  it('a vial read without turning the head: the leg that it seems to name', () => {
    for (const task of levelTasksOf('turned-vial', 40)) {
      const start = startOf(task.site);
      const seen = slopeReadUnturned(slopeOf(task.site, start), task.site.vial.markAzimuthDeg);
      const [reach] = legReaches(task.site, start, seen);
      if (reach === undefined) throw new Error('three legs');
      const actions = levelledFrom(task, moved(reach.leg, reach.toMm));
      const submission = withActions(task, [...actions, { do: 'tube-on' }]);
      const earned = earnedFor(task, submission, 'first-leg');
      // Another leg may by chance do as well.
      if (earned !== 10) expect(codesOf(task, submission)).toContain('head-not-turned');
    }
  });

  it('another leg first: the right way, though not in the bubble’s own direction', () => {
    let seen = 0;
    for (const task of levelTasksOf('one-slope', 40)) {
      const start = startOf(task.site);
      const reach = legReaches(task.site, start, slopeOf(task.site, start)).at(-1);
      if (reach === undefined) throw new Error('three legs');
      if (reach.toMm === task.site.legs[reach.leg].startMm) continue;
      const actions = levelledFrom(task, moved(reach.leg, reach.toMm));
      const submission = withActions(task, [...actions, { do: 'tube-on' }]);
      expect(codesOf(task, submission)).toContain('other-leg-first');
      expect(earnedFor(task, submission, 'first-leg')).toBe(5);
      seen += 1;
    }
    expect(seen).toBeGreaterThan(20);
  });

  it('legs moved again and again cost two marks each', () => {
    const task = levelTask('one-slope');
    const model = levelModelAnswer(task);
    const levelled = stateAfter(task, [...model.actions]);
    const { lengthMm } = levelled.legs[0];
    const restless = [...moved(0, lengthMm + 20), ...moved(0, lengthMm)];
    const submission = withActions(task, [
      ...model.actions.slice(0, -1),
      ...restless,
      { do: 'tube-on' },
    ]);
    expect(codesOf(task, submission)).toEqual(['more-moves']);
    expect(earnedFor(task, submission, 'moves')).toBeCloseTo(6, 9);
  });

  it('wrong answers on what a tilt does are told one by one', () => {
    for (const task of manyLevelTasks(10)) {
      const model = levelModelAnswer(task);
      const right = model.answers;
      const wrong = (one: number) => (one + 1) % 4;
      const answers = {
        firstSlew: wrong(right.firstSlew),
        afterTwoStars: wrong(right.afterTwoStars),
        takenAsLevel: wrong(right.takenAsLevel),
      };
      const result = resultOf(task, { ...model, answers });
      expect(result.slips.map(({ code }) => code)).toEqual([
        'first-slew',
        'after-two-stars',
        'taken-as-level',
      ]);
      expect(result.total).toBeCloseTo(80, 9);
    }
  });
});

describe('a leg left open with the tube on', () => {
  it('is "not yet" whatever the mark, also when it is made good', () => {
    for (const task of levelTasksOf('soft-foot', 20)) {
      const model = levelModelAnswer(task);
      const leg = legIndices.find((one) => task.site.legs[one].sinksMm === 0) ?? 0;
      // Opened under the tube with nobody to hold it; then all put right, with a helper.
      const dropped: TripodAction[] = [...model.actions, { do: 'open', leg }, { do: 'hold' }];
      const { lengthMm } = stateAfter(task, [...model.actions]).legs[leg];
      const righted: TripodAction[] = [
        ...dropped,
        { do: 'slide', leg, toMm: lengthMm },
        { do: 'lock', leg },
        { do: 'let-go' },
      ];
      const result = resultOf(task, withActions(task, righted));
      expect(result.gates).toEqual([{ id: 'leg-left-open', leg }]);
      expect(result.total).toBeGreaterThan(passMark);
    }
  });

  it('is none while somebody holds the tube', () => {
    const task = levelTask('one-slope');
    const actions: TripodAction[] = [
      { do: 'tube-on' },
      { do: 'hold' },
      ...moved(1, task.site.legs[1].startMm + 5),
      { do: 'let-go' },
    ];
    expect(resultOf(task, withActions(task, actions)).gates).toEqual([]);
  });
});

describe('what cannot be anybody’s answer is refused', () => {
  const task = levelTask('one-slope');
  const refusal = (submission: LevelSubmission) => {
    const grading = gradeLevel({ variant: task, submission });
    return grading.ok ? null : grading.refusal.code;
  };
  it.each([
    ['log-does-not-add-up', [{ do: 'slide', leg: 0, toMm: 900 }, { do: 'tube-on' }]],
    ['tube-not-on', []],
    ['still-held', [{ do: 'tube-on' }, { do: 'hold' }]],
  ] satisfies [string, TripodAction[]][])('%s', (code, actions) => {
    expect(refusal(withActions(task, actions))).toBe(code);
  });

  it('not-offered', () => {
    const answers = { firstSlew: 9, afterTwoStars: 0, takenAsLevel: 0 };
    expect(refusal({ actions: [{ do: 'tube-on' }], answers })).toBe('not-offered');
  });
});

/** Presses whatever can be pressed, forty times, and then hands in. */
function clicked(task: LevelVariant, random: Random): LevelSubmission {
  const actions: TripodAction[] = [];
  let state = startOf(task.site);
  const attempt = (action: TripodAction): void => {
    const outcome = act(task.site, state, action);
    if (!outcome.ok) return;
    state = outcome.state;
    actions.push(action);
  };
  for (let press = 0; press < 40; press += 1) {
    const leg = legIndices[random.integer(0, 2)] ?? 0;
    const simple = (['turn-arm', 'tube-on', 'tube-off', 'hold', 'let-go'] as const).map(
      (name): TripodAction => ({ do: name }),
    );
    const toMm = state.legs[leg].lengthMm + random.integer(-40, 40);
    const choice: TripodAction[] = [
      { do: 'tread-in', leg },
      ...[1, 2, 3].flatMap((): TripodAction[] => [
        { do: 'open', leg },
        { do: 'slide', leg, toMm },
        { do: 'lock', leg },
      ]),
      ...simple,
    ];
    const action = random.pick(choice);
    if (action !== undefined) attempt(action);
  }
  attempt({ do: 'tube-on' });
  attempt({ do: 'let-go' });
  const { question } = task;
  return {
    actions,
    answers: {
      firstSlew: random.integer(0, question.firstSlewUpArcmin.length - 1),
      afterTwoStars: random.integer(0, question.afterTwoStarsArcmin.length - 1),
      takenAsLevel: random.integer(0, question.takenAsLevelUpArcmin.length - 1),
    },
  };
}

it('random clicking stays below the pass mark, and mostly leaves a leg open under the tube', () => {
  const tasks = manyLevelTasks(50);
  const results = tasks.map((task, i) =>
    resultOf(task, clicked(task, randomFrom(`clicks ${String(i)}`))),
  );
  expect(results.length).toBeGreaterThanOrEqual(200);
  expect(Math.max(...results.map(({ total }) => total))).toBeLessThan(passMark);
  expect(results.filter(({ gates }) => gates.length > 0).length).toBeGreaterThan(
    results.length / 2,
  );
});
