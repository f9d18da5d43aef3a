import { useId, type ReactNode } from 'react';
import { classNames } from './class-names';

type PanelProps = {
  title?: ReactNode;
  /** The level of the title in the page's outline. */
  level?: 2 | 3 | 4;
  /** Beside the title: one or two quiet buttons. */
  actions?: ReactNode;
  children: ReactNode;
  className?: string;
};

/** A sheet of paper laid on the bench: a firm upper edge, no shadow. */
export function Panel({ title, level = 2, actions, children, className }: PanelProps) {
  const titleId = useId();
  const Heading = `h${String(level)}` as 'h2' | 'h3' | 'h4';
  return (
    <section
      aria-labelledby={title === undefined ? undefined : titleId}
      className={classNames(
        'min-w-0 rounded-b-lg border border-t-2 border-line border-t-strong bg-panel p-4 sm:p-5',
        className,
      )}
    >
      {title === undefined ? null : (
        <div className="mb-3 flex flex-wrap items-baseline justify-between gap-x-4 gap-y-2">
          <Heading id={titleId} className="text-lg font-semibold">
            {title}
          </Heading>
          {actions === undefined ? null : (
            <div className="no-print flex flex-wrap gap-2">{actions}</div>
          )}
        </div>
      )}
      {children}
    </section>
  );
}
