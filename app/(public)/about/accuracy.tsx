import type { ReactNode } from 'react';

/** Where each number comes from. What is ours, or has no source, says so. */
const statements: readonly { what: string; how: ReactNode; trust: string }[] = [
  {
    what: 'Where stars, Sun, Moon and planets stand',
    how: 'Hipparcos positions with proper motion and aberration, turned to the place and the instant with the open library astronomy-engine.',
    trust:
      'Checked against ERFA and the JPL ephemeris: seconds of arc, far finer than an eye can tell.',
  },
  {
    what: 'Refraction near the horizon',
    how: 'The formulae of Sæmundsson and Bennett (in Meeus, Astronomical Algorithms, 2nd ed., ch. 16), for 1010 hPa and 10 °C unless told otherwise.',
    trust: 'Good above 10°. Real air close to the horizon does as it likes.',
  },
  {
    what: 'How much a low star is dimmed',
    how: 'Air mass after Kasten and Young (1989) times an extinction that the teacher can set.',
    trust: 'The air mass is a published fit; the extinction is your guess of the evening.',
  },
  {
    what: 'The faintest star an eye can see',
    how: 'Straight lines in the height of the Sun, less for the Moon.',
    trust: 'Our own approximation, without a source.',
  },
  {
    what: 'How well a pair of stars aligns',
    how: 'A small-error model of an alt-azimuth mount (after Wallace 2002, Proc. SPIE 4848), averaged over 533 directions between 20° and 80° of altitude.',
    trust:
      'It assumes stars centred as well as a careful beginner does, and a mount with the errors given in the kit.',
  },
  {
    what: '“82 of 100 targets”, the hit rate',
    how: 'The share of those directions at which the target would be inside the eyepiece, from the expected error there.',
    trust:
      'Approximate: exact when the error is the same in all directions, within a few targets of 100 otherwise.',
  },
  {
    what: '20° to 70° of altitude, second magnitude, brightest star around',
    how: 'Rules of thumb of people who align telescopes.',
    trust: 'Common practice, without a source; the teacher can change them.',
  },
];

export function Accuracy() {
  return (
    <>
      <p>
        Marks come from what was done, computed again on the server. At every limit the student gets
        the benefit of the doubt: a tenth of a degree, a twentieth of a magnitude.
      </p>
      <dl className="divide-y divide-line border-y border-line">
        {statements.map(({ what, how, trust }) => (
          <div key={what} className="keep-together py-3">
            <dt className="font-semibold">{what}</dt>
            <dd>{how}</dd>
            <dd className="text-sm text-soft">{trust}</dd>
          </div>
        ))}
      </dl>
      <p>
        A browser draws the sky, so a student who opens the developer tools can read star names
        there. The answer key itself is never sent before a choice is handed in, each student has a
        sky of their own, and the sign-off at the real telescope decides.
      </p>
    </>
  );
}
