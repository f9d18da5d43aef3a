import { isBenchLab } from '@/lib/variants/bench/bench-labs';
import { labOptions, type Lab } from '@/lib/variants/labs';

/** What the button for one more practice of a lab says. */
export function practiseAgain(lab: Lab): string {
  if (labOptions[lab].withoutSky === true) return 'Practise on other questions';
  return isBenchLab(lab) ? 'Practise another round' : 'Practise on another sky';
}
