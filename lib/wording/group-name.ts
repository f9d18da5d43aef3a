/** Letters and digits of a name in small letters, a space between words: what two names agree in. */
const wordsOf = (name: string): string =>
  ` ${name
    .normalize('NFC')
    .toLocaleLowerCase('en')
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '')
    .join(' ')} `;

/** The telescope of a group where its name does not say it already ("Heron", "Team Heron"); else null. */
export const telescopeToName = (group: string, telescope: string | null): string | null =>
  telescope === null || wordsOf(group).includes(wordsOf(telescope)) ? null : telescope;

/** "Red (Heron)"; a group that is called by its telescope is named once: "Heron". */
export function groupWithTelescope(group: string, telescope: string | null): string {
  const named = telescopeToName(group, telescope);
  return named === null ? group : `${group} (${named})`;
}
