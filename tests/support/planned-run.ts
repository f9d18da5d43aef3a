import { expect, type Page } from '@playwright/test';
import { perfectLog } from '../../lib/alignment/perfect-operator';
import type { RunAction } from '../../lib/alignment/run-log';
import { wrap360 } from '../../lib/units/angle';
import type { RunVariant } from '../../lib/variants/run-variant';
import { catalogue } from './stored-work';

type Step = Extract<RunAction, { do: 'step' }>;

/** What hands will do in the table of a run: the same on any evening, whatever stands where. */
export type PlannedRun = {
  compassDeg: number;
  /** By HIP number, with the moves that bring each to the middle. */
  stars: readonly { hip: number; steps: readonly Step[] }[];
};

/** The moves of the operator who steers by the true sky. */
export function planRun(variant: RunVariant): PlannedRun {
  const log = perfectLog({ ...variant, catalogue });
  const stars: { hip: number; steps: Step[] }[] = [];
  for (const action of log) {
    if (action.do === 'go-to') stars.push({ hip: action.hip, steps: [] });
    if (action.do === 'step') stars.at(-1)?.steps.push(action);
  }
  return {
    compassDeg: wrap360(-variant.setup.declinationDeg),
    stars: stars.slice(0, 2),
  };
}

export async function setStart(page: Page, { compassDeg }: PlannedRun): Promise<void> {
  await page.getByLabel(/^The compass along the tube reads/).fill(compassDeg.toFixed(3));
  await page.getByLabel(/^The level on the tube reads/).fill('0');
  await page.getByRole('button', { name: 'Set it and lock the clutches' }).click();
  await expect(page.getByRole('heading', { name: 'Choose the first star' })).toBeVisible();
}

async function move(page: Page, axis: 'Azimuth' | 'Altitude', arcmin: number): Promise<void> {
  if (arcmin === 0) return;
  const [less, more] = axis === 'Azimuth' ? ['Left', 'Right'] : ['Down', 'Up'];
  const button = arcmin < 0 ? less : more;
  const size = Math.abs(arcmin).toFixed(2);
  await page.getByLabel(new RegExp(`^${axis},`)).fill(size);
  await page.getByRole('button', { name: button, exact: true }).click();
  await expect(
    page
      .getByRole('status')
      .filter({ hasText: `Moved ${String(Number(size))}′ ${button.toLowerCase()}.` }),
  ).toBeVisible();
}

/** Names one of the plan's stars to the mount, centres and confirms it; answers its name. */
export async function centreAndConfirm(
  page: Page,
  { stars }: PlannedRun,
  which: 'first' | 'second',
): Promise<string> {
  const star = stars[which === 'first' ? 0 : 1];
  if (star === undefined) throw new Error(`The plan has no ${which} star.`);
  const list = page.getByLabel('The star you will centre');
  await list.selectOption(String(star.hip));
  const name = await list.locator('option:checked').innerText();
  await page.getByRole('button', { name: 'Drive there' }).click();
  await expect(page.getByRole('heading', { name: `Centre the ${which} star` })).toBeVisible();
  await page.getByLabel('Numbers are').selectOption('minutes');
  for (const { azimuthArcmin, altitudeArcmin } of star.steps) {
    await move(page, 'Azimuth', azimuthArcmin);
    await move(page, 'Altitude', altitudeArcmin);
  }
  await page.getByRole('button', { name: 'This is the star' }).click();
  await expect(page.getByRole('status').filter({ hasText: `Confirmed as ${name}.` })).toBeVisible();
  return name;
}
