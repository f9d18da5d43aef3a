import { fewestMoves } from '../../../levelling/fewest-moves';
import { tiltConsequences } from '../../../levelling/tilt-consequences';
import { startOf, tiltOfHead } from '../../../levelling/tripod';
import { replay } from '../../../levelling/tripod-actions';
import { vialShowsDeg } from '../../../levelling/vial';
import { settled } from '../../../variants/bench/level/draw-tripod-site';
import type { LevelVariant } from '../../../variants/bench/level/level-variant';
import type { BenchGrading } from '../bench-result';
import { judgeAnswers } from './level-answers';
import { firstMove } from './level-first-move';
import type { LevelCriterion, LevelResult, LevelSlip } from './level-result';
import { firstLegSlip, sinkingSlip, tiltSlip } from './level-slips';
import type { LevelSubmission } from './level-submission';
import { totalOf } from '../../total-of';

/** Goes up whenever the same submission could earn other marks. */
export const levelGraderVersion = 1;

/**
 * Full marks within what the vial can show. None from here on: 1.25° is the field radius of the widest
 * 25 mm eyepiece of our telescopes (Wren), so beyond it the first slew can miss every one of them.
 */
const noMarksDeg = 1.25;
/** So many moves too many leave nothing for moves. */
const movesTooMany = 5;

const possible = { tilt: 60, 'first-leg': 10, moves: 10 } as const;

const clamp01 = (share: number): number => Math.min(1, Math.max(0, share));

const refuse = (code: string, message: string): BenchGrading<LevelResult> => ({
  ok: false,
  refusal: { code, message },
});

/** Replays what was done and marks the tilt that is left, the way there, and the answers on tilts. */
export function gradeLevel({
  variant,
  submission: { actions, answers },
}: {
  variant: LevelVariant;
  submission: LevelSubmission;
}): BenchGrading<LevelResult> {
  const { site, question, template } = variant;
  const states = replay(site, actions);
  const last = states?.at(-1);
  if (states === null || last === undefined)
    return refuse('log-does-not-add-up', 'A step in this work cannot be done at the tripod.');
  if (!last.tubeOn) return refuse('tube-not-on', 'The tube is not on the mount yet.');
  if (last.held) return refuse('still-held', 'Somebody is still holding the tube.');
  const judged = judgeAnswers(question, answers);
  if (judged === null)
    return refuse('not-offered', 'One of the answers was not among those offered.');

  const left = tiltOfHead(site, last);
  const tiltShare = clamp01((noMarksDeg - left.tiltDeg) / (noMarksDeg - vialShowsDeg));
  const first = firstMove(site, actions, states);
  const fewest = fewestMoves(site, settled(site))[0]?.legs.length ?? 3;
  const tooMany = Math.max(0, last.moves - fewest);
  const earned: Readonly<Record<LevelCriterion, number>> = {
    tilt: possible.tilt * tiltShare,
    'first-leg':
      possible['first-leg'] *
      { best: 1, 'right-way': 0.5, 'wrong-way': 0 }[first?.judgement ?? 'wrong-way'],
    // Few moves are worth something only where they level the head.
    moves: possible.moves * clamp01(1 - tooMany / movesTooMany) * tiltShare,
    'how-level': judged.earned,
  };
  const criteria = (['tilt', 'first-leg', 'moves', 'how-level'] as const).map((id) => ({
    id,
    earned: earned[id],
    possible: id === 'how-level' ? judged.possible : possible[id],
  }));

  const lostOn = (id: keyof typeof possible) => possible[id] - earned[id];
  const slips: { slip: LevelSlip | null; lost: number }[] = [
    { slip: sinkingSlip(variant, actions, last), lost: lostOn('tilt') + 0.5 },
    { slip: tiltSlip(variant, last), lost: lostOn('tilt') },
    { slip: firstLegSlip(variant, first), lost: lostOn('first-leg') },
    {
      slip: tooMany > 0 ? { code: 'more-moves', moves: last.moves, fewest } : null,
      lost: lostOn('moves'),
    },
    ...judged.slips,
  ];
  return {
    ok: true,
    result: {
      lab: 'level',
      graderVersion: levelGraderVersion,
      template,
      total: totalOf(criteria),
      criteria,
      gates: last.ranIn === null ? [] : [{ id: 'leg-left-open', leg: last.ranIn }],
      slips: slips
        .sort((a, b) => b.lost - a.lost)
        .flatMap(({ slip }) => (slip === null ? [] : [slip])),
      found: tiltOfHead(site, startOf(site)),
      left,
      legsMm: [last.legs[0].lengthMm, last.legs[1].lengthMm, last.legs[2].lengthMm],
      armTurned: last.armTurned,
      moves: last.moves,
      fewest,
      leftCosts: tiltConsequences(left, question.first, question.second),
    },
  };
}
