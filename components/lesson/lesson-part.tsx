import { useId, type ReactNode } from 'react';
import { classNames } from '@/components/ui/class-names';

type LessonPartProps = {
  title: string;
  lead?: string;
  /** Stands out from the running text. */
  boxed?: boolean;
  children: ReactNode;
};

/** A part of a lesson with its heading: worked example, practice, check, field task, summary. */
export function LessonPart({ title, lead, boxed = false, children }: LessonPartProps) {
  const id = useId();
  return (
    <section
      aria-labelledby={id}
      className={classNames('my-8', boxed && 'border-s-4 border-accent bg-panel px-4 py-4 sm:px-6')}
    >
      <h2 id={id} className="text-xl font-semibold">
        {title}
      </h2>
      {lead === undefined ? null : (
        <p className="max-w-measure text-soft print:break-after-avoid">{lead}</p>
      )}
      {children}
    </section>
  );
}

/** An idea that many people start with, named, and what is so instead. */
export function Misconception({ title, children }: { title: string; children: ReactNode }) {
  return (
    <aside className="keep-together my-5 border border-s-4 border-line border-s-caution bg-panel px-4 py-3">
      <p className="font-semibold">
        <span className="text-sm text-caution">Many people think: </span>
        <q>{title}</q>
      </p>
      <div className="[&>p]:my-1">{children}</div>
    </aside>
  );
}
