import type { Random } from '../variants/random';
import type { ItemFamily } from './item-family';

/** A question that was put before, oldest first; `passed` is null where no answer came. */
export type AskedBefore = { family: string; template: string; passed: boolean | null };

/** So many kinds of question come before one of them comes again, where there are so many. */
const templatesRemembered = 6;

type Candidate = { family: ItemFamily; template: string };

/**
 * Which kind of question comes next, by these rules in turn: none of the last
 * {@link templatesRemembered} kinds, as the same kind again is no evidence; objectives that were never
 * asked about, then those never passed, then the rest; not the family of the last question, so that two
 * things alternate; the family asked least often. Among those left the seed decides. Null for no families.
 * Questions of other families, asked in between, are no matter.
 */
export function chooseTemplate({
  families,
  asked: askedOfAll,
  random,
}: {
  families: readonly ItemFamily[];
  asked: readonly AskedBefore[];
  random: Random;
}): Candidate | null {
  const all = families.flatMap((family) =>
    Object.keys(family.templates).map((template) => ({ family, template })),
  );
  const asked = askedOfAll.filter((one) => families.some(({ id }) => id === one.family));
  const remembered = Math.min(templatesRemembered, all.length - 1);
  const recent = remembered > 0 ? asked.slice(-remembered) : [];
  const fresh = all.filter(({ family, template }) =>
    recent.every((one) => one.family !== family.id || one.template !== template),
  );
  const byObjective = least(fresh, ({ family }) => standingOf(family.objective, families, asked));
  const last = asked.at(-1)?.family;
  const other = byObjective.filter(({ family }) => family.id !== last);
  const alternating = other.length > 0 ? other : byObjective;
  const seldom = least(
    alternating,
    ({ family }) => asked.filter((one) => one.family === family.id).length,
  );
  return random.pick(seldom) ?? null;
}

/** 0: never asked about; 1: asked, never passed; 2: passed at least once. */
function standingOf(
  objective: string,
  families: readonly ItemFamily[],
  asked: readonly AskedBefore[],
): 0 | 1 | 2 {
  const ids = families.filter((family) => family.objective === objective).map(({ id }) => id);
  const about = asked.filter(({ family }) => ids.includes(family));
  if (about.length === 0) return 0;
  return about.some(({ passed }) => passed === true) ? 2 : 1;
}

function least<T>(things: readonly T[], of: (thing: T) => number): T[] {
  const lowest = Math.min(...things.map(of));
  return things.filter((thing) => of(thing) === lowest);
}
