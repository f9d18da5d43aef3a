import { fullForm } from '@/lib/grading/bench/clock-and-place/clock-and-place-work';
import { mountFormSchema } from '@/lib/grading/bench/clock-and-place/clock-and-place-submission';
import type { ClockAndPlaceVariant } from '@/lib/variants/bench/clock-and-place/clock-and-place-variant';
import { overlayOf } from './overlay-stars';
import { degText } from './clock-words';

/** Up to three, each telling more; none says the answer. */
export function clockHints(variant: ClockAndPlaceVariant): readonly string[] {
  switch (variant.template) {
    case 'enter-the-card':
      return [
        'Go row by row, and say each one aloud as the mount wants it: hours from 0 to 23, degrees and minutes.',
        'After midday add 12 to the hour; twelve at night is 0, twelve at noon stays 12. A decimal of a degree is 60 minutes times what stands behind the point.',
        'Summer time: is the date between the two changes? Hours from UTC are always those without summer time; the switch adds the hour.',
      ];
    case 'check-the-form':
      return [
        'Take one row at a time: read the card, write down what you would enter, and only then look at the form.',
        'Ask of each row what people get wrong there: morning or evening, day and month, east or west, the summer hour counted twice.',
        'Two rows are wrong, no more. In practice the two skies help: a turn about the pole is time or longitude, a pole at another height is latitude.',
      ];
    case 'dew-on-the-card':
      return dewHints(variant);
    case 'night-of-the-change':
      return [
        'Draw the clock’s hand: where it jumps forward an hour is left out, where it jumps back an hour is lived twice.',
        'A time inside the hour left out was never shown: the watch ran by the old rule, or somebody set it too early. A time inside the hour lived twice may be before or after.',
        'The two moments lie an hour apart in UTC. Tick them, ask, and enter the one that is meant: the summer-time row tells them apart.',
      ];
    case 'far-from-home':
      return [
        'First to UTC, then to the place. From the watch take off what it is ahead of UTC, or add what it is behind.',
        'Then add what the clocks here are ahead, or take off what they are behind, with the summer hour if it is in force. Past midnight the date changes too.',
        'South is S, west of Greenwich is W. Summer in the south is around New Year.',
      ];
    case 'by-the-needle':
      return [
        'The needle does not show true north. Ask first on which side of the needle true north lies.',
        'Where the needle points east of true north, true north lies left of the needle, and bearings to the left of 0° are counted down from 360°.',
        'The tube has to look as many degrees left of the needle as it points east, or right of it as it points west.',
      ];
  }
}

function dewHints(variant: ClockAndPlaceVariant): readonly string[] {
  const given = mountFormSchema.safeParse(variant.given).data;
  const overlay = given === undefined ? null : overlayOf(variant, fullForm(given) ?? given, null);
  const turnDeg = Math.abs(overlay?.believed.turnDeg ?? 0);
  const tilted =
    overlay !== null && Math.abs(overlay.believed.latitudeDeg - variant.sky.latitudeDeg) > 0.1;
  return [
    'Compare the two poles first. At another height: latitude. At the same place: the sky is only turned, by a clock, a date or a longitude.',
    'An hour of time is 15.04° of turn, a degree of longitude is one degree, a day of the date is one degree and a month 30°. East for west is twice the longitude.',
    tilted
      ? 'The poles stand at different heights. By how many degrees? So many degrees is the latitude off, north or south.'
      : `The sky is turned by ${degText(turnDeg)} about the pole. Which of the three rows can do just that?`,
  ];
}
