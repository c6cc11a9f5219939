/**
 * The tree that reading a written row yields. Every node points at the words it came from; nothing here
 * knows sizes, fabric or results, and nothing is rewritten. The engine in `core/fabric` gives the tree its
 * meaning. Terms are already resolved to stitches of the trade (see `core/trade/stitches`), so the tree is
 * the same for a row in US and in UK terms.
 */
import type { Fact, Span } from '../finding.ts';
import type { BaseStitch } from '../trade/stitches.ts';

/** A number as written: one for all sizes, one per size (`null` = a dash, "not in this size"), or a figure. */
export type Amount = Span &
  (
    | { readonly kind: 'one'; readonly value: number }
    | { readonly kind: 'sizes'; readonly values: readonly (number | null)[] }
    /** The n-th figure (inline atom, written as U+FFFC in the text) of the row; its values come from a line. */
    | { readonly kind: 'figure'; readonly index: number }
  );

/** What sort of stitch a word names, apart from its height. */
export type StitchForm =
  | 'plain' // dc, sl st
  | 'extended'
  | 'foundation' // fsc: chain and stitch in one
  | 'linked'
  | 'crossed'
  | 'reverse'
  | 'spike'
  | 'standing'
  | 'surface'
  | 'tunisian' // a loop drawn up on the way out, and closed on the way back
  | 'inc' // two (or `parts`) in one
  | 'dec' // "dec", with no stitch named or with one: "sc dec"
  | 'cluster'
  | 'bobble'
  | 'popcorn'
  | 'puff'
  | 'picot'
  | 'shell'
  | 'v-stitch'
  | 'special'; // a name the pattern defines itself

export interface StitchRef extends Span {
  readonly form: StitchForm;
  /** Ladder stitch; null when the word does not say (inc, dec, puff, shell, a special). */
  readonly base: BaseStitch | null;
  readonly post: 'front' | 'back' | null;
  /** Stitches worked together: 2 for dc2tog; 1 otherwise. */
  readonly together: number;
  /** 3 for "3-dc cluster", 5 for "5-dc shell", 3 for "3-in-1 inc"; null when the word does not say. */
  readonly parts: number | null;
  /** Normalised name of a special (lower case, single spaces, singular), else null. */
  readonly special: string | null;
  /** "beg shell", "beginning cluster". */
  readonly beginning: boolean;
  /** "half shell". */
  readonly half: boolean;
}

/** What is looked for in the row below. Several nouns joined by "and" are looked for together. */
export type Noun = Span &
  (
    | { readonly kind: 'stitch' } // any stitch: "st", or no noun at all
    | { readonly kind: 'named'; readonly stitch: StitchRef } // "dc", "sc2tog", "fpdc", "picot", "shell", "cluster"
    | { readonly kind: 'chain' } // one chain: "ch"
    /** "sp", "ch-2 sp" (chains = 2), "lp"; `loop`: older books say "each loop" of plain stitches too. */
    /** `turning`: the space beside or under the turning chain, "turning ch sp". */
    /** `open`: "sp" with no word of a chain; between two groups it may be a mere gap. */
    | {
        readonly kind: 'space';
        readonly chains: Amount | null;
        readonly loop?: true;
        readonly turning?: true;
        readonly open?: true;
      }
    /** The gap between two stitches: "sp between sts"; `groups`: between two groups made in one place each. */
    | { readonly kind: 'between'; readonly groups?: true }
    | { readonly kind: 'row-end' }
    | { readonly kind: 'seam' }
    | { readonly kind: 'loop-of-chain' } // other side of the foundation chain
    | { readonly kind: 'turning-chain' } // "tch" as something counted or skipped
  ) & {
    /** A corner's: "corner sp", "corner sc" (said); "each corner" may be either (bare). */
    readonly corner?: 'said' | 'bare';
  };

/** Where an across or a repeat stops. */
export type Stop = Span &
  (
    | { readonly kind: 'end'; readonly word: 'across' | 'around' | 'end' }
    /** "to last 3 sts", "until 2 sts rem" (amount left unworked); "to last sp". */
    | { readonly kind: 'before-last'; readonly amount: Amount; readonly noun: Noun }
    /** "to marker"; `before`: "to 2 sts before marker". `centre`: "to centre st", the row's own middle. */
    | { readonly kind: 'marker'; readonly before: Amount | null; readonly centre?: true }
    /** "to next corner", "to ch-2 sp": up to, not into, the next such thing; `before`: "to 2 sts before ch-2 sp"; `nth`: "to 3rd ch-2 sp". */
    | {
        readonly kind: 'before-next';
        readonly noun: Noun;
        readonly before?: Amount;
        readonly nth?: Amount;
      }
  );

