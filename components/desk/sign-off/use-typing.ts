import { useEffect, useState } from 'react';
import type { OutgoingNote } from '@/lib/mastery/sign-off-note';
import type { Typed } from './typed-notes';

const question = 'Levels that you typed in are not saved yet. Leave all the same?';

/** The cells of the typing table, until they are saved; an undo of the notes puts them back. */
export function useTyping() {
  const [typed, setTyped] = useState<Typed>({});
  const [saved, setSaved] = useState<{ typed: Typed; keys: readonly string[] } | null>(null);
  const unsaved = Object.values(typed).some((text) => text.trim() !== '');

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

  return {
    typed,
    unsaved,
    savedKeys: saved?.keys ?? [],
    type: (name: string, text: string) => {
      setTyped({ ...typed, [name]: text });
      setSaved(null);
    },
    save: (notes: readonly OutgoingNote[]) => {
      setSaved({ typed, keys: notes.map(({ key }) => key) });
      setTyped({});
    },
    /** What was typed before stands again, where an undo takes its notes back. */
    putBack: (notes: readonly OutgoingNote[]) => {
      if (saved === null || !notes.some(({ key }) => saved.keys.includes(key))) return;
      setTyped({ ...saved.typed, ...typed });
      setSaved(null);
    },
  };
}
export type Typing = ReturnType<typeof useTyping>;
