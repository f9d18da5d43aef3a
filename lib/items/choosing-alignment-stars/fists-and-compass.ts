import { choice, numeric } from '../build-item';
import type { ItemDraw, ItemFamily } from '../item-family';

/** How many fists of 10° at arm's length; common practice, no source. */
const fistDeg = 10;

const names = ['the star', 'Capella', 'Arcturus', 'Vega', 'Regulus', 'a planet', 'the Moon'];

function fistsUp({ random }: ItemDraw) {
  const halves = random.integer(3, 15);
  const altitudeDeg = (halves * fistDeg) / 2;
  const what = random.pick(names) ?? 'the star';
  return numeric({
    prompt: `With your arm straight you count ${inFists(halves)} from the level horizon up to ${what}. What is its altitude?`,
    unit: 'degrees',
    key: altitudeDeg,
    tolerance: { mode: 'absolute', full: 3, zero: 10 },
    explanation: `A fist at arm’s length spans about 10°, so ${inFists(halves)} are ${String(altitudeDeg)}°.`,
    slips: [
      { gives: halves / 2, reason: 'That is the number of fists. Each stands for about 10°.' },
      {
        gives: altitudeDeg * 1.5,
        reason:
          'That is how high it looks. Eyes make altitudes about one and a half times too large; the fist does not.',
        misconception: 'altitude-looks-higher',
      },
    ],
  });
}

const directions = [
  { name: 'north', azimuthDeg: 0 },
  { name: 'east', azimuthDeg: 90 },
  { name: 'south', azimuthDeg: 180 },
  { name: 'west', azimuthDeg: 270 },
] as const;

function turnedRight({ random }: ItemDraw) {
  const from = random.pick(directions) ?? directions[0];
  const fists = random.integer(1, 4);
  const key = from.azimuthDeg + fists * fistDeg;
  const what = random.pick(names) ?? 'the star';
  const text = (azimuthDeg: number) => `${String((azimuthDeg + 360) % 360)}°`;
  return choice({
    prompt: `You face due ${from.name} and find ${what} ${inFists(2 * fists)} to your right. What is its azimuth?`,
    explanation: `Due ${from.name} is ${text(from.azimuthDeg)}. To the right azimuth grows, 10° a fist.`,
    right: { text: text(key), reason: `${text(from.azimuthDeg)} and ${String(fists * 10)}° more.` },
    wrong: [
      {
        text: text(from.azimuthDeg - fists * fistDeg),
        reason: 'That is to the left. Azimuth grows to the right: north, east, south, west.',
        misconception: 'azimuth-anticlockwise',
      },
      {
        text: text(key + 180),
        reason: 'That counts from south. Azimuth starts at north.',
        misconception: 'azimuth-from-south',
      },
    ],
  });
}

const inFists = (halves: number): string =>
  `${halves % 2 === 0 ? String(halves / 2) : `${String(Math.floor(halves / 2))}½`} ${halves === 2 ? 'fist' : 'fists'}`;

/** Fist and compass. Two more templates belong here. */
export const fistsAndCompass: ItemFamily = {
  id: 'fists-and-compass',
  lesson: 'choosing-alignment-stars',
  objective: 'place',
  skill: 'choose-stars',
  title: 'Where it stands, by fist and compass',
  version: 1,
  templates: { 'fists-up': fistsUp, 'turned-right': turnedRight },
};
