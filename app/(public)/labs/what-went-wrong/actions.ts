'use server';

import { labTasks } from '@/lib/data/lab-tasks/lab-tasks';
import { gradeRoundOf } from '../grade-round';

/** Marks a visitor's answer. Nothing is kept. */
export async function gradeRound(round: unknown, sent: unknown) {
  return gradeRoundOf(labTasks['what-went-wrong'], round, sent);
}