/** Which loop or part of the stitch below the hook goes into. */
export interface Into {
  readonly loop: 'back' | 'front' | 'both' | 'third' | null;
  readonly post: 'front' | 'back' | null;
  /** Rows further down than the row below: 0 is the usual place. */
  readonly below: number;
  /** "next sc on Rnd 1": the row named, which need not be the row below. */
  readonly row?: number;
  /** "next 12 sts of first leg": the part named whose last round is gone into, in lower case and singular. */
  readonly part?: string;
  /** "each st around thumb opening": the opening gone round. */
  readonly opening?: WhichOpening;
}

/** Which of the openings that a piece has: stitches passed over under a chain, for a thumb or a sleeve. */
export type WhichOpening = 'any' | 'first' | 'second';

export type Place = Span &
  Into &
  /** "next st", "next 4 sts", "each of next 4 sts"; `every` 2 = every other. A bare "sc 4" is implied: next 4. */
  (
    | {
        readonly kind: 'next';
        readonly amount: Amount;
        readonly nouns: readonly Noun[];
        readonly every: number;
        readonly implied: boolean;
        /** "in corner sp": neither a number nor "next" is said, so that it may be the place the hook is at. */
        readonly bare?: true;
        /** "in sts 4-6": the number of the first, counted from the row's own first stitch. */
        readonly numbered?: Amount;
      }
    /** "each st across", "around", "each st to last 3 sts"; `others`: those that the work before leaves between. */
    | {
        readonly kind: 'across';
        readonly nouns: readonly Noun[];
        readonly every: number;
        readonly stop: Stop;
        readonly others?: true;
        /** An edge as a whole, without "each": "along the row ends". */
        readonly whole?: true;
      }
    /** "same st", "same sp", "same st as join", "base of ch": where the last work, or the join, went. */
    | { readonly kind: 'same' }
    | { readonly kind: 'first'; readonly amount: Amount; readonly noun: Noun }
    | { readonly kind: 'last'; readonly amount: Amount; readonly noun: Noun }
    /** "2nd dc": counted from where the work stands. */
    | { readonly kind: 'nth'; readonly nth: Amount; readonly noun: Noun }
    /** "4th ch from hook"; `counts`: what the chains passed over stand for, when the row says. */
    | { readonly kind: 'from-hook'; readonly nth: Amount; readonly counts: CountsAs | null }
    /** "top of turning ch" (nth null), "3rd ch of beg ch-5"; `beginning` when it is this round's own. */
    | { readonly kind: 'turning-chain'; readonly nth: Amount | null; readonly beginning: boolean }
    | { readonly kind: 'ring' }
    /** "the skipped st", "2 skipped sts", "2nd skipped st" (`nth`): those passed over last. */
    | {
        readonly kind: 'skipped';
        readonly amount: Amount;
        readonly noun: Noun;
        readonly nth?: Amount | 'last';
        /** "each skipped st": as many as there are. */
        readonly all?: true;
      }
    | { readonly kind: 'marked' }
    /** "between next 2 dc", "sp between groups": the gap, not a stitch. */
    /** `before`: "sp before next dc", the gap that the hook is at. */
    | { readonly kind: 'between'; readonly amount: Amount; readonly noun: Noun; readonly before?: true }
    /** Inside a unit met next: "3rd dc of next shell" (nth, of dc), "centre of next shell" (nth null),
     *  "ch-2 sp of next V-st", "first st of …". `ordinal` -1 counts from its end (last). */
    | {
        readonly kind: 'of-unit';
        readonly nth: 'centre' | Amount | 'last';
        readonly noun: Noun;
        readonly unit: Noun;
        readonly which: 'next' | 'each' | 'same' | 'last' | 'first';
        readonly stop: Stop | null;
      }
    /** A place in the work just made: "sl st in 3rd ch from hook" of a picot, "in first ch to form a ring". */
    | { readonly kind: 'own-chain'; readonly nth: Amount | null }
    /** "evenly across", "evenly spaced along edge": the amount of the work is a total. `plain`: "sc even", without shaping. */
    | {
        readonly kind: 'evenly';
        readonly nouns: readonly Noun[];
        readonly stop: Stop | null;
        readonly plain?: true;
      }
  );

/** What a chain is said to stand for. */
export type CountsAs = Span &
  (
    | {
        readonly kind: 'stitch';
        readonly stitch: StitchRef | null; // null: "counts as a st"
        /** Chains of space beside the stitch: "counts as dc, ch 2". */
        readonly chains: Amount | null;
        readonly throughout: boolean;
      }
    | { readonly kind: 'nothing'; readonly throughout: boolean }
    | { readonly kind: 'space'; readonly throughout: boolean } // "counts as first ch-3 sp"
  );

