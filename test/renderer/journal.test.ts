/** The journal's page side: whatever the rhythm of typing and saving, nothing older than two seconds is held by nobody. */
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Answer, Host, JournalEntry } from '../../app/host/host.ts';
import { compose } from '../../core/document/compose.ts';
import { schema } from '../../core/document/schema.ts';
import { Desk, type DeskFile } from '../../renderer/desk/desk.ts';
import { setPart } from '../../renderer/desk/edits.ts';
import { Journal } from '../../renderer/desk/journal.ts';
import { partAt } from '../../renderer/desk/places.ts';
import { cover, covered, media } from '../document/containers.ts';

/** Milliseconds of typing that may be lost: "within two seconds of an edit". */
const AT_MOST = 2000;

const file = (stamp: string): DeskFile => ({
  ref: { handle: 'h', name: 'vest.turnchain', folder: 'Patterns' },
  stamp,
  readOnly: false,
  heldElsewhere: false,
});

/** A desk with its journal over a host that remembers what it was given. Edits are numbered in the title. */
function world({ unsaved = true, keepMs = 0 }: { unsaved?: boolean; keepMs?: number } = {}) {
  const calls: string[] = [];
  const answers = { keep: { ok: true, value: null } as Answer<null> };
  let held: (JournalEntry & { n: number; half: number }) | null = null;
  const numberOf = (document: unknown): number =>
    Number(/"text":"Edit (\d+)"/.exec(JSON.stringify(document))?.[1] ?? 0);
  const halfOf = (document: unknown): number =>
    Number(/"garment":"Half (\d+)"/.exec(JSON.stringify(document))?.[1] ?? 0);
  const later = <T>(value: () => T): Promise<T> =>
    new Promise((resolve) => setTimeout(() => resolve(value()), keepMs));
  const host = {
    keep: (_: string, entry: JournalEntry) => {
      calls.push(`keep ${numberOf(entry.document)}`);
      const answer = answers.keep;
      if (answer.ok) held = { ...entry, n: numberOf(entry.document), half: halfOf(entry.document) };
      return later(() => answer);
    },
    keepPicture: (_: string, id: string) => {
      calls.push(`picture ${id}`);
      return later(() => ({ ok: true, value: null }));
    },
    forget: () => {
      calls.push('forget');
      held = null;
      return later(() => undefined);
    },
  } as unknown as Host;
  const desk = new Desk({
    id: 'desk-1',
    document: compose(covered),
    pictures: media,
    file: unsaved ? null : file('first'),
    unsaved,
    worker: { postMessage: () => undefined, onmessage: null, terminate: () => undefined },
  });
  const troubles: (string | null)[] = [];
  const journal = new Journal(host, desk, (message) => troubles.push(message));
  let edits = 0;
  const field = {};
  let halves = 0;
  let savedHalf = 0;
  const giveHalf = (half: number) =>
    desk.dispatch(setPart<'cover'>(desk.view().state, ['cover'], { garment: `Half ${half}` }));
  let savedEdit = unsaved ? -1 : 0;
  let saves = 0;
  return {
    calls,
    answers,
    desk,
    journal,
    troubles,
    held: () => held,
    /** The newest edit that the file or the journal has. */
    safe: () => Math.max(savedEdit, held?.n ?? -1),
    edits: () => edits,
    /** The newest words of the field that the file or the journal has. */
    safeHalf: () => Math.max(savedHalf, held?.half ?? 0),
    halves: () => halves,
    /** A key in a field that is not left. */
    half: () => {
      halves += 1;
      const half = halves;
      desk.hold(field, () => giveHalf(half));
    },
    /** The field is left. */
    give: () => {
      desk.hold(field, null);
      giveHalf(halves);
    },
    /** What is in the field is taken back. */
    back: () => desk.hold(field, null),
    edit: () => {
      edits += 1;
      const { state } = desk.view();
      const { node, pos } = partAt(state.doc, ['cover', 'title']);
      desk.dispatch(state.tr.replaceWith(pos + 1, pos + 1 + node.content.size, schema.text(`Edit ${edits}`)));
    },
    /** As the studio saves: the pattern as it is now, and when nothing was typed meanwhile the journal lets go. */
    save: async (ms: number) => {
      const [{ document }, at] = [desk.view(), edits];
      const half = halfOf(document.toJSON());
      await new Promise((resolve) => setTimeout(resolve, ms));
      savedEdit = Math.max(savedEdit, at);
      savedHalf = half;
      saves += 1;
      desk.savedAs(file(`save-${saves}`), document);
      await journal.settle();
    },
  };
}

beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  vi.useRealTimers();
});

const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);

