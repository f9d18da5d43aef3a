import { z } from 'zod';
import { faultAskSchema } from '../../grading/fault-submission';
import type { FaultAsk } from '../../variants/fault-seen';
import { looks, type Look } from '../../variants/fault-variant';
import type { LookedAt } from './lab-task';

/*
 * The 'looked' events of an attempt at "What went wrong?": one for each piece of evidence given out.
 */

const payloadSchema = z.object({ ask: faultAskSchema });

export const lookPayload = (ask: FaultAsk): z.infer<typeof payloadSchema> => ({ ask });

/** Whether a stored event gave out what is asked for now. */
export const isSameLook = (stored: unknown, ask: FaultAsk): boolean => {
  const { ask: before } = payloadSchema.parse(stored);
  return typeof before === 'string' || typeof ask === 'string'
    ? before === ask
    : before.testSlew === ask.testSlew;
};

/**
 * The event's number. Drafts count upwards from 1 and the browser numbers them ahead, so looks stand
 * below 0, each piece under a number of its own: the event's key then lets each be given out once, and
 * one test slew at most, and no look comes between a draft and its number.
 */
export const lookSequence = (ask: FaultAsk): number =>
  typeof ask === 'string' ? -1 - looks.indexOf(ask) : -1 - looks.length;

/** All that was given out, in order. */
export function looksOf(lookedAt: LookedAt): { looked: Look[]; testSlew: number | null } {
  const asks = lookedAt.map((payload) => payloadSchema.parse(payload).ask);
  return {
    looked: asks.filter((ask) => typeof ask === 'string'),
    testSlew: asks.find((ask) => typeof ask !== 'string')?.testSlew ?? null,
  };
}
