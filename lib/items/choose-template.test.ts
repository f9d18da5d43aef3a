import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { randomFrom } from '../variants/random';
import { choice } from './build-item';
import { chooseTemplate, type AskedBefore } from './choose-template';
import type { ItemFamily } from './item-family';

const body = () =>
  choice({
    prompt: 'Which?',
    explanation: 'So.',
    right: { text: 'This', reason: 'It is.' },
    wrong: [{ text: 'That', reason: 'It is not.' }],
  });

const family = (id: string, objective: string, templates: readonly string[]): ItemFamily => ({
  id,
  objective,
  lesson: 'level-enough',
  skill: 'level',
  title: id,
  version: 1,
  templates: Object.fromEntries(templates.map((template) => [template, body])),
});

const four = ['one', 'two', 'three', 'four'];
const families = [
  family('bubble', 'read', four),
  family('vial', 'read', four),
  family('legs', 'turn', four),
  family('cost', 'cost', four),
];

const choose = (asked: readonly AskedBefore[], seed = 'x', from = families) => {
  const chosen = chooseTemplate({ families: from, asked, random: randomFrom(seed) });
  if (chosen === null) throw new Error('there was something to choose');
  return { family: chosen.family.id, template: chosen.template };
};
const seeds = Array.from({ length: 40 }, (_, n) => `seed ${String(n)}`);
const asked = (id: string, template: string, passed: boolean | null = true): AskedBefore => ({
  family: id,
  template,
  passed,
});

describe('which kind of question comes next', () => {
  it('begins anywhere', () => {
    expect(new Set(seeds.map((seed) => choose([], seed).family)).size).toBe(4);
  });

  it('asks about every objective once before it asks about one again', () => {
    const one = choose([]);
    const firsts = [asked(one.family, one.template)];
    const second = choose(firsts, 'y');
    const both = [...firsts, asked(second.family, second.template)];
    const third = choose(both, 'z');
    const objectives = [one, second, third].map(
      ({ family: id }) => families.find((of) => of.id === id)?.objective,
    );
    expect(new Set(objectives).size).toBe(3);
  });

  it('then goes back to what was never passed', () => {
    const history = [asked('legs', 'one', false), asked('bubble', 'one'), asked('cost', 'one')];
    for (const seed of seeds) expect(choose(history, seed).family).toBe('legs');
  });

  it('asks about something else in between, where one family alone is left of an objective', () => {
    const history = [asked('legs', 'one', false), asked('bubble', 'one', false)];
    const met = [...history, asked('cost', 'one', false), asked('legs', 'two', false)];
    for (const seed of seeds) expect(choose(met, seed).family).not.toBe('legs');
  });

  it('comes back to none of the last six kinds', () => {
    fc.assert(
      fc.property(fc.array(fc.boolean(), { maxLength: 40 }), fc.string(), (passed, seed) => {
        const history: AskedBefore[] = [];
        for (const [index, one] of passed.entries()) {
          const chosen = choose(history, `${seed} ${String(index)}`);
          const last = history.slice(-6).map((before) => `${before.family}/${before.template}`);
          expect(last).not.toContain(`${chosen.family}/${chosen.template}`);
          history.push(asked(chosen.family, chosen.template, one));
        }
      }),
    );
  });

  it('reaches every kind in time', () => {
    const history: AskedBefore[] = [];
    for (let n = 0; n < 60; n += 1) {
      const chosen = choose(history, String(n));
      history.push(asked(chosen.family, chosen.template));
    }
    const met = new Set(history.map((one) => `${one.family}/${one.template}`));
    expect(met.size).toBe(16);
  });

  it('asks the same again only where there is nothing else', () => {
    const single = [family('bubble', 'read', ['one'])];
    const again = choose([asked('bubble', 'one')], 'x', single);
    expect(again).toEqual({ family: 'bubble', template: 'one' });
    const pair = [family('bubble', 'read', ['one', 'two'])];
    for (const seed of seeds) {
      expect(choose([asked('bubble', 'one')], seed, pair).template).toBe('two');
    }
  });

  it('remembers the last kinds of these families, whatever else was asked in between', () => {
    const pair = [family('bubble', 'read', ['one', 'two'])];
    const history = [asked('bubble', 'one'), ...four.map((one) => asked('hands', one))];
    for (const seed of seeds) expect(choose(history, seed, pair).template).toBe('two');
  });

  it('takes no notice of questions that are in the bank no more', () => {
    expect(() => choose([asked('gone', 'one', null)])).not.toThrow();
  });
});

test('without families there is nothing to ask', () => {
  expect(chooseTemplate({ families: [], asked: [], random: randomFrom('x') })).toBeNull();
});
