import reactHooks from 'eslint-plugin-react-hooks';
import { defineConfig, globalIgnores } from 'eslint/config';
import tseslint from 'typescript-eslint';

const CODE = ['**/*.{ts,tsx}'];
const CONFIGS = ['renderer/vite.config.ts', 'tests/vitest.config.ts', 'tests/mutation/vitest.config.ts'];
/** Lists and texts, one line an entry: their length says nothing about their difficulty. */
const DATA = ['core/knowledge/**', 'renderer/text/**', 'shared/vocabulary/**', 'shared/formats/**', 'shared/channels.ts'];

const noDefaultExport = {
  selector: 'ExportDefaultDeclaration',
  message: 'Named exports only: one name for a thing everywhere.',
};

/** Switches that open a hole in the page's fence. Left alone they are safe. */
const fence = [
  ['nodeIntegration', 'true'], ['nodeIntegrationInWorker', 'true'], ['nodeIntegrationInSubFrames', 'true'], ['webviewTag', 'true'],
  ['allowRunningInsecureContent', 'true'], ['experimentalFeatures', 'true'], ['contextIsolation', 'false'], ['sandbox', 'false'], ['webSecurity', 'false'],
].map(([name, value]) => ({ selector: `Property[key.name='${name}'][value.value=${value}]`, message: `${name}: ${value} opens the page's fence.` }));
const fenceWords = [
  { selector: "Property[key.name='enableBlinkFeatures']", message: 'No experimental features of the browser.' },
  { selector: 'Literal[value=/--no-sandbox/]', message: 'The sandbox stays on.' },
  { selector: "JSXAttribute[name.name='dangerouslySetInnerHTML']", message: 'Text stays text.' },
];

const impure = [
  { name: 'Date', message: 'Time is an argument in core/.' },
  { name: 'performance', message: 'Time is an argument in core/.' },
  { name: 'console', message: 'core/ returns what it has to say.' },
];

export default defineConfig(
  globalIgnores(['node_modules/', 'dist/', '**/*.json']),
  { linterOptions: { reportUnusedDisableDirectives: 'error' } },
  {
    files: CODE,
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: { parserOptions: { projectService: { allowDefaultProject: ['renderer/vite.config.ts'] }, tsconfigRootDir: `${import.meta.dirname}/../..` } },
    rules: {
      '@typescript-eslint/consistent-type-imports': ['error', { disallowTypeAnnotations: false }],
      '@typescript-eslint/explicit-module-boundary-types': 'error',
      '@typescript-eslint/no-confusing-void-expression': 'off', // leaving early with a reply reads well
      '@typescript-eslint/no-shadow': 'error',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_', ignoreRestSiblings: true }],
      '@typescript-eslint/require-await': 'off', // a handler is asynchronous because its channel is
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      complexity: ['error', { max: 15, variant: 'modified' }],
      eqeqeq: 'error',
      'max-depth': ['error', 4],
      'max-len': ['error', { code: 160, ignoreStrings: true, ignoreTemplateLiterals: true, ignoreRegExpLiterals: true }],
      'max-lines': ['error', 300],
      'max-lines-per-function': ['error', { max: 40, skipBlankLines: true, skipComments: true }],
      'no-eval': 'error',
      'no-param-reassign': 'error',
      'no-restricted-syntax': ['error', noDefaultExport, ...fence, ...fenceWords],
      'prefer-const': 'error',
    },
  },
  {
    files: ['core/**/*.ts', 'shared/**/*.ts'],
    rules: {
      'no-restricted-globals': ['error', ...impure],
      'no-restricted-properties': ['error', { object: 'Math', property: 'random', message: 'Randomness is an argument in core/.' }],
    },
  },
  { files: ['shared/formats/**'], rules: { '@typescript-eslint/explicit-module-boundary-types': 'off' } }, // a schema is its own type
  { files: DATA, rules: { 'max-lines': 'off', 'max-lines-per-function': 'off' } },
  {
    files: ['renderer/**/*.tsx', 'renderer/**/use-*.ts', 'renderer/state/hooks.ts'],
    extends: [reactHooks.configs.flat['recommended-latest']],
  },
  {
    files: ['renderer/**/*.tsx', 'renderer/state/*-slice.ts'],
    rules: {
      'max-lines-per-function': ['error', { max: 80, skipBlankLines: true, skipComments: true }],
      '@typescript-eslint/explicit-module-boundary-types': 'off',
      '@typescript-eslint/no-misused-promises': ['error', { checksVoidReturn: { attributes: false } }],
    },
  },
  {
    files: ['tests/**/*.{ts,tsx}'],
    rules: {
      '@typescript-eslint/no-non-null-assertion': 'off',
      '@typescript-eslint/no-unnecessary-type-parameters': 'off',
      'max-lines-per-function': 'off',
      'no-restricted-syntax': ['error', noDefaultExport],
    },
  },
  { files: ['**/*.d.ts'], rules: { 'no-restricted-syntax': 'off', 'max-len': 'off' } }, // the shape of somebody else's module
  { files: CONFIGS, rules: { 'no-restricted-syntax': 'off' } },
);
