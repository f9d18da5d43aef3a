import {
  dawesLimitArcsec,
  highestUsefulMagnification,
  magnification,
} from '../../optics/magnification';
import {
  apparentSeparationArcmin,
  easilyTwoArcmin,
  roomRound,
  showsWhole,
  splits,
  strongest,
} from '../../optics/shows';
import { skyTargets, type SkyTarget } from '../../optics/sky-targets';
import { trueFieldArcmin } from '../../optics/true-field';
import { choice, order, several } from '../build-item';
import type { ItemDraw, ItemFamily, ItemKit } from '../item-family';
import { discOnARule } from './disc-on-a-rule';
import {
  eyepieceOf,
  inNumber,
  inThree,
  soldFocalLengths,
  usualFieldDeg,
  withFocalLength,
} from './words';
import { pickOne } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';

const glass = (focalLengthMm: number) => ({ focalLengthMm, apparentFieldDeg: usualFieldDeg });
const fieldOf = (kit: ItemKit, mm: number) => trueFieldArcmin(kit, glass(mm));
const times = (kit: ItemKit, mm: number) => magnification(kit, glass(mm));
/** What never rises for most of the north is looked at from where it does. */
const placeFor = ({ declinationDeg }: SkyTarget): string =>
  declinationDeg < -35 ? 'You are at 35° south. ' : '';

const clusters = skyTargets.flatMap((one) => (one.kind === 'cluster' ? [one] : []));
const doubles = skyTargets.flatMap((one) => (one.kind === 'double' ? [one] : []));

function wholeAndLarge({ random, world }: ItemDraw) {
  for (;;) {
    const kit = pickOne(random, world.kits);
    const target = pickOne(random, clusters);
    const { name, sizeArcmin } = target;
    const four = random.shuffle(soldFocalLengths).slice(0, 4);
    const shares = four.map((mm) => fieldOf(kit, mm) / sizeArcmin);
    if (shares.some((share) => share > 0.93 && share < roomRound * 1.06)) continue;
    const fitting = four.filter((mm) => showsWhole(kit, glass(mm), sizeArcmin));
    const best = strongest(fitting.map(glass))?.focalLengthMm;
    if (best === undefined || fitting.length === 4) continue;
    const said = (mm: number) => `${capitalised(eyepieceOf(mm))}, ${inThree(times(kit, mm))} times`;
    return choice({
      prompt: `${placeFor(target)}You want to see ${name}, ${String(sizeArcmin)}′ wide, whole and as large as that allows in ${withFocalLength(kit)}. All these eyepieces have ${String(usualFieldDeg)}° of apparent field. Which one?`,
      explanation: `The field must be a little wider than ${String(sizeArcmin)}′. Of the eyepieces that show so much, take the strongest.`,
      right: {
        text: said(best),
        reason: `It shows ${inNumber(fieldOf(kit, best))}′, enough for ${String(sizeArcmin)}′ and a little sky round it.`,
      },
      wrong: four
        .filter((mm) => mm !== best)
        .map((mm) =>
          mm < best
            ? {
                text: said(mm),
                reason: `It shows ${inNumber(fieldOf(kit, mm))}′ only: the rim of ${name} stays outside.`,
                misconception: 'more-power-better' as const,
              }
            : {
                text: said(mm),
                reason: `It shows ${inNumber(fieldOf(kit, mm))}′. That is enough, but ${eyepieceOf(best)} shows it whole too, and larger.`,
              },
        ),
    });
  }
}

/** At 4′ a pair is told apart with ease; near it one would argue. */
const plainlyTwo = (apparentArcmin: number): boolean =>
  apparentArcmin > easilyTwoArcmin * 1.15 || apparentArcmin < easilyTwoArcmin * 0.85;

