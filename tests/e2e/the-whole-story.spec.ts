import type { Locator, Page } from '@playwright/test';
import { routes } from '../../lib/routes';
import { connectionLost, submitLosingTheReceipt } from '../support/answer-on-its-way';
import { expect, test } from '../support/product';
import { addStudents, makeCards } from '../support/new-class';
import {
  attemptIdOf,
  expectStudentSees,
  figuresOf,
  openFromGradebook,
} from '../support/result-reading';
import { signInAsDemoTeacher, signInWithCard } from '../support/signing-in';
import { SkyHand } from '../support/sky-hand';
import {
  createClass,
  fillNewAssignment,
  publish,
  saveDraftAssignment,
} from '../support/teacher-desk';
import { count, markByEngine, pairToPick, type StoredPair } from '../support/stored-work';

const title = 'Two stars over Funchal';
const student = 'Petrel';

const isAction = (method: string, body: string | null, holding: string): boolean =>
  method === 'POST' && (body ?? '').includes(holding);

/** The key as a table, best pair first, and the same pair marked in the picture of the sky. */
async function readAnswerKey(page: Page): Promise<void> {
  const best = page
    .getByRole('table', { name: /usable pairs/ })
    .getByRole('row')
    .nth(1);
  await expect(best).toHaveText(/^1.*(of 100).*100$/);
  const pair = await best.getByRole('rowheader').innerText();
  await expect(page.getByRole('img', { name: `The best pair, ${pair}, is marked` })).toBeVisible();
}

const nothingNear = (page: Page, name: string): Promise<void> =>
  test.step(`nothing near ${name}`, async () => {
    await expect(
      page.getByRole('heading', { name: `Could something near ${name} be mistaken for it?` }),
    ).toBeVisible();
    await page.getByRole('button', { name: 'Nothing near it' }).click();
  });

/** What the student will choose in the check: not the best there is. */
function toCheck(dataFolder: string, attemptId: string): StoredPair {
  const pair = pairToPick(dataFolder, attemptId, 'middling');
  if (pair === null) throw new Error('This sky has no pair that can be pressed on.');
  return pair;
}

/** The lab opens facing a given star, else the fullest side of the sky, which its label names. */
async function handOn(page: Page, { variant, stars }: StoredPair): Promise<SkyHand> {
  return variant.givenHip === null
    ? SkyHand.readingWhereItFaces(page)
    : new SkyHand(page, stars[0]);
}

/** Finds on the drawn sky what is not given, keeps it and answers what the lab asks about each star. */
async function pickBoth(page: Page, pair: StoredPair): Promise<void> {
  const hand = await handOn(page, pair);
  const [first, second] = pair.stars;
  const given = pair.variant.givenHip !== null;
  if (!given) {
    await hand.pick(first);
    await page.getByRole('button', { name: 'Keep as first star' }).click();
  }
  await hand.pick(second);
  await page.getByRole('button', { name: 'Keep as second star' }).click();
  if (!given) await nothingNear(page, first.name);
  await nothingNear(page, second.name);
}

/** Goes from sky to sky until the task is one of finding stars: practice offers every kind in turn. */
async function practiseUntilStarsAreToBeFound(
  page: Page,
  task: Locator,
  dataFolder: string,
): Promise<StoredPair> {
  for (let round = 0; round < 6; round += 1) {
    await page.goto(routes.student.myWork());
    await task.getByRole('button', { name: 'Practise under this sky' }).click();
    await expect(page.getByText('Practice: nothing here counts.')).toBeVisible();
    const pair = pairToPick(dataFolder, attemptIdOf(page), 'best');
    if (pair !== null) return pair;
  }
  throw new Error('six skies, and in none were two stars to be found');
}

