/** Letters that Unicode does not take apart into a base and a mark. */
const undecomposed: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ł: 'l',
  ħ: 'h',
  ı: 'i',
  ŋ: 'n',
  ə: 'e',
};

/** Lower case without diacritics; apostrophes go, dashes and dots become spaces: "Saint-Étienne" → "saint etienne". */
export const fold = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[ßæœøđðþłħıŋə]/g, (letter) => undecomposed[letter] ?? letter)
    .replace(/['’‘ʻʼ`´]/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
