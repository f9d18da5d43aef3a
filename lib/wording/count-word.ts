const words = [
  ...['no', 'one', 'two', 'three', 'four', 'five', 'six'],
  ...['seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'],
] as const;

/** "two": a whole number from none to twelve in words, any other in figures. */
export const countWord = (count: number): string => words[count] ?? String(count);

/** "one attempt", "two attempts", "15 attempts". */
export const counted = (count: number, one: string, more: string): string =>
  `${countWord(count)} ${count === 1 ? one : more}`;
