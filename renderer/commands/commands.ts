/**
 * What each command does and when it can be done. Names, words and keys stand in the shared table
 * (`app/host/commands`); commands that belong to the caret are lent by the place that has it.
 */
import type { CommandName } from '../../app/host/commands.ts';
import type { DeskView } from '../desk/desk.ts';
import { step } from '../shell/stepping.ts';
import type { Place, Studio } from '../shell/studio.ts';
import { commandWords } from '../words/dialogs.ts';
import { spellingWords } from '../words/spelling.ts';

export interface Action {
  /** Why it cannot be done now, in words for the maker; null when it can. */
  readonly hinders: () => string | null;
  readonly run: () => void;
}

const { hindrances } = commandWords;

const PLACES: readonly Place[] = ['write', 'sizes', 'materials', 'drawings', 'workbook', 'review', 'print'];

/** Commands by name. A place lends its own while it is in front. */
export class Commands {
  readonly #own: ReadonlyMap<CommandName, Action>;
  readonly #lent = new Map<CommandName, Action>();

  constructor(studio: Studio) {
    const desk = () => studio.view().desk;
    const open = () => (desk() === null ? hindrances.noPattern : null);
    const always = () => null;
    /** Nothing but `words` stands in the way of what an open pattern may have. */
    const where = (can: (view: DeskView) => boolean, words: string) => () => {
      const view = desk()?.view();
      if (view === undefined) return hindrances.noPattern;
      return can(view) ? null : words;
    };
    const own = new Map<CommandName, Action>([
      ['new', { hinders: always, run: () => studio.show('new') }],
      ['bring', { hinders: always, run: () => studio.show('bring') }],
      ['open', { hinders: always, run: () => void studio.openChosen() }],
      ['save', { hinders: open, run: () => void studio.save() }],
      ['save-as', { hinders: open, run: () => void studio.saveAs() }],
      [
        'versions',
        {
          hinders: where(({ file }) => file !== null, hindrances.inNoFile),
          run: () => studio.show('versions'),
        },
      ],
      ['export', { hinders: open, run: () => studio.go('print') }],
      ['start', { hinders: open, run: () => void studio.closePattern() }],
      ['close', { hinders: open, run: () => void studio.closePattern() }],
      [
        'undo',
        {
          hinders: where(({ canUndo }) => canUndo, hindrances.nothingToUndo),
          run: () => step(studio, 'undo'),
        },
      ],
      [
        'redo',
        {
          hinders: where(({ canRedo }) => canRedo, hindrances.nothingToDoAgain),
          run: () => step(studio, 'redo'),
        },
      ],
      ['commands', { hinders: always, run: () => studio.show('commands') }],
      ['keys', { hinders: always, run: () => studio.show('keys') }],
      ['about', { hinders: always, run: () => studio.show('about') }],
      ['theme', { hinders: always, run: () => studio.show('theme') }],
      ['spelling', { hinders: always, run: () => switchSpelling(studio) }],
      ['switch-terms', { hinders: open, run: () => switchTerms(studio) }],
      ['switch-units', { hinders: open, run: () => switchUnits(studio) }],
      ['next-size', { hinders: open, run: () => stepSize(studio, 1) }],
      ['previous-size', { hinders: open, run: () => stepSize(studio, -1) }],
      ['text-larger', { hinders: always, run: () => scaleText(studio, 0.1) }],
      ['text-smaller', { hinders: always, run: () => scaleText(studio, -0.1) }],
    ]);
    for (const place of PLACES)
      own.set(`go-${place}` as CommandName, { hinders: open, run: () => studio.go(place) });
    this.#own = own;
  }

  find(name: CommandName): Action | null {
    return this.#lent.get(name) ?? this.#own.get(name) ?? null;
  }

  /** Runs a command; false when it is not there or cannot be done now. */
  run(name: CommandName): boolean {
    const action = this.find(name);
    if (action === null || action.hinders() !== null) return false;
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
