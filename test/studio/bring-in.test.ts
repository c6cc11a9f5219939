/**
 * Bringing text and photographs into the manuscript in a real browser: HTML in the shapes that word processors,
 * web editors and spreadsheets put on a clipboard (made here), photographs dropped, words copied out, found,
 * replaced and spelt.
 */
import fs from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readContainer } from '../../core/document/container.ts';
import { violations } from './axe.ts';
import { DEVICE, EXIF_HEAD, withExif } from './exif.ts';
import { exampleIn, openStudio, type Studio } from './harness.ts';

let studio: Studio;

beforeAll(async () => {
  studio = await openStudio();
}, 240_000);

afterAll(async () => {
  expect(studio.complaints).toEqual([]);
  await studio.close();
});

/** Pastes as a browser does: an event with flavours, at the focus. */
async function paste(page: Page, flavours: Readonly<Record<string, string>>): Promise<void> {
  await page.locator('.manuscript').evaluate((manuscript, given) => {
    const data = new DataTransfer();
    for (const [type, text] of Object.entries(given)) data.setData(type, text);
    const event = new ClipboardEvent('paste', { clipboardData: data, bubbles: true, cancelable: true });
    manuscript.dispatchEvent(event);
  }, flavours);
}

/** A pattern with the caret at the end of its last paragraph between rows. */
async function atTheEnd(): Promise<Page> {
  const page = await exampleIn(studio, /Slackwater/);
  await page.locator('.piece').last().locator('.words').last().click();
  await page.keyboard.press('End');
  return page;
}

const lastPiece = (page: Page) => page.locator('.piece').last();

describe('pasted HTML', () => {
  test.each([
    [
      'a word processor',
      '<html xmlns:o="urn:x"><head><style>p {color: red}</style></head><body><!--StartFragment--><p class=MsoNormal><b>Pocket</b> (make 2)<o:p></o:p></p><p class=MsoNormal style="margin:0">Ch 14.<o:p></o:p></p><p class=MsoListParagraph style="mso-list:l0 level1 lfo1"><![if !supportLists]><span style="mso-list:Ignore">1.<span>&nbsp;&nbsp; </span></span><![endif]>Sc in 2nd ch from hook and\r\nin each ch across, turn. (13 sc)</p><p class=MsoNormal><span style="display:none">hidden</span>Row 2: Ch&nbsp;1, sc in each st across, turn. (12 sc)</p><!--EndFragment--></body></html>',
    ],
    [
      'a web editor',
      '<meta charset="utf-8"><b style="font-weight:normal;" id="guid"><p dir="ltr" style="line-height:1.38"><span style="font-weight:700">Pocket (make 2)</span></p><p dir="ltr"><span>Ch 14.</span></p><ol><li dir="ltr"><p dir="ltr"><span>Sc in 2nd ch from hook and in each ch across, turn. (13 sc)</span></p></li><li><p><span>Ch 1, sc in each st across, turn. (12 sc)</span></p></li></ol></b>',
    ],
    [
      'a free word processor',
      '<html>\n<head>\n\t<meta name="generator" content="x"/>\n\t<style type="text/css">p.western { so-language: en-US }</style>\n</head>\n<body lang="en-US">\n<h3 class="western" align="left">Pocket (make 2)</h3>\n<p class="western" style="margin-bottom: 0in">Ch\n14.</p>\n<ol>\n\t<li><p class="western" align="left">Sc in\n\t2nd ch from hook and in each ch across, turn. (13\n\tsc)</p>\n\t<li><p class="western">Ch 1, sc in each\n\tst across, turn. (12 sc)</p>\n</ol>\n</body>\n</html>',
    ],
    [
      'lines with breaks',
      '<div>Pocket (make 2)<br>Ch 14.<br>Row 1: Sc in 2nd ch from hook and in each ch across, turn. (13 sc)<br>Row 2: Ch 1, sc in each st across, turn. (12 sc)</div>',
    ],
    [
      'a spreadsheet',
      '<h2>Pocket (make 2)</h2><p>Ch 14.</p><table><tr><td>Row</td><td>Instruction</td><td>Sts</td></tr><tr><td>1</td><td>Sc in 2nd ch from hook and in each ch across, turn.</td><td>13</td></tr><tr><td>2</td><td>Ch 1, sc in each st across, turn.</td><td>12</td></tr></table>',
    ],
  ])('of %s makes a piece of rows, checked', async (_, html) => {
    const page = await atTheEnd();
    await paste(page, { 'text/html': html, 'text/plain': 'x' });
    const piece = lastPiece(page);
    await piece.locator('.title .words', { hasText: /^Pocket$/ }).waitFor();
    const rows = await piece.locator('.row .words').allInnerTexts();
    expect(rows.slice(0, 2)).toEqual(['Ch 14.', 'Sc in 2nd ch from hook and in each ch across, turn.']);
    // The count that is wrong stays, and is found.
    // A number of the list is the row's, and no paragraph.
    expect(await piece.locator('.words', { hasText: /^\s*\d+[.)]?\s*$/ }).count()).toBe(0);
    expect(rows[2]).toMatch(/^Ch 1, sc in each st across, turn\. \(12( sc)?\)$/);
    await piece.locator('mark.error').waitFor();
    await page.getByRole('region', { name: 'What was pasted' }).getByText('1 typed count agrees').waitFor();
    await page.keyboard.press('Control+z');
    await piece.locator('.title .words', { hasText: 'Neckband' }).waitFor();
    await page.close();
  });

  test('within a row is but words', async () => {
    const page = await atTheEnd();
    await lastPiece(page).locator('.row .words').first().click();
    await page.keyboard.press('End');
    await paste(page, { 'text/plain': ' and so on' });
    await lastPiece(page).locator('.row .words', { hasText: 'and so on' }).waitFor();
    expect(await page.locator('.paste-note').count()).toBe(0);
    await page.close();
  });
});

