/** How often a piece of an old pattern is made, as its heading says. It reads nothing but the heading. */

const COPIES = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** "Sleeve (make 2)", "Ear, make two alike", "Leg x 4": the name of a piece, and how many are made. */
export function copiesOf(heading: string): { readonly name: string; readonly make: number } {
  const both = /\s*[([,–-]?\s*\b(?:make |work )?both\s+(?:alike|the same)\s*[)\]]?$/iu.exec(heading);
  if (both !== null && both.index > 0) return { name: heading.slice(0, both.index), make: 2 };
  const inside = /^(.*?)\s*\((?:make|work)\s+(\d{1,3})\s*(?:[,;]|\s[-–—])\s*([^()]+)\)$/iu.exec(heading);
  if (inside !== null && Number(inside[2]) > 0)
    return { name: `${inside[1]} (${inside[3]})`, make: Number(inside[2]) };
  // "Ear (G, 2x)", "Ear (2x)"
  const marked = /^(.*?)\s*\((?:([^()]*?)\s*,\s*)?(\d{1,2})\s?[x×]\)$/u.exec(heading);
  if (marked !== null && Number(marked[3]) > 0)
    return {
      name: marked[2] === undefined ? marked[1]! : `${marked[1]} (${marked[2]})`,
      make: Number(marked[3]),
    };
  const found =
    /\s*[([,–-]?\s*\b(?:make|work)\s+(\d{1,3}|[a-z]{3,5})\b(?:\s+(?:alike|the same|of these|pieces?))?\s*[)\]]?\s*$/iu.exec(
      heading,
    ) ?? /\s*[([]?\s*[x×]\s?(\d{1,3})\s*[)\]]?(?=\s*(?:\([^()]*\))?\s*$)/u.exec(heading);
  const word = found?.[1]?.toLowerCase() ?? '';
  const make = /^\d/u.test(word) ? Number(word) : COPIES.indexOf(word) + 1;
  const name =
    found === null || make < 1
      ? heading
      : [heading.slice(0, found.index), heading.slice(found.index + found[0].length)]
          .map((words) => words.trim())
          .filter((words) => words !== '')
          .join(' ');
  return name === '' || make < 1 ? { name: heading, make: 1 } : { name, make };
}
