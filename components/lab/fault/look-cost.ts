/** PLACEHOLDER */
export const lookCostMarks = 2;
export const testSlewCostMarks = 2;
