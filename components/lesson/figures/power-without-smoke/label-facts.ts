import { drawPlateAndLabel } from '@/lib/drawings/draw-labels';
import { voltsText } from '@/lib/drawings/label-words';
import {
  faultsOfSupply,
  suppliedV,
  type Supply,
  type SupplyVerdict,
  type TelescopeNeeds,
} from '@/lib/power/supply';

/** The plate of the figure's telescope. */
const figureNeeds: TelescopeNeeds = {
  nominalV: 12,
  centre: 'positive',
  highestV: 14,
  resetBelowV: 7.2,
  trackingA: 0.2,
  slewingA: 1.2,
};
export type LabelOf = Omit<Supply, 'id'>;

export const startingLabel: LabelOf = {
  form: 'battery-pack',
  volts: 12,
  ratedA: 0.5,
  centre: 'positive',
};

const said: Readonly<Record<Exclude<SupplyVerdict, 'fits'>, string>> = {
  'wrong-polarity': 'The polarity is the other way: plus and minus would be exchanged.',
  'too-many-volts': 'Too many volts: more than the telescope is made for, and it may be ruined.',
  'too-few-volts': 'Too few volts: the computer will not run on them.',
  'too-little-current': 'Too little current for a slew.',
  'mains-outdoors':
    'It hangs on the mains: outdoors that is the teacher’s, dry, on a protected socket, by local electrical rules.',
};

/** Whether a student may use it outdoors, why not, and the volts it holds while the telescope slews. */
export function labelWords(label: LabelOf): string {
  const faults = faultsOfSupply({ ...label, id: 'P' }, figureNeeds);
  const slewV = suppliedV({ ...label, id: 'P' }, figureNeeds.slewingA);
  const told = faults.flatMap((fault) => (fault === 'fits' ? [] : [said[fault]]));
  const sags =
    faults.length === 1 && faults[0] === 'too-little-current'
      ? [
          `${voltsText(slewV)} are left in a slew${slewV < figureNeeds.resetBelowV ? ': the computer restarts' : ''}.`,
        ]
      : [];
  return told.length === 0
    ? `It serves: equal volts, equal polarity, and ${String(label.ratedA)} A are enough for the ${String(figureNeeds.slewingA)} A of a slew. More than that does no harm.`
    : ['It does not serve.', ...told, ...sags].join(' ');
}

export const labelDrawing = (label: LabelOf) => drawPlateAndLabel(figureNeeds, label);
