import type { Page } from '@playwright/test';
import { themes } from '../../components/ui/theme';
import { routes } from '../../lib/routes';
import { checkShown } from '../support/accessibility';
import { hurryToSecondStar, hurryToTheEnd } from '../support/hurried-run';
import { expect, test } from '../support/product';
import { demoCard, signInAsDemoTeacher, signInWithCard } from '../support/signing-in';
import { demoClassName, openClass } from '../support/teacher-desk';

// The pages that anybody may see are looked at in public-pages.spec.ts.

type Look = (page: Page, address: string) => Promise<void>;

/** Loads a page, checks it wide and narrow, and leaves it wide. */
const lookAt: Look = async (page, address) => {
  await test.step(address.replace(/[0-9a-f]{8}-[0-9a-f-]{27}/g, '…'), async () => {
    await page.goto(address);
    await checkShown(page);
  });
};

const addressOf = async (page: Page, link: RegExp): Promise<string> =>
  (await page.getByRole('link', { name: link }).first().getAttribute('href')) ?? '';

async function practise(page: Page, lab: string): Promise<void> {
  await page.goto(routes.student.myWork());
  await page.getByLabel('Lab', { exact: true }).selectOption(lab);
  await page.getByRole('button', { name: 'Practise', exact: true }).click();
  await expect(page.getByText('Practice: nothing here counts.')).toBeVisible();
}

/** From a cell of the gradebook to the page of the attempt behind it. */
async function attemptBehind(page: Page, cell: RegExp): Promise<string> {
  await page.goto(await addressOf(page, cell));
  const address = await page
    .getByRole('table', { name: /^Attempts at/ })
    .getByRole('link')
    .first()
    .getAttribute('href');
  await page.goBack();
  return address ?? '';
}

for (const theme of themes) {
  test(`a teacher's pages about work are accessible and fit a phone, ${theme}`, async ({
    page,
    context,
    product,
    baseURL,
  }) => {
    test.setTimeout(300_000);
    await context.addCookies([{ name: 'theme', value: theme, url: baseURL ?? '' }]);
    await signInAsDemoTeacher(page, product.demoSignIns);
    const classId = await openClass(page, demoClassName);
    const cell = await addressOf(page, /^Alder, A first pair:/);
    const assignment = await addressOf(page, /^Pick the pair for tonight$/);
    await checkShown(page);
    const attempts = [
      await attemptBehind(page, /^Alder, A first pair:/),
      await attemptBehind(page, /^Alder, Alignment run:/),
      await attemptBehind(page, /^Alder, What went wrong\?:/),
    ];
    for (const attempt of attempts) await lookAt(page, attempt);
    await lookAt(page, cell);
    await lookAt(page, assignment);
    await lookAt(page, routes.teacher.newAssignment(classId));
    await lookAt(page, routes.teacher.classSkills(classId));
    await lookAt(page, await addressOf(page, /^Alder, Levels:/));
  });

  test(`a teacher's pages for the lesson and the night are accessible and fit a phone, ${theme}`, async ({
    page,
    context,
    product,
    baseURL,
  }) => {
    test.setTimeout(300_000);
    await context.addCookies([{ name: 'theme', value: theme, url: baseURL ?? '' }]);
    await signInAsDemoTeacher(page, product.demoSignIns);
    const classId = await openClass(page, demoClassName);
    await lookAt(page, routes.teacher.classLive(classId));
    await lookAt(page, routes.teacher.classStatistics(classId));
    await lookAt(page, routes.teacher.classSignOff(classId));
    await lookAt(page, routes.teacher.classGroups(classId));
    await lookAt(page, routes.teacher.classNight(classId, { date: '2026-12-05' }));
    await lookAt(page, routes.teacher.classFieldCards(classId, { date: '2026-12-05' }));
  });

  test(`a student's pages are accessible and fit a phone, ${theme}`, async ({
    page,
    context,
    product,
    baseURL,
  }) => {
    test.setTimeout(240_000);
    await context.addCookies([{ name: 'theme', value: theme, url: baseURL ?? '' }]);
    await signInWithCard(page, demoCard(product.demoSignIns));
    await checkShown(page);
    await lookAt(page, routes.student.skills());
    await page.goto(routes.student.myWork());
    const result = await addressOf(page, /See how it came out/);
    await lookAt(page, result);
    await practise(page, 'Pick the pair');
    await expect(page.locator('canvas')).toBeVisible();
    await checkShown(page);
    await page.getByRole('button', { name: 'Table', exact: true }).click();
    await expect(page.getByRole('table')).toBeVisible();
    await checkShown(page);
    await page.getByRole('button', { name: 'Tonight has no good pair' }).click();
    await page.getByRole('button', { name: 'Show how good it is' }).click();
    await expect(
      page.getByRole('heading', { level: 1, name: 'Pick the pair: how it came out' }),
    ).toBeFocused();
    await checkShown(page);

    await practise(page, 'Alignment run');
    await expect(page.getByRole('button', { name: 'Lock the clutches' })).toBeVisible();
    await checkShown(page);
    await hurryToSecondStar(page);
    await expect(page.locator('canvas').first()).toBeVisible();
    await checkShown(page);
    await page.getByRole('button', { name: 'Table', exact: true }).click();
    await expect(page.getByRole('heading', { name: 'Move the tube' })).toBeVisible();
    await checkShown(page);
    await hurryToTheEnd(page);
    await checkShown(page);

    await practise(page, 'What went wrong?');
    await checkShown(page);
    await page.getByRole('radio').first().check();
    await page.getByRole('button', { name: 'That is the fault' }).click();
    await page.getByRole('radio').first().check();
    await page.getByRole('button', { name: 'That is the cure' }).click();
    await page.getByRole('button', { name: 'Show what it was' }).click();
    await expect(
      page.getByRole('heading', { level: 1, name: 'What went wrong? How it came out' }),
    ).toBeFocused();
    await checkShown(page);
  });
}

