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
    'Eyes take half an hour to get used to the dark, and one white light can undo most of it.',
  'dew-falls': 'Dew does not fall: it forms on what is colder than the dew point.',
  'full-moon-is-best': 'A full Moon is up all night and hides what is faint.',
  'score-buys-off-safety': 'No score makes up for a failed gate.',
  // Eyepieces and views.
  'longer-eyepiece-stronger': 'The longer an eyepiece’s focal length, the less it magnifies.',
  'more-power-better': 'More magnification means less sky, less light and more shake.',
  'field-is-apparent':
    'The apparent field is how wide the picture looks; the sky in it is smaller by the magnification.',
  'sky-stands-still': 'The sky does not wait: without motors a star drifts 15′ in a minute.',
  'view-always-upside-down':
    'Whether a view is turned depends on prism, diagonal or mirrors; not every telescope turns it.',
  'disc-is-the-star': 'A star seen as a disc is out of focus, not nearer.',
  'sun-harmless':
    'Through a telescope or finder the Sun blinds at once: cloud, haste or dark glasses change nothing.',
  // Level.
  'bubble-shows-low-side': 'The bubble is air: it goes up, to the high side.',
  'vial-never-lies': 'A vial can be out itself; a half-turn shows it.',
  'tilt-spoils-alignment': 'Two stars take out how the base leaned; it costs the first slews only.',
  'one-star-levels': 'One star does not tell how the base leans; that takes two.',
  'level-afterwards': 'What moves the base after the alignment is an error that nobody takes out.',
  'open-lock-holds': 'A leg whose lock is open holds nothing up.',
  // Balance.
  'middle-is-balance':
    'The balance point is where the weights even out, not the middle of the tube.',
  'balance-it-bare': 'A tube is balanced with everything on it that is used tonight.',
  'slide-towards-heavy':
    'The tube slides away from its heavy end: the heavy end comes nearer to the clamp.',
  'tighter-clutch-cures': 'A clutch turned harder hides an imbalance; it does not cure it.',
  'weight-cures-creep':
    'More weight helps only at the light end; anywhere else it makes creep worse.',
  'level-balance-is-all': 'A tube that balances level may still creep when raised.',
  'stop-screw-is-spare': 'The stop screw is what keeps a tube that slips from falling out.',
  // Aligning.
  'dot-is-centring': 'A star under the dot is not yet in the middle of the eyepiece.',
  'push-by-hand':
    'The mount counts its motors, not the hand: a pushed tube makes its readings untrue.',
  'play-does-no-harm': 'Play does no harm only when every star is reached from the same side.',
  'agreement-proves-all':
    'Two stars that agree prove little: the mount chose the zero that makes them.',
  'picture-for-sky':
    'The picture in the eyepiece may be turned or mirrored; the rockers go by the sky.',
  'star-goes-with-tube': 'When the tube goes right, the star goes left of it.',
  // Clock and place.
  'hour-is-one-degree': 'An hour turns the sky by 15°; 1° is what a day is out by.',
  'sky-turns-the-other-way': 'Facing the equator’s side, stars go from east to west, all night.',
  'same-hours-all-year': 'A star is about four minutes earlier every night, two hours every month.',
  'zone-the-wrong-way': 'A zone ahead of UTC is taken off; one behind it is added.',
  'clock-behind-for-ahead': 'A clock that is ahead turns the mount’s sky on, the way of the stars.',
  'alignment-cures-all':
    'Two stars put the stars right, not what moves among them nor what moves later.',
  'half-covered-half-picture':
    'A half-covered front dims the whole picture; it cuts no part of it off.',
  'light-goes-by-width': 'Light goes by area: twice as wide gathers four times as much.',
  'long-tube-gathers-light': 'A long tube gathers no more light: the width of its front does.',
  'heavy-never-tips': 'Weight alone keeps no stand up: where the weight hangs does.',
  'light-push-light-pinch': 'Near a joint a light push at the end squeezes hard.',
  // The finder.
  'near-target-good': 'A finder that was set on something near is off at the stars.',
  'tube-to-the-dot': 'The tube stays on the target; the dot is brought to it.',
  'screws-move-the-tube': 'The finder’s screws move the dot and not the tube.',
  // What went wrong.
  'align-again-cures-all':
    'A new alignment does not mend what moves: first the cause, then the stars.',
  'one-slew-tells-all': 'One slew fits many causes; a second one elsewhere tells them apart.',
} as const;

export type MisconceptionId = keyof typeof misconceptions;
