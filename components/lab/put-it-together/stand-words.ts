import { standAfter, type Stand } from '@/lib/assembly/stand';
import type { PutItTogetherDraft } from '@/lib/grading/bench/put-it-together/put-it-together-submission';
import type { PutItTogetherVariant } from '@/lib/variants/bench/put-it-together/put-it-together-variant';

/** What stands on the bench now. */
export const standNow = (
  { kind, done }: PutItTogetherVariant,
  { order }: Pick<PutItTogetherDraft, 'order'>,
): Stand => standAfter([...done, ...order], kind === 'take-down' ? 'built' : 'packed');

/** The same in words. */
export function standInWords(stand: Stand): string {
  const { legs, raised, tray, mount, tube, finder, imagePart, eyepiece, caps, tipped } = stand;
  const parts = [
    legs === 'folded' ? 'The legs are folded' : 'The legs are spread',
    raised ? 'drawn out' : 'short',
    tray ? 'with the tray in' : 'without the tray',
  ];
  const said = [
    `${parts.join(', ')}.`,
    mount === 'away'
      ? 'The mount is off.'
      : mount === 'on'
        ? 'The mount is set on.'
        : 'The mount is bolted on.',
    tubeInWords[tube],
  ];
  if (tube === 'held' || tube === 'clamped') {
    const on = [
      ...(finder ? ['finder'] : []),
      ...(imagePart ? ['prism or diagonal'] : []),
      ...(eyepiece ? ['eyepiece'] : []),
    ];
    said.push(on.length === 0 ? 'Nothing is on it yet.' : `On it: ${on.join(', ')}.`);
    said.push(caps ? 'The caps are on.' : 'The caps are off.');
  }
  return [...said, ...(tipped ? [tippedOver] : [])].join(' ');
}

const tippedOver = 'The stand has tipped over.';

/** What must not go unsaid after a step; empty where nothing happened. */
export const harmInWords = ({ tube, tipped }: Stand): string =>
  [tube === 'fallen' ? tubeInWords.fallen : '', tipped ? tippedOver : '']
    .filter((text) => text !== '')
    .map((text) => ` ${text}`)
    .join('');

const tubeInWords: Readonly<Record<Stand['tube'], string>> = {
  away: 'The tube is off.',
  held: 'Two hands hold the tube.',
  clamped: 'The clamp holds the tube.',
  fallen: 'The tube has fallen.',
};
