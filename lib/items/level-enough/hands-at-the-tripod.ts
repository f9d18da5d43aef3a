import { act, type TripodAction } from '../../levelling/tripod-actions';
import { bubbleOf, startOf, type TripodSite, type TripodState } from '../../levelling/tripod';
import { choice, match, order, several } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { leaningHead, legAndOthers, legNames } from './leaning-head';
import { tripodFromTheSide } from './tripod-from-the-side';
import { legsWords, placeWords, vialDrawing, vialShowing } from './vial-drawing';
import { figures, grounds, one } from './words';

/** What comes of several actions; each of them must be possible. */
function carriedOut(site: TripodSite, actions: readonly TripodAction[]): TripodState {
  let state = startOf(site);
  for (const action of actions) {
    const outcome = act(site, state, action);
    if (!outcome.ok) throw new Error(`at the tripod "${action.do}" is not possible here`);
    state = outcome.state;
  }
  return state;
}

const scopes = ['Wren', 'Heron', 'Owl'] as const;

function underTheTube({ random }: ItemDraw) {
  const { leg } = legAndOthers(random);
  const [scope, ground] = [one(random, scopes), one(random, grounds)];
  const name = legNames[leg];
  const [a, b] = one(random, [
    ['Your partner', 'your partner'],
    ['A second person', 'the second person'],
    ['The teacher', 'the teacher'],
  ] as const);
  return order({
    prompt: `${scope} already sits on its tripod ${ground} when the bubble asks for leg ${name}, and you do not want to take the tube off. ${a} helps. Put the work in order.`,
    explanation: `The weight is in somebody’s hands from before the lock opens until after it is shut. Taking the tube off first is better still.`,
    steps: [
      `${a} takes the weight of mount and tube`,
      `Open the lock of leg ${name}, fingers clear of the joint`,
      `Slide leg ${name} while it is held`,
      `Lock leg ${name} and try whether it holds`,
      `Tell ${b}: now you can let go`,
    ],
    rules: [
      { first: 0, then: 1, reason: 'an open leg holds nothing up: under the weight it runs in.' },
      { first: 1, then: 2, reason: 'a locked leg does not slide.' },
      { first: 2, then: 3, reason: 'lock it where it shall stay.' },
      { first: 3, then: 4, reason: 'nobody lets go before the leg is locked.' },
    ],
  });
}

function openedAlone({ random }: ItemDraw) {
  const { leg } = legAndOthers(random);
  const held = random.next() < 0.5;
  const name = legNames[leg];
  const scope = one(random, scopes);
  const { site } = leaningHead({ legADeg: 0, tiltDeg: 1, risesTowardsDeg: 120 * leg });
  const state = carriedOut(site, [
    { do: 'tube-on' },
    ...(held ? [{ do: 'hold' } as const] : []),
    { do: 'open', leg },
  ]);
  const ranIn = state.ranIn === leg;
  const alone = {
    text: `Leg ${name} runs in at once, and ${scope} goes over`,
    reason: 'With the weight on it and nobody holding, an open leg slides in to its end.',
  };
  const stays = {
    text: `Leg ${name} stays as long as it is, ready to be slid`,
    reason: 'An open lock holds nothing. What holds is a pair of hands, or no weight at all.',
    misconception: 'open-lock-holds' as const,
  };
  const withHands = {
    text: `Leg ${name} is loose, and ${scope} rests in the helper’s hands`,
    reason: 'The weight is held, so the leg can be slid. Lock it before anybody lets go.',
  };
  const slow = {
    text: `Leg ${name} sinks slowly, so there is time to turn the lock`,
    reason: 'There is no time: the weight is on it all at once.',
    misconception: 'open-lock-holds' as const,
  };
  const tray = {
    text: `Nothing moves: the tray keeps leg ${name} from sliding`,
    reason: 'The tray keeps the legs from spreading. It does not hold a leg’s length.',
  };
  return choice({
    prompt: `${scope} sits on its tripod ${one(random, grounds)}. ${held ? 'A helper holds mount and tube with both hands.' : 'Nobody holds it.'} You open the lock of leg ${name}. What happens?`,
    explanation: ranIn
      ? 'Level before the tube goes on. If it is on already, have the weight held first, or take the tube off.'
      : 'That is the right order: first hands on the weight, then the lock.',
    afterwards: tripodFromTheSide(ranIn),
    right: ranIn ? alone : withHands,
    wrong: ranIn
      ? [stays, slow, tray]
      : [
          { ...alone, reason: 'It would, if nobody held the weight. Here somebody does.' },
          { ...tray },
          { ...stays, text: `Leg ${name} carries its share of ${scope} as before` },
        ],
  });
}

