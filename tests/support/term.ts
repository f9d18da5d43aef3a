import { expect, type Page } from '@playwright/test';
import { questionSetKeySchema } from '../../lib/data/lab-tasks/stored-questions';
import { rightAnswer } from '../../lib/items/answers-to-try';
import { routes } from '../../lib/routes';
import { giveAnswer } from './answering';
import { oneRosterZip } from './one-roster-zip';
import { signInWithCard, type Card } from './signing-in';
import { storedAttempt } from './stored-work';

/** The class from the school office's zip: shown first, then taken. */
export async function takeRoster(page: Page, classId: string, count: number): Promise<void> {
  await page.goto(routes.teacher.classRoster(classId));
  await page.getByRole('tab', { name: 'OneRoster zip' }).click();
  await page.getByLabel('OneRoster 1.2 zip').setInputFiles({
    name: 'school-office.zip',
    mimeType: 'application/zip',
    buffer: Buffer.from(oneRosterZip(count)),
  });
  await expect(page.getByText('school-office.zip read: 1 class.')).toBeVisible();
  await page.getByRole('button', { name: 'Preview' }).click();
  await expect(page.getByRole('table', { name: 'What becomes of each student' })).toBeVisible();
  await page.getByRole('button', { name: `Add ${String(count)} students` }).click();
  await expect(page.getByText(`${String(count)} students added.`)).toBeVisible();
  await page.getByRole('button', { name: 'Done' }).click();
}

/** The second time the same zip changes nothing. */
export async function takeRosterAgain(page: Page, classId: string, count: number): Promise<void> {
  await page.goto(routes.teacher.classRoster(classId));
  await page.getByRole('tab', { name: 'OneRoster zip' }).click();
  await page.getByLabel('OneRoster 1.2 zip').setInputFiles({
    name: 'school-office.zip',
    mimeType: 'application/zip',
    buffer: Buffer.from(oneRosterZip(count)),
  });
  await page.getByRole('button', { name: 'Preview' }).click();
  await expect(
    page.getByText('There is nothing to change: the class is as the list says.'),
  ).toBeVisible();
}

/** Everybody's card and name, read off the sheet. */
export async function cardsOf(page: Page, classId: string): Promise<(Card & { name: string })[]> {
  await page.goto(routes.teacher.classCards(classId));
  await page.getByRole('button', { name: /^Make \d+ cards$/ }).click();
  await expect(page.getByText(/cards are ready: print now/)).toBeVisible();
  const cards = await page.locator('[data-card-sheet] li').evaluateAll((items) =>
    items.map((item) => ({
      name: item.querySelector('p span')?.textContent ?? '',
      facts: [...item.querySelectorAll('dd')].map((fact) => fact.textContent),
    })),
  );
  await page.getByRole('button', { name: 'Done: take them off the screen' }).click();
  return cards.map(({ name, facts: [classCode = '', cardNumber = '', words = ''] }) => ({
    name,
    classCode,
    cardNumber,
    words,
  }));
}

/** Signs in, answers the first so many questions rightly and no other, hands in; the attempt's id. */
export async function workOnSet(
  desk: Page,
  { dataFolder, card, right }: { dataFolder: string; card: Card; right: number },
): Promise<string> {
  await signInWithCard(desk, card);
  await desk.getByRole('button', { name: 'Start the check' }).click();
  await expect(desk.getByText(/^Question 1 of 8/)).toBeVisible();
  const attemptId = /attempts\/([^/?]+)/.exec(desk.url())?.[1] ?? '';
  const key = questionSetKeySchema.parse(storedAttempt(dataFolder, attemptId).answerKey);
  for (const [index, { item }] of key.items.slice(0, right).entries()) {
    await expect(desk.getByText(new RegExp(`^Question ${String(index + 1)} of 8`))).toBeVisible();
    await giveAnswer(desk, rightAnswer(item));
    const asItStands = desk.getByRole('button', { name: 'It is right as it stands' });
    if (await asItStands.isVisible()) await asItStands.click();
    const next = desk.getByRole('button', { name: 'Next question' });
    if (index < key.items.length - 1) await next.click();
  }
  return attemptId;
}

/** Reads once more and hands in. */
export async function handIn(desk: Page): Promise<void> {
  await desk
    .getByRole('navigation', { name: 'The questions' })
    .getByRole('button', { name: 'Read once more' })
    .click();
  await desk.getByRole('button', { name: 'Submit' }).click();
  await expect(desk.getByRole('heading', { level: 1, name: /how it came out/ })).toBeVisible();
}
