import AxeBuilder from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** WCAG 2.2 up to AA; anything axe finds serious or critical fails, with the element named. */
export async function expectAccessible(page: Page): Promise<void> {
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  const serious = violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, help, nodes }) =>
      nodes.map(({ target }) => `${id} (${help}): ${target.join(' ')}`),
    );
  expect(serious, `serious accessibility problems at ${page.url()}`).toEqual([]);
}

/** The page does not scroll sideways at the width it is shown at. */
export async function expectNothingSticksOut(page: Page): Promise<void> {
  const overflow = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(overflow, `pixels that stick out at ${page.url()}`).toBeLessThanOrEqual(0);
}

/** Checks the page that is shown, wide and on a phone, and leaves it wide. */
export async function checkShown(page: Page): Promise<void> {
  await expect(page.getByRole('heading', { level: 1 }).first()).toBeVisible();
  // After a navigation within the product it comes a moment later than the page.
  await expect(page).toHaveTitle(/./);
  await expectAccessible(page);
  await page.setViewportSize({ width: 390, height: 844 });
  await expectNothingSticksOut(page);
  await page.setViewportSize({ width: 1280, height: 720 });
}
