import type { Sight } from '../../assembly/hazards';

/** What a bystander sees, and what may come of it, or why nothing does. Common practice, no source. */
export const sightWords: Readonly<Record<Sight, { seen: string; reason: string }>> = {
  'fingers-in-fold': {
    seen: 'A hand inside the legs while they close',
    reason: 'The legs are long levers and squeeze hard near the joint.',
  },
  'fingers-clear': {
    seen: 'Hands outside the legs, clear of every joint',
    reason: 'Nothing closes on a hand that is outside.',
  },
  'leg-on-kerb': {
    seen: 'A foot of the tripod on the edge of a step',
    reason: 'It slips off, and the plumb point is outside at once.',
  },
  'legs-on-firm-ground': {
    seen: 'Three feet on firm, flat ground',
    reason: 'There the triangle of feet stays as it is.',
  },
  'cable-across-path': {
    seen: 'A cable over the way where people walk',
    reason: 'In the dark a foot finds it, and the stand comes down.',
  },
  'cable-marked-aside': {
    seen: 'A cable along the wall, marked with tape',
    reason: 'Nobody walks there, and everybody sees it.',
  },
  'someone-leaning': {
    seen: 'Somebody propped against the mount',
    reason: 'A few kilograms of push up there are enough to tip it.',
  },
  'someone-with-torch': {
    seen: 'Somebody holding a dim red light',
    reason: 'It shows everybody what their hands do.',
  },
  'one-person-lifting': {
    seen: 'One person lifting the mount on alone',
    reason: 'Nobody is left to guide it on to its seat or to steady the legs.',
  },
  'two-persons-lifting': {
    seen: 'Two lifting: one carries, one guides',
    reason: 'That is how the heavy parts go on.',
  },
  'screw-finger-tight': {
    seen: 'The bolt turned in firmly by hand',
    reason: 'Firm by hand holds it and harms no thread.',
  },
  'screw-two-turns-loose': {
    seen: 'The bolt two turns loose',
    reason: 'The mount wobbles, and off it comes when it is turned.',
  },
  'cap-off-in-sun': {
    seen: 'A cap off while the Sun shines',
    reason: 'One look at the Sun through a telescope blinds for good.',
  },
  'cap-on-in-sun': {
    seen: 'All caps on while the Sun shines',
    reason: 'Capped, nobody can look at the Sun with it.',
  },
  'small-child-near-legs': {
    seen: 'A toddler crawling between the legs',
    reason: 'Legs are knocked, and the weight hangs over the child.',
  },
  'case-open-underfoot': {
    seen: 'The open case in front of whoever carries the mount',
    reason: 'One steps into it with both hands full.',
  },
  'case-shut-aside': {
    seen: 'The case shut, against the wall',
    reason: 'Nobody falls over it there.',
  },
  'eyepiece-on-tray': {
    seen: 'An eyepiece in its hole in the tray',
    reason: 'It neither falls nor rolls away.',
  },
};
