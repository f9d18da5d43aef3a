const browsers: readonly [RegExp, string][] = [
  [/\bFirefox\//, 'Firefox'],
  [/\bEdg(e|A|iOS)?\//, 'Edge'],
  [/\bOPR\//, 'Opera'],
  [/\b(Chrome|CriOS|Chromium)\//, 'Chrome'],
  [/\bSafari\//, 'Safari'],
];
const systems: readonly [RegExp, string][] = [
  [/\bCrOS\b/, 'ChromeOS'],
  [/\b(iPhone|iPad)\b/, 'iOS'],
  [/\bAndroid\b/, 'Android'],
  [/\bWindows\b/, 'Windows'],
  [/\bMac OS X\b/, 'macOS'],
  [/\bLinux\b/, 'Linux'],
];
const firstMatch = (list: readonly [RegExp, string][], text: string): string | null =>
  list.find(([pattern]) => pattern.test(text))?.[1] ?? null;

/** Enough of the User-Agent header to recognise one's own session in a list, and no more. */
export function deviceName(userAgent: string | null): string {
  const browser = firstMatch(browsers, userAgent ?? '') ?? 'A browser';
  const system = firstMatch(systems, userAgent ?? '');
  return system === null ? browser : `${browser} on ${system}`;
}
