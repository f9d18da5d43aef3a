import type { CellKind } from '../../../power/cell';
import { otherEnd } from '../../../power/holder';
import { holderPlug } from '../../../power/power-bench';
import { randomFrom, type Random } from '../../random';
import type { BenchTaskInput } from '../bench-variant';
import { drawBench, drawNeeds, drawSprings, inOrderOfTags, tagged } from './draw-power-bench';
import { drawNight } from './draw-power-night';
import { drawSupplies } from './draw-supplies';
import type { PowerTemplate, PowerVariant } from './power-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

type Made = Pick<PowerVariant, 'setup' | 'night'>;

/**
 * One student's task. Tags, springs, currents and places are drawn anew for each, so that another's
 * answer fits in nobody's bench; how much there is to do stays the same within a template.
 */
export function generatePower({
  seed,
  templates,
  kit,
}: BenchTaskInput<PowerTemplate>): PowerVariant {
  const random = randomFrom(seed);
  const template = random.pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  return {
    lab: 'power',
    template,
    generatorVersion,
    kitName: kit.name,
    tubeType: kit.tubeType,
    ...make[template](random),
  };
}

const make: Readonly<Record<PowerTemplate, (random: Random) => Made>> = {
  'fill-the-holder': fillTheHolder,
  'choose-the-supply': (random) => {
    const needs = {
      ...drawNeeds(random),
      centre: oneOf(random, ['positive', 'negative'] as const),
    };
    return drawBench(random, { needs, springEnds: [], supplies: drawSupplies(needs, random) });
  },
  'find-the-reversed': findTheReversed,
  'last-the-night': drawNight,
  'switch-on': switchOn,
};

const fresh = (random: Random): number => random.integer(95, 100) / 100;
const used = (random: Random): number => random.integer(10, 45) / 100;

const several = <T>(count: number, one: () => T): T[] => Array.from({ length: count }, one);

/** Eight that belong together among used ones and others. */
function fillTheHolder(random: Random): Made {
  const [kind = 'alkaline', other = 'zinc-carbon'] = random.shuffle<CellKind>([
    'alkaline',
    'lithium',
    'nickel-metal-hydride',
  ]);
  const strangers = random.shuffle<CellKind>([other, 'zinc-carbon', other]).slice(0, 2);
  const cells = tagged(random, [
    ...several(8, () => ({ kind, left: fresh(random) })),
    ...several(2, () => ({ kind, left: used(random) })),
    ...strangers.map((stranger) => ({ kind: stranger, left: fresh(random) })),
  ]);
  return drawBench(random, { cells: inOrderOfTags(cells) });
}

/** A closed holder with one or two cells the wrong way round. */
function findTheReversed(random: Random): Made {
  const springEnds = drawSprings(random);
  const kind: CellKind = 'alkaline';
  const cells = tagged(
    random,
    springEnds.map(() => ({ kind, left: fresh(random) })),
  );
  const reversed = random.shuffle(springEnds.map((_, i) => i)).slice(0, random.integer(1, 2));
  const bays = cells.map(({ id }, i) => {
    const spring = springEnds[i] ?? 'top';
    return { cell: id, plusEnd: reversed.includes(i) ? spring : otherEnd(spring) };
  });
  return drawBench(random, {
    springEnds,
    cells: inOrderOfTags(cells),
    start: { bays, plugged: null, handControl: false, on: false },
  });
}

/** A bench as somebody left it: something is plugged or switched on, and one bay is not as it should be. */
function switchOn(random: Random): Made {
  const springEnds = drawSprings(random);
  const kind = oneOf(random, ['alkaline', 'lithium'] as const);
  const defect = oneOf(random, ['empty', 'reversed', 'used', 'other-kind'] as const);
  const at = random.integer(0, springEnds.length - 1);
  const poor =
    defect === 'other-kind'
      ? { kind: 'nickel-metal-hydride' as const, left: fresh(random) }
      : { kind, left: used(random) };
  const all = tagged(random, [...springEnds.map(() => ({ kind, left: fresh(random) })), poor]);
  const [poorCell] = all.slice(-1);
  const poorSits = defect === 'used' || defect === 'other-kind';
  const bays = springEnds.map((spring, i) => {
    const cell = i === at && poorSits ? poorCell : all[i];
    if (cell === undefined || (i === at && defect === 'empty')) return null;
    return {
      cell: cell.id,
      plusEnd: i === at && defect === 'reversed' ? spring : otherEnd(spring),
    };
  });
  const left = oneOf<{ plugged: string | null; on: boolean }>(random, [
    { plugged: holderPlug, on: true },
    { plugged: holderPlug, on: false },
    { plugged: null, on: true },
  ]);
  return drawBench(random, {
    springEnds,
    cells: inOrderOfTags(all),
    start: { bays, ...left, handControl: false },
  });
}

const oneOf = <T>(random: Random, items: readonly [T, ...T[]]): T => random.pick(items) ?? items[0];
