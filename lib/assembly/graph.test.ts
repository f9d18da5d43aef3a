import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brokenEdges, edgesOf, readySteps } from './graph';
import { neededSteps, strayStepsOf, type AssemblyStep, type AssemblyTask } from './steps';

const tasks: AssemblyTask[] = (['refractor', 'reflector', 'maksutov-cassegrain'] as const).flatMap(
  (tubeType) =>
    (['build', 'build-by-day', 'take-down'] as const).map((kind) => ({ tubeType, kind })),
);

/**
 * Whether a graph has a circle, by Kahn's algorithm (Kahn 1962, Communications of the ACM 5, 558): take
 * away what nothing rests on until nothing is left.
 */
function hasCircle(steps: readonly AssemblyStep[], edges: ReturnType<typeof edgesOf>): boolean {
  let left = [...steps];
  for (;;) {
    const free = left.filter(
      (step) => !edges.some(({ before, after }) => after === step && left.includes(before)),
    );
    if (free.length === 0) return left.length > 0;
    left = left.filter((step) => !free.includes(step));
  }
}

describe.each(tasks)('$kind of a $tubeType', (task) => {
  it('can be done: no step waits for itself', () => {
    expect(hasCircle(neededSteps(task), edgesOf(task))).toBe(false);
    expect(brokenEdges(task, neededSteps(task))).toEqual([]);
  });

  it('allows every order that takes one step after another that is ready, and no order that is not', () => {
    fc.assert(
      fc.property(fc.infiniteStream(fc.nat()), (choices) => {
        const done: AssemblyStep[] = [];
        for (let ready = readySteps(task, done); ready.length > 0; ready = readySteps(task, done)) {
          const choice = Number(choices.next().value);
          const step = ready[choice % ready.length];
          if (step === undefined) break;
          done.push(step);
          expect(brokenEdges(task, done)).toEqual([]);
        }
        expect(new Set(done)).toEqual(new Set(neededSteps(task)));
      }),
      { numRuns: 50 },
    );
  });

  it('names the edge that two exchanged steps break', () => {
    for (const edge of edgesOf(task)) {
      const order = neededSteps(task).map((step) =>
        step === edge.before ? edge.after : step === edge.after ? edge.before : step,
      );
      expect(brokenEdges(task, order)).toContainEqual(edge);
    }
  });

  it('needs nothing that has no place in it', () => {
    const needed = neededSteps(task);
    expect(new Set(needed).size).toBe(needed.length);
    for (const stray of strayStepsOf(task)) expect(needed).not.toContain(stray);
  });
});

it('more than one order is right, indoors and out', () => {
  const done: AssemblyStep[] = ['spread-legs'];
  expect(readySteps({ tubeType: 'refractor', kind: 'build' }, done).length).toBeGreaterThan(2);
});

// Design, "Field": a refractor takes a prism here, a closed tube a star diagonal, a reflector neither.
it('only the kit that has one takes a prism or a diagonal', () => {
  const parts = (tubeType: AssemblyTask['tubeType']) =>
    neededSteps({ tubeType, kind: 'build' }).filter((step) => /prism|diagonal/.test(step));
  expect(parts('refractor')).toEqual(['prism-in']);
  expect(parts('reflector')).toEqual([]);
  expect(parts('maksutov-cassegrain')).toEqual(['diagonal-in']);
});

it('by day the caps stay on', () => {
  expect(neededSteps({ tubeType: 'refractor', kind: 'build-by-day' })).not.toContain('caps-off');
});
