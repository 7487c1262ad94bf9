// Lint rules, and the rule that holds the layers: arrows point inward only (DEVELOPERS.md, "The map").
import js from '@eslint/js';
import tseslint from 'typescript-eslint';

/** What each layer under src/ may not import, by the part of the path that names it. */
const outward = {
  words: ['core', 'node', 'booklet', 'cli', 'web'],
  core: ['node', 'booklet', 'cli', 'web'],
  node: ['booklet', 'cli', 'web'],
  booklet: ['node', 'cli', 'web'],
};

const noNodeInside = [
  { group: ['node:*'], message: 'The inner layers are pure: no node modules.' },
  { group: ['sharp', 'commander', 'pngjs', 'fs', 'path'], message: 'The inner layers are pure.' },
];

const layerRules = Object.entries(outward).map(([layer, banned]) => ({
  files: [`src/${layer}/**/*.ts`],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [
          { group: banned.map((name) => `**/${name}/**`), message: 'Arrows point inward only.' },
          ...(layer === 'node' ? [] : noNodeInside),
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
    files: ['src/**/*.ts', 'tests/**/*.ts'],
    languageOptions: {
      parserOptions: { project: './tsconfig.test.json', tsconfigRootDir: import.meta.dirname },
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
      'no-restricted-globals': ['error', 'process', 'Buffer', 'require', '__dirname', 'document'],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'Results must repeat.' },
        { object: 'Date', property: 'now', message: 'No clock decides a result.' },
      ],
      'no-console': 'error',
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
      },
    },
  },
  ...layerRules,
);
