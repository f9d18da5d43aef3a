import { dawesLimitArcsec } from '../../../optics/magnification';
import { driftTimeSeconds } from '../../../optics/drift-time';
import { skyTargets, type ShownTarget, type SkyTarget } from '../../../optics/sky-targets';
import { trueFieldArcmin } from '../../../optics/true-field';
import { randomFrom, type Random } from '../../random';
import type { BenchKit } from '../bench-kit';
import type { BenchTaskInput } from '../bench-variant';
import { does } from './field-eyepieces';
import type { FieldAsk, FieldEyepiece, FieldTemplate, FieldVariant } from './field-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

/** Invented eyepieces that a club's box may hold beside the kit's own. */
const box = [
  { id: 'box-40', focalLengthMm: 40, apparentFieldDeg: 43 },
  { id: 'box-32', focalLengthMm: 32, apparentFieldDeg: 50 },
  { id: 'box-20', focalLengthMm: 20, apparentFieldDeg: 60 },
  { id: 'box-15', focalLengthMm: 15, apparentFieldDeg: 52 },
  { id: 'box-12', focalLengthMm: 12, apparentFieldDeg: 60 },
  { id: 'box-6', focalLengthMm: 6, apparentFieldDeg: 55 },
  { id: 'box-4', focalLengthMm: 4, apparentFieldDeg: 58 },
];

const asksOf: Readonly<Record<FieldTemplate, readonly FieldAsk[]>> = {
  'whole-cluster': ['field', 'drift', 'way'],
  // Where none will do there is no field to reckon.
  'split-the-double': ['limit', 'way'],
  'whole-moon': ['field', 'way'],
  'by-the-drift': ['field', 'way'],
  'lost-star': ['field', 'view'],
};

/** A place asks for something that comes at least this high there. */
const lowestTransitDeg = 25;
/** So many draws find a task that has an answer, and a wrong one; fewer than one seed in a million needs half of them. */
const mostDraws = 400;

export function generateField({
  seed,
  scenario,
  templates,
  kit,
}: BenchTaskInput<FieldTemplate>): FieldVariant {
  const random = randomFrom(seed);
  const template = random.pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  const { latitudeDeg } = scenario.place;
  for (let draw = 0; draw < mostDraws; draw++) {
    const variant = drawn(random, template, kit, latitudeDeg, seed);
    if (variant !== null && isWorthAsking(variant)) return variant;
  }
  throw new Error(`no task of ${template} could be drawn for ${kit.name}`);
}

/** Some of the eyepieces do it and some do not; or, for a double that is too close, none. */
function isWorthAsking(variant: FieldVariant): boolean {
  const good = variant.eyepieces.filter((eyepiece) => does(variant, eyepiece)).length;
  if (variant.target.kind !== 'double') return good >= 1 && good < variant.eyepieces.length;
  // Near the limit of the aperture nobody could say whether it is split.
  const share = variant.target.separationArcsec / dawesLimitArcsec(variant.telescope);
  if (share > 0.8 && share < 1.5) return false;
  return share < 0.8 || (good >= 1 && good < variant.eyepieces.length);
}

function drawn(
  random: Random,
  template: FieldTemplate,
  kit: BenchKit,
  latitudeDeg: number,
  seed: string,
): FieldVariant | null {
  const target = targetFor(random, template, latitudeDeg);
  if (target === null) return null;
  const extra = random.shuffle(box).slice(0, 2);
  const eyepieces: FieldEyepiece[] = random
    .shuffle([...kit.eyepieces, ...extra])
    .map(({ id, focalLengthMm, apparentFieldDeg }) => ({
      id,
      focalLengthMm,
      apparentFieldDeg,
      focusAtMm: random.integer(-140, 140) / 10,
    }));
  const { name: kitName, tubeType, orientation, focalLengthMm, apertureMm } = kit;
  const telescope = { focalLengthMm, apertureMm };
  const aside = (radius: number) => {
    // Between the axes, where nobody could call it straight up or straight right.
    const turn = ((random.integer(0, 3) * 90 + random.between(25, 65)) * Math.PI) / 180;
    return { right: radius * Math.cos(turn), up: radius * Math.sin(turn) };
  };
  const inView = aside(random.between(5, 8));
  const beside = aside(random.between(12, 60));
  const variant: FieldVariant = {
    lab: 'field',
    template,
    generatorVersion,
    kitName,
    tubeType,
    orientation,
    telescope,
    eyepieces,
    target,
    asks: asksOf[template],
    unlabelled: null,
    starInView: inView,
    starOnSky: { rightArcmin: Math.round(beside.right), upArcmin: Math.round(beside.up) },
    starsSeed: `${seed} stars`,
  };
  if (template !== 'by-the-drift') return variant;
  const put = random.pick(eyepieces);
  if (put === undefined) throw new Error('there is no eyepiece');
  return withTimedStar(variant, put);
}

/** Timed by a watch, to the second; null where two eyepieces would have given much the same. */
function withTimedStar(variant: FieldVariant, put: FieldEyepiece): FieldVariant | null {
  const seconds = (eyepiece: FieldEyepiece) =>
    driftTimeSeconds(trueFieldArcmin(variant.telescope, eyepiece), variant.target.declinationDeg);
  const timed = seconds(put);
  const others = variant.eyepieces.filter(({ id }) => id !== put.id).map(seconds);
  if (others.some((other) => other / timed > 0.8 && other / timed < 1.25)) return null;
  return {
    ...variant,
    unlabelled: { eyepieceId: put.id, timedSeconds: Math.round(timed) },
  };
}

function targetFor(
  random: Random,
  template: FieldTemplate,
  latitudeDeg: number,
): FieldVariant['target'] | null {
  if (template === 'whole-moon')
    return {
      kind: 'moon',
      id: 'moon',
      name: 'the Moon',
      declinationDeg: random.integer(-25, 25),
    };
  const rises = ({ declinationDeg }: { declinationDeg: number }): boolean =>
    90 - Math.abs(latitudeDeg - declinationDeg) >= lowestTransitDeg;
  if (template === 'by-the-drift' || template === 'lost-star') {
    const declinationDeg = random.integer(-60, 70);
    return rises({ declinationDeg })
      ? { kind: 'star', id: 'star', name: 'a bright star', declinationDeg }
      : null;
  }
  const kind = template === 'whole-cluster' ? 'cluster' : 'double';
  const picked = random.pick(skyTargets.filter((one) => one.kind === kind && rises(one)));
  return picked === undefined ? null : withoutPlace(picked);
}

/** An attempt keeps what its marks hang on: where in the sky the target stands is none of it. */
function withoutPlace(target: SkyTarget): ShownTarget {
  const { id, name, declinationDeg } = target;
  return target.kind === 'cluster'
    ? { id, name, kind: target.kind, declinationDeg, sizeArcmin: target.sizeArcmin }
    : { id, name, kind: target.kind, declinationDeg, separationArcsec: target.separationArcsec };
}
