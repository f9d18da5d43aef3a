import type { Shape } from '@/lib/drawings/drawing';
import { dewPointC, isDewy } from '@/lib/night/dew-point';
import { thermometerShapes } from '@/lib/drawings/draw-thermometers';

type DewOf = { airC: number; humidityPercent: number; glassBelowAirC: number };
export const startingDew: DewOf = { airC: 8, humidityPercent: 80, glassBelowAirC: 2 };

type DewFacts = { dewC: number; glassC: number; dewy: boolean };

export function dewFacts({ airC, humidityPercent, glassBelowAirC }: DewOf): DewFacts {
  const glassC = airC - glassBelowAirC;
  return {
    dewC: dewPointC(airC, humidityPercent),
    glassC,
    dewy: isDewy(glassC, airC, humidityPercent),
  };
}

/** Where the drops sit on the glass; the same each time. */
const drops = [
  [296, 60, 3],
  [284, 78, 4],
  [302, 92, 3.5],
  [288, 108, 3],
  [300, 124, 4],
  [283, 132, 3],
] as const;

export const dewShapes = ({ airC }: DewOf, { dewC, glassC, dewy }: DewFacts): Shape[] => [
  ...thermometerShapes(36, airC, 'air'),
  ...thermometerShapes(122, glassC, 'glass'),
  ...thermometerShapes(208, Math.max(-10, dewC), 'dew point'),
  {
    kind: 'rect',
    x: 274,
    y: 44,
    w: 38,
    h: 106,
    round: 14,
    fill: 'sky-line',
    stroke: 'ink',
    width: 2,
  },
  ...(dewy
    ? drops.map(([cx, cy, r]): Shape => ({
        kind: 'circle',
        cx,
        cy,
        r,
        fill: 'panel',
        stroke: 'ink',
      }))
    : []),
  { kind: 'text', x: 293, y: 184, text: dewy ? 'wet' : 'dry', anchor: 'middle', bold: true },
];

const degrees = (celsius: number): string =>
  `${celsius.toFixed(0).replace(/^-0$/, '0').replace('-', '−')} °C`;

export function dewWords(
  { airC, humidityPercent }: DewOf,
  { dewC, glassC, dewy }: DewFacts,
): string {
  const apart = Math.abs(glassC - dewC).toFixed(1);
  return `Air of ${degrees(airC)} and ${String(humidityPercent)} % has its dew point at ${degrees(dewC)}. The glass has ${degrees(glassC)}: ${dewy ? `${apart} degrees below the dew point, and dew forms on it` : `${apart} degrees above the dew point, and it stays dry`}.`;
}
