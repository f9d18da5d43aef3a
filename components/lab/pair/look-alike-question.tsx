'use client';

import { useEffect, useRef } from 'react';
import { letterIn } from './letter-in';
import { LightCard } from './light-card';
import type { PairLabModel } from './use-pair-lab';

type LookAlikeQuestionProps = { lab: PairLabModel; hip: number; inTable: boolean };

/** "Something near it could be mistaken for it": which light, or nothing. */
export function LookAlikeQuestion({ lab, hip, inTable }: LookAlikeQuestionProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    // The step has changed under the reader's hands: reading goes on from here.
    heading.current?.focus({ preventScroll: true });
  }, []);
  const name = lab.nameOf(`hip-${hip}`);
  const { selected } = lab;
  const neighbour = selected !== null && selected.id !== `hip-${hip}` ? selected : null;
  return (
    <section aria-labelledby="look-alike-heading" className="space-y-3">
      <h3
        ref={heading}
        tabIndex={-1}
        id="look-alike-heading"
        className="font-semibold focus-visible:outline-none"
      >
        Could something near {name} be mistaken for it?
      </h3>
      <p className="text-sm">
        Look within one fist of it. A light that is brighter, or almost as bright, could end up in
        the eyepiece instead.{' '}
        {inTable
          ? 'Choose that light in the table, or say that there is none.'
          : 'Pick that light in the sky, or say that there is none.'}
      </p>
      {neighbour === null ? null : (
        <LightCard light={neighbour} letter={inTable ? letterIn(lab, neighbour.id) : null} />
      )}
    </section>
  );
}
