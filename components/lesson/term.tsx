'use client';

import { useEffect, useId, useRef, useState, type ReactNode } from 'react';

type TermProps = { definition: string; children: ReactNode };

/**
 * A word of the trade with its definition: on hover, on focus and on a tap. It stays while the
 * pointer is on it and goes with Escape (WCAG 1.4.13). On paper the words stand in a list.
 */
export function Term({ definition, children }: TermProps) {
  const [open, setOpen] = useState(false);
  const [shift, setShift] = useState(0);
  const card = useRef<HTMLSpanElement>(null);
  const id = useId();

  useEffect(() => {
    if (!open) return;
    const box = card.current?.getBoundingClientRect();
    // Pushes the card back inside the window; measured once, while it is shown.
    if (box !== undefined) {
      const room = 8;
      const over = box.right + room - document.documentElement.clientWidth;
      if (over > 0) setShift(-Math.min(over, box.left - room));
    }
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== 'Escape') return;
      setOpen(false);
      setShift(0);
    };
    document.addEventListener('keydown', onKey);
    return () => {
      document.removeEventListener('keydown', onKey);
    };
  }, [open]);

  // Pointer, focus and tap may all ask for it; only hiding puts the card back to its place.
  const show = () => setOpen(true);
  const hide = () => {
    setOpen(false);
    setShift(0);
  };

  return (
    <span className="relative" onPointerEnter={show} onPointerLeave={hide}>
      <button
        type="button"
        aria-describedby={id}
        onFocus={show}
        onBlur={hide}
        onClick={show}
        className="cursor-help font-semibold underline decoration-accent decoration-dotted decoration-2 underline-offset-4 print:no-underline"
      >
        {children}
      </button>
      <span
        ref={card}
        id={id}
        role="tooltip"
        hidden={!open}
        style={{ transform: `translateX(${String(shift)}px)` }}
        className="absolute start-0 top-full z-20 w-max max-w-[min(20rem,85vw)] pt-1 text-start font-normal"
      >
        <span className="block rounded-md border border-strong bg-panel px-3 py-2 text-sm text-ink shadow-[0_2px_0_var(--line)]">
          {definition}
        </span>
      </span>
    </span>
  );
}
