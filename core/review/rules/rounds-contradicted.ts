/** A note says how the work goes (rows, joined rounds, a spiral), and no piece is worked so. */
import { quote, text } from '../../findings/phrases.ts';
import type { Study } from '../../study/index.ts';
import { workedRows } from '../../study/worked.ts';
import { found, type Rule } from '../rule.ts';
import { looking } from '../scan.ts';
import { tellsHow } from '../texts.ts';

type Form = 'flat' | 'joined' | 'spiral';

interface Claim {
  readonly form: Form;
  readonly from: number;
  readonly to: number;
}

const CLAIMS: readonly (readonly [Form, RegExp])[] = [
  [
    'spiral',
    /\b(?:in (?:a )?(?:continuous )?spirals?|(?:continuous|spiral|unjoined) (?:rounds|rnds)|do not join (?:the )?(?:rounds|rnds)|without joining)\b/giu,
  ],
  [
    'joined',
    /\b(?:joined (?:rounds|rnds)|(?:each|every) (?:round|rnd) is joined|join (?:each|every) (?:round|rnd))\b/giu,
  ],
  [
    'flat',
    /\b(?:(?:worked|crocheted|made) (?:[^.;]{0,30} )?(?:flat|back and forth|in rows)|turn(?:ing)? (?:after|at the end of) (?:each|every) row)\b/giu,
  ],
];
const DENIED = /\b(?:no|not|never|neither|instead of|rather than|without)\s+(?:\w+\s+){0,3}$/iu;

/** Letters before a claim in which it may be denied: no more are looked at, however long the text. */
const NEAR = 80;

const claims = looking((text, kind): readonly Claim[] =>
  kind === 'row'
    ? []
    : CLAIMS.flatMap(([form, pattern]) =>
        [...text.matchAll(pattern)].flatMap((match) =>
          DENIED.test(text.slice(Math.max(0, match.index - NEAR), match.index)) && form !== 'spiral'
            ? []
            : [{ form, from: match.index, to: match.index + match[0].length }],
        ),
      ),
);

/** Part of the rows of a piece that has to be worked in a way for the piece to be: one round alone only ends it. */
const ENOUGH = 0.2;

/** How the pieces are really worked. */
function formsOf({ pieces }: Study): ReadonlySet<Form> {
  const forms = new Set<Form>();
  for (const own of pieces) {
    const { fabrics, piece } = own;
    const size = fabrics.findIndex((fabric) => fabric !== null);
    const rows = size < 0 ? [] : (workedRows(own, size) ?? []).filter((row) => !row.onlyFoundation);
    const made = new Map<Form, number>();
    for (const { fabric } of rows)
      if (fabric.form !== 'chain') made.set(fabric.form, (made.get(fabric.form) ?? 0) + 1);
    for (const [form, times] of made) if (times >= ENOUGH * rows.length) forms.add(form);
    if (piece.blocks.some((block) => block.type === 'row' && block.form === 'row')) forms.add('flat');
  }
  return forms;
}

const CALLED: Readonly<Record<Form, string>> = {
  flat: 'in rows',
  joined: 'in rounds that are joined',
  spiral: 'in a spiral',
};

export const roundsContradicted: Rule = {
  code: 'rounds-contradicted',
  severity: 'warning',
  title: 'A note says that the work goes otherwise than the rows do',
  reason:
    'Rows, joined rounds and a spiral give different edges and counts. A maker who believes the note works against the rows.',
  message: (facts, voice) => {
    const { data } = facts[0]!.fact;
    return `${voice.words.trim() === '' ? 'the note' : quote(voice.words)} says that it is worked ${CALLED[text(data, 'said') as Form] ?? ''}, but the rows work ${text(data, 'really')}; change the note, or the rows`;
  },
  example: null,
  sample: { said: 'spiral', really: 'in rounds that are joined' },
  late: true,
  check: (study) => {
    const said = claims(study.pattern);
    if (said.length === 0) return [];
    const forms = formsOf(study);
    if (forms.size === 0) return [];
    const isHow = tellsHow(study.pattern);
    const really = [...forms].map((form) => CALLED[form]).join(' and ');
    return said.flatMap(({ text: { node, text }, hits }) =>
      isHow(node) || node === 'cover:construction' || node === 'cover:description'
        ? hits.flatMap(({ form, from, to }) =>
            forms.has(form)
              ? []
              : [found(roundsContradicted, study, { node, text, from, to }, { said: form, really })],
          )
        : [],
    );
  },
};
