import type { Locator, Page } from '@playwright/test';
import { parse } from 'csv-parse/sync';
import { strFromU8, unzipSync } from 'fflate';
import { z } from 'zod';
import { routes } from '../../lib/routes';
import { expectAccessible } from '../support/accessibility';
import { expect, test } from '../support/product';
import { signInAsDemoTeacher } from '../support/signing-in';
import { count, rowsOf, setMark } from '../support/stored-work';
import { createClass, dateInDays } from '../support/teacher-desk';
import { cardsOf, handIn, takeRoster, takeRosterAgain, workOnSet } from '../support/term';

const className = 'Year 8, a term';
/** How many of the eight questions each student gets right. */
const rightAnswers = [8, 7, 6, 5, 8, 4, 8, 7, 2, 0];

const cellOf = (page: Page, name: string): Locator =>
  page.getByRole('grid').getByRole('row').filter({ hasText: name }).getByRole('gridcell').nth(1);

const statementsSchema = z.array(
  z.looseObject({
    id: z.uuid(),
    actor: z.looseObject({ account: z.strictObject({ homePage: z.string(), name: z.string() }) }),
    result: z.looseObject({ score: z.looseObject({ raw: z.number() }).optional() }).optional(),
  }),
);

test('a term in miniature: roster, cards, work, decisions, sign-off outside, plan and exports', async ({
  page,
  product,
  openBrowser,
  complaints,
}) => {
  test.setTimeout(600_000);
  complaints.expect(/ERR_INTERNET_DISCONNECTED/);
  const { dataFolder } = product;
  await signInAsDemoTeacher(page, product.demoSignIns);
  const classId = await createClass(page, className);

  await takeRoster(page, classId, rightAnswers.length);
  await takeRosterAgain(page, classId, rightAnswers.length);
  const cards = await cardsOf(page, classId);
  expect(cards).toHaveLength(rightAnswers.length);
  const names = cards.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  const [first = '', second = '', third = ''] = names;

  await page.goto(routes.teacher.newAssignment(classId, { lesson: 'level-enough' }));
  // The form takes what is typed once it is alive: its summary says so.
  await expect(async () => {
    await page.getByLabel(/^Due date/).fill(dateInDays(7));
    await page.getByLabel(/^Due time/).fill('18:00');
    await expect(page.getByText(/, due .+ 18:00/)).toBeVisible({ timeout: 1000 });
  }).toPass();
  await page.getByRole('button', { name: 'Save the draft and see the answer key' }).click();
  await expect(page.getByText('Draft: students do not see it yet.')).toBeVisible();
  await page.getByRole('button', { name: 'Publish…' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Publish', exact: true }).click();
  await expect(page.getByText('Nobody has started yet.')).toBeVisible();
  const assignmentId = /assignments\/([^/?]+)/.exec(page.url())?.[1] ?? '';

  // The board follows without being loaded anew.
  await page.goto(routes.teacher.classLive(classId));
  const tile = (name: string) => page.getByRole('listitem').filter({ hasText: name });
  await expect(page.getByRole('region', { name: 'Not here' })).toContainText(first);
  const attemptIds: string[] = [];
  for (const [index, card] of cards.entries()) {
    const desk = await openBrowser();
    const right = rightAnswers[index] ?? 0;
    attemptIds.push(await workOnSet(desk, { dataFolder, card, right }));
    if (index === 0) await expect(tile(first)).toContainText('Working');
    await handIn(desk);
    if (index === 0) await expect(tile(first)).toContainText('Handed in');
    await desk.context().close();
  }
  await expect(
    page.getByRole('listitem').filter({ hasText: `${String(rightAnswers.length)} handed in` }),
  ).toBeVisible();

  await page.goto(routes.teacher.classGradebook(classId));
  for (const [index, name] of names.entries()) {
    const mark = (100 * (rightAnswers[index] ?? 0)) / 8;
    await expect(cellOf(page, name)).toContainText(String(mark));
  }

  // A mark of one's own, by keyboard.
  await cellOf(page, first).getByRole('link').focus();
  await page.keyboard.press('9');
  const editor = page.getByRole('dialog');
  await expect(editor.getByLabel('Your mark, 0 to 100')).toBeFocused();
  await page.keyboard.type('1');
  await editor.getByLabel('Why').fill('Explained it to the whole class.');
  await page.keyboard.press('Enter');
  await expect(cellOf(page, first)).toContainText('91');

  const studentIds = new Map(
    z
      .array(z.object({ id: z.string(), displayName: z.string() }))
      .parse(rowsOf(dataFolder, 'SELECT id, displayName FROM Student WHERE classId = ?', classId))
      .map(({ id, displayName }) => [displayName, id]),
  );
  const cell = (name: string) =>
    routes.teacher.gradebookCell(studentIds.get(name) ?? '', assignmentId);
  await page.goto(cell(second));
  await page.getByText('Own mark, excuse, more time').click();
  await page.getByLabel('Does it count?').selectOption({ label: 'Excuse: it does not count' });
  const excuse = page.locator('form').filter({ has: page.getByLabel('Does it count?') });
  await excuse.getByLabel('Why').fill('Was ill for a week.');
  await excuse.getByRole('button', { name: 'Save' }).click();
  await expect(page.getByRole('table', { name: /What was decided/ })).toContainText(
    'Was ill for a week.',
  );
  await page.goto(cell(third));
  await page.getByText('Own mark, excuse, more time').click();
  const more = page.locator('form').filter({ has: page.getByLabel('Own due date') });
  await more.getByLabel('Own due date').fill(dateInDays(14));
  await more.getByLabel('Own due time').fill('18:00');
  await more.getByLabel('Why').fill('The tripod was lent out.');
  await more.getByRole('button', { name: 'Set the due time' }).click();
  await expect(page.getByRole('table', { name: /What was decided/ })).toContainText(
    'The tripod was lent out.',
  );
  await expectAccessible(page);

  // As if the grader had been mended since: one mark was too low, one too high. What rises is ticked.
  setMark(dataFolder, attemptIds[5] ?? '', 40);
  setMark(dataFolder, attemptIds[3] ?? '', 80);
  await page.goto(routes.teacher.regrade(assignmentId));
  await expect(page.getByText('10 pieces of work were marked again; 2 come')).toBeVisible();
  await expectAccessible(page);
  await page.getByRole('button', { name: 'Take over what is ticked' }).click();
  await expect(page.getByText('10 pieces of work were marked again; one comes')).toBeVisible();
  await page.goto(routes.teacher.classGradebook(classId));
  await expect(cellOf(page, first)).toContainText('91');
  await expect(cellOf(page, second)).toContainText(/excused/i);
  await expect(cellOf(page, names[5] ?? '')).toContainText('50');
  await expect(cellOf(page, names[3] ?? '')).toContainText('80');

  await page.goto(routes.teacher.classStatistics(classId));
  await expect(page.getByText(/too few to trust: fewer than 30/).first()).toBeVisible();
  await expect(page.getByText(/Of 9, 9 have a mark/)).toBeVisible();

  // Outside, without a connection and back.
  await page.goto(routes.teacher.classSignOff(classId));
  await expect(page.getByText('Everything noted here has been sent.')).toBeVisible();
  await page.context().setOffline(true);
  await page.getByRole('button', { name: new RegExp(`^${first}, Levels:`) }).click();
  await page.getByRole('button', { name: /^4/ }).click();
  await expect(page.getByText(/1 note waits on this device/)).toBeVisible();
  expect(noted(dataFolder, classId)).toBe(0);
  await page.context().setOffline(false);
  await expect(page.getByText('Everything noted here has been sent.')).toBeVisible();
  expect(noted(dataFolder, classId)).toBe(1);
  await page.getByRole('button', { name: /^Levels ?: several students at once/ }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'All', exact: true }).click();
  await page.getByRole('dialog').getByRole('button', { name: /^3/ }).click();
  await expect(page.getByText('Everything noted here has been sent.')).toBeVisible();
  await page.reload();
  await expect(
    page.getByRole('button', { name: new RegExp(`^${second}, Levels: .*3`) }),
  ).toBeVisible();

  await page.goto(routes.teacher.classNight(classId));
  await expect(page.getByRole('heading', { name: /evening/i }).first()).toBeVisible();

  const file = async (name: string, query: string): Promise<Buffer> => {
    const answer = await page.request.get(`${routes.teacher.classExport(classId, name)}?${query}`);
    expect(answer.ok()).toBe(true);
    return answer.body();
  };
  const marks = z
    .array(z.record(z.string(), z.string()))
    .parse(parse(await file('marks.csv', 'names=shown'), { bom: true, columns: true }));
  const byName = new Map(marks.map((row) => [row['Name'], Object.values(row)]));
  expect(byName.get(first)).toContain('91');
  expect(byName.get(second)).toContain('excused');
  expect(byName.get(names[5] ?? '')).toContain('50');
  const withoutNames = (await file('marks.csv', '')).toString('utf8');
  for (const name of names) expect(withoutNames).not.toContain(name);

  const statements = (await file('statements.json', '')).toString('utf8');
  const read = statementsSchema.parse(JSON.parse(statements));
  expect(read.flatMap(({ result }) => result?.score?.raw ?? []).toSorted((a, b) => a - b)).toEqual(
    rightAnswers.map((right, index) => (index === 3 ? 80 : 12.5 * right)).toSorted((a, b) => a - b),
  );
  expect((await file('statements.json', '')).toString('utf8')).toBe(statements);

  const zip = unzipSync(await file('student.zip', `student=${studentIds.get(first) ?? ''}`));
  const entry = Object.keys(zip).find((name) => name.endsWith('data.json')) ?? '';
  const kept = z
    .looseObject({
      displayName: z.string(),
      overrides: z.array(z.looseObject({ mark: z.number().nullable() })),
    })
    .parse(JSON.parse(strFromU8(zip[entry] ?? new Uint8Array())));
  expect(kept).toMatchObject({ displayName: first, overrides: [{ mark: 91 }] });
});

const noted = (dataFolder: string, classId: string): number =>
  count(
    dataFolder,
    'SELECT count(*) AS n FROM Observation WHERE studentId IN (SELECT id FROM Student WHERE classId = ?)',
    classId,
  );
