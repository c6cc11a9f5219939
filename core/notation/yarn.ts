/**
 * Reads what is said of yarn: colours, joining new yarn, fastening off.
 */
import { eatWhen } from './closing.ts';
import { type Cursor, OPENING } from './cursor.ts';
import { readNoun } from './nouns.ts';
import { readAtOpening } from './openings.ts';
import { readPart } from './place-tails.ts';
import { readBarePlace, readPlace } from './places.ts';
import type { Item, StitchRef } from './tree.ts';
import { readStitch } from './words.ts';

const YARN = [
  'new yarn',
  'yarn',
  'new color',
  'contrasting color',
  'contrast color',
  'main color',
  'next color',
  'second color',
  'thread',
  'wool',
  'cotton',
  'a new strand',
  'a new ball',
];

/** Letters or a word for a yarn: "B", "MC", "CC2", "color B", "white"; null when no colour stands here. */
export function readColourName(c: Cursor): string | null {
  return c.attempt(() => {
    c.eatAny(['the']);
    const said = c.eatAny([
      'yarn color',
      'yarn',
      'color',
      'main color',
      'contrasting color',
      'contrast color',
      'new color',
      'cc color',
    ]);
    const start = c.at;
    const token = c.peek();
    if (
      said &&
      (!token || token.kind === 'sign' || c.isAny(['in', 'with', 'to', 'at', 'on', 'around', 'by', 'and']))
    ) {
      return said.includes('color') && said !== 'color' ? said : null;
    }
    if (token?.kind === 'number' && said) {
      c.at++;
      return token.text;
    }
    if (token?.kind !== 'word') return null;
    const short = /^(?:[A-Z]|MC|CC|M|C)$/u.test(token.text) || /^(?:mc|cc)$/iu.test(token.text);
    const shade = !short && !said ? readShade(c) : null;
    if (shade !== null) return shade;
    if (!short && !said) return null;
    c.at++;
    const number = c.peek();
    if (short && number?.kind === 'number' && !number.gap) c.at++;
    return c.words(c.span(start));
  });
}

const TONES = ['light', 'dark', 'pale', 'bright', 'deep', 'off', 'soft', 'hot', 'navy', 'sky'];
const SHADES = new Set(
  (
    'white black grey gray red pink orange yellow green blue purple violet lilac lavender brown beige cream ivory ' +
    'tan gold golden silver turquoise teal aqua mint olive khaki mustard maroon burgundy crimson scarlet rose coral ' +
    'peach apricot salmon fuchsia magenta plum mauve indigo navy rust copper bronze charcoal natural ecru oatmeal ' +
    'camel chocolate caramel sand taupe lime emerald jade'
  ).split(' '),
);

/** "yellow", "dark green": a yarn named by its colour. */
function readShade(c: Cursor): string | null {
  return c.attempt(() => {
    const start = c.at;
    c.eatAny(TONES);
    if (!SHADES.has(c.word())) {
      if (c.at === start || c.tokens[start]!.word !== 'navy') return null;
    } else c.at++;
    return c.words(c.span(start));
  });
}

/** "A:", "Dark green:" before the stitches of a colour. */
export function readColourPrefix(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    const token = c.peek();
    const letter = token !== undefined && /^(?:[A-Z]|MC|CC)$/u.test(token.text);
    if (letter) c.at++;
    const name = letter ? token.text : readShade(c);
    // "Rnd 1: MC, ch 4, …"
    const first = [':', undefined].includes(c.tokens[start - 1]?.word);
    const ends = c.eat(':') || (first && c.word() === ',');
    return name !== null && ends ? [{ type: 'colour', name, ...c.span(start) }] : null;
  });
}

/** "3 sc in A, 14 sc B", "next 4 sts (white),": the colour of the stitches that stand right before it. */
export function readColourBehind(c: Cursor, before: readonly Item[]): Item[] | null {
  const last = before.at(-1);
  if (last?.type !== 'work' && last?.type !== 'group') return null;
  if (last.to !== c.tokens[c.at - 1]?.to) return null;
  return c.attempt(() => {
    const start = c.at;
    const close = c.word() in OPENING ? c.partner[start]! : -1;
    if (close >= 0) c.at++;
    else c.eatAny(['with', 'using', 'in']);
    const name = readColourName(c);
    if (!name) return null;
    c.eatAny(['color', 'yarn']);
    if (close >= 0) {
      if (c.at !== close) return null;
      c.at++;
    }
    const next = c.peek();
    const ends = !next || next.kind === 'sign' || c.isAny(['and', 'then', 'turn', 'to end', 'across']);
    return ends ? [{ type: 'colour', name, behind: true, ...c.span(start) }] : null;
  });
}

/** Verbs behind which only a colour's own name is one: "pick up a loop" is none. */
const KNOWN_YARN = ['drop', 'change', 'pick up', 'picking up', 'return to', 'go back to'];

