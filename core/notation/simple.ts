/**
 * Reads what stands for itself in a row: turning, joining, fastening off, yarn and colour, markers, loops,
 * stitches left unworked; and knows the words that change nothing.
 */
import type { Cursor } from './cursor.ts';
import { anyStitch, readNoun } from './nouns.ts';
import { readAmount } from './numbers.ts';
import { readBarePlace, readPlace } from './places.ts';
import type { Amount, Item, Noun, Place, StitchRef } from './tree.ts';
import { readStitch } from './words.ts';
import { atRowEnd } from './work.ts';

function readTurn(c: Cursor): Item[] | null {
  const start = c.at;
  if (
    c.eatAny([
      'do not turn work',
      'do not turn',
      "don't turn",
      'do not turn your work',
      'without turning',
      'no turn',
      'never turn',
      'not turning',
      'dnt',
    ])
  ) {
    return [{ type: 'turn', not: true, ...c.span(start) }];
  }
  if (c.isAny(['turning ch', 'turn ch', 'turn each', 'turn back'])) return null;
  if (c.eatAny(['turn the work', 'turn your work', 'turn work', 'turned', 'turning', 'turn'])) {
    c.eatAny([
      'around',
      'over',
      'the piece',
      'work',
      'the work',
      'now',
      'back on ch',
      'back on the ch',
      'after ch',
      'after the ch',
      'at end of row',
      'at the end of row',
      'at end',
      'piece',
      'clockwise',
      'to ws',
      'to rs',
      'every row',
    ]);
    return [{ type: 'turn', not: false, ...c.span(start) }];
  }
  return null;
}

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
function readColourName(c: Cursor): string | null {
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
    if (said && (!token || token.kind === 'sign' || c.isAny(['in', 'with', 'to']))) {
      return said.includes('color') && said !== 'color' ? said : null;
    }
    if (token?.kind === 'number' && said) {
      c.at++;
      return token.text;
    }
    if (token?.kind !== 'word') return null;
    const short = /^(?:[A-Z]|MC|CC|M|C)$/u.test(token.text) || /^(?:mc|cc)$/iu.test(token.text);
    if (!short && !said) return null;
    c.at++;
    const number = c.peek();
    if (short && number?.kind === 'number' && !number.gap) c.at++;
    return c.words(c.span(start));
  });
}

/** "A:" before the stitches of a colour. */
function readColourPrefix(c: Cursor): Item[] | null {
  const token = c.peek();
  if (!token || !/^(?:[A-Z]|MC|CC)$/u.test(token.text) || c.word(1) !== ':') return null;
  const start = c.at;
  c.at += 2;
  return [{ type: 'colour', name: token.text, ...c.span(start) }];
}

/** "with B", "change to A in last yo", "in MC": a colour from here on. */
function readColour(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    const change = c.eatAny([
      'change to',
      'changing to',
      'switch to',
      'switching to',
      'change color to',
      'change yarn to',
      'changing color to',
      'change',
      'drop',
    ]);
    if (!change && !c.eatAny(['with', 'using', 'in'])) return null;
    c.eatAny(['to']);
    let name = readColourName(c);
    if (!name && change && change !== 'drop' && change !== 'change') {
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
      c.attempt(() =>
        c.eatAny(['of']) && (c.eatAny(['last', 'this', 'the', 'prev']), readNoun(c)) ? true : null,
      );
      return true;
    });
    return [{ type: 'colour', name, ...c.span(start) }];
  });
}

