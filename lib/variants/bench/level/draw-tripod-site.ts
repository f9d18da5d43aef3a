import { fewestMoves } from '../../../levelling/fewest-moves';
import { tiltOf } from '../../../levelling/head-slope';
import { legReaches } from '../../../levelling/leg-to-move';
import {
  bubbleOf,
  legIndices,
  slopeOf,
  startOf,
  type LegIndex,
  type LegSite,
  type TripodSite,
  type TripodState,
} from '../../../levelling/tripod';
import { slopeReadUnturned } from '../../../levelling/vial';
import { degreesToRadians } from '../../../units/angle';
import type { Random } from '../../random';
import type { BenchKit } from '../bench-kit';
import type { LevelTemplate } from './level-variant';

/*
 * Where a tripod was set down. One difficulty for all kinds: a head that leans by 2–4.4°, all of it
 * within the vial's glass, to be levelled by two legs (by one where it has to be reckoned beforehand).
 */
const leastTiltDeg = 2;
const mostTiltDeg = 4.4;

/** Soft turf, common practice, no source. Left alone it costs 0.9° or more, which no mark survives. */
const sinksMm = { least: 12, most: 17 };
/** What an untrue vial is out by: 0.85–1.2°. */
const untrueMm = { least: 1.7, most: 2.4 };

/** All feet that will go in have gone in. */
export function settled(site: TripodSite): TripodState {
  const start = startOf(site);
  const [a, b, c] = start.legs;
  const sunk = true;
  return {
    ...start,
    legs: [
      { ...a, sunk },
      { ...b, sunk },
      { ...c, sunk },
    ],
  };
}

export function drawTripodSite(
  random: Random,
  template: LevelTemplate,
  { tripod }: Pick<BenchKit, 'tripod'>,
): TripodSite {
  for (let tries = 0; tries < 2000; tries += 1) {
    const site = draw(random, template, tripod);
    if (serves(site, template)) return site;
  }
  throw new Error(`no ground for a tripod of the kind ${template} in 2000 draws`);
}

function draw(random: Random, template: LevelTemplate, tripod: BenchKit['tripod']): TripodSite {
  const turnDeg = random.integer(0, 119);
  const azimuthDeg = (leg: LegIndex) => turnDeg + 120 * leg;
  const special = legIndices[random.integer(0, 2)] ?? 0;
  const isLow = random.next() < 0.5;
  const towardsDeg =
    template === 'leg-at-its-end' || template === 'read-then-move'
      ? azimuthDeg(special) +
        (isLow ? 180 : 0) +
        (template === 'leg-at-its-end' ? random.integer(-22, 22) : 0)
      : random.integer(0, 359);
  const slope = Math.tan(degreesToRadians(random.between(2.1, 3.9)));
  const rough = template === 'one-slope' || template === 'read-then-move' ? 0 : 6;
  const usualMm = random.integer(
    Math.round(tripod.legMinMm + 0.35 * (tripod.legMaxMm - tripod.legMinMm)),
    Math.round(tripod.legMinMm + 0.6 * (tripod.legMaxMm - tripod.legMinMm)),
  );
  const atEnd = isLow ? tripod.legMaxMm : tripod.legMinMm;
  const startOfLeg = (leg: LegIndex): number =>
    template !== 'leg-at-its-end'
      ? usualMm
      : leg === special
        ? atEnd
        : atEnd + (isLow ? -1 : 1) * random.integer(5, 25);

  const legOf = (leg: LegIndex): LegSite => {
    const startMm = startOfLeg(leg);
    // So that the head, not the ground, leans by what was drawn.
    const lengthPart =
      template === 'leg-at-its-end'
        ? (startMm - atEnd) * Math.cos(degreesToRadians(tripod.splayDeg))
        : 0;
    const rise =
      tripod.footCircleRadiusMm * slope * Math.cos(degreesToRadians(azimuthDeg(leg) - towardsDeg));
    return {
      azimuthDeg: azimuthDeg(leg),
      // Adding nought turns −0, which JSON does not know, into 0.
      groundMm: Math.round(rise - lengthPart + random.between(-rough, rough)) + 0,
      sinksMm:
        template === 'soft-foot' && leg === special
          ? random.integer(sinksMm.least, sinksMm.most)
          : 0,
      startMm,
    };
  };

  return {
    ...tripod,
    legs: [legOf(0), legOf(1), legOf(2)],
    vial: drawVial(random, template),
    armTurns: template === 'untrue-vial',
  };
}

function drawVial(random: Random, template: LevelTemplate): TripodSite['vial'] {
  const markAzimuthDeg = template === 'turned-vial' ? 5 * random.integer(9, 63) : 0;
  if (template !== 'untrue-vial') return { markAzimuthDeg, zeroRightMm: 0, zeroUpMm: 0 };
  const out = random.between(untrueMm.least, untrueMm.most);
  const towards = random.between(0, 2 * Math.PI);
  const hundredths = (mm: number) => Math.round(mm * 100) / 100 + 0;
  return {
    markAzimuthDeg,
    zeroRightMm: hundredths(out * Math.sin(towards)),
    zeroUpMm: hundredths(out * Math.cos(towards)),
  };
}

function serves(site: TripodSite, template: LevelTemplate): boolean {
  const found = startOf(site);
  const firm = settled(site);
  const { tiltDeg } = tiltOf(slopeOf(site, firm));
  if (tiltDeg < leastTiltDeg || tiltDeg > mostTiltDeg) return false;
  if (bubbleOf(site, found).atTheWall || bubbleOf(site, firm).atTheWall) return false;
  const [easiest] = fewestMoves(site, firm);
  if (easiest?.legs.length !== (template === 'read-then-move' ? 1 : 2)) return false;
  if (template === 'leg-at-its-end') return asksForALegAtItsEnd(site, firm);
  return template !== 'turned-vial' || misleadsAnUnturnedHead(site, firm);
}

/** With legs of any length another leg would be the one to move. */
function asksForALegAtItsEnd(site: TripodSite, state: TripodState): boolean {
  const endless = { ...site, legMinMm: 0, legMaxMm: 3 * site.legMaxMm };
  const slope = slopeOf(site, state);
  const [wished] = legReaches(endless, state, slope);
  return wished !== undefined && (wished.toMm < site.legMinMm || wished.toMm > site.legMaxMm);
}

/** Read as though its mark pointed north, the vial names a leg that does little good. */
function misleadsAnUnturnedHead(site: TripodSite, state: TripodState): boolean {
  const slope = slopeOf(site, state);
  const [really] = legReaches(site, state, slope);
  const [seen] = legReaches(site, state, slopeReadUnturned(slope, site.vial.markAzimuthDeg));
  return really !== undefined && seen !== undefined && really.leg !== seen.leg;
}
