import { choice } from '../build-item';
import type { ItemDraw } from '../item-family';
import { someKit } from './kit-fields';
import { pickOne } from '../../variants/pick-one';

type Situation = {
  says: string;
  next: string;
  because: string;
  /** What somebody hasty would do, and what would come of it. */
  hasty: readonly {
    text: string;
    reason: string;
    misconception?: 'dot-is-centring' | 'push-by-hand';
  }[];
};

/** What to do next, at one moment of centring; common practice, no source. */
const situations: readonly Situation[] = [
  {
    says: 'The slew has ended. By eye you see the star about a hand’s breadth to the left of where the tube looks',
    next: 'Press left, looking along the tube',
    because: 'The star is far outside finder and eyepiece, so the eye must do it.',
    hasty: [
      {
        text: 'Search for it in the eyepiece',
        reason: 'An eyepiece shows a degree or two at most. Searching with it takes all night.',
      },
      {
        text: 'Open a clutch and push the tube there',
        reason: 'The mount counts its motors’ turns only. A pushed tube makes its readings untrue.',
        misconception: 'push-by-hand',
      },
      {
        text: 'Press “This is the star”',
        reason: 'The mount would believe that the star is where the tube looks: degrees wrong.',
      },
    ],
  },
  {
    says: 'The red dot sits on the star',
    next: 'Look into the eyepiece and centre it',
    because:
      'The dot and the tube never agree to the arcminute. Only the eyepiece shows the middle.',
    hasty: [
      {
        text: 'Press “This is the star” at once',
        reason: 'A dot is good to a quarter of a degree or so. The eyepiece is far better.',
        misconception: 'dot-is-centring',
      },
      {
        text: 'Turn the finder’s adjusters',
        reason: 'That moves the dot, not the star. It is set when both views show one star.',
      },
      {
        text: 'Go on to the second star',
        reason: 'The mount has not been told of the first: nothing was confirmed.',
      },
    ],
  },
  {
    says: 'The dot is on the star, but the eyepiece shows a wide, dim disc',
    next: 'Turn the focuser to make it small',
    because:
      'That disc is the star out of focus. In focus it is a point, and its place can be judged.',
    hasty: [
      {
        text: 'Slew on to another star',
        reason: 'The star is there. It is only out of focus.',
      },
      {
        text: 'Press “This is the star” now',
        reason: 'First see that it is your star, and where its middle is.',
      },
      {
        text: 'Search round about with the rockers',
        reason: 'It is in the field already: the disc is its light, spread out.',
      },
    ],
  },
  {
    says: 'The star is in the middle. Your last press was to the left',
    next: 'Go past it, then come back rightwards',
    because: 'This mount reads true only after moves right and up. The last one went left.',
    hasty: [
      {
        text: 'Press “This is the star” now',
        reason: 'The play is still in the reading. The star is centred; the reading is not.',
      },
      {
        text: 'Wait for the play to settle',
        reason: 'Play does not settle. Only a move the right way takes it up.',
      },
      {
        text: 'Push the tube a little rightwards',
        reason: 'A hand on the tube moves it behind the motor’s back.',
        misconception: 'push-by-hand',
      },
    ],
  },
  {
    says: 'Both stars are confirmed, and the hand control says that they agree',
    next: 'Check on a third star',
    because:
      'Two stars nearly always agree. A third one tells whether the mount is right elsewhere.',
    hasty: [
      {
        text: 'Start to observe at once',
        reason: 'Perhaps. But a wrong star would not be noticed until the first target is missed.',
      },
      {
        text: 'Confirm the first star again',
        reason: 'The same star twice adds nothing that is not known.',
      },
      {
        text: 'Set the start position anew',
        reason: 'That would throw the alignment away.',
      },
    ],
  },
  {
    says: 'The hand control proposes a star that stands behind a tree',
    next: 'Press “Another star”',
    because: 'The mount knows nothing of trees. It has other stars to propose.',
    hasty: [
      {
        text: 'Confirm it where it should be',
        reason: 'A star that is not seen cannot be centred, so the reading is a guess.',
      },
      {
        text: 'Centre the brightest star nearby instead',
        reason: 'The mount would take it for the one it named: a wrong star.',
      },
      {
        text: 'Move the whole tripod to the side',
        reason: 'Then the start position is lost, and with it all that came before.',
      },
    ],
  },
  {
    says: 'The star drifts slowly out of the eyepiece before the alignment',
    next: 'Follow it with the rockers, then confirm',
    because:
      'Before the alignment the mount cannot track. Press the button just when it is centred.',
    hasty: [
      {
        text: 'Take it for a loose clutch and tighten',
        reason: 'The sky turns. A mount that is not aligned yet does not follow.',
      },
      {
        text: 'Confirm it at the edge of the field',
        reason: 'The whole way from the middle to the edge would go into the readings.',
      },
      {
        text: 'Hold the tube still with your hand',
        reason: 'The tube does stand still. It is the star that moves.',
        misconception: 'push-by-hand',
      },
    ],
  },
];

export function nextMove({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const { says, next, because, hasty } = pickOne(random, situations);
  return choice({
    prompt: `At ${kit.name}, whose slews end with moves right and up: ${says.charAt(0).toLowerCase()}${says.slice(1)}. What next?`,
    explanation: because,
    right: { text: next, reason: because },
    wrong: random.shuffle(hasty),
  });
}
