import {
  asWeightKg,
  centreOf,
  hubHeightMm,
  stabilityOf,
  tippingPushN,
  type LoadedStand,
} from '../../assembly/stability';
import { choice, numeric, order, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { askers } from '../what-is-in-the-case/askers';
import { pickOne } from '../../variants/pick-one';
import { plainStand, someStand } from '../../drawings/some-stand';

/** Somebody leans on the arm, about so far above the hub. */
const armAboveHubMm = 200;
const pushKg = (stand: LoadedStand): number =>
  asWeightKg(tippingPushN(stand, hubHeightMm(stand) + armAboveHubMm));
const kg = (value: number): string => `${value.toFixed(1)} kg`;

const words = ({ legLengthMm, splayDeg, hungMassKg, tubeMassKg }: LoadedStand): string =>
  `Legs ${String(legLengthMm / 10)} cm long, ${splayDeg > 20 ? 'spread wide' : splayDeg > 14 ? 'half spread' : 'nearly closed'} (${String(splayDeg)}°), ${kg(tubeMassKg)} of tube${hungMassKg > 0 ? `, ${kg(hungMassKg)} hung below` : ''}`;

function easiestFirst({ random }: ItemDraw) {
  const chosen: LoadedStand[] = [];
  for (let tries = 0; tries < 300 && chosen.length < 4; tries++) {
    const next = {
      ...someStand(random),
      armBearingDeg: 60,
      hungMassKg: random.next() < 0.3 ? random.integer(1, 4) : 0,
    };
    const apart = chosen.every((one) => {
      const [a, b] = [pushKg(one), pushKg(next)];
      return Math.max(a, b) / Math.min(a, b) > 1.2;
    });
    if (pushKg(next) > 0.2 && apart) chosen.push(next);
  }
  const sorted = chosen.sort((a, b) => pushKg(a) - pushKg(b));
  return order({
    prompt: `${pickOne(random, askers)} pushes sideways against the arm of four stands. Put them in order, from the one that tips most easily to the one that stands best.`,
    explanation: 'Wide feet count most, then short legs and weight that hangs low.',
    steps: sorted.map(words),
    rules: sorted.slice(1).map((stand, index) => ({
      first: index,
      then: index + 1,
      reason: `a push of ${kg(pushKg(sorted[index] ?? stand))} tips it, the other one takes ${kg(pushKg(stand))}.`,
    })),
  });
}

function howHardAPush({ random }: ItemDraw) {
  const massKg = random.integer(6, 12);
  const marginMm = 10 * random.integer(12, 24);
  const heightMm = 100 * random.integer(8, 13);
  const key = (massKg * marginMm) / heightMm;
  return numeric({
    prompt: `A stand weighs ${String(massKg)} kg with all that is on it. Its plumb point is ${String(marginMm)} mm inside the nearest line of feet. Somebody pushes level against it, ${String(heightMm)} mm above the ground. With how many kilograms’ worth of push does it tip?`,
    unit: 'kg',
    key,
    tolerance: { mode: 'absolute', full: 0.1, zero: 0.6 },
    explanation: `Weight times its way to the line equals push times height: ${String(massKg)} kg × ${String(marginMm)} mm ÷ ${String(heightMm)} mm is ${kg(key)}.`,
    slips: [
      {
        gives: massKg,
        reason:
          'That would be the push if height and way were alike. High up, a small push has a long lever.',
        misconception: 'heavy-never-tips',
      },
      {
        gives: Number(((massKg * heightMm) / marginMm).toFixed(1)),
        reason: 'That is upside down: the higher the push, the less it takes.',
      },
    ],
  });
}

type Change = { text: string; to: (stand: LoadedStand) => LoadedStand };
const changesFor = ({ random }: ItemDraw, { splayDeg, tubeMassKg }: LoadedStand): Change[] => {
  const wide = splayDeg + random.integer(4, 7);
  const close = splayDeg - random.integer(3, 6);
  const bagKg = random.integer(1, 4);
  const moreKg = random.integer(1, 2);
  return [
    {
      text: `Spread the legs from ${String(splayDeg)}° to ${String(wide)}°`,
      to: (stand) => ({ ...stand, splayDeg: wide }),
    },
    {
      text: `Push the legs in from ${String(splayDeg)}° to ${String(close)}°`,
      to: (stand) => ({ ...stand, splayDeg: close }),
    },
    {
      text: `Hang a bag of ${String(bagKg)} kg below the hub`,
      to: (stand) => ({ ...stand, hungMassKg: bagKg }),
    },
    {
      text: `Turn the arm until the ${kg(tubeMassKg)} of tube hang over foot A`,
      to: (stand) => ({ ...stand, armBearingDeg: 0 }),
    },
    {
      text: `Turn the arm until the ${kg(tubeMassKg)} of tube hang between two feet`,
      to: (stand) => ({ ...stand, armBearingDeg: 180 }),
    },
    {
      text: `Put on a tube that is ${String(moreKg)} kg heavier`,
      to: (stand) => ({ ...stand, tubeMassKg: stand.tubeMassKg + moreKg }),
    },
  ];
};

/** What each change does to the push that tips it, most helpful first. */
function tried(draw: ItemDraw, stand: LoadedStand) {
  const before = pushKg(stand);
  return changesFor(draw, stand)
    .map(({ text, to }) => {
      const gain = pushKg(to(stand)) - before;
      return {
        text,
        gain,
        reason: `The push that tips it goes from ${kg(before)} to ${kg(before + gain)}.`,
        ...(/heavier/.test(text) ? { misconception: 'heavy-never-tips' as const } : {}),
      };
    })
    .filter(({ gain }) => Math.abs(gain) > 0.05)
    .sort((a, b) => b.gain - a.gain);
}
const withoutGain = ({ gain, ...said }: ReturnType<typeof tried>[number]) => {
  if (Number.isNaN(gain)) throw new RangeError('a stand that cannot be pushed');
  return said;
};
const halfSpread = ({ random }: ItemDraw): LoadedStand => ({
  ...plainStand,
  legLengthMm: 50 * random.integer(16, 23),
  splayDeg: random.integer(14, 20),
  tubeMassKg: random.integer(20, 40) / 10,
  armBearingDeg: 90,
});

function whatHelpsMost(draw: ItemDraw) {
  let stand = halfSpread(draw);
  let changes = tried(draw, stand);
  const lead = () => (changes[0]?.gain ?? 0) - (changes[1]?.gain ?? 0);
  // Until one helps more than the next by what a hand would notice.
  for (let tries = 0; tries < 300 && (lead() < 0.15 || changes.length < 4); tries++) {
    stand = halfSpread(draw);
    changes = tried(draw, stand);
  }
  const [best, ...rest] = changes.map(withoutGain);
  if (best === undefined) throw new RangeError('nothing changes the stand');
  return choice({
    prompt: `A stand: ${words(stand).toLowerCase()}, the tube to the right of foot A. A push of ${kg(pushKg(stand))} tips it. ${pickOne(draw.random, askers)} wants it steadier. What helps most?`,
    explanation: 'More room between plumb point and line, or more weight low down: both help.',
    right: best,
    wrong: draw.random.shuffle(rest).slice(0, 3),
  });
}

function tickWhatHelps(draw: ItemDraw) {
  const { random } = draw;
  const stand = halfSpread(draw);
  const all = tried(draw, stand);
  const { marginMm } = stabilityOf(stand);
  const { heightMm } = centreOf(stand);
  const higher = `Draw the legs out by ${String(random.integer(10, 25))} cm more, and push them closer`;
  return several({
    prompt: `${words(stand)}. The tube hangs to the right of foot A. Tick each single change that makes this stand harder to tip.`,
    explanation: `Now the plumb point is ${String(Math.round(marginMm))} mm inside, and the weight sits ${String(Math.round(heightMm / 10))} cm up. More room or less height helps.`,
    right: random
      .shuffle(all.filter(({ gain }) => gain > 0))
      .slice(0, 2)
      .map(({ text, reason }) => ({ text, reason })),
    wrong: [
      ...all.filter(({ gain }) => gain < 0).map(({ text, reason }) => ({ text, reason })),
      { text: higher, reason: 'Higher and narrower: both make it tip more easily.' },
    ],
  });
}

export const wideAndLow: ItemFamily = {
  id: 'wide-and-low',
  lesson: 'standing-it-up',
  objective: 'steady',
  skill: 'assemble',
  title: 'What makes a stand steadier',
  version: 1,
  templates: {
    'easiest-first': easiestFirst,
    'how-hard-a-push': howHardAPush,
    'what-helps-most': whatHelpsMost,
    'tick-what-helps': tickWhatHelps,
  },
};
