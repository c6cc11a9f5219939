/** Words of what a shop needs: the listing, pictures of pages, the archive. */

export const shopWords = {
  title: 'For the shop',
  lead: 'The text of the listing, and one archive for each of the terms: PDFs, listing and pictures of pages. Nothing is sent anywhere.',
  listing: 'Text of the listing',
  listingNote:
    'In the terms and for the pages shown here. What concerns law, refunds and support is yours to add.',
  copy: 'Copy the listing',
  copied: 'The listing was copied.',
  notCopied: 'The listing could not be copied: choose its words and copy them.',
  pictures: 'Pictures of pages',
  picturesNote: 'Numbers with commas, such as 1, 2; none for no pictures.',
  notPages: (pages: number) => `Give page numbers from 1 to ${pages}, with commas between them.`,
  button: 'Pack…',
  picturing: 'Making the pictures …',
  done: (n: number, folder: string) =>
    n === 1 ? `1 archive is in ${folder}.` : `${n} archives are in ${folder}.`,
  stopped: (n: number) =>
    n === 0
      ? 'Stopped. No archive was written.'
      : `Stopped. ${n === 1 ? '1 archive' : `${n} archives`} written before are whole.`,
  written: 'Archives written',
} as const;
