import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts', 'apps/**/*.ts'],
      exclude: ['**/*.test.ts'],
      reporter: ['text', 'html'],
    },
    projects: [
      {
        test: {
          name: 'engine',
          include: ['src/**/*.test.ts'],
          pool: 'threads',
          // The engine is pure, so its tests may share one global scope. That is most of their speed.
          isolate: false,
        },
      },
      {
        test: {
          name: 'flows',
          include: ['test/**/*.test.ts', 'apps/**/*.test.ts'],
          pool: 'threads',
          isolate: true,
          // These start processes and write files.
          testTimeout: 30_000,
        },
      },
    ],
  },
});
