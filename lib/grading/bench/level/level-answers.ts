import { firstSlew, takenAsLevel } from '../../../levelling/tilt-consequences';
import type { TiltQuestion } from '../../../variants/bench/level/level-variant';
import type { LevelSlip } from './level-result';
import type { LevelSubmission } from './level-submission';

export type LevelAnswers = LevelSubmission['answers'];

/** Of 20: the first slew is what a tilt is felt by, the others are learnt from it. */
const possible = { firstSlew: 10, afterTwoStars: 5, takenAsLevel: 5 } as const;

/** What the mechanics make of the question's tilt. After two stars nothing is left: under 0.001′. */
function truth(question: TiltQuestion) {
  const { first, second } = question;
  return {
    firstSlew: firstSlew(question, first).upArcmin,
    afterTwoStars: 0,
    takenAsLevel: takenAsLevel(question, first, second).upArcmin,
  };
}

const offered = (question: TiltQuestion) => ({
  firstSlew: question.firstSlewUpArcmin,
  afterTwoStars: question.afterTwoStarsArcmin,
  takenAsLevel: question.takenAsLevelUpArcmin,
});

const asked = ['firstSlew', 'afterTwoStars', 'takenAsLevel'] as const;

/** Of each list of answers the one that comes closest to what the mechanics say. */
export function rightAnswers(question: TiltQuestion): LevelAnswers {
  const closest = (name: (typeof asked)[number]): number => {
    const options = offered(question)[name];
    const misses = options.map((arcmin) => Math.abs(arcmin - truth(question)[name]));
    return misses.indexOf(Math.min(...misses));
  };
  return {
    firstSlew: closest('firstSlew'),
    afterTwoStars: closest('afterTwoStars'),
    takenAsLevel: closest('takenAsLevel'),
  };
}

/** Null where an answer was never offered. */
export function judgeAnswers(
  question: TiltQuestion,
  answers: LevelAnswers,
): {
  earned: number;
  possible: number;
  slips: readonly { slip: LevelSlip; lost: number }[];
} | null {
  const right = rightAnswers(question);
  const slips: { slip: LevelSlip; lost: number }[] = [];
  let earned = 0;
  for (const name of asked) {
    const chosenArcmin = offered(question)[name][answers[name]];
    const rightArcmin = offered(question)[name][right[name]];
    if (chosenArcmin === undefined || rightArcmin === undefined) return null;
    if (chosenArcmin === rightArcmin) earned += possible[name];
    else slips.push({ slip: slipOf(name, chosenArcmin, rightArcmin), lost: possible[name] });
  }
  return { earned, possible: 20, slips };
}

function slipOf(
  name: (typeof asked)[number],
  chosenArcmin: number,
  rightArcmin: number,
): LevelSlip {
  switch (name) {
    case 'firstSlew':
      return { code: 'first-slew', chosenArcmin, rightArcmin };
    case 'afterTwoStars':
      return { code: 'after-two-stars', chosenArcmin };
    case 'takenAsLevel':
      return { code: 'taken-as-level', chosenArcmin, rightArcmin };
  }
}
