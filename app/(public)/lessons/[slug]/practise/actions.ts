'use server';

import { z } from 'zod';
import { postedAnswer } from '@/components/questions/posted-answer';
import { answerField, type PracticeState } from '@/components/questions/practice-state';
import { skillStanding } from '@/components/questions/skill-standing';
import { getViewer, visitorMayAskQuestion } from '@/lib/auth/session';
import { systemClock } from '@/lib/data/clock';
import { parsedId } from '@/lib/data/ids';
import { answerQuestion } from '@/lib/data/questions';
import { markVisitorQuestion } from '@/lib/data/visitor-question';
import type { ItemAnswer } from '@/lib/items/item-answer';

const kindSchema = z.enum(['choice', 'several', 'order', 'match', 'numeric', 'point']);

type Marked = Pick<PracticeState, 'outcome' | 'refusal'> & { answer?: ItemAnswer };

/** Reads the posted answer; one that only moves a step of an order is not marked yet. */
async function answered(
  state: PracticeState,
  questionKey: string,
  form: FormData,
  mark: (answer: ItemAnswer) => Promise<Marked>,
): Promise<PracticeState> {
  const tries = state.tries + 1;
  const kind = kindSchema.safeParse(form.get('kind'));
  const posted = kind.success ? postedAnswer(kind.data, form, answerField) : null;
  if (posted === null) {
    const refusal = 'This answer cannot be read. Load the page again and answer once more.';
    return { tries, questionKey, answer: null, outcome: null, refusal };
  }
  const { answer, moved } = posted;
  if (moved) return { tries, questionKey, answer, outcome: null, refusal: null };
  return { tries, questionKey, answer, ...(await mark(answer)) };
}

/** Marks a student's answer; the first one counts and is kept. */
export async function answerOwnQuestion(
  sentId: unknown,
  state: PracticeState,
  form: FormData,
): Promise<PracticeState> {
  const id = parsedId(sentId);
  return answered(state, id, form, async (given) => {
    const result = await answerQuestion(await getViewer(), id, given);
    if (!result.ok) {
      const { code, message } = result.problem;
      return { outcome: null, refusal: code === 'not-found' ? signedOut : message };
    }
    const { skill, face, answer, feedback, brought, timeZone } = result.value;
    const now = systemClock.now();
    const standing = skillStanding(skill, result.value.standing, { timeZone, now });
    return { answer, outcome: { face, feedback, standing, brought }, refusal: null };
  });
}

const signedOut =
  'You are no longer signed in on this device. Sign in with your card in another window, then check again: your answer stays here.';

/** Marks a visitor's answer from the question's address. Nothing is kept. */
export async function answerVisitorQuestion(
  address: unknown,
  state: PracticeState,
  form: FormData,
): Promise<PracticeState> {
  const { key } = z.object({ key: z.string().max(400) }).parse(address);
  return answered(state, key, form, async (given) => {
    if (!(await visitorMayAskQuestion())) return { outcome: null, refusal: tooMany };
    const result = markVisitorQuestion(address, given);
    if (!result.ok) return { outcome: null, refusal: result.problem.message };
    const { face, feedback } = result.value;
    return { outcome: { face, feedback, standing: null, brought: null }, refusal: null };
  });
}

const tooMany =
  'Very many questions have been asked from your network. Wait ten minutes and try again; your answer is still here.';
