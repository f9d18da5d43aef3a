import type { Page } from '@playwright/test';
import type { SeedReport } from './data-folder.mjs';

/** Signs in through the page as a person would; the report's field names are the form's labels. */
export async function signIn(
  page: Page,
  address: string,
  { where, fields }: SeedReport['signIns'][number],
): Promise<void> {
  await page.goto(`${address}${where}`);
  for (const [label, value] of Object.entries(fields)) {
    await page.getByLabel(label, { exact: true }).fill(value);
  }
  await page.locator('main form button[type="submit"]').click();
  await page.waitForURL((url) => url.pathname !== where);
}
