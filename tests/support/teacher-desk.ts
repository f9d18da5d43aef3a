import { expect, type Page } from '@playwright/test';
import { templateText } from '../../components/grading/template-text';
import { routes } from '../../lib/routes';
import { labOptions, type Lab, type Template } from '../../lib/variants/labs';

/** The class that the demonstration comes with. */
export const demoClassName = 'Year 8, Hollin Bank School';

const classOf = (page: Page): string =>
  /classes\/([^/]+)/.exec(new URL(page.url()).pathname)?.[1] ?? '';

/** Opens a class from the desk and answers its id. */
export async function openClass(page: Page, name: string): Promise<string> {
  await page.goto(routes.teacher.desk());
  await page.getByRole('link', { name }).click();
  await expect(page.getByRole('heading', { level: 1, name })).toBeVisible();
  return classOf(page);
}

/** Creates a class on the clock of Lisbon and answers its id. */
export async function createClass(page: Page, name: string): Promise<string> {
  await page.goto(routes.teacher.newClass());
  await page.getByLabel('Name').fill(name);
  await page.getByLabel('Time zone').fill('Europe/Lisbon');
  await page.getByRole('button', { name: 'Create the class' }).click();
  await expect(page.getByRole('heading', { level: 1, name })).toBeVisible();
  return classOf(page);
}

/** The date of a day some days from now, as a date field takes it. */
export const dateInDays = (days: number): string =>
  new Date(Date.now() + days * 86_400_000).toISOString().slice(0, 10);

/** A lab, and the one kind of its tasks that is set. */
type Task = { lab: Lab; template: Template };

/** Any two stars to be picked. */
const anyTwo: Task = { lab: 'pick-the-pair', template: 'free-pair' };

/** Opens a part of the form that is folded away; one that is open stays open. */
async function unfold(page: Page, title: string): Promise<void> {
  const fold = page.locator('details', {
    has: page.locator('summary').getByText(title, { exact: true }),
  });
  if ((await fold.getAttribute('open')) === null) await fold.locator('summary').first().click();
}

/**
 * Fills the form of a new assignment: Funchal, whose nautical dusk comes every night of the year,
 * tonight, over an open field, one kind of task, two attempts, due in a week.
 */
export async function fillNewAssignment(
  page: Page,
  classId: string,
  title: string,
  task: Task = anyTwo,
): Promise<void> {
  await page.goto(routes.teacher.newAssignment(classId));
  await page.getByLabel('What students do').selectOption(task.lab);
  await page.getByLabel('Title').fill(title);
  await unfold(page, 'Place');
  const town = page.getByLabel('Search for a town');
  await town.pressSequentially('Funchal');
  await expect(page.getByRole('option', { name: /^Funchal/ }).first()).toBeVisible();
  await town.press('Enter');
  await expect(page.getByLabel('Name of the place')).toHaveValue(/^Funchal/);
  await expect(page.getByLabel('Time zone')).toHaveValue('Atlantic/Madeira');
  await page.getByRole('button', { name: 'Tonight at nautical dusk' }).click();
  await expect(page.getByText(/Nautical dusk there tonight is at \d\d:\d\d/)).toBeVisible();
  await expect(page.getByLabel('Time', { exact: true })).toHaveValue(/^\d\d:\d\d$/);
  await unfold(page, 'Horizon');
  await page.getByLabel('Open field').check();
  await unfold(page, 'Tasks');
  const kinds = page.getByRole('group', { name: 'Kinds of task' });
  for (const template of labOptions[task.lab].templates)
    await kinds
      .getByLabel(templateText(task.lab, template).name)
      .setChecked(template === task.template);
  // A new assignment begins with what the last one of the class was set to.
  await unfold(page, 'Attempts and pass mark');
  await page.getByLabel('Attempts', { exact: true }).fill('2');
  await page.getByLabel(/^Due date/).fill(dateInDays(7));
  await page.getByLabel(/^Due time/).fill('18:00');
}

/** Sends the form and waits for the draft with its answer key. */
export async function saveDraftAssignment(page: Page, title: string): Promise<void> {
  await page.getByRole('button', { name: 'Save the draft and see the answer key' }).click();
  await expect(page.getByRole('heading', { level: 1, name: title })).toBeVisible();
  await expect(page.getByText('Draft: students do not see it yet.')).toBeVisible();
}

/** Publishes the draft that is being looked at. */
export async function publish(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Publish…' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Publish', exact: true }).click();
  await expect(page.getByText(/^Published .* Nobody has started yet\.$/)).toBeVisible();
}
