import { parseArgs } from 'node:util';
import { loadItemWorld } from '../content/item-world';
import { familySurvey } from '../items/family-survey';
import { itemBank } from '../items/item-bank';
import { rows } from './table-rows';

const help = `Answers every template of every family of questions with its key and with each distractor, and prints
what came of it: no key may miss full marks, no distractor may get them, no text may make up more than a
tenth of a family's draws. Exit code 1 when something does.

  npm run item-bank                     200 draws of each template
  npm run item-bank -- --draws 1000`;

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

function main(): void {
  const { values } = parseArgs({
    options: {
      draws: { type: 'string', default: '200' },
      help: { type: 'boolean', short: 'h', default: false },
    },
  });
  const draws = Number(values.draws);
  if (values.help || !Number.isInteger(draws) || draws < 1) {
    console.log(help);
    process.exitCode = values.help ? 0 : 2;
    return;
  }
  const world = loadItemWorld();
  const surveys = itemBank.map((family) => ({
    family,
    survey: familySurvey(family, { world, draws, seed: 'item bank' }),
  }));
  const table = surveys.map(({ family, survey }) => [
    family.lesson,
    family.id,
    String(Object.keys(family.templates).length),
    String(survey.draws),
    String(survey.wrongAnswers),
    percent(survey.commonestQuestion.share),
    percent(survey.commonestAnswer.share),
    String(survey.problems.length),
  ]);
  const head = [
    'lesson',
    'family',
    'templates',
    'draws',
    'wrong answers',
    'question',
    'answer',
    'problems',
  ];
  console.log(rows(head, table));
  const problems = surveys.flatMap(({ family, survey }) =>
    survey.problems.map((problem) => `${family.id}: ${problem}`),
  );
  if (problems.length === 0) return;
  console.log(`\n${problems.join('\n')}`);
  process.exitCode = 1;
}

main();
