import { fieldRadiusArcmin } from '@/lib/pointing/field-radius';
import type { FigureKit } from '../figure-data';

/** Half the field of a kit's widest eyepiece, which is the one for centring. */
export const centringFieldRadius = ({
  telescope,
  eyepieces,
}: Pick<FigureKit, 'telescope' | 'eyepieces'>): number =>
  Math.max(...eyepieces.map((eyepiece) => fieldRadiusArcmin(telescope, eyepiece)));
