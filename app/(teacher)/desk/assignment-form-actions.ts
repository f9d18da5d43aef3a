'use server';

import { revalidatePath } from 'next/cache';
import { z } from 'zod';
import type { DraftInput, DraftProblem } from '@/components/desk/assignment-form/draft-input';
import type {
  DuskAnswer,
  MomentAnswer,
  SaveAnswer,
  SaveQuestion,
} from '@/components/desk/assignment-form/form-actions';
import { getViewer } from '@/lib/auth/session';
import { createAssignment, getAssignment, updateAssignment } from '@/lib/data/assignments';
import { parsedId } from '@/lib/data/ids';
import { searchPlaces, type Place } from '@/lib/data/places';
import { scenarioSchema } from '@/lib/pointing/scenario';
import { routes } from '@/lib/routes';
import { instantOfLocalTime, isTimeZone } from '@/lib/sky/local-time';
import { endsWork, hasPassed } from './ends-work';
import { describeSky, localTimeProblem, nauticalDuskOn, todayIn } from './moment-text';

const zoneSchema = z.string().min(1).max(60);
const placeSchema = scenarioSchema.shape.place;

/** Places and dusk are no secret; this only keeps strangers from making the server look them up. */
const isTeacher = async (): Promise<boolean> => (await getViewer()).kind === 'teacher';

export async function findPlaces(query: unknown): Promise<Place[]> {
  const parsed = z.string().max(100).safeParse(query);
  return parsed.success && (await isTeacher()) ? searchPlaces(parsed.data) : [];
}

const momentSchema = z.object({
  localTime: z.string().max(40),
  timeZone: zoneSchema,
  place: placeSchema.nullable(),
});

export async function lookUpMoment(question: unknown): Promise<MomentAnswer> {
  const parsed = momentSchema.safeParse(question);
  if (!parsed.success || !(await isTeacher()))
    return { ok: false, message: 'This time cannot be read.', candidates: [] };
  const { localTime, timeZone, place } = parsed.data;
  const resolved = instantOfLocalTime(localTime, timeZone);
  if (!resolved.ok) return { ok: false, ...localTimeProblem(resolved, localTime, timeZone) };
  return {
    ok: true,
    ...describeSky(resolved.instant, place),
    isOver: hasPassed(resolved.instant, new Date()),
  };
}

const duskSchema = z.object({
  ...placeSchema.shape,
  elevationM: z.number().default(0),
  timeZone: zoneSchema,
});

export async function duskTonight(question: unknown): Promise<DuskAnswer> {
  const parsed = duskSchema.safeParse(question);
  if (!parsed.success || !(await isTeacher()) || !isTimeZone(parsed.data.timeZone)) {
    return { ok: false, message: 'Choose a place and its time zone first: dusk depends on them.' };
  }
  const { timeZone, ...place } = parsed.data;
  return nauticalDuskOn(todayIn(timeZone, new Date()), place, timeZone);
}

/** The due time as an instant, put into the input where its schema looks for it. */
function withDue({
  input,
  dueLocalTime,
}: DraftInput):
  { ok: true; input: unknown; dueAt: string | null } | { ok: false; problem: DraftProblem } {
  if (dueLocalTime === null) return { ok: true, input, dueAt: null };
  const dueSchema = z.looseObject({ dueTimeZone: zoneSchema, policy: z.looseObject({}) });
  const parsed = dueSchema.safeParse(input);
  // What is wrong with the rest of the input is for its own schema to say.
  if (!parsed.success) return { ok: true, input, dueAt: null };
  const resolved = instantOfLocalTime(dueLocalTime, parsed.data.dueTimeZone);
  if (!resolved.ok) {
    const { message } = localTimeProblem(resolved, dueLocalTime, parsed.data.dueTimeZone);
    return {
      ok: false,
      problem: { code: resolved.reason, field: 'policy.dueAt', message: `Due time: ${message}` },
    };
  }
  return {
    ok: true,
    dueAt: resolved.instant,
    input: { ...parsed.data, policy: { ...parsed.data.policy, dueAt: resolved.instant } },
  };
}

const timeSchema = z.looseObject({
  scenario: z.looseObject({ localTime: z.string(), timeZone: zoneSchema }),
});

/** A refused time as the form asks about it: lib/data speaks of the public scenario format. */
function inFormWords(problem: DraftProblem, input: unknown): DraftProblem {
  const parsed = timeSchema.safeParse(input);
  if (problem.field !== 'scenario.localTime' || !parsed.success) return problem;
  const { localTime, timeZone } = parsed.data.scenario;
  const resolved = instantOfLocalTime(localTime, timeZone);
  return resolved.ok
    ? problem
    : { ...problem, message: localTimeProblem(resolved, localTime, timeZone).message };
}

const draftInputSchema = z.object({
  input: z.unknown(),
  dueLocalTime: z.string().max(40).nullable(),
});

export async function saveNew(sentId: unknown, draft: unknown): Promise<SaveAnswer> {
  const classId = parsedId(sentId);
  const parsed = draftInputSchema.safeParse(draft);
  if (!parsed.success) return unreadable;
  const due = withDue(parsed.data);
  if (!due.ok) return { ok: false, problems: [due.problem] };
  const made = await createAssignment(await getViewer(), classId, due.input);
  if (!made.ok) return { ok: false, problems: [inFormWords(made.problem, due.input)] };
  revalidatePath(routes.teacher.classAssignments(classId));
  return { ok: true, href: routes.teacher.assignment(made.value.assignmentId) };
}

export async function saveChanged(
  sentId: unknown,
  sentVersion: unknown,
  draft: unknown,
  sentConfirmed: unknown,
): Promise<SaveAnswer> {
  const assignmentId = parsedId(sentId);
  const parsed = z
    .object({ draft: draftInputSchema, version: z.number().int(), confirmed: z.boolean() })
    .safeParse({ draft, version: sentVersion, confirmed: sentConfirmed });
  if (!parsed.success) return unreadable;
  const { version, confirmed } = parsed.data;
  const due = withDue(parsed.data.draft);
  if (!due.ok) return { ok: false, problems: [due.problem] };
  const viewer = await getViewer();
  if (!confirmed && due.dueAt !== null) {
    const before = await getAssignment(viewer, assignmentId);
    if (before !== null && endsWork(before, due.dueAt, new Date())) {
      return { ok: false, question: overAlready };
    }
  }
  const changed = await updateAssignment(viewer, assignmentId, due.input, version);
  if (!changed.ok) return { ok: false, problems: [inFormWords(changed.problem, due.input)] };
  revalidatePath(routes.teacher.assignment(assignmentId), 'layout');
  return { ok: true, href: routes.teacher.assignment(assignmentId) };
}

const overAlready: SaveQuestion = {
  title: 'Make the due time one that is over?',
  text: 'The new due time lies in the past. Students who have not started cannot start any more, and the gradebook says “missing” of them.',
  confirmLabel: 'Save it as it is',
};

const unreadable: SaveAnswer = {
  ok: false,
  problems: [
    { code: 'bad-input', message: 'The form arrived incomplete. Reload the page and try again.' },
  ],
};
