import { mountDefaults } from '@/lib/alignment/mount-defaults';
import { loadCatalogue, loadKits } from '@/lib/content/sky-catalogue';
import type { Telescope } from '@/lib/pointing/scenario';
import type { GoTo, HandAtStar, RehearsedEvening } from '@/lib/rehearsal/rehearsed-evening';
import { noSlips } from '@/lib/rehearsal/slips';
import { skyFrameAt } from '@/lib/sky/frame-at';
import { nightAt } from '@/lib/variants/night';
import { randomFrom, type Random } from '@/lib/variants/random';
import { perfectEvening } from './perfect-evening';
import { runScenario } from './run-nights';

/** A hand that does nothing wrong at a star. */
export const carefulHand = (hip: number, confirmsBefore: number): HandAtStar => ({
  hip,
  light: { hip },
  by: 'eyepiece',
  left: { rightArcmin: 0, upArcmin: 0 },
  lagArcmin: { azimuth: 0, altitude: 0 },
  atMs: 180_000 * (confirmsBefore + 1),
  confirmsBefore,
});

/** The evening of {@link perfectEvening}, as the rehearsal takes it: nothing is wrong in it. */
export function faultlessEvening(
  computer: Telescope['computer'] = 'solved-zero',
  changes: Partial<RehearsedEvening> = {},
): RehearsedEvening {
  const { frame, catalogue, place, setup, first, second } = perfectEvening(computer);
  return {
    frame,
    catalogue,
    latitudeDeg: place.latitudeDeg,
    computer,
    telescope: { ...setup, backlashArcmin: { azimuth: 4, altitude: 4 } },
    slips: noSlips,
    startedAfterConfirms: 0,
    hands: [carefulHand(first.hip, 0), carefulHand(second.hip, 1)],
    ...changes,
  };
}

/** Evenings of one night: a night's answer key takes longer than all else of an evening. */
const eveningsOfANight = 4;

/**
 * Evenings over a year, longitudes and latitudes to 65°, four to a night, with our three telescopes and
 * both computers in turn. Each has its own pair of stars, one that serves as well as nearly any (nine
 * tenths of the best), a third, and slips that are all under 1°, of both signs: what is set by degrees
 * up to 1°, what an eyepiece shows up to 15′, making and play as of such telescopes.
 */
export function* randomRehearsals(
  seed: string,
  count = Infinity,
): Generator<{ evening: RehearsedEvening; goTo: GoTo; firstSlew: GoTo }> {
  const random = randomFrom(seed);
  const kits = loadKits();
  const catalogue = loadCatalogue();
  for (let made = 0; made < count;) {
    const place = {
      latitudeDeg: random.between(-65, 65),
      longitudeDeg: random.between(-180, 180),
      elevationM: 0,
    };
    const minutes = Math.floor(random.between(0, 525_600));
    const instant = new Date(Date.UTC(2026, 0, 1) + minutes * 60_000).toISOString();
    const frame = skyFrameAt({ instant, place });
    if (frame.sun.trueAltitudeDeg > -12) continue;
    const kit = kits[Math.floor(made / eveningsOfANight) % kits.length];
    if (kit === undefined) throw new Error('content/ holds no kit');
    const computer = random.next() < 0.5 ? 'solved-zero' : 'fixed-zero';
    const scenario = runScenario(kit, computer, { ...place, instant });
    const { night } = nightAt(scenario, instant, catalogue);
    const [best] = night.pairs;
    const good = night.pairs.filter(({ hitRate }) => hitRate >= 0.9 * (best?.hitRate ?? 1));
    for (let evenings = 0; evenings < eveningsOfANight && made < count; evenings += 1) {
      const pair = random.pick(good)?.stars;
      const third = random.pick(night.usable.filter(({ hip }) => !pair?.includes(hip)));
      if (pair === undefined || third === undefined) break;
      made += 1;
      const [one, other] = random.next() < 0.5 ? pair : ([pair[1], pair[0]] as const);
      yield {
        evening: {
          frame,
          catalogue,
          latitudeDeg: place.latitudeDeg,
          computer,
          ...smallSlips(random, computer),
          startedAfterConfirms: 0,
          hands: [
            smallSlipOf(random, carefulHand(one, 0)),
            smallSlipOf(random, carefulHand(other, 1)),
          ],
        },
        goTo: { hip: third.hip, atMs: 480_000, confirmsBefore: 2 },
        firstSlew: { hip: one, atMs: 60_000, confirmsBefore: 0 },
      };
    }
  }
}

function smallSlips(
  random: Random,
  computer: Telescope['computer'],
): Pick<RehearsedEvening, 'telescope' | 'slips'> {
  const upTo = (most: number): number => random.between(-most, most);
  return {
    telescope: {
      errors: {
        altitudeZeroDeg: computer === 'fixed-zero' ? upTo(1 / 6) : upTo(1 / 2),
        coneDeg: upTo(1 / 4),
        axisSkewDeg: upTo(1 / 8),
      },
      backlashArcmin: { azimuth: 6, altitude: 6 },
      ...mountDefaults,
      declinationDeg: 0,
    },
    slips: {
      tilt: { tiltDeg: random.between(0, 1), risesTowardsDeg: random.between(0, 360) },
      clockAndPlace: { clockSeconds: upTo(239), latitudeDeg: upTo(1), longitudeDeg: upTo(1) },
      start: { azimuthDeg: upTo(1), altitudeDeg: upTo(computer === 'fixed-zero' ? 1 / 6 : 1) },
      dot: { rightArcmin: upTo(30), upArcmin: upTo(30) },
      creep: { betweenStarsDeg: upTo(1), afterSecondDeg: upTo(1) },
      clutch: {
        afterConfirm: random.integer(0, 2),
        azimuthDeg: upTo(1),
        altitudeDeg: upTo(1),
      },
      kick: {
        afterConfirm: random.integer(1, 2),
        tiltDeg: random.between(0, 1),
        risesTowardsDeg: random.between(0, 360),
        azimuthDeg: upTo(1),
      },
      resetsAtSlew: null,
    },
  };
}

const smallSlipOf = (random: Random, hand: HandAtStar): HandAtStar => ({
  ...hand,
  by: random.next() < 0.2 ? 'dot' : 'eyepiece',
  left: { rightArcmin: random.between(-15, 15), upArcmin: random.between(-15, 15) },
  lagArcmin: { azimuth: random.between(0, 6), altitude: random.between(0, 6) },
});
