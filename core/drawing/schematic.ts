/**
 * The schematics of a pattern: every assembly of its pieces in every size, with its lengths brought together over the
 * sizes. All from the study; nothing is placed on a sheet here and nothing rounded. Remembered by the studies of the
 * pieces, so that an edit draws again what it reached.
 */
import { gaugeOf } from '../study/gauge.ts';
import type { Study } from '../study/index.ts';
import type { PieceStudy } from '../study/piece-study.ts';
import { followedRows } from '../study/taped.ts';
import type { Length } from '../trade/units.ts';
import { type Assembly, assembliesOf, grainOf } from './assembly.ts';
import type { What } from './outline.ts';
import { hindered, labelOf, missing, nameOf, rowNamed, titleOf } from './schematic-words.ts';
import { type Hindrance, hindranceIn, risesFromOpening } from './shape.ts';
import { type Sketch, sketchOf } from './sketch.ts';

/** A length of a schematic in every size; null where a size has none. */
export interface SchematicLength {
  readonly key: string;
  readonly what: What;
  /** The piece's name, null where the schematic has only one; both in the author's terms. */
  readonly piece: string | null;
  readonly part: number | null;
  readonly name: string;
  readonly lengths: readonly (Length | null)[];
}

export interface Schematic {
  /** Ids of its pieces, joined. */
  readonly id: string;
  readonly pieces: readonly { readonly id: string; readonly name: string }[];
  readonly title: string;
  /** How often its first piece is made. */
  readonly make: number;
  /** One a size; null where a size has nothing to draw. */
  readonly sketches: readonly (Sketch | null)[];
  readonly lengths: readonly SchematicLength[];
  /** Pieces that have no outline in a size because of a row of theirs. */
  readonly hindered: readonly Hindered[];
}

export interface Hindered {
  /** The piece's name, in the author's terms. */
  readonly piece: string;
  readonly size: number;
  readonly row: string;
  readonly why: Hindrance['why'];
}

export interface Schematics {
  readonly drawings: readonly Schematic[];
  /** Pieces of which there is no drawing, each with a sentence that says why. */
  readonly missing: readonly { readonly piece: string; readonly why: string }[];
}

/** The label of a length: "Back: height". `say` puts the piece's name into the reader's terms. */
export function lengthLabel(
  length: SchematicLength,
  say: (words: string) => string = (words) => words,
): string {
  return labelOf(length.piece === null ? null : say(length.piece), length.part, length.name);
}

const remembered = new WeakMap<
  PieceStudy,
  { readonly key: readonly unknown[]; readonly made: Schematic | null }[]
>();
const whole = new WeakMap<
  readonly PieceStudy[],
  { readonly key: readonly unknown[]; readonly made: Schematics }
>();

const same = (a: readonly unknown[], b: readonly unknown[]) =>
  a.length === b.length && a.every((value, i) => value === b[i]);

/** The schematics of a study. Total: what is half written is drawn as far as it goes. */
export function schematicsOf(study: Study): Schematics {
  const { pattern } = study;
  const key = [
    pattern.gauges,
    pattern.sizes,
    pattern.about.garment,
    pattern.about.title,
    study.sheet,
    pattern.sample,
  ];
  const before = whole.get(study.pieces);
  if (before !== undefined && same(before.key, key)) return before.made;
  const assemblies = assembliesOf(study, focusOf(study));
  const drawings: Schematic[] = [];
  const lacking: Schematics['missing'][number][] = [];
  for (const assembly of assemblies) {
    const made = schematicOf(assembly, study);
    if (made !== null) drawings.push(made);
    else lacking.push({ piece: assembly.piece.piece.id, why: whyNot(assembly.piece, study) });
  }
  const schematics = { drawings: withoutTwins(drawings), missing: lacking };
  whole.set(study.pieces, { key, made: schematics });
  return schematics;
}

/** The size that assemblies are judged by, and that is drawn where no other is asked for: the sample, else the middle one. */
export function focusOf({ pattern }: Pick<Study, 'pattern'>): number {
  const sample = pattern.sizes.findIndex((size) => size.id === pattern.sample);
  return sample >= 0 ? sample : Math.max(0, (pattern.sizes.length - 1) >> 1);
}

function whyNot(piece: PieceStudy, study: Study): string {
  const { name } = piece.piece;
  const grain = grainOf(piece, study);
  if (grain === null) return missing(name, 'gauge');
  if (piece.rows.some((_, size) => followedRows(piece, size, grain.row) === null))
    return missing(name, 'too-long');
  const [first] = hinderedIn(piece, study);
  if (first !== undefined) return hindered(name, first.row, first.why, null);
  return missing(name, 'rows');
}

