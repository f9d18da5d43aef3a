'use server';

import { cookies } from 'next/headers';
import { redirect } from 'next/navigation';
import { themeCookieMaxAge, themeCookieName, themeFromText } from '@/components/ui/theme';
import { signOut } from '@/lib/auth/session';
import { routes } from '@/lib/routes';

/** Keeps the chosen look; anything else than one of the three is ignored. */
export async function chooseTheme(formData: FormData): Promise<void> {
  const value = formData.get('theme');
  const theme = themeFromText(typeof value === 'string' ? value : null);
  if (theme === null) return;
  const jar = await cookies();
  // Not a secret, and the picker itself writes it when the page has script.
  jar.set(themeCookieName, theme, { path: '/', maxAge: themeCookieMaxAge, sameSite: 'lax' });
}

/** Ends the session and leads to the front page, where nothing of the person is left. */
export async function leave(): Promise<void> {
  await signOut();
  redirect(routes.home());
}
