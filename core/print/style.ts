/**
 * The look of every edition in one place: papers, margins, the scale of type, the scale of spaces, colours
 * and rules. Units are points (1/72 in). Nothing here measures or draws.
 *
 * Paper sizes: ISO 216 (A4, 210 × 297 mm) and US Letter (8.5 × 11 in). Either prints on the other, centred at
 * full size: what stands on A4 keeps 46 pt from its ends, 25 of which Letter has not, and what stands on Letter
 * keeps 48 pt from its sides, 9 of which A4 has not. Some 20 pt are left for the edge that printers do not reach
 * (common practice). A file for each paper is made, so the wider margins of RFC 2346 are not needed.
 */

export type Paper = 'a4' | 'letter';
export type Edition = 'standard' | 'large-print' | 'ink-saving';

export type Face = 'serif' | 'serif-italic' | 'serif-semibold' | 'sans' | 'sans-semibold';
export type Family = 'serif' | 'sans';

/** How one kind of text looks. `leading` is the distance from baseline to baseline. */
export interface Look {
  readonly family: Family;
  readonly weight: 'regular' | 'semibold';
  readonly size: number;
  readonly leading: number;
  readonly colour: string;
}

export interface Looks {
  readonly title: Look;
  readonly subtitle: Look;
  readonly lead: Look;
  readonly body: Look;
  readonly small: Look;
  readonly heading: readonly [Look, Look, Look];
  /** Row labels, terms, labels of facts. */
  readonly label: Look;
  /** The side after a row label. */
  readonly side: Look;
  /** The count at a row's end. */
  readonly count: Look;
  /** "Sizes L, XL only". */
  readonly only: Look;
  readonly tableCaption: Look;
  readonly tableHead: Look;
  readonly tableCell: Look;
  readonly caption: Look;
  readonly cautionTitle: Look;
  readonly foot: Look;
}

export interface Spaces {
  readonly paragraph: number;
  readonly row: number;
  readonly item: number;
  readonly block: number;
  readonly headingBefore: readonly [number, number, number];
  readonly headingAfter: readonly [number, number, number];
  readonly small: number;
  readonly large: number;
  /** Above and below the text of a table row; left and right of a cell. */
  readonly cellTop: number;
  readonly cellSide: number;
  /** Between the caution's bar or frame and its text. */
  readonly inset: number;
}

export interface Style {
  readonly paper: Paper;
  readonly edition: Edition;
  readonly page: { readonly width: number; readonly height: number };
  readonly margin: {
    readonly left: number;
    readonly right: number;
    readonly top: number;
    readonly bottom: number;
  };
  /** Where the foot's last line ends, from the lower edge of the paper. */
  readonly footRise: number;
  /**
   * Labels hang in a column of their own, left of the text, this wide with its gutter; 0 when label and text
   * follow one another in a single column.
   */
  readonly hang: number;
  readonly looks: Looks;
  readonly spaces: Spaces;
  /** Smallest size to which a wide table shrinks before it is split. */
  readonly tableLimit: number;
  /** Tables are told in labelled lines. */
  readonly tablesTold: boolean;
  readonly colours: {
    readonly ink: string;
    readonly soft: string;
    readonly rule: string;
    readonly tint: string;
    readonly accent: string;
  };
  readonly rules: { readonly hair: number; readonly thin: number; readonly bar: number };
  /** Pale fills behind cautions and keys. */
  readonly fills: boolean;
  /** The cover picture runs to the edges of the paper. */
  readonly bleed: boolean;
  /** The cover has a page of its own. */
  readonly coverPage: boolean;
  /** Parts that ask for a page of their own get one. */
  readonly partPages: boolean;
  /** Pictures: part of the page's height that one may take, and a factor on their width. */
  readonly pictureHeight: number;
  readonly pictureScale: number;
}

const PAPERS = {
  a4: { width: 595.28, height: 841.89 },
  letter: { width: 612, height: 792 },
} as const;

const INK = '#1d1b19';
const SOFT = '#57524b';
const BLACK = '#000000';
/** The one accent: a madder red, 7.3:1 on white (WCAG 2.2 asks 4.5:1 of text). */
const ACCENT = '#98361f';

const serif = (size: number, leading: number, more: Partial<Look> = {}): Look => ({
  family: 'serif',
  weight: 'regular',
  size,
  leading,
  colour: INK,
  ...more,
});
const sans = (size: number, leading: number, more: Partial<Look> = {}): Look => ({
  ...serif(size, leading),
  family: 'sans',
  ...more,
});
const SEMIBOLD = { weight: 'semibold' } as const;

function standard(paper: Paper): Style {
  const { width, height } = PAPERS[paper];
  const side = paper === 'a4' ? 60 : 66;
  return {
    paper,
    edition: 'standard',
    page: { width, height },
    margin: { left: side, right: side, top: 62, bottom: 84 },
    footRise: paper === 'a4' ? 46 : 36,
    hang: 104,
    looks: {
      title: serif(34, 39, SEMIBOLD),
      subtitle: serif(14, 20, { colour: SOFT }),
      lead: serif(12.5, 18.5),
      body: serif(10.5, 15),
      small: serif(9, 13, { colour: SOFT }),
      heading: [serif(21, 26, SEMIBOLD), serif(14.5, 19, SEMIBOLD), sans(10.5, 15, SEMIBOLD)],
      label: sans(9.5, 15, SEMIBOLD),
      side: sans(9.5, 15, { colour: SOFT }),
      count: sans(9.5, 15, SEMIBOLD),
      only: sans(9.5, 15, { ...SEMIBOLD, colour: ACCENT }),
      tableCaption: sans(9.5, 14, SEMIBOLD),
      tableHead: sans(9, 12.5, SEMIBOLD),
      tableCell: sans(9, 12.5),
      caption: sans(8.5, 12, { colour: SOFT }),
      cautionTitle: sans(10, 15, { ...SEMIBOLD, colour: ACCENT }),
      foot: sans(8, 11, { colour: SOFT }),
    },
    spaces: {
      paragraph: 7.5,
      row: 5.5,
      item: 3,
      block: 14,
      headingBefore: [34, 24, 16],
      headingAfter: [12, 7, 4],
      small: 8,
      large: 24,
      cellTop: 3.25,
      cellSide: 5,
      inset: 11,
    },
    tableLimit: 7.5,
    tablesTold: false,
    colours: { ink: INK, soft: SOFT, rule: '#b9b2a6', tint: '#f6f3ec', accent: ACCENT },
    rules: { hair: 0.4, thin: 0.75, bar: 2.25 },
    fills: true,
    bleed: true,
    coverPage: true,
    partPages: true,
    pictureHeight: 0.5,
    pictureScale: 1,
  };
}

