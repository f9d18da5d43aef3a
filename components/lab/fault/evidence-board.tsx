'use client';

import { arcminuteInWords } from '@/components/sky/angle-words';
import { classNames } from '@/components/ui/class-names';
import type { Look } from '@/lib/variants/fault-variant';
import { AskButton, AskNotice } from './ask-button';
import { EvidenceBody } from './evidence/evidence-body';
import { lookWords } from './evidence/look-words';
import { EveningStrip } from './evidence/evening-strip';
import { lookCost, looksMark } from '@/lib/grading/grade-fault';
import { marksInWords } from './marks-in-words';
import { OpenItem } from './open-item';
import { TestSlew } from './test-slew';
import type { FaultLabModel } from './use-fault-lab';

/** Slews beside each other, what was entered beside what came of it. */
const boardOrder: readonly Look[] = ['first', 'second', 'outcome', 'card', 'later', 'observations'];

/**
 * The bench with all the evidence of the evening. Everything on it is text and buttons, and each
 * drawing only repeats the text beside it: eyes, keyboard and reader use this one page, so the lab
 * needs no second view.
 */
export function EvidenceBoard({ lab }: { lab: FaultLabModel }) {
  return (
    <div className="size-full overflow-y-auto overscroll-contain px-4 pt-4 pb-20 sm:px-6 lg:pb-8">
      <div className="mx-auto max-w-[62rem] space-y-5">
        <h1 className="text-2xl font-[560]">What went wrong?</h1>
        <EveningStrip facts={lab.view.facts} kitName={lab.view.kit.name} />
        <div className="grid gap-x-8 gap-y-3 text-sm text-soft xl:grid-cols-2">
          <p>
            What lies open costs nothing. A look at anything else costs {marksInWords(lookCost)} of
            100, never more than {String(looksMark)} in all, and cannot be taken back: what has been
            seen is seen.
          </p>
          <p>
            In the drawings the arrow leads from the star to where the tube landed. The full ring
            there is what the eyepiece shows, the broken one about what a finder shows.{' '}
            {arcminuteInWords}
          </p>
        </div>
        <div className="grid grid-cols-[minmax(0,1fr)] gap-4 xl:grid-cols-2">
          {boardOrder.map((look) =>
            lab.seen.includes(look) ? (
              <OpenItem
                key={look}
                title={lookWords[look].title}
                note={lab.view.open.includes(look) ? null : 'asked for'}
                focused={lab.justOpened === look}
                wide={look === 'later' && (lab.view.evidence.later?.length ?? 0) > 1}
              >
                <EvidenceBody look={look} view={lab.view} />
              </OpenItem>
            ) : (
              <ClosedItem key={look} look={look} lab={lab} />
            ),
          )}
          <TestSlew lab={lab} />
        </div>
      </div>
    </div>
  );
}

/** A sheet that lies face down. */
function ClosedItem({ look, lab }: { look: Look; lab: FaultLabModel }) {
  const { title, asks } = lookWords[look];
  const asked = lab.asked[look];
  return (
    <section
      aria-label={title}
      className={classNames(
        'flex flex-wrap items-center justify-between gap-x-6 gap-y-2',
        'self-start rounded-b-lg border border-t-2 border-dashed border-strong bg-sunken px-4 py-3 sm:px-5',
      )}
    >
      <div>
        <h2 className="font-semibold">{title}</h2>
        <p className="text-sm text-soft">
          {asked?.state === 'waiting' ? 'It is on its way …' : asks}
        </p>
      </div>
      <AskButton
        asked={asked}
        label={`Look at it: ${title}, costs ${marksInWords(lookCost)}`}
        againLabel={`Try again: ${title}`}
        onAsk={() => {
          lab.look(look);
        }}
      >
        Look · {marksInWords(lookCost)}
      </AskButton>
      <AskNotice asked={asked} />
    </section>
  );
}
