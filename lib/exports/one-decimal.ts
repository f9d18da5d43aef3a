/** One decimal, half up on the decimal as written: 68.05 becomes 68.1. */
export const oneDecimal = (mark: number): number =>
  Number(`${String(Math.round(Number(`${String(mark)}e1`)))}e-1`);
