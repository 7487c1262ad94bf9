// Lint rules, and the rule that holds the layers: arrows point inward only (DEVELOPERS.md, "The map").
import js from '@eslint/js';
import tseslint from 'typescript-eslint';

/** What each layer under src/ may not import, by the part of the path that names it. */
const outward = {
  words: ['core', 'node', 'booklet', 'cli', 'worktable'],
  core: ['node', 'booklet', 'cli', 'worktable'],
  node: ['booklet', 'cli', 'worktable'],
  booklet: ['node', 'cli', 'worktable'],
  worktable: ['node', 'cli'],
  cli: ['worktable'],
};

const noNodeInside = [
  { group: ['node:*'], message: 'The inner layers are pure: no node modules.' },
  { group: ['sharp', 'commander', 'pngjs', 'fs', 'path'], message: 'The inner layers are pure.' },
];

/** What lies outside the language, in Node or in a browser. */
const outside = [
  ...['process', 'Buffer', 'require', '__dirname', '__filename', 'global', 'globalThis'],
  ...['document', 'window', 'self', 'navigator', 'location', 'localStorage', 'indexedDB'],
  ...['fetch', 'XMLHttpRequest', 'WebSocket', 'Worker', 'performance', 'crypto'],
  ...['setTimeout', 'setInterval', 'queueMicrotask', 'requestAnimationFrame'],
].map((name) => ({ name, message: 'The inner layers are pure.' }));

const unrepeatable = [
  { object: 'Math', property: 'random', message: 'Results must repeat.' },
  { object: 'Date', property: 'now', message: 'No clock decides a result.' },
];

const layerRules = Object.entries(outward).map(([layer, banned]) => ({
  files: [`src/${layer}/**/*.ts`, `src/${layer}/**/*.tsx`],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          { group: banned.map((name) => `**/${name}/**`), message: 'Arrows point inward only.' },
          ...(layer === 'node' || layer === 'cli' ? [] : noNodeInside),
        ],
      },
    ],
  },
}));

export default tseslint.config(
  { ignores: ['dist/', 'docs/api/', 'demo/', 'coverage/', 'node_modules/', '.tmp/'] },
  js.configs.recommended,
  ...tseslint.configs.recommended,
  {
    files: ['src/**/*.ts', 'src/**/*.tsx', 'tests/**/*.ts'],
    languageOptions: {
      parserOptions: {
        project: ['./tsconfig.test.json', './tsconfig.page.json'],
        tsconfigRootDir: import.meta.dirname,
      },
    },
    rules: {
      '@typescript-eslint/no-floating-promises': 'error',
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/no-unused-vars': [
        'error',
        { argsIgnorePattern: '^_', varsIgnorePattern: '^_' },
      ],
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-empty-object-type': [
        'error',
        { allowInterfaces: 'with-single-extends' },
      ],
    },
  },
  {
    files: ['src/core/**/*.ts', 'src/words/**/*.ts', 'src/booklet/**/*.ts'],
    rules: {
      'no-restricted-globals': ['error', ...outside],
      'no-restricted-properties': ['error', ...unrepeatable],
      'no-console': 'error',
    },
  },
  {
    files: ['src/core/**/*.ts'],
    rules: {
      'no-restricted-globals': [
        'error',
        ...outside,
        { name: 'Date', message: 'No clock decides a result.' },
        {
          name: 'Intl',
          message: 'Results are the same under every locale: words/ has the languages.',
        },
      ],
      'no-restricted-syntax': [
        'error',
        { selector: 'ImportExpression', message: 'The core loads nothing while it runs.' },
        {
          selector: 'MemberExpression[property.name=/^(toLocale.*|localeCompare)$/]',
          message: 'Results are the same under every locale: words/ has the languages.',
        },
      ],
    },
  },
  { files: ['src/node/**/*.ts'], rules: { 'no-console': 'error' } },
  {
    files: ['**/*.js', 'bench/**', 'tools/**'],
    languageOptions: {
      globals: {
        process: 'readonly',
        console: 'readonly',
        URL: 'readonly',
        Buffer: 'readonly',
        performance: 'readonly',
        setTimeout: 'readonly',
        setInterval: 'readonly',
        clearInterval: 'readonly',
      },
    },
  },
  ...layerRules,
);
