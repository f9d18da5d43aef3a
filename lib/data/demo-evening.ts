import 'server-only';
import { instantOfLocalTime, localTimeOfInstant } from '../sky/local-time';
import { labOptions, type Lab, type Template } from '../variants/labs';
import { defaultAssignmentPolicy, type AssignmentInput } from './assignment-input';
import { eveningScenario, kitOrFirst, siteOrSchoolYard, tonightAt } from './default-evening';
import type { Place } from './places';

const dayMs = 24 * 3_600_000;

/** 18:00 by the school's clock, that many days from now; six in the evening never falls into a change of clocks. */
export function sixInTheEvening(now: Date, days: number, timeZone: string): string {
  const localDate = localTimeOfInstant(
    new Date(now.getTime() + days * dayMs).toISOString(),
    timeZone,
  ).slice(0, 10);
  const time = instantOfLocalTime(`${localDate}T18:00`, timeZone);
  if (!time.ok) throw new Error(`18:00 does not exist in ${timeZone} on ${localDate}`);
  return time.instant;
}

/** One part that counts as much as any other; by default of every kind of task of the lab. */
export const demoPart = (lab: Lab, templates: readonly Template[] = labOptions[lab].templates) => ({
  lab,
  templates: [...templates],
  windowMinutes: 40,
  minutesAllowed: null,
  weight: 1,
});

/** An assignment under the evening of `now`, due some days later. */
export function demoAssignment(input: {
  lab: Lab;
  title: string;
  place: Place;
  now: Date;
  dueInDays: number;
  kitId: string;
  siteId: string;
  /** By default every kind of task of the lab. */
  templates?: readonly Template[];
  /** Marked parts beside the first. */
  more?: AssignmentInput['parts'];
  /** Slugs of the lessons to read. */
  lessons: AssignmentInput['lessons'];
}): AssignmentInput {
  const { lab, place, now, kitId, siteId, lessons } = input;
  const scenario = eveningScenario({
    place,
    localTime: tonightAt(place, now),
    kit: kitOrFirst(kitId),
    site: siteOrSchoolYard(siteId),
  });
  return {
    title: input.title,
    placeName: place.name,
    scenario,
    kitId,
    siteId,
    parts: [demoPart(lab, input.templates), ...(input.more ?? [])],
    lessons,
    weight: 1,
    needsSignOff: false,
    policy: {
      ...defaultAssignmentPolicy,
      dueAt: sixInTheEvening(now, input.dueInDays, place.timeZone),
    },
    dueTimeZone: place.timeZone,
  };
}
