/** Names of files as they are made from titles and labels: short, plain, the same on every system. */

/** Letters that do not come apart into a plain one and a mark. */
const SPELLED: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ł: 'l',
  ı: 'i',
};

/** Plain lower-case words with hyphens: "Été à Łódź, 2nd" is "ete-a-lodz-2nd". */
export function plainName(text: string, longest: number): string {
  const name = text
    .toLowerCase()
    .replace(/[ßæœøđðþłı]/g, (letter) => SPELLED[letter]!)
    .replace(/½/g, '-1-2')
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '');
  return name.length <= longest ? name : name.slice(0, longest).replace(/-[^-]*$|-+$/, '');
}

/** File of a drawing: "Harbour vest schematic Back" is "harbour-vest-schematic-back.svg". */
export function drawingFile(name: string): string {
  return `${plainName(name, 120) || 'drawing'}.svg`;
}
