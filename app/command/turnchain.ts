#!/usr/bin/env node
/**
 * The program behind the package's bin: gives `run` this process's streams and signals, and ends with its exit
 * code. No command is here.
 */
import { localDisk } from '../services/disk.ts';
import { type Io, MISUSE, type Sink } from './io.ts';
import { run } from './run.ts';

/** A reader that has read enough (`| head`) closes the pipe: that is no fault, and nothing is left to say. */
function quietly(fault: NodeJS.ErrnoException): void {
  if (fault.code === 'EPIPE') process.exit();
  throw fault;
}

function sink(stream: NodeJS.WriteStream): Sink {
  stream.on('error', quietly);
  return {
    write: (text) => {
      stream.write(text);
    },
    isTTY: stream.isTTY === true,
    columns: stream.columns,
  };
}

/** Today by the clock on the wall, as "2026-04-18". */
function today(): string {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

/** What is being written is finished or taken away before the program ends; a second signal changes nothing. */
function interruption(): AbortSignal {
  const stop = new AbortController();
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.on(signal, () => stop.abort());
  return stop.signal;
}

const io: Io = {
  stdin: process.stdin,
  stdout: sink(process.stdout),
  stderr: sink(process.stderr),
  env: process.env,
  today: today(),
  interruption,
  disk: localDisk,
};

try {
  process.exitCode = await run(process.argv.slice(2), io);
} catch (fault) {
  io.stderr.write(
    'Turnchain failed at something it should be able to do. Please report it with these lines:\n',
  );
  io.stderr.write(`${fault instanceof Error ? (fault.stack ?? fault.message) : String(fault)}\n`);
  process.exitCode = MISUSE;
}
