import type { Page } from '@playwright/test';
import { course } from '../../lib/course/lessons';
import { routes } from '../../lib/routes';
import { benchTemplates } from '../../lib/variants/bench/bench-labs';
import { expectAccessible, expectNothingSticksOut } from '../support/accessibility';
import { expect, test } from '../support/product';

const pages = [
  routes.home(),
  routes.about(),
  routes.lessons.all(),
  ...course.map(({ slug }) => routes.lessons.one(slug)),
  ...course.map(({ slug }) => routes.lessons.practise(slug, { round: 'first' })),
  routes.glossary(),
  routes.labs.all(),
  routes.labs.pickThePair(),
  routes.labs.pickThePair({ seed: 'first-sky' }),
  routes.labs.one('alignment-run'),
  routes.labs.one('alignment-run', { seed: 'first-sky' }),
  routes.labs.one('what-went-wrong'),
  routes.labs.one('what-went-wrong', { seed: 'first-sky' }),
  ...Object.keys(benchTemplates).map((lab) => routes.labs.one(lab, { seed: 'first-sky' })),
  routes.signIn.student(),
  routes.signIn.teacher(),
  routes.firstTeacher(),
];
const themes = ['light', 'dark', 'after-dark'];

/** Scrolls past every figure of a lesson, so that what is looked at is what moves. */
async function wakeFigures(page: Page): Promise<void> {
  for (const figure of await page.locator('main figure').all()) {
    await figure.scrollIntoViewIfNeeded();
  }
  await page.waitForLoadState('networkidle');
}

for (const address of pages) {
  test(`${address} has a heading, fits a phone and is accessible in every theme`, async ({
    page,
    context,
    baseURL,
  }) => {
    for (const theme of themes) {
      await context.addCookies([{ name: 'theme', value: theme, url: baseURL ?? '' }]);
      for (const size of [
        { width: 1280, height: 720 },
        { width: 390, height: 844 },
      ]) {
        await page.setViewportSize(size);
        await page.goto(address, { waitUntil: 'networkidle' });
        await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
        await wakeFigures(page);
        await expectNothingSticksOut(page);
      }
      await expectAccessible(page);
    }
  });
}

test('a page may run no script but its own and may not be framed', async ({ request }) => {
  const response = await request.get(routes.home());
  const policy = response.headers()['content-security-policy'] ?? '';
  expect(policy).toMatch(/script-src 'self' 'nonce-[0-9a-f]{32}' 'strict-dynamic'(;|$)/);
  for (const rule of ["object-src 'none'", "base-uri 'none'", "frame-ancestors 'none'"]) {
    expect(policy).toContain(rule);
  }
  const again = await request.get(routes.home());
  expect(again.headers()['content-security-policy'], 'a new nonce each time').not.toBe(policy);
});

test('a page that does not exist says so and leads back', async ({ page, complaints }) => {
  complaints.expect(/404/);
  const response = await page.goto('/no-such-page');
  expect(response?.status()).toBe(404);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await expectAccessible(page);
});
