import { expect, it } from 'vitest';
import type { NightPlan } from '@/lib/night/plan-night';
import { hoursAndMinutes, moonAllNight, nightHints } from './night-words';

const [from, to] = ['2026-11-26T11:00:00.000Z', '2026-11-26T21:00:00.000Z'];

function planWith(moon: Partial<NightPlan['evening']['moon']>): NightPlan {
  const duskAndDawn = {
    civilDusk: null,
    astronomicalDusk: null,
    civilDawn: null,
    nauticalDawn: null,
    astronomicalDawn: null,
    nauticalDusk: '2026-11-26T14:00:00.000Z',
  };
  return {
    evening: {
      localDate: '2026-11-26',
      from,
      to,
      times: { sunset: null, sunrise: null, ...duskAndDawn },
      moon: { illuminatedFraction: 0.94, passages: [], up: [{ from, to }], ...moon },
    },
    firstStar: null,
    twoStarsFrom: '2026-11-26T13:00:00.000Z',
    hours: [{ instant: '2026-11-26T13:00:00.000Z', pairs: [] }],
    goodLater: [],
    toShow: [],
  };
}

const brightMoonIn = (plan: NightPlan) =>
  nightHints(plan, 'Europe/Oslo').find(({ text }) => text.startsWith('A bright Moon'));

it('warns of a bright Moon that is up all night without rising or setting', () => {
  expect(brightMoonIn(planWith({}))).toMatchObject({
    tone: 'careful',
    text: 'A bright Moon (94 % lit) is up all night: show it, and leave faint things for another night.',
  });
});

it('does not warn of a bright Moon that stays down, nor of a thin one', () => {
  expect(brightMoonIn(planWith({ up: [] }))).toBeUndefined();
  expect(brightMoonIn(planWith({ illuminatedFraction: 0.2 }))).toBeUndefined();
});

it('says of a Moon without rising and setting whether it is up or down', () => {
  expect(moonAllNight(planWith({}).evening)).toBe('up all night');
  expect(moonAllNight(planWith({ up: [] }).evening)).toBe('down all night');
  const passages = [{ kind: 'set' as const, instant: '2026-11-26T20:00:00.000Z' }];
  expect(moonAllNight(planWith({ passages }).evening)).toBeNull();
});

it('says minutes as hours and minutes, in one piece', () => {
  expect([0, 40, 60, 309].map(hoursAndMinutes)).toEqual([
    '–',
    '40\u00a0min',
    '1\u00a0h\u00a000',
    '5\u00a0h\u00a009',
  ]);
});

it('names telescopes that wait for the same time together, and those that wait in vain', () => {
  const pair = {
    stars: [
      { hip: 1, name: 'Vega', azimuthDeg: 270, altitudeDeg: 40 },
      { hip: 2, name: 'Capella', azimuthDeg: 60, altitudeDeg: 30 },
    ],
    hitRate: 0.98,
    from,
    until: to,
    lookAlikes: [],
  } as const;
  const later = { instant: '2026-11-26T17:10:00.000Z', pair, spare: null };
  const hints = nightHints(
    {
      ...planWith({}),
      goodLater: [
        { kitId: 'wren', kitName: 'Wren', later },
        { kitId: 'heron', kitName: 'Heron', later },
        { kitId: 'owl', kitName: 'Owl', later: null },
      ],
    },
    'Europe/London',
  ).map(({ text }) => text);
  expect(hints).toContain(
    'Wren and Heron begin with a poor pair: wait until 17:10 for a good one.',
  );
  expect(hints).toContain(
    'Owl has no good pair before packing up: centre twice as carefully, and check on a third star.',
  );
});