describe('keeping work', () => {
  test('a new pattern is kept before anything is typed, with its pictures first', async () => {
    const { calls } = world();
    await pass(AT_MOST);
    expect(calls).toEqual([`picture ${cover.id}`, 'keep 0']);
  });

  test('a file that was only opened is not work', async () => {
    const { calls } = world({ unsaved: false });
    await pass(10_000);
    expect(calls).toEqual([]);
  });

  test('at any rhythm of typing and saving, what was typed two seconds ago is in the file or the journal', async () => {
    const action = fc.oneof(
      {
        weight: 6,
        arbitrary: fc.record({ kind: fc.constant('edit'), ms: fc.integer({ min: 0, max: 500 }) }),
      },
      {
        weight: 1,
        arbitrary: fc.record({ kind: fc.constant('edit'), ms: fc.integer({ min: 500, max: 4000 }) }),
      },
      {
        weight: 1,
        arbitrary: fc.record({ kind: fc.constant('save'), ms: fc.integer({ min: 0, max: 700 }) }),
      },
      {
        weight: 4,
        arbitrary: fc.record({ kind: fc.constant('half'), ms: fc.integer({ min: 0, max: 900 }) }),
      },
      {
        weight: 1,
        arbitrary: fc.record({ kind: fc.constant('give'), ms: fc.integer({ min: 0, max: 900 }) }),
      },
    );
    await fc.assert(
      fc.asyncProperty(
        fc.array(action, { minLength: 1, maxLength: 40 }),
        fc.integer({ min: 0, max: 450 }),
        fc.boolean(),
        async (actions, keepMs, unsaved) => {
          vi.clearAllTimers();
          const maker = world({ unsaved, keepMs });
          const typed: { at: number; edit: number; half: number }[] = [];
          const look = () => {
            const old = typed.findLast(({ at }) => at <= performance.now() - AT_MOST);
            expect(maker.safe()).toBeGreaterThanOrEqual(old?.edit ?? -1);
            expect(maker.safeHalf()).toBeGreaterThanOrEqual(old?.half ?? 0);
          };
          const wait = async (ms: number) => {
            for (let passed = 0; passed < ms; passed += 25) {
              await pass(Math.min(25, ms - passed));
              look();
            }
          };
          for (const { kind, ms } of actions) {
            if (kind === 'edit') maker.edit();
            else if (kind === 'half') maker.half();
            else if (kind === 'give') maker.give();
            else void maker.save(50);
            if (kind !== 'save')
              typed.push({ at: performance.now(), edit: maker.edits(), half: maker.halves() });
            await wait(ms);
          }
          await wait(AT_MOST + 50);
          maker.journal.stop();
        },
      ),
      { numRuns: 60 },
    );
  });

  test('what is typed in a field and not given is kept; the desk and its undoing know nothing of it', async () => {
    const { desk, half, held } = world({ unsaved: false });
    const before = desk.view();
    half();
    await pass(AT_MOST);
    expect(held()).toMatchObject({ half: 1, stamp: 'first' });
    expect(desk.view()).toBe(before);
    expect([desk.isUnsaved, desk.view().canUndo]).toEqual([false, false]);
  });

  test('what was taken back in a field is kept no longer', async () => {
    const { half, back, held, calls } = world({ unsaved: false });
    half();
    await pass(AT_MOST);
    back();
    await pass(AT_MOST);
    expect(held(), calls.join(', ')).toBeNull();
  });

  test('what a field refuses is no work', async () => {
    const { desk, calls } = world({ unsaved: false });
    desk.hold({}, () => undefined);
    await pass(10_000);
    expect(calls).toEqual([]);
  });

  test('a reason that is being typed is kept beside the work until it is put in', async () => {
    const { desk, held } = world({ unsaved: false });
    desk.setAside('why', 'The shop sells in');
    await pass(AT_MOST);
    expect(held()).toMatchObject({ n: 0, asides: { why: 'The shop sells in' } });
    desk.setAside('why', '');
    await pass(AT_MOST);
    expect(held()).toBeNull();
  });

  test('one state at a time', async () => {
    const { calls, edit } = world({ keepMs: 900 });
    for (let i = 0; i < 40; i++) {
      edit();
      await pass(100);
    }
    await pass(5000);
    expect(calls.filter((call) => call.startsWith('keep')).length).toBeLessThanOrEqual(7);
    expect(calls.at(-1)).toBe('keep 40');
  });

  test('a letter typed while a save lets go of the journal is kept', async () => {
    const { calls, edit, save, safe, journal } = world({ keepMs: 300, unsaved: false });
    edit();
    await pass(420); // the journal is writing it
    void save(100);
    await pass(150); // saved, and waiting for the journal
    edit();
    await pass(AT_MOST);
    expect(safe(), calls.join(', ')).toBe(2);
    journal.stop();
  });

  test('work that was kept while its file was being saved is told to begin from the new file', async () => {
    const { edit, save, held } = world({ unsaved: false });
    edit();
    void save(1500);
    await pass(10);
    edit();
    await pass(1400);
    expect(held()).toMatchObject({ n: 2, stamp: 'first' });
    await pass(100 + AT_MOST);
    expect(held()).toMatchObject({ n: 2, stamp: 'save-1' });
  });

  test('a pattern whose file is gone is work, though nothing was typed', async () => {
    const { desk, calls } = world({ unsaved: false });
    desk.notSaved();
    await pass(AT_MOST);
    expect(calls.at(-1)).toBe('keep 0');
  });

  test('what could not be kept is tried again without another edit, and the trouble is told and taken back', async () => {
    const { answers, edit, troubles, safe, calls } = world();
    await pass(AT_MOST);
    answers.keep = { ok: false, error: { code: 'disk-full', message: 'The disk is full.' } };
    edit();
    await pass(AT_MOST);
    expect(troubles.at(-1)).toBe('The disk is full.');
    await pass(60_000);
    expect(calls.length).toBeLessThan(40); // it does not hammer a disk that is full
    answers.keep = { ok: true, value: null };
    await pass(10_000);
    expect(safe()).toBe(1);
    expect(troubles.at(-1)).toBeNull();
  });

  test('nothing is kept after the end', async () => {
    const { answers, edit, journal, calls } = world();
    answers.keep = { ok: false, error: { code: 'disk-full', message: 'The disk is full.' } };
    edit();
    await pass(500);
    journal.stop();
    const before = calls.length;
    await pass(60_000);
    expect(calls.length).toBe(before);
  });
});
