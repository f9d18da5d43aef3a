/** The mark in the table of imports that the demonstration was made to its end. */
export const demoImportName = 'demo';
