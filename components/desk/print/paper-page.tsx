import type { ReactNode } from 'react';
import { PrintButton } from '@/components/ui/print-button';
import { TextLink } from '@/components/ui/text-link';

/** A page of the desk that is a sheet of paper: what it is and the way back stay on the screen. */
export function PaperPage({
  title,
  lead,
  back,
  children,
}: {
  title: string;
  lead: string;
  /** The list of everything for paper. */
  back: string;
  children: ReactNode;
}) {
  return (
    <>
      {/* The class's head is for the screen: a sheet has a head of its own. */}
      <div data-card-sheet="" className="no-print mb-6">
        <p className="text-sm">
          <TextLink href={back}>All printed things</TextLink>
        </p>
        <div className="flex flex-wrap items-baseline justify-between gap-3">
          <h2 className="text-xl font-semibold">{title}</h2>
          <PrintButton />
        </div>
        <p className="mt-1 max-w-measure text-soft">{lead}</p>
      </div>
      {children}
    </>
  );
}
