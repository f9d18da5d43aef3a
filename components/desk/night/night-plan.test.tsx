import { cleanup, render, screen, within } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import type { PlannedPair } from '@/lib/night/night-pairs';
import type { NightPlan } from '@/lib/night/plan-night';
import { NightPlanView } from './night-plan-view';

afterEach(cleanup);

const at = (time: string): string => `2026-11-26T${time}:00.000Z`;

function pairOf(names: readonly [string, string], hitRate: number): PlannedPair {
  const [one, other] = names;
  return {
    stars: [
      { hip: 1, name: one, azimuthDeg: 225, altitudeDeg: 44 },
      { hip: 2, name: other, azimuthDeg: 10, altitudeDeg: 86 },
    ],
    hitRate,
    from: at('16:00'),
    until: at('20:00'),
    lookAlikes: [],
  };
}

const poor = pairOf(['Vega', 'Altair'], 0.64);
const good = pairOf(['Deneb', 'Capella'], 0.99);
const hour = (time: string, wren: PlannedPair, owl: PlannedPair): NightPlan['hours'][number] => ({
  instant: at(time),
  pairs: [
    { kitId: 'wren', kitName: 'Wren', pairs: [wren] },
    { kitId: 'owl', kitName: 'Owl', pairs: [owl, poor] },
  ],
});

const dawn = { astronomicalDawn: null, nauticalDawn: null, civilDawn: null, sunrise: at('07:56') };
const dusk = { sunset: at('15:56'), civilDusk: at('16:37'), nauticalDusk: at('17:21') };
const plan: NightPlan = {
  evening: {
    localDate: '2026-11-26',
    from: at('15:56'),
    to: at('22:30'),
    times: { ...dusk, astronomicalDusk: at('18:04'), ...dawn },
    moon: { illuminatedFraction: 0.1, passages: [], up: [] },
  },
  firstStar: null,
  twoStarsFrom: at('16:50'),
  hours: [hour('16:50', poor, good), hour('17:00', poor, good), hour('18:00', good, good)],
  goodLater: [
    {
      kitId: 'wren',
      kitName: 'Wren',
      later: { instant: at('17:10'), pair: good, spare: null },
    },
  ],
  toShow: [
    {
      name: 'Almach',
      kind: 'double',
      from: at('17:20'),
      until: at('22:30'),
      best: { instant: at('20:10'), azimuthDeg: 135, altitudeDeg: 69 },
      with: [
        { kit: 'Wren', focalLengthMm: 9 },
        { kit: 'Owl', focalLengthMm: 25 },
      ],
    },
  ],
};

const rowsOf = (name: string): string[] =>
  within(screen.getByRole('table', { name }))
    .getAllByRole('rowheader')
    .map((one) => one.textContent);

test('each telescope has its own hours, and one that begins poorly is told of the good pair once', () => {
  render(<NightPlanView plan={plan} timeZone="Europe/London" />);
  expect(rowsOf('Wren, hour by hour')).toEqual(['16:50', '17:10', '18:00']);
  expect(rowsOf('Owl, hour by hour')).toEqual(['16:50', '17:00', '18:00']);
  const wren = screen.getByRole('region', { name: 'Wren' });
  expect(within(wren).getByText('Poor at first: wait until 17:10.')).toBeTruthy();
  expect(within(wren).getAllByText(/^poor/)).toHaveLength(1);
  expect(within(screen.getByRole('region', { name: 'Owl' })).queryByText(/wait/)).toBeNull();
});

test('a direction is short to the eye and whole to the ear', () => {
  render(<NightPlanView plan={plan} timeZone="Europe/London" />);
  const deneb = screen.getAllByText('Deneb')[0]?.parentElement;
  expect(deneb?.textContent).toContain('4½ SW');
  expect(deneb?.textContent).toContain('four and a half fists up in the south-west');
  // Nearly overhead no direction helps.
  expect(screen.getAllByText('Capella')[0]?.parentElement?.textContent).toContain('overhead');
});

test('no two landmarks of a plan have the same name', () => {
  render(<NightPlanView plan={plan} timeZone="Europe/London" />);
  const names = screen
    .getAllByRole('region')
    .map((one) => document.getElementById(one.getAttribute('aria-labelledby') ?? '')?.textContent);
  expect(names).toEqual([...new Set(names)]);
  expect(names).not.toContain(undefined);
});

test('what to show names each telescope with the eyepiece that shows it', () => {
  render(<NightPlanView plan={plan} timeZone="Europe/London" />);
  expect(screen.getByRole('cell', { name: 'Wren 9 mm, Owl 25 mm' })).toBeTruthy();
});
