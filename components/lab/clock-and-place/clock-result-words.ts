import type { SlipWords } from '@/components/grading/bench-result-view';
import type {
  ClockAndPlaceCriterion,
  ClockAndPlaceResult,
  ClockAndPlaceSlip,
} from '@/lib/grading/bench/clock-and-place/clock-and-place-result';
import { largestBaseTiltDeg } from '@/lib/pointing/align';
import type { ClockAndPlaceVariant } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import { dayOfYear, degText, missInWords, readingText, rowsInWords, rowText } from './clock-words';
import { verdictWords } from './verdict-words';

export const criterionNames: Readonly<Record<ClockAndPlaceCriterion, string>> = {
  entries: 'Rows that are right',
  sky: 'How well the mount’s sky fits the real one',
  found: 'Wrong rows found, right ones left alone',
  named: 'The wrong row named by where the tube landed',
  asked: 'What the time on the card can mean',
  start: 'Start direction',
};

/** From here on a star is in the eyepiece or as good as: a minute of the clock. */
const fitsDeg = 0.25;

/** The whole of it in one sentence. */
export function clockVerdict(
  { fieldRadiusDeg }: ClockAndPlaceVariant,
  { missDeg, slips }: ClockAndPlaceResult,
): string {
  if (missDeg <= fitsDeg) {
    return slips.length === 0
      ? 'The mount’s sky lies on the real one: its first slew will find the star.'
      : 'The mount’s sky lies on the real one, though not everything on the way was right.';
  }
  const seen =
    missDeg <= fieldRadiusDeg
      ? 'the star would just be in the eyepiece'
      : 'the star would be outside the eyepiece';
  return `The first slew would miss by ${missInWords(missDeg)}: ${seen}.`;
}

/** What a two-star alignment would make of it, and what it leaves; null where nothing is off. */
export function afterAlignmentText({
  missDeg,
  leanDeg,
  moonDeg,
  clockAheadMinutes,
}: ClockAndPlaceResult): string | null {
  if (missDeg <= fitsDeg) return null;
  const lean = leanDeg > largestBaseTiltDeg;
  const stars = lean
    ? `To an alignment on two stars the base would seem to lean by ${degText(leanDeg)}. A computer that believes no more than ${String(largestBaseTiltDeg)}° refuses that, as if the stars were swapped.`
    : `An alignment on two stars would absorb this for the stars: the base would seem to lean by ${degText(leanDeg)}, and that is corrected.`;
  const moon =
    clockAheadMinutes === 0
      ? ' The Moon’s place goes by the clock alone, and that was right.'
      : moonDeg < 0.05
        ? ''
        : ` The Moon moves among the stars with the clock, and would ${moonDeg > 30 ? 'be in quite another place' : `stay ${degText(moonDeg)} off`}; so would every rising and setting.`;
  return stars + moon;
}

