import type { Disturbance } from '../alignment/setup';
import type { Evening, Fault, FaultSizes } from './faulty-evening';

/* How the stand stood, and how the tube lay on it, at the start or from some moment on. */

const eightWinds = [0, 45, 90, 135, 180, 225, 270, 315];

export const baseNotLevel: Fault = {
  id: 'base-not-level',
  cures: ['level-the-base'],
  forms: (evening, { tiltDeg, tiltTowardsDeg }) =>
    [...eightWinds, tiltTowardsDeg].map((risesTowardsDeg) => ({
      ...evening,
      setup: { ...evening.setup, base: { tiltDeg, risesTowardsDeg } },
    })),
};

const starting = (evening: Evening, start: Partial<Evening['habits']['start']>): Evening => ({
  ...evening,
  habits: { ...evening.habits, start: { ...evening.habits.start, ...start } },
});

export const tubeNotLevelAtStart: Fault = {
  id: 'tube-not-level-at-start',
  cures: ['level-the-tube-and-restart'],
  forms: (evening, { startAltitudeDeg }) =>
    [startAltitudeDeg, -startAltitudeDeg].map((altitudeDeg) => starting(evening, { altitudeDeg })),
};

/** The needle was taken for true north, with the same hand as would have found true north. */
export const compassNorth: Fault = {
  id: 'compass-north',
  cures: ['set-to-true-north'],
  forms: (evening) => [
    starting(evening, {
      azimuthDeg: evening.habits.start.azimuthDeg + evening.setup.declinationDeg,
      northBy: 'compass',
    }),
  ],
};

export const tripodBumped: Fault = {
  id: 'tripod-bumped',
  cures: ['stand-it-firm-and-align-again'],
  forms: (evening, sizes) =>
    [1, 2].flatMap((afterConfirm) =>
      bumps(afterConfirm, sizes).map((bump): Evening => ({
        ...evening,
        setup: { ...evening.setup, disturbances: [...evening.setup.disturbances, bump] },
        surroundings: { ...evening.surroundings, tripod: 'touched' },
      })),
    ),
};

/** A kick turns a stand, or leaves it leaning. */
const bumps = (
  afterConfirm: number,
  { push: { azimuthDeg }, leanDeg: tiltDeg, tiltTowardsDeg }: FaultSizes,
): Disturbance[] => [
  ...[azimuthDeg, -azimuthDeg].map((turn): Disturbance => ({
    kind: 'base-turns',
    afterConfirm,
    azimuthDeg: turn,
  })),
  ...[...eightWinds, tiltTowardsDeg].map((risesTowardsDeg): Disturbance => ({
    kind: 'base-moves',
    afterConfirm,
    tiltDeg,
    risesTowardsDeg,
  })),
];
