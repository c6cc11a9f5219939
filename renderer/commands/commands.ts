/**
 * What each command does and when it can be done. Names, words and keys stand in the shared table
 * (`app/host/commands`); commands that belong to the caret are lent by the place that has it.
 */
import type { CommandName } from '../../app/host/commands.ts';
import type { Place, Studio } from '../shell/studio.ts';
import { shellWords } from '../words/shell.ts';
import { spellingWords } from '../words/spelling.ts';

export interface Action {
  /** Whether it can be done now. */
  readonly ready: () => boolean;
  readonly run: () => void;
}

const PLACES: readonly Place[] = ['write', 'sizes', 'materials', 'drawings', 'workbook', 'review', 'print'];

/** Commands by name. A place lends its own while it is in front. */
export class Commands {
  readonly #own: ReadonlyMap<CommandName, Action>;
  readonly #lent = new Map<CommandName, Action>();

  constructor(studio: Studio) {
    const desk = () => studio.view().desk;
    const open = () => desk() !== null;
    const always = () => true;
    const own = new Map<CommandName, Action>([
      ['new', { ready: always, run: () => studio.show('new') }],
      ['bring', { ready: always, run: () => studio.show('bring') }],
      ['open', { ready: always, run: () => void studio.openChosen() }],
      ['save', { ready: open, run: () => void studio.save() }],
      ['save-as', { ready: open, run: () => void studio.saveAs() }],
      ['versions', { ready: () => desk()?.view().file != null, run: () => studio.show('versions') }],
      ['export', { ready: open, run: () => studio.go('print') }],
      ['start', { ready: open, run: () => void studio.closePattern() }],
      ['close', { ready: open, run: () => void studio.closePattern() }],
      ['undo', { ready: () => desk()?.view().canUndo ?? false, run: () => step(studio, 'undo') }],
      ['redo', { ready: () => desk()?.view().canRedo ?? false, run: () => step(studio, 'redo') }],
      ['commands', { ready: always, run: () => studio.show('commands') }],
      ['keys', { ready: always, run: () => studio.show('keys') }],
      ['about', { ready: always, run: () => studio.show('about') }],
      ['theme', { ready: always, run: () => studio.show('theme') }],
      ['spelling', { ready: always, run: () => switchSpelling(studio) }],
      ['switch-terms', { ready: open, run: () => switchTerms(studio) }],
      ['switch-units', { ready: open, run: () => switchUnits(studio) }],
      ['next-size', { ready: open, run: () => stepSize(studio, 1) }],
      ['previous-size', { ready: open, run: () => stepSize(studio, -1) }],
      ['text-larger', { ready: always, run: () => scaleText(studio, 0.1) }],
      ['text-smaller', { ready: always, run: () => scaleText(studio, -0.1) }],
    ]);
    for (const place of PLACES)
      own.set(`go-${place}` as CommandName, { ready: open, run: () => studio.go(place) });
    this.#own = own;
  }

  find(name: CommandName): Action | null {
    return this.#lent.get(name) ?? this.#own.get(name) ?? null;
  }

  /** Runs a command; false when it is not there or cannot be done now. */
  run(name: CommandName): boolean {
    const action = this.find(name);
    if (action === null || !action.ready()) return false;
    action.run();
    return true;
  }

  /** Lends actions until the function given back is called. */
  lend(actions: Partial<Record<CommandName, Action>>): () => void {
    const entries = Object.entries(actions) as [CommandName, Action][];
    for (const [name, action] of entries) this.#lent.set(name, action);
    return () => {
      for (const [name, action] of entries) if (this.#lent.get(name) === action) this.#lent.delete(name);
    };
  }
}

/** Where each part of the document is seen. */
const SEEN: Readonly<Record<string, readonly [Place, ...Place[]]>> = {
  cover: ['write', 'materials'],
  sizing: ['sizes'],
  materials: ['materials'],
  specials: ['write', 'materials'],
  closing: ['write', 'materials'],
  charts: ['drawings'],
  workbook: ['workbook', 'review'],
};

/** Undoes or does again. The history is one over all places: what is not seen from this one is told. */
function step(studio: Studio, way: 'undo' | 'redo'): void {
  const { desk, place } = studio.view();
  if (desk === null) return;
  const before = desk.view().document;
  desk[way]();
  const after = desk.view().document;
  const seen = after.children
    .filter((part, at) => part !== before.child(at))
    .map(({ type }) => SEEN[type.name] ?? (['write'] as const));
  const [first] = seen;
  const isUnseen = first !== undefined && !seen.flat().includes(place);
  studio.tell(isUnseen ? shellWords.stepped(way, first[0]) : null);
}

function switchSpelling(studio: Studio): void {
  const spelling = !studio.view().settings.spelling;
  void studio.saveSettings({ spelling });
  studio.tell(spelling ? spellingWords.on : spellingWords.off);
}

function switchTerms(studio: Studio): void {
  const desk = studio.view().desk;
  if (desk === null) return;
  desk.read({ terms: desk.view().reading.terms === 'us' ? 'uk' : 'us' });
}

function switchUnits(studio: Studio): void {
  const desk = studio.view().desk;
  if (desk === null) return;
  desk.read({ units: desk.view().reading.units === 'metric' ? 'imperial' : 'metric' });
}

function stepSize(studio: Studio, by: number): void {
  const desk = studio.view().desk;
  if (desk === null) return;
  const { pattern, reading } = desk.view();
  const at = pattern.sizes.findIndex(({ id }) => id === reading.size);
  const next = pattern.sizes[Math.min(pattern.sizes.length - 1, Math.max(0, at + by))];
  if (next !== undefined) desk.read({ size: next.id });
}

function scaleText(studio: Studio, by: number): void {
  const textScale = Math.round(Math.min(2, Math.max(0.8, studio.view().settings.textScale + by)) * 10) / 10;
  void studio.saveSettings({ textScale });
}
