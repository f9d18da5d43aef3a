import type { Page } from '@playwright/test';
import { routes } from '../../lib/routes';
import { expect, test } from '../support/product';
import { signInAsDemoTeacher } from '../support/signing-in';
import { demoClassName, openClass } from '../support/teacher-desk';

const papers = ['A4', 'Letter'] as const;

/** How many sides the page that is shown takes, from the page objects of the file. */
async function sides(page: Page, format: (typeof papers)[number]): Promise<number> {
  const file = await page.pdf({ format });
  return (file.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;
}

test('what is taken outside and home fits its paper, A4 and Letter alike', async ({
  page,
  product,
}) => {
  await signInAsDemoTeacher(page, product.demoSignIns);
  const classId = await openClass(page, demoClassName);
  const student =
    (await page
      .getByRole('link', { name: /^Alder$/ })
      .first()
      .getAttribute('href')) ?? '';

  // A long winter evening: as many pairs as a card can hold.
  await page.goto(routes.teacher.classFieldCards(classId, { date: '2026-12-19', ends: '23:50' }));
  const cards = await page.getByRole('article', { name: /^Field card, / }).count();
  expect(cards).toBeGreaterThan(0);
  for (const paper of papers) expect(await sides(page, paper)).toBe(2 * cards);

  await page.goto(routes.teacher.classChecklist(classId));
  for (const paper of papers) expect(await sides(page, paper)).toBe(1);

  await page.goto(`${student}/report`);
  for (const paper of papers) expect(await sides(page, paper)).toBe(1);
  await expect(page.getByRole('columnheader', { name: 'Mark of 100' })).toBeVisible();
  await page.getByRole('link', { name: 'Leave the marks out' }).click();
  await expect(page.getByRole('columnheader', { name: 'Mark of 100' })).toHaveCount(0);
});
