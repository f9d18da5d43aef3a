import { cleanup, render, screen, within } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { markOf, rehearsalOf, rehearsed } from '@/tests/support/rehearsal';
import { chainOf } from './miss-chain';
import { DressRehearsalResultView } from './dress-rehearsal-result';
import { missInWords } from './miss-words';

afterEach(cleanup);

const variant = rehearsalOf('from-the-boxes', 0);
const events = {
  ...variant.events,
  ifNotLocked: { afterConfirm: 2, azimuthDeg: 1, altitudeDeg: -1 },
};
const loose = { ...variant, events };
const result = markOf(
  loose,
  rehearsed(loose, () => ({ clutchesLocked: false })),
);

test('a clutch left loose is named at the star that it moved, with how much of the miss it was', () => {
  render(<DressRehearsalResultView variant={loose} result={result} />);
  const third = result.misses.find(({ kind }) => kind === 'third');
  if (third === undefined) throw new Error('no third star');
  const section = screen.getByRole('heading', { name: `Check on ${third.name}` }).parentElement;
  if (section === null) throw new Error('a heading without its section');
  expect(section.textContent).toMatch(/came from a clutch that was not locked\./);
  expect(
    within(section).getByRole('rowheader', { name: 'a clutch that was not locked' }),
  ).toBeTruthy();
});

test('every chain of arrows begins at the star and ends where the tube came to rest', () => {
  for (const { attribution } of result.misses) {
    if (!attribution.ok) continue;
    const links = chainOf(attribution);
    expect(links[0]?.from).toEqual({ rightArcmin: 0, upArcmin: 0 });
    expect(links.at(-1)?.to).toEqual(attribution.miss);
    for (const [index, link] of links.slice(1).entries())
      expect(link.from).toEqual(links[index]?.to);
    const sum = links.reduce((total, { arcmin }) => total + arcmin, 0);
    expect(sum).toBeCloseTo(attribution.missArcmin, 9);
  }
});

test('a share is told of the whole, in one unit to a line', () => {
  const miss = { rightArcmin: 31, upArcmin: 0 };
  const traced = {
    ok: true as const,
    miss,
    missArcmin: 31,
    togetherArcmin: 0,
    shares: [
      { cause: 'creep' as const, moved: { rightArcmin: 24, upArcmin: 0 }, arcmin: 24 },
      { cause: 'tilt' as const, moved: { rightArcmin: 7, upArcmin: 0 }, arcmin: 7 },
    ],
  };
  expect(missInWords({ kind: 'third', fieldRadiusArcmin: 27 }, traced)).toBe(
    'It came to rest 31′ beside the star; the eyepiece shows 27′ to each side, so the star was out of view. 24′ of the 31′ came from the tube creeping in its clutch.',
  );
});