function partThePair({ random, world }: ItemDraw) {
  for (;;) {
    const kit = pickOne(random, world.kits);
    const target = pickOne(random, doubles);
    const { name, separationArcsec } = target;
    const three = random.shuffle(soldFocalLengths).slice(0, 3);
    const looks = (mm: number) => apparentSeparationArcmin(kit, glass(mm), separationArcsec);
    const good = three.filter((mm) => splits(kit, glass(mm), separationArcsec));
    const dawes = dawesLimitArcsec(kit);
    if (Math.abs(separationArcsec / dawes - 1) < 0.3) continue;
    const hopeless = separationArcsec < dawes;
    if (!three.every((mm) => plainlyTwo(looks(mm)))) continue;
    if (hopeless ? random.integer(0, 3) > 0 : good.length !== 1) continue;
    const none = {
      text: `None: ${String(kit.apertureMm)} mm of width cannot part ${String(separationArcsec)}″.`,
      reason: `A tube of ${String(kit.apertureMm)} mm parts stars down to 116 ÷ ${String(kit.apertureMm)}, which is ${inNumber(dawes, 1)}″.`,
    };
    const asOption = (mm: number) => ({
      text: `${capitalised(eyepieceOf(mm))}: ${inThree(times(kit, mm))} times.`,
      reason: hopeless
        ? `No magnification helps: ${none.reason.charAt(0).toLowerCase()}${none.reason.slice(1)}`
        : good.some((one) => one === mm)
          ? `${String(separationArcsec)}″ × ${inThree(times(kit, mm))} look like ${inNumber(looks(mm), 1)}′ to the eye, more than 4′.`
          : looks(mm) < easilyTwoArcmin
            ? `${String(separationArcsec)}″ × ${inThree(times(kit, mm))} look like ${inNumber(looks(mm), 1)}′ to the eye. It wants 4′ to see two with ease.`
            : `That is more than ${String(highestUsefulMagnification(kit))} times, twice the width in millimetres: the picture only grows dim and soft.`,
    });
    const key = good[0];
    return choice({
      prompt: `${placeFor(target)}The two stars of ${name} stand ${String(separationArcsec)}″ apart. To be seen as two with ease they must look at least ${String(easilyTwoArcmin)}′ apart. Which eyepiece does it in ${kit.name} (${String(kit.focalLengthMm)} mm focal length, ${String(kit.apertureMm)} mm wide)?`,
      explanation: `First the tube: it parts 116 ÷ ${String(kit.apertureMm)}, so ${inNumber(dawes, 1)}″, or more. Then the eyepiece: it must magnify to ${String(easilyTwoArcmin)}′, but not beyond ${String(highestUsefulMagnification(kit))} times.`,
      right: hopeless || key === undefined ? none : asOption(key),
      wrong: [
        ...three.filter((mm) => hopeless || mm !== key).map((mm) => asOption(mm)),
        ...(hopeless ? [] : [none]),
      ],
    });
  }
}

function tooMuch({ random }: ItemDraw) {
  const apertureMm = pickOne(random, [60, 70, 80, 90, 100, 105, 114, 120, 130, 150]);
  const limit = highestUsefulMagnification({ apertureMm });
  const asked = random.shuffle([0.3, 0.5, 0.7, 0.85, 1.2, 1.5, 1.9, 2.5]).slice(0, 5);
  const values = asked.map((share) => ({ share, value: Math.round((share * limit) / 5) * 5 }));
  const written = ({ share, value }: (typeof values)[number]) => ({
    text: `${String(value)} times`,
    reason:
      share > 1
        ? `${String(value)} is more than ${String(limit)}: the picture only grows dimmer and softer.`
        : `${String(value)} is below ${String(limit)}, so the tube still has detail to show.`,
    ...(share > 1 ? { misconception: 'more-power-better' as const } : {}),
  });
  const useful = values.filter(({ share }) => share < 1);
  const beyond = values.filter(({ share }) => share > 1);
  return several({
    prompt: pickOne(random, [
      `A telescope is ${String(apertureMm)} mm wide. Which magnifications can it make good use of?`,
      `On the box of a telescope ${String(apertureMm)} mm wide stand these magnifications. Which of them are useful?`,
    ]),
    explanation: `About 2 times for each millimetre of width: ${String(apertureMm)} mm make ${String(limit)} times. Beyond it an image grows, but shows no more.`,
    right: useful.map(written),
    wrong: beyond.map(written),
  });
}

function wideFirst({ random, world }: ItemDraw) {
  const kit = pickOne(random, world.kits);
  const target = pickOne(random, skyTargets);
  const strongMm = pickOne(
    random,
    [15, 12, 10, 9, 8, 6].filter((mm) => times(kit, mm) <= highestUsefulMagnification(kit)),
  );
  return order({
    prompt: `${placeFor(target)}You want to look at ${target.name} in ${kit.name} with ${eyepieceOf(strongMm)}. In which order?`,
    explanation:
      'First the eyepiece with the most sky, to find it. Only what stands in the middle will still be there when the field shrinks, and each eyepiece wants its own focus.',
    steps: [
      `Put ${eyepieceOf(25)} in`,
      `Bring ${target.name} to the middle of the wide view`,
      `Change to ${eyepieceOf(strongMm)}`,
      'Turn the focuser until the stars are points again',
    ],
    rules: [
      {
        first: 0,
        then: 1,
        reason: `it shows ${inNumber(fieldOf(kit, 25))}′ of sky, so there is a chance to find it at all.`,
      },
      {
        first: 1,
        then: 2,
        reason: `${eyepieceOf(strongMm)} shows only ${inNumber(fieldOf(kit, strongMm))}′: what is not in the middle is lost.`,
      },
      { first: 2, then: 3, reason: 'each eyepiece comes to focus at another place.' },
    ],
  });
}

/** Width of the tube, width of the field, and what is to be seen. */
export const eyepieceForIt: ItemFamily = {
  id: 'eyepiece-for-it',
  lesson: 'eyepieces-and-views',
  objective: 'choose',
  skill: 'field',
  title: 'The eyepiece for what one wants to see',
  version: 2,
  templates: {
    'whole-and-large': wholeAndLarge,
    'part-the-pair': partThePair,
    'too-much': tooMuch,
    'disc-on-a-rule': discOnARule,
    'wide-first': wideFirst,
  },
};
