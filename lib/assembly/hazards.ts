/** What a bystander could see at a step; some of it can hurt somebody, some is as it should be. */
export const sights = [
  'fingers-in-fold',
  'fingers-clear',
  'leg-on-kerb',
  'legs-on-firm-ground',
  'cable-across-path',
  'cable-marked-aside',
  'someone-leaning',
  'someone-with-torch',
  'one-person-lifting',
  'two-persons-lifting',
  'screw-finger-tight',
  'screw-two-turns-loose',
  'cap-off-in-sun',
  'cap-on-in-sun',
  'small-child-near-legs',
  'case-open-underfoot',
  'case-shut-aside',
  'eyepiece-on-tray',
] as const;
export type Sight = (typeof sights)[number];

/** At which moment of the work a picture is taken. */
export const hazardMoments = ['unfolding', 'lifting', 'finishing'] as const;
export type HazardMoment = (typeof hazardMoments)[number];

/**
 * What can hurt somebody, or the telescope on its way to somebody's foot. Common practice, no source;
 * local rules go before it.
 */
const hazards: ReadonlySet<Sight> = new Set([
  'fingers-in-fold',
  'leg-on-kerb',
  'cable-across-path',
  'someone-leaning',
  'one-person-lifting',
  'screw-two-turns-loose',
  'cap-off-in-sun',
  'small-child-near-legs',
  'case-open-underfoot',
] satisfies Sight[]);
export const isHazard = (sight: Sight): boolean => hazards.has(sight);

/** What can be seen at each moment; of a pair that exclude each other, one at most is drawn. */
export const sightsAt: Readonly<Record<HazardMoment, readonly (readonly Sight[])[]>> = {
  unfolding: [
    ['fingers-in-fold', 'fingers-clear'],
    ['leg-on-kerb', 'legs-on-firm-ground'],
    ['case-open-underfoot', 'case-shut-aside'],
    ['small-child-near-legs', 'someone-with-torch'],
  ],
  lifting: [
    ['one-person-lifting', 'two-persons-lifting'],
    ['someone-leaning', 'someone-with-torch'],
    ['case-open-underfoot', 'case-shut-aside'],
    ['cable-across-path', 'cable-marked-aside'],
  ],
  finishing: [
    ['screw-two-turns-loose', 'screw-finger-tight'],
    ['cap-off-in-sun', 'cap-on-in-sun'],
    ['cable-across-path', 'cable-marked-aside'],
    ['someone-leaning', 'eyepiece-on-tray'],
  ],
};
