import { expect, test } from 'vitest';
import type { SkyObjectId } from '@/lib/pointing/answer-key';
import { skyMarks } from './mark-lights';

const hamal = 9884;
const sheratan = 8903;
const vega = 91262;

// Right ascension and declination stand in for azimuth and altitude: any places will do here.
const places = new Map<SkyObjectId, { azimuthDeg: number; altitudeDeg: number }>([
  [`hip-${hamal}`, { azimuthDeg: 31.8, altitudeDeg: 23.5 }],
  [`hip-${sheratan}`, { azimuthDeg: 28.7, altitudeDeg: 20.8 }],
  [`hip-${vega}`, { azimuthDeg: 279.2, altitudeDeg: 38.8 }],
]);

const marksWhile = (askedHip: number | null, selected: SkyObjectId | null) =>
  skyMarks({
    lightOf: (id) => places.get(id) ?? null,
    selected,
    kept: [
      { hip: hamal, name: 'Hamal' },
      { hip: vega, name: 'Vega' },
    ],
    proposedHip: null,
    askedHip,
  }).map(({ kind, azimuthDeg, label }) => ({ kind, azimuthDeg, label }));

test('kept stars are named over the sky while no look-alike is asked for', () => {
  expect(marksWhile(null, null)).toEqual([
    { kind: 'kept', azimuthDeg: 31.8, label: 'Hamal' },
    { kind: 'kept', azimuthDeg: 279.2, label: 'Vega' },
  ]);
});

test('the star asked about has a small ring and no name, so that its neighbours are seen', () => {
  expect(marksWhile(hamal, null)).toEqual([
    { kind: 'asked', azimuthDeg: 31.8, label: null },
    { kind: 'kept', azimuthDeg: 279.2, label: 'Vega' },
  ]);
});

test('the star asked about gets no second, wider ring when it is pressed again', () => {
  expect(marksWhile(hamal, `hip-${hamal}`)).toEqual(marksWhile(hamal, null));
});

test('the neighbour picked beside the star asked about is ringed as selected', () => {
  expect(marksWhile(hamal, `hip-${sheratan}`)).toContainEqual({
    kind: 'selected',
    azimuthDeg: 28.7,
    label: null,
  });
});