/** The closing stitch and place behind "join": "with sl st in first sc", "to top of beg ch-3". */
function readJoinHow(c: Cursor): { stitch: StitchRef | null; place: Place | null } {
  const stitch = c.attempt(() => {
    c.eatAny(['with', 'by', 'using']);
    c.eatAny(['working']);
    c.eatAny(['a', 'an', '#']);
    return readStitch(c);
  });
  c.eatAny(['the rnd', 'rnd', 'work']);
  const place = c.attempt(() => {
    const found = c.eat('to') ? readBarePlace(c) : readPlace(c);
    if (!found) return null;
    if (found.kind === 'evenly' || (found.kind === 'across' && found.from === c.tokens[c.at - 1]!.from))
      return null;
    return found;
  });
  c.eatAny([
    'to join',
    'to form a ring',
    'to form ring',
    'to close lp',
    'to close the lp',
    'to close rnd',
    'to close',
    'to complete rnd',
    'as before',
    'as usual',
  ]);
  const late = stitch
    ? null
    : c.attempt(() => {
        if (!c.eatAny(['with', 'using', 'by'])) return null;
        c.eatAny(['a', 'an', '#']);
        return readStitch(c);
      });
  return { stitch: stitch ?? late, place };
}

function readJoin(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    if (c.isAny(['inv join', 'needle join', 'seamless join'])) c.at++;
    if (
      c.eatAny([
        'do not join',
        "don't join",
        'without joining',
        'without join',
        'do not close',
        'no join',
        'not joining',
      ])
    ) {
      c.eatAny(['rnds', 'rnd', 'or turn']);
      const both = c.tokens[c.at - 1]!.word === 'turn';
      const join: Item = { type: 'join', not: true, stitch: null, place: null, ...c.span(start) };
      return both ? [join, { type: 'turn', not: true, ...c.span(start) }] : [join];
    }
    const attach = c.attempt(() => readAttach(c));
    if (attach) return attach;
    if (!c.eatAny(['join', 'close', 'joined'])) return null;
    if (c.tokens[start]!.word === 'close' && !c.isAny(['rnd', 'the rnd', 'with'])) return null;
    c.eatAny(['the rnd', 'rnd', 'work', 'as before', 'as usual', 'as established', 'in same way']);
    c.attempt(() => (c.eat('last') && c.eat('ch') && (c.eat('-'), readAmount(c, false)) ? true : null));
    const how = readJoinHow(c);
    c.eatAny(['as before', 'as usual']);
    if (
      how.stitch === null &&
      how.place === null &&
      !(c.done || c.peek()!.kind === 'sign' || c.isAny(['and', 'then', 'turn', 'but', 'ch', 'fasten']))
    )
      return null;
    return [{ type: 'join', not: false, ...how, ...c.span(start) }];
  });
}

/** "join new yarn with sl st in any sc", "attach B in same sp", "rejoin yarn to next st". */
function readAttach(c: Cursor): Item[] | null {
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
      ]) && (c.eat(','), c.isAny(['join', 'rejoin', 'attach']))
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
    const stitch = c.attempt(() => {
      if (!c.eatAny(['with', 'by'])) return null;
      c.eatAny(['a', 'an', '#']);
      return readStitch(c);
    });
    const place =
      c.attempt(() => {
        const found = c.eat('to') ? readBarePlace(c) : readPlace(c);
        return found && found.kind !== 'evenly' ? found : null;
      }) ?? c.attempt(() => (c.eat('to') ? readBarePlace(c) : null));
    const whole = c.span(start);
    if (!yarn) return [{ type: 'attach', stitch, place, ...whole }];
    return [
      { type: 'colour', name: yarn, from: whole.from, to: colour.to },
      { type: 'attach', stitch, place, from: colour.to, to: whole.to },
    ];
  });
}

