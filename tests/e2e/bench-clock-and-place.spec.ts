import type { Page } from '@playwright/test';
import { routes } from '../../lib/routes';
import { checkShown } from '../support/accessibility';
import { expectFullMarks } from '../support/bench-practice';
import { chooseFrom, press, tabTo, typeInto, withoutCanvasAndMouse } from '../support/keyboard';
import { expect, test } from '../support/product';

/** A visitor's round whose card is the same on every day. */
const round = (seed: string) =>
  routes.labs.one('clock-and-place', {
    seed,
    kit: 'wren',
    site: 'open-field',
    place: 0,
    time: '2026-11-25T17:25',
  });

/** A line of the card, as it stands there. */
async function line(page: Page, label: string): Promise<string> {
  const card = page.getByRole('region', { name: 'The card' });
  await expect(card).toBeVisible();
  return card
    .locator('div', { has: page.getByText(label, { exact: true }) })
    .locator('dd')
    .innerText();
}

/** What the pattern catches, in numbers and words. */
function caught(text: string, pattern: RegExp): string[] {
  const found = pattern.exec(text);
  if (found === null) throw new Error(`the card says "${text}"`);
  return found.slice(1);
}

/** "latitude +54° 12′ (N is +), longitude −2° 53′ (E is +)" */
async function placeOf(page: Page) {
  const [latitudeSign, latitude, latitudeMinutes, longitudeSign, longitude, longitudeMinutes] =
    caught(
      await line(page, 'Where'),
      /latitude ([+−])(\d+)° (\d+)′ .*longitude ([+−])(\d+)° (\d+)′/,
    ).map((part) => part.replace(/^0(?=\d)/, ''));
  return {
    latitude: [latitude ?? '', latitudeMinutes ?? '', latitudeSign === '−' ? 'south' : 'north'],
    longitude: [longitude ?? '', longitudeMinutes ?? '', longitudeSign === '−' ? 'west' : 'east'],
  } as const;
}

test('Clock and place by mouse: the tube is turned on the compass, full marks', async ({
  page,
}) => {
  await page.goto(round('clock-4'));
  const place = await placeOf(page);
  for (const [row, [degrees, minutes, side]] of Object.entries({
    Latitude: place.latitude,
    Longitude: place.longitude,
  })) {
    const fields = page.getByRole('group', { name: row });
    await fields.getByLabel('Degrees').fill(degrees);
    await fields.getByLabel('Minutes').fill(minutes);
    await fields.getByLabel('Side').selectOption({ label: side });
  }

  // True north lies as far left of the needle as it points east, and right of it as it points west.
  const [deg, way] = caught(await line(page, 'Compass'), /points (\d+)° (east|west)/);
  const bearing = (way === 'west' ? 1 : -1) * Number(deg);
  const handle = page.getByRole('slider', { name: /Start direction/ });
  const bench = await page
    .getByRole('group', { name: 'Telescope and compass from above' })
    .boundingBox();
  const box = await handle.boundingBox();
  if (box === null || bench === null) throw new Error('the compass is not drawn');
  const middle = { x: bench.x + bench.width / 2, y: bench.y + bench.height / 2 };
  const reach = middle.y - (box.y + box.height / 2);
  const at = (degrees: number): [number, number] => [
    middle.x + reach * Math.sin((degrees * Math.PI) / 180),
    middle.y - reach * Math.cos((degrees * Math.PI) / 180),
  ];
  await page.mouse.move(...at(0));
  await page.mouse.down();
  for (const part of [0.25, 0.5, 0.75, 1]) await page.mouse.move(...at(part * bearing));
  await page.mouse.up();
  await expect(handle).toHaveAttribute('aria-valuenow', String((bearing + 360) % 360));
  await page.getByRole('button', { name: 'Two skies' }).click();
  await expect(page.getByText(/the two lie 0\.0° apart/)).toBeVisible();
  await checkShown(page);

  await page.getByRole('button', { name: 'How did I do?' }).click();
  await page.getByRole('button', { name: 'Show how it came out' }).click();
  await expectFullMarks(page);
  await checkShown(page);
});

test('Clock and place by keyboard, in the table, without canvas: an hour is seen and put right', async ({
  page,
  context,
}) => {
  await withoutCanvasAndMouse(context);
  await page.goto(round('clock-3'));
  await press(page, 'Table');
  const [day, month, year] = caught(
    await line(page, 'Date'),
    /^(\d+)\/(\d+)\/(\d+), the day first$/,
  );
  const [hour, minute, half] = caught(await line(page, 'Time'), /^(\d+):(\d+) (a|p)\.m\.$/);
  const [offset] = caught(await line(page, 'Clocks here'), /^(UTC[+−]\d+:\d+)/);
  expect(await line(page, 'Summer time')).toBe('not in force that day');
  const place = await placeOf(page);

  await typeInto(page, 'Day', day ?? '');
  await chooseFrom(page, 'Month', monthNames[Number(month) - 1] ?? '');
  await typeInto(page, 'Year', year ?? '');
  await typeInto(page, 'Hour, 0 to 23', String((Number(hour) % 12) + (half === 'p' ? 12 : 0)));
  await typeInto(page, /^Minute$/, String(Number(minute)));
  // A list takes the letters it begins with; the plus of "UTC+0:00" is one of them.
  await tabTo(page, page.getByLabel('Without summer time'));
  await page.keyboard.type(offset ?? '');
  await chooseFrom(page, 'Is it in force?', 'on');
  for (const [row, [degrees, minutes, side]] of Object.entries({
    Latitude: place.latitude,
    Longitude: place.longitude,
  })) {
    const fields = page.getByRole('group', { name: row });
    for (const [label, text] of [
      ['Degrees', degrees],
      ['Minutes', minutes],
    ] as const) {
      await tabTo(page, fields.getByLabel(label));
      await page.keyboard.type(text);
    }
    await tabTo(page, fields.getByLabel('Side'));
    await page.keyboard.type(side);
  }
  await expect(page.getByText(/On the whole the two lie 1\d\.\d°/)).toBeVisible();
  await chooseFrom(page, 'Is it in force?', 'off');
  await expect(page.getByText(/On the whole the two lie 0\.0° apart/)).toBeVisible();
  await checkShown(page);

  await press(page, 'How did I do?');
  await press(page, 'Show how it came out');
  await expectFullMarks(page);
});

const monthNames = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August'],
  ...['September', 'October', 'November', 'December'],
];
