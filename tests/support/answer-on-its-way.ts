import { expect, type Page, type Request } from '@playwright/test';

/** Whether a request hands an answer in. */
const isAnswer = (request: Request): boolean =>
  request.method() === 'POST' && (request.postData() ?? '').includes('"idempotencyKey"');

/** Sends the answer once, altered on its way as a meddling student's browser might. */
export async function submitAltered(page: Page, alter: (body: string) => string): Promise<void> {
  let altered = false;
  await page.route(page.url(), async (route) => {
    const body = route.request().postData() ?? '';
    if (altered || !isAnswer(route.request())) return route.fallback();
    altered = true;
    const postData = alter(body);
    expect(postData, 'the answer was found and altered').not.toBe(body);
    return route.continue({ postData });
  });
  await page.getByRole('button', { name: 'Submit' }).click();
  await expect.poll(() => altered).toBe(true);
}

/** What Chromium says on the console of a connection that broke. */
export const connectionLost = /net::ERR_|Failed to load resource/;

/**
 * Hands the answer in over a connection that breaks once the server has taken it, so that the browser
 * never hears of it, and then once more. `complaints` are to expect {@link connectionLost}.
 */
export async function submitLosingTheReceipt(page: Page): Promise<void> {
  let sent = 0;
  await page.route(page.url(), async (route) => {
    if (!isAnswer(route.request())) return route.fallback();
    sent += 1;
    if (sent > 1) return route.continue();
    await route.fetch();
    return route.abort('connectionreset');
  });
  await page.getByRole('button', { name: 'Submit' }).click();
  await expect(page.getByText('Your answer is kept on this device.')).toBeVisible();
  await page.getByRole('button', { name: 'Send again' }).click();
  await expect.poll(() => sent).toBe(2);
}
