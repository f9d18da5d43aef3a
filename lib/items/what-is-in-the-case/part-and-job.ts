import { capitalised } from '../../wording/capital';
import { lightTrain } from '../../optics/light-path';
import { choice, match, point, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { askedSpot, type KnownSpot } from './asked-spot';
import { someTube } from './item-tube';
import { askers } from './askers';
import { pickOne, pickSome } from '../../variants/pick-one';
import { drawOutside, type OutsidePart } from './outside-drawing';
import { caseParts, type CasePart } from './parts';
import { kindName } from '../../drawings/tube-words';

const saysJob = ({ name, job }: CasePart): string => `${capitalised(name)} ${job}.`;

function partToJob({ random }: ItemDraw) {
  const [fifth, ...four] = pickSome(random, caseParts, 5);
  const from = capitalised(four[0]?.name ?? 'the case');
  return match({
    prompt: `${pickOne(random, askers)} lays four things from the case on the table; one is ${from.toLowerCase()}. What is each of them for?`,
    explanation: 'Ask of each part what you could not do without it.',
    pairs: four.map((part) => ({
      left: capitalised(part.name),
      right: `It ${part.job}`,
      reason: `without it, ${part.without}.`,
    })),
    ...(fifth === undefined ? {} : { spare: [`It ${fifth.job}`] }),
  });
}

function whatIsMissing({ random }: ItemDraw) {
  const [missing, ...rest] = pickSome(random, caseParts, 4);
  if (missing === undefined) throw new RangeError('the case is empty');
  return choice({
    prompt: `Something was left in the case: ${missing.without}. What is it?`,
    explanation: saysJob(missing),
    right: { text: capitalised(missing.name), reason: saysJob(missing) },
    wrong: rest.map((part) => ({
      text: capitalised(part.name),
      reason: `${saysJob(part)} Without it, ${part.without}.`,
    })),
  });
}

function whatGoesOn(draw: ItemDraw) {
  const { random } = draw;
  const tube = someTube(draw);
  const fits = caseParts.filter(({ tubes }) => tubes.includes(tube.tubeType));
  const strays = caseParts.filter(({ tubes }) => !tubes.includes(tube.tubeType));
  const own = fits.filter(({ tubes }) => tubes.length < 3);
  const common = fits.filter(({ tubes }) => tubes.length === 3);
  return several({
    prompt: `${pickOne(random, askers)} has the parts of three telescopes in one box. Tick what belongs to ${tube.name}, the ${kindName[tube.tubeType]}.`,
    explanation: `Think of the light in a ${kindName[tube.tubeType]}: only what stands on its way, and what every tube needs, belongs to it.`,
    right: [...pickSome(random, own, 1), ...pickSome(random, common, 2)].map((part) => ({
      text: capitalised(part.name),
      reason: saysJob(part),
    })),
    wrong: pickSome(random, strays, 2).map((part) => ({
      text: capitalised(part.name),
      reason: `${saysJob(part)} ${tube.name} does without it.`,
    })),
  });
}

const outside: Readonly<Record<OutsidePart, { job: string; name: string; where: string }>> = {
  finder: {
    name: 'the red dot finder',
    job: 'what shows you which way the tube points',
    where: 'on top of the tube',
  },
  bar: {
    name: 'the dovetail bar',
    job: 'what the clamp of the mount grips',
    where: 'under the tube, halfway along',
  },
  eyepiece: {
    name: 'the eyepiece',
    job: 'what you put your eye to',
    where: 'at the end of the short pipe',
  },
  cap: {
    name: 'the dust cap',
    job: 'what must stay where it is while the Sun is up',
    where: 'at one end of the tube',
  },
};
const outsideParts = ['finder', 'bar', 'eyepiece', 'cap'] as const;

function pointAtPart(draw: ItemDraw) {
  const { random } = draw;
  const tube = someTube(draw);
  const facing = pickOne(random, ['left', 'right']);
  const what = pickOne(random, outsideParts);
  const eyepiece = lightTrain(tube).elements.find(({ part }) => part === 'eyepiece');
  const { width, height, shapes, spots } = drawOutside(
    tube,
    facing,
    eyepiece?.at ?? { xMm: tube.lengthMm, yMm: 0 },
  );
  const known: KnownSpot<OutsidePart>[] = outsideParts.map((is) => ({
    is,
    ...spots[is],
    where: outside[is].where,
    reason: `That is ${outside[is].name}: ${outside[is].job}.`,
  }));
  const pipe = tube.tubeType === 'reflector' ? 'out of its side' : 'out of its other end';
  return point({
    prompt: `${tube.name} as it comes out of the case. Point at ${outside[what].job}.`,
    drawing: {
      width,
      height,
      shapes,
      alternative: `${tube.name}’s tube from the side. A lid closes its ${facing}-hand end. A little box with an upright pane stands on top. A flat rail runs along below. A short pipe with a round end comes ${pipe}.`,
    },
    explanation: `Lid: dust cap. Box with a pane: red dot finder. Rail: dovetail bar. End of the pipe: eyepiece.`,
    ...askedSpot(known, what),
  });
}

export const partAndJob: ItemFamily = {
  id: 'part-and-job',
  lesson: 'what-is-in-the-case',
  objective: 'parts',
  skill: 'kit',
  title: 'What each part is for',
  version: 1,
  templates: {
    'part-to-job': partToJob,
    'what-is-missing': whatIsMissing,
    'what-goes-on': whatGoesOn,
    'point-at-part': pointAtPart,
  },
};
