/** Reads .docx documents with the library for them. Nothing is fetched. */
import mammoth from 'mammoth';
import { CollectedPictures } from '../../core/intake/collected.ts';
import type { DocxReader } from '../../core/intake/docx.ts';

export const readDocx: DocxReader = async (bytes) => {
  const { take, pictures } = new CollectedPictures();
  const { value } = await mammoth.convertToHtml(
    { buffer: Buffer.from(bytes) },
    { convertImage: mammoth.images.imgElement(take), externalFileAccess: false },
  );
  return { html: value, pictures };
};
