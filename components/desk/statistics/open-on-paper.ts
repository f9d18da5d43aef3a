/** Of a disclosure: closed on the screen until it is asked for, and open on paper, which nobody can ask. */
export const openOnPaper =
  'print:[&::details-content]:[content-visibility:visible] print:[&>summary]:list-none';
