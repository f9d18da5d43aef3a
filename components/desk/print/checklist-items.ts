import { packUpName } from '@/lib/drawings/pack-up-words';
import { packUpSteps, type PackUpStep } from '@/lib/rehearsal/pack-up';

/** Who does it: the teacher alone, any adult, or students. */
export type Who = 'teacher' | 'adult' | 'students';

export type ChecklistItem = {
  text: string;
  who: Who;
  /** What must be minded before it is done. */
  caution?: string;
};
export type ChecklistPart = { title: string; when: string; items: readonly ChecklistItem[] };

const students = (text: string, caution?: string): ChecklistItem => item(text, 'students', caution);
const teacher = (text: string, caution?: string): ChecklistItem => item(text, 'teacher', caution);
const adult = (text: string, caution?: string): ChecklistItem => item(text, 'adult', caution);
const item = (text: string, who: Who, caution?: string): ChecklistItem => ({
  text,
  who,
  ...(caution === undefined ? {} : { caution }),
});

const packUpCautions: Readonly<Partial<Record<PackUpStep, string>>> = {
  'unplug-hand-control': 'Never with the power on.',
  'open-clamp': 'The tube slides out: hands on it first.',
  'unbolt-mount': 'The tube is off and away.',
};

/**
 * An evening outside in boxes to tick. Lessons 6, 7 and 12 and the cautions of the design; what is said of
 * numbers of adults, keys and telephones is common practice, no source.
 */
export const checklist: readonly ChecklistPart[] = [
  {
    title: 'Before you leave the classroom',
    when: 'at school',
    items: [
      teacher(
        'Weather looked up: no thunder, no gusts, no ice. If in doubt, the rehearsal indoors',
      ),
      teacher('Families know place, start and end; who fetches whom is written down'),
      teacher('Adults enough for your school’s rule; one has a telephone and the number to ring'),
      teacher('Night plan and a field card for each telescope printed today'),
      adult('First-aid bag, white lamp for an emergency, key to a lit room'),
      students('Cells fresh and all of one kind; red lamps tried', 'Never charge primary cells.'),
      students(
        'Cases checked: tube, mount, tripod, tray, eyepieces, prism or diagonal, finder, caps, level',
      ),
      students('Dressed as for a colder day: hat, gloves, closed shoes'),
    ],
  },
  {
    title: 'Setting up by day',
    when: 'in daylight',
    items: [
      teacher(
        'Ground walked; holes, kerbs and ropes marked',
        'People trip in the dark on what they did not see by day.',
      ),
      teacher(
        'Tubes stand in the shadow of a building',
        'SUN: one look blinds. Tube and finder stay capped until it has set.',
      ),
      teacher(
        'Mains only where it is dry and on a protected socket; leads taped down or none',
        'Mains and wet grass can kill. Students use batteries.',
      ),
      students(
        'Tripods spread, locked, level; white tape on each leg',
        'Fingers clear of folding legs.',
      ),
      students(
        'Mount on, bolted; tube on, clamp and stop screw in',
        'Two people lift, one counts aloud; one holds until it is tight.',
      ),
      students('Tube balanced', 'Hold the tube before its clamp is loosened.'),
      adult('No telescope stands alone: somebody stays until the Sun has set'),
    ],
  },
  {
    title: 'Before dark',
    when: 'sunset to two stars',
    items: [
      teacher('Sun has set: caps off on your word', 'Not a minute before.'),
      teacher('Where to walk, where not; the sign for “everybody stop”; where to meet'),
      students('Hand control in, supply in, switch on last'),
      students('Date, time, zone, summer time, place entered and read back by a partner'),
      students('Tube level and to true north, clutches locked'),
      teacher('White lights off, telephones away or dimmed red'),
      students('Finder set on the first star; first pair from the card'),
    ],
  },
  {
    title: 'During',
    when: 'every half hour',
    items: [
      teacher('Heads counted'),
      adult('Anybody shivering goes in to warm up'),
      students('Third star checked after each alignment; aligned again after any knock'),
      students('Glass looked at for dew; capped, never wiped'),
      teacher('Skills seen are signed off at once, by phone or form'),
      teacher(
        'Sky and wind looked at',
        'Thunder heard: everybody indoors at once, telescopes stay.',
      ),
    ],
  },
  {
    title: 'Packing up',
    when: 'lamps on, one telescope after another',
    items: [
      ...packUpSteps.map((step) => students(packUpName(step), packUpCautions[step])),
      teacher('Heads counted, everybody fetched; wet tubes opened to dry indoors'),
    ],
  },
];
