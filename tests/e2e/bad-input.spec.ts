import type { Page } from '@playwright/test';
import { markText } from '../../components/grading/mark-text';
import { routes } from '../../lib/routes';
import { submitAltered } from '../support/answer-on-its-way';
import { expect, test } from '../support/product';
import { demoCard, signInAsDemoTeacher, signInWithCard } from '../support/signing-in';
import { count, markByEngine } from '../support/stored-work';
import {
  dateInDays,
  demoClassName,
  fillNewAssignment,
  openClass,
  publish,
  saveDraftAssignment,
} from '../support/teacher-desk';

const save = 'Save the draft and see the answer key';

async function fillTime(page: Page, date: string, time: string): Promise<void> {
  await page.getByLabel('Date', { exact: true }).fill(date);
  await page.getByLabel('Time', { exact: true }).fill(time);
}

test('a time that the clocks skip or repeat is asked about, and nothing typed is lost', async ({
  page,
  product,
}) => {
  const title = 'A night of the clocks';
  await signInAsDemoTeacher(page, product.demoSignIns);
  await fillNewAssignment(page, await openClass(page, demoClassName), title);
  await page.getByLabel('Time zone').fill('America/New_York');

  // In 2027 daylight saving time begins on 14 March at 02:00 there (15 U.S.C. 260a: second Sunday).
  await fillTime(page, '2027-03-14', '02:30');
  const skipped = '02:30 does not exist that day in America/New_York: the clocks jump over it.';
  await expect(page.getByText(skipped)).toBeVisible();
  await page.getByRole('button', { name: save }).click();
  await expect(page.getByRole('alert').filter({ hasText: skipped })).toBeFocused();
  await expect(page.getByLabel('Title')).toHaveValue(title);
  await expect(page.getByLabel('Time', { exact: true })).toHaveValue('02:30');
  await page.getByRole('button', { name: '03:30 (UTC −04:00)' }).click();
  await expect(page.getByText('That is 07:30 UTC on 2027-03-14.')).toBeVisible();

  // It ends on 7 November at 02:00 (first Sunday).
  await fillTime(page, '2027-11-07', '01:30');
  await expect(
    page.getByText(
      '01:30 comes twice that day in America/New_York: the clocks go back. Which one?',
    ),
  ).toBeVisible();
  await page.getByRole('button', { name: 'the second: 01:30 (UTC −05:00)' }).click();
  await expect(page.getByText('That is 06:30 UTC on 2027-11-07.')).toBeVisible();
  await saveDraftAssignment(page, title);
  await expect(page.getByText('2027-11-07, 01:30-05:00')).toBeVisible();
});

test('a place off the globe and a skyline that crosses itself are refused in words', async ({
  page,
  product,
}) => {
  const title = 'Nowhere on Earth';
  await signInAsDemoTeacher(page, product.demoSignIns);
  await fillNewAssignment(page, await openClass(page, demoClassName), title);

  await page.getByText('Points as numbers').click();
  const azimuth = page.getByLabel('Point 2, azimuth in degrees');
  const before = await page.getByLabel('Point 3, azimuth in degrees').inputValue();
  await azimuth.fill(String(Number(before) + 1));
  await azimuth.press('Enter');
  await expect(
    page.getByText(
      `Point 2 cannot pass point 3 at azimuth ${before}°: the skyline would cross itself.`,
    ),
  ).toBeVisible();
  await expect(page.getByLabel('Point 3, azimuth in degrees')).toHaveValue(before);
  await expect(page.getByLabel('Open field'), 'the site is unchanged').toBeChecked();

  await page.getByLabel('Latitude').fill('95');
  await page.getByLabel('Longitude').fill('-180.5');
  await page.getByRole('button', { name: save }).click();
  const summary = page.getByRole('alert').filter({ hasText: 'Some things need another look' });
  await expect(summary).toBeFocused();
  await expect(summary).toContainText('Latitude: at most 90°.');
  await expect(summary).toContainText('Longitude: at most 180°.');
  await expect(page.getByLabel('Latitude')).toHaveValue('95');
  await expect(page.getByLabel('Longitude')).toHaveValue('180.5');
  await expect(page.getByLabel('East or west')).toHaveValue('W');
  await expect(page.getByLabel('Title')).toHaveValue(title);

  await page.getByLabel('Latitude').fill('32.7');
  await page.getByLabel('Longitude').fill('16.9');
  await saveDraftAssignment(page, title);
});

