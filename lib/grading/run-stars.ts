import type { ConfirmedMoment, Run } from '../alignment/run';
import { tubePath } from '../alignment/run-path';
import { degreesToRadians } from '../units/angle';
import { azAltFromDirection } from '../units/vector';
import { reallyInField, type ReallyInField } from './really-in-field';
import type { RunStarResult } from './run-result';

/** A confirmed star as it is marked: what the learner is shown, and what the mark comes from. */
export type JudgedStar = {
  shown: RunStarResult;
  found: ReallyInField;
  /** From what was confirmed to where the readings say the tube pointed. */
  errorArcmin: number;
};

const mostPathPoints = 120;
/** Play that is left in the readings and is finer than any eyepiece shows does no harm. */
const harmlessPlayArcmin = 0.2;

/** Judges the confirmed stars of a finished run, in order. */
export function judgeStars(run: Run): JudgedStar[] {
  return run.confirms.map((moment, i) => judgeStar(run, moment, run.confirms[i - 1]?.atMs ?? 0));
}

function judgeStar(run: Run, moment: ConfirmedMoment, fromMs: number): JudgedStar {
  const found = reallyInField(run.input, moment);
  const { azimuth, altitude } = moment.playArcmin;
  // A turn in azimuth moves the tube on the sky by its cosine of altitude.
  const { altitudeDeg } = azAltFromDirection(moment.view.tube);
  const play = { right: azimuth * Math.cos(degreesToRadians(altitudeDeg)), up: altitude };
  const playArcmin = Math.hypot(play.right, play.up);
  const { offset } = found;
  return {
    found,
    errorArcmin:
      offset === null
        ? found.offsetArcmin
        : Math.hypot(offset.rightArcmin + play.right, offset.upArcmin + play.up),
    shown: {
      ...found.meant,
      reallyId: found.really?.id ?? null,
      reallyName: found.really?.name ?? null,
      right: found.right,
      offsetArcmin: found.offsetArcmin,
      ...(offset === null ? {} : { offsetOnSky: offset }),
      fieldRadiusArcmin: found.fieldRadiusArcmin,
      backlashArcmin: playArcmin,
      finalApproachKept: playArcmin < harmlessPlayArcmin,
      path: tubePath(run, { fromMs, toMs: moment.atMs, mostPoints: mostPathPoints }).map(
        (point) => ({
          atMs: Math.round(point.atMs),
          azimuthDeg: rounded(point.azimuthDeg),
          altitudeDeg: rounded(point.altitudeDeg),
        }),
      ),
    },
  };
}

/** To 0.4″: a result is stored. */
const rounded = (valueDeg: number): number => Math.round(valueDeg * 1e4) / 1e4;
