import reactHooks from 'eslint-plugin-react-hooks';
import tseslint from 'typescript-eslint';
import { importDirections } from './import-directions.mjs';

const tool = ['.config/**', '**/*.mjs', 'tests/support/one-postgres.ts', 'tests/support/in-a-browser-setup.ts'];

/** Quick checks only: types are the compiler's business, and are checked beside this. */
export default tseslint.config(
  { ignores: ['**/node_modules/', '**/dist/', '**/generated/', 'data/', 'test-results/', 'playwright-report/', 'bench-results/'] },
  { files: ['**/*.{ts,tsx,mjs}'], extends: [tseslint.configs.recommended] },
  {
    files: ['**/*.{ts,tsx,mjs}'],
    plugins: { larderbook: importDirections },
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      'larderbook/direction': 'error',
      '@typescript-eslint/consistent-type-definitions': ['error', 'type'],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', ignoreRestSiblings: true }],
      eqeqeq: 'error',
      'no-empty': 'error',
      'no-fallthrough': 'error',
      'no-warning-comments': ['error', { terms: ['todo', 'fixme', 'xxx'] }],
      'no-restricted-syntax': [
        'error',
        {
          selector: 'CallExpression[callee.object.name=/^(test|it|describe)$/][callee.property.name=/^(only|skip|todo|fixme)$/]',
          message: 'Every test runs, every time.',
        },
      ],
    },
  },
  {
    files: ['**/*.{ts,tsx,mjs}'],
    ignores: tool,
    rules: { 'no-restricted-exports': ['error', { restrictDefaultExports: { direct: true, named: true } }] },
  },
  { files: ['apps/web/**/*.{ts,tsx}'], extends: [reactHooks.configs.flat.recommended] },
);
