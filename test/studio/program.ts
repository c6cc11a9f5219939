/**
 * The studio's program as a process of its own, as `npm start -- --address` starts it: for what a host in the
 * test's own process cannot show, such as its sudden end.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join, resolve } from 'node:path';

/** The same two folders up from here and from where the benches are bundled to. */
const root = resolve(import.meta.dirname, '../..');

/** Builds the program as it is delivered, in a place that no other build touches; its path. */
export async function buildProgram(): Promise<string> {
  const folder = join(root, `out/studio-${process.pid}`);
  const build = spawn(process.execPath, ['build.config.mjs', folder], {
    cwd: root,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  const [status] = await once(build, 'close');
  if (status !== 0) throw new Error('the program could not be built');
  return join(folder, 'start.mjs');
}

export interface Program {
  /** Lets one page in, once. */
  readonly address: string;
  readonly process: ChildProcess;
  /** Ends it without a word to it, as the system does. Resolves when it is gone. */
  kill(): Promise<void>;
}

/** Starts the program over a data folder; resolves when it tells its address. */
export function startProgram(program: string, home: string, words: readonly string[] = []): Promise<Program> {
  const child = spawn(process.execPath, [program, '--address', ...words], {
    stdio: 'pipe',
    env: { ...process.env, HOME: home, TURNCHAIN_DATA: join(home, 'data') },
  });
  const gone = new Promise<void>((done) => child.on('close', () => done()));
  return new Promise((started, failed) => {
    let said = '';
    child.stdout.on('data', (bytes) => {
      said += bytes;
      const address = /http:\/\/127\.0\.0\.1:\d+\/#\S+/.exec(said)?.[0];
      if (address === undefined) return;
      started({
        address,
        process: child,
        kill: async () => {
          child.kill('SIGKILL');
          await gone;
        },
      });
    });
    child.stderr.on('data', (bytes) => {
      said += bytes;
    });
    void gone.then(() => failed(new Error(`the program ended: ${said}`)));
  });
}