test('a teacher sets a task for tonight, a student does it, and the gradebook shows the mark', async ({
  page,
  product,
  openBrowser,
  complaints,
}) => {
  const { dataFolder } = product;
  await signInAsDemoTeacher(page, product.demoSignIns);
  const classId = await createClass(page, 'Evening club');
  await addStudents(page, classId);
  const card = await makeCards(page, classId, student);
  await fillNewAssignment(page, classId, title);
  await saveDraftAssignment(page, title);
  await readAnswerKey(page);
  await publish(page);

  const first = await openBrowser();
  await signInWithCard(first, card);
  const task = first.getByRole('article', { name: title });
  await expect(task).toContainText(/Due in \d days/);

  await test.step('practice: two stars on the drawn sky, explained at once', async () => {
    const pair = await practiseUntilStarsAreToBeFound(first, task, dataFolder);
    await pickBoth(first, pair);
    await first.getByRole('button', { name: 'Show how good it is' }).click();
    await expect(
      first.getByRole('heading', { level: 1, name: 'Pick the pair: how it came out' }),
    ).toBeFocused();
    for (const { name } of pair.stars)
      await expect(first.getByRole('heading', { level: 3, name })).toBeVisible();
    await expect(first.getByText('It may serve as an alignment star.')).toHaveCount(2);
    await expect(first.getByRole('meter', { name: 'Mark' })).toBeVisible();
    await first.getByRole('link', { name: 'Back to my work' }).click();
  });

  const attemptAddress = await test.step('check: one star, then the lab is left', async () => {
    await task.getByRole('button', { name: 'Start the check' }).click();
    await expect(first.getByText('Attempt 1 of 2')).toBeVisible();
    const address = first.url();
    const pair = toCheck(dataFolder, attemptIdOf(first));
    const hand = await handOn(first, pair);
    await hand.pick(pair.stars[0]);
    const saved = first.waitForResponse((answer) =>
      isAction(answer.request().method(), answer.request().postData(), '"sequence"'),
    );
    await first.getByRole('button', { name: 'Keep as first star' }).click();
    await saved;
    await first.context().close();
    return address;
  });
  const attemptId = new URL(attemptAddress).pathname.split('/').at(-1) ?? '';
  const chosen = toCheck(dataFolder, attemptId);
  const { stars } = chosen;

  const second = await openBrowser();
  await test.step('on another device the attempt resumes with its pick', async () => {
    await signInWithCard(second, card);
    await second.getByRole('link', { name: 'Go on with the check' }).click();
    await expect(second).toHaveURL(attemptAddress);
    await expect(second.getByRole('button', { name: `Replace ${stars[0].name}` })).toBeVisible();
    await expect(second.getByText('No second star yet')).toBeVisible();
    const hand = await handOn(second, chosen);
    await hand.pick(stars[1]);
    await second.getByRole('button', { name: 'Keep as second star' }).click();
    for (const { name } of stars) await nothingNear(second, name);
    const review = second.getByRole('region', { name: 'Read it once more before you submit' });
    for (const { name } of stars) await expect(review).toContainText(name);
  });

  await test.step('an answer whose receipt was lost is sent again and counts once', async () => {
    complaints.expect(connectionLost);
    await submitLosingTheReceipt(second);
    await expect(
      second.getByRole('heading', { level: 1, name: 'Pick the pair: how it came out' }),
    ).toBeVisible();
    const submitted = `SELECT count(*) AS n FROM Event WHERE attemptId = ? AND kind = 'submitted'`;
    expect(count(dataFolder, submitted, attemptId)).toBe(1);
    expect(count(dataFolder, 'SELECT count(*) AS n FROM Mark WHERE attemptId = ?', attemptId)).toBe(
      1,
    );
  });

  const total = markByEngine(dataFolder, attemptId);
  const seenAtOnce = await figuresOf(second.getByRole('main'));
  await test.step('the student sees the mark that the engine gives, also later', async () => {
    await expectStudentSees(second, title, total);
    expect(await figuresOf(second.getByRole('main'))).toEqual(seenAtOnce);
  });

  await test.step('the gradebook has it, and the attempt shows what was picked and what was best', async () => {
    await openFromGradebook(page, classId, { student, title, total });
    const result = page.getByRole('region', { name: /What was picked, what would have been best/ });
    expect(await figuresOf(result)).toEqual(seenAtOnce);
    await expect(result.getByRole('columnheader', { name: /Your pair/ })).toContainText(
      stars[0].name,
    );
    await expect(result.getByRole('columnheader', { name: /The best pair/ })).toBeVisible();
    await expect(result.getByRole('img', { name: /^The whole sky.*The best pair:/ })).toBeVisible();
  });
});
