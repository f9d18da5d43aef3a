/** How much longer a student may take where time counts: a factor, or as long as it takes. */
export const extraTimes = ['none', '1.25', '1.5', '2', 'untimed'] as const;
export type ExtraTime = (typeof extraTimes)[number];