/** "with B", "change to A in last yo", "in MC": a colour from here on. */
export function readColour(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    const change = c.eatAny([
      'change to',
      'changing to',
      'switch to',
      'switching to',
      'change back to',
      'changing back to',
      'switch back to',
      'switching back to',
      'change color to',
      'change yarn to',
      'changing color to',
      'change',
      'drop',
      'pick up',
      'picking up',
      'return to',
      'go back to',
    ]);
    if (!change && !c.eatAny(['with', 'using', 'in'])) return null;
    c.eatAny(['to']);
    let name = readColourName(c);
    if (!name && change && !KNOWN_YARN.includes(change)) {
      const at = c.at;
      let words = 0;
      while (words < 3 && c.peek()?.kind === 'word' && !c.isAny(['in', 'at', 'on', 'and', 'for', 'with'])) {
        c.at++;
        words++;
      }
      if (words > 0) name = c.words(c.span(at));
    }
    if (!name && (change === 'change' || change === 'change to')) {
      if (!c.eatAny(['color', 'colors', 'yarn'])) return null;
      name = '';
    }
    if (name === null) return null;
    c.eatAny(['color', 'yarn']);
    eatHook(c);
    if (change === 'drop')
      c.attempt(() => {
        if (!c.eatAny(['to', 'at', 'behind', 'on'])) return null;
        c.eat('the');
        if (!c.eatAny(['front', 'back', 'rs', 'ws', 'right side', 'wrong side', 'work'])) return null;
        c.eatAny(['of work', 'of the work', 'side']);
        return true;
      });
    c.attempt(() => {
      if (!c.eatAny(['in', 'on', 'at', 'with', 'during'])) return null;
      c.eatAny(['the']);
      c.eatAny(['last', 'final']);
      if (
        !c.eatAny([
          'yo',
          'yrh',
          'yoh',
          'yarn over',
          'st',
          'pull through',
          'step',
          'lp',
          'sc',
          'dc',
          'tr',
          'hdc',
          'htr',
        ])
      )
        return null;
      c.attempt(() => {
        if (!c.eat('of')) return null;
        c.pass('last', 'this', 'the', 'prev');
        return c.eatAny(['rnd', 'row']) || readNoun(c) ? true : null;
      });
      return true;
    });
    return [{ type: 'colour', name, ...c.span(start) }];
  });
}

/** "with MC and a 5 mm hook", "with A, larger hook": the tool beside the yarn. */
function eatHook(c: Cursor): void {
  c.attempt(() => {
    if (!c.eatAny([', and', 'and', ',', 'and with', 'on'])) return null;
    for (let words = 0; words < 8 && c.peek() && (c.peek()!.kind !== 'sign' || c.word() === '/'); words++) {
      if (c.eatAny(['hook', 'hooks'])) return true;
      // "…, dc in 4th ch from hook" is work.
      if (c.isAny(['in', 'from', 'ch', 'each', 'next'])) return null;
      c.at++;
    }
    return null;
  });
}

const EDGES: ReadonlySet<string> = new Set(
  'the a any one either of right left hand lower upper top bottom front back center outer inner first last long short straight diagonal curved end start beg side neck edge seam body piece'.split(
    ' ',
  ),
);

/** "at lower corner", "to top of left front edge": a spot of the piece, from which the row's own words go on. */
function eatEdge(c: Cursor): void {
  c.attempt(() => {
    if (!c.eatAny(['at', 'in', 'to', 'on'])) return null;
    let named = false;
    for (let words = 0; words < 7 && c.peek()?.kind === 'word'; words++) {
      if (
        c.eatAny([
          'center back',
          'center front',
          'back of neck',
          'back neck',
          'corner',
          'edge',
          'side',
          'seam',
          'neck',
          'shoulder',
          'underarm',
          'hem',
          'cuff',
        ])
      ) {
        named = true;
        if (!['corner', 'edge', 'seam', 'of', 'side'].includes(c.word())) return true;
      } else if (c.eatAny(['right - hand', 'left - hand'])) continue;
      else if (EDGES.has(c.word())) c.at++;
      else break;
    }
    // "at lower corner of right front": the piece's own name may come last.
    return named ? true : null;
  });
}

const FOUNDATION =
  /\b(?:foundation|base|starting|beginning|beg) (?:chain|ch|edge|row)\b|\b(?:other|opposite|opp) side\b/iu;

