import type { HazardMoment, Sight } from '@/lib/assembly/hazards';

export const momentName: Readonly<Record<HazardMoment, string>> = {
  unfolding: 'While the legs are unfolded',
  lifting: 'While the tube is lifted on',
  finishing: 'When all is up',
};

/** What one sees. */
export const sightName: Readonly<Record<Sight, string>> = {
  'fingers-in-fold': 'Fingers where the legs fold',
  'fingers-clear': 'Hands at the top of the legs',
  'leg-on-kerb': 'One foot on a kerb’s edge',
  'legs-on-firm-ground': 'All feet on firm, flat ground',
  'cable-across-path': 'A cable across the path',
  'cable-marked-aside': 'A cable laid aside and marked',
  'someone-leaning': 'Somebody leaning on the tripod',
  'someone-with-torch': 'Somebody holding a red torch',
  'one-person-lifting': 'One person lifting the tube alone',
  'two-persons-lifting': 'Two people lifting the tube',
  'screw-finger-tight': 'The clamp tight, the stop screw in',
  'screw-two-turns-loose': 'The clamp screw two turns loose',
  'cap-off-in-sun': 'The Sun up, a cap off',
  'cap-on-in-sun': 'The Sun up, all caps on',
  'small-child-near-legs': 'A small child between the legs',
  'case-open-underfoot': 'The open case underfoot',
  'case-shut-aside': 'The case shut and out of the way',
  'eyepiece-on-tray': 'An eyepiece in its place on the tray',
};

/** What it does to somebody, or why it does nothing. */
export const sightReason: Readonly<Record<Sight, string>> = {
  'fingers-in-fold': 'Folding legs pinch hard. Hold a leg by its middle, clear of every joint.',
  'fingers-clear': 'There nothing folds or closes.',
  'leg-on-kerb': 'A foot that slips off an edge brings the whole stand down.',
  'legs-on-firm-ground': 'That is what a tripod wants.',
  'cable-across-path': 'In the dark somebody’s foot finds it, and the telescope comes along.',
  'cable-marked-aside': 'Where nobody walks, and to be seen, it is safe.',
  'someone-leaning': 'It tips, or moves the mount after it was set.',
  'someone-with-torch': 'Red light helps everybody to see what they do.',
  'one-person-lifting':
    'One holds the tube, the other closes the clamp: alone, one of the two waits.',
  'two-persons-lifting': 'Lifting by two is how it should be.',
  'screw-finger-tight': 'That is what holds a tube.',
  'screw-two-turns-loose': 'The tube slides out as soon as it points up.',
  'cap-off-in-sun':
    'Through a telescope the Sun blinds at once and for good. Caps stay on until it has set.',
  'cap-on-in-sun': 'Capped, it is safe to stand there.',
  'small-child-near-legs': 'Legs are knocked, and what stands above a child may fall on it.',
  'case-open-underfoot': 'One steps into it while carrying the heaviest part.',
  'case-shut-aside': 'Out of the way is where it belongs.',
  'eyepiece-on-tray': 'There it neither falls nor gets lost.',
};
