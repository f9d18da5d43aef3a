import type { Page } from '@playwright/test';
import { themes } from '../../components/ui/theme';
import { routes } from '../../lib/routes';
import { checkShown } from '../support/accessibility';
import { addStudents, makeCards } from '../support/new-class';
import { expect, test } from '../support/product';
import { signInAsDemoTeacher, signInWithCard } from '../support/signing-in';
import { createClass, demoClassName, openClass } from '../support/teacher-desk';

const lesson = 'level-enough';
const strip = (page: Page) => page.getByRole('navigation', { name: 'The questions' });

test('Back and Forward after handing in show the result, never the work as it was before', async ({
  page,
  product,
  openBrowser,
}) => {
  test.setTimeout(240_000);
  await signInAsDemoTeacher(page, product.demoSignIns);
  const className = 'Year 7, back and forward';
  const classId = await createClass(page, className);
  await addStudents(page, classId);
  const card = await makeCards(page, classId, 'Petrel');
  await page.goto(routes.lessons.one(lesson));
  await page
    .getByRole('region', { name: 'Assign this lesson' })
    .getByRole('link', { name: className })
    .click();
  await page.getByRole('button', { name: 'Save the draft and see the answer key' }).click();
  await page.getByRole('button', { name: 'Publish…' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Publish', exact: true }).click();
  await expect(page.getByText('Nobody has started yet.')).toBeVisible();

  const desk = await openBrowser();
  const howItCameOut = desk.getByRole('heading', { level: 1, name: /how it came out/i });
  await signInWithCard(desk, card);
  await desk.getByRole('button', { name: 'Start the check' }).click();
  await expect(desk.getByText(/^Question 1 of 8/)).toBeVisible();
  const attempt = desk.url();
  await strip(desk).getByRole('button', { name: 'Read once more' }).click();
  await desk.getByRole('button', { name: 'Submit' }).click();
  await expect(howItCameOut).toBeVisible();
  await desk.getByRole('link', { name: 'Back to my work' }).click();
  await expect(desk).toHaveURL(/\/my$/);
  await desk.goBack();
  await expect(desk.getByText(/of 8 are right/)).toBeVisible();
  await desk.goForward();
  await expect(desk).toHaveURL(/\/my$/);
  await desk.goBack();
  await expect(desk.getByText(/of 8 are right/)).toBeVisible();
  // And by its address, as from a bookmark.
  await desk.goto(attempt);
  await expect(desk.getByText(/of 8 are right/)).toBeVisible();
});

test('a sign-in that does not reach the server keeps what was typed, and goes through afterwards', async ({
  page,
  context,
  product,
  complaints,
}) => {
  complaints.expect(/ERR_INTERNET_DISCONNECTED/);
  const fields = product.demoSignIns.find(({ where }) => where === routes.signIn.teacher())?.fields;
  const { Email: email = '', Password: password = '' } = fields ?? {};
  await page.goto(routes.signIn.teacher());
  await page.getByLabel('Email').fill(email);
  await page.getByLabel('Password').fill(password);
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await expect(page.getByText('What you typed is still here: try again.')).toBeVisible();
  await expect(page.getByLabel('Email')).toHaveValue(email);
  await expect(page.getByLabel('Password')).toHaveValue(password);
  await context.setOffline(false);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Desk', exact: true })).toBeVisible();
});

test('what a substitute sees is accessible and fits a phone in every theme', async ({
  page,
  product,
  baseURL,
  openBrowser,
}) => {
  test.setTimeout(300_000);
  await signInAsDemoTeacher(page, product.demoSignIns);
  const classId = await openClass(page, demoClassName);
  await page.goto(routes.teacher.classSettings(classId));
  await page.getByRole('button', { name: 'Make a cover link for today' }).click();
  const link = await page.getByRole('textbox', { name: 'Cover link' }).inputValue();
  const { pathname } = new URL(link, baseURL);

  const lent = await openBrowser();
  await lent.goto(pathname);
  await checkShown(lent);
  await lent.getByRole('button', { name: 'Open the class' }).click();
  const pages = lent.getByRole('navigation', { name: 'Class' }).getByRole('link');
  await expect(pages).toHaveCount(6);
  const addresses = await pages.evaluateAll((links) =>
    links.map((one) => one.getAttribute('href') ?? ''),
  );
  for (const theme of themes) {
    await lent.context().addCookies([{ name: 'theme', value: theme, url: baseURL ?? '' }]);
    for (const address of addresses) {
      await test.step(`${address.split('/').at(-1) ?? ''}, ${theme}`, async () => {
        await lent.goto(address);
        await checkShown(lent);
      });
    }
  }
});
