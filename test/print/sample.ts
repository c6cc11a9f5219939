/**
 * An invented pattern as a finished booklet, for the tests and for looking at: a boat-necked top in ten
 * sizes, with tables, rows, cautions, definitions and a picture that is computed here. The numbers are made
 * up to look right on paper; no test of the trade rests on them.
 */
import { deflateSync } from 'node:zlib';
import {
  type Block,
  type Booklet,
  bold,
  caution,
  drawing,
  entries,
  entry,
  figure,
  firm,
  heading,
  holdNumbers,
  holdPhrases,
  italic,
  list,
  numbers,
  paragraph,
  part,
  picture,
  plain,
  row,
  sizeKey,
  space,
  type Text,
  table,
  together,
  words,
} from '../../core/print/content.ts';

export const SIZES = ['XS', 'S', 'M', 'L', 'XL', '2X', '3X', '4X', '5X', '6X'] as const;

/** One number for each size, as the trade writes them. */
export function sized(first: number, step: number, unit = ''): string {
  const all = SIZES.map((_, i) => String(first + i * step));
  return `${all[0]} (${all.slice(1).join(', ')})${unit === '' ? '' : ` ${unit}`}`;
}

const TERMS = [
  'sl st',
  'ch 1',
  'ch 2',
  'ch 3',
  'next st',
  'first st',
  'last st',
  'each st',
  'next ch-2 sp',
  'ch-2 sp',
  'front loop',
  'back loop',
  'right side',
  'wrong side',
  'stitch marker',
];
const say = (text: string): string => holdNumbers(holdPhrases(text, TERMS));
const count = (first: number, step: number): Text => [
  firm('('),
  numbers(`${sized(first, step)} sts`),
  firm(')'),
];

function body(): Block[] {
  const rows: Block[] = [
    heading(2, 'Back panel'),
    paragraph(
      say(
        'Worked from the lower edge up in one piece. The turning chain does not count as a stitch; the first stitch goes into the last stitch of the row before.',
      ),
    ),
    row('Foundation', [say('Ch '), numbers(sized(67, 6)), say('.')], {}),
    row('Row 1', [say('Hdc in 3rd ch from hook and in each ch across, turn.')], {
      side: 'RS',
      count: count(65, 6),
    }),
    row('Row 2', [say('Ch 2, hdc in each st across, turn.')], { side: 'WS', count: count(65, 6) }),
    row(
      'Row 3',
      [
        say(
          'Ch 2, hdc in first st, *ch 2, skip next 2 sts, (dc, ch 1, dc) in next st, ch 2, skip next 2 sts, hdc in next st; rep from * to last ',
        ),
        numbers('4 (4, 4, 2, 2, 2, 6, 6, 4, 4)'),
        say(' sts, hdc in each st to end, turn.'),
      ],
      { side: 'RS', count: count(65, 6) },
    ),
    row(
      'Row 4',
      [say('Ch 2, hdc in each st and work 2 hdc in each ch-2 sp across, skipping every ch-1 sp, turn.')],
      {
        side: 'WS',
        count: count(65, 6),
      },
    ),
    row('Rows 5–48', [say('Rep Rows 3 and 4.')], { count: null }),
    row('Rows 49–56', [say('Rep Rows 3 and 4 four more times.')], {
      only: 'Sizes 3X, 4X, 5X and 6X only',
      count: null,
    }),
    paragraph([
      'The panel measures ',
      numbers(sized(38, 1), 'bold'),
      ' cm (about 15 (15¼, 15¾, 16, 16½, 17, 17¼, 17¾, 18, 18½) in) from the lower edge. ',
      say('Place a stitch marker in the first st and the last st of this row: the armholes begin here.'),
    ]),
    heading(3, 'Armholes'),
  ];
  for (let i = 0; i < 12; i++) {
    rows.push(
      row(
        `Row ${57 + i}`,
        i % 2 === 0
          ? [
              say('Sl st in first '),
              numbers(sized(2, 1)),
              say(
                ' sts, ch 2, hdc2tog, [hdc in next 4 sts, 2 hdc in next st, ch 1, skip next st, (hdc, ch 1, hdc) in next st, ch 1, skip next st] to last ',
              ),
              numbers(sized(4, 1)),
              say(' sts, hdc2tog, leave the remaining sts unworked, turn.'),
            ]
          : say('Ch 2, hdc2tog, hdc in each st to last 2 sts, hdc2tog, turn.'),
        { side: i % 2 === 0 ? 'RS' : 'WS', count: count(63 - 2 * i, 6) },
      ),
    );
  }
  rows.push(
    paragraph([say('Fasten off, leaving a tail of '), numbers(sized(40, 2)), ' cm for the shoulder seam.']),
  );
  return rows;
}