// Made of the same parts as the pages above, whose colours are looked at in all three themes.
test('a teacher’s further pages are accessible and fit a phone', async ({ page, product }) => {
  test.setTimeout(300_000);
  await signInAsDemoTeacher(page, product.demoSignIns);
  const classId = await openClass(page, demoClassName);
  const student = await addressOf(page, /^Alder$/);
  const assignment = await addressOf(page, /^Pick the pair for tonight$/);
  await page.goto(routes.teacher.classAssignments(classId));
  const draft = await addressOf(page, /Under a narrow sky/);
  const lesson = await addressOf(page, /^A lesson: standing it up$/);
  await checkShown(page);
  await lookAt(page, draft);
  await lookAt(page, lesson);
  await lookAt(page, `${lesson}/preview`);
  await expect(page.getByRole('link', { name: /^Start ?: / })).toHaveCount(2);
  await expect(page.getByRole('button', { name: /^Practise/ })).toHaveCount(0);
  for (const further of ['edit', 'copy', 'preview']) await lookAt(page, `${draft}/${further}`);
  await lookAt(page, `${assignment}/regrade`);
  await lookAt(page, student);
  await lookAt(page, `${student}/report`);
  await lookAt(page, routes.teacher.classPrint(classId));
  await lookAt(page, routes.teacher.classChecklist(classId));
  await lookAt(page, routes.teacher.classSignOffForm(classId));
  await lookAt(page, routes.teacher.classExports(classId));
  await lookAt(page, routes.teacher.classRoster(classId));
  await lookAt(page, routes.teacher.classCards(classId));
  await lookAt(page, routes.teacher.classSettings(classId));
  await lookAt(page, routes.teacher.newClass());
  await lookAt(page, routes.teacher.account());
  await lookAt(page, routes.teacher.desk());
});

test('cards on the screen, an invitation and what is not there are accessible and fit a phone', async ({
  page,
  product,
  openBrowser,
  complaints,
}) => {
  await signInAsDemoTeacher(page, product.demoSignIns);
  const classId = await openClass(page, demoClassName);
  await page.goto(routes.teacher.classCards(classId));
  await page.getByLabel('chosen students').check();
  await page.getByLabel(/^12 Sorrel/).check();
  await page.getByRole('button', { name: 'Make 1 card' }).click();
  await expect(page.getByText('1 card is ready: print now')).toBeVisible();
  await checkShown(page);
  await page.getByRole('button', { name: 'Done: take them off the screen' }).click();

  await page.goto(routes.teacher.account());
  await page.getByRole('button', { name: 'Make the link' }).click();
  const link = await page.getByRole('textbox', { name: 'Invitation link' }).inputValue();
  const guest = await openBrowser();
  await lookAt(guest, new URL(link).pathname);
  await expect(guest.getByLabel('Your name')).toBeVisible();

  complaints.expect(/404/);
  await lookAt(page, routes.teacher.classGradebook('no-such-class'));
  await lookAt(page, routes.teacher.attempt('no-such-attempt'));
});
