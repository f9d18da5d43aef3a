import type { ReactNode } from 'react';
import { SiteShell } from '@/components/ui/site-shell';
import { getViewer } from '@/lib/auth/session';
import { chooseTheme, leave } from './shell-actions';
import { readTheme } from './theme-choice';

/** The shell for whoever is asking. A courtesy only: what a page may show is decided in lib/data. */
export async function PageFrame({
  width,
  children,
}: {
  /** 'full' hands the whole width to the page, as a lab needs it. */
  width?: 'page' | 'full';
  children: ReactNode;
}) {
  const [viewer, theme] = await Promise.all([getViewer(), readTheme()]);
  return (
    <SiteShell viewer={viewer} theme={theme} setTheme={chooseTheme} signOut={leave} width={width}>
      {children}
    </SiteShell>
  );
}
