// A contact sheet: a row for each picture, what the eye gets from arm's length.
import sharp from 'sharp';

const cell = 220;
const gap = 8;
const head = 24;

/**
 * @param {{ name: string, views: { label: string, srgb: Uint8Array, side: number }[] }[]} rows
 * @returns {Promise<Buffer>} PNG
 */
export async function contactSheet(rows) {
  const columns = Math.max(...rows.map(({ views }) => views.length));
  const width = columns * (cell + gap) + gap;
  const high = cell + head + gap;
  const placed = [];
  for (const [r, { name, views }] of rows.entries()) {
    for (const [c, { label, srgb, side }] of views.entries()) {
      const raw = { width: side, height: side, channels: 3 };
      const input = await sharp(Buffer.from(srgb), { raw }).resize(cell, cell).png().toBuffer();
      const [left, top] = [gap + c * (cell + gap), gap + r * high];
      placed.push({ input, left, top: top + head });
      placed.push({ input: text(c === 0 ? name : label), left, top });
    }
  }
  const page = { width, height: rows.length * high + gap, channels: 3, background: '#ffffff' };
  return sharp({ create: page }).composite(placed).png().toBuffer();
}

function text(label) {
  const safe = label.replace(/[&<>]/g, (mark) => `&#${mark.codePointAt(0)};`);
  return Buffer.from(
    `<svg xmlns="http://www.w3.org/2000/svg" width="${cell}" height="${head}"><text x="2" y="17" font-family="sans-serif" font-size="13">${safe}</text></svg>`,
  );
}
