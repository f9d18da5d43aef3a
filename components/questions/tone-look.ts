import type { Tone } from '@/lib/drawings/drawing';

/** Whole names of classes, so that the stylesheet finds them; their values are the theme's. */
export const fillLook: Readonly<Record<Tone, string>> = {
  ink: 'fill-ink',
  soft: 'fill-soft',
  line: 'fill-line',
  strong: 'fill-strong',
  panel: 'fill-panel',
  sunken: 'fill-sunken',
  accent: 'fill-accent',
  lamp: 'fill-(--lamp)',
  good: 'fill-good',
  caution: 'fill-caution',
  danger: 'fill-danger',
  sky: 'fill-sky',
  'sky-line': 'fill-sky-line',
  'on-sky': 'fill-on-sky',
  'on-sky-soft': 'fill-on-sky-soft',
  'sky-lamp': 'fill-sky-lamp',
  land: 'fill-land',
};

export const strokeLook: Readonly<Record<Tone, string>> = {
  ink: 'stroke-ink',
  soft: 'stroke-soft',
  line: 'stroke-line',
  strong: 'stroke-strong',
  panel: 'stroke-panel',
  sunken: 'stroke-sunken',
  accent: 'stroke-accent',
  lamp: 'stroke-(--lamp)',
  good: 'stroke-good',
  caution: 'stroke-caution',
  danger: 'stroke-danger',
  sky: 'stroke-sky',
  'sky-line': 'stroke-sky-line',
  'on-sky': 'stroke-on-sky',
  'on-sky-soft': 'stroke-on-sky-soft',
  'sky-lamp': 'stroke-sky-lamp',
  land: 'stroke-land',
};
