import { randomFrom, type Random } from '../variants/random';
import { letter } from './build-item';
import { problemsOfDrawings } from './check-drawing';
import type { ItemDraw, ItemFamily, ItemTemplate, ItemWorld } from './item-family';
import type { Item, ItemBody } from './item';

/** Goes up whenever shuffling or lettering changes; a family has a version of its own besides. */
const drawVersion = 3;

/**
 * Draws one question: made by its template, then shuffled and lettered anew, so that neither place nor
 * letter tells the answer. The same seed draws the same question.
 * @throws {RangeError} when the family has no such template.
 */
export function drawItem(
  family: ItemFamily,
  template: string,
  { seed, world }: { seed: string; world: ItemWorld },
): Item {
  const make = family.templates[template];
  if (make === undefined) throw new RangeError(`${family.id} has no template "${template}"`);
  const random = randomFrom(`${seed}/${family.id}/${template}`);
  const body = shuffled(readableFrom(make, { random, world }), random);
  return {
    family: family.id,
    template,
    generatorVersion: 1000 * family.version + drawVersion,
    ...body,
  };
}

/** Far more than are ever needed; item-bank.test.ts holds every template to few. */
const mostTries = 30;

/** Made anew until its drawings can be read: chance may put two stars, or a star and a name, over each other. */
function readableFrom(make: ItemTemplate, draw: ItemDraw): ItemBody {
  let body = make(draw);
  for (let tries = 1; tries < mostTries && problemsOfDrawings(body).length > 0; tries++) {
    body = make(draw);
  }
  return body;
}

/** New letters in a new order, and how the old ones read now. */
function dealt<T extends { id: string }>(things: readonly T[], random: Random) {
  const dealtOut = random.shuffle(things);
  const now = new Map(dealtOut.map(({ id }, index) => [id, letter(index)]));
  return {
    things: dealtOut.map((one, index) => ({ ...one, id: letter(index) })),
    now: (id: string): string => now.get(id) ?? id,
  };
}

/**
 * Now and then without one of the right options, now and then without one of the wrong: how many are to
 * be ticked is part of the question, and a template that always had two of five would give it away.
 */
function withOneLess<T extends { right: boolean }>(
  options: readonly T[],
  random: Random,
): readonly T[] {
  const which = random.pick([true, false, false, null]) ?? null;
  const some = options.filter(({ right }) => right === which);
  const left = random.pick(some);
  return left === undefined || some.length < 2 || options.length < 5
    ? options
    : options.filter((option) => option !== left);
}

function shuffled(body: ItemBody, random: Random): ItemBody {
  switch (body.kind) {
    case 'choice': {
      const { things, now } = dealt(body.options, random);
      return { ...body, options: things, key: now(body.key) };
    }
    case 'several':
      return { ...body, options: dealt(withOneLess(body.options, random), random).things };
    case 'order': {
      const { things, now } = dealt(body.steps, random);
      const rules = body.rules.map((rule) => ({
        ...rule,
        first: now(rule.first),
        then: now(rule.then),
      }));
      return { ...body, steps: things, rules };
    }
    case 'match': {
      const left = dealt(body.left, random);
      const right = dealt(body.right, random);
      const pairs = body.pairs.map((pair) => ({
        ...pair,
        left: left.now(pair.left),
        right: right.now(pair.right),
      }));
      return { ...body, left: left.things, right: right.things, pairs };
    }
    case 'point': {
      const { things, now } = dealt(body.spots, random);
      return { ...body, spots: things, key: now(body.key) };
    }
    case 'numeric':
      return body;
  }
}