/** "join new yarn with sl st in any sc", "attach B in same sp", "rejoin yarn to next st". */
export function readAttach(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    c.attempt(() =>
      c.eatAny([
        'with rs facing',
        'with ws facing',
        'with right side facing',
        'with wrong side facing',
        'rs facing',
        'ws facing',
      ]) && c.pass(',').isAny(['join', 'rejoin', 'attach'])
        ? true
        : null,
    );
    const verb = c.eatAny(['join', 'rejoin', 'attach', 'reattach', 'joining']);
    if (!verb) return null;
    const colourAt = c.at;
    const said = c.attempt(() => readColourName(c));
    const noun = said === null && c.eatAny(YARN) !== null;
    const yarn = said ?? (noun ? c.attempt(() => readColourName(c)) : null);
    if (said === null && !noun && verb !== 'attach' && verb !== 'rejoin' && verb !== 'reattach') return null;
    const colour = c.span(colourAt);
    const before = readAttachStitch(c);
    const place =
      c.attempt(() => {
        const found = c.eat('to') ? readBarePlace(c) : readPlace(c);
        return found && found.kind !== 'evenly' ? found : null;
      }) ?? c.attempt(() => (c.eat('to') ? readBarePlace(c) : null));
    const opening =
      place === null
        ? readAtOpening(c)
        : (place.opening ?? (/\bunderarm\b/iu.test(c.words(place)) ? ('any' as const) : null));
    if (place === null && opening === null) eatEdge(c);
    // "… in any ch-2 sp with a standing dc"
    const stitch = before ?? readAttachStitch(c);
    const whole = c.span(start);
    // "… to first ch of foundation chain": the row goes along that edge, not over the last row.
    const edge: Item[] =
      place !== null && FOUNDATION.test(c.words(place))
        ? [{ type: 'other-side', from: whole.from, to: whole.from }]
        : [];
    const at = opening === null ? {} : { opening };
    if (!yarn) return [...edge, { type: 'attach', stitch, place, ...at, ...whole }];
    return [
      ...edge,
      { type: 'colour', name: yarn, from: whole.from, to: colour.to },
      { type: 'attach', stitch, place, ...at, from: colour.to, to: whole.to },
    ];
  });
}

/** "with a sl st", "with standing dc": the stitch that joins the yarn. */
function readAttachStitch(c: Cursor): StitchRef | null {
  return c.attempt(() => {
    if (!c.eatAny(['with', 'by', 'using'])) return null;
    c.eatAny(['a', 'an', '#']);
    return readStitch(c);
  });
}

const FINISHING = [
  'close',
  'sew',
  'weave',
  'hide',
  'pull',
  'thread',
  'secure',
  'leave',
  'stuff',
  'draw',
  'gather',
];

export function readFastenOff(c: Cursor): Item[] | null {
  const start = c.at;
  if (c.isAny(['do not fasten', "don't fasten", 'do not cut', "don't cut", 'do not break', 'do not end']))
    return null;
  if (
    c.eatAny([
      'fasten off',
      'inv finish',
      'inv fasten off',
      'fasten off invisibly',
      'finish off',
      'end off',
      'bind off',
      'cast off',
      'break off',
      'fo',
      'f / o',
      'cut yarn',
      'cut the yarn',
      'break yarn',
      'cut off yarn',
      'break off yarn',
      'tie off',
      'cut',
      'fasten',
    ])
  ) {
    c.eatAny(['invisibly', 'securely', 'all colors', 'both colors', 'yarn', 'and fasten off']);
    c.attempt(() => (readColourName(c) !== null ? true : null));
    c.attempt(() =>
      c.eatAny(['and']) && c.eatAny(['fasten off', 'break yarn', 'cut yarn', 'finish off']) ? true : null,
    );
    c.attempt(() => {
      if (!c.eatAny(['and', ', ', ','])) return null;
      return c.eatAny([
        'weave in ends',
        'weave in all ends',
        'weave in end',
        'darn in ends',
        'sew in ends',
        'hide ends',
      ])
        ? true
        : null;
    });
    c.attempt(() => {
      if (!c.eatAny([', leave', 'leave', 'and leave'])) return null;
      c.eatAny(['a']);
      c.eatAny(['very long', 'long', 'short']);
      if (!c.eatAny(['tail', 'end', 'yarn tail'])) return null;
      c.attempt(() =>
        c.eatAny(['for']) && (c.eatAny(['sewing', 'seaming', 'joining']) || true) ? true : null,
      );
      return true;
    });
    // "… and close the hole", "… and sew the opening shut": what is done with the yarn's end.
    c.attempt(() => {
      if (!c.eat('and') || !c.isAny(FINISHING)) return null;
      while (c.peek() && (c.peek()!.kind !== 'sign' || c.word() === '-')) c.at++;
      return true;
    });
    eatWhen(c);
    // "Fasten off the first leg", "cut yarn on first leg only": of which part.
    if (c.attempt(() => readPart(c.pass('on', 'for', 'of'))) !== null) c.eat('only');
    const end = c.span(start);
    const join = c.attempt<Item>(() => {
      // "… with an invisible join to first sc": the last stitch of the round is closed on to its first.
      const at = c.at;
      c.eat(',');
      c.eatAny(['and', 'with', 'using']);
      c.eatAny(['a', 'an']);
      if (!c.eatAny(['inv join', 'needle join', 'invisibly join', 'seamless join'])) return null;
      const place = c.attempt(() => (c.eat('to') ? readBarePlace(c) : readPlace(c)));
      return { type: 'join', not: false, stitch: null, place, ...c.span(at) };
    });
    return join ? [{ type: 'fasten-off', ...end }, join] : [{ type: 'fasten-off', ...end }];
  }
  return null;
}
