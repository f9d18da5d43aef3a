import { declinationAt } from '../../clock/declination';
import { compassBearingOfNorthDeg, trueBearingDeg } from '../../clock/needle';
import { wrap360 } from '../../units/angle';
import { choice, match, numeric, order, point } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { compassDrawing, onCompass } from './compass-drawing';
import { drawSky } from './drawn-sky';
import { whereabouts } from './words';
import { inFists } from '../../wording/fists';
import { pickOne } from '../../variants/pick-one';

/** Towns where the needle errs by something one can see; latitude and longitude in degrees, north and east positive. */
const towns = [
  ['Halifax, Nova Scotia', 44.64, -63.58],
  ['St. John’s, Newfoundland', 47.57, -52.71],
  ['Toronto', 43.7, -79.42],
  ['Denver', 39.74, -104.98],
  ['Vancouver', 49.25, -123.12],
  ['Anchorage', 61.22, -149.9],
  ['Reykjavík', 64.15, -21.94],
  ['Cape Town', -33.93, 18.42],
  ['Windhoek', -22.56, 17.08],
  ['Montevideo', -34.9, -56.19],
  ['Adelaide', -34.93, 138.6],
  ['Hobart', -42.88, 147.33],
  ['Brisbane', -27.47, 153.03],
  ['Auckland', -36.85, 174.76],
  ['Dunedin', -45.87, 170.5],
] as const;

/** World Magnetic Model, to the degree; it moves by a few arcminutes a year. */
type NeedleTown = { name: string; declinationDeg: number };
const day = '2026-11-25T00:00:00Z';
const needleTowns: readonly NeedleTown[] = towns.flatMap(([name, latitudeDeg, longitudeDeg]) => {
  const at = declinationAt({ latitudeDeg, longitudeDeg, elevationM: 0 }, day);
  return at.ok ? [{ name, declinationDeg: Math.round(at.declinationDeg) }] : [];
});

const side = (deg: number): string => (deg < 0 ? 'west' : 'east');
const needle = ({ name, declinationDeg }: NeedleTown): string =>
  `In ${name} a compass needle points ${String(Math.abs(declinationDeg))}° ${side(declinationDeg)} of true north`;
const degrees = (value: number): string => `${String(Math.round(value) % 360)}°`;

function fromNeedleToAzimuth({ random }: ItemDraw) {
  const town = pickOne(random, needleTowns);
  const bearing = 5 * random.integer(8, 64);
  const key = trueBearingDeg(bearing, town.declinationDeg);
  const what = pickOne(random, ['a mast', 'a star', 'a church', 'the tube', 'a hilltop']);
  return numeric({
    prompt: `${needle(town)}. By the compass ${what} is at ${degrees(bearing)}. What is its true azimuth?`,
    unit: 'degrees',
    key,
    wrapsAt360: true,
    tolerance: { mode: 'absolute', full: 1, zero: Math.abs(town.declinationDeg) },
    explanation: `The compass counts from the needle. The needle itself is at ${degrees(wrap360(town.declinationDeg))}, so ${degrees(bearing)} by the compass is ${degrees(key)} from true north.`,
    slips: [
      {
        gives: bearing,
        reason: 'That counts from the needle, which points to magnetic north.',
        misconception: 'magnetic-for-true-north',
      },
      {
        gives: wrap360(bearing - town.declinationDeg),
        reason: `You went the wrong way. The needle is ${side(town.declinationDeg)} of true north, so all that is counted from it is too.`,
      },
    ],
  });
}

