import type { ReactNode } from 'react';
import Link from 'next/link';
import { LogOut } from 'lucide-react';
import type { Viewer } from '@/lib/auth/policy';
import { routes } from '@/lib/routes';
import { classNames } from './class-names';
import { Mark } from './mark';
import { NavLink } from './nav-link';
import { OfflineNotice } from './offline-notice';
import { SiteFooter } from './site-footer';
import type { Theme } from './theme';
import { ThemePicker } from './theme-picker';

type SiteShellProps = {
  viewer: Viewer;
  theme: Theme | null;
  setTheme: (formData: FormData) => Promise<void>;
  signOut: () => Promise<void>;
  /** 'page' keeps to a comfortable width; 'full' hands the whole width to the page. */
  width?: 'page' | 'full';
  children: ReactNode;
};

/** What stands round every page: brand, navigation by viewer, look, connection, footer. */
export function SiteShell({
  viewer,
  theme,
  setTheme,
  signOut,
  width = 'page',
  children,
}: SiteShellProps) {
  return (
    <div className="flex min-h-dvh flex-col">
      <a
        href="#main"
        className="no-print absolute start-3 top-0 z-50 -translate-y-[130%] rounded-b-md bg-accent px-4 py-3 font-semibold text-on-accent focus:translate-y-0"
      >
        Skip to the page
      </a>
      <header className="on-sky no-print">
        <div className="mx-auto flex max-w-[76rem] flex-wrap items-center gap-x-4 px-4 pt-2 sm:flex-nowrap sm:gap-x-8 sm:px-6">
          <Link
            href={routes.home()}
            className="order-1 inline-flex min-h-(--target) items-center gap-2 text-lg font-[650] tracking-[-0.01em] text-on-sky no-underline"
          >
            <Mark className="h-6 w-auto text-sky-lamp" />
            Duskbench
          </Link>
          <nav aria-label="Main" className="order-3 -mx-1 w-full sm:order-2 sm:w-auto sm:flex-1">
            {/* After dark the letters are larger: on a phone the row still ends with "Sign out". */}
            <ul className="flex flex-wrap items-center gap-x-2.5 max-sm:[[data-theme=after-dark]_&]:gap-x-1 max-sm:[[data-theme=after-dark]_&]:text-[0.9rem] sm:gap-x-5">
              <ViewerLinks viewer={viewer} signOut={signOut} />
            </ul>
          </nav>
          <div className="order-2 ms-auto sm:order-3">
            <ThemePicker theme={theme} setTheme={setTheme} />
          </div>
        </div>
        <div aria-hidden="true" className="bench-edge mt-1.5 [--bench:var(--sky-lamp)]" />
      </header>
      <OfflineNotice />
      <main
        id="main"
        tabIndex={-1}
        className={classNames(
          'w-full flex-1',
          width === 'page' && 'mx-auto max-w-[76rem] px-4 pt-6 pb-16 sm:px-6 sm:pt-8 print:p-0',
        )}
      >
        {children}
      </main>
      <SiteFooter />
    </div>
  );
}

function ViewerLinks({ viewer, signOut }: { viewer: Viewer; signOut: () => Promise<void> }) {
  const shared = (
    <>
      <li>
        <NavLink href={routes.labs.all()} section="/labs">
          Labs
        </NavLink>
      </li>
      <li>
        <NavLink href={routes.lessons.all()}>Lessons</NavLink>
      </li>
    </>
  );
  switch (viewer.kind) {
    case 'anonymous':
      return (
        <>
          {shared}
          <li className="ms-auto">
            <NavLink href={routes.signIn.student()}>Sign in</NavLink>
          </li>
        </>
      );
    case 'student':
      return (
        <>
          <li>
            <NavLink href={routes.student.myWork()}>My work</NavLink>
          </li>
          {shared}
          <li className="ms-auto">
            <SignOut name={viewer.displayName} signOut={signOut} />
          </li>
        </>
      );
    case 'cover':
      return (
        <>
          <li>
            <NavLink href={routes.teacher.classLive(viewer.classId)} section="/desk">
              Class
            </NavLink>
          </li>
          {shared}
          <li className="ms-auto">
            <SignOut name={viewer.displayName} signOut={signOut} />
          </li>
        </>
      );
    case 'teacher':
      return (
        <>
          <li>
            <NavLink href={routes.teacher.desk()} except={routes.teacher.account()}>
              Desk
            </NavLink>
          </li>
          {shared}
          <li className="ms-auto">
            <NavLink href={routes.teacher.account()}>Account</NavLink>
          </li>
          <li>
            <SignOut name={viewer.displayName} signOut={signOut} />
          </li>
        </>
      );
  }
}

/** Says who is signed in, which matters on a shared computer. */
function SignOut({ name, signOut }: { name: string; signOut: () => Promise<void> }) {
  return (
    <form action={signOut} data-sign-out className="flex items-center gap-3">
      <span className="hidden max-w-40 truncate text-sm text-on-sky-soft lg:inline" title={name}>
        <span className="sr-only">Signed in as </span>
        {name}
      </span>
      <button
        type="submit"
        className="inline-flex min-h-(--target) items-center gap-1.5 px-1 text-on-sky-soft hover:text-on-sky"
      >
        <LogOut aria-hidden="true" className="hidden size-4 sm:block" />
        Sign out
      </button>
    </form>
  );
}
