import { describe, expect, it } from 'vitest';
import { loadItemWorld } from '../content/item-world';
import { course } from '../course/lessons';
import { randomFrom } from '../variants/random';
import { problemsOfDrawings } from './check-drawing';
import { drawItem } from './draw-item';
import { familySurvey } from './family-survey';
import { familiesOf, itemBank } from './item-bank';
import { misconceptions } from './misconceptions';
import type { Item } from './item';

const world = loadItemWorld();
const drawsOfEach = 200;
/** Of 60: what chance may put over each other. A drawing that is at fault itself fails nearly always. */
const mostUnread = 24;

describe.each(itemBank.map((family) => [family.id, family] as const))('%s', (_, family) => {
  const survey = familySurvey(family, { world, draws: drawsOfEach, seed: 'draw' });

  it('has four or more templates', () => {
    expect(Object.keys(family.templates).length).toBeGreaterThanOrEqual(4);
  });

  it('gives the key full marks, no distractor ever, and no text more than a tenth of its draws', () => {
    expect(survey.problems.slice(0, 10)).toEqual([]);
    // Something was there to go wrong.
    expect(survey.wrongAnswers).toBeGreaterThan(0);
  });

  it('names no spot by a capital letter: the rings bring letters of their own', () => {
    const letters = Object.keys(family.templates).flatMap((template) =>
      Array.from({ length: 30 }, (_, n) =>
        drawItem(family, template, { seed: `letters ${String(n)}`, world }),
      ).flatMap(lettersAtSpots),
    );
    expect([...new Set(letters)]).toEqual([]);
  });

  it('seldom has to draw anew because a drawing cannot be read', () => {
    for (const [template, make] of Object.entries(family.templates)) {
      const unread = Array.from({ length: 60 }, (_, n) =>
        problemsOfDrawings(make({ random: randomFrom(`raw ${String(n)} ${template}`), world })),
      ).filter((problems) => problems.length > 0);
      expect(unread.slice(mostUnread)).toEqual([]);
    }
  });

  it('says from which latitude a star stands where it does: a class may be anywhere', () => {
    const placeless = Object.keys(family.templates).flatMap((template) =>
      Array.from({ length: 30 }, (_, n) =>
        drawItem(family, template, { seed: `place ${String(n)}`, world }),
      )
        .filter(({ prompt }) => standsSomewhere(prompt) && !/\d° (north|south)/.test(prompt))
        .map(({ prompt }) => `${template}: ${prompt}`),
    );
    expect(placeless.slice(0, 3)).toEqual([]);
  });

  it('draws the same question for the same seed', () => {
    const draw = (template: string) => drawItem(family, template, { seed: 'again', world });
    for (const template of Object.keys(family.templates)) {
      expect(draw(template)).toEqual(draw(template));
    }
  });
});

describe('the bank', () => {
  it('has six families or more for each lesson', () => {
    const few = course.map(({ slug }) => slug).filter((slug) => familiesOf(slug).length < 6);
    expect(few).toEqual([]);
  });

  it('calls no two families by one name', () => {
    const ids = itemBank.map(({ id }) => id);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  it('has every known misconception as a distractor somewhere', () => {
    const met = new Set(
      itemBank.flatMap((family) =>
        Object.keys(family.templates).flatMap((template) =>
          Array.from({ length: 20 }, (_, n) =>
            drawItem(family, template, { seed: `misled ${String(n)}`, world }),
          ).flatMap(misconceptionsIn),
        ),
      ),
    );
    expect(Object.keys(misconceptions).filter((id) => !met.has(id))).toEqual([]);
  });
});

const starNames = world.catalogue.stars.flatMap(({ name }) => (name === null ? [] : [name]));

/** A star of the real sky is named, and where it stands over the horizon. */
const standsSomewhere = (prompt: string): boolean =>
  /fists? up|on the horizon in the|overhead/.test(prompt) &&
  starNames.some((name) => prompt.includes(name));

function misconceptionsIn(item: Item): string[] {
  const carriers =
    item.kind === 'choice'
      ? item.options.filter(({ id }) => id !== item.key)
      : item.kind === 'several'
        ? item.options.filter(({ right }) => !right)
        : item.kind === 'point'
          ? item.spots.filter(({ id }) => id !== item.key)
          : item.kind === 'numeric'
            ? item.slips
            : [];
  return carriers.flatMap(({ misconception }) =>
    misconception === undefined ? [] : [misconception],
  );
}

/** In a drawing's units: about as far as a ring and its letter reach. */
const besideSpot = 30;
/** E is north's fellow on a compass, and no name there. */
const isCompass = (texts: readonly string[]): boolean =>
  ['N', 'E', 'S', 'W'].every((wind) => texts.includes(wind));

/** Capital letters that name a spot in its words or stand beside it in the drawing. */
function lettersAtSpots(item: Item): string[] {
  if (item.kind !== 'point') return [];
  const texts = item.drawing.shapes.flatMap((shape) => (shape.kind === 'text' ? [shape] : []));
  const compass = isCompass(texts.map(({ text }) => text));
  return item.spots.flatMap(({ x, y, where }) => [
    ...(/\b[A-H]\b/.test(where) ? [`${item.family} ${item.template}: “${where}”`] : []),
    ...texts
      .filter(({ text }) => /^[A-H]$/.test(text) && !(compass && text === 'E'))
      .filter((text) => Math.hypot(text.x - x, text.y - y) < besideSpot)
      .map(({ text }) => `${item.family} ${item.template}: ${text} in the drawing`),
  ]);
}
