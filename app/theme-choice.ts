import 'server-only';
import { cookies } from 'next/headers';
import { themeCookieName, themeFromText, type Theme } from '@/components/ui/theme';

/** The look the reader chose; null follows the device. */
export async function readTheme(): Promise<Theme | null> {
  const jar = await cookies();
  return themeFromText(jar.get(themeCookieName)?.value);
}
