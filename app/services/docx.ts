/** Reads .docx documents with the library for them. Pictures are passed over; nothing is fetched. */
import mammoth from 'mammoth';
import type { DocxReader } from '../../core/intake/docx.ts';

export const readDocx: DocxReader = async (bytes) => {
  const { value } = await mammoth.convertToHtml(
    { buffer: Buffer.from(bytes) },
    {
      convertImage: mammoth.images.imgElement(() => Promise.resolve({ src: '' })),
      externalFileAccess: false,
    },
  );
  return value;
};
