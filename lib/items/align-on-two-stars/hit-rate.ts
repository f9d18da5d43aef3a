import { targetAzimuthDeg, targetBands } from '../../pointing/target-grid';
import type { Random } from '../../variants/random';
import { choice, numeric, order } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { goodPair, honestMount, missDeg, outcomeOf, type Sighted } from './aligning';
import { eyepieceDrawing, fieldShapes, oneView } from './eyepiece-view';
import { closeUpId, focalText, observingRadius, radiusOf, someKit } from './kit-fields';
import { hitsOf } from './hits-of';
import { rateMatch } from './rate-match';
import { whatLiftsIt } from './what-lifts-it';
import { arcmin, figures } from './words';
import { pickOne } from '../../variants/pick-one';

const targetsDrawn = 20;

/** Where twenty go-tos over the sky end beside their targets, after an alignment with a slip. */
function landings(random: Random, radius: number): readonly { off: number; angle: number }[] {
  for (;;) {
    const [a, b] = goodPair(random);
    const slipDeg = (random.between(0.2, 1.6) * radius) / 60;
    const truth = honestMount(random, {});
    const second: Sighted = {
      named: b,
      centred: { ...b, altitudeDeg: b.altitudeDeg + pickOne(random, [1, -1]) * slipDeg },
    };
    const outcome = outcomeOf('solved-zero', truth, [{ named: a, centred: a }, second]);
    if (outcome.kind !== 'agree') continue;
    const { model } = outcome;
    const offs = Array.from({ length: targetsDrawn }, () => {
      const band = pickOne(random, targetBands);
      const target = {
        azimuthDeg: targetAzimuthDeg(band, random.integer(0, band.count - 1)),
        altitudeDeg: band.altitudeDeg,
      };
      return 60 * missDeg(model, truth, target);
    });
    const inside = offs.filter((off) => off <= radius).length;
    // Dots on the rim could be counted either way, and all or none is no counting.
    const clear = offs.every((off) => Math.abs(off - radius) > 0.05 * radius);
    if (!clear || inside < 4 || inside > 17) continue;
    return offs.map((off) => ({ off, angle: random.between(0, 2 * Math.PI) }));
  }
}

