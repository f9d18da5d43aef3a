/** By attempt, the highest number under which the server took a draft from this tab, since it was loaded. */
const savedHere = new Map<string, number>();

/** Notes that the server has a draft under this number. */
export function noteSaved(attemptKey: string, sequence: number): void {
  savedHere.set(attemptKey, Math.max(sequence, savedHere.get(attemptKey) ?? 0));
}

/** Whether a page that expects `nextSequence` was made before something that this tab has saved. */
export function isOlderThanSaved(attemptKey: string, nextSequence: number): boolean {
  return (savedHere.get(attemptKey) ?? 0) >= nextSequence;
}

/** Notes that the answer is taken: from here on every page of the lab is old, whatever was saved before. */
export const noteHandedIn = (attemptKey: string): void => noteSaved(attemptKey, Infinity);
