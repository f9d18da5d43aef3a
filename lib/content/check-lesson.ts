import type { LessonFrontMatter } from './lesson-front-matter';
import { lessonParts } from './lesson-names';
import { expressionsKnown } from './check-lesson-expressions';
import { namedComponents, type LessonOutline } from './lesson-outline';
import { readingLevel, type ReadingLevel } from './reading-level';
import type { Reckoning } from './reckoning';

/** What a check of one lesson needs to know. */
export type LessonToCheck = {
  slug: string;
  frontMatter: LessonFrontMatter;
  outline: LessonOutline;
  reckoning: Reckoning;
  /** Addresses that exist in the product. */
  knownPaths: ReadonlySet<string>;
  /** The objectives that the lesson's families of questions are about. */
  objectivesOfFamilies: readonly string[];
};

export type LessonReport = {
  problems: readonly string[];
  /** Words that everyone reads: prose, cautions, objectives, questions. */
  words: number;
  /** words/130 + practice. */
  minutesNeeded: number;
  readingLevel: ReadingLevel;
};

/** Reading speed of a learner who thinks along, words a minute (design: lesson format). */
const wordsPerMinute = 130;

/** Everything that a lesson's author must put right, in sentences. */
export function checkLesson(lesson: LessonToCheck): LessonReport {
  const { frontMatter, outline } = lesson;
  const read = [
    outline.prose,
    ...frontMatter.objectives.map((one) => one.text),
    ...frontMatter.hazards.map((one) => one.text),
    ...frontMatter.practical.evidence,
    frontMatter.practical.task,
    ...[...frontMatter.retrieval, ...frontMatter.checks].flatMap(({ item }) => [
      item.prompt,
      ...(item.kind === 'choice' ? item.options.map((option) => option.text) : []),
    ]),
  ].map((text) => text.replaceAll(/\{\{.+?\}\}/g, 'number'));
  const level = readingLevel(read.join('\n'));
  const minutesNeeded = level.words / wordsPerMinute + frontMatter.minutes.practise;
  return {
    problems: [
      ...partsInOrder(outline),
      ...outline.torn.map((text) => `“${text}” is torn from the rest of its sentence.`),
      ...vocabularyUsed(lesson),
      ...objectivesChecked(frontMatter),
      ...objectivesPractised(lesson),
      ...figuresEnough(lesson),
      ...checksPlaced(lesson),
      ...hazardsFirst(lesson),
      ...minutesHonest(frontMatter, minutesNeeded),
      ...linksLead(lesson),
      ...expressionsKnown(lesson),
    ],
    words: level.words,
    minutesNeeded,
    readingLevel: level,
  };
}

function partsInOrder(outline: LessonOutline): string[] {
  const parts: readonly string[] = lessonParts;
  const found = outline.pieces.flatMap((piece) =>
    piece.kind === 'component' && parts.includes(piece.name) ? [piece.name] : [],
  );
  const problems = parts
    .filter((part) => !found.includes(part))
    .map((part) => `<${part}> is missing.`);
  found.forEach((part, i) => {
    const before = found[i - 1];
    if (before !== undefined && parts.indexOf(before) > parts.indexOf(part)) {
      problems.push(`<${part}> must stand before <${before}>.`);
    }
  });
  return problems;
}

function vocabularyUsed({ frontMatter, outline }: LessonToCheck): string[] {
  const used = namedComponents(outline, 'Term').map((term) =>
    (term.attributes['of'] ?? term.text).toLowerCase(),
  );
  const known = frontMatter.vocabulary.map((entry) => entry.term.toLowerCase());
  return [
    ...known
      .filter((term) => !used.includes(term))
      .map((term) => `The vocabulary has "${term}", but no <Term> uses it.`),
    ...used
      .filter((term) => !known.includes(term))
      .map((term) => `<Term> uses "${term}", which is not in the vocabulary.`),
  ];
}

