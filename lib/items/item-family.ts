import type { LessonSlug } from '../course/lessons';
import type { Skill } from '../course/skills';
import type { Telescope } from '../pointing/scenario';
import type { StarCatalogue } from '../sky/catalogue';
import type { BenchKit } from '../variants/bench/bench-kit';
import type { Random } from '../variants/random';
import type { ItemBody } from './item';

/** The telescopes and the stars that questions are made of. */
export type ItemWorld = {
  kits: readonly ItemKit[];
  catalogue: StarCatalogue;
};
export type ItemKit = BenchKit & { id: string; telescope: Telescope };

export type ItemDraw = { random: Random; world: ItemWorld };

/** Makes one question. The same draw makes the same question. */
export type ItemTemplate = (draw: ItemDraw) => ItemBody;

/**
 * Questions about one thing: at least four templates that differ in what is asked or done, not in
 * their numbers only, and that are about as hard as each other.
 */
export type ItemFamily = {
  /** Unique in the bank: 'legs-before-tray'. */
  id: string;
  lesson: LessonSlug;
  /** One of the lesson's objectives. */
  objective: string;
  /** What an answer is evidence of. */
  skill: Skill;
  /** For the teacher: 'Which leg to turn'. */
  title: string;
  /** Goes up whenever a seed could make another question than before. */
  version: number;
  templates: Readonly<Record<string, ItemTemplate>>;
};
