/** "1 mark", "2 marks" */
export const marksInWords = (marks: number): string =>
  `${String(marks)} ${marks === 1 ? 'mark' : 'marks'}`;
