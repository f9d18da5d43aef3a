import type { Observation } from './evidence';
import type { Evening, Topic } from './faulty-evening';

/** From here on somebody who looks at the tube at the start sees that it is not level, degrees. */
const seenOffLevelDeg = 1.5;
/** From here on the bubble has left the ring of a small circular level, degrees. */
const bubbleLeavesRingDeg = 1;
/** A dot this much of the field's radius from the middle is seen to stand beside the star. */
const seenBesideShare = 0.25;

/** What was noticed on an evening, topic by topic, told from the set-up itself. */
export const observationsOf = (evening: Evening): readonly Observation[] =>
  evening.noticed.map((topic) => observationOn(topic, evening));

function observationOn(topic: Topic, evening: Evening): Observation {
  const { setup, habits, surroundings } = evening;
  switch (topic) {
    case 'tube':
      return Math.abs(habits.start.altitudeDeg) > seenOffLevelDeg
        ? 'tube-not-level'
        : 'tube-stood-level';
    case 'bubble':
      return setup.base.tiltDeg > bubbleLeavesRingDeg ? 'bubble-off' : 'bubble-in-the-ring';
    case 'north':
      return habits.start.northBy === 'compass' ? 'set-by-compass' : 'set-by-pole-star';
    case 'dot': {
      const asideArcmin = Math.hypot(setup.dot.rightArcmin, setup.dot.upArcmin);
      return asideArcmin > seenBesideShare * evening.centringFieldRadiusArcmin
        ? 'dot-beside-the-star-in-eyepiece'
        : 'dot-agrees-with-eyepiece';
    }
    case 'clutches':
      return surroundings.clutches === 'loose' ? 'clutch-loose' : 'clutches-firm';
    case 'tripod':
      return surroundings.tripod === 'touched' ? 'tripod-was-touched' : 'tripod-untouched';
    case 'lamp':
      return surroundings.lamp === 'dims' ? 'lamp-dimmed-while-slewing' : 'lamp-steady';
    case 'last-moves':
      return habits.lastMoves.every(
        (move) =>
          move.azimuth === setup.finalApproach.azimuth &&
          move.altitude === setup.finalApproach.altitude,
      )
        ? 'last-moves-right-and-up'
        : 'last-moves-any-way';
    case 'cable':
      return surroundings.cable === 'taut' ? 'cable-taut' : 'cable-free';
  }
}
