/** What somebody may say by day, what to answer, and answers that are wrong for the reason given. */
export type SunClaim = {
  said: string;
  right: string;
  why: string;
  wrong: readonly (readonly [text: string, reason: string])[];
};

/** Common practice, no source; that sunlight burns a retina at once is in every handbook of optics. */
export const claims: readonly SunClaim[] = [
  {
    said: 'It is cloudy. I will take a quick look at the Sun.',
    right: 'No. Cloud thins in a moment, and the caps stay on.',
    why: 'Thin cloud lets enough light through to burn, once a tube has gathered it.',
    wrong: [
      ['No, but later, once the cloud is thicker.', 'Cloud opens in a moment. It is no filter.'],
      ['Yes, but with the weakest eyepiece only.', 'Every eyepiece sends all that light inside.'],
    ],
  },
  {
    said: 'I have my sunglasses on, so the Sun is fine.',
    right: 'No. Glasses that suit an eye are no match for a tube.',
    why: 'The tube gathers hundreds of times the light that sunglasses are made for.',
    wrong: [
      ['Yes, if the sunglasses are really dark ones.', 'No sunglasses stop light so gathered.'],
      ['No, but with two pairs of them it is fine.', 'Two pairs are no match for a tube either.'],
    ],
  },
  {
    said: 'I will only blink into it for a moment.',
    right: 'No. It burns faster than you can blink.',
    why: 'The eye is hurt before it can shut, and nothing hurts at first to warn you.',
    wrong: [
      [
        'No, but a look at the edge of it is fine.',
        'The edge of the Sun is as bright as the rest.',
      ],
      ['Yes, it would hurt before any harm is done.', 'The back of the eye feels no pain.'],
    ],
  },
  {
    said: 'The tube is capped. I will use just the finder.',
    right: 'No. The finder’s cap stays on as well.',
    why: 'Whoever looks through a finder by the Sun looks at the Sun.',
    wrong: [
      ['No, but with its cap half open you may.', 'Half of too much light is still too much.'],
      ['Yes, the red dot covers the Sun up anyway.', 'The dot is a reflection. It covers nothing.'],
    ],
  },
  {
    said: 'Let us leave it open while we eat our lunch.',
    right: 'No. It gets capped before anyone goes.',
    why: 'The Sun wanders into an open tube by itself, and somebody will look.',
    wrong: [
      ['No, but turned to the north it may stay.', 'Somebody bumps it, and north it is no more.'],
      [
        'Yes, nobody can look while we are away.',
        'Others can, and the Sun can melt what is in it.',
      ],
    ],
  },
  {
    said: 'The Sun is red and low now. Let us open it.',
    right: 'No. We wait until the Sun has set.',
    why: 'It is dimmer, but it is the Sun: gathered, it still burns.',
    wrong: [
      ['Yes, red light has no strength to burn.', 'Its heat is light that no eye can see.'],
      ['No, but once half of it is gone you may.', 'Half of the Sun burns like the whole of it.'],
    ],
  },
  {
    said: 'I will look for the Moon, right by the Sun.',
    right: 'No. A slip of the hand, and it is the Sun.',
    why: 'By day nothing near the Sun is looked for, and nobody looks alone.',
    wrong: [
      ['No, but if you go very slowly you may.', 'However slow, a slip leads to the Sun.'],
      ['Yes, the Moon covers the Sun up there.', 'It does that in an eclipse only.'],
    ],
  },
  {
    said: 'With dark film over the eyepiece it is safe.',
    right: 'No. The light is gathered there, and film burns.',
    why: 'At the eyepiece the light is at its hottest. It cracks or burns what is there.',
    wrong: [
      ['No, but two layers of the film would do.', 'Two layers burn as one does.'],
      ['Yes, dark is dark, wherever you put it.', 'Some dark film lets heat through unseen.'],
    ],
  },
];
