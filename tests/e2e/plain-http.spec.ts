import { chromiumArguments, findChromium } from '../../lib/commands/browser.mjs';
import { routes } from '../../lib/routes';
import { expect, test } from '../support/product';
import { demoCard, signInWithCard } from '../support/signing-in';

// As on a school's own network: plain http under a name that is not the computer's own, where a
// browser withholds what it gives only to secure pages.
const host = 'dusk.school.example';
const executablePath = findChromium();
test.use({
  launchOptions: {
    ...(executablePath === null ? {} : { executablePath }),
    args: [...chromiumArguments, `--host-resolver-rules=MAP ${host} 127.0.0.1`],
  },
  baseURL: async ({ product }, use) => {
    await use(product.address.replace('127.0.0.1', host));
  },
});

test('over plain http a student signs in, and an answer is sent and marked', async ({
  page,
  product,
  complaints,
}) => {
  // The header is for the schools that have https.
  complaints.expect(/Cross-Origin-Opener-Policy header has been ignored/);
  await signInWithCard(page, demoCard(product.demoSignIns));
  expect(await page.evaluate(() => window.isSecureContext)).toBe(false);

  await page.goto(routes.labs.pickThePair({ seed: 'plain-http' }));
  await page.getByRole('button', { name: 'Tonight has no good pair' }).click();
  await page.getByRole('button', { name: 'Show how good it is' }).click();
  await expect(page.getByRole('meter', { name: 'Mark' })).toHaveAttribute(
    'aria-valuetext',
    /^\d+(\.\d)? of 100$/,
  );
});
