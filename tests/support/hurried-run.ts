import { expect, type Page } from '@playwright/test';

/** To whatever star is given, proposed or first in the mount's list. */
export async function driveSomewhere(page: Page, which: 'first' | 'second'): Promise<void> {
  await expect(page.getByRole('heading', { name: `Choose the ${which} star` })).toBeVisible();
  const list = page.getByLabel('The star you will centre');
  if (await list.isVisible()) await list.selectOption({ index: 1 });
  await page.getByRole('button', { name: 'Drive there' }).click();
  await expect(page.getByRole('button', { name: 'This is the star' })).toBeEnabled();
}

/** With the tube left as it lay and nothing centred: what it is worth is not looked at here. */
export async function hurryToSecondStar(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Lock the clutches' }).click();
  await driveSomewhere(page, 'first');
  await page.getByRole('button', { name: 'This is the star' }).click();
  await driveSomewhere(page, 'second');
}

export async function hurryToTheEnd(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'This is the star' }).click();
  await page.getByRole('button', { name: 'I do not trust it' }).click();
  await page.getByRole('button', { name: 'Show how it came out' }).click();
  await expect(
    page.getByRole('heading', { level: 1, name: 'Alignment run: how it came out' }),
  ).toBeFocused();
}
