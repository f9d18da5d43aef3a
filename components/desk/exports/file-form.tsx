import type { ReactNode } from 'react';
import { Button } from '@/components/ui/button';
import { Panel } from '@/components/ui/panel';

/**
 * One file: what is in it, for whom, what is not, the choices it leaves, and its button. A plain form to
 * the file's address: it works without scripts, and nothing is sent but what was ticked.
 */
export function FileForm({
  title,
  href,
  inIt,
  forWhom,
  notInIt,
  submitLabel,
  children,
}: {
  title: string;
  href: string;
  inIt: ReactNode;
  forWhom: ReactNode;
  notInIt: ReactNode;
  submitLabel: string;
  children?: ReactNode;
}) {
  return (
    <Panel title={title} level={3}>
      <form method="get" action={href} className="flex flex-col gap-3">
        <dl className="grid max-w-measure grid-cols-[auto_minmax(0,1fr)] gap-x-3 gap-y-1">
          <Row term="In it">{inIt}</Row>
          <Row term="For">{forWhom}</Row>
          <Row term="Not in it">{notInIt}</Row>
        </dl>
        {children}
        <div>
          <Button type="submit">{submitLabel}</Button>
        </div>
      </form>
    </Panel>
  );
}

function Row({ term, children }: { term: string; children: ReactNode }) {
  return (
    <>
      <dt className="text-soft">{term}</dt>
      <dd>{children}</dd>
    </>
  );
}
