import { choice, numeric } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { apartDeg, goodPair, honestMount, outcomeOf, saidOf, type Sighted } from './aligning';
import { someKit } from './kit-fields';
import { chartWords, skyChart, type ChartPlace } from './sky-chart';
import { deg } from './words';
import { pickOne } from '../../variants/pick-one';
import { whatIsSo, whatToThink } from './what-to-think';

const itself = (place: ChartPlace): Sighted => ({ named: place, centred: place });

/** Another place a few degrees from one, still well up. */
function beside(
  { random }: Pick<ItemDraw, 'random'>,
  { azimuthDeg, altitudeDeg }: ChartPlace,
  [nearestDeg, farthestDeg] = [6, 16],
): ChartPlace {
  const angle = random.between(0, 2 * Math.PI);
  const far = random.between(nearestDeg, farthestDeg);
  return {
    azimuthDeg:
      (azimuthDeg + (far * Math.cos(angle)) / Math.cos((altitudeDeg * Math.PI) / 180) + 360) % 360,
    altitudeDeg: Math.min(75, Math.max(20, altitudeDeg + far * Math.sin(angle))),
  };
}

function whatItSays(draw: ItemDraw) {
  const { random } = draw;
  for (;;) {
    const [a, b] = goodPair(random);
    const c = beside(draw, b);
    const truth = honestMount(random, { zeroDeg: 0.05, tiltDeg: 0.3 });
    const outcome = outcomeOf('fixed-zero', truth, [itself(a), { named: b, centred: c }]);
    if (outcome.kind !== 'disagree') continue;
    const by = Math.abs(outcome.mismatchArcmin) / 60;
    const [ab, ac, bc] = [apartDeg(a, b), apartDeg(a, c), apartDeg(b, c)];
    if (by < 2 || Math.abs(bc - by) < 1.5) continue;
    const marks = [
      { ...a, label: 'A' },
      { ...b, label: 'B' },
      { ...c, label: 'C' },
    ];
    return choice({
      prompt: `This mount takes the zero of its altitude as given, from a mark on the tube. You centre A under its right name. Then it asks for B, and you centre C instead. From A to B it is ${deg(ab)}, from A to C ${deg(ac)}, from B to C ${deg(bc)}. What does it say?`,
      drawing: skyChart({ marks, alternative: chartWords(marks) }),
      right: {
        text: saidOf(outcome),
        reason: `The tube swung ${deg(ac)}, where ${deg(ab)} were due. The difference is what it says.`,
      },
      wrong: [
        {
          text: `These two disagree by ${deg(bc)}`,
          reason: `That is from B to C. But the mount does not know of C. It compares ${deg(ab)} with the ${deg(ac)} that the tube swung.`,
        },
        {
          text: 'These two agree to 1′ or better',
          reason: `They would if C were as far from A as B is. It is ${deg(by)} more or less.`,
          misconception: 'agreement-proves-all',
        },
        {
          text: 'These two leave it open how the mount stands',
          reason:
            'That is for a pair too close, right opposite, or in one direction. This pair is not.',
        },
      ],
      explanation: `It compares two angles: between the stars it named, ${deg(ab)}, and between the places where the tube stood, ${deg(ac)}.`,
    });
  }
}

