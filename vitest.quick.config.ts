import { defineConfig } from 'vitest/config';
import { long, needPrograms } from './tests/lanes.js';

// `npm run quick`: about a minute on two quiet cores, with nothing that npm ci does not bring.
export default defineConfig({
  test: {
    name: 'quick',
    maxWorkers: '100%',
    testTimeout: 120_000,
    hookTimeout: 120_000,
    include: ['tests/*.test.ts'],
    exclude: [...needPrograms, ...long].map((name) => `tests/${name}.test.ts`),
    globalSetup: ['tests/setup/build.ts'],
  },
});
