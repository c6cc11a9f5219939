/** Runs commands in this process with streams that remember, as a terminal or as a pipe. */
import type { Io, Sink } from '../../app/command/io.ts';
import { run } from '../../app/command/run.ts';
import { localDisk } from '../../app/services/disk.ts';

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

export interface Setting {
  readonly stdin?: string | Uint8Array;
  readonly env?: Io['env'];
  /** Standard output and error are a terminal this wide. */
  readonly terminal?: number;
  readonly signal?: AbortSignal;
  readonly disk?: Io['disk'];
  /** Called with all that goes to standard error, as it goes. */
  readonly onError?: (text: string) => void;
}

/** Runs one command line. */
export async function command(words: readonly string[], setting: Setting = {}): Promise<Ran> {
  let out = '';
  let err = '';
  const sink = (write: (text: string) => void): Sink => ({
    write,
    isTTY: setting.terminal !== undefined,
    columns: setting.terminal,
  });
  async function* stdin(): AsyncGenerator<Uint8Array> {
    const bytes = Buffer.from(setting.stdin ?? '');
    // In small pieces, as a pipe gives them: a character may be cut in two.
    for (let at = 0; at < bytes.length; at += 65_521) yield bytes.subarray(at, at + 65_521);
  }
  const code = await run(words, {
    stdin: stdin(),
    stdout: sink((text) => {
      out += text;
    }),
    stderr: sink((text) => {
      err += text;
      setting.onError?.(text);
    }),
    env: setting.env ?? {},
    today: '2024-05-01',
    interruption: () => setting.signal ?? new AbortController().signal,
    disk: setting.disk ?? localDisk,
  });
  return { code, out, err };
}