function disagreeBy({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const stars = Math.round(10 * random.between(40, 110)) / 10;
  const off = Math.round(10 * random.between(1.6, 9)) / 10;
  const swung = Math.round(10 * (pickOne(random, [1, -1]) * off + stars)) / 10;
  return numeric({
    prompt: `A mount like ${kit.name}’s, but with a fixed altitude zero, was told of two stars. On the sky they are ${deg(stars)} apart. Between the two presses of the button its tube swung ${deg(swung)}. By how much do these two disagree?`,
    unit: 'degrees',
    key: Number(Math.abs(swung - stars).toFixed(1)),
    tolerance: { mode: 'absolute', full: 0.1, zero: 0.5 },
    explanation: `The larger angle less the smaller: ${deg(Math.max(stars, swung))} − ${deg(Math.min(stars, swung))} = ${deg(Math.abs(swung - stars))}. So much is far more than a slip of centring.`,
    slips: [
      {
        gives: swung,
        reason: 'That is how far the tube swung. Take from it the angle between the stars.',
      },
      {
        gives: Number((60 * Math.abs(swung - stars)).toFixed(0)),
        reason: 'That is in arcminutes. The answer is asked for in degrees.',
      },
    ],
  });
}

function whatItProves({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  for (;;) {
    const pair = goodPair(random);
    const truth = honestMount(random, { zeroDeg: 1.4, tiltDeg: 0.8 });
    const outcome = outcomeOf('solved-zero', truth, [itself(pair[0]), itself(pair[1])]);
    if (outcome.kind !== 'agree') continue;
    const zero = deg(Math.abs(outcome.model.altitudeZeroDeg));
    const lean = deg(outcome.baseTiltDeg);
    if (zero === '0°' || lean === '0°' || zero === lean) continue;
    return choice({
      prompt: `${kit.name} works out from two stars how far its tube stood off level at the start. It says: “${saidOf(outcome)}. The tube stood ${zero} off level, the base ${lean}.” What does that show?`,
      right: {
        text: `That both stars fit if the tube stood ${zero} off`,
        reason: 'The zero was chosen to make them fit. Ask whether you could have been so far off.',
      },
      wrong: [
        {
          text: 'That every target will be within 1′ of the middle',
          reason:
            'It speaks of one angle between two stars. What the rest of the sky does is open.',
          misconception: 'agreement-proves-all',
        },
        {
          text: 'That both stars were the right ones',
          reason: 'With a zero left open, a wrong star often fits as well. A third star tells.',
          misconception: 'agreement-proves-all',
        },
        {
          text: `That the base must be levelled by ${lean} more`,
          reason: 'The mount knows of that lean now and allows for it. Leave the legs alone.',
          misconception: 'tilt-spoils-alignment',
        },
      ],
      explanation:
        'One open number, the zero, and one angle to fit: a match can nearly always be found. So look whether zero and lean are believable, and check on a third star.',
    });
  }
}

function whichEvening(draw: ItemDraw) {
  const { random, world } = draw;
  const kit = someKit(random, world);
  const told = (zeroDeg: number, leanDeg: number): string =>
    `Tube ${deg(zeroDeg)} off level, base ${deg(leanDeg)}`;
  const honest = new Map<string, string>();
  while (honest.size < 3) {
    const [a, b] = goodPair(random);
    const outcome = outcomeOf('solved-zero', honestMount(random, {}), [itself(a), itself(b)]);
    if (outcome.kind !== 'agree') continue;
    const [zero, lean] = [Math.abs(outcome.model.altitudeZeroDeg), outcome.baseTiltDeg];
    honest.set(
      told(zero, lean),
      'Both are under a degree: what eye and bubble leave. Nothing speaks against it.',
    );
  }
  for (;;) {
    const [a, b] = goodPair(random);
    const outcome = outcomeOf('solved-zero', honestMount(random, {}), [
      itself(a),
      { named: b, centred: beside(draw, b, [2.5, 7]) },
    ]);
    if (outcome.kind !== 'agree') continue;
    const [zero, lean] = [Math.abs(outcome.model.altitudeZeroDeg), outcome.baseTiltDeg];
    if (Math.max(zero, lean) < 1.8) continue;
    return choice({
      prompt: `On four evenings ${kit.name} said “These two agree to 1′ or better”, and each time tube and base had been set level by a bubble. On one of them a wrong star was centred. Which?`,
      right: {
        text: told(zero, lean),
        reason: `Nobody who used a bubble is ${deg(Math.max(zero, lean))} off. The mount bent zero and lean until a wrong star fitted.`,
      },
      wrong: [...honest].map(([text, reason]) => ({ text, reason })),
      explanation:
        '“Agree” alone tells little here. The zero and the lean behind it tell more: are they yours?',
    });
  }
}

/** What the sentence after the second star proves, and what it does not. */
export const theseTwoAgree: ItemFamily = {
  id: 'these-two-agree',
  lesson: 'align-on-two-stars',
  objective: 'agree',
  skill: 'align',
  title: 'What “these two agree” means',
  version: 1,
  templates: {
    'what-it-says': whatItSays,
    'disagree-by': disagreeBy,
    'what-it-proves': whatItProves,
    'what-to-think': whatToThink,
    'what-is-so': whatIsSo,
    'which-evening': whichEvening,
  },
};
