/** The work on a bench with the way back and forth through it. */
export type WorkHistory<D> = {
  draft: D;
  past: readonly D[];
  future: readonly D[];
  /** The gesture that the last change belongs to; null where it stands alone. */
  gesture: number | null;
};

/** More steps than anybody takes back; what lies further back is forgotten. */
const mostSteps = 200;

export const startHistory = <D>(draft: D): WorkHistory<D> => ({
  draft,
  past: [],
  future: [],
  gesture: null,
});

/** A change; those of one gesture, such as a drag, are one step of undo. */
export function changed<D>(
  history: WorkHistory<D>,
  draft: D,
  gesture: number | null,
): WorkHistory<D> {
  const goesOn = gesture !== null && gesture === history.gesture;
  const past = goesOn ? history.past : [...history.past, history.draft].slice(-mostSteps);
  return { draft, past, future: [], gesture };
}

/** The same object where there is nothing to take back. */
export function undone<D>(history: WorkHistory<D>): WorkHistory<D> {
  const { past, draft, future } = history;
  if (past.length === 0) return history;
  const [last] = past.slice(-1);
  return last === undefined
    ? history
    : { draft: last, past: past.slice(0, -1), future: [draft, ...future], gesture: null };
}

/** The same object where nothing was taken back. */
export function redone<D>(history: WorkHistory<D>): WorkHistory<D> {
  const { past, draft, future } = history;
  const [next, ...left] = future;
  return next === undefined
    ? history
    : { draft: next, past: [...past, draft], future: left, gesture: null };
}