function hinderedIn(piece: PieceStudy, study: Study): readonly Hindered[] {
  const grain = grainOf(piece, study);
  if (grain === null) return [];
  return study.pattern.sizes.flatMap((_, size): readonly Hindered[] => {
    const found = hindranceIn(piece, size, grain);
    if (found === null) return [];
    const { row, why } = found;
    return [{ piece: piece.piece.name, size, row: rowNamed(row.number, row.round), why }];
  });
}

const membersOf = ({ piece, parts }: Assembly): readonly PieceStudy[] => [piece, ...parts.flatMap(membersOf)];
const placesOf = ({ place, parts }: Assembly): readonly string[] => [place, ...parts.flatMap(placesOf)];

function schematicOf(assembly: Assembly, study: Study): Schematic | null {
  const members = membersOf(assembly);
  const { pattern } = study;
  const key = [
    ...members,
    ...placesOf(assembly),
    ...members.map((piece) => risesFromOpening(piece, study.pieces)),
    ...members.map((piece) => gaugeOf(piece, pattern, study.sheet)),
    pattern.sizes,
    pattern.about.garment,
    pattern.about.title,
  ];
  const known = remembered.get(assembly.piece) ?? [];
  const before = known.find((entry) => same(entry.key, key));
  if (before !== undefined) return before.made;
  const made = makeSchematic(assembly, members, study);
  remembered.set(assembly.piece, [...known.slice(-3), { key, made }]);
  return made;
}

function makeSchematic(assembly: Assembly, members: readonly PieceStudy[], study: Study): Schematic | null {
  const sketches = study.pattern.sizes.map((_, size) => sketchOf(assembly, study, size));
  if (sketches.every((sketch) => sketch === null)) return null;
  const names = new Map(members.map(({ piece }) => [piece.id, piece.name]));
  const keys: string[] = [];
  const found = new Map<string, { what: What; part: number }>();
  for (const sketch of sketches) {
    for (const measure of sketch?.measures ?? []) {
      if (found.has(measure.key)) continue;
      found.set(measure.key, { what: measure.what, part: measure.part });
      keys.push(measure.key);
    }
  }
  const lengths = keys.map((own): SchematicLength => {
    const { what, part } = found.get(own)!;
    const id = own.slice(0, own.length - what.length - String(part).length - 2);
    const parts = [...found]
      .filter(
        ([other, { what: kind }]) => other.startsWith(`${id} `) && kind !== 'between' && kind !== 'opening',
      )
      .map(([, { part: n }]) => n);
    const ordered = [...new Set(parts.filter((n) => n > 0))].sort((a, b) => a - b);
    const ends = `${id} ${part} ${ENDS[what] ?? ''}`;
    return {
      key: own,
      what,
      piece: members.length === 1 || what === 'total' ? null : (names.get(id) ?? null),
      part:
        what === 'between' || what === 'opening' || ordered.length < 2 || part === 0
          ? null
          : ordered.indexOf(part) + 1,
      name: nameOf(what, found.has(ends)),
      lengths: sketches.map(
        (sketch) => sketch?.measures.find((measure) => measure.key === own)?.length ?? null,
      ),
    };
  });
  return {
    id: members.map(({ piece }) => piece.id).join('+'),
    pieces: members.map(({ piece: { id, name } }) => ({ id, name })),
    title: titleOf(members.map(({ piece }) => piece.name)),
    make: assembly.piece.piece.make,
    sketches,
    lengths: withoutSame(lengths),
    hindered: members.flatMap((piece) => hinderedIn(piece, study)),
  };
}

/** The length that says whether another is one of two. */
const ENDS: Partial<Record<What, What>> = {
  width: 'width-end',
  'half-round': 'half-round-end',
  'half-round-end': 'half-round',
};

const equal = (a: readonly (Length | null)[], b: readonly (Length | null)[]) =>
  a.every((length, i) => {
    const other = b[i] ?? null;
    return length === null || other === null ? length === other : length.equals(other);
  });

/** Parts that stand beside each other and measure the same are told once, as in a pair of shoulders. */
function withoutSame(lengths: readonly SchematicLength[]): readonly SchematicLength[] {
  return lengths.filter(
    (one, at) =>
      !lengths
        .slice(0, at)
        .some(
          (other) =>
            other.what === one.what &&
            (other.piece !== one.piece || other.part !== one.part) &&
            equal(other.lengths, one.lengths),
        ),
  );
}

/** A piece that two arrangements show in the same way is drawn once. */
function withoutTwins(drawings: readonly Schematic[]): readonly Schematic[] {
  return drawings.filter((one, at) => drawings.findIndex((other) => other.id === one.id) === at);
}
