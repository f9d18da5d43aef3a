import { useEffect, useState } from 'react';
import type { Conditions, OutgoingNote } from '@/lib/mastery/sign-off-note';
import { isFilled, typedName, type Typed } from './typed-notes';

const question = 'Levels that you typed in are not saved yet. Leave all the same?';

/** What stands on the head of the paper. */
type PaperEvening = {
  /** YYYY-MM-DD; empty until it is given, since the paper's evening is rarely today's. */
  date: string;
  /** Null: as set for tonight. */
  conditions: Conditions | null;
};
type SavedCell = { name: string; text: string; key: string };
type Saved = { evening: PaperEvening; cells: readonly SavedCell[] };

/** What the last saving or its undo has done, until the typing goes on. */
export type TypingNews =
  | { kind: 'saved'; keys: readonly string[] }
  | {
      kind: 'put-back';
      /** YYYY-MM-DD. */
      date: string;
      count: number;
      /** Something else was typed there since: that stands. */
      left: readonly SavedCell[];
      /** Others were typed since under another date. */
      mixed: boolean;
    };

/** The cells of the typing table, until they are saved; an undo of the notes puts them back. */
export function useTyping() {
  const [typed, setTyped] = useState<Typed>({});
  const [evening, setEvening] = useState<PaperEvening>({ date: '', conditions: null });
  const [saved, setSaved] = useState<Saved | null>(null);
  const [news, setNews] = useState<TypingNews | null>(null);
  const unsaved = Object.values(typed).some(isFilled);
  useAskBeforeLeaving(unsaved);

  return {
    typed,
    evening,
    setEvening,
    unsaved,
    news,
    type: (name: string, text: string) => {
      setTyped((before) => ({ ...before, [name]: text }));
      setNews(null);
    },
    /** Only the cells that became these notes are emptied: others may be of another group's form. */
    save: (notes: readonly OutgoingNote[]) => {
      const cells = notes.map(({ studentId, skill, key }) => {
        const name = typedName({ id: studentId }, skill);
        return { name, key, text: typed[name] ?? '' };
      });
      setSaved({ evening, cells });
      setTyped(without(typed, cells));
      setNews({ kind: 'saved', keys: cells.map(({ key }) => key) });
    },
    /** What was typed before stands again, where an undo takes its notes back. */
    putBack: (notes: readonly OutgoingNote[]) => {
      if (saved === null) return;
      const undone = saved.cells.filter((cell) => notes.some(({ key }) => key === cell.key));
      if (undone.length === 0) return;
      const back = undone.filter(({ name }) => !isFilled(typed[name] ?? ''));
      const left = undone.filter((cell) => !back.includes(cell) && typed[cell.name] !== cell.text);
      // Which of two evenings the date then stands for, only the teacher knows.
      const mixed = unsaved && evening.date !== saved.evening.date;
      setTyped({ ...typed, ...Object.fromEntries(back.map(({ name, text }) => [name, text])) });
      setEvening(mixed ? { ...evening, date: '' } : saved.evening);
      setSaved(null);
      const { date } = saved.evening;
      setNews({ kind: 'put-back', date, count: undone.length - left.length, left, mixed });
    },
  };
}
export type Typing = ReturnType<typeof useTyping>;

const without = (typed: Typed, cells: readonly SavedCell[]): Typed =>
  Object.fromEntries(
    Object.entries(typed).filter(([name]) => cells.every((cell) => cell.name !== name)),
  );

function useAskBeforeLeaving(unsaved: boolean): void {
  useEffect(() => {
    if (!unsaved) return;
    const warn = (event: BeforeUnloadEvent): void => event.preventDefault();
    // A link within the product loads no page, so that the browser itself would ask nothing.
    const follow = (event: MouseEvent): void => {
      const link = event.target instanceof Element ? event.target.closest('a[href]') : null;
      if (link === null || event.ctrlKey || event.metaKey || event.shiftKey) return;
      if (window.confirm(question)) return;
      event.preventDefault();
      event.stopPropagation();
    };
    window.addEventListener('beforeunload', warn);
    document.addEventListener('click', follow, { capture: true });
    return () => {
      window.removeEventListener('beforeunload', warn);
      document.removeEventListener('click', follow, { capture: true });
    };
  }, [unsaved]);
}
