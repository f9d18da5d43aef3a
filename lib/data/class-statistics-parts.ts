import {
  column,
  difficulty,
  itemRest,
  itemTotal,
  totals,
  upperLower,
} from '../measurement/discrimination';
import {
  alpha,
  isRightOrWrong,
  kr20,
  kr21,
  reliabilityOfOwnItems,
  standardErrorOfMeasurement,
} from '../measurement/reliability';
import { footingOf } from '../measurement/small-class';
import { borderlineRegression } from '../measurement/standard-setting';
import { mean, sampleDeviation } from '../measurement/spread';
import type { LabResultRow, QuestionSetRow } from './class-statistics-rows';
import { groupedBy } from './grouped-by';

/** How far the marks of one part would come again; all in marks of 100. */
export type Reliability = {
  /** Everybody was marked by the same criteria, or each answered questions of their own. */
  from: 'same-criteria' | 'own-questions';
  people: number;
  items: number;
  mean: number;
  /** Over n − 1. */
  deviation: number;
  /** α; of questions of their own the intraclass correlation of their mean. */
  reliability: number;
  /** Standard error of measurement. */
  error: number;
  /** Where every criterion is all or nothing, each counted as one. */
  kr20: number | null;
  kr21: number | null;
};

export type CriterionStatistics = {
  id: string;
  people: number;
  /** Mean share of what could be earned, 0–1. */
  difficulty: number;
  full: number;
  nothing: number;
  /** Of those who were marked by the same criteria; null where it is not among these. */
  possible: number | null;
  /** Against the other criteria, of those who were marked by the same ones; null where none can be said. */
  itemRest: number | null;
  itemTotal: number | null;
  /** In shares of what could be earned. */
  upperLower: number | null;
};

export type GateStatistics = {
  /** The gate's own name; of a rehearsal with its stage: "level/leg-left-open". */
  id: string;
  attempts: { studentId: string; attemptId: string }[];
};

export type PartFigures = {
  people: number;
  criteria: CriterionStatistics[];
  gates: GateStatistics[];
  reliability: Reliability | null;
  telescope: AtTelescope | null;
};

/** Marks of a lab beside the levels of help that its skill took at the real telescope. */
export type AtTelescope = {
  /** With both. */
  people: number;
  /** The mark that goes with only just signing off; null with too few, or where all had one level. */
  line: { cut: number; rSquared: number | null } | null;
};

/** Half-way between the level that signs off and the one below it. Our judgement. */
const borderline = (signOffLevel: number): number => signOffLevel - 0.5;

/** `levels`: each student's latest level at the lab's skill; null where nobody was seen yet. */
export function atTelescope(
  rows: readonly { studentId: string; total: number }[],
  levels: ReadonlyMap<string, number>,
  signOffLevel: number,
): AtTelescope | null {
  const people = rows.flatMap(({ studentId, total }) => {
    const rating = levels.get(studentId);
    return rating === undefined ? [] : [{ rating, mark: total }];
  });
  if (people.length === 0) return null;
  const found =
    footingOf(people.length) === 'enough'
      ? borderlineRegression(people, borderline(signOffLevel))
      : null;
  return {
    people: people.length,
    line: found === null ? null : { cut: found.cut, rSquared: found.rSquared },
  };
}

/** One part's first attempts at a lab. */
export function labFigures(
  rows: readonly LabResultRow[],
  telescope: AtTelescope | null,
): PartFigures {
  const ids = [...new Set(rows.flatMap(({ criteria }) => criteria.map(({ id }) => id)))];
  const alike = largestGroup(rows, ({ criteria }) =>
    criteria.map(({ id, possible }) => `${id} ${String(possible)}`).join('|'),
  );
  const points = alike.map(({ criteria }) => criteria.map(({ earned }) => earned));
  return {
    people: rows.length,
    telescope,
    criteria: ids.map((id) => criterionFigures(id, { rows, alike, points })),
    gates: gatesOf(rows),
    reliability: reliabilityOf({
      from: 'same-criteria',
      table: points,
      marks: totals(points),
      shares: alike.map(({ criteria }) =>
        criteria.map(({ earned, possible }) => earned / possible),
      ),
    }),
  };
}

/** The same of first attempts at a set of questions: which were asked differs, and no criterion is shared. */
export function setFigures(sets: readonly QuestionSetRow[]): PartFigures {
  const alike = largestGroup(sets, ({ items }) => String(items.length));
  const table = alike.map(({ items }) => items.map(({ share }) => share));
  return {
    people: sets.length,
    criteria: [],
    gates: [],
    telescope: null,
    reliability: reliabilityOf({
      from: 'own-questions',
      table,
      shares: table,
      marks: alike.map(({ total }) => total),
    }),
  };
}

function criterionFigures(
  id: string,
  of: { rows: readonly LabResultRow[]; alike: readonly LabResultRow[]; points: number[][] },
): CriterionStatistics {
  const shares = of.rows.flatMap(({ criteria }) => {
    const found = criteria.find((one) => one.id === id);
    return found === undefined || found.possible === 0 ? [] : [found.earned / found.possible];
  });
  const common = {
    id,
    people: shares.length,
    difficulty: difficulty(shares),
    full: shares.filter((share) => share > 1 - 1e-9).length,
    nothing: shares.filter((share) => share < 1e-9).length,
  };
  const place = of.alike[0]?.criteria.findIndex((one) => one.id === id) ?? -1;
  const possible = of.alike[0]?.criteria[place]?.possible;
  if (possible === undefined || of.alike.length < 2)
    return {
      ...common,
      possible: possible ?? null,
      itemRest: null,
      itemTotal: null,
      upperLower: null,
    };
  return {
    ...common,
    possible,
    itemRest: itemRest(of.points, place),
    itemTotal: itemTotal(of.points, place),
    upperLower: upperLower(column(of.points, place), totals(of.points)) / possible,
  };
}

function gatesOf(rows: readonly LabResultRow[]): GateStatistics[] {
  const failed = new Map<string, GateStatistics['attempts']>();
  for (const { gates, studentId, attemptId } of rows) {
    const ids = new Set(gates.map(({ id, gate }) => (gate === undefined ? id : `${id}/${gate}`)));
    for (const id of ids) {
      const there = failed.get(id);
      if (there === undefined) failed.set(id, [{ studentId, attemptId }]);
      else there.push({ studentId, attemptId });
    }
  }
  return [...failed].map(([id, attempts]) => ({ id, attempts }));
}

function reliabilityOf({
  from,
  table,
  shares,
  marks,
}: {
  from: Reliability['from'];
  table: number[][];
  shares: number[][];
  marks: number[];
}): Reliability | null {
  const reliability = from === 'same-criteria' ? alpha(table) : reliabilityOfOwnItems(table);
  if (reliability === null) return null;
  const deviation = sampleDeviation(marks);
  const counted = from === 'same-criteria' && isRightOrWrong(shares);
  return {
    from,
    people: table.length,
    items: table[0]?.length ?? 0,
    mean: mean(marks),
    deviation,
    reliability,
    error: standardErrorOfMeasurement(deviation, reliability),
    kr20: counted ? kr20(shares) : null,
    kr21: counted ? kr21(shares) : null,
  };
}

function largestGroup<Row>(rows: readonly Row[], key: (row: Row) => string): Row[] {
  return [...groupedBy(rows, key).values()].reduce<Row[]>(
    (largest, group) => (group.length > largest.length ? group : largest),
    [],
  );
}
