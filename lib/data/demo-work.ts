import 'server-only';
import { z } from 'zod';
import type { Viewer } from '../auth/policy';
import { putItTogetherSubmissionSchema } from '../grading/bench/put-it-together/put-it-together-submission';
import type { FaultAsk } from '../variants/fault-seen';
import { lookAt, saveDraft, startAttempt, submitAttempt } from './attempts';
import { fixedClock, type Clock } from './clock';
import { db } from './db';
import { demoAssembly, demoAssemblyBegun } from './demo-bench';
import { demoChoice, type DemoSkill } from './demo-choice';
import type { DemoAttempt } from './demo-diary';
import { demoFinding, demoFindingBegun } from './demo-fault';
import { demoAnswers, demoAnswersBegun } from './demo-question-set';
import { demoRun, demoRunBegun } from './demo-run';
import { faultAnswerKeySchema, faultVariantSchema } from './lab-tasks/stored-fault';
import { labTaskOf } from './lab-tasks/lab-tasks';
import { pairVariantSchema } from './lab-tasks/stored-pair';
import { runVariantSchema } from './lab-tasks/stored-run';
import { questionSetKeySchema } from './lab-tasks/stored-questions';
import { storedAnswerKeySchema } from './lab-tasks/stored-sky';
import type { Result } from './result';

/** A bug or a broken content folder: the demonstration is made of the product's own functions. */
export function must<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`the demonstration could not be made: ${result.problem.message}`);
  return result.value;
}

export const fixedAt = (ms: number): Clock => fixedClock(new Date(ms).toISOString());

export function studentViewer(classId: string, studentId = '', displayName = ''): Viewer {
  return { kind: 'student', studentId, classId, displayName };
}

/** One attempt through the very functions that a student's browser calls; at the first part where none is named. */
export async function work(
  viewer: Viewer,
  assignmentId: string,
  skill: DemoAttempt,
  start: Clock,
  end: Clock,
  position = 1,
): Promise<void> {
  const part = await db().assignmentPart.findFirstOrThrow({
    where: { assignmentId, kind: 'lab', position },
    select: { id: true },
  });
  const { attemptId } = must(await startAttempt(viewer, assignmentId, part.id, start));
  const attempt = await db().attempt.findUniqueOrThrow({
    where: { id: attemptId },
    select: { lab: true, variant: true, answerKey: true },
  });
  const { draft, submission, asks = [] } = workOf(attempt, skill);
  for (const ask of asks) must(await lookAt(viewer, attemptId, ask, end));
  must(await saveDraft(viewer, attemptId, { sequence: 1, draft }, end));
  if (submission === null) return;
  const sent = { submission, idempotencyKey: `demo-${attemptId}` };
  must(await submitAttempt(viewer, attemptId, sent, end));
}

/** What was done last before handing in, and what was handed in; null for what is still under way. */
function workOf(
  attempt: { lab: string; variant: unknown; answerKey: unknown },
  skill: DemoAttempt,
): { draft: object; submission: object | null; asks?: readonly FaultAsk[] } {
  switch (labTaskOf(attempt.lab).lab) {
    case 'pick-the-pair': {
      const variant = pairVariantSchema.parse(attempt.variant);
      const answerKey = storedAnswerKeySchema.parse(attempt.answerKey);
      return pairWork(demoChoice(variant, answerKey, finished(skill)), skill === 'under-way');
    }
    case 'alignment-run': {
      const variant = runVariantSchema.parse(attempt.variant);
      const answerKey = storedAnswerKeySchema.parse(attempt.answerKey);
      const submission = skill === 'under-way' ? null : demoRun(variant, answerKey, skill);
      return { draft: submission ?? demoRunBegun(variant, answerKey), submission };
    }
    case 'what-went-wrong': {
      const variant = faultVariantSchema.parse(attempt.variant);
      const answerKey = faultAnswerKeySchema.parse(attempt.answerKey);
      const submission = skill === 'under-way' ? null : demoFinding(variant, answerKey, skill);
      const draft = submission ?? demoFindingBegun(variant, answerKey);
      const { looked, testSlew } = draft;
      return { draft, submission, asks: [...looked, ...(testSlew === null ? [] : [{ testSlew }])] };
    }
    case 'put-it-together': {
      const { answer } = assemblyKeySchema.parse(attempt.answerKey);
      const submission = skill === 'under-way' ? null : demoAssembly(answer, skill);
      return { draft: submission ?? demoAssemblyBegun(answer), submission };
    }
    case 'lesson-questions': {
      const items = questionSetKeySchema.parse(attempt.answerKey).items.map(({ item }) => item);
      const submission = skill === 'under-way' ? null : demoAnswers(items, skill);
      return { draft: submission ?? demoAnswersBegun(items), submission };
    }
    default:
      throw new Error(`the demonstration has no work at ${attempt.lab}`);
  }
}

const assemblyKeySchema = z.object({ answer: putItTogetherSubmissionSchema });

const finished = (skill: DemoAttempt): DemoSkill => (skill === 'under-way' ? 'middling' : skill);

function pairWork(submission: ReturnType<typeof demoChoice>, underWay: boolean) {
  const stars = submission.kind === 'pair' ? submission.stars : [];
  const draft = {
    picks: underWay ? stars.slice(0, 1) : stars,
    saysNone: submission.kind === 'none-usable',
    proposalIndex: 0,
  };
  return { draft, submission: underWay ? null : submission };
}
