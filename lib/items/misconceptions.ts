/**
 * Ideas that many beginners start with, as they are named in feedback. The first twelve are of the
 * design's list (assessment, "Learning design"), with its sources: Li & Durgin 2016, Keezing & Durgin
 * 2018, Plummer 2009. The others are common practice, no source.
 */
export const misconceptions = {
  'altitude-looks-higher': 'Eyes make altitudes about one and a half times too large.',
  'azimuth-gap-looks-wider': 'Gaps along the horizon look about a quarter wider than they are.',
  'same-stars-all-night': 'Not the same stars are up all night: the sky turns.',
  'polaris-brightest': 'Polaris is not the brightest star; it marks north.',
  'azimuth-from-south': 'Azimuth is counted from north.',
  'azimuth-anticlockwise': 'Azimuth grows from north through east, clockwise seen from above.',
  'altitude-azimuth-swapped': 'Altitude is how high, azimuth is which way.',
  'planet-taken-for-star': 'A bright point may be a planet, which wanders.',
  'two-stars-too-close': 'Two stars close together settle little.',
  'two-stars-in-line': 'One star above the other leaves the mount in doubt where level is.',
  'magnetic-for-true-north': 'A compass needle points to magnetic north.',
  'summer-time-hour': 'In summer the clock is an hour ahead of the zone’s own time.',
  // Power.
  'rated-current-is-pushed':
    'A supply does not push its amperes: the telescope takes what it needs.',
  'plug-fits-so-it-serves': 'A plug that fits proves nothing: read the labels.',
  'series-hours-add': 'Cells in a row add their volts, not their hours.',
  'reversed-cell-is-only-missing':
    'A cell the wrong way round takes away its own volts and those of one more.',
  'cold-does-not-matter': 'Cold takes part of what a cell can give.',
  'low-volts-cannot-hurt': 'Low volts can burn: a cell that is shorted gets hot.',
  // The night.
  'dark-at-sunset': 'It is not dark when the Sun has set: twilight goes on.',
  'eyes-adapt-at-once':
    'Eyes take half an hour to get used to the dark, and one white light undoes it.',
  'dew-falls': 'Dew does not fall: it forms on what is colder than the dew point.',
  'full-moon-is-best': 'A full Moon is up all night and hides what is faint.',
  'score-buys-off-safety': 'No score makes up for a failed gate.',
} as const;

export type MisconceptionId = keyof typeof misconceptions;
