import { expect, type Locator, type Page } from '@playwright/test';
import { z } from 'zod';
import type { BenchLab } from '../../lib/variants/bench/bench-labs';
import { tabTo } from './keyboard';
import type { Product } from './product';
import { attemptIdOf } from './result-reading';
import { demoCard, signInWithCard } from './signing-in';
import { storedAttempt } from './stored-work';

const keySchema = z.object({ answer: z.unknown() });

/** A practice of that lab as the demonstration's student; its task and its model answer as stored. */
export async function startBenchPractice(
  page: Page,
  product: Product,
  lab: BenchLab,
): Promise<{ variant: unknown; answer: unknown }> {
  await signInWithCard(page, demoCard(product.demoSignIns));
  await page.getByLabel('Lab', { exact: true }).selectOption(lab);
  await page.getByRole('button', { name: 'Practise', exact: true }).click();
  await expect(page.getByText('Practice: nothing here counts.')).toBeAttached();
  const { variant, answerKey } = storedAttempt(product.dataFolder, attemptIdOf(page));
  return { variant, answer: keySchema.parse(answerKey).answer };
}

/** Any choice of one list, reached with Tab and the arrow keys. */
export async function chooseByKeys(page: Page, wanted: Locator): Promise<void> {
  const name = (await wanted.getAttribute('name')) ?? '';
  const group = page.locator(`input[type=radio][name="${name}"]`);
  const chosen = group.and(page.locator(':checked'));
  await tabTo(page, (await chosen.count()) > 0 ? chosen : group.first());
  await page.keyboard.press('Space');
  for (let presses = 0; presses < 12 && !(await wanted.isChecked()); presses += 1)
    await page.keyboard.press('ArrowDown');
  await expect(wanted).toBeChecked();
}

/** The outcome's page, with full marks. */
export async function expectFullMarks(page: Page): Promise<void> {
  await expect(page.getByRole('heading', { level: 1, name: /how it came out$/ })).toBeFocused();
  await expect(page.getByRole('meter', { name: 'Mark' })).toHaveAttribute(
    'aria-valuetext',
    '100 of 100',
  );
}
