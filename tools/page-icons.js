// Draws the icons of the installed page from their one drawing, src/worktable/offline/icon.svg.
//   node tools/page-icons.js
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';

const folder = fileURLToPath(new URL('../src/worktable/offline/', import.meta.url));
const svg = readFileSync(`${folder}icon.svg`);
for (const size of [192, 512]) {
  const png = await sharp(svg, { density: 144 })
    .resize(size)
    .png({ compressionLevel: 9, palette: true })
    .toBuffer();
  writeFileSync(`${folder}icon-${size}.png`, png);
}
