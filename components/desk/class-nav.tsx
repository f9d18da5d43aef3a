'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';

/** The pages of one class. On a phone the row scrolls sideways. */
export function ClassNav({ entries }: { entries: readonly { href: string; label: string }[] }) {
  const pathname = usePathname();
  return (
    <nav
      aria-label="Class"
      className="no-print -mx-4 mb-6 overflow-x-auto border-b border-line px-4 sm:mx-0 sm:px-0"
    >
      <ul className="flex min-w-max gap-x-1">
        {entries.map((entry, index) => {
          const here = pathname === entry.href;
          // The first entry is the class's own address, which all the others begin with.
          const within = index > 0 && pathname.startsWith(`${entry.href}/`);
          return (
            <li key={entry.href}>
              <Link
                href={entry.href}
                aria-current={here ? 'page' : within ? 'true' : undefined}
                className="inline-flex min-h-(--target) items-center border-b-4 border-transparent px-3 text-soft no-underline hover:text-ink aria-[current]:border-accent aria-[current]:font-semibold aria-[current]:text-ink"
              >
                {entry.label}
              </Link>
            </li>
          );
        })}
      </ul>
    </nav>
  );
}
