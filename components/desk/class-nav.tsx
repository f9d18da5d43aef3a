'use client';

import { useEffect, useRef } from 'react';
import Link from 'next/link';
import { usePathname } from 'next/navigation';

type Entry = { href: string; label: string };

/**
 * The pages of one class: during and after a lesson, what is set and taken outside, who is in it. On a
 * phone the row scrolls sideways.
 */
export function ClassNav({ groups }: { groups: readonly (readonly Entry[])[] }) {
  const pathname = usePathname();
  const entries = groups.flat();
  // The gradebook stands at the class's own address, which all the others begin with: the longest wins.
  const [within] = entries
    .filter(({ href }) => pathname === href || pathname.startsWith(`${href}/`))
    .toSorted((one, other) => other.href.length - one.href.length);
  const row = useRef<HTMLElement>(null);
  useEffect(() => {
    const nav = row.current;
    const current = nav?.querySelector('[aria-current]');
    if (nav === null || current === null || current === undefined) return;
    // Into the middle of the row, and of the row alone: the page stays where it is.
    const [link, frame] = [current.getBoundingClientRect(), nav.getBoundingClientRect()];
    nav.scrollLeft += link.left + link.width / 2 - (frame.left + frame.width / 2);
  }, [pathname]);
  return (
    <nav
      ref={row}
      aria-label="Class"
      className="no-print -mx-4 mb-6 overflow-x-auto border-b border-line px-4 sm:mx-0 sm:px-0"
    >
      <ul className="flex min-w-max">
        {groups.map((group, index) =>
          group.map((entry, place) => (
            <li
              key={entry.href}
              className={index > 0 && place === 0 ? 'ml-3 border-l border-line pl-3' : ''}
            >
              <Link
                href={entry.href}
                aria-current={
                  pathname === entry.href ? 'page' : within === entry ? 'true' : undefined
                }
                className="inline-flex min-h-(--target) items-center border-b-4 border-transparent px-3 text-soft no-underline hover:text-ink aria-[current]:border-accent aria-[current]:font-semibold aria-[current]:text-ink"
              >
                {entry.label}
              </Link>
            </li>
          )),
        )}
      </ul>
    </nav>
  );
}
