/** How learners write the units of our questions, in lower case; each row is one unit. */
const units: readonly (readonly string[])[] = [
  ['degrees', 'degree', 'deg', '°', 'º'],
  // A plain degree says nothing wrong here.
  ['degrees celsius', 'degree celsius', 'celsius', '°c', 'ºc', 'c', 'degrees', 'degree', '°', 'º'],
  ['arcminutes', 'arcminute', 'arcmin', 'minutes of arc', '′', "'", '’'],
  ['minutes', 'minute', 'min', 'mins'],
  ['hours', 'hour', 'h', 'hr', 'hrs'],
  ['millimetres', 'millimetre', 'millimeters', 'millimeter', 'mm'],
  ['metres', 'metre', 'meters', 'meter', 'm'],
  ['kilograms', 'kilogram', 'kilos', 'kilo', 'kg'],
  ['volts', 'volt', 'v'],
  ['amperes', 'ampere', 'amps', 'amp', 'a'],
  ['per cent', 'percent', '%'],
  ['times', '×', 'x'],
];

/**
 * "12,5°" → 12.5, "−3" → −3 in `unit`, the words beside the field: "degrees", "millimetres of bubble".
 * Null when it is no number, when another unit stands behind it ("35 m" for millimetres is not 35), and
 * for "5,625": half the world means five thousand by it, the other half five and a bit.
 */
export function readNumber(answer: string, unit: string): number | null {
  const plain = answer.trim().replace('−', '-');
  const [, figures, behind] = /^([+-]?(?:\d+(?:[.,]\d*)?|[.,]\d+))\s*(.*)$/.exec(plain) ?? [];
  if (figures === undefined || behind === undefined) return null;
  if (/^[+-]?[1-9]\d{0,2},\d{3}$/.test(figures)) return null;
  if (behind !== '' && !isSpelling(behind, unit)) return null;
  return Number(figures.replace(',', '.'));
}

function isSpelling(behind: string, unit: string): boolean {
  const written = behind.toLowerCase().replace(/\s+/g, ' ').replace(/\.$/, '');
  const asked = unit.toLowerCase();
  // What is counted, and of what: "targets", "of 100".
  const [, counted = asked, rest = ''] = /^(.+?)( of .+)?$/.exec(asked) ?? [];
  const known = units.find((spellings) => spellings.includes(counted)) ?? [];
  const spellings = [counted, counted.replace(/s$/, ''), ...known];
  return (
    spellings.some((one) => written === one || written === one + rest) || written === rest.trim()
  );
}
