/**
 * The services of one process, put together once: what all its windows share. Nothing is decided here.
 */
import type { About, ExampleFile, Settings } from '../host/host.ts';
import { dataPlaces } from './data-folder.ts';
import { type Disk, localDisk } from './disk.ts';
import { openPattern } from './files.ts';
import { Handles } from './handles.ts';
import { Journal } from './journal.ts';
import { Printing } from './printing.ts';
import { Recent } from './recent.ts';
import { examples, packageVersion } from './resources.ts';
import { readSettings } from './settings.ts';
import { Versions } from './versions.ts';

export interface ServicesOptions {
  /** The program's data folder. */
  readonly data: string;
  readonly home: string;
  readonly platform: NodeJS.Platform;
  readonly disk?: Disk;
  /** Milliseconds since 1970. */
  readonly now?: () => number;
}

const PLATFORMS: Readonly<Partial<Record<NodeJS.Platform, About['platform']>>> = {
  darwin: 'mac',
  win32: 'windows',
};

export class StudioServices {
  readonly places: ReturnType<typeof dataPlaces>;
  readonly disk: Disk;
  readonly now: () => number;
  readonly platform: About['platform'];
  readonly version = packageVersion();
  readonly handles: Handles;
  readonly journal: Journal;
  readonly versions: Versions;
  readonly recent: Recent;
  readonly printing = new Printing();
  #examples: Promise<readonly ExampleFile[]> | null = null;

  constructor({ data, home, platform, disk = localDisk, now = Date.now }: ServicesOptions) {
    this.places = dataPlaces(data);
    this.disk = disk;
    this.now = now;
    this.platform = PLATFORMS[platform] ?? 'linux';
    this.handles = new Handles(home);
    this.journal = new Journal(this.places.journal, disk);
    this.versions = new Versions(this.places.versions, disk, now);
    this.recent = new Recent(this.places.recent, disk);
  }

  /** The examples with their titles, read once. */
  examples(): Promise<readonly ExampleFile[]> {
    this.#examples ??= Promise.all(
      examples().map(async ({ name, path }) => {
        const opened = await openPattern(path, this.disk);
        return { name, title: opened.ok ? titleOf(opened.document) : name };
      }),
    );
    return this.#examples;
  }

  /** The theme that the maker chose. */
  async theme(): Promise<Settings['theme']> {
    return (await readSettings(this.places.settings, this.disk)).theme;
  }

  async close(): Promise<void> {
    await this.printing.close();
  }
}

/** A document's title as it is shown in lists. */
export function titleOf(document: {
  firstChild: { firstChild: { textContent: string } | null } | null;
}): string {
  return document.firstChild?.firstChild?.textContent ?? '';
}
