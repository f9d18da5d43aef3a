/** Where the Sun is, and whether a cap may come off: after sunset only. Common practice, no source. */
export const moments: readonly [Moment, ...Moment[]] = [
  { when: 'At noon, under a grey sky', sunDown: false, because: 'Cloud opens without warning.' },
  {
    when: 'At four in the afternoon, with the Sun behind the school',
    sunDown: false,
    because: 'The Sun moves, and so does the tube: a moment’s swing brings it in.',
  },
  {
    when: 'With the Sun a hand’s breadth above the hills',
    sunDown: false,
    because: 'A low red Sun burns an eye as well.',
  },
  {
    when: 'By day, with the Moon high and the Sun low',
    sunDown: false,
    because: 'The Moon is no danger, but the Sun is still up.',
  },
  {
    when: 'Half an hour after sunset',
    sunDown: true,
    because: 'The Sun is below the horizon and cannot get into the tube.',
  },
  {
    when: 'At nine on a winter evening, with a bright Moon',
    sunDown: true,
    because: 'It is dark, and the Moon dazzles but burns nobody.',
  },
  {
    when: 'At dusk, when the last red is in the west and the Sun has set',
    sunDown: true,
    because: 'The Sun has set; the red sky alone harms nobody.',
  },
];
type Moment = { when: string; sunDown: boolean; because: string };

/** What people do with a telescope; common practice, no source. */
export const deeds: readonly { text: string; safe: boolean; reason: string }[] = [
  {
    text: 'Leaving a telescope alone on the lawn by day',
    safe: false,
    reason: 'Somebody may turn it to the Sun.',
  },
  {
    text: 'Taking the finder’s cap off at noon',
    safe: false,
    reason: 'The finder too leads an eye to the Sun.',
  },
  {
    text: 'Looking for the Sun through the eyepiece to get it out of the way',
    safe: false,
    reason: 'That is the look that blinds.',
  },
  {
    text: 'Taking the cap off indoors, towards a sunny window',
    safe: false,
    reason: 'The Sun shines in through windows too.',
  },
  {
    text: 'Wiping dew off the lens with a sleeve',
    safe: false,
    reason: 'It scratches the coating. Let it dry.',
  },
  {
    text: 'Holding the tube by its focuser',
    safe: false,
    reason: 'The focuser is not made to carry the tube.',
  },
  {
    text: 'Pressing a finger on the mirror to see whether it is clean',
    safe: false,
    reason: 'Skin leaves acid marks on the coating.',
  },
  {
    text: 'Carrying the capped tube with both hands under it',
    safe: true,
    reason: 'That is how a tube is carried.',
  },
  {
    text: 'Leaving a little dust on the lens',
    safe: true,
    reason: 'A little dust costs hardly any light; wiping scratches.',
  },
  {
    text: 'Keeping the caps on until the Sun has set',
    safe: true,
    reason: 'That is the rule above all others.',
  },
  {
    text: 'Putting the eyepiece into its box when it is taken out',
    safe: true,
    reason: 'There it neither falls nor gets dusty.',
  },
  {
    text: 'Letting a dewed tube dry with its cap off in a dark room',
    safe: true,
    reason: 'Capped wet, it spots; in the dark no Sun gets in.',
  },
  {
    text: 'Looking at the Moon at ten in the evening',
    safe: true,
    reason: 'The Moon dazzles, but burns nobody.',
  },
];

/** Common practice, no source. */
export const cares: readonly { left: string; right: string; reason: string }[] = [
  {
    left: 'The Sun is still up',
    right: 'Caps stay on, tube and finder',
    reason: 'one look at the Sun can blind for good.',
  },
  {
    left: 'A little dust on the lens',
    right: 'Leave it where it is',
    reason: 'it costs hardly any light, and wiping scratches.',
  },
  {
    left: 'Dew on the front glass',
    right: 'Let it dry by itself, indoors, after dark',
    reason: 'wiping rubs grit into the coating.',
  },
  {
    left: 'A finger mark on the mirror',
    right: 'Tell the teacher, and do not rub',
    reason: 'cleaning a mirror is an adult’s careful work.',
  },
  {
    left: 'The tube must go to the garden',
    right: 'Carry it capped, both hands under it',
    reason: 'capped it is safe, and two hands do not drop it.',
  },
  {
    left: 'You are called away by day',
    right: 'Stay, or take the telescope with you',
    reason: 'no telescope is left alone by day.',
  },
  {
    left: 'An eyepiece has just come out',
    right: 'Cap it and lay it in its box',
    reason: 'there it neither falls nor gets dusty.',
  },
  {
    left: 'The finder has a little lens of its own',
    right: 'It needs a cap as well',
    reason: 'a finder leads an eye to the Sun too.',
  },
];
