import { asSeen, type FieldOffset } from '../../optics/image-orientation';
import { choice, match, order, point } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';
import { eyepieceDrawing, fieldShapes, inView, wayText } from './eyepiece-view';
import {
  centringRadius,
  closeUpId,
  focalText,
  orientationText,
  radiusOf,
  someKit,
} from './kit-fields';
import { nextMove } from './next-move';
import { angleText } from './words';
import { pickOne } from '../../variants/pick-one';
import { capitalised } from '../../wording/capital';

/** How far the finder's window reaches from its dot, degrees: as in the alignment run. */
export const finderReachDeg = 4;

/** From the start to the second star, in the one order in which each step has what it needs. */
const steps = [
  {
    text: 'Set the tube to true north and level',
    because: 'the mount counts every turn from this start.',
  },
  {
    text: 'Name the star to the hand control, so that the mount slews',
    because: 'only a slew brings the star near; look where the tube has stopped.',
  },
  {
    text: 'Look along the tube with the bare eye, and steer until the star comes near the dot',
    because: 'the eye sees the whole sky, so it is the view to search with.',
  },
  {
    text: 'Look through the finder and put the red dot on the star',
    because:
      'the finder’s window is wide, and the eyepiece is not: first the dot, then the eyepiece.',
  },
  {
    text: 'Look into the eyepiece and focus the star',
    because: 'the dot only brings the star into the field; the eyepiece shows where it really is.',
  },
  {
    text: 'Bring the star to the middle of the field',
    because: 'the readings must be those of the middle.',
  },
  {
    text: 'End with short moves right and up',
    because: 'the play must be taken up before the mount reads its axes.',
  },
  {
    text: 'Press “This is the star”',
    because: 'now the mount has one star, and goes on to the next.',
  },
] as const;

