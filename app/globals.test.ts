import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';

const styleSheet = readFileSync(path.join(import.meta.dirname, 'globals.css'), 'utf8');

type Tokens = ReadonlyMap<string, string>;

/** The custom properties of the first block that stands behind this selector. */
function tokensBehind(selector: string): Tokens {
  const start = styleSheet.indexOf(`${selector} {`);
  if (start < 0) throw new Error(`globals.css has no block for ${selector}`);
  const block = styleSheet.slice(start, styleSheet.indexOf('}', start));
  const found = new Map<string, string>();
  for (const [, name, value] of block.matchAll(/--([a-z-]+):\s*([^;]+);/g)) {
    if (name !== undefined && value !== undefined) found.set(name, value.trim());
  }
  return found;
}

const themes = {
  light: tokensBehind(":root[data-theme='light']"),
  dark: tokensBehind(":root[data-theme='dark']"),
  'after-dark': tokensBehind(":root[data-theme='after-dark']"),
  'dark by the device': tokensBehind(':root:not([data-theme])'),
};

function channels(hex: string): [number, number, number] {
  const parts = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/.exec(hex);
  if (parts === null) throw new Error(`${hex} is not a six-digit colour`);
  const [red = 0, green = 0, blue = 0] = parts.slice(1).map((part) => Number.parseInt(part, 16));
  return [red, green, blue];
}

/** Relative luminance, WCAG 2.2 definition. */
function luminance(hex: string): number {
  const [red, green, blue] = channels(hex);
  const linear = (channel: number) => {
    const share = channel / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
}

/** Contrast ratio, WCAG 2.2 definition: 1 to 21. */
function contrast(one: string, other: string): number {
  const [brighter, darker] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return ((brighter ?? 0) + 0.05) / ((darker ?? 0) + 0.05);
}

function colour(tokens: Tokens, name: string): string {
  const value = tokens.get(name);
  if (value === undefined) throw new Error(`the theme does not name --${name}`);
  return value;
}

const grounds = ['page', 'panel', 'sunken'] as const;
const everywhere = (names: readonly string[]) =>
  names.flatMap((name) => grounds.map((ground) => [name, ground] as const));

/** Words and what they stand on: 4.5 : 1 (1.4.3). */
const textPairs: readonly (readonly [string, string])[] = [
  ...everywhere(['ink', 'soft', 'accent', 'danger', 'caution', 'good']),
  ['ink', 'accent-soft'],
  ['accent', 'accent-soft'],
  ['ink', 'danger-soft'],
  ['danger', 'danger-soft'],
  ['ink', 'caution-soft'],
  ['caution', 'caution-soft'],
  ['ink', 'good-soft'],
  ['good', 'good-soft'],
  ['on-lamp', 'lamp'],
  ['on-lamp', 'lamp-hover'],
  ['on-sky', 'sky'],
  ['on-sky', 'sky-low'],
  ['on-sky-soft', 'sky'],
  ['on-sky-soft', 'sky-low'],
  ['sky-lamp', 'sky'],
  ['sky-lamp', 'sky-low'],
  // The pressed button of the theme picker.
  ['sky', 'on-sky'],
];

/** Edges of controls, focus rings and marks against what is beside them: 3 : 1 (1.4.11, 2.4.13). */
const controlPairs: readonly (readonly [string, string])[] = [
  ...everywhere(['strong', 'lamp-edge', 'danger', 'focus']),
  ['focus', 'accent-soft'],
  ['focus', 'danger-soft'],
  ['focus', 'caution-soft'],
  ['focus', 'good-soft'],
  ['caution', 'page'],
  ['good', 'page'],
  ['sky-line', 'sky'],
  ['sky-lamp', 'sky'],
];

describe('the contrast formula', () => {
  test('black on white is 21 to 1', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 10);
  });
  test('#767676 is the lightest grey that passes on white, and #777777 fails', () => {
    // W3C, Understanding SC 1.4.3: #777777 on white has 4.47 : 1.
    expect(contrast('#777777', '#ffffff')).toBeCloseTo(4.48, 1);
    expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
    expect(contrast('#767676', '#ffffff')).toBeGreaterThanOrEqual(4.5);
  });
});

describe.each(Object.entries(themes))('the %s theme', (_name, tokens) => {
  test.each(textPairs)('has %s on %s at 4.5 to 1 or more', (text, ground) => {
    expect(contrast(colour(tokens, text), colour(tokens, ground))).toBeGreaterThanOrEqual(4.5);
  });
  test.each(controlPairs)('has the edge %s on %s at 3 to 1 or more', (edge, ground) => {
    expect(contrast(colour(tokens, edge), colour(tokens, ground))).toBeGreaterThanOrEqual(3);
  });
  test('names the same tokens as the light theme', () => {
    expect([...tokens.keys()].sort()).toEqual([...themes.light.keys()].sort());
  });
});

test('a device that is dark by itself gets the very values of the dark theme', () => {
  expect(themes['dark by the device']).toEqual(themes.dark);
});

test('outdoors nothing shines in white, green or blue: red leads every colour by far', () => {
  for (const [name, value] of themes['after-dark']) {
    const [red, green, blue] = channels(value);
    expect(green, name).toBeLessThanOrEqual(0.65 * red);
    expect(blue, name).toBeLessThanOrEqual(0.45 * red);
  }
});
