import { TextLink } from '@/components/ui/text-link';

export type PrintedThing = {
  title: string;
  /** Null: nothing can be printed yet; `what` says why. */
  href: string | null;
  what: string;
};

/** Everything of one kind that is made for paper, each with a sentence. */
export function PrintList({ title, things }: { title: string; things: readonly PrintedThing[] }) {
  return (
    <section aria-label={title} className="border-t-2 border-strong pt-3">
      <h2 className="mb-2 text-xl font-semibold">{title}</h2>
      <dl className="space-y-3">
        {things.map((thing) => (
          <div key={thing.title} className="keep-together">
            <dt className="text-lg font-semibold">
              {thing.href === null ? (
                <span className="text-soft">{thing.title}</span>
              ) : (
                <TextLink href={thing.href}>{thing.title}</TextLink>
              )}
            </dt>
            <dd className="max-w-measure text-soft">{thing.what}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
