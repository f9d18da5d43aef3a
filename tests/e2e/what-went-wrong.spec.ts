import type { Page } from '@playwright/test';
import { cureWords } from '../../components/lab/fault/cure-words';
import { faultWords } from '../../components/lab/fault/fault-words';
import type { Look } from '../../lib/variants/fault-variant';
import { checkShown } from '../support/accessibility';
import { press, tabTo, withoutCanvasAndMouse } from '../support/keyboard';
import { expect, test } from '../support/product';
import {
  attemptIdOf,
  expectMarks,
  expectStudentSees,
  figuresOf,
  openFromGradebook,
} from '../support/result-reading';
import { demoCard, signInAsDemoTeacher, signInWithCard } from '../support/signing-in';
import { faultByEngine, faultTaskOf } from '../support/stored-fault';
import {
  demoClassName,
  fillNewAssignment,
  openClass,
  publish,
  saveDraftAssignment,
} from '../support/teacher-desk';

const title = 'An evening gone wrong';

/**
 * What only an answer key or a result holds. The words alone may stand on the page (every fault is
 * offered by name), so it is the fields that are looked for, as JSON or as JSON within a string; the
 * key's cures are by fault, where the page's are a list.
 */
const answerFields = /\\*"(answerKey|alike|tellTales?|rightCures)\\*":|\\*"cures\\*":\s*\{/;

/** Evidence that does not lie open in this kind of task, as a field that holds it. */
const evidence = (...looks: Look[]): RegExp => new RegExp(`\\\\*"(${looks.join('|')})\\\\*":`);

/** What the server sends from here on of the student's work: the pages, and each answer of an action. */
async function listenTo(page: Page): Promise<() => string> {
  const heard: string[] = [];
  // Read on its way: a browser forgets what it has received as soon as it has moved on.
  await page.route(/\/my(\/attempts\/[^/?]+)?$/, async (route) => {
    const response = await route.fetch();
    heard.push(await response.text());
    await route.fulfill({ response });
  });
  return () => heard.join('\n');
}

/** Any choice of one list, reached with Tab and the arrow keys. */
async function choose(page: Page, name: string): Promise<void> {
  const choices = page.getByRole('radio');
  await tabTo(page, choices.first());
  await page.keyboard.press('Space');
  const wanted = page.getByRole('radio', { name, exact: true });
  for (let presses = 0; presses < 40 && !(await wanted.isChecked()); presses += 1)
    await page.keyboard.press('ArrowDown');
  await expect(wanted).toBeChecked();
}

test('a student finds the fault by keyboard alone, and nothing on the page told it', async ({
  page,
  context,
  product,
  openBrowser,
}) => {
  const { dataFolder } = product;
  const desk = await openBrowser();
  await signInAsDemoTeacher(desk, product.demoSignIns);
  const classId = await openClass(desk, demoClassName);
  await fillNewAssignment(desk, classId, title, {
    lab: 'what-went-wrong',
    template: 'first-slews',
  });
  await saveDraftAssignment(desk, title);
  await publish(desk);

  await withoutCanvasAndMouse(context);
  await signInWithCard(page, demoCard(product.demoSignIns));
  const greeting = await page.getByRole('heading', { level: 1 }).innerText();
  const student = greeting.split(', ').at(-1) ?? '';
  const soFar = await listenTo(page);
  await tabTo(
    page,
    page.getByRole('article', { name: title }).getByRole('button', { name: 'Start the check' }),
  );
  await page.keyboard.press('Enter');
  await expect(page.getByText(/^Attempt 1 of 2/)).toBeVisible();
  const attemptId = attemptIdOf(page);
  const { variant, answerKey } = faultTaskOf(dataFolder, attemptId);

  const slewTo = await test.step('a look and a test slew, each at its price', async () => {
    expect(soFar()).not.toMatch(evidence('card', 'later', 'observations'));
    await press(page, /^Look at it: The settings card, costs 2 marks/);
    await expect(page.getByRole('heading', { name: 'The settings card' })).toBeFocused();
    expect(soFar()).toMatch(evidence('card'));
    const list = page.getByLabel('To which star?');
    await tabTo(page, list);
    await page.keyboard.press('ArrowDown');
    const star = variant.testSlews[1]?.name ?? '';
    await expect(list.locator('option:checked')).toHaveText(new RegExp(`^${star}:`));
    await press(page, /^Send the telescope there/);
    await expect(page.getByRole('heading', { name: 'Your test slew' })).toBeFocused();
    await expect(page.getByRole('region', { name: 'Your test slew' })).toContainText(star);
    return star;
  });

  // Until it is named, the only fault that is spoken of by that field is the draft's empty one.
  expect(soFar()).not.toMatch(/\\*"fault\\*":\s*\\*"/);
  expect(soFar()).toMatch(/\\*"fault\\*":\s*null/);

  const fault = faultWords[answerKey.fault].name;
  const [cureId] = answerKey.cures[answerKey.fault] ?? [];
  const cure = cureId === undefined ? '' : cureWords[cureId].name;
  await test.step('fault and cure, read once more', async () => {
    await choose(page, fault);
    await press(page, 'That is the fault');
    await expect(page.getByRole('heading', { name: 'What puts it right?' })).toBeFocused();
    await choose(page, cure);
    const saved = page.waitForResponse((answer) =>
      (answer.request().postData() ?? '').includes(`"cure":"${cureId ?? ''}"`),
    );
    await press(page, 'That is the cure');
    await expect(
      page.getByRole('heading', { name: 'Read it once more before you submit' }),
    ).toBeFocused();
    const review = page.getByRole('region', { name: 'Read it once more before you submit' });
    for (const said of [fault, cure, 'the settings card', `a test slew to ${slewTo}`])
      await expect(review).toContainText(said);
    await saved;
  });

  await test.step('the answer came only with the result', async () => {
    // As after a lost connection: the page with its draft is no more talkative than the empty one.
    await page.reload();
    await expect(
      page.getByRole('heading', { name: 'Read it once more before you submit' }),
    ).toBeVisible();
    const before = soFar();
    expect(before, 'the evening was heard').toContain('testSlews');
    expect(before, 'and what saving answers').toMatch(/"ok":true,"value":\{"sequence":\d/);
    expect(before).not.toMatch(answerFields);
    expect(before, 'nor what nobody asked for').not.toMatch(evidence('later', 'observations'));
    await press(page, 'Submit');
    await expect(
      page.getByRole('heading', { level: 1, name: 'What went wrong? How it came out' }),
    ).toBeFocused();
    const after = soFar().slice(before.length);
    expect(after, 'what is looked for can be found').toMatch(answerFields);
    expect(after).toMatch(evidence('observations'));
  });

  const result = faultByEngine(dataFolder, attemptId);
  expect(result.named).toBe(answerKey.fault);
  expect(result.looked).toEqual(['card']);
  const seenAtOnce = await figuresOf(page.getByRole('main'));
  await test.step('the student sees the mark that the engine gives, also later', async () => {
    // All but the two things that were asked for.
    expect(result.total).toBe(96);
    await expect(page.getByText(/^You found it: /)).toBeVisible();
    await expectMarks(page.getByRole('main'), result.criteria);
    await expectStudentSees(page, title, result.total);
    expect(await figuresOf(page.getByRole('main'))).toEqual(seenAtOnce);
  });

  await test.step('gradebook and attempt show the teacher the same', async () => {
    await openFromGradebook(desk, classId, { student, title, total: result.total });
    const debrief = desk.getByRole('region', { name: /^What was named, what it was/ });
    await expectMarks(debrief, result.criteria);
    expect(await figuresOf(debrief)).toEqual(seenAtOnce);
    await checkShown(desk);
  });
});
