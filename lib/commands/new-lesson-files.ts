import type { Skill } from '../course/skills';

export type NewLesson = { slug: string; number: number; title: string; skill: Skill };

/** 'level-enough' → 'levelEnough' */
export const camel = (slug: string): string =>
  slug.replaceAll(/-(.)/g, (_, first: string) => first.toUpperCase());

/** The files of a new lesson by their path. Every sentence in angle quotes is there to be replaced. */
export function filesOfLesson(lesson: NewLesson): ReadonlyMap<string, string> {
  const { slug } = lesson;
  const name = camel(slug);
  return new Map([
    [`content/lessons/${slug}/lesson.mdx`, lessonText(lesson)],
    [`content/lessons/${slug}/skies.json`, '{}\n'],
    [
      `lib/content/quantities/${slug}.ts`,
      `import type { Quantity } from '../reckoning';

/** What the lesson "${slug}" asks of the engine beyond what all lessons may. */
export const ${name}Quantities: Readonly<Record<string, Quantity>> = {};
`,
    ],
    [
      `components/lesson/figures/${slug}/stills.tsx`,
      `import type { FigureStills } from '../figure-registry';

export const ${name}Stills: FigureStills<'${slug}'> = {};
`,
    ],
    [
      `components/lesson/figures/${slug}/live.ts`,
      `import type { LiveFigures } from '../figure-registry';

export const ${name}Live: LiveFigures<'${slug}'> = {};
`,
    ],
    [
      `lib/items/${slug}/items.ts`,
      `import type { ItemFamily } from '../item-family';

/** The families of the lesson "${slug}", in the order of its objectives. */
export const ${name}Items: readonly ItemFamily[] = [];
`,
    ],
  ]);
}

/** Registries, each with the import that a lesson adds and the entry in its list. */
export function registrations({ slug, skill }: NewLesson) {
  const name = camel(slug);
  const spread = (what: string) => `  ...${name}${what},`;
  return [
    {
      file: 'lib/course/lessons.ts',
      entry: `  { slug: '${slug}', skill: '${skill}' },`,
      before: '] as const',
    },
    { file: 'lib/content/figure-names.ts', entry: `  '${slug}': [],`, before: '} as const' },
    {
      file: 'lib/content/lesson-quantities.ts',
      add: `import { ${name}Quantities } from './quantities/${slug}';`,
      entry: `  ${name}Quantities,`,
      before: ']);',
    },
    {
      file: 'components/lesson/figures/all-stills.ts',
      add: `import { ${name}Stills } from './${slug}/stills';`,
      entry: spread('Stills'),
      before: '};',
    },
    {
      file: 'components/lesson/figures/all-live.ts',
      add: `import { ${name}Live } from './${slug}/live';`,
      entry: spread('Live'),
      before: '};',
    },
    {
      file: 'lib/items/item-bank.ts',
      add: `import { ${name}Items } from './${slug}/items';`,
      entry: spread('Items'),
      before: '];',
    },
  ] as const;
}

/**
 * A registry with a lesson more: its import before the others, its entry last in the list.
 * @throws {RangeError} when the registry is not as expected.
 */
export function registered(
  source: string,
  { add, entry, before }: { add?: string; entry: string; before: string },
): string {
  const lines = source.split('\n');
  const end = lines.findIndex((line) => line.startsWith(before));
  if (end < 0) throw new RangeError(`no line begins with "${before}"`);
  lines.splice(end, 0, entry);
  return [...(add === undefined ? [] : [add]), ...lines].join('\n');
}

function lessonText({ slug, number, title, skill }: NewLesson): string {
  return `---
id: lesson-${String(number).padStart(2, '0')}
version: 1
title: ${JSON.stringify(title)}
summary: ‹What one can do afterwards, in a sentence or two.›
objectives:
  - id: first
    skill: ${skill}
    text: ‹What one can do afterwards.›
standards: []
level: Age 12 and up
minutes:
  learn: 10
  practise: 5
prerequisites: []
previous: null
next: null
equipment:
  - ‹What lies on the table.›
hazards:
  - id: dark
    severity: caution
    text: ‹What can hurt, and what keeps it from hurting.›
    gate: false
vocabulary:
  - term: tripod
    definition: ‹What it is, in a sentence.›
retrieval: []
checks:
  - stage: faded
    objective: first
    item:
      id: ${slug}-faded
      kind: choice
      prompt: ‹The last step of the example.›
      key: one
      options:
        - { id: one, text: ‹The right one›, reason: ‹Why it is right.› }
        - { id: two, text: ‹A wrong one›, reason: ‹Why it is wrong.› }
        - { id: three, text: ‹Another›, reason: ‹Why it is wrong.› }
  - stage: check
    objective: first
    item:
      id: ${slug}-check
      kind: choice
      prompt: ‹A question of the check.›
      key: one
      options:
        - { id: one, text: ‹The right one›, reason: ‹Why it is right.› }
        - { id: two, text: ‹A wrong one›, reason: ‹Why it is wrong.› }
        - { id: three, text: ‹Another›, reason: ‹Why it is wrong.› }
practical:
  task: ‹What is done at the real telescope.›
  evidence:
    - ‹What the teacher looks for.›
sources:
  - text: ‹Where it comes from; or common practice, no source.›
reviewed: 2000-01-01
---

<Retrieval />

<AtAGlance />

<Hazard id="dark" />

## ‹A heading›

‹Short sentences, with a <Term>tripod</Term>.›

<Figure name="fists-up" alternative="‹What it shows, in words.›">
  ‹What to try.›
</Figure>

<WorkedExample title="‹An evening›">

‹Step by step.›

</WorkedExample>

<FadedPractice>

<Check id="${slug}-faded" />

</FadedPractice>

<CheckYourself />

<FieldTask>

<Step meets="dark">
  ‹The first thing to do.›
</Step>

</FieldTask>

<Summary>

- ‹What to keep.›

</Summary>

<Sources />
`;
}
