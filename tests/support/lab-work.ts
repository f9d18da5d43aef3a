import { z } from 'zod';
import { perfectLog } from '@/lib/alignment/perfect-operator';
import { loadCatalogue } from '@/lib/content/sky-catalogue';
import type { AssignmentInput } from '@/lib/data/assignment-input';
import { db } from '@/lib/data/db';
import { faultAnswerKeySchema } from '@/lib/data/lab-tasks/stored-fault';
import { questionSetKeySchema } from '@/lib/data/lab-tasks/stored-questions';
import { runVariantSchema } from '@/lib/data/lab-tasks/stored-run';
import { storedAnswerKeySchema } from '@/lib/data/lab-tasks/stored-sky';
import type { FaultSubmission } from '@/lib/grading/fault-submission';
import type { QuestionSubmission } from '@/lib/grading/questions/question-submission';
import type { RunSubmission } from '@/lib/grading/run-submission';
import { rightAnswer } from '@/lib/items/answers-to-try';
import type { Item } from '@/lib/items/item';
import { directionFromAzAlt, separationDeg } from '@/lib/units/vector';
import { benchTemplates, type BenchLab } from '@/lib/variants/bench/bench-labs';
import { labPart } from './school';
import { runTemplates } from '@/lib/variants/run-variant';
import { faultTemplates } from '@/lib/variants/fault-variant';

export const runTask: Partial<AssignmentInput> = {
  title: 'Alignment run',
  parts: [labPart('alignment-run', ['own-choice'])],
};
export const faultTask: Partial<AssignmentInput> = {
  title: 'What went wrong?',
  parts: [labPart('what-went-wrong', ['first-slews'])],
};
/** Each bench lab with every kind of its tasks, and the answer that its attempts keep as their key. */
export const benchTasks = Object.entries(benchTemplates).map(([lab, templates]) => ({
  lab: lab as BenchLab,
  task: { title: lab, parts: [labPart(lab as BenchLab, templates)] },
  answer: modelAnswerOf,
}));

async function modelAnswerOf(attemptId: string): Promise<object> {
  const key = z.object({ answer: z.looseObject({}) });
  return key.parse((await stored(attemptId)).answerKey).answer;
}

export const everyRunTemplate = [...runTemplates];
export const everyFaultTemplate = [...faultTemplates];

const stored = (attemptId: string) =>
  db().attempt.findUniqueOrThrow({
    where: { id: attemptId },
    select: { variant: true, answerKey: true },
  });

/** The run of an operator who makes no mistake, on the telescope that the attempt keeps. */
export async function perfectRunOf(attemptId: string): Promise<RunSubmission> {
  const variant = runVariantSchema.parse((await stored(attemptId)).variant);
  return { log: perfectLog({ ...variant, catalogue: loadCatalogue() }) };
}

/** A run by day whose second star stands near the Sun: done with care, and a danger to the eye. */
export async function sunwardRunOf(attemptId: string): Promise<RunSubmission> {
  const attempt = await stored(attemptId);
  const variant = runVariantSchema.parse(attempt.variant);
  const { stars } = storedAnswerKeySchema.parse(attempt.answerKey);
  const placed = (at: { azimuthDeg: number; altitudeDeg: number }) =>
    directionFromAzAlt(at.azimuthDeg, at.altitudeDeg);
  const sunwards = stars
    .filter(({ altitudeDeg }) => altitudeDeg > 15 && altitudeDeg < 75)
    .map((star) => ({
      hip: star.hip,
      away: separationDeg(placed(star), placed(variant.frame.sun)),
    }));
  const near = sunwards.find(({ away }) => away > 5 && away < 25);
  const far = sunwards.find(({ away }) => away > 60);
  if (near === undefined || far === undefined) throw new Error('no such stars by day');
  const input = { ...variant, catalogue: loadCatalogue() };
  return { log: perfectLog(input, [far.hip, near.hip], { thirdHip: null, trust: true }) };
}

/** The fault that the attempt keeps, with a cure for it. */
export async function rightAnswerOf(attemptId: string): Promise<FaultSubmission> {
  const { fault, cures } = faultAnswerKeySchema.parse((await stored(attemptId)).answerKey);
  const [cure] = cures[fault] ?? [];
  if (cure === undefined) throw new Error(`there is no cure for ${fault}`);
  return { looked: [], testSlew: null, fault, cure };
}

export const questionsTask = {
  title: 'Questions on lessons',
  parts: [
    labPart('lesson-questions', [
      ...['level-enough', 'power-without-smoke', 'choosing-alignment-stars'],
    ]),
  ],
};

/** The whole questions that the attempt keeps, with their keys. */
export async function questionsOf(attemptId: string): Promise<Item[]> {
  const { items } = questionSetKeySchema.parse((await stored(attemptId)).answerKey);
  return items.map(({ item }) => item);
}

/** Each question's own key. */
export const rightAnswersOf = async (attemptId: string): Promise<QuestionSubmission> => ({
  answers: (await questionsOf(attemptId)).map(rightAnswer),
});
