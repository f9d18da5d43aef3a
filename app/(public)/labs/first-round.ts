/** What the form sends instead of a seed: the page then draws one for a first round. */
export const firstRound = { name: 'round', value: 'first' } as const;
