import type { Locator, Page } from '@playwright/test';
import type { RunResult } from '../../lib/grading/run-result';
import { routes } from '../../lib/routes';
import { checkShown } from '../support/accessibility';
import {
  connectionLost,
  submitAltered,
  submitLosingTheReceipt,
} from '../support/answer-on-its-way';
import { driveSomewhere } from '../support/hurried-run';
import { centreAndConfirm, planRun, setStart } from '../support/planned-run';
import { expect, test } from '../support/product';
import {
  attemptIdOf,
  expectMarks,
  expectStudentSees,
  figuresOf,
  openFromGradebook,
} from '../support/result-reading';
import { demoCard, signInAsDemoTeacher, signInWithCard } from '../support/signing-in';
import { runByEngine, runTaskOf, savedLogOf, sentLogOf } from '../support/stored-run';
import { count } from '../support/stored-work';
import {
  demoClassName,
  fillNewAssignment,
  openClass,
  publish,
  saveDraftAssignment,
} from '../support/teacher-desk';

const title = 'Align it over Funchal';
const outcome = 'Alignment run: how it came out';

const openTable = (page: Page): Promise<void> =>
  page.getByRole('button', { name: 'Table', exact: true }).click();

/** Which step of the run is marked as the present one, and which as done. */
async function expectAtSecondStar(page: Page): Promise<void> {
  const steps = page.getByRole('list', { name: 'Steps of the run' }).getByRole('listitem');
  await expect(steps.and(page.locator('[aria-current=step]'))).toHaveText('Second');
  await expect(steps.filter({ hasText: '(done)' })).toHaveText(['Start (done)', 'First (done)']);
}

/** The debrief of a run, against what the engine makes of its log. */
async function expectDebrief(part: Locator, result: RunResult): Promise<void> {
  await expectMarks(part, result.criteria);
  for (const [index, star] of result.stars.entries()) {
    const panel = part.getByRole('table', { name: `What was confirmed as ${star.name}` });
    await expect(panel).toContainText(`altitude ${star.altitudeDeg.toFixed(1)}°`);
    await expect(
      part.getByRole('heading', {
        name: `The ${index === 0 ? 'first' : 'second'} star: ${star.name}`,
      }),
    ).toBeVisible();
  }
}