function countHits({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const radius = observingRadius(kit);
  const landed = landings(random, radius);
  const inside = landed.filter(({ off }) => off <= radius).length;
  const shown = 0.45;
  // What falls outside the picture is drawn at its edge: it is a miss all the same.
  const dots = landed.map(({ off, angle }) => {
    const far = Math.min(off, 2.15 * radius);
    return { rightArcmin: far * Math.cos(angle), upArcmin: far * Math.sin(angle) };
  });
  return numeric({
    prompt: `Twenty go-tos after one alignment of ${kit.name}. The circle is the field of the observing eyepiece; each dot is where a target ended beside the middle. What is the hit rate, out of 100?`,
    drawing: eyepieceDrawing(
      [
        { kind: 'rect', x: 8, y: 4, w: 304, h: 236, fill: 'sunken' },
        ...fieldShapes(dots, radius, { view: { ...oneView, radius: oneView.radius * shown } }).map(
          (shape) =>
            shape.kind === 'circle' && shape.fill === 'sky-lamp'
              ? { ...shape, r: 3.5, stroke: 'ink' as const, width: 1 }
              : shape,
        ),
      ],
      `A field that reaches ${figures(radius, 0)}′ from its middle. The twenty targets ended so far from the middle, in arcminutes: ${landed.map(({ off }) => figures(off, 0)).join(', ')}.`,
    ),
    unit: 'targets of 100',
    key: (100 * inside) / targetsDrawn,
    tolerance: { mode: 'absolute', full: 1, zero: 12 },
    explanation: `${String(inside)} of ${String(targetsDrawn)} are inside the circle. ${String(inside)} ÷ ${String(targetsDrawn)} × 100 is ${String((100 * inside) / targetsDrawn)}.`,
    slips: [
      {
        gives: inside,
        reason: `That is how many of twenty. Out of a hundred it is five times as many.`,
      },
      {
        gives: 100 - (100 * inside) / targetsDrawn,
        reason: 'That is the share outside. Hits are those inside the circle.',
      },
    ].filter(({ gives }) => Math.abs(gives - (100 * inside) / targetsDrawn) > 1),
  });
}

function otherEyepiece({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  for (;;) {
    const toWide = random.next() < 0.5;
    const [close, wide] = [closeUpId(kit), kit.centringEyepieceId];
    const [from, to] = toWide ? [close, wide] : [wide, close];
    const setting = {
      gapDeg: random.integer(7, 24) * 5,
      centringArcmin: kit.telescope.centringArcmin * random.between(0.8, 2),
    };
    const before = Math.round(hitsOf(kit, radiusOf(kit, from), setting));
    const after = Math.round(hitsOf(kit, radiusOf(kit, to), setting));
    if (Math.abs(after - before) < 12 || before < 10 || after < 3 || before > 85) continue;
    const [more, fewer] = toWide ? ['wider', 'more'] : ['narrower', 'fewer'];
    const contrary = toWide ? Math.round(before / 2) : Math.round((before + 100) / 2);
    return choice({
      prompt: `${kit.name} is aligned, and its hit rate with the ${focalText(kit, from)} eyepiece is ${String(before)} of 100. You change to the ${focalText(kit, to)} eyepiece and touch nothing else. What becomes of the hit rate?`,
      right: {
        text: `It goes ${toWide ? 'up' : 'down'} to about ${String(after)}`,
        reason: `The misses stay the same. The field is ${more}, so ${fewer} targets are inside it.`,
      },
      wrong: [
        {
          text: `It stays at about ${String(before)}`,
          reason: 'The misses stay. But what counts as a hit hangs on the field of the eyepiece.',
        },
        {
          text: `It goes ${toWide ? 'down' : 'up'} to about ${String(contrary)}`,
          reason: `The other way round: this eyepiece shows ${toWide ? 'more' : 'less'} sky.`,
        },
        {
          text: 'Nobody knows before aligning again',
          reason: 'The eyepiece is no part of the alignment. The mount points as it did before.',
        },
      ],
      explanation: `Half the field goes from ${arcmin(radiusOf(kit, from))} to ${arcmin(radiusOf(kit, to))}, and the rate from ${String(before)} to ${String(after)} of 100.`,
    });
  }
}

function bestToWorst({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const radius = observingRadius(kit);
  const sigma = kit.telescope.centringArcmin;
  for (;;) {
    const tried = Array.from({ length: 4 }, () => {
      const gapDeg = random.integer(2, 24) * 5;
      const centringArcmin = Math.max(1, Math.round(sigma * random.between(0.4, 4)));
      return { gapDeg, centringArcmin, hits: hitsOf(kit, radius, { gapDeg, centringArcmin }) };
    }).sort((a, b) => b.hits - a.hits);
    if (tried.slice(1).some((one, i) => (tried[i]?.hits ?? 0) - one.hits < 9)) continue;
    const text = ({ gapDeg, centringArcmin }: (typeof tried)[number]): string =>
      `${String(gapDeg)}° apart in azimuth, centred to ${arcmin(centringArcmin)}`;
    return order({
      prompt: `Four alignments of ${kit.name}, each on two stars 40° up. Put them in order, the highest hit rate first.`,
      steps: tried.map(text),
      rules: tried.slice(1).map((one, index) => ({
        first: index,
        then: index + 1,
        reason: `${figures(tried[index]?.hits ?? 0, 0)} of 100 against ${figures(one.hits, 0)}.`,
      })),
      explanation: `The rates: ${tried.map(({ hits }) => figures(hits, 0)).join(', ')} of 100. Both count: how far apart the stars are, and how well each is centred.`,
    });
  }
}

function whatItMeans({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const rate = random.integer(31, 96);
  const eyepiece = focalText(kit, kit.observingEyepieceId);
  return choice({
    prompt: `After an alignment with ${kit.name} you read: “Hit rate ${String(rate)} of 100, ${eyepiece} eyepiece.” What does it say?`,
    right: {
      text: `Of 100 targets all over the sky, ${String(rate)} end in its field`,
      reason: 'Targets from 20° to 80° up, all round, each gone to once.',
    },
    wrong: [
      {
        text: `A target is missed by ${String(rate)}′ on average, all over the sky`,
        reason: `It is no angle. Half the field of this eyepiece is ${arcmin(observingRadius(kit))}; a hit is less than that.`,
      },
      {
        text: `The two stars were centred to ${String(rate)} parts of 100`,
        reason:
          'Centring is one cause of it, the pair is another. The rate tells what comes of both.',
      },
      {
        text: `The same target is found ${String(rate)} times out of 100`,
        reason:
          'The misses do not change from try to try: a target in the field is there each time.',
      },
    ],
    explanation: `A hit is a target inside the field of the eyepiece that you observe with. The rate is the share of hits over the whole sky.`,
  });
}

function howManyMissed({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const targets = random.integer(2, 8) * 10;
  const rate = random.integer(4, 19) * 5;
  const key = (targets * (100 - rate)) / 100;
  return numeric({
    prompt: `${kit.name} has a hit rate of ${String(rate)} of 100. Your list for the night has ${String(targets)} targets all over the sky. About how many will not be in the eyepiece when the slew ends?`,
    unit: 'targets',
    key,
    tolerance: { mode: 'absolute', full: 0.6, zero: Math.max(2, 0.25 * targets) },
    explanation: `${String(100 - rate)} of 100 are missed. Of ${String(targets)} that is ${figures(key)}. Those you find with the finder, as before the alignment.`,
    slips: [
      { gives: targets - key, reason: 'That many will be in it. Asked for are the others.' },
      {
        gives: 100 - rate,
        reason: `That is of a hundred targets. Your list has ${String(targets)}.`,
      },
    ].filter(({ gives }) => Math.abs(gives - key) > 0.6),
  });
}

/** What a hit rate is, and what makes it. */
export const hitRate: ItemFamily = {
  id: 'hit-rate',
  lesson: 'align-on-two-stars',
  objective: 'hit-rate',
  skill: 'align',
  title: 'Hits out of a hundred',
  version: 2,
  templates: {
    'count-hits': countHits,
    'other-eyepiece': otherEyepiece,
    'best-to-worst': bestToWorst,
    'what-it-means': whatItMeans,
    'how-many-missed': howManyMissed,
    'rate-match': rateMatch,
    'what-lifts-it': whatLiftsIt,
  },
};
