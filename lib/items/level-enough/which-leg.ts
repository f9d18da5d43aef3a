import type { LegIndex } from '../../levelling/tripod';
import { choice, order, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import {
  afterChange,
  drawHead,
  leaningHead,
  legAndOthers,
  legNames,
  othersOf,
  reachesOf,
  type LeaningHead,
} from './leaning-head';
import { placeAt, placeWords, spotAt, vialShowing } from './vial-drawing';
import { clockWords, figures, grounds, one } from './words';

const lengthMm = 900;
const moved = (leg: LegIndex, out: boolean): string =>
  `Leg ${legNames[leg]}: ${out ? 'let it out' : 'take it in'}`;

/** The bubble within 15° of some leg's line, so that one leg is plainly the best to begin with. */
const nearALine = (random: ItemDraw['random']): LeaningHead =>
  drawHead(random, 60 * random.integer(0, 5) + 15 * random.integer(-1, 1));

function firstLeg({ random }: ItemDraw) {
  const head = nearALine(random);
  const [best, ...others] = reachesOf(head);
  if (best === undefined) throw new Error('a tripod has three legs');
  const out = best.toMm > lengthMm;
  const name = legNames[best.leg];
  return choice({
    prompt: `Level this tripod ${one(random, grounds)}. With which leg do you begin, and which way does it go?`,
    drawing: vialShowing(head.site, head.bubble),
    explanation: `The line from the bubble through the middle runs nearest to leg ${name}. The bubble stands ${out ? 'on the side away from it, so that leg is too short' : 'on its side, so that leg is too long'}. That one move brings ${figures(head.tiltDeg, 1)}° down to ${figures(best.tiltDeg, 1)}°.`,
    right: {
      text: moved(best.leg, out),
      reason: `Its line is the nearest to the bubble. ${figures(best.tiltDeg, 1)}° is left for the next leg.`,
    },
    wrong: [
      {
        text: moved(best.leg, !out),
        reason: `The right leg the wrong way: the head would lean more, not less. The bubble goes up, so the side at ${clockWords(head.risesTowardsDeg)} is high.`,
        misconception: 'bubble-shows-low-side',
      },
      ...others.map(({ leg, toMm, tiltDeg }) => ({
        text: moved(leg, toMm > lengthMm),
        reason: `That helps a little, but its line lies across: ${figures(tiltDeg, 1)}° would be left at best. Leg ${name} leaves ${figures(best.tiltDeg, 1)}°.`,
      })),
    ],
  });
}

/** Where a bubble is stopped by one leg on its way along that leg's line, millimetres. */
function stopWhere({ random }: ItemDraw) {
  const { leg } = legAndOthers(random);
  const [next, third] = random.shuffle(othersOf(leg));
  if (next === undefined || third === undefined) throw new Error('a tripod has three legs');
  const legADeg = 30 * random.integer(0, 11);
  const legDeg = legADeg + 120 * leg;
  // 30° off the leg's line and far out, so that the places to choose among lie well apart.
  const side = random.pick([1, -1]) ?? 1;
  const far = random.next() < 0.5;
  const towards = legDeg + (far ? 180 : 0) + 30 * side;
  const head = leaningHead({
    legADeg,
    tiltDeg: random.integer(17, 18) / 4,
    risesTowardsDeg: (towards + 720) % 360,
  });
  const across = Math.hypot(head.bubble.eastMm, head.bubble.northMm) / 2;
  const acrossDeg = legDeg + 90 * side * (far ? -1 : 1);
  /** On a leg's line, on the side where the bubble has to pass it. */
  const onLineOf = (other: LegIndex) => {
    const otherDeg = legADeg + 120 * other;
    const meets = Math.cos(((otherDeg - acrossDeg) * Math.PI) / 180) > 0;
    return placeAt(across / Math.cos(Math.PI / 6), otherDeg + (meets ? 0 : 180));
  };
  const spot = (place: { eastMm: number; northMm: number }, reason: string) => ({
    ...spotAt(place),
    where: placeWords(place),
    reason,
  });
  return point({
    prompt: `You begin with leg ${legNames[leg]}, and leg ${legNames[next]} is to do the rest. At which place of the bubble do you stop sliding leg ${legNames[leg]}?`,
    drawing: vialShowing(head.site, head.bubble),
    explanation: `Leg ${legNames[next]} can only move the bubble along the line from itself through the middle. So leg ${legNames[leg]} must first bring the bubble onto that line. Then two moves are enough.`,
    right: spot(
      onLineOf(next),
      `Here the bubble lies on the line of leg ${legNames[next]}, which brings it straight to the middle.`,
    ),
    wrong: [
      spot(
        placeAt(across, acrossDeg),
        `Nearest to the middle that leg ${legNames[leg]} can do, but on no leg’s line: leg ${legNames[next]} would lead the bubble past the middle, and a third move be needed.`,
      ),
      spot(
        onLineOf(third),
        `This is on the line of leg ${legNames[third]}, which was to stay as it is.`,
      ),
      spot(
        placeAt(0, 0),
        `Leg ${legNames[leg]} alone cannot: it moves the bubble along its own line, and that line passes beside the middle.`,
      ),
    ],
  });
}

function whatWasDone({ random }: ItemDraw) {
  const { leg, others } = legAndOthers(random);
  const out = random.next() < 0.5;
  const head = leaningHead({
    legADeg: 30 * random.integer(0, 11),
    tiltDeg: random.integer(2, 5) / 2,
    risesTowardsDeg: 15 * random.integer(0, 23),
  });
  const after = afterChange(head, leg, (out ? 1 : -1) * 5 * random.integer(4, 6));
  const done = (one: LegIndex, wasOut: boolean) =>
    `Leg ${legNames[one]} was ${wasOut ? 'let out' : 'taken in'}`;
  const line = (one: LegIndex, wasOut: boolean) =>
    `${wasOut ? 'towards' : 'straight away from'} leg ${legNames[one]}`;
  return choice({
    prompt: `The dashed bubble is before, the full one after one leg was moved ${one(random, grounds)}. What was done?`,
    drawing: vialShowing(head.site, after.bubble, head.bubble),
    explanation: `The bubble moved ${line(leg, out)}. A leg that goes out lifts the head over itself and draws the bubble to it; one that goes in sends the bubble away.`,
    right: { text: done(leg, out), reason: `The bubble moved ${line(leg, out)}.` },
    wrong: [
      {
        text: done(leg, !out),
        reason: `Then the bubble would have moved ${line(leg, !out)}: the bubble goes to the side that rises.`,
        misconception: 'bubble-shows-low-side',
      },
      ...others.map((other) => ({
        text: done(other, out),
        reason: `Then the bubble would have moved ${line(other, out)}, not ${line(leg, out)}.`,
      })),
    ],
  });
}

function inTwoMoves({ random }: ItemDraw) {
  // 15° beside a leg's line: on the line itself one leg would do.
  const head = drawHead(random, 60 * random.integer(0, 5) + (random.pick([-15, 15]) ?? 15));
  const [best, next] = reachesOf(head);
  if (best === undefined || next === undefined) throw new Error('a tripod has three legs');
  const [first, second] = [legNames[best.leg], legNames[next.leg]];
  const way = best.toMm > lengthMm ? 'out' : 'in';
  return order({
    prompt: `The bubble stands ${placeWords(head.bubble)}, and the line of leg ${first} is the nearest. Put the work in order. Nothing is done twice.`,
    explanation: 'Read, choose, open, slide, lock; and only then the next leg.',
    steps: [
      `Read where the bubble stands and draw its line through the middle`,
      `Choose leg ${first}, whose line is nearest`,
      `Open the lock of leg ${first}`,
      `Slide leg ${first} ${way} until the bubble lies on the line of leg ${second}`,
      `Lock leg ${first}`,
      `Open leg ${second}, bring the bubble into the ring, lock it`,
    ],
    rules: [
      { first: 0, then: 1, reason: 'the bubble says which leg it is.' },
      { first: 1, then: 2, reason: 'first know which leg, then open it.' },
      { first: 2, then: 3, reason: 'a locked leg does not slide.' },
      { first: 3, then: 4, reason: 'lock it when it is where it should be.' },
      { first: 4, then: 5, reason: 'with two legs open at once the tripod goes over.' },
    ],
  });
}

function atItsEnd({ random }: ItemDraw) {
  const { leg, others } = legAndOthers(random);
  const out = random.next() < 0.5;
  const legADeg = 30 * random.integer(0, 11);
  const head = leaningHead({
    legADeg,
    tiltDeg: random.integer(3, 8) / 2,
    risesTowardsDeg: (legADeg + 120 * leg + (out ? 180 : 0)) % 360,
  });
  const name = legNames[leg];
  const way = out ? 'out' : 'in';
  return several({
    prompt: `The bubble asks for leg ${name} to go ${way}, but that leg is already fully ${way}. What helps to bring the head level?`,
    drawing: vialShowing(head.site, head.bubble),
    explanation: `Only the difference between the legs counts. The two others go ${out ? 'in' : 'out'}, both by the same amount, and the bubble moves as if leg ${name} had gone ${way}.`,
    right: others.map((other) => ({
      text: moved(other, !out),
      reason: `With leg ${legNames[other]} ${out ? 'shorter' : 'longer'}, leg ${name} is ${out ? 'long' : 'short'} beside it.`,
    })),
    wrong: [
      ...others.map((other) => ({
        text: moved(other, out),
        reason: `That makes the difference larger: the head leans more.`,
      })),
      {
        text: moved(leg, !out),
        reason: `That is the wrong way: leg ${name} is too ${out ? 'short' : 'long'} already.`,
        misconception: 'bubble-shows-low-side' as const,
      },
    ],
  });
}

/** From the bubble to the leg, and which way. */
export const whichLeg: ItemFamily = {
  id: 'which-leg',
  lesson: 'level-enough',
  objective: 'leg',
  skill: 'level',
  title: 'Which leg to move, and which way',
  version: 1,
  templates: {
    'first-leg': firstLeg,
    'stop-where': stopWhere,
    'what-was-done': whatWasDone,
    'in-two-moves': inTwoMoves,
    'at-its-end': atItsEnd,
  },
};
