import type { Locator, Page } from '@playwright/test';
import { minus } from '../../lib/finder/sights';
import type { FieldOffset } from '../../lib/optics/image-orientation';
import { routes } from '../../lib/routes';
import { besideDotFrom, pressesFor, tubeWayFrom, turnsFrom } from '../support/finder-reading';
import { press, tabTo, withoutCanvasAndMouse } from '../support/keyboard';
import { expect, test } from '../support/product';

/** A free choice by day with Wren, by its seed: fence, tree and mast clear of the Sun, two things by it. */
const round = routes.labs.one('finder', { seed: 'aa5', kit: 'wren' });
/** Half of what Wren shows: 50° over its power, and half of that. */
const wren = {
  low: { eyepiece: '25 mm', radiusArcmin: 75 },
  high: { eyepiece: '9 mm', radiusArcmin: 27 },
};
const screws = ['Side screw', 'Rear screw'] as const;

/** How one moves the tube and turns the screws: by mouse on the drawing, or by keys in the table. */
type Hand = {
  words: () => Promise<string>;
  press: (name: string) => Promise<void>;
  stepBy: (arcmin: number) => Promise<void>;
  turn: (screw: 0 | 1, turns: number) => Promise<void>;
};

async function centre(hand: Hand, { eyepiece, radiusArcmin }: (typeof wren)['low']): Promise<void> {
  await hand.press(eyepiece);
  for (let go = 0; go < 6; go += 1) {
    const way = tubeWayFrom(await hand.words(), 'The mast', { radiusArcmin, orientation: 'true' });
    if (way === null) throw new Error(`not in view: ${await hand.words()}`);
    if (way.rightArcmin === 0 && way.upArcmin === 0) return;
    for (const [size, plus, less] of [
      [way.rightArcmin, 'Tube right', 'Tube left'],
      [way.upArcmin, 'Tube up', 'Tube down'],
    ] as const) {
      for (const { step, times } of pressesFor(size, [15, 5, 1])) {
        await hand.stepBy(step);
        for (let n = 0; n < times; n += 1) await hand.press(size > 0 ? plus : less);
      }
    }
  }
}

async function bringDot(hand: Hand): Promise<void> {
  const gap = async (): Promise<FieldOffset> => {
    const beside = besideDotFrom(await hand.words());
    if (beside === null) throw new Error(`no dot: ${await hand.words()}`);
    return beside;
  };
  const atFirst = await gap();
  await hand.turn(0, 1);
  const afterOne = await gap();
  await hand.turn(1, 1);
  const afterTwo = await gap();
  for (let go = 0; go < 6; go += 1) {
    const left = await gap();
    if (left.rightArcmin === 0 && left.upArcmin === 0) return;
    const turns = turnsFrom(left, minus(atFirst, afterOne), minus(afterOne, afterTwo));
    await hand.turn(0, turns[0]);
    await hand.turn(1, turns[1]);
  }
}

async function expectFullMarks(page: Page): Promise<void> {
  await expect(page.getByText(/the star is in the view of the 9 mm eyepiece/)).toBeVisible();
  await expect(page.getByText('100 of 100')).toBeVisible();
}

/** Where a target's tag is in the window; the thing itself stands 5° below it. */
async function placeOf(page: Page, aim: string): Promise<{ x: number; y: number }> {
  return page.locator(`[data-aim="${aim}"]`).evaluate((tag) => {
    if (!(tag instanceof SVGGraphicsElement)) throw new Error('not drawn');
    const matrix = tag.getScreenCTM();
    if (matrix === null) throw new Error('not shown');
    return { x: matrix.e, y: matrix.f + 5 * matrix.d };
  });
}

async function middleOf(locator: Locator): Promise<{ x: number; y: number; width: number }> {
  await locator.scrollIntoViewIfNeeded();
  const box = await locator.boundingBox();
  if (box === null) throw new Error('not shown');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2, width: box.width };
}