test('what is copied has labels, figures of all sizes and counts, in the terms on screen', async () => {
  const page = await exampleIn(studio, /Slackwater/);
  await page.getByRole('button', { name: 'UK terms' }).click();
  const row = lastPiece(page).locator('.row .words').first();
  await row.click();
  const copied = await page.locator('.manuscript').evaluate((manuscript) => {
    const words = [...manuscript.querySelectorAll('.piece')].at(-1)!.querySelector('.row .words')!;
    getSelection()!.selectAllChildren(words);
    document.dispatchEvent(new Event('selectionchange'));
    return new Promise<{ text: string; html: string }>((done) => {
      setTimeout(() => {
        const data = new DataTransfer();
        manuscript.dispatchEvent(
          new ClipboardEvent('copy', { clipboardData: data, bubbles: true, cancelable: true }),
        );
        done({ text: data.getData('text/plain'), html: data.getData('text/html') });
      }, 200);
    });
  });
  expect(copied.text).toMatch(/^Rnd 1: With RS facing/);
  expect(copied.text).toMatch(/96 \(100, 104, 108, 112, 112, 116, 116, 120\) dc\)/);
  expect(copied.text).not.toMatch(/\bsc\b/);
  expect(copied.html).toMatch(/^<p><b>Rnd 1:<\/b> /);
  await page.close();
});

test('a photograph that is dropped is scaled, shown and asked about', async () => {
  const page = await atTheEnd();
  const row = lastPiece(page).locator('.row .words').first();
  const box = (await row.boundingBox())!;
  await page.locator('.manuscript').evaluate(
    async (manuscript, [x, y]) => {
      const canvas = new OffscreenCanvas(3000, 1500);
      canvas.getContext('2d')!.fillRect(0, 0, 3000, 1500);
      const blob = await canvas.convertToBlob({ type: 'image/jpeg' });
      const data = new DataTransfer();
      data.items.add(new File([blob], 'vest.jpg', { type: 'image/jpeg' }));
      manuscript.dispatchEvent(
        new DragEvent('drop', {
          dataTransfer: data,
          clientX: x,
          clientY: y,
          bubbles: true,
          cancelable: true,
        }),
      );
    },
    [box.x + 40, box.y + 10] as const,
  );
  const photo = lastPiece(page).locator('.photo');
  await photo.waitFor();
  await page.waitForFunction(() => document.activeElement?.classList.contains('photo-alt'));
  expect(
    await photo
      .locator('img')
      .evaluate((image: HTMLImageElement) => [image.naturalWidth, image.naturalHeight]),
  ).toEqual([2400, 1200]);
  await page.keyboard.type('The neckband, seen from above');
  await page.waitForFunction(
    () => document.querySelector<HTMLImageElement>('.photo-image')?.alt === 'The neckband, seen from above',
  );
  for (const theme of ['light', 'dark']) {
    await page.evaluate((name) => {
      document.documentElement.dataset.theme = name;
    }, theme);
    expect(await violations(page), theme).toEqual([]);
  }
  await photo.getByRole('button', { name: 'Remove' }).click();
  expect(await photo.count()).toBe(0);
  await page.close();
});

