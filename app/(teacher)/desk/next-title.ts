/** A title to start with: numbered on from the class's others, and none of theirs. */
export function nextTitle(taken: readonly string[]): string {
  let number = taken.length + 1;
  while (taken.includes(titleOf(number))) number += 1;
  return titleOf(number);
}

const titleOf = (number: number): string =>
  number === 1 ? 'Pick the pair' : `Pick the pair ${number}`;
