/**
 * The document's facts for machines: information dictionary, XMP packet, file id. All of it comes from the
 * booklet, never from a clock or from chance. pdfkit writes titles into XMP without escaping them and leaves
 * the language out, so the packet's middle is made here.
 */
import { createHash } from 'node:crypto';
import type { Meta } from './content.ts';

const PRODUCER = 'Turnchain';

/** The document's date; an unreadable one counts as the first of January 1970, never as today. */
export function dateOf(meta: Meta): Date {
  const time = Date.parse(meta.date);
  return new Date(Number.isFinite(time) ? time : 0);
}

export function infoOf(meta: Meta): Record<string, string | Date> {
  const info: Record<string, string | Date> = {
    Title: meta.title,
    Author: meta.author,
    Subject: meta.subject,
    Keywords: meta.keywords.join(', '),
    Creator: PRODUCER,
    Producer: PRODUCER,
    CreationDate: dateOf(meta),
    ModDate: dateOf(meta),
  };
  for (const [key, value] of Object.entries(info)) if (value === '') delete info[key];
  return info;
}

const escaped = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .replace(/[\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;');

/** Descriptions for the XMP packet: Dublin Core, XMP basic, PDF. The PDF/UA mark is pdfkit's. */
export function xmpOf(meta: Meta): string {
  const date = dateOf(meta)
    .toISOString()
    .replace(/\.\d+Z$/, 'Z');
  const alternatives = (name: string, text: string): string =>
    text === ''
      ? ''
      : `<dc:${name}><rdf:Alt><rdf:li xml:lang="x-default">${escaped(text)}</rdf:li></rdf:Alt></dc:${name}>\n`;
  const items = (name: string, kind: 'Seq' | 'Bag', texts: readonly string[]): string =>
    texts.length === 0
      ? ''
      : `<dc:${name}><rdf:${kind}>${texts.map((text) => `<rdf:li>${escaped(text)}</rdf:li>`).join('')}</rdf:${kind}></dc:${name}>\n`;
  return `<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/">
${alternatives('title', meta.title)}${items('creator', 'Seq', meta.author === '' ? [] : [meta.author])}${alternatives('description', meta.subject)}${items('subject', 'Bag', meta.keywords)}${items('language', 'Bag', [meta.language])}</rdf:Description>
<rdf:Description rdf:about="" xmlns:xmp="http://ns.adobe.com/xap/1.0/">
<xmp:CreateDate>${date}</xmp:CreateDate>
<xmp:ModifyDate>${date}</xmp:ModifyDate>
<xmp:CreatorTool>${PRODUCER}</xmp:CreatorTool>
</rdf:Description>
<rdf:Description rdf:about="" xmlns:pdf="http://ns.adobe.com/pdf/1.3/">
<pdf:Producer>${PRODUCER}</pdf:Producer>${meta.keywords.length > 0 ? `\n<pdf:Keywords>${escaped(meta.keywords.join(', '))}</pdf:Keywords>` : ''}
</rdf:Description>`;
}

/** Sixteen bytes that depend on everything the file is made from. */
export function fileIdOf(parts: Iterable<string | Uint8Array>): Uint8Array {
  const hash = createHash('sha256');
  for (const one of parts) {
    hash.update(one);
    hash.update('\u0000');
  }
  return new Uint8Array(hash.digest().subarray(0, 16));
}
