import { expect, type Page } from '@playwright/test';
import { chooseFrom, press, typeInto } from './keyboard';
import {
  axisPerSkyIn,
  fieldTenthsIn,
  finderDegreesIn,
  fistDegreesIn,
  nearEnough,
  type Seen,
} from './twin-reading';

/** Ten minutes of arc are more than any mount's play: beyond the star, and back to it. */
const beyondArcmin = 10;

/** The brightest light of a table of the run, with what its row says; null where it lists none. */
async function brightestIn(
  page: Page,
  section: 'In the eyepiece' | 'In the finder',
): Promise<{ letter: string; place: string } | null> {
  const row = page.getByRole('region', { name: section, exact: true }).locator('tbody tr').first();
  if ((await row.count()) === 0) return null;
  return {
    letter: await row.locator('th').innerText(),
    place: await row.locator('td').first().innerText(),
  };
}

async function move(page: Page, axis: 'Azimuth' | 'Altitude', by: number): Promise<void> {
  const size = Math.abs(by).toFixed(2);
  if (Number(size) === 0) return;
  const [less, more] = axis === 'Azimuth' ? ['Left', 'Right'] : ['Down', 'Up'];
  await typeInto(page, new RegExp(`^${axis}`), size);
  const button = by < 0 ? less : more;
  await press(page, button);
  await expect(
    page.getByRole('status').filter({ hasText: new RegExp(`^Moved .*${button.toLowerCase()}\\.`) }),
  ).toBeVisible();
}

const axisPerSky = async (page: Page): Promise<number> =>
  axisPerSkyIn(await page.getByText(/^The red dot is/).innerText());

/** With the compass held against its needle, and the tube level. */
export async function setStartByTable(page: Page): Promise<void> {
  const said = await page
    .getByText(/^Here a compass needle points/)
    .first()
    .innerText();
  const size = Number(/([\d.]+)°/.exec(said)?.[1] ?? 0);
  const bearingDeg = said.includes('east') ? 360 - size : size;
  await typeInto(page, /^The compass along the tube reads/, bearingDeg.toFixed(1));
  await typeInto(page, /^The level on the tube reads/, '0');
  await press(page, 'Set it and lock the clutches');
}

/** From the mount's list where there is a choice, else whatever it asks for. */
export async function driveTo(page: Page, name: string): Promise<void> {
  await chooseFrom(page, 'The star you will centre', name);
  await press(page, 'Drive there');
  await expect(page.getByRole('heading', { name: /^Centre the / })).toBeVisible();
}

/**
 * To the dot by eye and fist, into the eyepiece by the finder, to the middle by the clock. The star is
 * taken to be the brightest light about: choose one that is. The tube shows the sky as it is.
 */
export async function centreByTable(page: Page, radiusArcmin: number): Promise<void> {
  await chooseFrom(page, 'Numbers are', 'degrees');
  for (
    let look = 0;
    look < 12 && (await brightestIn(page, 'In the eyepiece')) === null;
    look += 1
  ) {
    const inFinder = await brightestIn(page, 'In the finder');
    const { right, up } = inFinder === null ? await nearDot(page) : finderDegreesIn(inFinder.place);
    await move(page, 'Altitude', up);
    await move(page, 'Azimuth', right * (await axisPerSky(page)));
  }
  await chooseFrom(page, 'Numbers are', 'arcminutes');
  for (let look = 0; look < 8; look += 1) {
    const place = (await brightestIn(page, 'In the eyepiece'))?.place ?? '';
    if (look > 0 && nearEnough(place)) return;
    const { right, up } = fieldTenthsIn(place, 'true');
    await move(page, 'Altitude', (up * radiusArcmin) / 10 - beyondArcmin);
    await move(page, 'Altitude', beyondArcmin);
    await move(
      page,
      'Azimuth',
      ((right * radiusArcmin) / 10) * (await axisPerSky(page)) - beyondArcmin,
    );
    await move(page, 'Azimuth', beyondArcmin);
  }
  throw new Error('the star does not come to the middle');
}

/** Of the very bright lights that the eye sees, the one nearest to the dot. */
async function nearDot(page: Page): Promise<Seen> {
  const row = page
    .getByRole('region', { name: 'What the eye sees', exact: true })
    .locator('tbody tr')
    .filter({ hasText: 'very bright' })
    .first();
  return fistDegreesIn(await row.locator('td').first().innerText());
}

export async function confirmStar(page: Page, name: string): Promise<void> {
  await press(page, 'This is the star');
  await expect(page.getByRole('status').filter({ hasText: `Confirmed as ${name}.` })).toBeVisible();
}

/** Whether the go-to to a third star has brought a light into the eyepiece. */
export async function thirdIsThere(page: Page): Promise<boolean> {
  await press(page, 'Check on a third');
  await expect(page.getByText(/^The mount says that this is/)).toBeVisible();
  return (await brightestIn(page, 'In the eyepiece')) !== null;
}

export async function judge(page: Page, trust: boolean): Promise<void> {
  await press(page, trust ? 'I trust it' : 'I do not trust it');
}
