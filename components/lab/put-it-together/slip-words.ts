import type { SlipWords } from '@/components/grading/bench-result-view';
import type {
  PutItTogetherCriterion,
  PutItTogetherGate,
  PutItTogetherSlip,
} from '@/lib/grading/bench/put-it-together/put-it-together-result';
import { momentName, sightName, sightReason } from './sight-words';
import { consequenceOf, stepName, strayWords } from './step-words';

export const criterionName: Readonly<Record<PutItTogetherCriterion, string>> = {
  order: 'The order',
  complete: 'Everything it needs, and nothing else',
  unfolding: `Danger ${momentName.unfolding.toLowerCase()}`,
  lifting: `Danger ${momentName.lifting.toLowerCase()}`,
  finishing: `Danger ${momentName.finishing.toLowerCase()}`,
};

export const gateWords: Readonly<Record<PutItTogetherGate['id'], { title: string; text: string }>> =
  {
    'tube-fell': {
      title: 'the tube fell',
      text: 'It was let go, or its clamp opened, while nothing held it. Falling tubes break toes as well as glass: hands first, then the clamp.',
    },
    'tipped-over': {
      title: 'the stand tipped over',
      text: 'A load went onto what could not bear it yet. Spreader, leg locks, tray and bolt come before what stands on them.',
    },
    'caps-off-by-day': {
      title: 'a cap came off by day',
      text: 'Tube and finder stay capped until the Sun has set: one look at it through a telescope takes an eye’s sight for good.',
    },
  };

export function slipWords(slip: PutItTogetherSlip): SlipWords {
  switch (slip.code) {
    case 'too-early':
      return {
        what: `“${stepName[slip.after]}” came before “${stepName[slip.before]}”.`,
        why: consequenceOf(slip.before, slip.after),
        next: `First: ${stepName[slip.before].toLowerCase()}.`,
      };
    case 'left-undone':
      return {
        what: `“${stepName[slip.step]}” had been left out, and was left out for longer.`,
        why: 'What goes on top of it makes it worse.',
        next: 'Go over a stand that somebody else set up before you put anything on it.',
      };
    case 'missing':
      return {
        what: `“${stepName[slip.step]}” was left out.`,
        why: 'It belongs to this telescope.',
        next: 'Look over the bench once more before you say that you are done.',
      };
    case 'stray':
      return {
        what: `“${stepName[slip.step]}” has no place in this.`,
        why: strayWords[slip.step] ?? '',
        next: 'Ask of each part what it is for before it goes on.',
      };
    case 'hazard-missed':
      return {
        what: `${momentName[slip.moment]} you passed over: ${sightName[slip.sight].toLowerCase()}.`,
        why: sightReason[slip.sight],
        next: 'Say it aloud, and put it right before anybody goes on.',
      };
    case 'not-a-hazard':
      return {
        what: `${momentName[slip.moment]} you marked: ${sightName[slip.sight].toLowerCase()}.`,
        why: sightReason[slip.sight],
        next: 'Keep your warnings for what can hurt somebody: then they are heard.',
      };
  }
}
