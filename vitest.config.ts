import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    // Both of two cores: left to itself the runner keeps one of them free.
    maxWorkers: 2,
    projects: [
      {
        test: {
          name: 'unit',
          include: ['src/**/*.test.{ts,tsx}', 'test/*.test.ts', 'demo/**/*.test.ts'],
          testTimeout: 60_000,
        },
      },
      {
        test: {
          name: 'database',
          include: ['test/database/**/*.test.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
      {
        test: {
          name: 'durability',
          include: ['test/durability/**/*.test.ts'],
          testTimeout: 240_000,
          hookTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
});
