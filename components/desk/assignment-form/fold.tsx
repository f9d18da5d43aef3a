'use client';

import { useState, type ReactNode } from 'react';

/**
 * A part of a long form that has good defaults: its name and what holds now, the rest folded away. It
 * opens by itself when something in it is wrong and stays open until that is mended, so that the list of
 * problems can lead there.
 */
export function Fold({
  id,
  title,
  now,
  asSection = false,
  startsOpen = false,
  hasProblem = false,
  children,
}: {
  /** Of the heading, where links to this part lead. */
  id?: string;
  title: string;
  /** What is set, in a few words. */
  now: string;
  /** A part of the form in its own right, with a heading; else a part of one. */
  asSection?: boolean;
  startsOpen?: boolean;
  hasProblem?: boolean;
  children: ReactNode;
}) {
  const [open, setOpen] = useState(startsOpen);
  if (hasProblem && !open) setOpen(true);
  const Name = asSection ? 'h2' : 'span';
  return (
    <details
      open={open}
      onToggle={(event) => {
        // Folds within this one tell of themselves.
        if (event.target === event.currentTarget) setOpen(event.currentTarget.open);
      }}
      className="rounded-md border border-line bg-panel px-4 py-3"
    >
      {/* The key press or click of a summary, which is what opens it, comes to it as a click. */}
      <summary
        className="leading-snug"
        onClick={(event) => {
          if (hasProblem && open) event.preventDefault();
        }}
      >
        <Name id={id} className={asSection ? 'inline text-lg font-semibold' : 'font-semibold'}>
          {title}
        </Name>
        <span className="text-soft">: {now}</span>
      </summary>
      <div className="mt-4 space-y-4">{children}</div>
    </details>
  );
}