test('what a camera wrote into a photograph besides, its place above all, is not in the file', async () => {
  const page = await atTheEnd();
  const plain = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(60, 40);
    canvas.getContext('2d')!.fillRect(0, 0, 60, 40);
    const blob = await canvas.convertToBlob({ type: 'image/jpeg' });
    return [...new Uint8Array(await blob.arrayBuffer())];
  });
  const buffer = withExif(Buffer.from(plain));
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    (async () => {
      await page.keyboard.press('Control+k');
      await page.getByRole('combobox', { name: 'Command' }).fill('Photograph');
      await page.keyboard.press('Enter');
    })(),
  ]);
  await chooser.setFiles({ name: 'cuff.jpg', mimeType: 'image/jpeg', buffer });
  const image = lastPiece(page).locator('.photo img');
  await image.waitFor();
  // The block was read: the picture, 60 by 40 and held on its side, stands upright.
  await expect
    .poll(() => image.evaluate(({ naturalWidth: w, naturalHeight: h }: HTMLImageElement) => [w, h]))
    .toEqual([40, 60]);
  await page.keyboard.press('Control+s');
  await page.getByRole('dialog').getByLabel('Name of the file').fill('placeless');
  await page.getByRole('dialog').getByRole('button', { name: 'Save here' }).click();
  await expect.poll(() => page.getByTestId('file-state').textContent()).toContain('· Saved');
  const file = readContainer(fs.readFileSync(join(studio.folder, 'placeless.turnchain')));
  if (!file.ok) throw new Error(file.error.message);
  const stored = [...file.media.values()].map((picture) => Buffer.from(picture.bytes).toString('latin1'));
  expect(stored).toHaveLength(1);
  for (const trace of [EXIF_HEAD, DEVICE]) {
    expect(buffer.toString('latin1')).toContain(trace);
    expect(stored[0]).not.toContain(trace);
  }
  await page.close();
});

test('words are found and replaced, and Escape gives the manuscript back', async () => {
  const page = await exampleIn(studio, /Slackwater/);
  await page.locator('.piece .row .words').first().click();
  await page.keyboard.press('Control+f');
  await page.getByLabel('Find', { exact: true }).fill('fasten off');
  await page.locator('.find-told', { hasText: /of \d/ }).waitFor();
  const before = await page.locator('.found').count();
  expect(before).toBeGreaterThan(1);
  await page.getByLabel('Replace with').fill('finish off');
  await page.getByRole('button', { name: 'Replace all' }).click();
  expect(await page.locator('.found').count()).toBe(0);
  await page.keyboard.press('Escape');
  expect(await page.evaluate(() => document.activeElement?.className)).toContain('manuscript');
  await page.keyboard.press('Control+z');
  expect(await page.locator('.manuscript').textContent()).toMatch(/fasten off/i);
  await page.close();
});

test('a misspelt word has suggestions, and can be one of the pattern’s own', async () => {
  const page = await exampleIn(studio, /Slackwater/);
  await page.locator('.notes .words').first().click();
  await page.keyboard.press('End');
  await page.keyboard.type(' A beutiful frobling with hdc.');
  const marks = page.locator('.misspelt');
  await marks.filter({ hasText: 'beutiful' }).waitFor({ timeout: 30_000 });
  expect(await marks.allInnerTexts()).not.toContain('hdc');
  await marks.filter({ hasText: 'beutiful' }).click();
  await page.getByRole('button', { name: 'beautiful', exact: true }).click();
  await marks.filter({ hasText: 'frobling' }).click();
  await page.getByRole('button', { name: 'Add to this pattern’s words' }).click();
  await page.waitForFunction(
    () => ![...document.querySelectorAll('.misspelt')].some((mark) => mark.textContent === 'frobling'),
  );
  await page.close();
});
