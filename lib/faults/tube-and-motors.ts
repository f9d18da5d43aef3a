import type { Disturbance } from '../alignment/setup';
import { dotAtInfinity } from '../finder/dot-residual';
import type { Evening, Fault, LastMove, Surroundings } from './faulty-evening';

/* What lies between the readings and where somebody looks: finder, play, clutches, balance, cable. */

/** Axis to axis, of a finder that sits as far above the tube as beside it (design, "Finder": 80 mm). */
const finderApartMm = 80;

/** Set on something near, and then trusted: stars are brought under the dot and looked at no closer. */
export const finderOff: Fault = {
  id: 'finder-off',
  cures: ['set-the-finder'],
  forms: (evening, { finderDistanceM, finderSide }) => {
    const aside = finderApartMm * Math.SQRT1_2;
    return [finderSide, -finderSide].map((side) => ({
      ...evening,
      setup: {
        ...evening.setup,
        dot: dotAtInfinity({
          finderRightMm: side * aside,
          finderUpMm: aside,
          distanceM: finderDistanceM,
        }),
      },
      habits: { ...evening.habits, centresBy: 'dot' as const },
    }));
  },
};

/** The last moves at the two stars, with the final approach (+1) or against it (−1). */
function lastMoving(evening: Evening, ways: readonly [1 | -1, 1 | -1], play = 1): Evening {
  const { finalApproach, backlashArcmin } = evening.setup;
  const move = (way: 1 | -1): LastMove =>
    way === 1
      ? finalApproach
      : { azimuth: turned(finalApproach.azimuth), altitude: turned(finalApproach.altitude) };
  return {
    ...evening,
    setup: {
      ...evening.setup,
      backlashArcmin: {
        azimuth: play * backlashArcmin.azimuth,
        altitude: play * backlashArcmin.altitude,
      },
    },
    habits: { ...evening.habits, lastMoves: [move(ways[0]), move(ways[1])] },
  };
}
const turned = (way: 1 | -1): 1 | -1 => (way === 1 ? -1 : 1);

/** How much more play worn gears have. */
const wornGears = [1, 3];

/** Play that nobody took up: stars were stopped at from whichever side they came. */
export const backlash: Fault = {
  id: 'backlash',
  cures: ['finish-moves-the-right-way'],
  forms: (evening) =>
    wornGears.flatMap((play) => [
      lastMoving(evening, [1, -1], play),
      lastMoving(evening, [-1, 1], play),
      lastMoving(evening, [-1, -1], play),
    ]),
};

/** Always the same way, and always the wrong one. */
export const wrongFinalApproach: Fault = {
  id: 'wrong-final-approach',
  cures: ['finish-moves-the-right-way'],
  forms: (evening) => [lastMoving(evening, [-1, -1])],
};

function slipping(
  evening: Evening,
  slips: readonly (readonly [afterConfirm: number, azimuthDeg: number, altitudeDeg: number])[],
  surroundings: Partial<Surroundings>,
): Evening {
  return {
    ...evening,
    setup: {
      ...evening.setup,
      disturbances: [
        ...evening.setup.disturbances,
        ...slips.map(([afterConfirm, azimuthDeg, altitudeDeg]): Disturbance => ({
          kind: 'axis-slips',
          afterConfirm,
          azimuthDeg,
          altitudeDeg,
        })),
      ],
    },
    surroundings: { ...evening.surroundings, ...surroundings },
  };
}

/** A tube that is heavy at one end creeps down or up, and the reading stands. */
export const tubeSlips: Fault = {
  id: 'tube-slips',
  cures: ['balance-and-tighten-the-tube'],
  forms: (evening, { push: { altitudeDeg } }) =>
    [altitudeDeg, -altitudeDeg].flatMap((slip) => [
      slipping(evening, [[1, 0, slip]], {}),
      slipping(evening, [[2, 0, slip]], {}),
      slipping(
        evening,
        [
          [1, 0, slip],
          [2, 0, slip],
        ],
        {},
      ),
    ]),
};

/** One clutch or both let the tube stay behind or be pushed: on the way to the first star too. */
export const clutchUnlocked: Fault = {
  id: 'clutch-unlocked',
  cures: ['lock-the-clutches-and-align-again'],
  forms: (evening, { push }) =>
    [1, -1].flatMap((sign) => {
      const [azimuthDeg, altitudeDeg] = [sign * push.azimuthDeg, sign * push.altitudeDeg];
      const loose = { clutches: 'loose' } as const;
      return (
        [
          [azimuthDeg, altitudeDeg],
          [azimuthDeg, 0],
          [0, altitudeDeg],
        ] as const
      ).flatMap(([azimuth, altitude]) => [
        slipping(evening, [[1, azimuth, altitude]], loose),
        slipping(evening, [[2, azimuth, altitude]], loose),
        slipping(
          evening,
          [
            [0, azimuth, altitude],
            [1, azimuth, altitude],
          ],
          loose,
        ),
      ]);
    }),
};

/** A cable wound round a leg holds the tube back along the horizon while the motors turn. */
export const cableSnag: Fault = {
  id: 'cable-snag',
  cures: ['free-the-cable-and-align-again'],
  forms: (evening, { push: { azimuthDeg } }) =>
    [azimuthDeg, -azimuthDeg].flatMap((slip) =>
      [1, 2].map((afterConfirm) => slipping(evening, [[afterConfirm, slip, 0]], { cable: 'taut' })),
    ),
};
