import {
  hazardMoments,
  isHazard,
  sights,
  sightsAt,
  type HazardMoment,
  type Sight,
} from '../../assembly/hazards';
import { degreesToRadians } from '../../units/angle';
import { choice, match, numeric, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { askers } from '../what-is-in-the-case/askers';
import { pickOne, pickSome } from '../../variants/pick-one';
import { sightWords } from './hazard-words';

const momentWords: Readonly<Record<HazardMoment, string>> = {
  unfolding: 'the legs are being unfolded',
  lifting: 'the mount is being lifted on',
  finishing: 'all is up and people gather',
};
const seen = (sight: Sight) => ({ text: sightWords[sight].seen, reason: sightWords[sight].reason });
const allSights: readonly Sight[] = sights;
const dangers = allSights.filter(isHazard);
const harmless = allSights.filter((sight) => !isHazard(sight));

function spotTheDangers({ random }: ItemDraw) {
  const moment = random.pick(hazardMoments) ?? 'lifting';
  const there = sightsAt[moment].flat();
  const more = random.shuffle(dangers.filter((sight) => !there.includes(sight))).slice(0, 1);
  const right = pickSome(random, [...there.filter(isHazard), ...more], 2);
  const wrong = pickSome(
    random,
    there.filter((sight) => !isHazard(sight)),
    3,
  );
  return several({
    prompt: `${pickOne(random, askers)} looks round while ${momentWords[moment]}. Tick all that could hurt somebody.`,
    explanation: 'Say each danger aloud, and put it right before anybody goes on.',
    right: right.map(seen),
    wrong: wrong.map(seen),
  });
}

function stopOrGoOn({ random }: ItemDraw) {
  const [right] = pickSome(random, dangers, 1);
  const wrong = pickSome(random, harmless, 3);
  if (right === undefined) throw new RangeError('there is no danger');
  const moment = random.pick(hazardMoments) ?? 'lifting';
  return choice({
    prompt: `You watch over ${pickOne(random, askers).toLowerCase()} while ${momentWords[moment]}. For which of these do you call “Stop”?`,
    explanation: 'A warning is for what can hurt somebody. All the rest is as it should be.',
    right: { text: sightWords[right].seen, reason: sightWords[right].reason },
    wrong: wrong.map(seen),
  });
}

function whatMayComeOfIt({ random }: ItemDraw) {
  const [spare, ...pairs] = pickSome(random, dangers, 5);
  return match({
    prompt: `${pickOne(random, askers)} asks what is so bad about it. Give each of these its reason, “${sightWords[pairs[0] ?? 'leg-on-kerb'].seen}” among them.`,
    explanation: 'Each danger has a way to somebody’s foot, finger or eye.',
    pairs: pairs.map((sight) => ({
      left: sightWords[sight].seen,
      right: sightWords[sight].reason,
      reason: 'think of what moves, and of who is in the way.',
    })),
    ...(spare === undefined ? {} : { spare: [sightWords[spare].reason] }),
  });
}

function downhillLeg({ random }: ItemDraw) {
  const acrossMm = 50 * random.integer(8, 16);
  const slopeDeg = random.integer(3, 12);
  const key = acrossMm * Math.tan(degreesToRadians(slopeDeg));
  const share = Math.tan(degreesToRadians(slopeDeg)).toFixed(2);
  return numeric({
    prompt: `The ground falls by ${String(slopeDeg)}°, which is ${share} mm for each millimetre of way. The downhill foot of a tripod stands ${String(acrossMm)} mm from the line of the other two. How much lower is the ground under it?`,
    unit: 'mm',
    key,
    tolerance: { mode: 'relative', full: 0.06, zero: 0.3 },
    explanation: `${String(acrossMm)} mm × ${share} is about ${String(Math.round(key))} mm. So much the downhill leg must make up for, so that the weight stays over the middle.`,
    slips: [
      { gives: acrossMm, reason: 'That is how far the foot stands away. Multiply it by the fall.' },
      { gives: slopeDeg, reason: 'That is the slope in degrees. Multiply its fall by the way.' },
    ],
  });
}

export const groundAndHands: ItemFamily = {
  id: 'ground-and-hands',
  lesson: 'standing-it-up',
  objective: 'ground',
  skill: 'safety',
  title: 'Ground, hands and who stands where',
  version: 1,
  templates: {
    'spot-the-dangers': spotTheDangers,
    'stop-or-go-on': stopOrGoOn,
    'what-may-come-of-it': whatMayComeOfIt,
    'downhill-leg': downhillLeg,
  },
};
