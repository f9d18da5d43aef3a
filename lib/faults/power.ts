import type { Evening, Fault } from './faulty-evening';

/** The supply falls below what the computer needs while the motors run, between the stars or after. */
export const supplyReset: Fault = {
  id: 'supply-reset',
  cures: ['fresh-cells-and-align-again'],
  forms: (evening) =>
    [1, 2].map((afterConfirm): Evening => ({
      ...evening,
      setup: {
        ...evening.setup,
        disturbances: [...evening.setup.disturbances, { kind: 'computer-resets', afterConfirm }],
      },
      surroundings: { ...evening.surroundings, lamp: 'dims' },
    })),
};