const MEASURES: readonly (readonly [string, number, number])[] = [
  ['To fit chest', 76, 10],
  ['Finished chest', 86, 10],
  ['Length from shoulder', 54, 1],
  ['Armhole depth', 18, 1],
  ['Upper arm', 30, 2],
  ['Neck opening', 24, 1],
];

const inches = (cm: number): string => {
  const quarters = Math.round((cm / 2.54) * 4);
  return `${Math.floor(quarters / 4)}${['', '¼', '½', '¾'][quarters % 4]}`;
};

export function sample(): Booklet {
  return {
    meta: {
      title: 'Saltmarsh Top',
      author: 'Édith Kołodziej-Nuñez',
      language: 'en-US',
      subject: 'Crochet pattern for a boat-necked top in ten sizes',
      keywords: ['crochet', 'pattern', 'top', 'US terms'],
      date: '2026-04-18T00:00:00Z',
      termsNote: 'US terms',
      version: 'Version 1.2',
      sizeKey: 'Sizes XS (S, M, L, XL, 2X, 3X, 4X, 5X, 6X)',
    },
    cover: {
      subtitle: words('A boat-necked top in two panels'),
      byline: words('Édith Kołodziej-Nuñez'),
      image: picture('cover'),
      alt: 'A ribbed fabric in sand and grey-green, its stitches in slanting bands like reeds in wind.',
      summary: [
        words(
          'A quiet top with a wide neck, worked flat from the hem up in a mesh that drapes. The two panels are alike up to the armholes; the neckband is picked up at the end and worked in rounds.',
        ),
      ],
      glance: [
        entry('Level', 'Intermediate: shaping, picking up stitches, a two-row stitch pattern'),
        entry('Sizes', 'XS (S, M, L, XL, 2X, 3X, 4X, 5X, 6X)'),
        entry('To fit chest', [numbers(`${sized(76, 10)} cm`)]),
        entry('Terms', 'US terms throughout'),
      ],
    },
    parts: [
      part('Materials and sizes', [
        sizeKey('How to read sizes', [
          'Numbers are given for size XS, with the larger sizes in brackets: ',
          numbers('XS (S, M, L, XL, 2X, 3X, 4X, 5X, 6X)', 'bold'),
          '. Where there is one number, it holds for every size. It may help to mark your own size throughout before you begin.',
        ]),
        heading(2, 'Materials'),
        entries('facts', [
          [
            'Yarn',
            [
              bold('Light worsted, weight 4. '),
              say('60 % cotton, 40 % linen; 100 g = 180 m. '),
              numbers(sized(620, 70, 'm')),
              ' of one colour.',
            ],
          ],
          ['Hooks', say('5 mm (US H-8) for the body; 4.5 mm (US 7) for the neckband')],
          ['Notions', say('4 stitch markers, a yarn needle, 2 buttons of 15 mm')],
        ]),
        heading(2, 'Gauge'),
        paragraph([
          bold('15 hdc and 11 rows'),
          say(' = 10 × 10 cm (4 × 4 in) with the 5 mm hook, '),
          italic('after blocking'),
          '. Wash the swatch as you will wash the top: linen grows by 3–4 %.',
        ]),
        table({
          caption: 'Finished measurements, in cm (in)',
          corner: 'Size',
          heads: [...SIZES],
          rows: MEASURES.map(([name, first, step]) => [
            name,
            ...SIZES.map((_, i) => `${first + i * step} (${inches(first + i * step)})`),
          ]),
          note: 'Choose a size with 8–12 cm of ease at the chest. The sample is size M, worn with 10 cm of ease.',
          told: 'by-column',
        }),
        table({
          caption: 'Yarn for each size',
          corner: 'Size',
          heads: [...SIZES],
          rows: [
            ['Metres', ...SIZES.map((_, i) => String(620 + i * 70))],
            ['Balls of 100 g', ...SIZES.map((_, i) => String(Math.ceil((620 + i * 70) / 180)))],
          ],
          told: 'by-column',
        }),
        figure(
          drawing('schematic', 3.2),
          'Schematic: a panel with straight sides to the armhole, shallow stepped armholes and a straight neck edge. The measurements are in the table above.',
          'Front and back panel, alike up to the armholes',
          'column',
        ),
      ]),
      part('Before you begin', [
        heading(2, 'Abbreviations'),
        paragraph('This pattern is written in US terms.'),
        entries('terms', [
          ['ch', 'chain'],
          ['dc', 'double crochet'],
          ['dec', 'decrease'],
          ['FPdc', 'front post double crochet'],
          ['hdc', 'half double crochet'],
          ['hdc2tog', 'work 2 half double crochet together: a decrease of one stitch'],
          ['rep', 'repeat'],
          ['rnd', 'round'],
          ['RS, WS', 'right side, wrong side'],
          ['sl st', 'slip stitch'],
          ['sp', 'space'],
          ['st(s)', 'stitch(es)'],
        ]),
        heading(2, 'Special stitches'),
        entries('terms', [
          [
            'Reed stitch',
            say('(Dc, ch 1, dc) in the place given. The ch-1 sp is passed over in the next row.'),
          ],
          [
            'hdc2tog',
            say(
              'Yo, draw up a loop in next st, yo, draw up a loop in the st after, yo and draw through all 5 loops on the hook.',
            ),
          ],
        ]),
        heading(2, 'Notes'),
        list('bulleted', [
          say('The turning chain never counts as a stitch.'),
          'Count at the end of every row that gives a count; the numbers stand in brackets at its end.',
          say('A ch-2 sp holds 2 stitches of the next row, whatever the size.'),
        ]),
        caution('Caution: cords and small parts', [
          'Children’s sizes of this top must not have a drawstring at the neck, and buttons must be sewn on firmly enough to bear a pull.',
          'Keep finished buttons, and all tools and yarn ends, away from children under three years.',
        ]),
      ]),
      part('Instructions', body(), true),
      part('Finishing', [
        list('numbered', [
          say('Block both panels to the measurements, pin them out and let them dry.'),
          say(
            'Lay the panels with right sides together and join the shoulders over the outer sts with the long tails.',
          ),
          [
            say('With right side facing and the 4.5 mm hook, work '),
            numbers(sized(96, 4)),
            say(' sc evenly around the neck; join with a sl st in first st.'),
          ],
          'Weave in ends along a row of the same colour.',
        ]),
        together(heading(3, 'Care'), paragraph('Wash by hand at 30 °C, dry flat. Do not hang while wet.')),
        space('large'),
        paragraph(
          [
            '© 2026 Édith Kołodziej-Nuñez. ',
            plain(
              'You may sell what you make from this pattern; please do not copy the pattern itself. Questions are welcome at the address on your receipt.',
            ),
          ],
          'small',
        ),
      ]),
    ],
  };
}

