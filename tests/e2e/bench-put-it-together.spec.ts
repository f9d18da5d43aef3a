import type { Page } from '@playwright/test';
import { momentName, sightName } from '../../components/lab/put-it-together/sight-words';
import { stepName } from '../../components/lab/put-it-together/step-words';
import { putItTogetherVariantSchema } from '../../lib/data/lab-tasks/bench/stored-put-it-together';
import { putItTogetherSubmissionSchema } from '../../lib/grading/bench/put-it-together/put-it-together-submission';
import { checkShown } from '../support/accessibility';
import { expectFullMarks, startBenchPractice } from '../support/bench-practice';
import { press, tabTo, withoutCanvasAndMouse } from '../support/keyboard';
import { test, type Product } from '../support/product';

async function openTask(page: Page, product: Product) {
  const { variant, answer } = await startBenchPractice(page, product, 'put-it-together');
  const { order, hazards } = putItTogetherSubmissionSchema.parse(answer);
  const { moments } = putItTogetherVariantSchema.parse(variant);
  const dangers = moments.flatMap(({ moment }) =>
    hazards[moment].map((sight) =>
      page
        .getByRole('group', { name: momentName[moment] })
        .getByRole('checkbox', { name: sightName[sight] }),
    ),
  );
  return { steps: order.map((step) => stepName[step]), dangers };
}

test('Put it together by mouse: each card is pressed in turn, full marks', async ({
  page,
  product,
}) => {
  const { steps, dangers } = await openTask(page, product);
  for (const name of steps) await page.getByRole('button', { name, exact: true }).click();
  for (const danger of dangers) await danger.check();
  await checkShown(page);
  await page.getByRole('button', { name: 'How did I do?' }).click();
  await page.getByRole('button', { name: 'Show how it came out' }).click();
  await expectFullMarks(page);
  await checkShown(page);
});

test('Put it together by keyboard, in the table, without canvas: full marks too', async ({
  page,
  context,
  product,
}) => {
  const { steps, dangers } = await openTask(page, product);
  await withoutCanvasAndMouse(context);
  await page.reload();
  await press(page, 'Table');
  for (const name of steps) await press(page, name);
  for (const danger of dangers) {
    await tabTo(page, danger);
    await page.keyboard.press('Space');
  }
  await press(page, 'How did I do?');
  await press(page, 'Show how it came out');
  await expectFullMarks(page);
});
