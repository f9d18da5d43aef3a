import 'server-only';
import { z } from 'zod';
import { labs, type Lab } from '../../variants/labs';
import { alignmentRun } from './alignment-run';
import { benchTasks } from './bench/bench-tasks';
import { lessonQuestions } from './lesson-questions';
import { pickThePair } from './pick-the-pair';
import { whatWentWrong } from './what-went-wrong';

/** Every lab that can be practised and set. A new one is one file beside these and one entry here. */
export const labTasks = {
  ...benchTasks,
  'pick-the-pair': pickThePair,
  'alignment-run': alignmentRun,
  'what-went-wrong': whatWentWrong,
  'lesson-questions': lessonQuestions,
} satisfies Record<Lab, { lab: Lab }>;
export type LabTask = (typeof labTasks)[Lab];

const labSchema = z.enum(labs);

/** The lab that a column of the database names. */
export const labTaskOf = (stored: string): LabTask => labTasks[labSchema.parse(stored)];

/** A lab's open or submitted content, told apart by `lab`. */
export type OpenContent = ReturnType<LabTask['open']>;
export type SubmittedContent = ReturnType<LabTask['submitted']>;
export type LabSamples = ReturnType<LabTask['samples']>;
/** What any lab's answer came to; told apart by `lab`. */
export type LabResult = ReturnType<LabTask['readResult']>;
