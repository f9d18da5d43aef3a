/** "Mars": the first letter large, the rest as it is. */
export const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The first letter small: a title in the middle of a sentence. */
export const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
