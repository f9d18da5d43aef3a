import type { Locator, Page } from '@playwright/test';
import { questionsOf } from '../../components/lab/level/level-question';
import { legName } from '../../components/lab/level/level-words';
import { levelVariantSchema } from '../../lib/data/lab-tasks/bench/stored-level';
import { levelSubmissionSchema } from '../../lib/grading/bench/level/level-submission';
import type { TripodAction } from '../../lib/levelling/tripod-actions';
import { checkShown } from '../support/accessibility';
import { chooseByKeys, expectFullMarks, startBenchPractice } from '../support/bench-practice';
import { press, typeInto, withoutCanvasAndMouse } from '../support/keyboard';
import { expect, test, type Product } from '../support/product';

async function openTask(page: Page, product: Product) {
  const { variant, answer } = await startBenchPractice(page, product, 'level');
  return {
    variant: levelVariantSchema.parse(variant),
    answer: levelSubmissionSchema.parse(answer),
  };
}
type Task = Awaited<ReturnType<typeof openTask>>;

const answersIn = (page: Page, { variant, answer }: Task): Locator[] =>
  questionsOf(variant.question).map(({ name, legend, options }) =>
    page
      .getByRole('group', { name: legend })
      .getByRole('radio', { name: options[answer.answers[name]] ?? '', exact: true }),
  );

/** Takes hold of a leg where no other stands before it, and pulls it up, or down, to a length. */
async function drag(page: Page, leg: Locator, toMm: number): Promise<void> {
  const [x, y] = await leg.locator('path').evaluate((path) => {
    if (!(path instanceof SVGPathElement)) throw new Error('a leg is drawn as a line');
    const matrix = path.getScreenCTM();
    if (matrix === null) throw new Error('not drawn');
    for (const share of [0.1, 0.25, 0.4, 0.55, 0.7]) {
      const at = path.getPointAtLength(share * path.getTotalLength()).matrixTransform(matrix);
      const hit = document.elementFromPoint(at.x, at.y);
      if (path.parentElement?.contains(hit) === true) return [at.x, at.y] as const;
    }
    throw new Error('another leg hides it');
  });
  const byMm = toMm - Number(await leg.getAttribute('aria-valuenow'));
  // Four tenths of a millimetre for each pixel.
  const byPixels = -byMm / 0.4;
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x, y + byPixels / 2);
  await page.mouse.move(x, y + byPixels);
  await page.mouse.up();
}

async function byMouse(page: Page, action: TripodAction): Promise<void> {
  const click = (name: string) => page.getByRole('button', { name, exact: true }).click();
  switch (action.do) {
    case 'tread-in':
      return click(`Tread in foot ${legName(action.leg)}`);
    case 'open':
      return click(`Open leg ${legName(action.leg)}`);
    case 'lock':
      return click(`Lock leg ${legName(action.leg)}`);
    case 'slide': {
      const leg = page.getByRole('slider', { name: `Leg ${legName(action.leg)}`, exact: true });
      await drag(page, leg, action.toMm);
      await expect(leg).toHaveAttribute('aria-valuenow', String(action.toMm));
      return;
    }
    case 'turn-arm':
      return click('Turn the arm half round');
    case 'tube-on':
      return click('Put the tube on');
    default:
      throw new Error(`a perfect operator has no need of "${action.do}"`);
  }
}

async function byKeyboard(page: Page, action: TripodAction): Promise<void> {
  switch (action.do) {
    case 'tread-in':
      return press(page, `Tread in foot ${legName(action.leg)}`);
    case 'open':
      return press(page, `Open leg ${legName(action.leg)}`);
    case 'lock':
      return press(page, `Lock leg ${legName(action.leg)}`);
    case 'slide':
      await typeInto(
        page,
        new RegExp(`^Length of leg ${legName(action.leg)}$`),
        String(action.toMm),
      );
      return page.keyboard.press('Enter');
    case 'turn-arm':
      return press(page, 'Turn the arm half round');
    case 'tube-on':
      return press(page, 'Put the tube on');
    default:
      throw new Error(`a perfect operator has no need of "${action.do}"`);
  }
}

test('Level by mouse: locks are opened and legs dragged in the drawing, full marks', async ({
  page,
  product,
}) => {
  const task = await openTask(page, product);
  for (const action of task.answer.actions) await byMouse(page, action);
  for (const answer of answersIn(page, task)) await answer.check();
  await checkShown(page);
  await page.getByRole('button', { name: 'How did I do?' }).click();
  await page.getByRole('button', { name: 'Show how it came out' }).click();
  await expectFullMarks(page);
  await checkShown(page);
});

test('Level by keyboard, in the table, without canvas: full marks too', async ({
  page,
  context,
  product,
}) => {
  const task = await openTask(page, product);
  await withoutCanvasAndMouse(context);
  await page.reload();
  await press(page, 'Table');
  for (const action of task.answer.actions) await byKeyboard(page, action);
  for (const answer of answersIn(page, task)) await chooseByKeys(page, answer);
  await expect(page.getByText(/^Still to do/)).toHaveCount(0);
  await press(page, 'How did I do?');
  await press(page, 'Show how it came out');
  await expectFullMarks(page);
});
