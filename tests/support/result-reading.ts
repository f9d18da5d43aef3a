import { expect, type Locator, type Page } from '@playwright/test';
import { markText } from '../../components/grading/mark-text';
import { routes } from '../../lib/routes';

/** The id of the attempt whose page is shown. */
export const attemptIdOf = (page: Page): string =>
  /attempts\/([^/]+)/.exec(new URL(page.url()).pathname)?.[1] ?? '';

/** The texts of all tables in a part of a page, cell by cell. */
export const figuresOf = (part: Locator): Promise<string[]> =>
  part.getByRole('table').locator('th, td').allInnerTexts();

type Criterion = { earned: number; possible: number };

/** What each part earned, as the table of a result shows it, against what it should show. */
export async function expectMarks(part: Locator, criteria: readonly Criterion[]): Promise<void> {
  const cells = part
    .getByRole('table', { name: 'The mark, part by part' })
    .locator('tbody')
    .getByRole('cell');
  await expect(cells).toHaveText(
    criteria.map(({ earned, possible }) => `${markText(earned)} of ${markText(possible)}`),
  );
}

/** The student's mark of a first attempt: at once, in My work, and where the result is looked up; ends there. */
export async function expectStudentSees(page: Page, title: string, total: number): Promise<void> {
  const mark = markText(total);
  await expect(page.getByRole('meter', { name: 'Mark' })).toHaveAttribute(
    'aria-valuetext',
    `${mark} of 100`,
  );
  await page.goto(routes.student.myWork());
  const done = page.getByRole('article', { name: title });
  await expect(done).toContainText('1 of 2 attempts left');
  await expect(done.getByRole('meter', { name: 'Your mark' })).toHaveAttribute(
    'aria-valuetext',
    new RegExp(`^${mark} of 100; `),
  );
  await done.getByRole('link', { name: 'See how it came out' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByText(`The mark of this attempt: ${mark} of 100`)).toBeVisible();
}

/** Goes from the gradebook's cell, which shows the mark, by the cell's page to the attempt, which shows it too. */
export async function openFromGradebook(
  page: Page,
  classId: string,
  { student, title, total }: { student: string; title: string; total: number },
): Promise<void> {
  const mark = markText(total);
  await page.goto(routes.teacher.classGradebook(classId));
  const cell = page.getByRole('link', { name: new RegExp(`^${student}, ${title}: ${mark}\\b`) });
  await expect(cell).toBeVisible();
  await cell.click();
  await expect(page.getByRole('heading', { level: 1, name: `${student}: ${title}` })).toBeVisible();
  await page
    .getByRole('table', { name: `Attempts at ${title}` })
    .getByRole('link')
    .first()
    .click();
  await expect(page.getByRole('meter', { name: 'Mark of this attempt' })).toHaveAttribute(
    'aria-valuetext',
    new RegExp(`^${mark} of 100; `),
  );
}
