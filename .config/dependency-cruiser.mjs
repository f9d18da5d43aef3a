/**
 * The direction of dependency: units ← pure modules ← variants, faults, grading ← data ← app.
 * A rule that fails names the two files; the way out is to move code, seldom to loosen the rule.
 */

const ownCode = '^(app|components|lib|prisma|proxy)';
const test = '[.]test[.]tsx?$';

const bench = ['assembly', 'levelling', 'balance', 'power'];
const evening = ['units', 'sky', 'pointing', 'optics', 'finder', 'clock', 'alignment', 'faults'];

/** Folders that know no React, three, Next, Prisma or Node, with the siblings each may use. */
const pure = {
  units: [],
  wording: [],
  course: [],
  sky: ['units'],
  pointing: ['units', 'sky'],
  optics: ['units', 'sky', 'pointing'],
  finder: ['units', 'sky', 'pointing', 'optics'],
  clock: ['units', 'sky'],
  assembly: ['units', 'optics'],
  levelling: ['units', 'pointing'],
  balance: ['units'],
  power: ['units'],
  night: ['units', 'sky', 'pointing', 'optics'],
  alignment: ['units', 'sky', 'pointing', 'optics', 'finder', 'clock'],
  faults: ['units', 'sky', 'pointing', 'optics', 'finder', 'clock', 'alignment'],
  rehearsal: [...evening, ...bench],
  variants: [...evening, ...bench, 'rehearsal', 'course'],
  drawings: [...evening, ...bench, 'night', 'rehearsal', 'variants'],
  items: [...evening, ...bench, 'night', 'rehearsal', 'course', 'variants', 'drawings', 'mastery'],
  grading: [...evening, ...bench, 'rehearsal', 'course', 'variants', 'items', 'mastery'],
  mastery: ['course', 'variants'],
  measurement: [],
  roster: [],
  exports: ['course', 'variants', 'grading', 'mastery', 'measurement'],
};

/** @param {string[]} folders */
const inLib = (folders) => `^lib/(${folders.join('|')})/`;

const siblings = Object.entries(pure).map(([folder, allowed]) => ({
  name: `siblings-of-${folder}`,
  comment: `lib/${folder} may use ${allowed.length > 0 ? allowed.map((a) => `lib/${a}`).join(', ') : 'nothing else of ours'}.`,
  severity: /** @type {const} */ ('error'),
  from: { path: `^lib/${folder}/`, pathNot: test },
  to: {
    path: '^(app|components|lib|prisma)/',
    // How a thing is said may be asked by all.
    pathNot: inLib([folder, 'wording', ...allowed]),
  },
}));

/** What the view of a "What went wrong?" shows again of its lab: the evidence and the names. */
const shownAgainOfFaults = ['evidence', 'fault-view', 'fault-words', 'cure-words'].map(
  (part) => `lab/fault/${part}`,
);

/**
 * Folders of components with the siblings each may use; ui has a rule of its own. A lab fetches the
 * view of its result when there is one, and that view draws the sky the lab has shown: by name, no more.
 * The rehearsal's result tells each stage's mark and the run's advice as those stages' own results do.
 */
const componentFolders = {
  sky: ['ui'],
  telescope: ['ui'],
  questions: ['ui'],
  lesson: ['ui', 'sky', 'telescope', 'questions'],
  lab: [
    'ui',
    'sky',
    'telescope',
    'questions',
    'grading/bench-result-view',
    'grading/pair/pair-result-view',
    'grading/fault/fault-result-view',
    'grading/questions/question-set-result',
    'grading/run/run-result-view',
    'grading/run/run-result-words',
    'grading/mark-text',
  ],
  grading: [
    'ui',
    'sky',
    'telescope',
    'questions',
    'lab/pair/pair-lab-sky',
    'lab/run/run-words',
    'lab/bench/bench-texts',
    ...shownAgainOfFaults,
  ],
  desk: ['ui', 'sky', 'telescope', 'lab', 'lesson', 'grading', 'questions'],
};

const componentLayers = Object.entries(componentFolders).map(([folder, allowed]) => ({
  name: `components-of-${folder}`,
  comment: `components/${folder} may use ${allowed.map((a) => `components/${a}`).join(', ')}.`,
  severity: /** @type {const} */ ('error'),
  from: { path: `^components/${folder}/`, pathNot: test },
  to: { path: '^components/', pathNot: `^components/(${[folder, ...allowed].join('|')})[/.]` },
}));