/**
 * Large print: 18 pt and more everywhere, one column, sans, black on white, bold instead of italics, tables
 * told in lines, margins of 1 in (see the accessible edition in the conventions of the trade).
 */
function largePrint(paper: Paper): Style {
  const base = standard(paper);
  const text = sans(18, 26, { colour: BLACK });
  const strong = { ...text, ...SEMIBOLD };
  return {
    ...base,
    edition: 'large-print',
    margin: { left: 72, right: 72, top: 72, bottom: 72 },
    footRise: paper === 'a4' ? 46 : 40,
    hang: 0,
    looks: {
      title: { ...strong, size: 36, leading: 44 },
      subtitle: { ...text, size: 20, leading: 28 },
      lead: { ...text, size: 20, leading: 29 },
      body: text,
      small: text,
      heading: [
        { ...strong, size: 29, leading: 37 },
        { ...strong, size: 24, leading: 32 },
        { ...strong, size: 20, leading: 28 },
      ],
      label: strong,
      side: strong,
      count: strong,
      only: strong,
      tableCaption: { ...strong, size: 20, leading: 28 },
      tableHead: strong,
      tableCell: text,
      caption: text,
      cautionTitle: { ...strong, size: 20, leading: 28 },
      foot: { ...text, leading: 23 },
    },
    spaces: {
      paragraph: 14,
      row: 16,
      item: 8,
      block: 24,
      headingBefore: [44, 34, 26],
      headingAfter: [16, 12, 8],
      small: 14,
      large: 36,
      cellTop: 4,
      cellSide: 6,
      inset: 16,
    },
    tableLimit: 18,
    tablesTold: true,
    colours: { ink: BLACK, soft: BLACK, rule: BLACK, tint: '#ffffff', accent: BLACK },
    rules: { hair: 0.75, thin: 1.25, bar: 4 },
    fills: false,
    bleed: false,
    pictureHeight: 0.42,
  };
}

/** Ink-saving: no fills, thin grey-free rules, smaller pictures, tighter setting; still comfortable to read. */
function inkSaving(paper: Paper): Style {
  const base = standard(paper);
  const looks = base.looks;
  const text = (look: Look, size: number, leading: number): Look => ({
    ...look,
    size,
    leading,
    colour: BLACK,
  });
  return {
    ...base,
    edition: 'ink-saving',
    margin: { left: 48, right: 48, top: paper === 'a4' ? 46 : 44, bottom: 66 },
    footRise: paper === 'a4' ? 46 : 30,
    hang: 90,
    looks: {
      title: text(looks.title, 24, 29),
      subtitle: text(looks.subtitle, 11.5, 15),
      lead: text(looks.lead, 10, 13.5),
      body: text(looks.body, 9.5, 12.75),
      small: text(looks.small, 8.5, 11.25),
      heading: [
        text(looks.heading[0], 15.5, 19.5),
        text(looks.heading[1], 12, 15.5),
        text(looks.heading[2], 9.5, 12.75),
      ],
      label: text(looks.label, 8.75, 12.75),
      side: text(looks.side, 8.75, 12.75),
      count: text(looks.count, 8.75, 12.75),
      only: text(looks.only, 8.75, 12.75),
      tableCaption: text(looks.tableCaption, 8.75, 12),
      tableHead: text(looks.tableHead, 8.25, 11),
      tableCell: text(looks.tableCell, 8.25, 11),
      caption: text(looks.caption, 8, 11),
      cautionTitle: text(looks.cautionTitle, 9.25, 12.75),
      foot: text(looks.foot, 7.5, 10),
    },
    spaces: {
      paragraph: 5,
      row: 3.25,
      item: 1.5,
      block: 9,
      headingBefore: [20, 14, 9],
      headingAfter: [6, 4, 2],
      small: 5,
      large: 14,
      cellTop: 2,
      cellSide: 4,
      inset: 8,
    },
    tableLimit: 7,
    colours: { ink: BLACK, soft: BLACK, rule: BLACK, tint: '#ffffff', accent: BLACK },
    rules: { hair: 0.25, thin: 0.4, bar: 0.75 },
    fills: false,
    bleed: false,
    coverPage: false,
    partPages: false,
    pictureHeight: 0.27,
    pictureScale: 0.7,
  };
}

/** The style of one edition on one paper; the same object for the same choice. */
export function styleOf(paper: Paper, edition: Edition): Style {
  const key = `${paper} ${edition}`;
  let style = made.get(key);
  if (!style) {
    style =
      edition === 'large-print'
        ? largePrint(paper)
        : edition === 'ink-saving'
          ? inkSaving(paper)
          : standard(paper);
    made.set(key, style);
  }
  return style;
}

const made = new Map<string, Style>();
