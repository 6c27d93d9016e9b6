import { defineConfig, devices } from '@playwright/test';
import { findInstalledChromium } from './.ci/find-chromium.mjs';

// Not the port of npm start, so that the tests can run beside it and always see a build of their own.
const port = Number(process.env.E2E_PORT ?? 4180);
const site = `test-results/site-${port}`;
const installed = findInstalledChromium();

/** WebGL drawn by the processor, and a browser that asks nothing of the network for itself. */
const browserFlags = [
  '--no-sandbox',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export default defineConfig({
  testDir: 'e2e',
  outputDir: `test-results/browser-${port}`,
  // Drawing without a graphics card takes a whole core, so one test at a time keeps timings honest.
  workers: 1,
  fullyParallel: false,
  forbidOnly: Boolean(process.env.CI),
  // A second try, listed as flaky, tells a slow machine from a broken page, and only it pays for a trace.
  retries: process.env.CI ? 1 : 0,
  timeout: 120_000,
  expect: { timeout: 20_000 },
  reporter: [['list']],
  use: {
    baseURL: `http://localhost:${port}/`,
    locale: 'en-GB',
    timezoneId: 'UTC',
    // Keeping the page for later costs each fresh browser a second; the test of it lets it in.
    serviceWorkers: 'block',
    actionTimeout: 20_000,
    navigationTimeout: 45_000,
    screenshot: 'only-on-failure',
    trace: process.env.CI ? 'on-first-retry' : 'retain-on-failure',
    launchOptions: { args: browserFlags, ...(installed ? { executablePath: installed } : {}) },
  },
  projects: [
    {
      name: 'desktop',
      testIgnore: '**/*.narrow.spec.ts',
      use: { ...devices['Desktop Chrome'], viewport: { width: 1440, height: 900 } },
    },
    {
      name: 'narrow',
      testMatch: '**/*.narrow.spec.ts',
      use: {
        ...devices['Desktop Chrome'],
        viewport: { width: 390, height: 844 },
        deviceScaleFactor: 2,
        hasTouch: true,
        isMobile: true,
      },
    },
  ],
  webServer: {
    command: `npx vite build --outDir ${site} --emptyOutDir && npx vite preview --outDir ${site} --port ${port} --strictPort`,
    url: `http://localhost:${port}/`,
    timeout: 180_000,
    reuseExistingServer: false,
    stdout: 'ignore',
    stderr: 'pipe',
  },
});
