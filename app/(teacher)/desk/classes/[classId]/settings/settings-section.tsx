import type { ReactNode } from 'react';

/** One matter of the settings: its name on the left where there is room, what can be done beside it. */
export function SettingsSection({
  id,
  title,
  lead,
  children,
}: {
  id: string;
  title: string;
  lead: ReactNode;
  children: ReactNode;
}) {
  return (
    <section
      aria-labelledby={id}
      className="grid gap-x-10 gap-y-4 border-t border-line py-7 first:border-t-0 first:pt-0 lg:grid-cols-[17rem_minmax(0,1fr)]"
    >
      <div>
        <h2 id={id} tabIndex={-1} className="scroll-mt-4 text-xl font-semibold">
          {title}
        </h2>
        <div className="mt-1 max-w-measure text-sm text-soft">{lead}</div>
      </div>
      <div className="min-w-0 space-y-6">{children}</div>
    </section>
  );
}
