import { whereabouts } from '../clock-and-place/words';
import { inFists } from '../../wording/fists';
import { pickSome } from '../../variants/pick-one';
import { choice, match, numeric, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { magnitudeInWords, whole, type Light } from './drawn-evening';
import { decided, drawCase, neighboursOf, whyLike, whyNone, type Neighbour } from './neighbours';
import { pointAtTheLookAlike } from './point-at-the-look-alike';

function whoCouldMislead(draw: ItemDraw) {
  const { evening, star, like, others } = drawCase(draw, 3);
  const near = others.slice(0, 6);
  const text = ({ light, apart }: Neighbour) =>
    `${light.name}, ${magnitudeInWords(light.magnitude)}, ${apart < 3 ? apart.toFixed(1) : whole(apart)}° away`;
  return choice({
    prompt: `${evening.when}. You would like ${star.name}, ${whereabouts(star)}, ${magnitudeInWords(star.magnitude)}. Which neighbour could be taken for it?`,
    explanation: `A look-alike is less than a fist away and not much fainter: less than 0.7 magnitudes. ${whyLike(like)}`,
    right: {
      text: text(like),
      reason: `${whyLike(like)} Say aloud which is which before you confirm.`,
    },
    wrong: pickSome(draw.random, near, 3).map((one) => ({
      text: text(one),
      reason: whyNone(one),
    })),
  });
}

function howFarOffThen(draw: ItemDraw) {
  for (;;) {
    const { evening, star, like } = drawCase(draw, 0);
    const fists = inFists(like.apart);
    const key = 5 * Math.round(like.apart / 5);
    if (key < 5) continue;
    return numeric({
      prompt: `${evening.when}. ${like.light.name} stands ${fists} from ${star.name}. Somebody centres ${like.light.name}, and tells the mount that it is ${star.name}. By about how many degrees is that wrong?`,
      unit: 'degrees',
      key,
      tolerance: { mode: 'absolute', full: 2, zero: 5 },
      explanation: `By as much as the two are apart: ${fists}, and a fist is 10°. Exactly, it is ${like.apart.toFixed(1)}°.`,
      slips: [
        {
          gives: 0,
          reason:
            'They look alike, but they are not in one place. The mount takes your word for it.',
        },
        { gives: key / 10, reason: 'That is the number of fists. Each stands for 10°.' },
        { gives: 10 * key, reason: 'A fist is 10°, not 100°.' },
      ],
    });
  }
}

function needsCare(draw: ItemDraw) {
  for (;;) {
    const { evening, star, like } = drawCase(draw, 0);
    const candidates = evening.lights
      .filter(
        (light) =>
          light.kind === 'star' && light !== star && light !== like.light && light.altitudeDeg > 15,
      )
      .map((light) => ({ light, near: neighboursOf(light, evening)[0] }))
      .flatMap(({ light, near }) => (near === undefined || !decided(near) ? [] : [{ light, near }]))
      .filter(({ light, near }) => near.lookAlike === light.cautions.length > 0);
    const chosen = [{ light: star, near: like }, ...pickSome(draw.random, candidates, 4)].filter(
      ({ light }, i, all) => all.findIndex((one) => one.light.name === light.name) === i,
    );
    // Its nearest neighbour must be what decides: a second one farther off is not told.
    const fair = chosen.filter(
      ({ light, near }) =>
        neighboursOf(light, evening)
          .slice(0, 6)
          .every((one) => decided(one)) && neighboursOf(light, evening)[0]?.light === near.light,
    );
    const right = fair.filter(({ near }) => near.lookAlike);
    const wrong = fair.filter(
      ({ light, near }) =>
        !near.lookAlike && neighboursOf(light, evening).every((one) => !one.lookAlike),
    );
    if (right.length === 0 || wrong.length < 2 || right.length + wrong.length < 4) continue;
    const fainter = (one: Neighbour) =>
      Math.abs(one.fainter) < 0.05
        ? 'just as bright'
        : `${Math.abs(one.fainter).toFixed(1)} mag ${one.fainter > 0 ? 'fainter' : 'brighter'}`;
    const text = ({ light, near }: { light: Light; near: Neighbour }) =>
      `${light.name}: nearest is ${near.light.name}, ${near.apart < 3 ? near.apart.toFixed(1) : whole(near.apart)}° away, ${fainter(near)}`;
    return several({
      prompt: `${evening.when}. For ${[...right, ...wrong]
        .map(({ light }) => light.name)
        .sort()
        .join(', ')} you have looked up the nearest bright light. Which of them need care?`,
      explanation:
        'Care is needed where something less than a fist (10°) away is brighter, or less than 0.7 magnitudes fainter.',
      right: right.map((one) => ({ text: text(one), reason: whyLike(one.near) })),
      wrong: wrong.map((one) => ({ text: text(one), reason: whyNone(one.near) })),
    });
  }
}

function whyOrWhyNot(draw: ItemDraw) {
  for (;;) {
    const { evening, star, like, others } = drawCase(draw, 2);
    const far = others.find(({ apart }) => apart > 12);
    const faint = others.find(({ apart, fainter }) => apart < 9 && fainter > 0.9);
    const planet = others.find(({ light, apart }) => light.kind === 'planet' && apart > 12);
    const chosen = [
      { one: like, verdict: 'Could be taken for it' },
      ...(faint === undefined ? [] : [{ one: faint, verdict: 'Near, but too faint' }]),
      ...(far === undefined ? [] : [{ one: far, verdict: 'Bright, but too far off' }]),
      ...(planet === undefined || planet === far
        ? []
        : [{ one: planet, verdict: 'A planet, and too far off' }]),
    ];
    if (chosen.length < 3) continue;
    if (far?.light.kind === 'planet') continue;
    return match({
      prompt: `${evening.when}. You would like ${star.name}, ${magnitudeInWords(star.magnitude)}. What of its neighbours ${draw.random
        .shuffle(chosen)
        .map(({ one }) => one.light.name)
        .join(', ')}?`,
      explanation:
        'A look-alike is less than a fist away, and brighter or less than 0.7 magnitudes fainter.',
      pairs: chosen.map(({ one, verdict }) => ({
        left: `${one.light.name}, ${magnitudeInWords(one.light.magnitude)}, ${one.apart < 3 ? one.apart.toFixed(1) : whole(one.apart)}° away`,
        right: verdict,
        reason: one.lookAlike ? whyLike(one) : whyNone(one),
      })),
      spare: ['Near, but too faint', 'Bright, but too far off'],
    });
  }
}

export const lookAlikes: ItemFamily = {
  id: 'look-alikes',
  lesson: 'choosing-alignment-stars',
  objective: 'look-alike',
  skill: 'choose-stars',
  title: 'What could be taken for your star',
  version: 2,
  templates: {
    'who-could-mislead': whoCouldMislead,
    'how-far-off-then': howFarOffThen,
    'needs-care': needsCare,
    'why-or-why-not': whyOrWhyNot,
    'point-at-the-look-alike': pointAtTheLookAlike,
  },
};
