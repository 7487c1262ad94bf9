// node bench/plain-pages.js PAGES FILE: the bare peer of a booklet. PDFKit alone writes so many
// pages of plain text in the same font, embedded and subset.
import { createWriteStream } from 'node:fs';
import PDFDocument from 'pdfkit';

const [pages, file] = [Number(process.argv[2]), process.argv[3]];
const doc = new PDFDocument({ autoFirstPage: false, font: null });
doc.registerFont('text', new URL('../fonts/NotoSans-Regular.ttf', import.meta.url).pathname);
doc.pipe(createWriteStream(file));
const words =
  'Work the stitches of a round into those of the round below and count when it is done';
for (let page = 1; page <= pages; page++) {
  doc.addPage({ size: 'A4', margin: 56 });
  doc.font('text').fontSize(12);
  for (let line = 1; line <= 40; line++) {
    doc.text(`${page}.${line} ${words}`, 56, 40 + 18 * line, { lineBreak: false });
  }
}
doc.end();
