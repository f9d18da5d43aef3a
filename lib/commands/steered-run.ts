/**
 * Drives the alignment run's page as a hand would, for measuring: start position, slews, the three
 * views, the strips.
 */
import type { Locator, Page } from '@playwright/test';
import { routes } from '../routes';
import { fixedRound } from './measured-product';

/** Two stars that are up on the fixed evening, over 100° of azimuth apart: a slew of half a minute. */
export const slewTargets = {
  east: { hip: 24608, name: 'Capella' },
  west: { hip: 91262, name: 'Vega' },
};
export type SlewTarget = (typeof slewTargets)[keyof typeof slewTargets];

export type RunView = 'eye' | 'finder' | 'eyepiece';

/** The large button that leads on says which view is shown. */
const leadsOn: Readonly<Record<RunView, string>> = {
  eye: 'Look through the finder',
  finder: 'Look into the eyepiece',
  eyepiece: 'Look up at the sky',
};

const anyView = new RegExp(`^(${Object.values(leadsOn).join('|')})$`);

const button = (page: Page, name: string): Locator =>
  page.getByRole('button', { name, exact: true });

/** Opens the fixed evening's run, with the clutches locked and the first star to be named. */
export async function openRun(page: Page, address: string): Promise<void> {
  await page.goto(`${address}${routes.labs.one('alignment-run', fixedRound)}`, {
    waitUntil: 'networkidle',
  });
  await button(page, 'Lock the clutches').click();
  await page.getByLabel('The star you will centre').waitFor();
}

/** Sends the mount on its way, whatever it does now. */
export async function slewTo(page: Page, { hip }: SlewTarget): Promise<void> {
  if (await isDriving(page)) await button(page, 'Stop').click();
  const another = button(page, 'Another star');
  if (await another.isVisible()) await another.click();
  await page.getByLabel('The star you will centre').selectOption(String(hip));
  await button(page, 'Drive there').click();
  await button(page, 'Stop').waitFor();
}

/** While a slew goes on there is something to stop. */
export const isDriving = (page: Page): Promise<boolean> => button(page, 'Stop').isVisible();

export const arrival = (page: Page): Promise<void> =>
  button(page, 'Stop').waitFor({ state: 'detached', timeout: 120_000 });

/** Round through the views until the wanted one is shown. */
export async function lookWith(page: Page, view: RunView): Promise<void> {
  while (!(await button(page, leadsOn[view]).isVisible())) {
    const next = page.getByRole('button', { name: anyView });
    const name = await next.innerText();
    await next.click();
    await button(page, name).waitFor({ state: 'detached' });
  }
}

/** Holds a strip: −1 to 1 of its half length to the right and upward. */
export async function holdStrips(
  page: Page,
  press: { right: number; up: number },
  forMs: number,
): Promise<void> {
  const box = await page.locator('[data-control="rockers"]').boundingBox();
  if (box === null) throw new Error('The run shows no strips.');
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + (press.right * box.width) / 2, y - (press.up * box.height) / 2, {
    steps: 5,
  });
  await page.waitForTimeout(forMs);
  await page.mouse.up();
}
