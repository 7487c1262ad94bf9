import { defineConfig } from 'vitest/config';

const shared = { testTimeout: 120_000, hookTimeout: 120_000 };

// Projects apart, since the first does without the page that the others want built.
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          ...shared,
          name: 'program',
          include: ['tests/**/*.test.ts'],
          exclude: ['tests/worktable/**', 'tests/package/**'],
          globalSetup: ['tests/setup/build.ts'],
        },
      },
      {
        test: {
          ...shared,
          name: 'package',
          include: ['tests/package/**/*.test.ts'],
          globalSetup: ['tests/setup/build-page.ts'],
        },
      },
      {
        test: {
          ...shared,
          name: 'page',
          include: ['tests/worktable/**/*.test.ts'],
          globalSetup: ['tests/setup/build-page.ts'],
          // What a page shows comes when it comes: a busy machine takes seconds.
          expect: { poll: { timeout: 20_000 } },
        },
      },
    ],
  },
});
