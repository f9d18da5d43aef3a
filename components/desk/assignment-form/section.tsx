import type { ReactNode } from 'react';

/** One part of a long form, with its heading. */
export function Section({
  id,
  title,
  lead,
  children,
}: {
  id: string;
  title: string;
  lead?: ReactNode;
  children: ReactNode;
}) {
  return (
    <section aria-labelledby={id} className="space-y-4 border-t border-line pt-5">
      <div>
        <h2 id={id} className="text-xl font-semibold">
          {title}
        </h2>
        {lead === undefined ? null : <div className="mt-1 max-w-measure text-soft">{lead}</div>}
      </div>
      {children}
    </section>
  );
}

/** What every section is given. */
export type SectionProps<Draft> = {
  draft: Draft;
  change: (patch: Partial<Draft>) => void;
  problemAt: (field: string) => string | null;
};
