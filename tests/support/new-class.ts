import { expect, type Page } from '@playwright/test';
import { routes } from '../../lib/routes';
import type { Card } from './signing-in';

/** Three students out of a pasted table with a column that nobody wants. */
export async function addStudents(page: Page, classId: string): Promise<void> {
  await page.goto(routes.teacher.classRoster(classId));
  await page.getByRole('tab', { name: 'Paste or open columns' }).click();
  await page
    .getByLabel('Paste columns from a spreadsheet')
    .fill(
      'Nr\tHome mail\tBird\n1\tp@mail.example\tPetrel\n2\ts@mail.example\tSiskin\n3\t\tPetrel\n',
    );
  await page.getByRole('button', { name: 'Read the columns' }).click();
  await expect(page.getByText('One column is left behind')).toBeVisible();
  await page.getByLabel('The first row names the columns').check();
  const column = page.getByLabel('Column with the name to show');
  const birds = await column.getByRole('option', { name: /^Bird:/ }).getAttribute('value');
  await column.selectOption(birds);
  const read = page.getByRole('table', { name: 'Names from The pasted text, column Bird' });
  await expect(read.getByLabel('Name in row 2')).toHaveValue('Petrel');
  await expect(page.getByText('2 names read; 1 row is left out until mended')).toBeVisible();
  await read.getByLabel('Name in row 4').fill('Whimbrel');
  await page.getByRole('button', { name: 'Preview' }).click();
  await expect(page.getByText('The pasted text: 3 new.')).toBeVisible();
  await page.getByRole('button', { name: 'Add 3 students' }).click();
  await expect(page.getByText('3 students added.')).toBeVisible();
  await page.getByRole('button', { name: 'Done' }).click();
}

/** Their cards; gives the one of the student of that name. */
export async function makeCards(page: Page, classId: string, student: string): Promise<Card> {
  await page.goto(routes.teacher.classCards(classId));
  await page.getByRole('button', { name: 'Make 3 cards' }).click();
  await expect(page.getByText('3 cards are ready: print now')).toBeVisible();
  const facts = page.getByRole('listitem').filter({ hasText: student }).getByRole('definition');
  const [classCode, cardNumber, words] = await facts.allInnerTexts();
  await page.getByRole('button', { name: 'Done: take them off the screen' }).click();
  await expect(page.getByText(words ?? '', { exact: true })).toBeHidden();
  return { classCode: classCode ?? '', cardNumber: cardNumber ?? '', words: words ?? '' };
}
