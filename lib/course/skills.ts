/** The rows of every progress view, in the order of an evening, in words. */
export const skillTitles = {
  kit: 'Knows the kit',
  assemble: 'Puts it together',
  level: 'Levels',
  balance: 'Balances',
  field: 'Chooses an eyepiece',
  finder: 'Sets the finder',
  power: 'Powers it safely',
  'clock-and-place': 'Clock and place',
  'choose-stars': 'Chooses stars',
  align: 'Aligns',
  diagnose: 'Finds what went wrong',
  safety: 'Keeps everyone safe',
} as const;

export type Skill = keyof typeof skillTitles;

export const skills = [
  'kit',
  'assemble',
  'level',
  'balance',
  'field',
  'finder',
  'power',
  'clock-and-place',
  'choose-stars',
  'align',
  'diagnose',
  'safety',
] as const satisfies readonly Skill[];
