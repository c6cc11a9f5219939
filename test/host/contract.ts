/**
 * What every host does, whatever it is made of: one table of promises, held against each implementation. It
 * knows the interface and the disk, and nothing of what is between.
 */
import fs from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Answer, ExportStep, HostEvent, JournalEntry } from '../../app/host/host.ts';
import { compose } from '../../core/document/compose.ts';
import { readContainer, writeContainer } from '../../core/document/container.ts';
import { right } from '../command/patterns.ts';
import { cover, covered, media } from '../document/containers.ts';
import { outside } from '../print/tools.ts';
import type { TestWindow, World } from './worlds.ts';

const titled = (title: string) => compose({ ...right, about: { ...right.about, title } });
const first = writeContainer(titled('Harbour vest'), new Map());
const second = writeContainer(titled('Quay vest'), new Map());
const third = writeContainer(titled('Pier vest'), new Map());

/** The value of an answer that must be one. */
export function good<T>(answer: Answer<T>): T {
  if (!answer.ok) throw new Error(`${answer.error.code}: ${answer.error.message}`);
  return answer.value;
}

const fault = (answer: Answer<unknown>): string => (answer.ok ? 'none' : answer.error.code);

/** Waits until `seen` gives something. */
export async function until<T>(seen: () => T | undefined | false | null, ms = 10_000): Promise<T> {
  for (const end = Date.now() + ms; ; ) {
    const value = seen();
    if (value) return value;
    if (Date.now() > end) throw new Error('it did not come');
    await new Promise((resolve) => setTimeout(resolve, 10));
  }
}

const entry = (title: string, more: Partial<JournalEntry> = {}): JournalEntry => ({
  title,
  handle: null,
  stamp: null,
  document: titled(title).toJSON(),
  ...more,
});

const titleIn = (bytes: Uint8Array): string => {
  const read = readContainer(bytes);
  return read.ok ? (read.document.firstChild?.firstChild?.textContent ?? '') : read.error.code;
};