test('a run is set, practised, left, resumed, handed in once, and seen alike by student and teacher', async ({
  page,
  product,
  openBrowser,
  complaints,
}) => {
  test.setTimeout(180_000);
  const { dataFolder } = product;
  await signInAsDemoTeacher(page, product.demoSignIns);
  const classId = await openClass(page, demoClassName);
  await fillNewAssignment(page, classId, title, { lab: 'alignment-run', template: 'own-choice' });
  await saveDraftAssignment(page, title);
  await publish(page);

  const card = demoCard(product.demoSignIns);
  const first = await openBrowser();
  await signInWithCard(first, card);
  const greeting = await first.getByRole('heading', { level: 1 }).innerText();
  const student = greeting.split(', ').at(-1) ?? '';
  const task = first.getByRole('article', { name: title });

  await test.step('practice: under the drawn sky, which may be told to stand still', async () => {
    await task.getByRole('button', { name: 'Practise under this sky' }).click();
    await expect(first.getByText('Practice: nothing here counts.')).toBeVisible();
    await first.getByRole('button', { name: 'Lock the clutches' }).click();
    await expect(first.getByRole('button', { name: 'Show a hint' })).toBeVisible();
    await driveSomewhere(first, 'first');
    await first.getByRole('button', { name: 'Pause the sky' }).click();
    await expect(first.getByRole('button', { name: 'Let the sky go on' })).toBeVisible();
    await first.goto(routes.student.myWork());
  });

  const { address, left, plan, firstName } =
    await test.step('check: start position and first star, then the lab is left', async () => {
      await task.getByRole('button', { name: 'Start the check' }).click();
      await expect(first.getByText('Attempt 1 of 2')).toBeVisible();
      await expect(first.getByRole('button', { name: /hint|Pause/ })).toHaveCount(0);
      const attemptId = attemptIdOf(first);
      const plan = planRun(runTaskOf(dataFolder, attemptId));
      await openTable(first);
      await setStart(first, plan);
      const saved = first.waitForResponse((answer) =>
        (answer.request().postData() ?? '').includes('"this-is-the-star"'),
      );
      const firstName = await centreAndConfirm(first, plan, 'first');
      expect((await saved).ok()).toBe(true);
      const address = first.url();
      await first.context().close();
      return { address, plan, firstName, left: savedLogOf(dataFolder, attemptId) };
    });
  expect(left.filter((action) => action.do === 'this-is-the-star')).toHaveLength(1);

  const second = await openBrowser();
  await signInWithCard(second, card);
  const attemptId = await test.step('on another device it goes on where it was left', async () => {
    const begun = second.getByRole('article', { name: title });
    await begun.getByRole('link', { name: 'Go on with the check' }).click();
    await expect(second).toHaveURL(address);
    await expect(second.getByRole('heading', { name: 'Choose the second star' })).toBeVisible();
    await expectAtSecondStar(second);
    // A star that has been confirmed cannot be the second one.
    const list = second.getByLabel('The star you will centre');
    await expect(list.getByRole('option', { name: firstName, exact: true })).toHaveCount(0);
    await openTable(second);
    const secondName = await centreAndConfirm(second, plan, 'second');
    await second.getByRole('button', { name: 'Check on a third' }).click();
    await expect(second.getByText(/^The mount says that this is/)).toBeVisible();
    await second.getByRole('button', { name: 'I do not trust it' }).click();
    await expectReview(second, [firstName, secondName]);
    return attemptIdOf(second);
  });

  await test.step('a reading that was changed on its way is refused, and nothing is lost', async () => {
    await submitAltered(second, (body) =>
      body.replace(
        /("readings":\{"azimuthDeg":)([\d.]+)/,
        (_, head: string, azimuthDeg: string) => `${head}${String((Number(azimuthDeg) + 1) % 360)}`,
      ),
    );
    const refused = second.getByRole('alert').filter({ hasText: 'That was not taken' });
    await expect(refused).toContainText('This run does not add up');
    await expect(refused).toContainText('your attempt is still open.');
    expect(count(dataFolder, marks, attemptId)).toBe(0);
    expect(count(dataFolder, open, attemptId)).toBe(1);
    // The run, with the judgement that ended it, is there again after the page is loaded anew.
    await expect
      .poll(() => savedLogOf(dataFolder, attemptId).at(-1))
      .toMatchObject({ do: 'judge', trust: false });
    await second.reload();
    await expectReview(second, [firstName]);
  });

  await test.step('a run whose receipt was lost is sent again and counts once', async () => {
    complaints.expect(connectionLost);
    await submitLosingTheReceipt(second);
    await expect(second.getByRole('heading', { level: 1, name: outcome })).toBeVisible();
    expect(count(dataFolder, submitted, attemptId)).toBe(1);
    expect(count(dataFolder, marks, attemptId)).toBe(1);
    expect(sentLogOf(dataFolder, attemptId).slice(0, left.length)).toEqual(left);
  });

  const result = runByEngine(dataFolder, attemptId);
  expect(result.stars.map(({ right }) => right)).toEqual([true, true]);
  // A good alignment was doubted, so that a full mark cannot pass for this one.
  expect(result.judgement).toEqual({ trusted: false, deserved: 'trust' });
  expect(result.total).toBeLessThan(81);
  const seenAtOnce = await figuresOf(second.getByRole('main'));
  await test.step('the student sees the debrief and the mark that the engine gives, also later', async () => {
    await expectDebrief(second.getByRole('main'), result);
    await expectStudentSees(second, title, result.total);
    expect(await figuresOf(second.getByRole('main'))).toEqual(seenAtOnce);
  });

  await test.step('gradebook and attempt show the teacher the same', async () => {
    await openFromGradebook(page, classId, { student, title, total: result.total });
    const debrief = page.getByRole('region', { name: /^How the run went, star by star/ });
    await expectDebrief(debrief, result);
    expect(await figuresOf(debrief)).toEqual(seenAtOnce);
    await checkShown(page);
  });
});

const marks = 'SELECT count(*) AS n FROM Mark WHERE attemptId = ?';
const open = `SELECT count(*) AS n FROM Attempt WHERE id = ? AND status = 'open'`;
const submitted = `SELECT count(*) AS n FROM Event WHERE attemptId = ? AND kind = 'submitted'`;

async function expectReview(page: Page, names: readonly string[]): Promise<void> {
  const review = page.getByRole('region', { name: 'Read it once more before you submit' });
  for (const name of names) await expect(review).toContainText(`this is ${name}.`);
  await expect(review).toContainText('You would not observe with this alignment.');
}
