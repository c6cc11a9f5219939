/**
 * Yarns of an old pattern that stand over several lines: amounts in a table of the sizes, colours under the yarn that
 * they are of. It puts together what other modules read.
 */
import type { Size, Yarn } from '../document/pattern.ts';
import { metresIn } from './materials.ts';
import { numbersIn } from './numbers.ts';

/** "400, 450, 550, 600 yards": as many numbers as sizes, without brackets, as a list in brackets. */
export function bracketed(words: string, sizes: number): string {
  if (sizes < 3) return words;
  const list = new RegExp(
    String.raw`(?<![\d.,])(\d{1,5})((?:(?:,\s|\s[-–]\s)\d{1,5}){${sizes - 1}})(?=\s?(?:m|metres|yds?|yards?|g|balls?|skeins?)\b)`,
    'u',
  );
  return words.replace(list, (_, first: string, rest: string) => {
    const more = rest.split(/,\s|\s[-–]\s/u).filter((number) => number !== '');
    return `${first} (${more.join(', ')})`;
  });
}

/** An amount that a table of the sizes gives is that of the yarn which has none. */
export function withAmounts(yarns: readonly Yarn[], sizes: readonly Size[]): Yarn[] {
  const isAmount = ({ name }: Yarn) =>
    /^[\d\s(),.–-]+(?:m|met(?:re|er)s|yds?|yards?|balls?|skeins?|hanks?|g|grams)?$/iu.test(name);
  const alone = yarns.filter(isAmount);
  const named = yarns.filter((yarn) => !isAmount(yarn));
  const open = named.filter(({ metres }) => Object.keys(metres).length === 0);
  const isLength = ({ name }: Yarn) => /(?:m|met(?:re|er)s|yds?|yards?)$/iu.test(name);
  const amount = alone.find(isLength) ?? alone[0];
  const [yarn] = open;
  if (amount === undefined || yarn === undefined || open.length > 1) return [...yarns];
  // Balls are a length by the ball of the yarn that they are of.
  const metres = metresIn(amount.name, sizes, yarn.ballMetres, yarn.ballGrams)?.metres ?? amount.metres;
  if (Object.keys(metres).length === 0) return [...yarns];
  // Balls beside the metres are told again by them, where they are as many.
  const tellsSame = (other: Yarn): boolean => {
    const balls = /(?:balls?|skeins?|hanks?)$/iu.test(other.name)
      ? numbersIn(other.name)[0]?.values
      : undefined;
    const per = yarn.ballMetres;
    if (balls === undefined || per === null) return false;
    return sizes.every(
      ({ id }, i) => Math.ceil((metres[id] ?? 0) / per) === balls[balls.length === 1 ? 0 : i],
    );
  };
  if (!alone.every((other) => other === amount || tellsSame(other))) return [...yarns];
  return named.map((each) => (each === yarn ? { ...yarn, metres } : each));
}

/** "DK cotton, 50 g = 125 m", then its colours each on a line: what was said of all is said of each. */
export function addYarns(yarns: Yarn[], more: readonly Yarn[]): void {
  const head = yarns.at(-1);
  const isHead = head !== undefined && head.key === null && Object.keys(head.metres).length === 0;
  const [first] = more;
  const isColour = first !== undefined && first.key !== null && !/[:=]|\d\s?g\b/u.test(first.name);
  if (isHead && isColour) {
    yarns.pop();
    yarns.push(...more.map((yarn) => ({ ...yarn, name: `${head.name}, ${yarn.name}`.slice(0, 200) })));
    return;
  }
  // "Grey (G)" behind "Cuddle Cotton, White": a further colour of the same yarn.
  const shared =
    head?.key == null ? '' : (/^(.*\p{L}.*), \p{Lu}[\p{L}’' -]{1,24}$/u.exec(head.name)?.[1] ?? '');
  const isBare = first !== undefined && first.key !== null && /^\p{Lu}[\p{L}’' -]{1,24}$/u.test(first.name);
  yarns.push(
    ...(isBare && shared !== ''
      ? more.map((yarn) => ({ ...yarn, name: `${shared}, ${yarn.name}`.slice(0, 200) }))
      : more),
  );
}
