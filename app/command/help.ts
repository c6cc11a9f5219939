/**
 * What the command line tells about itself: one line of use and one page of help for each command. Words only.
 */

export type CommandName =
  | 'rows'
  | 'multiple'
  | 'translate'
  | 'check'
  | 'draw'
  | 'export'
  | 'report'
  | 'new'
  | 'bring'
  | 'compare'
  | 'yarn'
  | 'price'
  | 'measured'
  | 'pack';

interface Help {
  /** One line for the list of commands. */
  readonly summary: string;
  readonly usage: string;
  readonly page: string;
}

const TERMS = `      --terms us|uk   the terms the rows are written in. It must be said, because
                      the same letters mean different stitches: a US "dc" is a
                      UK "tr".`;

export const HELP: Readonly<Record<CommandName, Help>> = {
  rows: {
    summary: 'count and check rows written in plain text',
    usage: 'turnchain rows FILE|- --terms us|uk [--json]',
    page: `Reads rows as you write them, works every stitch, and prints how many stitches
each row has, in each size. What cannot be right is told under its row, with the
words concerned marked.

      FILE            a plain text file with the rows; - reads standard input
${TERMS}
      --json          the result for programs, as JSON

A text may have several sizes: write the numbers as 64 (70, 76, 82), and name the
sizes once in a line of their own ("Sizes: S (M, L, XL)"). A blank line and a new
Row 1, Rnd 1 or foundation begin a new piece.

Examples:
  turnchain rows shawl.txt --terms us
  turnchain rows - --terms uk < hat.txt

It ends with 0 when all is right, 1 when there are errors, 2 when it could not
be started as asked.`,
  },
  multiple: {
    summary: 'find the multiple of stitches that rows work on',
    usage: 'turnchain multiple FILE|- --terms us|uk [--json]',
    page: `Tries the rows on foundation chains of every length and tells on which they come
out: "a multiple of 3 plus 5 chains". The number in your first line does not
matter; all chains are counted, the turning chain among them.

      FILE            a plain text file with the rows; - reads standard input
${TERMS}
      --json          {"multiple": …, "plus": …, "from": …} for programs, or null

Example:
  turnchain multiple mesh.txt --terms us

It ends with 0 when there is a multiple, 1 when none was found, 2 when it could
not be started as asked.`,
  },
  translate: {
    summary: 'turn a plain text from US terms into UK terms, or back',
    usage: 'turnchain translate FILE|- --from us|uk --to us|uk',
    page: `Prints the text with each stitch term in the other terms, and everything else as
you wrote it. A word that may be a term or may not ("a single row") stays, and is
listed on standard error for you to decide.

      FILE            a plain text file; - reads standard input
      --from us|uk    the terms it is written in
      --to us|uk      the terms you want

Example:
  turnchain translate shawl.txt --from us --to uk > shawl-uk.txt`,
  },
  check: {
    summary: 'check a pattern and list its stitch counts in every size',
    usage: 'turnchain check PATTERN [--json]',
    page: `Grades the pattern, works every row in every size, and prints what is wrong and
the count after each row.

      PATTERN         a .turnchain file; - reads standard input
      --json          findings and counts for programs, as JSON

Example:
  turnchain check vest.turnchain

It ends with 0 when nothing is wrong, 1 when there are errors (warnings, notes and
what you accepted leave it at 0), 2 when the file could not be read.`,
  },
  draw: {
    summary: 'draw the schematics or stitch charts of a pattern as SVG',
    usage: 'turnchain draw PATTERN [--out DIR] [options]',
    page: `Draws each piece from its own rows at its gauge, with the finished lengths of every
size, one file for each piece or for pieces worked on from one another; or the stitch
charts that the pattern keeps, each with its key. Files of the same name are replaced.

      PATTERN         a .turnchain file; - reads standard input
      --out DIR       folder for the drawings (first choice: the folder you are in);
                      it is made when it is not there
      --sizes all     one drawing with the numbers of all sizes (first choice)
      --sizes each    a drawing for each size alone
      --sizes S,M     a drawing for each size named
      --what schematic|chart
                      what to draw (first choice: schematic); a chart shows its own
                      size, the sample, or the sizes that you name
      --nested        with all sizes, draw the outline of each
      --terms us|uk   terms of the names (first choice: those of the pattern)
      --units metric|imperial
                      units that lead (first choice: those of the pattern)

Example:
  turnchain draw vest.turnchain --out drawings --sizes all,each
  turnchain draw vest.turnchain --out drawings --what chart --terms uk

It ends with 0 when all is drawn, 1 when something cannot be drawn yet (it says
why), 2 when it could not be started as asked.`,
  },
  export: {
    summary: 'print a pattern as PDFs',
    usage: 'turnchain export PATTERN --out DIR [options]',
    page: `Writes the pattern as PDFs: one for every combination of what you choose. A file
is put in its place when it is whole, so there is never half a PDF. Files of an
earlier export with the same name are replaced.

      PATTERN             a .turnchain file; - reads standard input
      --out DIR           folder for the PDFs; it is made when it is not there
      --terms us,uk       terms (first choice: those the pattern is written in)
      --paper a4,letter   paper (first choice: a4)
      --sizes all         one booklet with all sizes (first choice)
      --sizes each        a booklet for each size alone
      --sizes S,M         a booklet for each size named
      --edition standard,large,ink-saving
                          the ordinary edition (first choice), large print, or
                          one that saves ink
      --anyway            export although the pattern has errors

Examples:
  turnchain export vest.turnchain --out pdf --terms us,uk --paper a4,letter
  turnchain export vest.turnchain --out pdf --sizes all,each --edition large

A pattern with errors is not exported: the errors are listed and it ends with 1.`,
  },
  report: {
    summary: 'write the technical edit for a human editor',
    usage: 'turnchain report PATTERN --out FILE [options]',
    page: `Writes what the technical edit found: every finding by piece, with its words, its
numbers in every size and what would put it right; what you accepted and why; all
that was checked; and the stitches after every row in every size. Names, prices and
measurements of people in the workbook are not in it.

      PATTERN             a .turnchain file; - reads standard input
      --out FILE          a name that ends in .pdf, or in .json for programs
      --terms us|uk       terms of the report (first choice: the pattern's)
      --paper a4|letter   paper of a PDF (first choice: a4)

Examples:
  turnchain report vest.turnchain --out vest-edit.pdf
  turnchain report vest.turnchain --out vest-edit.json

It ends with 0 when nothing is wrong but what you accepted, 1 when there are errors,
2 when the file could not be read or the report not written.`,
  },
  new: {
    summary: 'begin a new pattern, or one from an example',
    usage: 'turnchain new FILE [--example NAME] [options]',
    page: `Makes a pattern file to begin with. It never replaces a file that is there.

      FILE                name of the new file; without an ending, .turnchain is added
      --title TEXT        title (first choice: the name of the file)
      --terms us|uk       terms it is written in (first choice: us)
      --units metric|imperial
                          units that lead (first choice: metric)
      --example NAME      begin with a copy of an example; --example list tells
                          their names

Examples:
  turnchain new vest.turnchain --title "Harbour vest" --terms uk
  turnchain new my-hat.turnchain --example list`,
  },
  bring: {
    summary: 'make a pattern file of an old pattern in words',
    usage: 'turnchain bring FILE|- --out NEW.turnchain [options]',
    page: `Reads an old pattern, plain text or a .docx document, and makes a pattern file of it:
sizes, materials, gauge, abbreviations, notes, pieces, rows and the pictures among
them. Counts typed at the ends of rows are checked and, where they agree, computed
from then on. What is uncertain stays as words and is listed; nothing is dropped. It
never replaces a file that is there.

      FILE            a .txt, .md or .docx file; - reads plain text from standard
                      input
      --out NEW       name of the new file; without an ending, .turnchain is added
      --terms us|uk   the terms it is written in; it need only be said when the
                      text does not show it
      --title TEXT    title (first choice: the text's, then the name of the file)
      --figures       make figures of numbers that are those of a line of the
                      sizing sheet in every size
      --json          the report for programs, as JSON

Examples:
  turnchain bring seal.docx --out seal.turnchain
  turnchain bring blanket.txt --out blanket.turnchain --terms uk

It ends with 0 when everything was understood, 1 when something needs a look, 2
when no file was made.`,
  },
  compare: {
    summary: 'tell what changed between two versions of a pattern',
    usage: 'turnchain compare OLD NEW [options]',
    page: `Compares what two versions print, row by row and in every size, and tells what a
buyer of the old one has to know: "was …, read …", and for which sizes. What
leaves the printed instructions as they were (private records, other ways of
writing the same row) is no erratum.

      OLD NEW         two .turnchain files; one of them may be - for standard input
      --terms us|uk   terms to tell it in (first choice: those of the new version)
      --out FILE      the errata sheet for buyers, as a PDF
      --paper a4|letter
                      its paper (first choice: a4)
      --json          the errata for programs, as JSON

Example:
  turnchain compare vest-1.0.turnchain vest.turnchain --out vest-errata.pdf

It ends with 0 when nothing changed, 1 when there are errata, 2 when a file could
not be read.`,
  },
  yarn: {
    summary: 'reckon the yarn and the hours of every size',
    usage: 'turnchain yarn PATTERN [--json]',
    page: `Counts the stitches of every size and reckons the yarn and the hours that each
takes, from what your sample, testers and weighed swatches took (they are entered
in the studio, under Workbook). What each amount rests on stands under it.

      PATTERN         a .turnchain file; - reads standard input
      --json          the amounts for programs, as JSON

Example:
  turnchain yarn vest.turnchain`,
  },
  price: {
    summary: 'reckon the price of a piece made to order',
    usage: 'turnchain price PATTERN [--json]',
    page: `Adds up yarn, notions, other costs, hours and profit for every size, and what to
ask so that the fee of whoever sells it is covered: once with whole balls bought,
once with the yarn that is used. Nothing of it is ever printed in a pattern.

      PATTERN         a .turnchain file; - reads standard input
      --json          the prices for programs, as JSON

Example:
  turnchain price vest.turnchain`,
  },
  measured: {
    summary: 'print one person’s own sheet, made to measure',
    usage: 'turnchain measured PATTERN PERSON --out DIR [--terms us|uk] [--paper a4|letter]',
    page: `Writes a PDF with one person’s measurements and the numbers that follow from them.
It is made for that person and not for sale, and says so on every page.

      PATTERN             a .turnchain file; - reads standard input
      PERSON              the name under which the person is entered
      --out DIR           folder for the PDF; it is made when it is not there
      --terms us|uk       terms (first choice: those the pattern is written in)
      --paper a4|letter   paper (first choice: a4)

Example:
  turnchain measured vest.turnchain Ottilie --out pdf`,
  },
  pack: {
    summary: 'pack PDFs, listing and pictures of a pattern for a shop',
    usage: 'turnchain pack PATTERN --out DIR [options]',
    page: `Makes one archive for each of the terms: all PDFs, the text of the listing (what it
is, sizes, measurements, materials, level, what is in the files) and pictures of
pages. Nothing is sent anywhere, and sheets made to measure are never packed.

      PATTERN             a .turnchain file; - reads standard input
      --out DIR           folder for the archives; it is made when it is not there
      --terms us,uk       terms (first choice: those the pattern is written in)
      --paper a4,letter   papers (first choice: both)
      --edition standard,large-print,ink-saving
                          editions (first choice: standard)
      --pictures 1,3      pages to make pictures of (first choice: 1; "" for none);
                          they need the program pdftoppm
      --listing           print the listing, too
      --anyway            pack although the pattern has errors

Example:
  turnchain pack vest.turnchain --out shop --terms us,uk --pictures 1,2

It ends with 0 when all was packed, 1 when something could not be printed as it
stands, 2 when nothing was packed.`,
  },
};

export const COMMANDS = Object.keys(HELP) as readonly CommandName[];

/** The first page of help. */
export function overview(): string {
  const list = COMMANDS.map((name) => `  ${name.padEnd(10)} ${HELP[name].summary}`).join('\n');
  return `Turnchain reads crochet rows as they are written, works every stitch in every size,
checks them, and prints graded patterns in US and UK terms.

Usage: turnchain COMMAND …

${list}

  turnchain help COMMAND    tells more about a command
  turnchain --version       tells which Turnchain this is

To begin with:
  turnchain rows shawl.txt --terms us      for rows that you have as plain text
  turnchain new vest.turnchain             for a pattern with sizes
`;
}

/** The page of one command. */
export function helpPage(name: CommandName): string {
  return `turnchain ${name}: ${HELP[name].summary}\n\nUsage: ${HELP[name].usage}\n\n${HELP[name].page}\n`;
}
