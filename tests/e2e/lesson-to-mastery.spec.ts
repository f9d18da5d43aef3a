import type { Page } from '@playwright/test';
import matter from 'gray-matter';
import { readFileSync } from 'node:fs';
import { lessonFrontMatterSchema } from '../../lib/content/lesson-front-matter';
import { rightAnswer, wrongAnswers } from '../../lib/items/answers-to-try';
import { gradeItem } from '../../lib/items/grade-item';
import { routes } from '../../lib/routes';
import { giveAnswer, openQuestion } from '../support/answering';
import { addStudents, makeCards } from '../support/new-class';
import { expect, test, type Product } from '../support/product';
import { signInAsDemoTeacher, signInWithCard } from '../support/signing-in';
import { createClass } from '../support/teacher-desk';

const lesson = 'level-enough';
const student = 'Petrel';
const frontMatter = lessonFrontMatterSchema.parse(
  matter(readFileSync(`content/lessons/${lesson}/lesson.mdx`, 'utf8')).data,
);

/** Answers every question with options that stands in the lesson, first wrongly where it is told to. */
async function answerTheLesson(page: Page): Promise<void> {
  const asked = [...frontMatter.retrieval, ...frontMatter.checks].map(({ item }) => item);
  const choices = asked.filter((item) => item.kind === 'choice');
  expect(choices.length).toBeGreaterThan(3);
  for (const [index, item] of choices.entries()) {
    const form = page.locator(`#question-${item.id}`);
    const status = form.getByRole('status');
    if (index === 0) {
      const wrong = item.options.find(({ id }) => id !== item.key);
      await form.locator(`input[value="${wrong?.id ?? ''}"]`).check();
      await form.getByRole('button', { name: 'Check my answer' }).click();
      await expect(status).toContainText('Think again.');
    }
    await form.locator(`input[value="${item.key}"]`).check();
    await form.getByRole('button', { name: 'Check my answer' }).click();
    await expect(status).toContainText('Yes.');
  }
}

/** Each figure comes alive when it is scrolled to, and one of its controls does something. */
async function tryTheFigures(page: Page): Promise<void> {
  const figures = page.getByRole('figure');
  const count = await figures.count();
  expect(count).toBeGreaterThanOrEqual(2);
  for (let index = 0; index < count; index += 1) {
    const figure = figures.nth(index);
    await figure.scrollIntoViewIfNeeded();
    await expect(figure.locator('[data-live="true"]')).toBeVisible();
    const before = await figure.getByRole('status').first().innerText();
    const slider = figure.getByRole('slider').first();
    if (await slider.isVisible()) {
      await slider.focus();
      for (let step = 0; step < 12; step += 1) await page.keyboard.press('ArrowRight');
    } else {
      await figure.getByRole('button').first().press('Enter');
    }
    await expect(figure.getByRole('status').first()).not.toHaveText(before);
  }
}

/** Answers the open question and tells whether the skill is mastered now. */
async function answerOne(page: Page, { dataFolder }: Product, right: boolean): Promise<boolean> {
  const item = openQuestion(dataFolder, lesson);
  const poor = wrongAnswers(item).find((answer) => {
    const graded = gradeItem(item, answer);
    return graded.ok && graded.feedback.mark < 0.5;
  });
  await giveAnswer(page, right || poor === undefined ? rightAnswer(item) : poor);
  await page.getByRole('button', { name: 'Check my answer' }).click();
  const next = page.getByRole('link', { name: 'Next question' });
  await expect(next).toBeVisible();
  const mastered = await page.getByText('Mastered: Levels').isVisible();
  if (!mastered) {
    const prompt = page.locator('#question-prompt');
    const before = await prompt.innerText();
    await next.click();
    await expect(prompt).not.toHaveText(before);
  }
  return mastered;
}

test('a student works through lesson 3 from opening to mastery, and the teacher sees it', async ({
  page,
  product,
  browser,
}) => {
  test.setTimeout(240_000);
  await signInAsDemoTeacher(page, product.demoSignIns);
  const classId = await createClass(page, 'Year 7, the level');
  await addStudents(page, classId);
  const card = await makeCards(page, classId, student);

  const context = await browser.newContext();
  const desk = await context.newPage();
  await signInWithCard(desk, card);
  await desk.goto(routes.lessons.all());
  await desk.getByRole('link', { name: frontMatter.title }).first().click();
  await expect(desk.getByRole('heading', { level: 1, name: frontMatter.title })).toBeVisible();
  await answerTheLesson(desk);
  await tryTheFigures(desk);

  await desk.goto(routes.lessons.practise(lesson));
  await expect(desk.getByText('0 of 3 in a row')).toBeVisible();
  await answerOne(desk, product, false);
  let mastered = false;
  // A lesson asks about safety and other skills in between.
  for (let asked = 0; asked < 16 && !mastered; asked += 1) {
    mastered = await answerOne(desk, product, true);
  }
  expect(mastered).toBe(true);

  await desk.goto(routes.student.skills());
  const row = desk.getByRole('listitem').filter({ hasText: 'Levels' }).first();
  await expect(row).toContainText(/mastered/i);
  await context.close();

  await page.goto(routes.teacher.classSkills(classId));
  await expect(page.getByRole('row').filter({ hasText: student }).first()).toContainText(
    /mastered/i,
  );
});
