import { randomFrom } from '../../random';
import type { BenchTaskInput } from '../bench-variant';
import { drawTiltQuestion } from './draw-tilt-question';
import { drawTripodSite } from './draw-tripod-site';
import type { LevelTemplate, LevelVariant } from './level-variant';

/** Goes up whenever the same seed could make another task. */
const generatorVersion = 1;

export function generateLevel({
  seed,
  templates,
  kit,
}: BenchTaskInput<LevelTemplate>): LevelVariant {
  const random = randomFrom(seed);
  const template = random.pick(templates);
  if (template === undefined) throw new Error('a task needs at least one template to be made of');
  return {
    lab: 'level',
    template,
    generatorVersion,
    kitName: kit.name,
    tubeType: kit.tubeType,
    site: drawTripodSite(random, template, kit),
    question: drawTiltQuestion(random),
  };
}