function objectivesChecked({ objectives, checks }: LessonFrontMatter): string[] {
  const ids = objectives.map((objective) => objective.id);
  const asked = checks.filter(({ stage }) => stage === 'check').map(({ objective }) => objective);
  return [
    ...ids
      .filter((id) => !asked.includes(id))
      .map((id) => `No question of the check asks for the objective "${id}".`),
    ...checks
      .filter(({ objective }) => !ids.includes(objective))
      .map(({ item }) => `The question "${item.id}" names an unknown objective.`),
  ];
}

function objectivesPractised({ frontMatter, objectivesOfFamilies }: LessonToCheck): string[] {
  const ids = frontMatter.objectives.map(({ id }) => id);
  return [
    ...ids
      .filter((id) => !objectivesOfFamilies.includes(id))
      .map((id) => `No family of questions is about the objective "${id}".`),
    ...objectivesOfFamilies
      .filter((id) => !ids.includes(id))
      .map((id) => `A family of questions is about "${id}", which is no objective.`),
  ];
}

const fewestFigures = 2;

function figuresEnough({ outline }: LessonToCheck): string[] {
  const figures = namedComponents(outline, 'Figure').length;
  return figures >= fewestFigures
    ? []
    : [`It has ${figures} figures; ${fewestFigures} are the least.`];
}

function checksPlaced({ frontMatter, outline }: LessonToCheck): string[] {
  const all = [...frontMatter.retrieval, ...frontMatter.checks].map(({ item }) => item.id);
  const faded = frontMatter.checks.filter(({ stage }) => stage === 'faded');
  const placed = namedComponents(outline, 'Check').map((check) => check.attributes['id'] ?? '');
  return [
    ...all
      .filter((id, i) => all.indexOf(id) !== i)
      .map((id) => `Two questions have the id "${id}".`),
    ...faded
      .filter(({ item }) => !placed.includes(item.id))
      .map(({ item }) => `The question "${item.id}" of the faded practice is never shown.`),
    ...placed
      .filter((id) => !faded.some(({ item }) => item.id === id))
      .map((id) => `<Check> shows "${id}", which is no question of the faded practice.`),
  ];
}

function hazardsFirst({ frontMatter, outline }: LessonToCheck): string[] {
  const problems: string[] = [];
  const shown = new Set<string>();
  const met = new Set<string>();
  const known = frontMatter.hazards.map((hazard) => hazard.id);
  for (const piece of outline.pieces) {
    if (piece.kind !== 'component') continue;
    if (piece.name === 'Hazard') {
      const id = piece.attributes['id'] ?? '';
      if (!known.includes(id)) problems.push(`<Hazard> shows "${id}", which is not in the list.`);
      shown.add(id);
    }
    for (const id of (piece.attributes['meets'] ?? '').split(' ').filter((one) => one !== '')) {
      if (!shown.has(id)) {
        problems.push(`A step meets the hazard "${id}" before its caution has been given.`);
      }
      met.add(id);
    }
  }
  return [
    ...problems,
    ...known.filter((id) => !shown.has(id)).map((id) => `The hazard "${id}" is never shown.`),
    ...known.filter((id) => !met.has(id)).map((id) => `No step says that it meets "${id}".`),
  ];
}

function minutesHonest({ minutes }: LessonFrontMatter, needed: number): string[] {
  const stated = minutes.learn + minutes.practise;
  return Math.abs(stated - needed) <= 0.2 * needed
    ? []
    : [`${stated} minutes are stated, but reading and practice take ${needed.toFixed(1)}.`];
}

function linksLead({ outline, knownPaths }: LessonToCheck): string[] {
  const ids = outline.pieces.flatMap((piece) => (piece.kind === 'heading' ? [piece.id] : []));
  const urls = outline.pieces.flatMap((piece) => (piece.kind === 'link' ? [piece.url] : []));
  return [
    ...ids
      .filter((id, i) => ids.indexOf(id) !== i)
      .map((id) => `Two headings have the address #${id}.`),
    ...urls
      .filter((url) => {
        if (url.startsWith('#')) return !ids.includes(url.slice(1));
        if (url.startsWith('/')) return !knownPaths.has(url);
        return !url.startsWith('https://');
      })
      .map((url) => `The link ${url} leads nowhere.`),
  ];
}
