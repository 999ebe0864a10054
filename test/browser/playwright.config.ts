import { defineConfig } from '@playwright/test';

/** The same journeys on both stores; every test has a server of its own, so that any two may run side by side. */
export default defineConfig({
  testDir: '.',
  testMatch: '*.browser.ts',
  outputDir: '../../test-results/browser',
  fullyParallel: true,
  workers: 2,
  retries: 0,
  timeout: 240_000,
  expect: { timeout: 15_000 },
  reporter: [
    ['list'],
    ['json', { outputFile: process.env.PLAYWRIGHT_JSON_OUTPUT_NAME ?? '../../test-results/browser.json' }],
  ],
  use: {
    browserName: 'chromium',
    viewport: { width: 1440, height: 1000 },
    locale: 'en-GB',
    timezoneId: 'Europe/London',
    trace: 'off',
    actionTimeout: 15_000,
    launchOptions: {
      executablePath: process.env.FQ_CHROMIUM ?? '/usr/bin/chromium',
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-quic',
        '--no-first-run',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
  projects: [
    { name: 'embedded' },
    { name: 'postgresql', testMatch: ['journey.browser.ts', 'animals.browser.ts'] },
  ],
});