/** A picture in bands of slanting stitches, 3 : 2 unless told otherwise, as PNG bytes. */
export function samplePicture(width = 900, height = 600): Uint8Array {
  const rowBytes = width * 3 + 1;
  const raw = new Uint8Array(rowBytes * height);
  const from = [214, 204, 184];
  const to = [104, 122, 112];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const band = Math.floor((y + 14 * Math.sin(x / 90)) / 26);
      const slant = Math.sin((x + (band % 2 === 0 ? y : -y) * 0.8) / 5.2);
      const light = 0.82 + 0.14 * slant - 0.1 * Math.abs(Math.sin((y / 26) * Math.PI));
      const blend = Math.min(
        1,
        Math.max(0, y / height + 0.12 * Math.sin(x / 130) + 0.08 * ((band * 7) % 5) - 0.16),
      );
      for (let c = 0; c < 3; c++) {
        raw[y * rowBytes + 1 + x * 3 + c] = Math.max(
          0,
          Math.min(255, (from[c]! * (1 - blend) + to[c]! * blend) * light),
        );
      }
    }
  }
  return png(width, height, raw);
}

function png(width: number, height: number, raw: Uint8Array): Uint8Array {
  const table = Array.from({ length: 256 }, (_, n) => {
    let c = n;
    for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
    return c >>> 0;
  });
  const crc = (bytes: Uint8Array): number => {
    let c = 0xffffffff;
    for (const byte of bytes) c = table[(c ^ byte) & 0xff]! ^ (c >>> 8);
    return (c ^ 0xffffffff) >>> 0;
  };
  const chunk = (type: string, data: Uint8Array): Buffer => {
    const out = Buffer.alloc(12 + data.length);
    out.writeUInt32BE(data.length, 0);
    out.write(type, 4, 'latin1');
    out.set(data, 8);
    out.writeUInt32BE(crc(out.subarray(4, 8 + data.length)), 8 + data.length);
    return out;
  };
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head.set([8, 2, 0, 0, 0], 8);
  return new Uint8Array(
    Buffer.concat([
      Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
      chunk('IHDR', head),
      chunk('IDAT', deflateSync(raw)),
      chunk('IEND', new Uint8Array()),
    ]),
  );
}