/** What happened and how far off, why it matters, what to do next time. */
export function clockSlipWords(
  variant: ClockAndPlaceVariant,
  result: ClockAndPlaceResult,
  slip: ClockAndPlaceSlip,
): SlipWords {
  const { code, rows } = slip;
  const { right } = variant;
  const { form } = result;
  const off = `That alone moves the sky by ${missInWords(slip.missDeg)}.`;
  const instead = rows
    .map((row) => `${rowText(row, form)} instead of ${rowText(row, right)}`)
    .join(', and ');
  const words = (what: string, why: string, next: string): SlipWords => ({ what, why, next });
  switch (code) {
    case 'summer-hour-forgotten':
      return words(
        'Summer time was left off.',
        `Clocks stood an hour ahead, and in an hour the sky turns by 15.04°. ${off}`,
        'Before anything else, ask: is summer time in force tonight?',
      );
    case 'summer-hour-added':
      return words(
        'Summer time was switched on, though it was not in force.',
        `The mount takes the hour off again, and the sky turns back by 15.04°. ${off}`,
        'Compare the date with the two days on which the clocks change.',
      );
    case 'summer-hour-twice':
      return words(
        'The summer hour was counted twice: in the hours from UTC and by the switch.',
        `Hours from UTC are those of winter, and the switch adds the hour. ${off}`,
        'Enter the winter hours and leave the summer hour to the switch.',
      );
    case 'zone-sign':
      return words(
        `The hours from UTC have the wrong sign: ${instead}.`,
        `East of Greenwich clocks are ahead of UTC, west of it behind. ${off}`,
        'Ask where the Sun rises earlier: there the clock is ahead.',
      );
    case 'zone-off':
      return words(
        `The hours from UTC are not those of the card: ${instead}.`,
        `Every hour of it is 15.04° on the sky. ${off}`,
        'Read the hours without summer time off the card once more.',
      );
    case 'twelve-hours':
      return words(
        `Half a day is off: ${instead}.`,
        `Twelve at night is 0 h and twelve at noon is 12 h; every other hour after midday gains 12. The sky is turned by half a circle. ${off}`,
        'Write the time with 24 hours before you enter it.',
      );
    case 'watch-not-converted':
      return words(
        'The watch was entered as it stands, with the clocks of this place.',
        `It still shows home time. ${off}`,
        'Go to UTC first, then to the clocks here; or enter the watch’s own hours from UTC with it.',
      );
    case 'watch-wrong-way':
      return words(
        'The watch was changed the wrong way round.',
        `Now it is off by twice the difference. ${off}`,
        'Check with the daylight: your card is written at night.',
      );
    case 'time-off':
      return words(
        `The time is not that of the card: ${instead}.`,
        `Four minutes are a degree. ${off}`,
        'Say the time aloud and enter it with 24 hours.',
      );
    case 'day-and-month':
      return words(
        `Day and month are exchanged: ${instead}.`,
        `Each day the stars stand a degree further on at the same hour. ${off}`,
        'Look for what the card says of the order, or for the month in letters.',
      );
    case 'day-off':
      return words(
        `The date is a day off: ${instead}.`,
        `A star returns 3 min 56 s earlier each day: 0.986°. ${off}`,
        'Past midnight it is the next day, and another zone may have another date.',
      );
    case 'date-off':
      return words(
        `The date is not that of the card: ${instead}.`,
        `Each day is 0.986° of sky, each month 30°. ${off}`,
        'Read the date once more, month by its name.',
      );
    case 'latitude-side':
      return words(
        `North and south are exchanged: ${instead}.`,
        `The mount looks for the pole on the wrong side of the sky. ${off}`,
        'Ask which pole stands above your horizon.',
      );
    case 'longitude-side':
      return words(
        `East and west are exchanged: ${instead}.`,
        `That doubles the longitude: the sky is turned by twice as much. ${off}`,
        'A minus means west here; say the word before you choose the side.',
      );
    case 'place-exchanged':
      return words(
        'Latitude and longitude are exchanged.',
        `Latitude is north or south, longitude east or west, in whichever order they are written. ${off}`,
        'Go by the letters, not by the order.',
      );
    case 'decimals-as-minutes':
      return words(
        `Decimals of a degree were entered as minutes: ${instead}.`,
        `A degree has 60 minutes, not 100. On the sky it hardly shows. ${off}`,
        'Multiply what stands behind the point by 60: 0.68° are 41′.',
      );
    case 'latitude-off':
      return words(
        `The latitude is not that of the card: ${instead}.`,
        `The whole sky is tilted towards or away from the pole. ${off}`,
        'The pole stands as high as the latitude: check it there.',
      );
    case 'longitude-off':
      return words(
        `The longitude is not that of the card: ${instead}.`,
        `Each degree turns the sky by a degree. ${off}`,
        'Read it once more, degrees, minutes and side.',
      );
    case 'needle-not-corrected':
      return words(
        'The tube was laid along the needle.',
        `The needle points to magnetic north, and the mount takes that for true north. ${off}`,
        'Turn the tube by the declination: left of the needle where it points east, right where it points west.',
      );
    case 'needle-wrong-way':
      return words(
        'The needle was corrected the wrong way.',
        `Now the start is off by twice the declination. ${off}`,
        'A needle that points east of true north has true north on its left.',
      );
    case 'start-off':
      return words(
        'The tube does not look to true north.',
        `Whatever the start is off, every first slew is off along the horizon. ${off}`,
        'From the bearing 0° go as far to the left as the needle points east, or to the right as it points west.',
      );
    case 'wrong-row-missed':
      return words(
        `Not everything was found: ${rowsInWords(rows)} did not say what the card says.`,
        'What is not crossed out goes into the mount as it stands.',
        'Write down what you would enter before you look at the form.',
      );
    case 'right-row-crossed-out':
      return words(
        `A right row was crossed out: ${rowsInWords(rows)}.`,
        'Another way of writing is no mistake.',
        'Work both out to the same form, and compare then.',
      );
    case 'other-row-named':
      return words(
        `It was not the ${rowsInWords(rows)}.`,
        'The way in which the two skies differ belongs to another row.',
        'Poles first: at another height it is the latitude; else by how much is the sky turned, and what is that in hours, days or degrees?',
      );
    case 'other-row-same-sky':
      return words(
        `It was another row, but the ${rowsInWords(rows)} you entered makes the same sky.`,
        'From the landing alone the two cannot be told apart, so yours counts as much.',
        'At the telescope, compare each row with what you know for certain.',
      );
    case 'guessed':
      return words(
        `That night clocks showed this time ${verdictWords[variant.change?.verdict ?? 'plain']}.`,
        'Whoever enters it without asking has guessed an hour: 15.04° of sky, one time in two.',
        'Where a time does not exist or exists twice, name both moments and ask.',
      );
    case 'asked-for-nothing':
      return words(
        'That time was shown just once.',
        'Only the hour that is left out, or lived twice, is in doubt.',
        'Compare the time with the two times of the change.',
      );
    case 'other-readings':
      return words(
        'The two moments were others.',
        `It can mean ${(variant.change?.canMean ?? [])
          .flatMap((index) => variant.change?.readings[index] ?? [])
          .map((reading) => `${dayOfYear(reading)}, ${readingText(reading)}`)
          .join(', or ')}.`,
        'The two are an hour apart in UTC: the one by summer time, the other by winter time.',
      );
  }
}
