'use server';

import { redirect } from 'next/navigation';
import { z } from 'zod';
import { signInStudent, signInTeacher } from '@/lib/auth/session';
import type { Problem } from '@/lib/data/result';
import { routes } from '@/lib/routes';

// What a person types on a card is short; anything longer is not worth a hash.
const typed = z.string().trim().max(200).catch('');

const cardSchema = z.object({ classCode: typed, cardNumber: typed, words: typed });
/** The words are never sent back. */
export type CardState = {
  problem: Problem | null;
  kept: { classCode: string; cardNumber: string };
};

/** Says what is missing before anything is tried, so that a slip costs no try. */
function missingOnCard(card: z.infer<typeof cardSchema>): Problem | null {
  if (card.classCode === '') {
    return { code: 'missing', field: 'classCode', message: 'Type the class code from your card.' };
  }
  if (!/\d/.test(card.cardNumber)) {
    return { code: 'missing', field: 'cardNumber', message: 'Type the number on your card.' };
  }
  if (card.words.split(/[^\p{L}]+/u).filter((word) => word !== '').length !== 3) {
    return {
      code: 'missing',
      field: 'words',
      message: 'Type the three words of your card, with a space or a dash between them.',
    };
  }
  return null;
}

export async function signInWithCard(_before: CardState, formData: FormData): Promise<CardState> {
  const card = cardSchema.parse(Object.fromEntries(formData));
  const kept = { classCode: card.classCode, cardNumber: card.cardNumber };
  const missing = missingOnCard(card);
  if (missing !== null) return { problem: missing, kept };
  const signedIn = await signInStudent({
    ...card,
    cardNumber: card.cardNumber.replace(/\D/g, ''),
  });
  if (!signedIn.ok) return { problem: signedIn.problem, kept };
  redirect(routes.student.myWork());
}

const passwordSchema = z.object({
  email: typed,
  // Not trimmed: a space may belong to it.
  password: z.string().max(1000).catch(''),
});
export type PasswordState = { problem: Problem | null; kept: { email: string } };

export async function signInWithPassword(
  _before: PasswordState,
  formData: FormData,
): Promise<PasswordState> {
  const entry = passwordSchema.parse(Object.fromEntries(formData));
  const kept = { email: entry.email };
  if (entry.email === '') {
    return { problem: { code: 'missing', field: 'email', message: 'Type your email.' }, kept };
  }
  if (entry.password === '') {
    return {
      problem: { code: 'missing', field: 'password', message: 'Type your password.' },
      kept,
    };
  }
  const signedIn = await signInTeacher(entry);
  if (!signedIn.ok) return { problem: signedIn.problem, kept };
  redirect(routes.teacher.desk());
}
