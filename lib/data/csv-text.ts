/**
 * Text for a cell of a spreadsheet: a cell that would be read as a formula gets an apostrophe in
 * front. Control characters go first, and leading spaces are looked past, as are full-width forms:
 * spreadsheets read those as formulas too (OWASP ASVS 5.0, 1.2.10).
 */
export function csvText(text: string): string {
  const plain = text.replace(/[\p{Cc}\p{Cf}]/gu, ' ');
  const start = plain.trimStart().normalize('NFKC').charAt(0);
  const risky = /^[\t\r]/.test(text) || ['=', '+', '-', '−', '@'].includes(start);
  return risky ? `'${plain}` : plain;
}
