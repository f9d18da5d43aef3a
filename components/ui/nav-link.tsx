'use client';

import type { ReactNode } from 'react';
import Link, { useLinkStatus } from 'next/link';
import { usePathname } from 'next/navigation';

type NavLinkProps = {
  href: string;
  /** The part of the address that this entry stands for; its own address by default. */
  section?: string;
  /** An address within that part which has an entry of its own. */
  except?: string;
  children: ReactNode;
};

/** An entry of the main navigation; it knows when its part of the site is open. */
export function NavLink({ href, section = href, except, children }: NavLinkProps) {
  const pathname = usePathname();
  const here = pathname === href;
  const within = here || (pathname.startsWith(`${section}/`) && pathname !== except);
  return (
    <Link
      href={href}
      aria-current={here ? 'page' : within ? 'true' : undefined}
      className="relative inline-flex min-h-(--target) items-center px-1 text-on-sky-soft no-underline hover:text-on-sky aria-[current]:font-semibold aria-[current]:text-on-sky aria-[current]:after:absolute aria-[current]:after:inset-x-1 aria-[current]:after:bottom-0.5 aria-[current]:after:h-[3px] aria-[current]:after:bg-sky-lamp"
    >
      {children}
      <OnItsWay />
    </Link>
  );
}

function OnItsWay() {
  const { pending } = useLinkStatus();
  return pending ? (
    <span
      aria-hidden="true"
      className="absolute inset-x-1 bottom-0.5 h-[3px] animate-pulse bg-sky-lamp"
    />
  ) : null;
}
