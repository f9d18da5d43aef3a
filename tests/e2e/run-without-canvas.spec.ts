import { routes } from '../../lib/routes';
import { press, tabTo, withoutCanvasAndMouse } from '../support/keyboard';
import { expect, test } from '../support/product';
import {
  centreByTable,
  confirmStar,
  driveTo,
  judge,
  setStartByTable,
  thirdIsThere,
} from '../support/run-by-table';

test.beforeEach(async ({ context }) => {
  await withoutCanvasAndMouse(context);
});

/** Wren's 25 mm eyepiece: 50° apparent at 20 times. */
const fieldRadiusArcmin = 75;

test('a visitor aligns a telescope by keyboard alone where nothing can be drawn', async ({
  page,
}) => {
  test.setTimeout(240_000);
  // This address leaves both stars to the learner; Capella and Deneb are well up, and the brightest about.
  await page.goto(
    routes.labs.one('alignment-run', {
      seed: 'by-keyboard',
      kit: 'wren',
      site: 'open-field',
      place: 0,
      time: '2026-12-05T19:30',
    }),
  );
  await expect(page.getByText(/cannot draw the sky, so the table is open instead/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Telescope', exact: true })).toBeDisabled();
  await expect(page.locator('canvas')).toHaveCount(0);

  await setStartByTable(page);
  for (const name of ['Capella', 'Deneb']) {
    await driveTo(page, name);
    await centreByTable(page, fieldRadiusArcmin);
    await confirmStar(page, name);
  }
  await expect(page.getByText(/These two agree to/)).toBeVisible();
  const there = await thirdIsThere(page);
  await judge(page, there);
  await expect(page.getByRole('heading', { name: 'Your run' })).toBeFocused();
  await press(page, 'Show how it came out');

  await expect(
    page.getByRole('heading', { level: 1, name: 'Alignment run: how it came out' }),
  ).toBeFocused();
  // All but the pair is within the table's reach to the full mark; any two stars would not do for that.
  const marks = page.getByRole('table', { name: 'The mark, part by part' });
  for (const part of [
    /^Start position/,
    /^The right first star: Capella/,
    /^How well it was centred/,
  ])
    await expect(marks.getByRole('row', { name: part })).toContainText(/([\d.]+) of \1$/);
  const slider = page.getByRole('slider', { name: 'Follow the path to Capella' });
  await tabTo(page, slider);
  const wholePath = await slider.getAttribute('aria-valuetext');
  await page.keyboard.press('Home');
  await expect(slider).not.toHaveAttribute('aria-valuetext', wholePath ?? '');
  await tabTo(page, page.getByRole('link', { name: 'Another sky' }));
});
