import type { Random } from '../../variants/random';
import { choice, match, numeric, order, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { pickOne } from '../../variants/pick-one';
import { drawRecord } from './draw-record';
import {
  counts,
  enough,
  helpLevels,
  helpWords,
  observationsNeeded,
  standingOf,
  type HelpLevel,
  type NeededLevel,
  type Observation,
  type Standing,
} from '../../mastery/sign-off';
import { gateSlips, vignettes } from './sign-off-words';

const rule =
  'Signed off means: seen on two dates at least, at the level that the teacher has set, and no gate failed. No score makes up for a failed gate.';
const skillNames = ['Balance', 'Level', 'Power', 'Finder', 'Align', 'Put it together'] as const;
const months = ['March', 'October', 'November', 'February'] as const;

/** Two to four looks at different dates. */
function drawObservations(random: Random, count: number, gates: boolean): Observation[] {
  const month = pickOne(random, months);
  const days = random.shuffle(Array.from({ length: 27 }, (_, i) => i + 1)).slice(0, count);
  const failedAt = gates ? random.integer(0, count - 1) : -1;
  return days
    .sort((a, b) => a - b)
    .map((day, i) => ({
      date: `${String(day)} ${month}`,
      level: pickOne<HelpLevel>(random, [1, 2, 3, 3, 4, 4]),
      gate: i === failedAt ? pickOne(random, gateSlips) : null,
    }));
}

type Verdict = 'signed-off' | Extract<Standing, { signedOff: false }>['because'];
const verdictOf = (standing: Standing): Verdict =>
  standing.signedOff ? 'signed-off' : standing.because;
const verdicts = ['signed-off', 'gate', 'one-date', 'level'] as const;

function readTheCard({ random }: ItemDraw) {
  const wanted = pickOne(random, verdicts);
  const needed = pickOne<NeededLevel>(random, [3, 4]);
  const skill = pickOne(random, skillNames);
  let seen: Observation[] = [];
  do {
    const count = wanted === 'one-date' ? 1 : random.integer(2, 3);
    seen = drawObservations(random, count, wanted === 'gate');
  } while (
    verdictOf(standingOf(seen, needed)) !== wanted ||
    // A single look at a lower level would be too little in two ways.
    (wanted === 'one-date' && seen.some((one) => !counts(one, needed))) ||
    // The gate alone must hold it back.
    (wanted === 'gate' && seen.filter(({ level }) => level >= needed).length < observationsNeeded)
  );
  const failed = seen.find(({ gate }) => gate !== null);
  const last = seen.at(-1)?.date ?? '';
  const text: Readonly<Record<Verdict, string>> = {
    // The second evening that counts is the day of it.
    'signed-off': `Signed off since ${seen.filter((one) => counts(one, needed))[1]?.date ?? last}`,
    gate:
      failed === undefined
        ? `Not yet, gate failed: ${pickOne(random, gateSlips)}`
        : `Not yet, gate failed: ${failed.gate ?? ''}`,
    'one-date': `Not yet: seen once, on ${last}`,
    level:
      wanted === 'one-date'
        ? `Not yet: below level ${String(needed)}`
        : `Not yet: fewer than two at ${enough(needed)}`,
  };
  const why: Readonly<Record<Verdict, string>> = {
    'signed-off':
      wanted === 'signed-off'
        ? 'Two dates at the level that is needed, and no gate failed.'
        : {
            gate: 'A gate was failed, and no level makes up for that.',
            'one-date': 'One good evening may be luck. It takes two dates.',
            level: `It takes two evenings at ${enough(needed)}.`,
          }[wanted],
    gate:
      wanted === 'gate'
        ? 'That evening does not count, whatever its level, and the gate is named.'
        : 'All gates were passed.',
    'one-date':
      wanted === 'one-date'
        ? 'One good evening may be luck. It takes two dates.'
        : `It was seen on ${String(seen.length)} dates.`,
    level:
      wanted === 'level'
        ? `Only ${enough(needed)} counts, and it takes two evenings.`
        : wanted === 'one-date'
          ? 'The one evening was at the level. What is missing is a second.'
          : 'There are two at the level.',
  };
  return choice({
    prompt: `This is a student’s card for the skill “${skill}”. Where does it stand?`,
    drawing: drawRecord(skill, needed, seen),
    explanation: rule,
    right: { text: text[wanted], reason: why[wanted] },
    wrong: verdicts
      .filter((one) => one !== wanted)
      .map((one) => ({
        text: one === 'one-date' && seen.length > 1 ? 'Not yet: seen only once' : text[one],
        reason: why[one],
        ...(one === 'signed-off' && wanted === 'gate'
          ? { misconception: 'score-buys-off-safety' as const }
          : {}),
      })),
  });
}

function howManyMore({ random }: ItemDraw) {
  const needed = pickOne<NeededLevel>(random, [3, 4]);
  const skill = pickOne(random, skillNames);
  let seen = drawObservations(random, 3, random.next() < 0.5);
  const countedIn = () => seen.filter((one) => counts(one, needed)).length;
  while (countedIn() >= observationsNeeded) seen = drawObservations(random, 3, random.next() < 0.5);
  const key = observationsNeeded - countedIn();
  const atLevel = seen.filter(({ level }) => level >= needed).length;
  return numeric({
    prompt: `How many more evenings at ${enough(needed)}, with every gate passed, does this student need in “${skill}”?`,
    drawing: drawRecord(skill, needed, seen),
    unit: 'evenings',
    key,
    tolerance: { mode: 'absolute', full: 0, zero: 1 },
    explanation: `${String(countedIn())} of the evenings ${countedIn() === 1 ? 'counts' : 'count'}: ${enough(needed)} and no gate failed. It takes two.`,
    slips: [
      {
        gives: observationsNeeded - Math.min(observationsNeeded, atLevel),
        reason: 'You counted an evening with a failed gate. It does not count, whatever its level.',
        misconception: 'score-buys-off-safety' as const,
      },
    ].filter(({ gives }) => gives !== key),
  });
}

function whichLevel({ random }: ItemDraw) {
  const told = random.shuffle(helpLevels).map((level) => ({
    left: random.pick(vignettes[level]) ?? '',
    right: `level ${String(level)}: ${helpWords[level]}`,
    reason: `level ${String(level)} is “${helpWords[level]}”.`,
  }));
  return match({
    prompt: `The teacher watches four students at the skill “${pickOne(random, skillNames)}” and marks how much help each needed. Which level is it?`,
    explanation:
      'Level 1: shown. 2: active help. 3: a prompt now and then. 4: alone, watched for safety only.',
    pairs: told,
  });
}

function mostHelpFirst({ random }: ItemDraw) {
  const told = helpLevels.map((level) => random.pick(vignettes[level]) ?? '');
  return order({
    prompt: `Four students at the skill “${pickOne(random, skillNames)}”. Put them in order: the one who needed most help comes first.`,
    explanation: 'Shown, then active help, then a prompt now and then, then alone.',
    steps: told,
    rules: told.slice(1).map((_, i) => ({
      first: i,
      then: i + 1,
      reason: `level ${String(i + 1)} is “${helpWords[helpLevels[i] ?? 1]}”, level ${String(i + 2)} is “${helpWords[helpLevels[i + 1] ?? 4]}”.`,
    })),
  });
}

function whatCounts({ random }: ItemDraw) {
  const needed = pickOne<NeededLevel>(random, [3, 4]);
  let seen: Observation[] = [];
  const countedIn = () => seen.filter((one) => counts(one, needed)).length;
  do seen = drawObservations(random, 5, true);
  while (countedIn() < 2 || countedIn() > 4);
  const option = (one: Observation) => ({
    text: `${one.date}: level ${String(one.level)}, ${one.gate === null ? 'all gates passed' : `gate failed: ${one.gate}`}`,
    reason: counts(one, needed)
      ? `${one.date}: level ${String(one.level)} with every gate passed.`
      : one.gate !== null
        ? 'A failed gate: the evening does not count, whatever its level.'
        : `Level ${String(one.level)} is below ${String(needed)}.`,
    ...(one.gate !== null && one.level >= needed
      ? { misconception: 'score-buys-off-safety' as const }
      : {}),
  });
  return several({
    prompt: `“${pickOne(random, skillNames)}” is signed off at ${enough(needed)}. Tick the evenings that count.`,
    explanation: rule,
    right: seen.filter((one) => counts(one, needed)).map(option),
    wrong: seen.filter((one) => !counts(one, needed)).map(option),
  });
}

/** What a sign-off takes: levels of help, two dates, gates. */
export const signingOff: ItemFamily = {
  id: 'signing-off',
  lesson: 'the-night',
  objective: 'sign-off',
  skill: 'safety',
  title: 'What the sign-off looks at',
  version: 3,
  templates: {
    'read-the-card': readTheCard,
    'how-many-more': howManyMore,
    'which-level': whichLevel,
    'most-help-first': mostHelpFirst,
    'what-counts': whatCounts,
  },
};
