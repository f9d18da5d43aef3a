import type { Page } from '@playwright/test';
import { packUpName } from '../../components/lab/dress-rehearsal/pack-up-words';
import { stageWords } from '../../components/lab/dress-rehearsal/stage-words';
import { markText } from '../../components/grading/mark-text';
import { stepName } from '../../components/lab/put-it-together/step-words';
import { dressRehearsalVariantSchema } from '../../lib/data/lab-tasks/bench/stored-dress-rehearsal';
import { dressRehearsalSubmissionSchema } from '../../lib/grading/bench/dress-rehearsal/dress-rehearsal-submission';
import { gradeDressRehearsal } from '../../lib/grading/bench/dress-rehearsal/grade-dress-rehearsal';
import { packUpSteps } from '../../lib/rehearsal/pack-up';
import type { RehearsalStage } from '../../lib/rehearsal/stages';
import { checkShown } from '../support/accessibility';
import { startBenchPractice } from '../support/bench-practice';
import { press, tabTo, typeInto, withoutCanvasAndMouse } from '../support/keyboard';
import { expect, test, type Product } from '../support/product';
import { attemptIdOf } from '../support/result-reading';
import { catalogue, storedAttempt } from '../support/stored-work';

async function openEvening(page: Page, product: Product) {
  const { variant, answer } = await startBenchPractice(page, product, 'dress-rehearsal');
  const attemptId = attemptIdOf(page);
  return {
    variant: dressRehearsalVariantSchema.parse(variant),
    answer: dressRehearsalSubmissionSchema.parse(answer),
    stored: () => storedAttempt(product.dataFolder, attemptId).submission,
  };
}
type Task = Awaited<ReturnType<typeof openEvening>>;

const stageButton = (page: Page, stage: RehearsalStage) =>
  page.getByRole('navigation', { name: 'Stages of the evening' }).getByRole('button', {
    name: new RegExp(`${stageWords[stage].short} ?, (done|not done yet)$`),
  });

async function planPair(page: Page, { answer }: Task) {
  for (const [label, hip] of [
    ['First star', answer.plannedPair.first],
    ['Second star', answer.plannedPair.second],
  ] as const)
    await page.getByLabel(label).selectOption(String(hip));
}

/** The outcome's page, with the mark that the engine gives for what was sent. */
async function expectEnginesMark(page: Page, { variant, stored }: Task) {
  await expect(page.getByRole('heading', { level: 1, name: /how it came out$/ })).toBeFocused();
  const submission = dressRehearsalSubmissionSchema.parse(stored());
  const grading = gradeDressRehearsal({ variant, submission, catalogue });
  if (!grading.ok) throw new Error(grading.refusal.message);
  await expect(page.getByRole('meter', { name: 'Mark' })).toHaveAttribute(
    'aria-valuetext',
    `${markText(grading.result.total)} of 100`,
  );
  await expect(page.getByText(/^Not yet ready for the field/)).toBeVisible();
  return submission;
}

test('Dress rehearsal by mouse: some stages are done, none stands in the way, and the evening is handed in', async ({
  page,
  product,
}) => {
  const task = await openEvening(page, product);
  for (const step of task.answer.benches['put-it-together'].order)
    await page.getByRole('button', { name: stepName[step], exact: true }).click();
  await checkShown(page);
  await stageButton(page, 'start-position').click();
  await page.getByRole('button', { name: 'Leave it like this' }).click();
  await page.getByRole('button', { name: 'Lock both clutches' }).click();
  await page.getByRole('button', { name: 'Go on: Plan the pair' }).click();
  await planPair(page, task);
  await expect(stageButton(page, 'start-position')).toHaveAccessibleName(/, done$/);
  await checkShown(page);
  await stageButton(page, 'pack-up').click();
  for (const step of packUpSteps)
    await page.getByRole('button', { name: packUpName(step), exact: true }).click();
  await page.getByRole('button', { name: 'How did the evening go?' }).click();
  await page.getByRole('button', { name: 'Show how it came out' }).click();
  const sent = await expectEnginesMark(page, task);
  expect(sent.packedUp).toEqual(packUpSteps);
  await checkShown(page);
});

test('Dress rehearsal by keyboard, in the tables, without canvas: back and forth, and handed in', async ({
  page,
  context,
  product,
}) => {
  const task = await openEvening(page, product);
  await withoutCanvasAndMouse(context);
  await page.reload();
  await press(page, 'Table');
  await tabTo(page, stageButton(page, 'start-position'));
  await page.keyboard.press('Enter');
  await expect(stageButton(page, 'start-position')).toBeFocused();
  const bearing = (360 - task.variant.telescope.declinationDeg) % 360;
  await typeInto(page, /^The compass/, bearing.toFixed(1));
  await typeInto(page, /^The level/, '0');
  await press(page, 'Lay it like this');
  await press(page, 'Lock both clutches');
  await press(page, 'Go on: Plan the pair');
  await expect(stageButton(page, 'pick-the-pair')).toBeFocused();
  // What an earlier stage is still short of is said at the run, with the way back.
  await press(page, 'Go on: Align on two stars');
  await press(page, /^Back to: /);
  await tabTo(page, stageButton(page, 'pack-up'));
  await page.keyboard.press('Enter');
  for (const step of packUpSteps) await press(page, packUpName(step));
  await press(page, 'How did the evening go?');
  await press(page, 'Show how it came out');
  const sent = await expectEnginesMark(page, task);
  expect(sent.clutchesLocked).toBe(true);
  expect(sent.log).toEqual([]);
});
