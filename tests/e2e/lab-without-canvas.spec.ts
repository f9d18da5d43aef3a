import type { Page } from '@playwright/test';
import { routes } from '../../lib/routes';
import { press, tabTo, withoutCanvasAndMouse } from '../support/keyboard';
import { expect, test } from '../support/product';
import { demoCard, signInAsDemoTeacher, signInWithCard } from '../support/signing-in';
import {
  demoClassName,
  fillNewAssignment,
  openClass,
  publish,
  saveDraftAssignment,
} from '../support/teacher-desk';

test.beforeEach(async ({ context }) => {
  await withoutCanvasAndMouse(context);
});

/** One light of the table, by its place in the list, reached with Tab and the arrow keys. */
async function chooseLight(page: Page, index: number): Promise<string> {
  const lights = page.getByRole('table').getByRole('radio');
  await expect(lights.first()).toBeVisible();
  await tabTo(
    page,
    (await page.getByRole('radio', { checked: true }).count()) > 0
      ? page.getByRole('radio', { checked: true })
      : lights.first(),
  );
  await page.keyboard.press('Space');
  const wanted = lights.nth(index);
  for (let presses = 0; presses < 70 && !(await wanted.isChecked()); presses += 1)
    await page.keyboard.press('ArrowDown');
  await expect(wanted).toBeChecked();
  return page
    .getByRole('table')
    .getByRole('row')
    .nth(index + 1)
    .innerText();
}

/** The stars among the lights: what does not twinkle cannot be kept, and the lab says so. */
async function keepSomeStar(page: Page, ordinal: 'first' | 'second', from: number): Promise<void> {
  const keep = page.getByRole('button', { name: `Keep as ${ordinal} star` });
  const noStar = page.getByText(/it is no star|already kept/);
  for (let index = from; index < from + 8; index += 1) {
    await chooseLight(page, index);
    await expect(keep.or(noStar)).toBeVisible();
    if (await keep.isVisible()) break;
  }
  await press(page, `Keep as ${ordinal} star`);
  await expect(
    page.getByRole('status').filter({ hasText: `Kept as ${ordinal} star` }),
  ).toBeVisible();
}

async function expectTwin(page: Page): Promise<void> {
  await expect(page.getByText(/cannot draw the sky, so the table is open instead/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Sky', exact: true })).toBeDisabled();
  await expect(page.getByRole('button', { name: 'Table', exact: true })).toHaveAttribute(
    'aria-pressed',
    'true',
  );
  await expect(page.locator('canvas')).toHaveCount(0);
}

async function answerBothQuestions(page: Page): Promise<void> {
  for (let star = 0; star < 2; star += 1) {
    const question = page.getByRole('heading', { name: /be mistaken for it\?$/ });
    await expect(question).toBeFocused();
    const asked = await question.innerText();
    await press(page, 'Nothing near it');
    await expect(page.getByRole('heading', { name: asked })).toBeHidden();
  }
}

const outcome = 'Pick the pair: how it came out';

test('a visitor practises by keyboard alone where nothing can be drawn', async ({ page }) => {
  await page.goto(routes.labs.pickThePair());
  await press(page, 'Go out under this sky');
  await expectTwin(page);
  // What that button asks is drawn by lot. This address always asks for any two.
  await page.goto(
    routes.labs.pickThePair({
      seed: 'by-keyboard',
      kit: 'wren',
      site: 'open-field',
      place: 0,
      time: '2026-12-05T19:30',
    }),
  );
  await expectTwin(page);
  await keepSomeStar(page, 'first', 3);
  await keepSomeStar(page, 'second', 30);
  await answerBothQuestions(page);
  await expect(page.getByRole('heading', { name: 'Your answer' })).toBeFocused();
  await press(page, 'Show how good it is');
  await expect(page.getByRole('heading', { level: 1, name: outcome })).toBeFocused();
  await expect(page.getByRole('meter', { name: 'Mark' })).toBeVisible();
  await tabTo(page, page.getByRole('link', { name: 'Another sky' }));
});

test('a student takes the check by keyboard alone where nothing can be drawn', async ({
  page,
  product,
  openBrowser,
}) => {
  const title = 'Any two, without a picture';
  const desk = await openBrowser();
  await signInAsDemoTeacher(desk, product.demoSignIns);
  const classId = await openClass(desk, demoClassName);
  await fillNewAssignment(desk, classId, title);
  await saveDraftAssignment(desk, title);
  await publish(desk);

  await signInWithCard(page, demoCard(product.demoSignIns));
  const task = page.getByRole('article', { name: title });
  await tabTo(page, task.getByRole('button', { name: 'Start the check' }));
  await page.keyboard.press('Enter');
  await expectTwin(page);
  await expect(page.getByText(/^Attempt 1 of 2/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Show a hint' })).toHaveCount(0);
  await keepSomeStar(page, 'first', 3);
  await keepSomeStar(page, 'second', 30);
  await answerBothQuestions(page);
  await expect(
    page.getByRole('heading', { name: 'Read it once more before you submit' }),
  ).toBeFocused();
  await press(page, 'Submit');
  await expect(page.getByRole('heading', { level: 1, name: outcome })).toBeFocused();
  const mark = await page.getByRole('meter', { name: 'Mark' }).getAttribute('aria-valuetext');
  await tabTo(page, page.getByRole('link', { name: 'Back to my work' }));
  await page.keyboard.press('Enter');
  await expect(task.getByRole('meter', { name: 'Your mark' })).toHaveAttribute(
    'aria-valuetext',
    new RegExp(`^${mark ?? 'no mark'}; `),
  );
});