function viewsInOrder({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const star = pickOne(random, ['Vega', 'Capella', 'Arcturus', 'Deneb', 'Regulus', 'Aldebaran']);
  // Four to six of the steps, in their order; the last is always there.
  const left = random.shuffle(steps.slice(0, -1)).slice(0, random.integer(3, 5));
  const kept = steps.filter((step) => left.includes(step) || step.text.startsWith('Press'));
  return order({
    prompt: `${kit.name} is to be aligned, and ${star} is to be one of the two stars. Put these steps in order.`,
    steps: kept.map(({ text }) => text),
    rules: kept.slice(1).map((_, index) => ({
      first: index,
      then: index + 1,
      reason: kept[index]?.because ?? '',
    })),
    explanation:
      'From the widest view to the narrowest: eye, finder, eyepiece. Each brings the star into the next one. Then middle, last moves, and the button.',
  });
}

function closestView({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const wide = centringRadius(kit);
  const narrowId = closeUpId(kit);
  const narrow = radiusOf(kit, narrowId);
  const reach = 60 * finderReachDeg;
  const far = Math.round(random.between(1.2 * reach, 2.5 * reach) / 30) * 30;
  const inFinder = Math.round(random.between(1.25 * wide, 0.8 * reach));
  const inWide = Math.round(random.between(1.25 * narrow, 0.85 * wide));
  const inNarrow = Math.max(1, Math.round(random.between(0.1, 0.8) * narrow));
  const narrowName = `The ${focalText(kit, narrowId)} eyepiece`;
  const wideName = `The ${focalText(kit, kit.centringEyepieceId)} eyepiece`;
  return match({
    prompt: `Four slews with ${kit.name} end beside their stars. In which view is each star still to be seen? Take the closest-up view that still shows it. The finder’s window reaches ${String(finderReachDeg)}° from its dot; the two eyepieces show ${angleText(wide)} and ${angleText(narrow)} to each side.`,
    pairs: [
      {
        left: `${angleText(far)} off`,
        right: 'The bare eye only',
        reason: `The finder’s window reaches ${String(finderReachDeg)}°; this is more.`,
      },
      {
        left: `${angleText(inFinder)} off`,
        right: 'The finder',
        reason: `Outside the ${angleText(wide)} of the wide eyepiece, inside the finder’s ${String(finderReachDeg)}°.`,
      },
      {
        left: `${angleText(inWide)} off`,
        right: wideName,
        reason: `Inside its ${angleText(wide)}, outside the ${angleText(narrow)} of the other.`,
      },
      {
        left: `${angleText(inNarrow)} off`,
        right: narrowName,
        reason: `Inside its ${angleText(narrow)}.`,
      },
    ],
    explanation:
      'Each view shows less sky than the one before, and shows it larger. A star must be inside a view before that view can help.',
  });
}

const signs = [-1, 1] as const;

function whichRockers({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const radius = centringRadius(kit);
  const seen: FieldOffset = {
    rightArcmin: pickOne(random, signs) * Math.round(random.between(0.3, 0.65) * radius),
    upArcmin: pickOne(random, signs) * Math.round(random.between(0.3, 0.65) * radius),
  };
  // Each way of showing the sky undoes itself: what is seen, seen again, is what is on the sky.
  const onSky = asSeen(seen, kit.orientation);
  const press = (across: number, along: number): string =>
    `Press ${wayText({ rightArcmin: across, upArcmin: along })}`;
  const seenAfter = (across: number, along: number): FieldOffset =>
    asSeen(
      {
        rightArcmin: onSky.rightArcmin - across * Math.abs(onSky.rightArcmin),
        upArcmin: onSky.upArcmin - along * Math.abs(onSky.upArcmin),
      },
      kit.orientation,
    );
  const wanted = [Math.sign(onSky.rightArcmin), Math.sign(onSky.upArcmin)] as const;
  const all = signs.flatMap((across) => signs.map((along) => [across, along] as const));
  return choice({
    prompt: `In ${kit.name}’s ${focalText(kit, kit.centringEyepieceId)} eyepiece, which ${orientationText[kit.orientation]}, a star looks like this. The rockers move the tube on the sky. What brings the star to the middle?`,
    drawing: eyepieceDrawing(
      fieldShapes([seen], radius, { rings: true }),
      `The field of the eyepiece, ${angleText(radius)} to each side. In the picture the star stands ${angleText(Math.abs(seen.rightArcmin))} ${seen.rightArcmin > 0 ? 'right' : 'left'} of the middle and ${angleText(Math.abs(seen.upArcmin))} ${seen.upArcmin > 0 ? 'above' : 'below'} it.`,
    ),
    right: {
      text: press(wanted[0], wanted[1]),
      reason: `On the sky the star is ${wayText(onSky)} of the middle. The tube must go there.`,
    },
    wrong: all
      .filter(([across, along]) => across !== wanted[0] || along !== wanted[1])
      .map(([across, along]) => ({
        text: press(across, along),
        reason: `Then the star would go farther off, ${wayText(offAxes(seenAfter(across, along)))} in the picture: on the sky it stands ${wayText(onSky)} of the middle.`,
        // As it looks in the picture, in an eyepiece that turns or mirrors.
        ...(across === Math.sign(seen.rightArcmin) && along === Math.sign(seen.upArcmin)
          ? { misconception: 'picture-for-sky' as const }
          : {}),
      })),
    explanation: `${kit.name} ${orientationText[kit.orientation]}. So what looks ${wayText(seen)} is ${wayText(onSky)} on the sky. The tube goes toward the star. Not sure? Press a little and look which way it goes.`,
  });
}

/** Nought where an axis was put right. */
const offAxes = ({ rightArcmin, upArcmin }: FieldOffset): FieldOffset => ({
  rightArcmin: Math.abs(rightArcmin) < 1e-9 ? 0 : rightArcmin,
  upArcmin: Math.abs(upArcmin) < 1e-9 ? 0 : upArcmin,
});

const ways = [
  { name: 'right', rightArcmin: 1, upArcmin: 0 },
  { name: 'left', rightArcmin: -1, upArcmin: 0 },
  { name: 'up', rightArcmin: 0, upArcmin: 1 },
  { name: 'down', rightArcmin: 0, upArcmin: -1 },
] as const;

function whereItGoes({ random, world }: ItemDraw) {
  const kit = someKit(random, world);
  const radius = centringRadius(kit);
  const moved = pickOne(random, ways);
  const by = Math.round(random.between(0.45, 0.7) * radius);
  // The star stays where it is on the sky, so beside the moved tube it lies the other way.
  const goes = asSeen(
    { rightArcmin: -by * moved.rightArcmin, upArcmin: -by * moved.upArcmin },
    kit.orientation,
  );
  const spots = ways.map(({ name, rightArcmin, upArcmin }) => ({
    name,
    seen: { rightArcmin: by * rightArcmin, upArcmin: by * upArcmin },
  }));
  const isRight = ({ seen }: (typeof spots)[number]): boolean =>
    Math.hypot(seen.rightArcmin - goes.rightArcmin, seen.upArcmin - goes.upArcmin) < 1e-6;
  const spotOf = (spot: (typeof spots)[number]) => ({
    ...inView(spot.seen, radius),
    where: `${capitalised(spot.name)} of the middle`
      .replace('Up of', 'Above')
      .replace('Down of', 'Below'),
  });
  const why = `Moving the tube ${moved.name} leaves the star ${opposite[moved.name]} on the sky, and ${kit.name} ${orientationText[kit.orientation]}.`;
  const right = spots.find(isRight);
  if (right === undefined) throw new Error('a star goes one of four ways');
  return point({
    prompt: `A star is in the middle of ${kit.name}’s ${focalText(kit, kit.centringEyepieceId)} eyepiece, which ${orientationText[kit.orientation]}. You move the tube ${String(by)}′ ${moved.name} on the sky. Point at where you see the star then.`,
    drawing: eyepieceDrawing(
      fieldShapes([], radius),
      `The round field of the eyepiece, ${angleText(radius)} to each side, with a cross in its middle, where the star stands now.`,
    ),
    right: { ...spotOf(right), reason: why },
    wrong: spots
      .filter((spot) => spot !== right)
      .map((spot) => ({
        ...spotOf(spot),
        reason: why,
        ...(spot.name === moved.name && kit.orientation === 'true'
          ? { misconception: 'star-goes-with-tube' as const }
          : {}),
      })),
    explanation: why,
    afterwards: eyepieceDrawing(
      fieldShapes([goes], radius),
      `The star now stands ${String(by)}′ ${right.name} of the middle of the picture.`,
    ),
  });
}

const opposite = {
  right: 'to the left of it',
  left: 'to the right of it',
  up: 'below it',
  down: 'above it',
} as const;

/** From the sky to the middle of the eyepiece. */
export const eyeFinderEyepiece: ItemFamily = {
  id: 'eye-finder-eyepiece',
  lesson: 'align-on-two-stars',
  objective: 'approach',
  skill: 'align',
  title: 'From eye to finder to eyepiece',
  version: 1,
  templates: {
    'views-in-order': viewsInOrder,
    'closest-view': closestView,
    'which-rockers': whichRockers,
    'where-it-goes': whereItGoes,
    'next-move': nextMove,
  },
};
