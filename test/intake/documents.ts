/** Documents of word processors, written part by part as ECMA-376 has them, for tests of bringing them in. */
import { strToU8, zipSync } from 'fflate';

export const W = 'http://schemas.openxmlformats.org/wordprocessingml/2006/main';
export const p = (text: string, properties = '') =>
  `<w:p>${properties === '' ? '' : `<w:pPr>${properties}</w:pPr>`}${text
    .split('|')
    .map((run) => `<w:r><w:t xml:space="preserve">${run}</w:t></w:r>`)
    .join('')}</w:p>`;
export const heading = (text: string) => p(text, '<w:pStyle w:val="Heading1"/>');
export const numbered = (text: string) =>
  p(text, '<w:numPr><w:ilvl w:val="0"/><w:numId w:val="1"/></w:numPr>');
export const table = (rows: readonly (readonly string[])[]) =>
  `<w:tbl>${rows.map((cells) => `<w:tr>${cells.map((cell) => `<w:tc>${p(cell)}</w:tc>`).join('')}</w:tr>`).join('')}</w:tbl>`;

/** A paragraph with a picture, by the number of its part, and what the document says it shows. */
export const picture = (number: number, alt: string) =>
  `<w:p><w:r><w:drawing><wp:inline xmlns:wp="http://schemas.openxmlformats.org/drawingml/2006/wordprocessingDrawing"><wp:docPr id="${number}" name="Picture ${number}" descr="${alt}"/><a:graphic xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main"><a:graphicData uri="http://schemas.openxmlformats.org/drawingml/2006/picture"><pic:pic xmlns:pic="http://schemas.openxmlformats.org/drawingml/2006/picture"><pic:blipFill><a:blip r:embed="pic${number}" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"/></pic:blipFill></pic:pic></a:graphicData></a:graphic></wp:inline></w:drawing></w:r></w:p>`;

/** The parts of a document that hold these pictures, numbered from 1; null: one that the document only names. */
export function pictureParts(
  pictures: readonly (readonly [ending: string, bytes: Uint8Array | null])[],
): Readonly<Record<string, string | Uint8Array>> {
  const name = (at: number, ending: string) => `media/image${at + 1}.${ending}`;
  const relations = pictures.map(
    ([ending], at) =>
      `<Relationship Id="pic${at + 1}" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/image" Target="${name(at, ending)}"/>`,
  );
  return {
    '[Content_Types].xml':
      '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Default Extension="png" ContentType="image/png"/><Default Extension="jpeg" ContentType="image/jpeg"/><Default Extension="emf" ContentType="image/x-emf"/><Override PartName="/word/document.xml" ContentType="application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml"/></Types>',
    'word/_rels/document.xml.rels': `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">${relations.join('')}</Relationships>`,
    ...Object.fromEntries(
      pictures.flatMap(([ending, bytes], at) =>
        bytes === null ? [] : [[`word/${name(at, ending)}`, bytes]],
      ),
    ),
  };
}

/** A document with this body. */
export function docx(body: string, more: Readonly<Record<string, string | Uint8Array>> = {}): Uint8Array {
  const parts: Record<string, string | Uint8Array> = {
    '[Content_Types].xml':
      '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/word/document.xml" ContentType="application/vnd.openxmlformats-officedocument.wordprocessingml.document.main+xml"/></Types>',
    '_rels/.rels':
      '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="word/document.xml"/></Relationships>',
    'word/_rels/document.xml.rels':
      '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/numbering" Target="numbering.xml"/><Relationship Id="rId2" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/></Relationships>',
    'word/styles.xml': `<w:styles xmlns:w="${W}"><w:style w:type="paragraph" w:styleId="Heading1"><w:name w:val="heading 1"/></w:style></w:styles>`,
    'word/numbering.xml': `<w:numbering xmlns:w="${W}"><w:abstractNum w:abstractNumId="0"><w:lvl w:ilvl="0"><w:numFmt w:val="decimal"/></w:lvl></w:abstractNum><w:num w:numId="1"><w:abstractNumId w:val="0"/></w:num></w:numbering>`,
    'word/document.xml': `<w:document xmlns:w="${W}"><w:body>${body}</w:body></w:document>`,
    ...more,
  };
  const bytes = (part: string | Uint8Array) => (typeof part === 'string' ? strToU8(part) : part);
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, part]) => [name, bytes(part)])));
}
