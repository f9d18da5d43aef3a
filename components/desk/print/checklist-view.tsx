import { checklist, type ChecklistPart, type Who } from './checklist-items';
import styles from './paper.module.css';

const whoText: Readonly<Record<Who, string>> = {
  teacher: 'teacher',
  adult: 'an adult',
  students: 'students',
};

/** The evening's checklist, in two columns on paper. */
export function ChecklistView({ className }: { className: string }) {
  return (
    <article className={`text-ink ${styles.checklist ?? ''}`} aria-label="Checklist">
      <header className="mb-3 print:mb-1.5 border-b-4 border-ink pb-1.5">
        <h2 className="text-2xl font-bold">Checklist for a night outside</h2>
        <p className="flex flex-wrap gap-x-6">
          <span>{className}</span>
          <span>Date ______________</span>
          <span>Teacher in charge ________________________</span>
        </p>
      </header>
      <p className="mb-3 print:mb-1.5 border-2 border-ink px-2 py-1 font-semibold">
        SUN: tube and finder stay capped until it has set. Mains outdoors is the teacher’s alone.
        Two people lift. Thunder ends the evening. Local rules go before this sheet.
      </p>
      <div className="gap-x-8 lg:columns-2 print:columns-2">
        {checklist.map((part) => (
          <Part key={part.title} part={part} />
        ))}
      </div>
    </article>
  );
}

function Part({ part: { title, when, items } }: { part: ChecklistPart }) {
  return (
    <section aria-label={title} className="mb-4 print:mb-1.5">
      <h3 className="text-lg font-bold">
        {title} <span className="text-sm font-normal text-soft">{when}</span>
      </h3>
      <ul>
        {items.map(({ text, who, caution }) => (
          <li
            key={text}
            className="keep-together grid grid-cols-[1.4em_1fr] gap-x-2 border-b border-line py-1 print:py-[0.2mm]"
          >
            <span aria-hidden="true" className="mt-[0.2em] size-[1.05em] border-2 border-ink" />
            <span>
              {caution === undefined ? null : (
                <strong className="font-bold text-caution">{caution} </strong>
              )}
              {text} <span className="text-sm text-soft italic">{whoText[who]}</span>
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}