/** Registers the contract for one kind of host. */
export function hostContract(kind: string, makeWorld: () => Promise<World>): void {
  describe(`a host: ${kind}`, () => {
    let world: World;
    let window: TestWindow;
    let path: string;

    beforeEach(async () => {
      world = await makeWorld();
      window = await world.window();
      path = join(world.folder, 'vest.turnchain');
    });
    afterEach(() => world.close());

    const choose = async (at: string, by = window) => {
      by.choose(at);
      return (await by.host.chooseFile())!;
    };
    const chooseSave = async (at: string, by = window) => {
      by.choose(at);
      return (await by.host.chooseSave('vest.turnchain'))!;
    };
    const chooseFolder = async (at: string, by = window) => {
      by.choose(at);
      return (await by.host.chooseFolder())!;
    };
    const opened = async (bytes = first, by = window) => {
      fs.writeFileSync(path, bytes);
      const file = await choose(path, by);
      return good(await by.host.read(file.handle));
    };
    const heard = (by = window) => {
      const events: HostEvent[] = [];
      by.host.listen((event) => events.push(event));
      return events;
    };

    test('begins with the usual settings, the examples, and nothing else', async () => {
      const start = await window.host.start();
      expect(start.settings).toEqual({
        theme: 'system',
        terms: 'us',
        units: 'metric',
        spelling: true,
        textScale: 1,
      });
      expect([start.open, start.recent, start.recovered]).toEqual([null, [], []]);
      expect(start.examples.map(({ name }) => name)).toContain('boxy-vest');
      for (const { name, title } of start.examples) {
        expect(titleIn(good(await window.host.example(name)))).toBe(title);
      }
      expect(fault(await window.host.example('../../package'))).toBe('unknown-example');
    });

    test('begins with the file it was started for, once', async () => {
      fs.writeFileSync(path, first);
      const begun = await world.window(path);
      const { open } = await begun.host.start();
      expect(open).toMatchObject({ name: 'vest.turnchain', folder: '~/patterns' });
      expect(good(await begun.host.read(open!.handle)).bytes).toEqual(new Uint8Array(first));
      expect((await begun.host.start()).open).toBeNull();
    });

    test('a choice that is not made gives nothing', async () => {
      window.choose(null);
      expect(await window.host.chooseFile()).toBeNull();
      expect(await window.host.chooseSave('x')).toBeNull();
      expect(await window.host.chooseFolder()).toBeNull();
    });

    test('reads what is in the file, and remembers it as recent', async () => {
      const file = await opened();
      expect(new Uint8Array(file.bytes)).toEqual(new Uint8Array(first));
      expect(file).toMatchObject({ readOnly: false, heldElsewhere: false });
      expect(await window.host.recent()).toMatchObject([{ title: 'Harbour vest', there: true }]);
      fs.unlinkSync(path);
      const [recent] = await window.host.recent();
      expect(recent!.there).toBe(false);
      await window.host.forgetRecent(recent!.file.handle);
      expect(await window.host.recent()).toEqual([]);
    });

    test('reaches nothing by anything but a handle', async () => {
      fs.writeFileSync(path, first);
      for (const handle of [path, 'vest.turnchain', '../vest.turnchain', 'x', '~']) {
        expect(fault(await window.host.read(handle))).toBe('unknown-handle');
        expect(fault(await window.host.save(handle, second, null, ''))).toBe('unknown-handle');
        expect(fault(await window.host.version(handle, 'x'))).toBe('unknown-handle');
        expect(await window.host.versions(handle)).toEqual([]);
        expect(await window.host.reveal(handle)).toBe(false);
      }
      const folder = await chooseFolder(world.folder);
      expect(fault(await window.host.read(folder.handle))).toBe('unknown-handle');
      expect(new Uint8Array(fs.readFileSync(path))).toEqual(new Uint8Array(first));
    });

    test('writes a drawing into a chosen folder, under a plain name, and into no other place', async () => {
      const { handle: folder } = await chooseFolder(world.folder);
      const svg = '<svg xmlns="http://www.w3.org/2000/svg"></svg>';
      const file = good(await window.host.saveDrawing(folder, '../Harbour vest: Rücken', svg));
      expect(file.name).toBe('harbour-vest-rucken.svg');
      expect(fs.readFileSync(join(world.folder, 'harbour-vest-rucken.svg'), 'utf8')).toBe(svg);
      good(await window.host.saveDrawing(folder, 'Harbour vest: Rücken', `${svg}\n`));
      expect(fs.readdirSync(world.folder)).toEqual(['harbour-vest-rucken.svg']);
      for (const handle of ['x', world.folder, '~'])
        expect(fault(await window.host.saveDrawing(handle, 'a', svg))).toBe('unknown-handle');
    });

    test('saves over what it read, and keeps what was there', async () => {
      const { file, stamp } = await opened();
      const saved = good(await window.host.save(file.handle, second, stamp, 'Quay vest'));
      expect(saved.notKept).toBeNull();
      expect(titleIn(fs.readFileSync(path))).toBe('Quay vest');
      const again = good(await window.host.save(file.handle, third, saved.stamp, 'Pier vest'));
      const kept = await window.host.versions(file.handle);
      expect(kept).toHaveLength(2);
      expect(kept[0]!.time >= kept[1]!.time).toBe(true);
      const titles = [];
      for (const { id } of kept) titles.push(titleIn(good(await window.host.version(file.handle, id))));
      expect(titles.sort()).toEqual(['Harbour vest', 'Quay vest']);
      expect(fault(await window.host.version(file.handle, '../../settings'))).toBe('missing');
      good(await window.host.save(file.handle, third, again.stamp, 'Pier vest'));
      expect(await window.host.versions(file.handle)).toHaveLength(2);
      expect(await window.host.recent()).toMatchObject([{ title: 'Pier vest' }]);
      expect(fs.readdirSync(world.folder)).toEqual(['vest.turnchain']);
    });

    test('saves a new file, and saves it again', async () => {
      const file = await chooseSave(path);
      const { stamp } = good(await window.host.save(file.handle, first, null, 'Harbour vest'));
      good(await window.host.save(file.handle, second, stamp, 'Quay vest'));
      expect(titleIn(fs.readFileSync(path))).toBe('Quay vest');
    });

    test('never saves what it could not open again', async () => {
      const { file, stamp } = await opened();
      const half = first.subarray(0, first.length / 2);
      expect(fault(await window.host.save(file.handle, half, stamp, ''))).toBe('unsaveable');
      expect(titleIn(fs.readFileSync(path))).toBe('Harbour vest');
    });

    test('does not save over what another program wrote, unless told to', async () => {
      const { file, stamp } = await opened();
      fs.writeFileSync(path, second);
      expect(fault(await window.host.save(file.handle, third, stamp, ''))).toBe('changed-on-disk');
      expect(titleIn(fs.readFileSync(path))).toBe('Quay vest');
      good(await window.host.save(file.handle, third, null, ''));
      expect(titleIn(fs.readFileSync(path))).toBe('Pier vest');
      const [kept] = await window.host.versions(file.handle);
      expect(titleIn(good(await window.host.version(file.handle, kept!.id)))).toBe('Quay vest');
    });

    test('does not save where the file is gone, unless told to', async () => {
      const { file, stamp } = await opened();
      fs.unlinkSync(path);
      expect(fault(await window.host.save(file.handle, second, stamp, ''))).toBe('gone-from-disk');
      expect(fs.existsSync(path)).toBe(false);
      good(await window.host.save(file.handle, second, null, ''));
      expect(titleIn(fs.readFileSync(path))).toBe('Quay vest');
    });

    test('tells of a file that may only be read, and leaves it', async () => {
      fs.writeFileSync(path, first);
      fs.chmodSync(path, 0o444);
      const file = await choose(path);
      const { readOnly, stamp } = good(await window.host.read(file.handle));
      expect(readOnly).toBe(true);
      expect(fault(await window.host.save(file.handle, second, stamp, ''))).toBe('read-only');
      expect(titleIn(fs.readFileSync(path))).toBe('Harbour vest');
    });

    test('tells when another program changes the file or takes it away, and not of its own saves', async () => {
      const events = heard();
      const { file, stamp } = await opened();
      good(await window.host.save(file.handle, second, stamp, ''));
      fs.utimesSync(path, new Date(), new Date());
      await new Promise((resolve) => setTimeout(resolve, 200));
      expect(events).toEqual([]);
      fs.writeFileSync(path, third);
      await until(() => events.length > 0);
      expect(events).toEqual([{ kind: 'changed-on-disk', handle: file.handle }]);
      fs.renameSync(path, `${path}.moved`);
      await until(() => events.length > 1);
      expect(events.at(-1)).toEqual({ kind: 'gone-from-disk', handle: file.handle });
      await window.host.release(file.handle);
      fs.writeFileSync(path, second);
      await new Promise((resolve) => setTimeout(resolve, 200));
      expect(events).toHaveLength(2);
    });

    test('tells the second window of a file, which may not save it while the first has it', async () => {
      await opened();
      const other = await world.window();
      const file = await choose(path, other);
      const read = good(await other.host.read(file.handle));
      expect(read.heldElsewhere).toBe(true);
      expect(fault(await other.host.save(file.handle, second, read.stamp, ''))).toBe('held-elsewhere');
      await window.close();
      good(await other.host.save(file.handle, second, read.stamp, ''));
      expect(titleIn(fs.readFileSync(path))).toBe('Quay vest');
    });

    test('gives back work that was never saved, after its window is gone, until it is forgotten', async () => {
      good(await window.host.keep('desk-1', entry('Harbour vest')));
      good(await window.host.keep('desk-1', entry('Quay vest')));
      expect(await window.host.recovered()).toEqual([]);
      const other = await world.window();
      expect(await other.host.recovered()).toEqual([]);
      await window.close();
      const found = await other.host.recovered();
      expect(found).toMatchObject([{ desk: 'desk-1', title: 'Quay vest', file: null, fileIsNewer: false }]);
      expect(titleIn(good(await other.host.recover('desk-1')).bytes)).toBe('Quay vest');
      expect(await other.host.recovered()).toHaveLength(1);
      await other.host.forget('desk-1');
      expect(await other.host.recovered()).toEqual([]);
      expect(fault(await other.host.recover('desk-1'))).toBe('unknown-desk');
    });

    test('gives back what was typed beside the work', async () => {
      good(await window.host.keep('desk-6', entry('Harbour vest', { asides: { why: 'One shop' } })));
      expect(good(await window.host.recover('desk-6')).asides).toEqual({ why: 'One shop' });
      good(await window.host.keep('desk-6', entry('Harbour vest')));
      expect(good(await window.host.recover('desk-6')).asides).toEqual({});
    });

    test('gives back pictures with the work', async () => {
      good(await window.host.keepPicture('desk-2', cover.id, cover.bytes));
      good(await window.host.keep('desk-2', entry('x', { document: compose(covered).toJSON() })));
      const back = good(await window.host.recover('desk-2'));
      expect(new Uint8Array(back.bytes)).toEqual(new Uint8Array(writeContainer(compose(covered), media)));
      const bad = await window.host.keepPicture('desk-2', 'p', new Uint8Array([1, 2, 3]));
      expect(fault(bad)).toBe('picture-unknown');
    });

    test('says of recovered work whether its file was changed since', async () => {
      const { file, stamp } = await opened();
      good(await window.host.keep('desk-3', entry('Pier vest', { handle: file.handle, stamp })));
      await window.close();
      const other = await world.window();
      expect(await other.host.recovered()).toMatchObject([{ file: file, fileIsNewer: false }]);
      fs.writeFileSync(path, second);
      expect(await other.host.recovered()).toMatchObject([{ file: file, fileIsNewer: true }]);
      expect(titleIn(good(await other.host.recover('desk-3')).bytes)).toBe('Pier vest');
      expect(titleIn(fs.readFileSync(path))).toBe('Quay vest');
      // The file holds the very work: it was saved, and only the journal was not told.
      fs.writeFileSync(path, third);
      expect(await other.host.recovered()).toEqual([]);
    });

    test('prints one booklet, with the words of the terms asked for', async () => {
      const job = { desk: 'desk-4', document: titled('Harbour vest').toJSON() };
      const choice = { terms: 'uk', paper: 'a4', edition: 'standard', size: null } as const;
      const { pdf, pages } = good(await window.host.print(job, choice));
      expect(Buffer.from(pdf.subarray(0, 5)).toString()).toBe('%PDF-');
      expect(pages).toBeGreaterThan(1);
      const controller = new AbortController();
      const printing = window.host.print(job, choice, controller.signal);
      controller.abort();
      expect(fault(await printing)).toBe('interrupted');
      expect(fault(await window.host.print({ ...job, document: { type: 'no' } }, choice))).toBe(
        'bad-structure',
      );
    });

    test('exports files into the folder chosen, tells how far it is, and can be stopped', async () => {
      const out = join(world.folder, 'out');
      fs.mkdirSync(out);
      const folder = await chooseFolder(out);
      const job = { desk: 'desk-5', document: titled('Harbour vest').toJSON() };
      const request = {
        terms: ['us', 'uk'],
        papers: ['a4'],
        editions: ['standard'],
        sizes: [null],
        folder: folder.handle,
      } as const;
      const steps: ExportStep[] = [];
      const report = good(await window.host.export(job, request, (step) => steps.push(step)));
      expect(report.stopped).toBeNull();
      expect(report.files.map(({ file }) => file.name).sort()).toEqual(fs.readdirSync(out).sort());
      expect(steps[0]).toMatchObject({ number: 1, of: 2, page: 0, pages: 0 });
      expect(steps.at(-1)).toMatchObject({ number: 2, of: 2, page: report.files[1]!.pages });
      expect(await window.host.reveal(report.files[0]!.file.handle)).toBe(true);
      expect(world.revealed).toEqual([join(out, report.files[0]!.file.name)]);

      const controller = new AbortController();
      const stopped = await window.host.export(
        job,
        { ...request, terms: ['us', 'uk'], editions: ['standard', 'large-print', 'ink-saving'] },
        (step) => {
          if (step.number === 2) controller.abort();
        },
        controller.signal,
      );
      // Whoever stops need not wait for what was written; what was written is whole.
      expect(stopped.ok ? stopped.value.stopped : stopped.error.code).toBe('interrupted');
      for (const name of fs.readdirSync(out)) {
        expect(fs.readFileSync(join(out, name)).subarray(-6).toString()).toMatch(/%%EOF/);
      }
      expect(fault(await window.host.export(job, { ...request, folder: 'x' }, () => undefined))).toBe(
        'unknown-handle',
      );
    });

    test('packs for a shop, and writes errata against a kept version', async () => {
      const out = join(world.folder, 'shop');
      fs.mkdirSync(out);
      const folder = await chooseFolder(out);
      const job = { desk: 'desk-6', document: titled('Harbour vest').toJSON() };
      const request = {
        terms: ['uk'],
        papers: ['a4'],
        editions: ['ink-saving'],
        sizes: [null],
        folder: folder.handle,
      } as const;
      const png = new Uint8Array([0x89, 0x50, 0x4e, 0x47]);
      const as = { kind: 'pack', pages: [{ terms: 'uk', page: 1 }] } as const;
      const packed = good(
        await window.host.export(job, { ...request, as, pictures: [png] }, () => undefined),
      );
      const archive = fs.readFileSync(join(out, packed.files[0]!.file.name));
      expect(archive.includes('_uk_page-1.png')).toBe(true);
      expect(packed.files.map(({ file }) => file.name)).toEqual(fs.readdirSync(out));
      expect(packed.listings.map(({ terms }) => terms)).toEqual(['uk']);
      expect(packed.listings[0]!.text).toContain('UK terms');
      const unknown = { kind: 'errata', handle: 'x', version: 'x' } as const;
      expect(fault(await window.host.export(job, { ...request, as: unknown }, () => undefined))).toBe(
        'unknown-handle',
      );
    });

    test('writes the errata against a version that was kept, in each of the terms, and stops at none that is not', async () => {
      const { file, stamp } = await opened();
      good(await window.host.save(file.handle, second, stamp, 'Quay vest'));
      const [kept] = await window.host.versions(file.handle);
      const out = join(world.folder, 'errata');
      fs.mkdirSync(out);
      const folder = await chooseFolder(out);
      const [panel] = right.pieces;
      // One row is left out of what the file had.
      const shorter = { ...right, pieces: [{ ...panel!, blocks: panel!.blocks.slice(0, -1) }] };
      const job = { desk: 'desk-7', document: compose(shorter).toJSON() };
      const as = { kind: 'errata', handle: file.handle, version: kept!.id } as const;
      const request = {
        terms: ['us', 'uk'],
        papers: ['a4'],
        editions: [],
        sizes: [],
        folder: folder.handle,
        as,
      } as const;
      const report = good(await window.host.export(job, request, () => undefined));
      expect(report.stopped).toBeNull();
      expect(report.files.map(({ file: { name } }) => name)).toEqual([
        'harbour-vest_errata_us_a4_v1.0.pdf',
        'harbour-vest_errata_uk_a4_v1.0.pdf',
      ]);
      expect(fs.readdirSync(out).toSorted()).toEqual(
        report.files.map(({ file: { name } }) => name).toSorted(),
      );
      // The row, and two abbreviations that no other row uses: sk and rep.
      expect(report.notes).toEqual([
        '3 corrections since that version.',
        'Both are called version 1.0: give this one a new number, so that buyers can tell them apart.',
      ]);
      const pdf = outside('pdftotext', ['FILE', '-'], fs.readFileSync(join(out, report.files[1]!.file.name)));
      expect(pdf.replace(/\s+/gu, ' ')).toMatch(
        /\(left out\) Was:? Ch 1, dc in next st, \*ch 1, miss 1 st, dc in next st/u,
      );
      const unknown = { ...request, as: { ...as, version: 'x' } };
      expect(fault(await window.host.export(job, unknown, () => undefined))).toBe('missing');
      expect(fs.readdirSync(out)).toHaveLength(2);
    });

    test('keeps settings for every window', async () => {
      const settings = {
        theme: 'dark',
        terms: 'uk',
        units: 'imperial',
        spelling: false,
        textScale: 1.4,
      } as const;
      await window.host.saveSettings(settings);
      const other = await world.window();
      expect((await other.host.start()).settings).toEqual(settings);
    });

    test('opens addresses of the web and of mail, and no other', async () => {
      expect(await window.host.openLink('https://example.com/a')).toBe(true);
      expect(await window.host.openLink('javascript:alert(1)')).toBe(false);
      expect(await window.host.openLink('file:///etc/passwd')).toBe(false);
      expect(world.opened).toEqual(['https://example.com/a']);
    });
  });
}
