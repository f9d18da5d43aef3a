/** As many as a class holds and as many letters as a card does: what browser and server hold to alike. */
export const mostStudents = 500;
export const longestDisplayName = 60;

export type NameFault =
  | { code: 'empty' }
  | { code: 'too-long'; length: number }
  | { code: 'formula' }
  | { code: 'email' };

/** One line, one kind of space, composed accents: two spellings that look the same are the same. */
export function cleanName(text: string): string {
  return text
    .normalize('NFC')
    .replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, ' ')
    .replace(/\s+/gu, ' ')
    .trim();
}

/** Names that differ only in capitals or accents' encoding count as the same. */
export const sameNameKey = (name: string): string => cleanName(name).toLocaleLowerCase('en');

/**
 * What keeps a cleaned name out. One that begins as a formula does is none: spreadsheets would run it
 * when the roster is taken out again (OWASP ASVS 5.0, 1.2.10; full-width forms count too).
 */
export function faultOfName(name: string): NameFault | null {
  if (name === '') return { code: 'empty' };
  if (name.length > longestDisplayName) return { code: 'too-long', length: name.length };
  if (['=', '+', '-', '−', '@'].includes(name.normalize('NFKC').trimStart().charAt(0))) {
    return { code: 'formula' };
  }
  return /\S@\S+\.\S/.test(name) ? { code: 'email' } : null;
}

/** What is wrong and what to do; for a row or a field, which is named beside it. */
export function nameFaultText(fault: NameFault): string {
  switch (fault.code) {
    case 'empty':
      return 'No name here. Type one, or leave the row out.';
    case 'too-long':
      return `${String(fault.length)} characters; at most ${String(longestDisplayName)} fit on a card. Shorten it.`;
    case 'formula':
      return 'This begins with =, +, − or @, as a formula does. Take the sign away, or type the name.';
    case 'email':
      return 'This looks like an email address. Type a name or a pseudonym instead.';
  }
}
