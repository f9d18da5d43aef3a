import type { TubeType } from '@/lib/optics/image-orientation';
import type { Eyepiece, Telescope } from '@/lib/pointing/scenario';
import type { KitBench } from '@/lib/variants/bench/bench-kit';
import type { SkyPosition } from './sky-disc';

/** A telescope as the figures need it. */
export type FigureKit = {
  id: string;
  name: string;
  tubeType: TubeType;
  telescope: Telescope;
  eyepieces: readonly (Eyepiece & { id: string })[];
  /** Of the observing eyepiece. */
  fieldRadiusArcmin: number;
  bench: KitBench;
};

/** One of the lesson's own evenings: the bright lights above its horizon. */
export type FigureSky = {
  name: string;
  title: string;
  lights: readonly (SkyPosition & {
    name: string;
    kind: 'star' | 'planet';
    magnitude: number | null;
  })[];
};

/** What the server hands every figure. */
export type FigureData = { kits: readonly FigureKit[]; skies: readonly FigureSky[] };
