import { expect, type BrowserContext, type Locator, type Page } from '@playwright/test';

/** As on a school computer whose browser may not draw in three dimensions; and nobody touches a mouse. */
export async function withoutCanvasAndMouse(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    Object.defineProperty(HTMLCanvasElement.prototype, 'getContext', { value: () => null });
    for (const kind of ['pointerdown', 'mousedown'])
      window.addEventListener(
        kind,
        () => {
          throw new Error('a mouse was used');
        },
        true,
      );
  });
}

/** Tab, as often as it takes to reach the control: fails where the keyboard never gets there. */
export async function tabTo(page: Page, control: Locator): Promise<void> {
  await expect(control).toBeVisible();
  for (let presses = 0; presses < 60; presses += 1) {
    if (await control.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  await expect(control, 'is reached with the Tab key').toBeFocused();
}

export async function press(page: Page, name: string | RegExp): Promise<void> {
  await tabTo(page, page.getByRole('button', { name, exact: typeof name === 'string' }));
  await page.keyboard.press('Enter');
}

/** Replaces what stands in a field. */
export async function typeInto(page: Page, label: string | RegExp, text: string): Promise<void> {
  await tabTo(page, page.getByLabel(label));
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type(text);
}

/** Chooses from a list by the first letters of what is wanted, as the browser's own lists allow. */
export async function chooseFrom(
  page: Page,
  label: string | RegExp,
  option: string,
): Promise<void> {
  const list = page.getByLabel(label);
  await tabTo(page, list);
  const chosen = list.locator('option:checked');
  // Letters add up for a second: what stands already is not typed again.
  if ((await chosen.innerText()).startsWith(option)) return;
  await page.keyboard.type(option);
  await expect(chosen).toHaveText(new RegExp(`^${option}`));
}
