/** The reader's choice of look. Without one, the device's light or dark is followed. */
export const themes = ['light', 'dark', 'after-dark'] as const;
export type Theme = (typeof themes)[number];

export const themeCookieName = 'theme';
/** One year, in seconds. */
export const themeCookieMaxAge = 31_536_000;

export function themeFromText(text: string | null | undefined): Theme | null {
  return themes.find((theme) => theme === text) ?? null;
}
