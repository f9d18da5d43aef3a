import type { ReactNode } from 'react';
import Link from 'next/link';

export type Crumb = { label: string; href: string };

type PageHeaderProps = {
  title: ReactNode;
  /** One sentence on what this page is for or where things stand. */
  lead?: ReactNode;
  actions?: ReactNode;
  /** The way back up; the page itself is not repeated. */
  crumbs?: readonly Crumb[];
};

export function PageHeader({ title, lead, actions, crumbs }: PageHeaderProps) {
  return (
    <header className="mb-6">
      {crumbs === undefined || crumbs.length === 0 ? null : (
        <nav aria-label="You are in" className="no-print mb-1">
          <ol className="flex flex-wrap items-center gap-x-2 text-sm">
            {crumbs.map((crumb, index) => (
              <li key={crumb.href} className="flex items-center gap-2">
                <Link
                  href={crumb.href}
                  className="link inline-flex min-h-(--target-small) items-center"
                >
                  {crumb.label}
                </Link>
                {index === crumbs.length - 1 ? null : (
                  <span aria-hidden="true" className="text-soft">
                    ›
                  </span>
                )}
              </li>
            ))}
          </ol>
        </nav>
      )}
      <div className="flex flex-wrap items-end justify-between gap-x-8 gap-y-3">
        <div className="min-w-0">
          <h1 className="text-3xl font-[560] tracking-[-0.012em]">{title}</h1>
          {lead === undefined ? null : (
            <div className="mt-1 max-w-measure text-balance text-soft">{lead}</div>
          )}
        </div>
        {actions === undefined ? null : (
          <div className="no-print flex flex-wrap gap-2">{actions}</div>
        )}
      </div>
      <div aria-hidden="true" className="bench-edge mt-4" />
    </header>
  );
}