export interface Chain extends Span {
  readonly type: 'chain';
  readonly amount: Amount;
  readonly counts: CountsAs | null;
}

/** One or more stitches into one or more places: "2 dc in next st", "sc in next 3 sts and in each ch-2 sp across". */
export interface Work extends Span {
  readonly type: 'work';
  readonly stitch: StitchRef;
  /** How many into each place ("2 dc in each of next 3 sts": 2); for 'evenly' and 'ring' places the total. */
  readonly amount: Amount;
  /** In the order written; never empty. */
  readonly places: readonly Place[];
  /** Explicit span of a decrease: "dc2tog over next 2 sts". */
  readonly over: Amount | null;
  /** The places are those of its legs: "sc2tog, working first leg in same st and second leg in next st". */
  readonly legs?: true;
  /** "through both layers": each stitch takes one of either layer. */
  readonly layers?: true;
  /** "dc2tog over next 3 sts, skipping centre st": what lies between its legs is passed over in words. */
  readonly passing?: true;
}

/** "(2 dc, ch 2, 2 dc) in next ch-2 sp": the items are all made in one place, once for each place named. */
export interface Group extends Span {
  readonly type: 'group';
  readonly items: readonly Item[];
  readonly places: readonly Place[];
}

export interface Skip extends Span {
  readonly type: 'skip';
  /** "skip next st", "sk 2 sts" (next), "skip last sc" (last), "skip first st" (first). */
  readonly places: readonly Place[];
  /** "skip the st behind (the post st)": says what a stitch worked lower down covers. */
  readonly behind: boolean;
  /** "Miss 3 ch (counts as 1 tr)": what the chains passed over stand for, when the row says. */
  readonly counts: CountsAs | null;
}

export type Times = Span &
  /** Total passes: amount, or amount + 1 when it said "more" (or "rep from * n times" after one working). */

  /** `unsaid`: "rep from * 6 times" does not say whether it means 6 more, as the trade takes it, or 6 in all. */
  (
    | {
        readonly kind: 'times';
        readonly amount: Amount;
        readonly more: boolean;
        readonly unsaid?: true;
      }
    | { readonly kind: 'to'; readonly stop: Stop }
  );

/** How the last pass differs. */
export type LastPass = Span &
  (
    | { readonly kind: 'stop-at'; readonly index: number } // items[0..index) only: "ending last rep at **"
    /** "ending last rep with 2 dc in last st"; `replaces`: "working last dc in top of tch" is the last dc itself. */
    | { readonly kind: 'ending'; readonly items: readonly Item[]; readonly replaces?: true }
    | { readonly kind: 'omitting'; readonly items: readonly Item[] } // "omitting last ch 2"
  );

export interface Repeat extends Span {
  readonly type: 'repeat';
  readonly items: readonly Item[];
  readonly mark: 'star' | 'bracket';
  readonly times: Times;
  readonly last: LastPass | null;
}

/** "rep between * and * …", "rep from * to ** once more" after other work: works marked items again. */
export interface Again extends Span {
  readonly type: 'again';
  readonly items: readonly Item[];
  readonly times: Times;
}

export interface Turn extends Span {
  readonly type: 'turn';
  readonly not: boolean; // "do not turn"
}

export interface Join extends Span {
  readonly type: 'join';
  readonly not: boolean; // "do not join"
  /** Stitch that closes the round: slip stitch unless it says another ("join with hdc in first ch"). */
  readonly stitch: StitchRef | null;
  /** Where; null when the text does not say. */
  readonly place: Place | null;
}

export interface FastenOff extends Span {
  readonly type: 'fasten-off';
}

/** "join new yarn with sl st in any sc", "attach yarn in same sp". */
export interface Attach extends Span {
  readonly type: 'attach';
  readonly stitch: StitchRef | null;
  readonly place: Place | null;
  /** "join yarn at thumb opening" */
  readonly opening?: WhichOpening;
}

export interface Unworked extends Span {
  readonly type: 'unworked';
  /** "leave rem sts unworked" (null) or "leaving last 4 sts unworked". */
  readonly amount: Amount | null;
  readonly noun: Noun;
  /** "working over first 12 sts only": the amount is what is worked over, not what is left. */
  readonly confines?: true;
}