function softFoot({ random }: ItemDraw) {
  const { leg } = legAndOthers(random);
  const legADeg = 30 * random.integer(0, 11);
  const sinksMm = random.integer(10, 24);
  const flat = leaningHead({ legADeg, tiltDeg: 0, risesTowardsDeg: 0 }).site;
  const [a, b, c] = flat.legs;
  const site: TripodSite = {
    ...flat,
    legs: [
      leg === 0 ? { ...a, sinksMm } : a,
      leg === 1 ? { ...b, sinksMm } : b,
      leg === 2 ? { ...c, sinksMm } : c,
    ],
  };
  const after = bubbleOf(site, carriedOut(site, [{ do: 'tube-on' }]));
  const where = (east: number, north: number) =>
    `Off: ${placeWords({ eastMm: east, northMm: north })}`;
  const name = legNames[leg];
  return choice({
    prompt: `Foot ${name} stands on soft turf ${one(random, grounds)}, and nobody has trodden it in. The bubble was brought into the ring. Now the tube goes on, and foot ${name} sinks ${String(sinksMm)} mm. Where does the bubble stand?`,
    drawing: vialDrawing({
      site,
      bubble: { eastMm: 0, northMm: 0 },
      alternative: `A round vial from above. ${legsWords(site)} The bubble stands in the ring, before the tube goes on.`,
    }),
    afterwards: vialShowing(site, after, { eastMm: 0, northMm: 0 }),
    explanation: `The head sinks over foot ${name}, and the bubble goes to the high side, away from it. Tread every foot in before you level; look at the bubble again when the tube is on.`,
    right: {
      text: where(after.eastMm, after.northMm),
      reason: `Away from foot ${name}, the side that now stands high.`,
    },
    wrong: [
      {
        text: where(-after.eastMm, -after.northMm),
        reason: `That is over foot ${name}, the low side now. The bubble goes up.`,
        misconception: 'bubble-shows-low-side',
      },
      {
        text: 'Still in the ring: it was level before the tube went on',
        reason: 'Level stays level only if the ground does not give.',
        misconception: 'level-afterwards',
      },
      {
        text: where(after.northMm, -after.eastMm),
        reason: 'That is across the line of the foot that sank. There nothing changed.',
      },
    ],
  });
}

function whichAreSafe({ random }: ItemDraw) {
  const { leg, others } = legAndOthers(random);
  const [name, other] = [legNames[leg], legNames[others[0]]];
  const safe = [
    { text: `Level with the tube still in its case`, reason: 'No weight, no fall. That is best.' },
    {
      text: `Tread foot ${name} in before you level`,
      reason: 'A foot that has gone in does not go in later.',
    },
    {
      text: `Lock leg ${name} before you open leg ${other}`,
      reason: 'One leg at a time keeps the tripod standing.',
    },
    {
      text: `Look at the bubble again when the tube is on`,
      reason: 'The weight may have pressed a foot in.',
    },
    {
      text: `Hold leg ${name} by its lower part while it slides`,
      reason: 'So it goes where you want, and your fingers are clear of the joint.',
    },
  ];
  const unsafe = [
    {
      text: `Open legs ${name} and ${other} together, to save time`,
      reason: 'With two legs loose the tripod goes over.',
    },
    {
      text: `Open leg ${name} under the tube, since its lock is stiff`,
      reason: 'A stiff lock holds nothing once it is open: the leg runs in.',
      misconception: 'open-lock-holds' as const,
    },
    {
      text: `Straighten leg ${name} with your fingers in the joint`,
      reason: 'Joints and braces pinch. Take hold below them.',
    },
    {
      text: `Level by putting a stone under foot ${name}`,
      reason: 'A stone rocks and rolls away. Let the leg out instead.',
    },
    {
      text: `Let leg ${name} slide by itself and catch the tube`,
      reason: 'Nobody catches a tube that goes over. It can hurt, and it breaks.',
      misconception: 'open-lock-holds' as const,
    },
  ];
  return several({
    prompt: `Leg ${name} has to be changed ${one(random, grounds)}. Which of these are good practice?`,
    explanation: 'Feet in, tube off or held, one leg at a time, locked before the next.',
    right: random.shuffle(safe).slice(0, 2),
    wrong: random.shuffle(unsafe).slice(0, 3),
  });
}

function matchDangers({ random }: ItemDraw) {
  const { leg, others } = legAndOthers(random);
  const [name, other] = [legNames[leg], legNames[others[1]]];
  const mm = random.integer(10, 20);
  const all = [
    {
      left: `The tube is on and leg ${name} has to move`,
      right: 'A second person holds the weight',
      reason: 'an open leg runs in under the weight.',
    },
    {
      left: `Leg ${name} is open and leg ${other} must move too`,
      right: 'Lock the one before you open the other',
      reason: 'with two legs loose the tripod goes over.',
    },
    {
      left: `Foot ${name} could sink ${figures(mm)} mm into the turf`,
      right: 'Tread it in before you level',
      reason: 'what has sunk already does not sink later.',
    },
    {
      left: `A leg of the tripod stands where people walk`,
      right: 'Mark it with something light while it is day',
      reason: 'in the dark nobody sees a leg.',
    },
    {
      left: `The Sun is still up while you level`,
      right: 'Tube and finder stay capped',
      reason: 'a look at the Sun blinds at once.',
    },
  ];
  return match({
    prompt: `Before the evening ${one(random, grounds)}, around leg ${name}: what goes with what?`,
    explanation: 'Each danger at the tripod has a habit that takes it away.',
    pairs: random.shuffle(all).slice(0, 4),
    spare: ['Make the lock a little looser'],
  });
}

/** Hands, feet and locks: what keeps a tripod standing. */
export const handsAtTheTripod: ItemFamily = {
  id: 'hands-at-the-tripod',
  lesson: 'level-enough',
  objective: 'safe-legs',
  skill: 'safety',
  title: 'Hands, feet and locks at the tripod',
  version: 1,
  templates: {
    'under-the-tube': underTheTube,
    'opened-alone': openedAlone,
    'soft-foot': softFoot,
    'which-are-safe': whichAreSafe,
    'match-dangers': matchDangers,
  },
};
