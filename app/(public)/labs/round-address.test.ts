import { expect, test } from 'vitest';
import { firstRound } from './first-round';
import { readRoundAddress, roundAddress } from './round-address';

test('an address read back is the same round', () => {
  const round = {
    seed: 'ab12',
    kitId: 'owl',
    siteId: 'open-field',
    placeId: 4119617,
    localTime: '2026-12-05T19:30',
  };
  const address = new URL(roundAddress('what-went-wrong', round), 'http://localhost');
  const query = Object.fromEntries(address.searchParams);
  expect(readRoundAddress(query)).toEqual({ ...round, isFirst: false });
  expect(address.pathname).toBe('/labs/what-went-wrong');
});

test('empty fields of the form count as not given', () => {
  expect(readRoundAddress({ seed: 'x', kit: 'wren', site: '', place: '', time: '' })).toEqual({
    seed: 'x',
    isFirst: false,
    kitId: 'wren',
    siteId: undefined,
    placeId: undefined,
    localTime: undefined,
  });
});

test('a repeated field counts once, and a place that is no number not at all', () => {
  const read = readRoundAddress({ seed: ['a', 'b'], place: '12; drop' });
  expect(read.seed).toBe('a');
  expect(read.placeId).toBeUndefined();
});

test('the form asks for a first round, and a seed is never drawn over one that is given', () => {
  const asked = { [firstRound.name]: firstRound.value };
  expect(readRoundAddress({ ...asked, kit: 'wren' })).toMatchObject({
    isFirst: true,
    kitId: 'wren',
  });
  expect(readRoundAddress({ ...asked, seed: 'x' })).toMatchObject({ isFirst: false, seed: 'x' });
  expect(readRoundAddress({ kit: 'wren' }).isFirst).toBe(false);
});
