import { expect, type Page } from '@playwright/test';
import { routes } from '../../lib/routes';

/** What is printed on a student's card. */
export type Card = { classCode: string; cardNumber: string; words: string };

type DemoSignIn = { where: string; fields: Record<string, string> };

const fieldsAt = (signIns: readonly DemoSignIn[], where: string): Record<string, string> => {
  const found = signIns.find((signIn) => signIn.where === where);
  if (found === undefined) throw new Error(`The demonstration has no sign-in for ${where}.`);
  return found.fields;
};

/** Signs in as the teacher of the demonstration and waits for the desk. */
export async function signInAsDemoTeacher(
  page: Page,
  signIns: readonly DemoSignIn[],
): Promise<void> {
  const fields = fieldsAt(signIns, routes.signIn.teacher());
  await page.goto(routes.signIn.teacher());
  await page.getByLabel('Email').fill(fields['Email'] ?? '');
  await page.getByLabel('Password').fill(fields['Password'] ?? '');
  await page.getByRole('button', { name: 'Sign in' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Desk', exact: true })).toBeVisible();
}

/** Signs in with a card and waits for the student's work. */
export async function signInWithCard(page: Page, card: Card): Promise<void> {
  await page.goto(routes.signIn.student());
  await page.getByLabel('Class code').fill(card.classCode);
  await page.getByLabel('Card number').fill(card.cardNumber);
  await page.getByLabel('Three words').fill(card.words);
  await page.getByLabel('Three words').press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: /Good to see you/ })).toBeVisible();
}

/** The card of the demonstration's student. */
export function demoCard(signIns: readonly DemoSignIn[]): Card {
  const fields = fieldsAt(signIns, routes.signIn.student());
  return {
    classCode: fields['Class code'] ?? '',
    cardNumber: fields['Card number'] ?? '',
    words: fields['Three words'] ?? '',
  };
}
