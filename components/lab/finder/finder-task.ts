import { angleInWords } from '@/components/sky/angle-words';
import type { SettingState } from '@/lib/finder/setting';
import type { FinderVariant } from '@/lib/variants/bench/finder/finder-variant';
import { clockTime, eyepieceName, metresInWords, placeInWords } from './finder-words';

/** What is asked, in two or three sentences. */
export function taskInWords(variant: FinderVariant): string {
  const goal = `the dot within half the view of the ${eyepieceName(variant, 'high')} eyepiece (${angleInWords(variant.eyepieces.high.radiusArcmin)})`;
  switch (variant.template) {
    case 'free-target':
      return `Choose what to set the finder on, set it and lock it. On a star it must then have ${goal}. Leave the telescope capped.`;
    case 'far-ones-by-the-sun':
      return `Everything far away stands by the Sun today. Choose what to set the finder on, now or at dusk, set it and lock it: on a star it must have ${goal}.`;
    case 'day-then-dusk':
      return `By day set the finder as well as what is here allows, lock it and cap the telescope. Then wait for dusk, loosen the screws and set it again on a light in the sky: on a star it must have ${goal}.`;
    case 'near-then-predict':
      return `From this yard only ${givenInWords(variant)} can be used. Set the finder on it and lock it. Then foretell: tonight the dot is put on a star. Where in the eyepiece will the star sit?`;
    case 'set-by-another':
      return `Somebody has set and locked this finder by day, on something near. Put the dot on a light in the sky and find out how far from the middle of the eyepiece it then sits, and on what it was set. Then set it right: ${goal}.`;
  }
}

function givenInWords({ day, givenTargetId }: FinderVariant): string {
  const given = day?.targets.find(({ id }) => id === givenTargetId);
  return given === undefined
    ? 'what stands near'
    : `${given.name}, ${metresInWords(given.distanceM)} away,`;
}

/** What time it is, and where the Sun stands. */
export function hourInWords(variant: FinderVariant, { dusk }: SettingState): string {
  const { day, daysLater } = variant;
  const otherDay =
    daysLater === 0
      ? ''
      : ' On the date of this task the Sun does not both rise and set here; this is the next day on which it does.';
  if (dusk || day === null) {
    return `It is ${clockTime(variant.dusk?.localTime ?? '')}. The Sun has set and the first lights are out. They stand still here while you work; outdoors they drift.${otherDay}`;
  }
  return `It is ${clockTime(day.localTime)}. The Sun stands ${placeInWords(day.sun)}.${otherDay}`;
}
