/** What the booklet needs to know of a drawing to keep its place: who paints it is the caller's concern. */
export interface Drawing {
  /** The name under which the printing resources know its pen. */
  readonly name: string;
  /** Width divided by height. */
  readonly aspect: number;
  /** What it shows, for those who do not see it, in the reader's terms. */
  readonly alt: string;
  /** In the author's terms; null for none. */
  readonly caption: string | null;
}