export interface Marker extends Span {
  readonly type: 'marker';
  /** 'carry': "move markers up", each to the stitch above its own. */
  readonly action: 'place' | 'move' | 'carry' | 'remove' | 'work-to';
  readonly place: Place | null;
  /** "in the 12th, 24th and 36th sts": which ones besides the first. */
  readonly also?: readonly Amount[];
  /** "in 2nd of these 3 sc": the place is none of the row below. */
  readonly among?: Among;
}

/** Which of the stitches just made. `of`: how many they are; null = those that went into the last place. */
export interface Among {
  readonly nth: Amount | 'last' | 'centre';
  readonly of: Amount | null;
}

export interface Colour extends Span {
  readonly type: 'colour';
  readonly name: string;
  /** Said behind the stitches that are worked with it: "3 sc in A, 14 sc in B". */
  readonly behind?: true;
}

/** "working in back loops only": holds for the work after it, to the row's end. */
export interface Loops extends Span, Into {
  readonly type: 'loops';
}

/** "ch 4, sl st in first ch to form a ring", "make a magic ring": something to work into. */
export interface Ring extends Span {
  readonly type: 'ring';
  /** Chains of a chain ring, null for a yarn ring. */
  readonly chains: Amount | null;
}

/** "working along the opposite side of the chain": the work goes on into the other side of the foundation. */
export interface OtherSide extends Span {
  readonly type: 'other-side';
}

/** "working through both layers": what comes after goes through a folded tube. */
export interface Layers extends Span {
  readonly type: 'layers';
}

/** "working into the sts of Rnd 1": what comes after goes into that earlier row. */
export interface Earlier extends Span {
  readonly type: 'earlier';
  readonly row: number;
}

/** Words understood to change nothing in the counts: "pull ring tight", "(see note)", "do not cut yarn". */
export interface Aside extends Span {
  readonly type: 'aside';
}

/** Words not understood. A fact with the same span says what was expected. */
export interface Unread extends Span {
  readonly type: 'unread';
}

/** Which earlier rows: by number, or the last n. */
export type RowsRef = Span &
  /** `through`: "Row 2 through Row 30", which is Row 2 again and again where there is no Row 30 yet. */
  (
    | {
        readonly kind: 'numbers';
        readonly first: Amount;
        readonly last: Amount;
        readonly through?: true;
        readonly round: boolean;
      }
    | { readonly kind: 'list'; readonly numbers: readonly Amount[]; readonly round: boolean }
    | { readonly kind: 'last'; readonly amount: Amount; readonly round: boolean }
    | { readonly kind: 'pattern' } // "in pattern as established"
    | { readonly kind: 'titled'; readonly title: string; readonly words: string; readonly round: boolean } // "Dec Row", by its label
  );

export interface Length extends Span {
  readonly values: readonly number[];
  readonly unit: 'cm' | 'in' | 'mm';
}

/** "Rep Rows 2 and 3 (5 more times / until piece measures …)"; "as Row 1". */
export interface RowsAgain extends Span {
  readonly type: 'rows-again';
  readonly rows: RowsRef;
  /** Times the group is worked here; null = as many as the label's row range takes, else once. */
  readonly times: Amount | null;
  /** "every other row", "every 4th row": each working is the last of so many rows, the others plain. */
  readonly every?: Amount;
  readonly until: Length | null;
  /** "until 5 sts remain", "until there are 22 dc": stitches in the row then. */
  readonly left: Amount | null;
  /** "until there are 22 rows", "for a total of 22 rows", "to Row 22": rows of the piece then. */
  readonly inAll?: Amount;
  /** "until desired length": as often as the maker likes. */
  readonly asWished?: true;
  /** "ending with Row 2" / "ending with a WS row". */
  readonly endingWith: Amount | 'RS' | 'WS' | null;
}

/** "Work 10 rows even", "work even until …". */
export interface Even extends Span {
  readonly type: 'even';
  readonly rows: Amount | null;
  /** "for a total of 40 rows": rows of the piece then, not from here. */
  readonly inAll?: true;
  /** "Work straight in dc": the stitch, when it is named; null = as before. */
  readonly stitch: StitchRef | null;
  readonly until: Length | null;
}

/** "dec 1 st each end of every 4th row 5 times, then every 2nd row 3 times". */
export interface Shaping extends Span {
  readonly type: 'shaping';
  readonly change: 'inc' | 'dec';
  /** Stitches changed at each end (or evenly, for 'round') in a shaping row. */
  readonly amount: Amount;
  readonly ends: 'each' | 'start' | 'finish' | 'evenly';
  /** Now on this row, when the text says "this row and every 4th row …". */
  readonly now: boolean;
  readonly schedule: readonly { readonly every: Amount; readonly times: Amount | null }[];
  /** "… until 8 sts rem": stitches left when the shaping is done; null when it does not say. */
  readonly until: Amount | null;
}

