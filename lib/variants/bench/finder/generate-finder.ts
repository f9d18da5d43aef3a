import { parallaxOf, sizeArcmin } from '../../../finder/sights';
import type { AzAlt } from '../../../finder/way-past-sun';
import { wrap360 } from '../../../units/angle';
import { randomFrom, type Random } from '../../random';
import type { BenchTaskInput } from '../bench-variant';
import { drawDayAndDusk, type DayAndDusk } from './finder-day';
import { drawFinderHand, drawOffset, type FinderHand } from './finder-hand';
import { lightsAtDusk, lightsInScene } from './finder-lights';
import { drawTargets, drawTubeBefore, toldDistanceM, type Wish } from './finder-scene';
import type { DayTarget, DuskLight, FinderTemplate, FinderVariant } from './finder-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

/** Scenes drawn before the sky is asked which way to look. */
const scenesDrawn = 80;
const lightsHalfWidthDeg = 112;

type Scene = { middleAzimuthDeg: number; targets: DayTarget[]; lights: DuskLight[] };

/**
 * One student's "Finder": things, Sun and evening lights at their places for the scenario's date and
 * place, a finder that points somewhere beside the tube. The same input makes the same task.
 */
export function generateFinder(input: BenchTaskInput<FinderTemplate>): FinderVariant {
  const { seed, scenario, templates, windowMinutes, kit } = input;
  const random = randomFrom(seed);
  const template = random.pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  const hand = drawFinderHand(random, kit);
  const times = drawDayAndDusk(scenario, windowMinutes, random);
  const byDay = template !== 'set-by-another';
  const byDusk = template !== 'free-target' && template !== 'near-then-predict';
  const sun: AzAlt = placeOf(times.afternoon.frame.sun);
  const setOnBefore = byDay ? null : drawSetOnBefore(random);
  const given = template === 'near-then-predict' ? drawGiven(random, hand) : null;
  const scene = drawScene({ random, wishes: wishesFor(template, given), sun, times, byDusk });
  const { middleAzimuthDeg, targets, lights } = scene;
  const best = farthestClear(targets, wishesFor(template, given));
  const reachArcmin = Math.min(hand.eyepieces.low.radiusArcmin, 60);
  return {
    lab: 'finder',
    template,
    generatorVersion,
    kitName: kit.name,
    tubeType: kit.tubeType,
    orientation: kit.orientation,
    ...hand,
    dotAtFirst:
      setOnBefore === null
        ? drawOffset(random, 55, 110)
        : parallaxOf(hand.finder, setOnBefore.distanceM),
    lockedAtFirst: setOnBefore !== null,
    tubeAtFirst: drawTubeBefore(random, byDay ? sun : null, best, middleAzimuthDeg),
    middleAzimuthDeg,
    daysLater: times.daysLater,
    day: byDay ? { localTime: times.afternoon.localTime, sun, targets } : null,
    dusk: byDusk ? { localTime: times.dusk.localTime, lights } : null,
    givenTargetId: given === null ? null : given.kind,
    landings: Object.fromEntries(
      [...targets, ...lights].map(({ id }) => [
        id,
        drawOffset(random, 0.35 * reachArcmin, 0.7 * reachArcmin),
      ]),
    ),
    setOnBefore,
  };
}

const placeOf = ({ azimuthDeg, altitudeDeg }: AzAlt): AzAlt => ({ azimuthDeg, altitudeDeg });

/** What stands in the scene; each of the near ones, and which of the far ones lie by the Sun. */
function wishesFor(template: FinderTemplate, given: Wish | null): readonly Wish[] {
  switch (template) {
    case 'free-target':
      return [
        { kind: 'fence-post', where: 'clear' },
        { kind: 'tree-trunk', where: 'clear' },
        { kind: 'chimney', where: 'by-sun' },
        { kind: 'mast', where: 'clear' },
        { kind: 'hill-tower', where: 'by-sun' },
      ];
    case 'far-ones-by-the-sun':
      return [
        { kind: 'fence-post', where: 'clear' },
        { kind: 'tree-trunk', where: 'clear' },
        { kind: 'chimney', where: 'clear' },
        { kind: 'mast', where: 'by-sun' },
        { kind: 'hill-tower', where: 'by-sun' },
      ];
    case 'day-then-dusk':
      return [
        { kind: 'fence-post', where: 'clear' },
        { kind: 'tree-trunk', where: 'clear' },
        { kind: 'mast', where: 'by-sun' },
        { kind: 'spire', where: 'by-sun' },
      ];
    case 'near-then-predict':
      return [...(given === null ? [] : [given]), { kind: 'spire', where: 'by-sun' }];
    case 'set-by-another':
      return [];
  }
}

function drawScene({
  random,
  wishes,
  sun,
  times,
  byDusk,
}: {
  random: Random;
  wishes: readonly Wish[];
  sun: AzAlt;
  times: DayAndDusk;
  byDusk: boolean;
}): Scene {
  const all = byDusk ? lightsAtDusk(times.dusk.frame) : [];
  for (let draw = 0; draw < scenesDrawn; draw += 1) {
    const side = random.integer(0, 1) === 0 ? 1 : -1;
    const middleAzimuthDeg = wrap360(sun.azimuthDeg + side * random.between(15, 62));
    const lights = lightsInScene(all, middleAzimuthDeg, lightsHalfWidthDeg);
    if (byDusk && lights.length === 0) continue;
    const targets = drawTargets(random, wishes, sun, middleAzimuthDeg);
    if (targets !== null) return { middleAzimuthDeg, targets, lights };
  }
  throw new Error('no scene holds what the task needs');
}

/** The best that can be set on by day; the tube first points so that the way there is to be thought of. */
function farthestClear(targets: readonly DayTarget[], wishes: readonly Wish[]): AzAlt | null {
  const clear = targets.filter(({ kind }) =>
    wishes.some((wish) => wish.kind === kind && wish.where === 'clear'),
  );
  return clear.reduce<DayTarget | null>(
    (best, one) => (best === null || one.distanceM > best.distanceM ? one : best),
    null,
  );
}

/** Off an eyepiece's edge by this share at least, so that "in the field" has one answer. */
const clearOfEdge = 0.14;

/** A near thing whose parallax is plainly inside or outside the view of each eyepiece. */
function drawGiven(random: Random, { finder, eyepieces }: FinderHand): Wish {
  for (;;) {
    const distanceM = toldDistanceM(random.between(6, 24));
    const parallaxArcmin = sizeArcmin(parallaxOf(finder, distanceM));
    const plain = Object.values(eyepieces).every(
      ({ radiusArcmin }) => Math.abs(parallaxArcmin / radiusArcmin - 1) > clearOfEdge,
    );
    if (plain) {
      return { kind: distanceM < 12 ? 'fence-post' : 'tree-trunk', where: 'clear', distanceM };
    }
  }
}

/** What it may be taken for, as multiples of what it was; far enough apart to be told by eye. */
const mistakenFor = [
  [0.55, 1, 1.9, 12],
  [1, 1.8, 3.4, 20],
  [0.3, 0.55, 1, 5],
] as const;

function drawSetOnBefore(random: Random): NonNullable<FinderVariant['setOnBefore']> {
  const factors = random.pick(mistakenFor) ?? mistakenFor[0];
  const nearestM = factors[0] < 0.4 ? 8 : 5.5;
  const distanceM = toldDistanceM(random.between(nearestM, 13));
  return { distanceM, optionsM: factors.map((factor) => toldDistanceM(factor * distanceM)) };
}
