import type { Page } from '@playwright/test';
import { routes } from '../../lib/routes';
import { expectAccessible } from '../support/accessibility';
import { expect, test } from '../support/product';
import { signInAsDemoTeacher } from '../support/signing-in';
import { demoClassName, openClass } from '../support/teacher-desk';

test.use({ viewport: { width: 390, height: 844 } });

const cell = (page: Page, name: RegExp) => page.getByRole('button', { name });
const allSent = (page: Page) => page.getByText('Everything noted here has been sent.');

async function note(page: Page, name: RegExp, level: RegExp): Promise<void> {
  await cell(page, name).click();
  await page.getByRole('button', { name: level }).click();
}

test('skills are signed off without a connection, over a reload, and arrive once', async ({
  page,
  context,
  product,
  complaints,
}) => {
  complaints.expect(/ERR_INTERNET_DISCONNECTED/);
  await signInAsDemoTeacher(page, product.demoSignIns);
  const classId = await openClass(page, demoClassName);
  await page.goto(routes.teacher.classSignOff(classId));
  await expect(page.getByRole('heading', { name: 'Sign-off at the telescope' })).toBeVisible();
  await page.getByRole('button', { name: 'Keep it until noon tomorrow' }).click();
  await expect(page.getByText(/^Kept on this device until/)).toBeVisible();
  await expectAccessible(page);

  await context.setOffline(true);
  await note(page, /^Alder, Clock and place/, /^4 alone/);
  await note(page, /^Bramble, Clock and place/, /^2 with/);
  await expect(page.getByText(/2 notes wait on this device/)).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByText(/1 note waits on this device/)).toBeVisible();

  await page.reload();
  await expect(page.getByRole('heading', { level: 1, name: demoClassName })).toBeVisible();
  await expect(cell(page, /^Alder, Clock and place: last at level 4, .*waits/)).toBeVisible();
  await note(page, /^Cricket, Clock and place/, /^3 with/);
  await expect(page.getByText(/2 notes wait on this device/)).toBeVisible();
  await expectAccessible(page);

  await context.setOffline(false);
  await expect(allSent(page)).toBeVisible();
  await page.getByRole('link', { name: 'Try the connection' }).click();
  await expect(page.getByRole('heading', { name: 'Sign-off at the telescope' })).toBeVisible();
  await expect(
    cell(page, /^Alder, Clock and place: last at level 4, 1 of 2 evenings/),
  ).toBeVisible();
  await expect(cell(page, /^Bramble, Clock and place: nothing noted/)).toBeVisible();
  await expect(cell(page, /^Cricket, Clock and place: last at level 3/)).toBeVisible();
});