test('a finder is set on a mast by mouse, the tube turned past the Sun with its caps on', async ({
  page,
}) => {
  await page.goto(round);
  const tube = page.getByRole('slider', { name: /^Tube/ });
  await expect(tube).toBeVisible();
  await page.getByLabel('An adult, who stays').check();
  await page.getByLabel('In the shadow of a building that hides the Sun').check();
  const list = page.getByLabel('Set it on', { exact: true });
  await list.selectOption({ label: await list.locator('option', { hasText: 'mast' }).innerText() });

  const from = await middleOf(tube.locator('circle').first());
  const to = await placeOf(page, 'mast');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move((from.x + to.x) / 2, to.y);
  await page.mouse.move(to.x, to.y);
  await page.mouse.up();
  const click = (name: string) => page.getByRole('button', { name, exact: true }).click();
  await click('Take the caps off');

  const hand: Hand = {
    words: () => page.getByRole('status').last().innerText(),
    press: click,
    stepBy: async (arcmin) => {
      await page.getByLabel('One press moves the tube by').selectOption(String(arcmin));
    },
    turn: async (screw, turns) => {
      const { x, y, width } = await middleOf(page.getByRole('slider', { name: screws[screw] }));
      const at = (part: number): [number, number] => [
        x + 0.3 * width * Math.sin(part * 2 * Math.PI),
        y - 0.3 * width * Math.cos(part * 2 * Math.PI),
      ];
      await page.mouse.move(...at(0));
      await page.mouse.down();
      const moves = Math.ceil(Math.abs(turns) * 8);
      for (let move = 1; move <= moves; move += 1)
        await page.mouse.move(...at((turns * move) / moves));
      await page.mouse.up();
    },
  };
  await centre(hand, wren.low);
  await centre(hand, wren.high);
  await bringDot(hand);
  await click('Lock the screws');
  await click('Put the caps on');
  await click('How did I do?');
  await click('Show how it came out');
  await expectFullMarks(page);
});

test('the same by keyboard in the table, without canvas', async ({ page, context }) => {
  test.slow();
  await withoutCanvasAndMouse(context);
  await page.goto(round);
  await press(page, 'Table');
  const choose = async (name: string): Promise<void> => {
    const radio = page.getByRole('radio', { name });
    // Into the group with Tab, through it with the arrows.
    await tabTo(page, radio);
    await page.keyboard.press('Space');
  };
  await choose('Nobody; I am alone');
  for (let down = 0; down < 2; down += 1) await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('radio', { name: 'An adult, who stays' })).toBeChecked();
  await choose('On the open grass, in the sunshine');
  for (let down = 0; down < 2; down += 1) await page.keyboard.press('ArrowDown');
  const list = page.getByLabel('Set it on', { exact: true });
  const letter = await list.locator('option', { hasText: 'mast' }).innerText();
  await tabTo(page, list);
  await page.keyboard.type(letter.slice(0, 1));
  await expect(list.locator('option:checked')).toHaveText(letter);
  await press(page, 'Turn the tube straight there');
  await press(page, 'Take the caps off');

  const steps = [60, 15, 5, 1, 0.5];
  const hand: Hand = {
    words: async () =>
      `${await page.getByRole('region', { name: /^In the eyepiece/ }).innerText()} ${await page.getByRole('region', { name: /^In the finder/ }).innerText()}`,
    press: (name) => press(page, name),
    stepBy: async (arcmin) => {
      await tabTo(page, page.getByLabel('One press moves the tube by'));
      await page.keyboard.press('Home');
      for (let down = 0; down < steps.indexOf(arcmin); down += 1)
        await page.keyboard.press('ArrowDown');
    },
    turn: async (screw, turns) => {
      for (const { step, times } of pressesFor(turns, [1, 0.25, 0.05])) {
        const side = turns > 0 ? 'right' : 'left';
        for (let n = 0; n < times; n += 1) {
          await press(page, `${screws[screw]} ${String(step)} of a turn to the ${side}`);
        }
      }
    },
  };
  await centre(hand, wren.low);
  await centre(hand, wren.high);
  await bringDot(hand);
  await press(page, 'Lock the screws');
  await press(page, 'Put the caps on');
  await press(page, 'How did I do?');
  await press(page, 'Show how it came out');
  await expectFullMarks(page);
});
