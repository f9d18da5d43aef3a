import Link from 'next/link';
import { routes } from '@/lib/routes';

export function SiteFooter() {
  return (
    <footer className="no-print border-t border-line text-sm text-soft">
      <div className="mx-auto flex max-w-[76rem] flex-wrap items-baseline justify-between gap-x-10 gap-y-2 px-4 py-5 sm:px-6">
        <p className="max-w-measure">
          The labs train. The sign-off at the real telescope decides, and there the Sun, the mains
          and the dark are real: follow your teacher and your local rules.
        </p>
        <p>
          <Link
            href={routes.about()}
            className="link inline-flex min-h-(--target-small) items-center"
          >
            About, sources and privacy
          </Link>
        </p>
      </div>
    </footer>
  );
}
