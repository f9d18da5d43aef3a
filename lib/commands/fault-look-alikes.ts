import { parseArgs } from 'node:util';
import { loadCatalogue, loadKits } from '../content/sky-catalogue';
import { telescopeAndEyepiece } from '../data/default-evening';
import { runKitOf } from '../variants/run-kit';
import { surveyLookAlikes } from '../variants/survey-look-alikes';

const help = `Prints which faults of "What went wrong?" look alike, and how often: over evenings at many
sites and dates, with every kit and both kinds of computer. Two are alike on an evening when some
form of the one differs from some form of the other by no more than a careful beginner's hand and eye.

  npm run fault-look-alikes                    200 evenings
  npm run fault-look-alikes -- --evenings 50
  npm run fault-look-alikes -- --seed TEXT     other evenings`;

function main(): void {
  const { values } = parseArgs({
    options: {
      evenings: { type: 'string', default: '200' },
      seed: { type: 'string', default: 'look-alikes' },
      help: { type: 'boolean', short: 'h', default: false },
    },
  });
  const evenings = Number(values.evenings);
  if (values.help || !Number.isInteger(evenings) || evenings < 1) {
    console.log(help);
    process.exitCode = values.help ? 0 : 2;
    return;
  }
  const survey = surveyLookAlikes({
    seed: values.seed,
    evenings,
    kits: loadKits().map((kit) => ({ ...runKitOf(kit), ...telescopeAndEyepiece(kit) })),
    catalogue: loadCatalogue(),
  });
  console.log(`${String(survey.evenings)} evenings\n`);
  console.log('| faults | evenings for both | alike, nothing noticed | alike, all noticed |');
  console.log('|---|---|---|---|');
  for (const { faults, both, unnoticed, noticed } of survey.pairs) {
    const share = (count: number): string => `${((100 * count) / both).toFixed(0)} %`;
    console.log(
      `| ${faults.join(' · ')} | ${String(both)} | ${share(unnoticed)} | ${share(noticed)} |`,
    );
  }
}

main();
