import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    testTimeout: 180_000,
    hookTimeout: 240_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'program',
          include: ['test/**/*.test.ts'],
          exclude: ['test/bench/**', 'test/studio/**'],
        },
      },
      {
        // A real browser on a busy machine can be late. Its tests, and no others, are tried again; a retry is shown.
        extends: true,
        test: { name: 'studio', include: ['test/studio/**/*.test.ts'], retry: 2 },
      },
    ],
  },
});
