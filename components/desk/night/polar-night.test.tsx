import { cleanup, render, screen } from '@testing-library/react';
import { afterEach, expect, test } from 'vitest';
import { EveningStrip } from './evening-strip';
import { FortnightTable } from './fortnight-table';

afterEach(cleanup);

const timeZone = 'Europe/Oslo';

test('the bar of an evening in the polar night carries the Moon that stays up, and begins at noon', () => {
  const [from, to] = ['2026-11-27T11:00:00.000Z', '2026-11-27T21:00:00.000Z'];
  const dawn = { astronomicalDawn: null, nauticalDawn: null, civilDawn: null, sunrise: null };
  const dusk = { sunset: null, civilDusk: null, nauticalDusk: null, astronomicalDusk: null };
  const evening = {
    localDate: '2026-11-27',
    from,
    to,
    times: { ...dusk, ...dawn },
    moon: { illuminatedFraction: 0.9, passages: [], up: [{ from, to }] },
  };
  const { container } = render(
    <EveningStrip evening={evening} twoStarsFrom={null} timeZone={timeZone} />,
  );
  expect(container.querySelectorAll('.fill-on-sky')).toHaveLength(1);
  expect(screen.getByRole('img').getAttribute('aria-label')).toMatch(
    /^From noon at 12:00 .*The Moon is up from 12:00 to 22:00\./,
  );
});

test('an evening without a sunset says why', () => {
  const none = { sunset: null, darkFrom: null, darkMinutes: 0, moonlessMinutes: 0 };
  render(
    <FortnightTable
      evenings={[
        { ...none, localDate: '2026-12-05', noSunset: 'sun-stays-down', illuminatedFraction: 0.1 },
        { ...none, localDate: '2026-06-21', noSunset: 'sun-stays-up', illuminatedFraction: 0.4 },
      ]}
      {...{ best: null, planned: '', timeZone, hrefFor: (date: string) => `/${date}` }}
    />,
  );
  expect(screen.getByRole('cell', { name: 'the Sun does not rise' })).toBeTruthy();
  expect(screen.getByRole('cell', { name: 'the Sun does not set' })).toBeTruthy();
});
