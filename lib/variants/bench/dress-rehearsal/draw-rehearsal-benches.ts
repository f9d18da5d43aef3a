import type { BenchStage } from '../../../rehearsal/stages';
import type { Random } from '../../random';
import type { BalanceTemplate } from '../balance/balance-variant';
import type { BenchTaskInput } from '../bench-variant';
import type { ClockAndPlaceTemplate } from '../clock-and-place/clock-and-place-variant';
import type {
  DressRehearsalTemplate,
  DressRehearsalVariant,
  RehearsalBenches,
} from './dress-rehearsal-variant';
import type { FinderTemplate } from '../finder/finder-variant';
import { generateBalance } from '../balance/generate-balance';
import { generateClockAndPlace } from '../clock-and-place/generate-clock-and-place';
import { generateFinder } from '../finder/generate-finder';
import { generateLevel } from '../level/generate-level';
import { generatePower } from '../power/generate-power';
import { generatePutItTogether } from '../put-it-together/generate-put-it-together';
import type { LevelTemplate } from '../level/level-variant';
import type { PowerTemplate } from '../power/power-variant';
import type { PutItTogetherTemplate } from '../put-it-together/put-it-together-variant';

/** Kinds of task that each stage may be made of. */
type StageTemplates = {
  'put-it-together': readonly PutItTogetherTemplate[];
  level: readonly LevelTemplate[];
  balance: readonly BalanceTemplate[];
  finder: readonly FinderTemplate[];
  power: readonly PowerTemplate[];
  'clock-and-place': readonly ClockAndPlaceTemplate[];
};

/** Set up anew; only such tasks as are of this place and evening. */
const anew: StageTemplates = {
  // A finder that is set by day is set on a tube that was built with its caps on.
  'put-it-together': ['by-day'],
  level: ['one-slope', 'soft-foot', 'leg-at-its-end', 'turned-vial'],
  balance: ['first-balance', 'two-edges'],
  finder: ['free-target', 'day-then-dusk'],
  power: ['fill-the-holder', 'choose-the-supply'],
  'clock-and-place': ['enter-the-card'],
};

/** As somebody left it, with a slip in it that is still to be found. */
const leftBySomebody: Omit<StageTemplates, 'put-it-together' | 'level'> = {
  balance: ['raised'],
  // It is found out and put right at dusk.
  finder: ['set-by-another'],
  power: ['switch-on'],
  'clock-and-place': ['check-the-form'],
};
const builtAtDusk: StageTemplates['put-it-together'] = [
  'from-the-case',
  'half-built',
  'mixed-case',
];
/** In all of these the slip comes back at the eyepiece. */
const canBeLeft = ['balance', 'finder', 'power', 'clock-and-place'] as const satisfies BenchStage[];

/** The stages that somebody did before, by kind of evening. */
function drawFoundDone(random: Random, template: DressRehearsalTemplate): readonly BenchStage[] {
  const shuffled = random.shuffle<BenchStage>(canBeLeft);
  if (template === 'somebody-set-it-up') return shuffled.slice(0, 2);
  return template === 'hurried-evening' ? shuffled.slice(0, 1) : [];
}

function stageTemplates(
  template: DressRehearsalTemplate,
  foundDone: readonly BenchStage[],
): StageTemplates {
  const from = (stage: BenchStage): typeof leftBySomebody =>
    foundDone.includes(stage) ? leftBySomebody : anew;
  return {
    'put-it-together': foundDone.includes('finder') ? builtAtDusk : anew['put-it-together'],
    // Weight on soft ground, and a foot that goes in: what the wind finds.
    level: template === 'windy-evening' ? ['soft-foot'] : anew.level,
    balance: from('balance').balance,
    finder: from('finder').finder,
    power: template === 'cold-evening' ? ['last-the-night'] : from('power').power,
    'clock-and-place': from('clock-and-place')['clock-and-place'],
  };
}

/** Every stage's own lab makes its bench for the evening; each from a seed of its own. */
export function drawRehearsalBenches(
  random: Random,
  template: DressRehearsalTemplate,
  { seed, ...evening }: Omit<BenchTaskInput<never>, 'templates'>,
): Pick<DressRehearsalVariant, 'benches' | 'foundDone'> {
  const foundDone = drawFoundDone(random, template);
  const templates = stageTemplates(template, foundDone);
  const input = <Stage extends BenchStage>(stage: Stage) => ({
    ...evening,
    seed: `${seed} ${stage}`,
    templates: templates[stage],
  });
  const benches: RehearsalBenches = {
    'put-it-together': generatePutItTogether(input('put-it-together')),
    level: generateLevel(input('level')),
    balance: generateBalance(input('balance')),
    finder: generateFinder(input('finder')),
    power: generatePower(input('power')),
    'clock-and-place': generateClockAndPlace(input('clock-and-place')),
  };
  return { benches, foundDone };
}
