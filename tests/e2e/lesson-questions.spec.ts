import type { Page } from '@playwright/test';
import { questionSetKeySchema } from '../../lib/data/lab-tasks/stored-questions';
import { rightAnswer } from '../../lib/items/answers-to-try';
import type { Item } from '../../lib/items/item';
import { routes } from '../../lib/routes';
import { expectAccessible } from '../support/accessibility';
import { giveAnswer } from '../support/answering';
import { addStudents, makeCards } from '../support/new-class';
import { expect, test } from '../support/product';
import { signInAsDemoTeacher, signInWithCard } from '../support/signing-in';
import { storedAttempt } from '../support/stored-work';
import { createClass } from '../support/teacher-desk';

const lesson = 'level-enough';
const student = 'Petrel';
const strip = (page: Page) => page.getByRole('navigation', { name: 'The questions' });
const attemptIdOf = (page: Page): string => /attempts\/([^/?]+)/.exec(page.url())?.[1] ?? '';

/** The answer, and where it is the order that was dealt, the word that it stands right. */
async function answer(page: Page, item: Item): Promise<void> {
  await giveAnswer(page, rightAnswer(item));
  const asItStands = page.getByRole('button', { name: 'It is right as it stands' });
  if (await asItStands.isVisible()) await asItStands.click();
}

test('a lesson is assigned from its own page, answered, left and resumed, handed in, and seen by the teacher', async ({
  page,
  product,
  openBrowser,
}) => {
  test.setTimeout(240_000);
  await signInAsDemoTeacher(page, product.demoSignIns);
  const className = 'Year 7, questions';
  const classId = await createClass(page, className);
  await addStudents(page, classId);
  const card = await makeCards(page, classId, student);

  await page.goto(routes.lessons.one(lesson));
  await page
    .getByRole('region', { name: 'Assign this lesson' })
    .getByRole('link', { name: className })
    .click();
  await expect(page.getByLabel('What students do')).toHaveValue('lesson-questions');
  await expect(page.getByRole('checkbox', { name: 'Level enough' })).toBeChecked();
  await expect(page.getByRole('heading', { name: 'Place' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Save the draft and see the answer key' }).click();
  await expect(page.getByRole('heading', { name: 'A set on “Level enough”' })).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Publish…' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Publish', exact: true }).click();
  await expect(page.getByText('Nobody has started yet.')).toBeVisible();

  const desk = await openBrowser();
  await signInWithCard(desk, card);
  await desk.getByRole('button', { name: 'Start the check' }).click();
  await expect(desk.getByText(/^Question 1 of 8/)).toBeVisible();
  const attemptId = attemptIdOf(desk);
  const { items } = questionSetKeySchema.parse(
    storedAttempt(product.dataFolder, attemptId).answerKey,
  );
  // The page has the questions, and nothing of their answers.
  const html = await desk.content();
  for (const { item } of items) expect(html).not.toContain(item.explanation);
  await expectAccessible(desk);

  for (const [index, { item }] of items.slice(0, 6).entries()) {
    await expect(desk.getByText(new RegExp(`^Question ${String(index + 1)} of 8`))).toBeVisible();
    await answer(desk, item);
    await desk.getByRole('button', { name: 'Next question' }).click();
  }
  await expect(desk.getByText('Saving …')).toHaveCount(0);
  await desk.reload();
  // Goes on where it was left.
  await expect(desk.getByText(/^Question 7 of 8/)).toBeVisible();
  await expect(strip(desk).getByRole('button', { name: /^Question \d, answered$/ })).toHaveCount(6);

  await strip(desk).getByRole('button', { name: 'Read once more' }).click();
  await expect(desk.getByText('2 questions have no answer')).toBeVisible();
  await expectAccessible(desk);
  await desk.getByRole('button', { name: 'Change question 7' }).click();
  const seventh = items[6]?.item;
  if (seventh === undefined) throw new Error('a set has eight questions');
  await answer(desk, seventh);
  await strip(desk).getByRole('button', { name: 'Read once more' }).click();
  await expect(desk.getByText('One question has no answer')).toBeVisible();
  await desk.getByRole('button', { name: 'Submit' }).click();
  await expect(desk.getByRole('heading', { level: 1, name: /how it came out/ })).toBeVisible();
  await expect(desk.getByText(/^7 of 8 are right/)).toBeVisible();
  await expect(desk.getByText('There was no answer, which counts nothing.')).toBeVisible();
  await expectAccessible(desk);

  await page.goto(routes.teacher.attempt(attemptId));
  await expect(
    page.getByRole('heading', { name: 'What was asked, what was answered, and what is right' }),
  ).toBeVisible();
  await expect(page.getByText(/^7 of 8 are right/)).toBeVisible();
});

test('without script a visitor’s question is answered by a plain form, and an order moved', async ({
  browser,
  product,
}) => {
  const context = await browser.newContext({ javaScriptEnabled: false });
  const page = await context.newPage();
  const look = { round: 'plain', family: 'fists-and-compass', template: 'fists-up' };
  await page.goto(product.address + routes.lessons.practise('choosing-alignment-stars', look));
  await page.getByLabel('Your answer').fill('400');
  await page.getByRole('button', { name: 'Check my answer' }).click();
  await expect(page.getByText('Not this time.')).toBeVisible();
  await expect(page.getByLabel('Your answer')).toHaveValue('400');
  await page.getByRole('link', { name: 'Next question' }).click();
  await expect(page.getByText(/^Question 2/)).toBeVisible();
  await context.close();
});

test('an answer that cannot be sent stays in its field and is taken afterwards', async ({
  page,
  context,
  complaints,
}) => {
  complaints.expect(/ERR_INTERNET_DISCONNECTED/);
  const look = { round: 'offline', family: 'fists-and-compass', template: 'fists-up' };
  await page.goto(routes.lessons.practise('choosing-alignment-stars', look));
  await page.getByLabel('Your answer').fill('400');
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Check my answer' }).click();
  await expect(page.getByText(/could not be sent/)).toBeVisible();
  await expect(page.getByLabel('Your answer')).toHaveValue('400');
  await context.setOffline(false);
  await page.getByRole('button', { name: 'Check my answer' }).click();
  await expect(page.getByText('Not this time.')).toBeVisible();
});
