import 'server-only';
import type { Skill } from '../course/skills';
import { countedDates, observationsNeeded, standingOf, type Standing } from '../mastery/sign-off';
import { db } from './db';
import {
  asNeededLevel,
  asObservation,
  observationSelect,
  readObservation,
  type ReadObservation,
} from './observation-rows';

export type SignOffStanding = {
  standing: Standing;
  /** Evenings that count, and no more than it takes. */
  evenings: number;
};

/**
 * Where each student of a class stands at the telescope, by student and skill; who was not seen at a skill
 * is left out. Of one student alone where `studentId` is given. For the server's own use: it asks for no
 * viewer, and whoever calls it has authorised before.
 */
export async function signOffStandings(
  classId: string,
  studentId?: string,
): Promise<Map<string, Map<Skill, SignOffStanding>>> {
  const { timeZone, signOffLevel } = await db().class.findUniqueOrThrow({
    where: { id: classId },
    select: { timeZone: true, signOffLevel: true },
  });
  const whose = studentId === undefined ? {} : { studentId };
  const rows = await db().observation.findMany({
    where: { retractedAt: null, student: { classId }, ...whose },
    select: observationSelect,
  });
  const seen = new Map<string, Map<Skill, ReadObservation[]>>();
  for (const row of rows.map((one) => readObservation(one, timeZone))) {
    const bySkill = seen.get(row.studentId) ?? new Map<Skill, ReadObservation[]>();
    seen.set(row.studentId, bySkill.set(row.skill, [...(bySkill.get(row.skill) ?? []), row]));
  }
  const needed = asNeededLevel(signOffLevel);
  const standing = (notes: readonly ReadObservation[]): SignOffStanding => {
    const observations = notes.map(asObservation);
    const evenings = Math.min(observationsNeeded, countedDates(observations, needed).length);
    return { standing: standingOf(observations, needed), evenings };
  };
  return new Map(
    [...seen].map(([studentId, bySkill]) => [
      studentId,
      new Map([...bySkill].map(([skill, notes]) => [skill, standing(notes)])),
    ]),
  );
}

/** The skills that each student of a class is signed off in; for the server's own use, as above. */
export async function signedOffSkills(classId: string): Promise<Map<string, Set<Skill>>> {
  const standings = await signOffStandings(classId);
  return new Map(
    [...standings].map(([studentId, bySkill]) => [
      studentId,
      new Set([...bySkill].flatMap(([skill, { standing }]) => (standing.signedOff ? skill : []))),
    ]),
  );
}
