import js from '@eslint/js';
import prettier from 'eslint-config-prettier';
import reactHooks from 'eslint-plugin-react-hooks';
import globals from 'globals';
import tseslint from 'typescript-eslint';

export default tseslint.config(
  { ignores: ['build/', 'dist/', 'node_modules/', 'coverage/'] },
  js.configs.recommended,
  { files: ['**/*.js', '**/*.mjs'], languageOptions: { globals: globals.node } },
  {
    files: ['**/*.ts', '**/*.tsx'],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: {
      parserOptions: {
        projectService: true,
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      '@typescript-eslint/restrict-template-expressions': [
        'error',
        { allowNumber: true, allowBoolean: true },
      ],
      '@typescript-eslint/switch-exhaustiveness-check': 'error',
      'max-lines': ['error', { max: 300, skipBlankLines: true, skipComments: true }],
      eqeqeq: 'error',
      // A third of a run's time, for mistakes that can hardly be made here: no enum is ours, and few classes.
      '@typescript-eslint/no-unsafe-enum-assignment': 'off',
      '@typescript-eslint/no-unsafe-class-instance-assignment': 'off',
      '@typescript-eslint/no-confusing-void-expression': 'off',
    },
  },
  {
    // A layer that computes has no clock, chance or console: they are handed in, so that plans repeat.
    files: [
      'src/core/**',
      'src/cutting/**',
      'src/planning/**',
      'src/drawings/**',
      'src/sheets/**',
      'src/functions/**',
    ],
    rules: {
      'no-restricted-globals': ['error', 'console', 'process', 'setTimeout', 'fetch'],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'Hand in a seeded generator.' },
        { object: 'Date', property: 'now', message: 'Hand in the clock.' },
      ],
    },
  },
  { files: ['src/pane/**'], extends: [reactHooks.configs.flat.recommended] },
  // Generated: each function adds to it.
  { files: ['src/functions/catalogue.ts'], rules: { 'max-lines': 'off' } },
  // The generator of functions.json knows no other type for a range of cells than any[][].
  {
    files: ['src/functions/worksheet/**'],
    rules: { '@typescript-eslint/no-explicit-any': 'off' },
  },
  {
    files: ['tests/**/*.ts'],
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'off',
      'no-restricted-syntax': [
        'error',
        {
          selector: "CallExpression[callee.property.name='waitForFunction'] > *[async=true]",
          message: 'It waits for no promise, which is true at once: ask in a loop of evaluate.',
        },
      ],
    },
  },
  prettier,
);
