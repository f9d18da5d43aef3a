import type { Page } from '@playwright/test';
import { fieldVariantSchema } from '../../lib/data/lab-tasks/bench/stored-field';
import { fieldSubmissionSchema } from '../../lib/grading/bench/field/field-submission';
import { checkShown } from '../support/accessibility';
import { chooseByKeys, expectFullMarks, startBenchPractice } from '../support/bench-practice';
import { press, tabTo, typeInto, withoutCanvasAndMouse } from '../support/keyboard';
import { expect, test, type Product } from '../support/product';

async function openTask(page: Page, product: Product) {
  const { variant, answer } = await startBenchPractice(page, product, 'field');
  return {
    variant: fieldVariantSchema.parse(variant),
    answer: fieldSubmissionSchema.parse(answer),
  };
}
type Task = Awaited<ReturnType<typeof openTask>>;

const eyepieceIn = (page: Page, { variant, answer }: Task) => {
  const eyepiece = variant.eyepieces.find(({ id }) => id === answer.eyepieceId);
  const name = eyepiece === undefined ? 'None will do' : `${String(eyepiece.focalLengthMm)} mm`;
  return page.getByRole('radio', { name, exact: true });
};
const numbersOf = ({ answer }: Task) =>
  [
    [/^How much sky/, answer.fieldArcmin],
    [/^With the mount off/, answer.driftSeconds],
    [/^How close/, answer.limitArcsec],
  ] as const;
const sidesOf = (page: Page, { answer }: Task) =>
  [answer.way, answer.view].flatMap((way) =>
    way === null
      ? []
      : [
          page.getByRole('radio', { name: way.along === 'left' ? 'Left' : 'Right', exact: true }),
          page.getByRole('radio', {
            name: way.up === 'up' ? /^(Up|Above the middle)$/ : /^(Down|Below the middle)$/,
          }),
        ],
  );

test('Field by mouse: the eyepiece is chosen and focused in the drawing, full marks', async ({
  page,
  product,
}) => {
  const task = await openTask(page, product);
  await eyepieceIn(page, task).check();
  const focus = page.getByRole('slider', { name: 'Focus' });
  await focus.fill(String(task.answer.focusMm));
  for (const [label, value] of numbersOf(task))
    if (value !== null) await page.getByLabel(label).fill(String(value));
  for (const side of sidesOf(page, task)) await side.check();
  await checkShown(page);
  await page.getByRole('button', { name: 'How did I do?' }).click();
  await page.getByRole('button', { name: 'Show how it came out' }).click();
  await expectFullMarks(page);
  await checkShown(page);
});

test('Field by keyboard, in the table, without canvas: full marks too', async ({
  page,
  context,
  product,
}) => {
  const task = await openTask(page, product);
  await withoutCanvasAndMouse(context);
  await page.reload();
  await press(page, 'Table');
  await chooseByKeys(page, eyepieceIn(page, task));
  await tabTo(page, page.getByRole('slider', { name: 'Focus' }));
  const { focusMm } = task.answer;
  for (let step = 0; step < Math.round(Math.abs(focusMm) * 10); step += 1)
    await page.keyboard.press(focusMm > 0 ? 'ArrowRight' : 'ArrowLeft');
  for (const [label, value] of numbersOf(task))
    if (value !== null) await typeInto(page, label, String(value));
  for (const side of sidesOf(page, task)) await chooseByKeys(page, side);
  await expect(page.getByText(/^Still to do/)).toHaveCount(0);
  await press(page, 'How did I do?');
  await press(page, 'Show how it came out');
  await expectFullMarks(page);
});
