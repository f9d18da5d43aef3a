'use client';

import { useMemo, useState } from 'react';
import type { SkyLight } from '@/components/sky/sky-lights';
import type { PairDraft } from '@/lib/grading/pair-submission';
import type { SkyObjectId } from '@/lib/pointing/answer-key';
import type { StarCatalogue } from '@/lib/sky/catalogue';
import { lightName, starName } from './light-names';
import type { PairChoice, PairChoiceAction, PairStage } from './pair-choice';
import { changeChoice, indexAfterProposal, proposalOf, stageOf, startChoice } from './pair-choice';
import type { PairLabSky } from './pair-lab-sky';
import type { PairSkyPlaces } from './pair-sky-places';
import { pairSkyPlaces } from './pair-sky-places';
import { lightInWords, ordinalOf, planetIsNoStar } from './pair-words';

/** The lab as its parts see it: the sky, what has been chosen, and what can be done next. */
export type PairLabModel = PairSkyPlaces & {
  sky: PairLabSky;
  catalogue: StarCatalogue;
  choice: PairChoice;
  stage: PairStage;
  selected: SkyLight | null;
  /** The star the mount proposes now. */
  proposalHip: number | null;
  /** For the status line. */
  said: string;
  nameOf: (id: SkyObjectId) => string;
  look: (light: SkyLight | null) => void;
  /** Keeps the selected star, or says why it cannot be kept. */
  keepSelected: () => void;
  keepProposal: () => void;
  anotherStar: () => void;
  proposeAgain: () => void;
  drop: (hip: number) => void;
  answer: (hip: number, lookAlike: SkyObjectId | null) => void;
  askAgain: (hip: number) => void;
  sayNone: () => void;
  unsayNone: () => void;
  undo: () => void;
};

type PairLabInput = {
  sky: PairLabSky;
  catalogue: StarCatalogue;
  draft: PairDraft;
  onDraft: (draft: PairDraft) => void;
};

/** The lab's state: one choice, one light that is looked at, one sentence for the status line. */
export function usePairLab({ sky, catalogue, draft, onDraft }: PairLabInput): PairLabModel {
  const places = useMemo(() => pairSkyPlaces(sky, catalogue), [sky, catalogue]);
  const [choice, setChoice] = useState(() => startChoice(draft, sky));
  const [selectedId, setSelectedId] = useState<SkyObjectId | null>(null);
  const [said, say] = useState('');
  const stage = stageOf(choice);
  const proposalHip = sky.task === 'mount-proposes' ? proposalOf(choice, sky.proposals) : null;
  const selected = selectedId === null ? null : places.lightOf(selectedId);

  const act = (action: PairChoiceAction, message: string): void => {
    const next = changeChoice(choice, action);
    if (next === choice) return;
    setChoice(next);
    setSelectedId(null);
    say(message);
    onDraft(next.draft);
  };
  const keep = (hip: number): void => {
    const name = starName(catalogue, hip);
    if (choice.draft.picks.some((pick) => pick.hip === hip)) {
      say(`${name} has already been kept.`);
      return;
    }
    act({ type: 'keep', hip }, `Kept as ${ordinalOf(choice.draft.picks.length)} star: ${name}.`);
  };

  return {
    ...places,
    sky,
    catalogue,
    choice,
    stage,
    selected,
    proposalHip,
    said,
    nameOf: (id) => lightName(catalogue, id),
    look: (light) => {
      setSelectedId(light?.id ?? null);
      say(light === null ? 'Nothing there that the eye can make out.' : lightInWords(light));
    },
    keepSelected: () => {
      if (selected === null) say('Pick a light first.');
      else if (selected.star === null) say(planetIsNoStar);
      else if (sky.task === 'mount-proposes' && selected.star.hip !== proposalHip)
        say('Here the mount proposes: take its star or ask for another.');
      else keep(selected.star.hip);
    },
    keepProposal: () => {
      if (proposalHip !== null) keep(proposalHip);
    },
    anotherStar: () => {
      if (proposalHip === null || sky.proposals === null) return;
      const nextIndex = indexAfterProposal(choice, sky.proposals, proposalHip);
      act({ type: 'another-star', nextIndex }, 'Turned down. The mount looks for another star.');
    },
    proposeAgain: () => {
      act({ type: 'first-proposal-again' }, 'The mount starts again with its first star.');
    },
    drop: (hip) => {
      act({ type: 'drop', hip }, `${starName(catalogue, hip)} is put back.`);
    },
    answer: (hip, lookAlike) => {
      const name = starName(catalogue, hip);
      act(
        { type: 'answer', hip, lookAlike },
        lookAlike === null
          ? `Noted: nothing near ${name} could be mistaken for it.`
          : `Noted: ${lightName(catalogue, lookAlike)} could be mistaken for ${name}.`,
      );
    },
    askAgain: (hip) => {
      act({ type: 'ask-again', hip }, '');
    },
    sayNone: () => {
      act({ type: 'say-none' }, 'You say that tonight has no good pair.');
    },
    unsayNone: () => {
      act({ type: 'unsay-none' }, 'Back to choosing.');
    },
    undo: () => {
      act({ type: 'undo' }, 'Undone.');
    },
  };
}