/** "Work as for Back to **", "work as for Front to Row 20, reversing shaping". */
export interface AsPiece extends Span {
  readonly type: 'as-piece';
  readonly piece: string;
  readonly upTo: RowsRef | 'mark' | null;
  readonly reversed: boolean;
}

/** The spot that "**" or a dagger marks in the row. */
export interface Mark extends Span {
  readonly type: 'mark';
  readonly sign: string;
}

export type Item =
  | Chain
  | Work
  | Group
  | Skip
  | Repeat
  | Again
  | Turn
  | Join
  | FastenOff
  | Attach
  | Unworked
  | Marker
  | Colour
  | Loops
  | Ring
  | OtherSide
  | Layers
  | Earlier
  | Aside
  | Unread
  | RowsAgain
  | Even
  | Shaping
  | AsPiece
  | Mark;

export type RowNumbers = Span &
  (
    | { readonly kind: 'one'; readonly number: Amount }
    | { readonly kind: 'range'; readonly first: Amount; readonly last: Amount }
    | { readonly kind: 'list'; readonly numbers: readonly Amount[] }
    /** "Row 6 and all even rows": `start`, and every 2nd after it. */
    | { readonly kind: 'onward'; readonly start: Amount; readonly step: number }
  );

export interface Label extends Span {
  readonly kind: 'row' | 'round' | 'foundation' | 'set-up' | 'next' | 'numbered' | 'none';
  readonly numbers: RowNumbers | null;
  /** "Next 4 rows": how many rows a label without numbers is for; absent = one. */
  readonly rows?: Amount;
  /** "Dec Row", "Row 5 (Inc Row)": what the row is called, in short words. */
  readonly title?: string;
  /** "R5": a row or a round, which the work shows. */
  readonly short?: true;
  /** "Crown Rnd 1": counted among the rows of the part it names. */
  readonly part?: true;
  readonly side: 'RS' | 'WS' | null;
}

/** One number of a stated count: "24 sc", "8 ch-2 sps", "6 incs", or bare "24". */
export interface CountPart extends Span {
  readonly amount: Amount;
  /** null for a bare number. */
  readonly noun: Noun | null;
}

/** A count that the author states: "(24 sts: 18 sc, 6 hdc)", "– 24 (26, 28) sts". */
export interface StatedCount extends Span {
  /** When there are several parts and one says "sts: …", it comes first and is the total. */
  readonly parts: readonly CountPart[];
  /** Said of the turning chain: counted, not counted, or nothing said. */
  readonly turningChain: 'with' | 'without' | null;
}

/** One written row. */
export interface RowTree extends Span {
  readonly label: Label | null;
  readonly items: readonly Item[];
  readonly counts: readonly StatedCount[];
  /** Which sizes the row is for, by label as written ("Sizes M (L) only"), or null for all. */
  readonly only: SizeFilter | null;
  /** False when a part of the row was not understood. */
  readonly read: boolean;
  readonly facts: readonly Fact[];
}

/** "Sizes L (XL) only:"; `except` for "All other sizes:" after it. */
export interface SizeFilter extends Span {
  readonly labels: readonly string[];
  readonly except: boolean;
}

/** A word that the pattern defines: "Shell: 5 dc in next st", "inc: 2 sc in next st". */
export interface Definition extends Span {
  /** All its names, normalised: ["large shell", "lgsh"]. */
  readonly names: readonly string[];
  readonly items: readonly Item[];
  readonly facts: readonly Fact[];
  /** Told inside a row that works it: "(3 dc, ch 1, 3 dc) in next ch (shell made)". */
  readonly inside?: true;
}

/** Something said once for all rows: "ch 3 counts as first dc throughout". */
export interface Convention extends Span {
  readonly chains: Amount | null; // the ch-3 it speaks of; null = every turning chain
  readonly counts: CountsAs;
}

/** One piece of a plain text: what stands between two blank lines that begin afresh. */
export interface PieceTree extends Span {
  /** Heading line before it ("Front"), or null. */
  readonly heading: (Span & { readonly text: string }) | null;
  readonly definitions: readonly Definition[];
  readonly conventions: readonly Convention[];
  readonly rows: readonly RowTree[];
}

/** A whole plain text. */
export interface TextTree {
  /** Size labels, when the text has a line such as "Sizes: S (M, L)". */
  readonly sizes: readonly string[] | null;
  readonly pieces: readonly PieceTree[];
  /** Facts that belong to no row. */
  readonly facts: readonly Fact[];
}
