import { z } from 'zod';
import { failure } from './result';

/**
 * When what a form shows was last changed, as the form was opened (UTC, ISO 8601); null: nothing stood
 * there. Left out by whoever replaces it whatever it is.
 */
export type OpenedOn = string | null | undefined;

export const openedOnSchema = z.iso.datetime({ error: 'Load this page again.' }).nullish();

/** Whether the row that a form speaks of is still the one that it was opened on. */
export const isAsOpened = (openedOn: OpenedOn, changedAt: Date | null | undefined): boolean =>
  openedOn === undefined || openedOn === (changedAt?.toISOString() ?? null);

export const changedMeanwhile = () =>
  failure(
    'changed-meanwhile',
    'This was changed meanwhile. Look at what stands there now; save again if yours shall take its place.',
  );
