// A real Chromium for the tests: the packaged one on Linux, an installed Chrome elsewhere.
import chromiumForLinux from '@sparticuz/chromium';
import { type Browser, chromium, type Page } from 'playwright-core';
import { shared } from './shared.ts';

// The package's own list suits a single short-lived page: with the first two the browser dies with its page, and the next
// three switch off what a reader's browser has on, such as the limits of pages opened from a folder. The last two would
// have a graphics card imitated, which takes twice the time of drawing without one.
const LEFT_OUT = [
  '--single-process',
  '--no-zygote',
  '--disable-web-security',
  '--allow-running-insecure-content',
  '--disable-site-isolation-trials',
  '--in-process-gpu',
  '--ignore-gpu-blocklist',
];

/** How long a page may take over one thing, in milliseconds: for what hangs, not for a machine that is busy. */
const PATIENCE = 150_000;

/** Starts the browser. On a system other than Linux, Chrome must be installed. */
export async function openBrowser(): Promise<Browser> {
  const browser = await launched();
  const open = browser.newContext.bind(browser);
  browser.newContext = async (options) => {
    const context = await open(options);
    context.setDefaultTimeout(PATIENCE);
    return context;
  };
  const openPage = browser.newPage.bind(browser);
  browser.newPage = async (options) => {
    const page = await openPage(options);
    page.setDefaultTimeout(PATIENCE);
    return page;
  };
  return browser;
}

async function launched(): Promise<Browser> {
  if (process.platform !== 'linux') return chromium.launch({ channel: 'chrome' });
  chromiumForLinux.setGraphicsMode = false;
  return chromium.launch({
    executablePath: await shared('browser'),
    args: [...chromiumForLinux.args.filter((arg) => !LEFT_OUT.includes(arg)), '--disable-gpu'],
  });
}

/** Notes what goes wrong on a page: errors in the console, failed requests, requests beyond the folder or host `within`. */
export function troubles(page: Page, within: string): string[] {
  const found: string[] = [];
  const root = within.endsWith('/') ? within : `${within}/`;
  page.on('console', (message) => {
    if (message.type() === 'error') found.push(`${page.url()} says ${message.text()}`);
  });
  page.on('pageerror', (error) => found.push(`${page.url()} throws ${error.message}`));
  page.on('requestfailed', (request) => {
    // A font or a lazy picture still on its way when the next page opens is given up, not missing.
    const why = request.failure()?.errorText;
    if (why !== 'net::ERR_ABORTED') found.push(`${page.url()} lacks ${request.url()} (${why})`);
  });
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(root) && !url.startsWith('data:')) found.push(`${page.url()} asks for ${url}`);
  });
  return found;
}
