import { expect, type Locator, type Page } from '@playwright/test';
import { z } from 'zod';
import type { ItemAnswer } from '../../lib/items/item-answer';
import type { Item } from '../../lib/items/item';
import { storedItemSchema } from '../../lib/data/stored-item';
import { rowsOf } from './stored-work';

/** The question that a student has not answered yet, as the product's database keeps it. */
export function openQuestion(dataFolder: string, lesson: string): Item {
  const [row] = rowsOf(
    dataFolder,
    'SELECT item FROM AskedQuestion WHERE lesson = ? AND answeredAt IS NULL ORDER BY askedAt DESC',
    lesson,
  );
  return storedItemSchema.parse(JSON.parse(z.object({ item: z.string() }).parse(row).item));
}

/** Gives an answer by the page's own controls, whatever kind the question is of. */
export async function giveAnswer(page: Page, answer: ItemAnswer): Promise<void> {
  const option = (id: string): Locator => page.locator(`input[value="${id}"]`);
  switch (answer.kind) {
    case 'choice':
    case 'point':
      return option(answer.option ?? '').check();
    case 'several':
      for (const id of answer.options) await option(id).check();
      return;
    case 'numeric':
      return page.getByLabel('Your answer').fill(answer.text);
    case 'match':
      for (const [left, right] of Object.entries(answer.pairs)) {
        await page.locator(`select[name$="-${left}"]`).selectOption(right);
      }
      return;
    case 'order':
      return putInOrder(page, answer.steps);
  }
}

/** By the buttons: each step in turn is moved up to its place. Forms elsewhere on the page hide fields too. */
async function putInOrder(page: Page, steps: readonly string[]): Promise<void> {
  const order = (): Promise<(string | null)[]> =>
    page
      .locator('ol input[type="hidden"][name^="answer"]')
      .evaluateAll((inputs) => inputs.map((input) => input.getAttribute('value')));
  for (const [place, id] of steps.entries()) {
    let at = (await order()).indexOf(id);
    while (at > place) {
      await page.locator(`button[value="${id} up"]`).click();
      at -= 1;
      // The list follows a moment later: the next move starts from what it shows then.
      await expect.poll(order).toHaveProperty([String(at)], id);
    }
  }
}