function bearingOfTrueNorth({ random }: ItemDraw) {
  const town = pickOne(random, needleTowns);
  const { declinationDeg } = town;
  const turnedDeg = 90 * random.integer(0, 3);
  const name = (['north', 'east', 'south', 'west'] as const)[turnedDeg / 90] ?? 'north';
  const key = wrap360(compassBearingOfNorthDeg(declinationDeg) + turnedDeg);
  return choice({
    prompt: `${needle(town)}. You want to lay the tube along true ${name}. What must the compass show along it?`,
    explanation: `True ${name} has azimuth ${degrees(turnedDeg)}. The compass counts from the needle, ${String(Math.abs(declinationDeg))}° to the ${side(declinationDeg)} of true north, and so shows ${degrees(key)}.`,
    right: {
      text: degrees(key),
      reason: `${degrees(key)} by the compass is ${degrees(turnedDeg)} from true north.`,
    },
    wrong: [
      {
        text: degrees(turnedDeg),
        reason: `That is ${name} by the needle. The needle points to magnetic north, ${String(Math.abs(declinationDeg))}° off.`,
        misconception: 'magnetic-for-true-north',
      },
      {
        text: degrees(wrap360(turnedDeg + declinationDeg)),
        reason: `That is the wrong way: the tube would be ${String(2 * Math.abs(declinationDeg))}° off.`,
      },
      { text: degrees(wrap360(key + 180)), reason: 'That is the other end of the same line.' },
    ],
  });
}

/** Less than this and two places on the dial are too close for a thumb. */
const leastToPointAt = 10;

function pointToTrueNorth({ random }: ItemDraw) {
  const town = pickOne(
    random,
    needleTowns.filter((one) => Math.abs(one.declinationDeg) >= leastToPointAt),
  );
  const { declinationDeg } = town;
  const pageDeg = 15 * random.integer(0, 23);
  // On the dial, which is counted from the needle.
  const north = compassBearingOfNorthDeg(declinationDeg);
  const spot = (dialDeg: number) => ({
    ...onCompass(pageDeg + dialDeg),
    where: `At ${degrees(wrap360(dialDeg))} on the dial`,
  });
  return point({
    prompt: `${needle(town)}. The drawing shows a compass there, its dial set to the needle. Point at true north.`,
    drawing: compassDrawing(
      pageDeg,
      [north, 0, -north, 180].map((dialDeg) => wrap360(dialDeg)),
    ),
    explanation: `The needle points ${String(Math.abs(declinationDeg))}° too far ${side(declinationDeg)}. True north lies ${String(Math.abs(declinationDeg))}° to the ${declinationDeg < 0 ? 'right' : 'left'} of it, at ${degrees(north)} on the dial.`,
    right: {
      ...spot(north),
      reason: `${String(Math.abs(declinationDeg))}° ${declinationDeg < 0 ? 'clockwise' : 'anticlockwise'} from the needle.`,
    },
    wrong: [
      {
        ...spot(0),
        misconception: 'magnetic-for-true-north' as const,
        reason: 'That is where the needle points: magnetic north.',
      },
      {
        ...spot(-north),
        reason: `That is the wrong way. The needle is ${side(declinationDeg)} of true north, so true north is ${side(-declinationDeg)} of the needle.`,
      },
      { ...spot(180), reason: 'That is the needle’s other end, near south.' },
    ],
  });
}

function tubeAlongTheNeedle({ random }: ItemDraw) {
  const chosen = random
    .shuffle(needleTowns)
    .filter(
      (town, i, all) => all.findIndex((one) => one.declinationDeg === town.declinationDeg) === i,
    );
  const asked = chosen.slice(0, 4);
  const azimuth = ({ declinationDeg }: NeedleTown) => degrees(trueBearingDeg(0, declinationDeg));
  return match({
    prompt: `In each of these towns (${asked.map(({ name }) => name).join('; ')}) a tube is laid along the compass needle. What is its true azimuth?`,
    explanation:
      'Along the needle, the tube is as far off true north as the needle is: east adds, west takes off from 360°.',
    pairs: asked.map((town) => ({
      left: `${town.name}: needle ${String(Math.abs(town.declinationDeg))}° ${side(town.declinationDeg)}`,
      right: azimuth(town),
      reason: `${String(Math.abs(town.declinationDeg))}° ${side(town.declinationDeg)} of true north is an azimuth of ${azimuth(town)}.`,
    })),
    spare: chosen.slice(4, 6).map(azimuth).concat('0°'),
  });
}

