import { existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe } from 'vitest';
import { freshFolder } from './kinfonds.ts';

const CHROMIUM = process.env.KINFONDS_CHROMIUM ?? '/usr/bin/chromium';

const QUIET = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** What a page asked for and what it complained of, beside the page itself. */
export interface Watched {
  page: Page;
  /** Requests other than for the page itself and for pictures within it. */
  requests: string[];
  messages: string[];
}

/** Opens a text as a file in a real browser, watched from the first moment. */
export type OpenPage = (html: string, hash?: string, options?: BrowserContextOptions) => Promise<Watched>;

/** A suite in a real Chromium; in CI it must run, elsewhere it is left out with a reason. */
export function describeInBrowser(
  title: string,
  suite: (open: OpenPage, browser: () => Browser) => void,
): void {
  if (!existsSync(CHROMIUM)) {
    const missing = `there is no Chromium at ${CHROMIUM}; KINFONDS_CHROMIUM names another place.`;
    if (process.env.CI === 'true') throw new Error(`In CI every outside check must run, but ${missing}`);
    process.stderr.write(`Left out: ${title}: ${missing}\n`);
    return void describe.skip(title, () => {});
  }
  describe(title, () => {
    let browser: Browser | undefined;
    const running = () => {
      if (browser === undefined) throw new Error('The browser is not running.');
      return browser;
    };
    beforeAll(async () => {
      browser = await chromium.launch({ executablePath: CHROMIUM, args: QUIET });
    });
    afterAll(() => browser?.close());
    suite((html, hash, options) => openIn(running(), html, hash, options), running);
  });
}

async function openIn(browser: Browser, html: string, hash = '', options: BrowserContextOptions = {}) {
  const file = join(freshFolder(), 'finding-aid.html');
  writeFileSync(file, html);
  const page = await browser.newPage(options);
  const watched: Watched = { page, requests: [], messages: [] };
  const address = pathToFileURL(file).href;
  page.on('request', (request) => {
    const url = request.url();
    if (url.split('#')[0] !== address && !url.startsWith('data:')) watched.requests.push(url);
  });
  page.on('console', (message) => watched.messages.push(message.text()));
  page.on('pageerror', (error) => watched.messages.push(error.message));
  await page.goto(address + hash);
  if (options.javaScriptEnabled !== false) await page.waitForSelector('#part\\:find:not([aria-busy])');
  return watched;
}
