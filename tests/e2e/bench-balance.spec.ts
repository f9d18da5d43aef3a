import type { Locator, Page } from '@playwright/test';
import { routes } from '../../lib/routes';
import { press, tabTo, typeInto, withoutCanvasAndMouse } from '../support/keyboard';
import { expect, test } from '../support/product';

/** A first balance with Wren, by its seed. */
const round = routes.labs.one('balance', { seed: 'aa', kit: 'wren' });

/** Where the tube balances, from the list of parts as it is read on the page: Σ m x / Σ m. */
async function balancePoint(page: Page): Promise<{ bestMm: number; clampMm: number }> {
  const rows = page.getByRole('row').filter({ hasText: / kg/ });
  await expect(rows.first()).toBeVisible();
  let [massKg, moment] = [0, 0];
  for (const row of await rows.all()) {
    const tick = row.getByRole('checkbox');
    if ((await tick.count()) > 0 && !(await tick.isChecked())) continue;
    const [kg, mm] = [...(await row.innerText()).matchAll(/(\d+(?:\.\d+)?)\s(kg|mm)\b(?! eye)/g)]
      .slice(-2)
      .map((found) => Number(found[1]));
    if (kg === undefined || mm === undefined) throw new Error('a row without its figures');
    massKg += kg;
    moment += kg * mm;
  }
  const state = await page.getByText(/clamp locked at/).innerText();
  return {
    bestMm: Math.round(moment / massKg),
    clampMm: Number(/locked at (\d+) mm/.exec(state)?.[1]),
  };
}

/** More tube behind the clamp than it should have: that end sinks. */
const heavyEnd = ({ bestMm, clampMm }: { bestMm: number; clampMm: number }): string =>
  bestMm > clampMm ? 'The back sinks' : 'The front sinks';

async function expectFullMarks(page: Page): Promise<void> {
  await expect(page.getByText(/^It holds everywhere between 0° and 90°/)).toBeVisible();
  await expect(page.getByText('100 of 100')).toBeVisible();
}

/** Places of the drawing in pixels; its origin is the altitude axis, one of its units 3 mm. */
async function placesOf(tube: Locator): Promise<(x: number, y: number) => [number, number]> {
  const [a, d, e, f] = await tube.evaluate((element) => {
    const matrix = element instanceof SVGElement ? element.ownerSVGElement?.getScreenCTM() : null;
    if (matrix === null || matrix === undefined) throw new Error('not drawn');
    return [matrix.a, matrix.d, matrix.e, matrix.f] as const;
  });
  return (x, y) => [a * x + e, d * y + f];
}

test('a tube is balanced by mouse on the drawing', async ({ page }) => {
  await page.goto(round);
  const tube = page.getByRole('slider');
  await expect(tube).toBeVisible();
  const found = await balancePoint(page);
  await page.getByLabel(heavyEnd(found)).check();
  const click = (name: string) => page.getByRole('button', { name, exact: true }).click();

  await click('Stop screw out');
  await click('Open clamp');
  const at = await placesOf(tube);
  const slide = (found.bestMm - found.clampMm) / 3;
  await page.mouse.move(...at(-30, 0));
  await page.mouse.down();
  await page.mouse.move(...at(-30 + slide / 2, 0));
  await page.mouse.move(...at(-30 + slide, 0));
  await page.mouse.up();
  await expect(tube).toHaveAttribute('aria-valuenow', String(found.bestMm));

  await click('Lock clamp');
  await click('Stop screw in');
  await click('Let go');
  await expect(
    page.getByRole('status').filter({ hasText: 'Let go at 0°: it stays' }),
  ).toBeVisible();
  await click('Hand on the tube');
  await page.mouse.move(...at(50, 0));
  await page.mouse.down();
  for (const deg of [20, 45, 70, 88])
    await page.mouse.move(
      ...at(50 * Math.cos((deg * Math.PI) / 180), -50 * Math.sin((deg * Math.PI) / 180)),
    );
  await page.mouse.up();
  await click('Let go');
  await expect(
    page.getByRole('status').filter({ hasText: /Let go at 8\d°: it stays/ }),
  ).toBeVisible();

  await click('How did I do?');
  await click('Show how it came out');
  await expectFullMarks(page);
});

test('a tube is balanced by keyboard, without a canvas', async ({ page, context }) => {
  await withoutCanvasAndMouse(context);
  await page.goto(round);
  await press(page, 'Table');
  const found = await balancePoint(page);
  await tabTo(page, page.getByRole('radio').first());
  await page.keyboard.press('Space');
  for (let presses = 0; presses < 3; presses += 1) {
    if (await page.getByLabel(heavyEnd(found)).isChecked()) break;
    await page.keyboard.press('ArrowDown');
  }
  await press(page, 'Stop screw out');
  await press(page, 'Open clamp');
  await typeInto(page, /^Slide until the clamp is at$/, String(found.bestMm));
  await page.keyboard.press('Enter');
  await press(page, 'Lock clamp');
  await press(page, 'Stop screw in');
  await press(page, 'Let go');
  await press(page, 'Hand on the tube');
  await typeInto(page, /^Raise the tube to$/, '88');
  await page.keyboard.press('Enter');
  await press(page, 'Let go');
  await expect(page.getByRole('cell', { name: 'It stays where it is' }).first()).toBeVisible();
  await press(page, 'How did I do?');
  await press(page, 'Show how it came out');
  await expectFullMarks(page);
});