function worstNeedle({ random }: ItemDraw) {
  const chosen: NeedleTown[] = [];
  for (const town of random.shuffle(needleTowns)) {
    const size = Math.abs(town.declinationDeg);
    if (
      chosen.length < 4 &&
      chosen.every((one) => Math.abs(Math.abs(one.declinationDeg) - size) >= 2)
    ) {
      chosen.push(town);
    }
  }
  const sorted = chosen.sort((a, b) => Math.abs(a.declinationDeg) - Math.abs(b.declinationDeg));
  const bearing = (town: NeedleTown) => degrees(compassBearingOfNorthDeg(town.declinationDeg));
  return order({
    prompt: `By the compass, true north is at ${random
      .shuffle(sorted)
      .map((town) => `${bearing(town)} in ${town.name}`)
      .join(
        ', ',
      )}. Where does the needle err least? Put the towns in order, the least error first.`,
    explanation: `The needle errs by as much as true north is away from 0° on its dial: ${sorted.map((town) => `${String(Math.abs(town.declinationDeg))}°`).join(', ')}.`,
    steps: sorted.map(({ name }) => name),
    rules: sorted.slice(1).map((town, i) => ({
      first: i,
      then: i + 1,
      reason: `there true north is ${String(Math.abs(sorted[i]?.declinationDeg ?? 0))}° away from 0° on the dial, here ${String(Math.abs(town.declinationDeg))}°.`,
    })),
  });
}

function isItPolaris({ random }: ItemDraw) {
  for (;;) {
    const sky = drawSky(random, { side: 'north' });
    const polaris = sky.stars.find(({ name }) => name === 'Polaris');
    const brighter = sky.stars.filter(
      (one) => one.magnitude < 1.3 && sky.at(one).altitudeDeg > 15 && sky.at(one).altitudeDeg < 75,
    );
    const bright = random.pick(brighter);
    if (polaris === undefined || bright === undefined) continue;
    const there = whereabouts(sky.at(bright));
    const up = (altitudeDeg: number) => `Polaris stands due north, ${inFists(altitudeDeg)} up`;
    const { latitudeDeg } = sky;
    if (inFists(90 - latitudeDeg) === inFists(latitudeDeg)) continue;
    return choice({
      prompt: `${sky.where}, ${sky.when}. A bright star stands ${there}. “The brightest one is Polaris, so that way is north”, says your partner. What is so?`,
      explanation: `The star is ${bright.name}. Polaris stands within about a degree of due north, as high as the latitude: ${String(latitudeDeg)}°.`,
      right: {
        text: `${up(latitudeDeg)}, and is fainter`,
        reason: `It stands as high as your latitude, ${String(latitudeDeg)}°.`,
      },
      wrong: [
        {
          text: `That is right: Polaris is the brightest star there is`,
          reason: `Polaris is of magnitude 2. Of the stars that are up, ${String(sky.stars.filter((one) => sky.at(one).altitudeDeg > 5 && one.magnitude < polaris.magnitude).length)} are brighter.`,
          misconception: 'polaris-brightest',
        },
        {
          text: `${up(90 - latitudeDeg)}, and is fainter`,
          reason:
            'That is how far the pole is from the zenith. From the horizon it is as high as your latitude.',
        },
        {
          text: 'Polaris stands overhead, and is fainter',
          reason: 'It does so only at the Earth’s own north pole.',
        },
      ],
    });
  }
}

export const needleAndNorth: ItemFamily = {
  id: 'needle-and-true-north',
  lesson: 'clock-and-place',
  objective: 'north',
  skill: 'clock-and-place',
  title: 'True north by compass and Polaris',
  version: 1,
  templates: {
    'from-needle-to-azimuth': fromNeedleToAzimuth,
    'bearing-of-true-north': bearingOfTrueNorth,
    'point-to-true-north': pointToTrueNorth,
    'tube-along-the-needle': tubeAlongTheNeedle,
    'worst-needle': worstNeedle,
    'is-it-polaris': isItPolaris,
  },
};
