import type { ReactNode } from 'react';

/** A part of the page with its own address, and one sentence on what its figures are of. */
export function StatisticsSection({
  id,
  title,
  lead,
  children,
}: {
  id: string;
  title: string;
  lead: string;
  children: ReactNode;
}) {
  return (
    <section id={id} aria-labelledby={`${id}-title`} className="scroll-mt-20 space-y-3">
      <div>
        <h3 id={`${id}-title`} className="text-lg font-semibold">
          {title}
        </h3>
        <p className="max-w-measure text-sm text-soft">{lead}</p>
      </div>
      {children}
    </section>
  );
}
