/**
 * Draws `icon.png` from `icon.svg` with a Chromium of this machine: `node resources/icons/build.mjs`. The picture
 * is kept beside it, because packaging has no browser.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { chromium } from 'playwright-core';

const SIDE = 1024;
const svg = readFileSync(new URL('icon.svg', import.meta.url), 'utf8');
const browser = await chromium.launch({
  executablePath: process.env.TURNCHAIN_BROWSER ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking'],
});
const page = await browser.newPage({ viewport: { width: SIDE, height: SIDE } });
await page.setContent(`<style>body{margin:0}svg{display:block;width:${SIDE}px}</style>${svg}`);
writeFileSync(new URL('icon.png', import.meta.url), await page.screenshot({ omitBackground: true }));
await browser.close();
