/** The browser that tests and benches drive: a Chromium of this machine, without a window. It fetches none. */
import fs from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const PROGRAMS = [
  process.env.CHROMIUM,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
];

const QUIET = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Path of a Chromium; null when there is none. */
export const chromiumHere = (): string | null =>
  PROGRAMS.find((path): path is string => path !== undefined && fs.existsSync(path)) ?? null;

/** Starts it. Rejects when there is none. */
export function startChromium(more: readonly string[] = []): Promise<Browser> {
  const executablePath = chromiumHere();
  if (executablePath === null) throw new Error('There is no Chromium here.');
  return chromium.launch({ executablePath, args: [...QUIET, ...more] });
}
