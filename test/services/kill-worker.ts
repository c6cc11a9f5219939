/**
 * The process that the kill test kills: a window of the studio's host at which somebody types and saves without
 * a pause, over a real data folder. It says what it begins and what it has finished, in lines "keep 12",
 * "kept 12", written at once, so that the last words before its end are not lost. It ends only by being killed.
 *
 * Words: path of the pattern, data folder, number of the first state.
 */
import fs from 'node:fs';
import { dirname } from 'node:path';
import { StudioHost, type WindowShell } from '../../app/services/studio-host.ts';
import { StudioServices } from '../../app/services/studio-services.ts';
import { writeContainer } from '../../core/document/container.ts';
import { cover, media } from '../document/containers.ts';
import { stateOf, titleOfState } from './kill-states.ts';

const [path, data, first] = process.argv.slice(2) as [string, string, string];
const DESK = 'desk-1';

const say = (word: string, n: number): void => {
  fs.writeSync(1, `${word} ${n}\n`);
};

const shell: WindowShell = {
  kind: 'desktop',
  chooseFile: async () => path,
  chooseSave: async () => path,
  chooseFolder: async () => null,
  reveal: async () => false,
  openLink: async () => false,
  newWindow: async () => undefined,
  close: async () => undefined,
};
const services = new StudioServices({ data, home: dirname(data), platform: 'linux' });
const host = new StudioHost({ services, shell, window: 'w1' });

function must<T>(answer: { ok: true; value: T } | { ok: false; error: { message: string } }): T {
  if (!answer.ok) throw new Error(answer.error.message);
  return answer.value;
}

let state = Number(first);
let kept = -1;
let saved = -1;
let stamp: string | null = null;
const file = (await host.chooseSave('vest.turnchain'))!;
if (fs.existsSync(path)) ({ stamp } = must(await host.read(file.handle)));

/** Types: each state is new, and is kept. */
async function type(): Promise<never> {
  for (;;) {
    state += 1;
    const n = state;
    say('keep', n);
    must(await host.keepPicture(DESK, cover.id, cover.bytes));
    const entry = { title: titleOfState(n), handle: file.handle, stamp, document: stateOf(n).toJSON() };
    must(await host.keep(DESK, entry));
    kept = n;
    say('kept', n);
  }
}

/** Saves what is kept; when nothing was typed meanwhile the journal lets go of it. */
async function save(): Promise<never> {
  for (;;) {
    await new Promise((resolve) => setTimeout(resolve, 3));
    const n = kept;
    if (n <= saved) continue;
    say('save', n);
    ({ stamp } = must(
      await host.save(file.handle, writeContainer(stateOf(n), media), stamp, titleOfState(n)),
    ));
    saved = n;
    say('saved', n);
    if (n % 3 === 0 && state === n) {
      say('forget', n);
      await host.forget(DESK);
      say('forgotten', n);
    }
  }
}

await Promise.all([type(), save()]);
