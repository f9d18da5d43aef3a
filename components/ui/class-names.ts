/** Joins class names, leaving out what a condition turned off. */
export function classNames(...parts: readonly (string | false | null | undefined)[]): string {
  return parts.filter((part) => typeof part === 'string' && part !== '').join(' ');
}