function readFastenOff(c: Cursor): Item[] | null {
  const start = c.at;
  if (c.isAny(['do not fasten', "don't fasten", 'do not cut', "don't cut", 'do not break', 'do not end']))
    return null;
  if (
    c.eatAny([
      'fasten off',
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

/** "leave rem sts unworked", "leaving last 4 sts unworked", "rem sts unworked". */
function readUnworked(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    const leave = c.eatAny(['leave', 'leave the', 'leave all']);
    c.eat('the');
    const rem = c.eatAny(['rem', 'last', 'other', 'next']);
    if (!leave && !rem) return null;
    const amount: Amount | null = readAmount(c);
    const noun: Noun = readNoun(c) ?? anyStitch(c);
    c.eatAny(['of row', 'of rnd', 'of the row', 'on row', 'rem', 'are', 'is']);
    const waits = c.attempt(() => {
      // "leaving remaining 25 sts for second side", "leave rem sts."
      if (leave && (c.done || c.peek()!.kind === 'sign')) return true;
      if (!c.eat('for')) return null;
      while (c.peek()?.kind === 'word' && !c.isAny(['turn', 'and', 'then'])) c.at++;
      return true;
    });
    if (
      !waits &&
      !c.eatAny([
        'unworked',
        'unused',
        'free',
        'un - worked',
        'not worked',
        'for now',
        'for neck',
        'for sleeve',
        'for sleeves',
        'for armhole',
      ])
    )
      return null;
    return [{ type: 'unworked', amount, noun, ...c.span(start) }];
  });
}

function readMarker(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    let action: 'place' | 'move' | 'remove' | 'work-to' | null = null;
    if (
      c.eatAny([
        'place st marker',
        'place a marker',
        'place marker',
        'place markers',
        'place st markers',
        'place m',
        'pm',
        'put a marker',
        'put marker',
        'add marker',
        'add a marker',
        'insert marker',
        'replace marker',
        'attach marker',
        'place the marker',
      ])
    )
      action = 'place';
    else if (
      c.eatAny([
        'move st marker up',
        'move st marker',
        'move marker up',
        'move marker',
        'move markers up',
        'move markers',
        'move the marker',
        'slip marker',
        'sl m',
        'sm',
        'mm',
        'carry marker up',
        'move pm up',
        'moving marker up',
        'moving marker',
      ])
    )
      action = 'move';
    else if (c.eatAny(['remove marker', 'remove the marker', 'remove markers', 'rm', 'remove st marker']))
      action = 'remove';
    else if (c.eatAny(['work to marker', 'work in patt to marker', 'cont to marker', 'work even to marker']))
      action = 'work-to';
    else if (
      c.is('mark') &&
      !c.isAny([
        'mark this row',
        'mark this side',
        'mark this rnd',
        'mark row',
        'mark rs',
        'mark ws',
        'mark as',
      ]) &&
      c.isAny(['this', 'last', 'first', 'the', 'center', 'next', 'each', 'st', 'same', 'that', '#th'], 1)
    ) {
      c.at++;
      action = 'place';
    }
    if (!action) return null;
    c.eatAny(['up']);
    c.eatAny(['to']);
    const place = c.attempt(() => {
      c.eatAny(['in', 'on', 'at', 'to', 'through']);
      c.eatAny(['the', 'this', 'that']);
      const found = readPlace(c);
      if (found) return found.kind === 'evenly' || found.kind === 'across' ? null : found;
      return null;
    });
    if (!place) {
      c.attempt(() => {
        c.eatAny(['in', 'on', 'at', 'to', 'for']);
        c.eatAny(['the', 'this', 'that', 'beg', 'end', 'center']);
        c.eatAny(['of', 'just made']);
        c.eatAny(['the', 'new']);
        if (!readNoun(c) && !c.eatAny(['rnd', 'row', 'beg of rnd', 'beg', 'here', 'end', 'work']))
          return null;
        c.eatAny(['just made', 'made', 'of rnd', 'of row', 'of the rnd', 'up', 'as you work', 'each rnd']);
        return true;
      });
    }
    c.eatAny([
      'made',
      'just made',
      'to mark beg of rnd',
      'to mark beg',
      'for beg of rnd',
      'as you go',
      'up each rnd',
      'each rnd',
    ]);
    // "… and move it up as each rnd is completed": how it is kept changes nothing.
    c.attempt(() => {
      if (!c.eatAny(['as', 'to mark', 'for', 'so that', 'at end of', 'at the end of', 'every', 'with']))
        return null;
      while (c.peek() && c.peek()!.kind !== 'sign') c.at++;
      return true;
    });
    return [{ type: 'marker', action, place, ...c.span(start) }];
  });
}

