import { defineConfig } from 'eslint/config';
import next from 'eslint-config-next/core-web-vitals';
// @ts-expect-error: the package carries no types.
import jsxA11y from 'eslint-plugin-jsx-a11y';
import reactHooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';

export default defineConfig(
  {
    ignores: [
      '**/node_modules/**',
      '**/.next*/**',
      'lib/data/generated/**',
      'next-env.d.ts',
      'data/**',
    ],
  },
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  ...next,
  tseslint.configs.strictTypeChecked,
  {
    rules: {
      ...reactHooks.configs.flat['recommended-latest'].rules,
      ...jsxA11y.flatConfigs.strict.rules,
    },
  },
  {
    languageOptions: {
      parserOptions: {
        projectService: true,
        tsconfigRootDir: new URL('..', import.meta.url).pathname,
      },
    },
    rules: {
      // Marks, counts and angles are what most sentences here are about.
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      // Index signatures of process.env and of params are read with brackets on purpose.
      '@typescript-eslint/dot-notation': 'off',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreArrowShorthand: true }],
      '@typescript-eslint/switch-exhaustiveness-check': [
        'error',
        { considerDefaultExhaustiveForUnions: true },
      ],
      // A longer file needs a reason, given where the rule is switched off.
      'max-lines': ['error', { max: 250, skipBlankLines: true, skipComments: true }],
      eqeqeq: 'error',
      'import/no-anonymous-default-export': 'off',
      'no-console': 'error',
      'no-restricted-syntax': [
        'error',
        {
          selector: 'ObjectExpression > SpreadElement > ObjectExpression',
          message:
            'Write the members out. A spread literal hides what the object holds and takes many times as long to make.',
        },
        {
          selector:
            'Program:has(> ExpressionStatement[directive="use server"]) > ExportNamedDeclaration > FunctionDeclaration > Identifier.params:not([name=/^(_|_before|state)$/]) > TSTypeAnnotation > :not(TSUnknownKeyword, TSTypeReference[typeName.name="FormData"])',
          message:
            'Whoever calls an action sends what they like, bound arguments too: take it as unknown, and parse it (lib/data/ids).',
        },
      ],
    },
  },
  {
    files: ['app/**', 'components/**'],
    rules: {
      'no-restricted-properties': [
        'error',
        ...['randomUUID', 'subtle'].map((property) => ({
          property,
          message:
            'Browsers have it only in a secure context; a school may serve over plain http. For random bits there is getRandomValues.',
        })),
      ],
    },
  },
  {
    files: ['lib/commands/**', 'prisma/**', '.config/**'],
    rules: { 'no-console': 'off' },
  },
  {
    files: ['**/*.test.ts', '**/*.test.tsx', 'tests/**'],
    // `use` is a fixture's word there, not React's.
    rules: { 'max-lines': 'off', 'react-hooks/rules-of-hooks': 'off' },
  },
  {
    // Its plugins are untyped.
    files: ['.config/eslint.config.mjs'],
    extends: [tseslint.configs.disableTypeChecked],
  },
);
