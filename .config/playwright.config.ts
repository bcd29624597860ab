import { existsSync } from 'node:fs';
import { register } from 'node:module';
import { fileURLToPath } from 'node:url';
import { defineConfig, type LaunchOptions } from '@playwright/test';
import chromium from '@sparticuz/chromium';

register('./json-modules.mjs', import.meta.url);

const installed = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/opt/google/chrome/chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

/** The browser of this machine, or CHROMIUM_PATH; where there is none, the one that came with the installation. */
async function browser(): Promise<LaunchOptions> {
  const own = [process.env.CHROMIUM_PATH ?? '', ...installed].find((path) => existsSync(path));
  if (own) return { executablePath: own, args: ['--no-sandbox'] };
  chromium.setGraphicsMode = false;
  // one process for everything saves memory in a cloud function and loses pages in a test
  const args = chromium.args.filter((flag) => !['--single-process', '--no-zygote'].includes(flag) && !flag.startsWith('--headless'));
  return { executablePath: await chromium.executablePath(), args };
}

/** Each worker starts a Larderbook of its own on a throwaway folder: see tests/support/in-a-browser.ts. */
export default defineConfig({
  testDir: fileURLToPath(new URL('../tests/browser', import.meta.url)),
  outputDir: fileURLToPath(new URL('../test-results', import.meta.url)),
  testMatch: '**/*.spec.ts',
  globalSetup: fileURLToPath(new URL('../tests/support/in-a-browser-setup.ts', import.meta.url)),
  workers: 2,
  // for what hangs: a machine that has other work takes several times as long, and that is no failure
  timeout: 600_000,
  expect: { timeout: 45_000 },
  forbidOnly: true,
  // once more on a machine that was busy: a test that needs it is listed as flaky and is to be mended
  retries: 1,
  reporter: 'list',
  use: {
    browserName: 'chromium',
    actionTimeout: 45_000, // a button that is not there fails by its name, not by the time of the whole test
    launchOptions: await browser(),
    locale: 'en-US',
    timezoneId: 'America/Chicago',
    serviceWorkers: 'block', // it fetches all pages on a first visit, and each test is one; allowed where it matters
    viewport: { width: 1280, height: 800 },
    screenshot: 'only-on-failure',
  },
});