/** @type {import('dependency-cruiser').IConfiguration} */
export default {
  forbidden: [
    {
      name: 'no-cycles',
      comment: 'Two files that need each other are one concept, or hide a third.',
      severity: 'error',
      from: {},
      to: { circular: true },
    },
    ...siblings,
    {
      name: 'pure-stays-pure',
      comment: 'The engine runs the same in the browser, on the server and in a test.',
      severity: 'error',
      from: { path: [inLib(Object.keys(pure)), '^lib/auth/policy[.]ts$'], pathNot: test },
      to: {
        path: [
          '^node_modules/(@types/)?(react|react-dom|three|@react-three|next|@prisma|prisma|better-sqlite3|server-only)(/|$)',
        ],
      },
    },
    {
      name: 'pure-needs-no-node',
      comment: 'No Node built-ins in the engine: time, files and randomness are passed in.',
      severity: 'error',
      from: { path: [inLib(Object.keys(pure)), '^lib/auth/policy[.]ts$'], pathNot: test },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'policy-stands-alone',
      comment: 'Who may do what is decided from the viewer and the thing alone.',
      severity: 'error',
      from: { path: '^lib/auth/policy[.]ts$' },
      to: { path: ownCode },
    },
    {
      name: 'sky-alone-asks-the-ephemeris',
      comment: 'astronomy-engine and temporal-polyfill are wrapped once, in lib/sky.',
      severity: 'error',
      from: { path: ownCode, pathNot: ['^lib/sky/', test, '^lib/commands/bench'] },
      to: { path: '^node_modules/(astronomy-engine|temporal-polyfill)(/|$)' },
    },
    {
      name: 'clock-alone-asks-the-compass',
      comment: 'geomagnetism is wrapped once, in lib/clock/declination.',
      severity: 'error',
      from: { path: ownCode, pathNot: ['^lib/clock/declination[.]ts$'] },
      to: { path: '^node_modules/geomagnetism(/|$)' },
    },
    {
      name: 'data-alone-uses-the-database',
      comment:
        'Only lib/data knows Prisma and the generated client. (The start command looks which migrations a file has.)',
      severity: 'error',
      from: {
        path: ownCode,
        pathNot: ['^lib/data/', '^prisma/', '^lib/commands/migrations[.]mjs$', test],
      },
      to: {
        path: ['^node_modules/(@prisma|prisma|better-sqlite3)(/|$)', '^lib/data/generated/'],
      },
    },
    {
      name: 'components-take-types-from-data',
      comment: 'A component is given its data; app asks lib/data for it.',
      severity: 'error',
      from: { path: '^components/' },
      to: {
        path: ['^lib/(data|content|commands)/', '^lib/auth/session[.]ts$', '^prisma/'],
        // The schema that a form and the server share.
        pathNot: '^lib/data/[a-z-]+-input[.]ts$',
        dependencyTypesNot: ['type-only'],
      },
    },
    {
      name: 'ui-has-no-domain',
      comment: 'Buttons, fields and tables know nothing of stars and marks.',
      severity: 'error',
      from: { path: '^components/ui/', pathNot: test },
      to: {
        path: '^(lib|components)/',
        pathNot: ['^components/ui/', '^lib/routes[.]ts$', '^lib/auth/policy[.]ts$'],
      },
    },
    ...componentLayers,
    {
      name: 'data-below-app',
      comment: 'Nothing under lib knows pages, components or commands.',
      severity: 'error',
      from: { path: '^lib/', pathNot: [test, '^lib/commands/'] },
      to: { path: '^(app|components|lib/commands|tests)/' },
    },
    {
      name: 'only-tests-import-app',
      comment: 'Routes are the outermost layer.',
      severity: 'error',
      from: { path: ownCode, pathNot: ['^app/', test] },
      to: { path: '^app/' },
    },
    {
      name: 'not-from-tests',
      comment: 'What ships does not lean on what tests it.',
      severity: 'error',
      from: { path: ownCode, pathNot: test },
      to: { path: ['^tests/', test] },
    },
    {
      name: 'resolvable',
      comment: 'Every import leads somewhere.',
      severity: 'error',
      from: {},
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: ['node_modules', '^lib/data/generated/'] },
    exclude: { path: ['[.]css$', '[.]json$'] },
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default', 'types'],
      mainFields: ['module', 'main', 'types'],
    },
  },
};
