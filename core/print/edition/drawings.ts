/** What the booklet needs to know of a drawing to keep its place: who paints it is the caller's concern. */
export interface Drawing {
  /** The name under which the printing resources know its pen. */
  readonly name: string;
  /** Width divided by height. */
  readonly aspect: number;
  /** How wide it is printed, in points; null for as wide as there is room. */
  readonly width?: number | null;
  /** What it shows, for those who do not see it, in the reader's terms. */
  readonly alt: string;
  /** In the author's terms; null for none. */
  readonly caption: string | null;
  /** Its own heading, in the reader's terms. */
  readonly title?: string;
  /** What its letters stand for, in the reader's terms and units. */
  readonly key?: readonly { readonly letter: string; readonly label: string; readonly numbers: string }[];
  /** Sentences about it, in the reader's terms. */
  readonly notes?: readonly string[];
}