/** "Sl st short ends together": a seam, which works nothing into the row. */
function readSeam(c: Cursor): Item[] | null {
  return c.attempt(() => {
    const start = c.at;
    if (!c.eatAny(['sl st', 'ss', 'sc', 'dc', 'sew', 'slip st', 'whipst'])) return null;
    for (let n = 0; n < 5; n++) {
      if (
        !c.eatAny([
          'short',
          'long',
          'the',
          'two',
          'both',
          'side',
          'sides',
          'row',
          'ends',
          'edges',
          'edge',
          'seam',
          'seams',
          '-',
        ])
      )
        break;
    }
    if (c.at - start < 3 || !c.eat('tog')) return null;
    c.eatAny(['to form a ring', 'to form ring', 'to form a tube', 'to join']);
    return [{ type: 'aside', ...c.span(start) }];
  });
}

/** Turn, join, fasten off, attach, colour, marker, unworked: the first that stands here. */
export function readSimple(c: Cursor): Item[] | null {
  return (
    readSeam(c) ??
    readTurn(c) ??
    readUnworked(c) ??
    readFastenOff(c) ??
    readAttach(c) ??
    readJoin(c) ??
    readMarker(c) ??
    readColourPrefix(c) ??
    readColour(c)
  );
}

const ASIDES = [
  'instead',
  'complete',
  'and complete',
  'flatten',
  'beg at',
  'start at',
  'working at',
  'working through',
  'through both',
  'turn back',
  'at marker',
  'pull',
  'tighten',
  'draw up',
  'draw ring',
  'do not',
  "don't",
  'weave',
  'darn in',
  'sew',
  'stuff',
  'note',
  'notes',
  'see',
  'loosely',
  'tightly',
  'firmly',
  'neatly',
  'rs',
  'ws',
  'with rs',
  'with ws',
  'with right',
  'with wrong',
  'right side',
  'wrong side',
  'mark',
  'this',
  'these',
  'that',
  'here',
  'now',
  'you',
  'your',
  'being careful',
  'be careful',
  'be sure',
  'be sure to',
  'taking care',
  'take care',
  'making sure',
  'make sure',
  'remember',
  'keeping',
  'keep',
  'carry',
  'carrying',
  'cut',
  'drop',
  'hold',
  'holding',
  'hide',
  'adjust',
  'check',
  'rotate',
  'leave a',
  'leave tail',
  'leave long',
  'working over',
  'work over',
  'crochet over',
  'enclosing',
  'working behind',
  'working in front',
  'in front of',
  'behind',
  'working around',
  'working on',
  'working along',
  'working loosely',
  'working across',
  'working from',
  'working flat',
  'working with',
  'working down',
  'working up',
  'worked',
  'work in rnds',
  'work in rows',
  'work in a spiral',
  'work in cont',
  'work in spiral',
  'work loosely',
  'with smaller',
  'with larger',
  'with a',
  'with yarn',
  'with hook',
  'with two',
  'with # strands',
  'using #',
  'using a',
  'using smaller',
  'using larger',
  'with #',
  'change to #',
  'change to larger',
  'change to smaller',
  'first',
  'corner',
  'corners',
  'throughout',
  'as shown',
  'as follows',
  'as foll',
  'as before',
  'as established',
  'foll',
  'facing',
  'row counts',
  'block',
  'pin',
  'wash',
  'fold',
  'insert',
  'secure',
  'try',
  'continue',
  'cont with',
  'for',
  'if',
  'when',
  'each row',
  'all rows',
  'rnds are',
  'rows are',
  'at the same time',
  'at same time',
  'not too tightly',
  'yarn',
  'made',
  'omit',
  'end here',
  'stop here',
  'edges',
  'set aside',
  'forming',
  'to form',
  'shaping',
  'piece',
  'neck',
  'armhole',
  'body',
  'sleeve',
  'work is',
  'unless',
  'counting',
  'ensuring',
  'ensure',
  'break',
  'from now on',
  'rem',
  'in patt',
  'in pattern',
  'across',
  'loose',
  'reversing',
  'rev shaping',
];

/** True where words begin that change nothing in the work. */
export function isAside(c: Cursor): boolean {
  if (c.isAny(['for #', 'across', 'rem']) && !c.isAny(['for # mm']) && !atRowEnd(c))
    return c.isAny(['for # mm']);
  return c.isAny(ASIDES);
}