/** Changes the due date of a published assignment that is being looked at. */
async function changeDueDate(page: Page, date: string, isOver: boolean): Promise<void> {
  await page.getByRole('link', { name: 'Change', exact: true }).click();
  await page.getByLabel(/^Due date/).fill(date);
  await page.getByRole('button', { name: 'Save and see the answer key' }).click();
  if (isOver) await page.getByRole('button', { name: 'Save it as it is' }).click();
  await expect(page.getByText(/^Published /)).toBeVisible();
}

test('late starts, starts over the limit and answers that were tampered with are turned down', async ({
  page,
  product,
  openBrowser,
}) => {
  const { dataFolder } = product;
  const title = 'One try only';
  const desk = await openBrowser();
  await signInAsDemoTeacher(desk, product.demoSignIns);
  await fillNewAssignment(desk, await openClass(desk, demoClassName), title);
  await desk.getByLabel('Attempts', { exact: true }).fill('1');
  await saveDraftAssignment(desk, title);
  await publish(desk);

  await signInWithCard(page, demoCard(product.demoSignIns));
  const left = await page.context().newPage();
  await left.goto(routes.student.myWork());
  const taskLeft = left.getByRole('article', { name: title });
  await expect(taskLeft).toContainText('One attempt');

  await test.step('a page left open does not start a check after the due time', async () => {
    await changeDueDate(desk, dateInDays(-2), true);
    await taskLeft.getByRole('button', { name: 'Start the check' }).click();
    await expect(taskLeft.getByRole('alert')).toHaveText(
      'The due time is over. Ask your teacher for more time.',
    );
    await changeDueDate(desk, dateInDays(7), false);
  });

  await page.goto(routes.student.myWork());
  const task = page.getByRole('article', { name: title });
  await task.getByRole('button', { name: 'Start the check' }).click();
  await expect(page.getByText(/^Attempt 1 of 1/)).toBeVisible();
  const attemptId = new URL(page.url()).pathname.split('/').at(-1) ?? '';
  await page.getByRole('button', { name: 'Tonight has no good pair' }).click();

  await test.step('a score, or a star that is not there, is refused and uses nothing up', async () => {
    const refused = page.getByRole('alert').filter({ hasText: 'That was not taken' });
    await submitAltered(page, (body) =>
      body.replace('"kind":"none-usable"', '"kind":"none-usable","total":100'),
    );
    await expect(refused).toContainText('is not part of an answer. Nothing was counted');
    await submitAltered(page, (body) =>
      body.replace('"idempotencyKey"', '"score":100,"idempotencyKey"'),
    );
    await expect(refused).toContainText('"score" is not part of an answer.');
    // Far above the highest HIP number, 120404 (Hipparcos Catalogue, ESA SP-1200).
    const stars = '"stars":[{"hip":999999,"lookAlike":null},{"hip":11767,"lookAlike":null}]';
    await submitAltered(page, (body) =>
      body.replace('"kind":"none-usable"', `"kind":"pair",${stars}`),
    );
    await expect(refused).toContainText('One of the stars is not in this sky: choose it again.');
    expect(count(dataFolder, 'SELECT count(*) AS n FROM Mark WHERE attemptId = ?', attemptId)).toBe(
      0,
    );
  });

  await page.getByRole('button', { name: 'Submit' }).click();
  await expect(
    page.getByRole('heading', { level: 1, name: 'Pick the pair: how it came out' }),
  ).toBeFocused();
  await expect(page.getByRole('meter', { name: 'Mark' })).toHaveAttribute(
    'aria-valuetext',
    `${markText(markByEngine(dataFolder, attemptId))} of 100`,
  );

  await test.step('a page left open does not start a second attempt of one', async () => {
    await taskLeft.getByRole('button', { name: 'Start the check' }).click();
    await expect(taskLeft.getByRole('alert')).toHaveText('You have used your one attempt.');
    await left.reload();
    await expect(taskLeft).toContainText('No attempt left');
    await expect(taskLeft.getByRole('button', { name: /check/ })).toHaveCount(0);
  });
});
