// The peer of bench/whole.js: what any program would have to do with sharp alone. Decodes all
// pixels, shrinks to 1,000 px, rasterises one ready chart SVG at 2,480 px. Nothing else.
import { readFileSync, writeFileSync } from 'node:fs';
import sharp from 'sharp';

const [picture, chart, out] = process.argv.slice(2);
const { data, info } = await sharp(readFileSync(picture))
  .raw()
  .toBuffer({ resolveWithObject: true });
const raw = { width: info.width, height: info.height, channels: info.channels };
await sharp(data, { raw }).resize({ width: 1000 }).png().toFile(`${out}-small.png`);
const svg = readFileSync(chart);
const drawn = sharp(svg, { unlimited: true }).resize({ width: 2480 }).png();
writeFileSync(`${out}-chart.png`, await drawn.toBuffer());
