import type { Locator, Page } from '@playwright/test';
import { routes } from '../../lib/routes';
import { chooseFrom, press, tabTo, withoutCanvasAndMouse } from '../support/keyboard';
import { expect, test } from '../support/product';

/** Rounds by their seeds: a holder to fill, and a choice of supplies. */
const filling = routes.labs.one('power', { seed: 'a9', kit: 'wren' });
const choosing = routes.labs.one('power', { seed: 'a3', kit: 'wren' });

async function expectFullMarks(page: Page): Promise<void> {
  await expect(page.getByText(/^It runs, and was connected as it should be/)).toBeVisible();
  await expect(page.getByText('100 of 100')).toBeVisible();
}

const named = (page: Page, name: RegExp): Locator => page.getByRole('button', { name }).first();

const labelOf = async (button: Locator): Promise<string> =>
  (await button.getAttribute('aria-label')) ?? '';

/** Where a cell or a bay is, to take hold of it. */
async function middleOf(thing: Locator): Promise<[number, number]> {
  const box = await thing.boundingBox();
  if (box === null) throw new Error('not drawn');
  return [box.x + box.width / 2, box.y + box.height / 2];
}

/** Each cell is taken up and read: those of the kind that most are of, without the ones that read less. */
async function cellsThatBelong(page: Page): Promise<string[]> {
  await expect(named(page, /^cell /)).toBeVisible();
  const read: { id: string; kind: string; volts: number }[] = [];
  for (const cell of await page.getByRole('button', { name: /^cell / }).all()) {
    const [, id = '', kind = ''] = /^cell (\w), (.+), plus end/.exec(await labelOf(cell)) ?? [];
    await cell.click();
    const display = page.locator('svg text').filter({ hasText: /^\d\.\d\d V$/ });
    read.push({ id, kind, volts: Number.parseFloat((await display.textContent()) ?? '') });
    await named(page, new RegExp(`^cell ${id},`)).click();
  }
  const count = (kind: string) => read.filter((one) => one.kind === kind).length;
  const [common] = read.map(({ kind }) => kind).sort((a, b) => count(b) - count(a));
  return read
    .filter(({ kind }) => kind === common)
    .sort((a, b) => b.volts - a.volts)
    .slice(0, 8)
    .map(({ id }) => id);
}

test('a holder is filled by mouse on the drawing, and the telescope runs', async ({ page }) => {
  await page.goto(filling);
  for (const [bay, cell] of (await cellsThatBelong(page)).entries()) {
    const place = named(page, new RegExp(`^Bay ${String(bay + 1)},`));
    const from = await middleOf(named(page, new RegExp(`^cell ${cell},`)));
    const to = await middleOf(place);
    await page.mouse.move(...from);
    await page.mouse.down();
    await page.mouse.move((from[0] + to[0]) / 2, (from[1] + to[1]) / 2);
    await page.mouse.move(...to);
    await page.mouse.up();
    await expect(place).toHaveAccessibleName(new RegExp(`cell ${cell},`));
    const label = await labelOf(place);
    // The flat end to the spring.
    if (label.includes('spring at the top') === label.includes('plus end up')) await place.click();
  }
  await named(page, /^Hand control: not connected/).click();
  await named(page, /^The holder’s plug/).click();
  await named(page, /^Switch: off/).click();
  await named(page, /^Hand control: slew/).click();
  await expect(page.getByRole('status').filter({ hasText: 'It goes on running' })).toBeVisible();
  await page.getByRole('button', { name: 'How did I do?' }).click();
  await page.getByRole('button', { name: 'Show how it came out' }).click();
  await expectFullMarks(page);
});

/** What a careful reader says of a label, with the telescope's own beside it. */
function verdictOn(cells: readonly string[], needs: { amps: number; pin: string }): string {
  const [, form = '', volts = '', amps = '', pin = ''] = cells;
  if (form === 'mains adapter') return 'mains';
  if (pin !== needs.pin) return 'wrong polarity';
  if (Number.parseFloat(volts) > 13) return 'too many';
  if (Number.parseFloat(volts) < 11) return 'too few';
  return Number.parseFloat(amps) < needs.amps ? 'too little' : 'it serves';
}

test('a supply is chosen by keyboard, without a canvas', async ({ page, context }) => {
  await withoutCanvasAndMouse(context);
  await page.goto(choosing);
  await press(page, 'Table');
  const beside = await page.getByText(/^Beside its socket stands/).innerText();
  const [, amps = '', pin = ''] = /at most ([\d.]+) A, (middle pin .)/.exec(beside) ?? [];
  const rows = page.getByRole('row').filter({ hasText: /middle pin/ });
  await expect(rows).toHaveCount(6);
  const verdicts = new Map<string, string>();
  for (const row of await rows.all()) {
    const cells = await row.locator('th, td').allInnerTexts();
    verdicts.set(cells[0] ?? '', verdictOn(cells, { amps: Number(amps), pin }));
  }
  const serves = [...verdicts].find(([, verdict]) => verdict === 'it serves')?.[0] ?? '';

  await press(page, 'Connect the hand control');
  await press(page, `Plug in supply ${serves}`);
  await press(page, 'Switch on');
  await press(page, 'Slew at full speed');
  for (const [id, verdict] of verdicts) {
    await tabTo(page, page.getByLabel(`Supply ${id}`, { exact: true }));
    await chooseFrom(page, new RegExp(`^Supply ${id}$`), verdict);
  }
  await press(page, 'How did I do?');
  await press(page, 'Show how it came out');
  await expectFullMarks(page);
});
