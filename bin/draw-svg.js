// Draws one SVG in a process of its own, which can be ended at any moment: a drawing thread cannot.
// Standard input: the SVG. Arguments: density, the most pixels, seconds to live, megabytes of memory
// it may take. Standard output: width and height as 32-bit numbers, little end first, then red,
// green, blue, alpha a pixel; or, with exit code 3, a line that says what is wrong with the SVG; or
// the word heavy and a sudden end, when it took more memory.
import { writeSync } from 'node:fs';
import sharp from 'sharp';

const [density, limitInputPixels, seconds, megabytes] = process.argv.slice(2).map(Number);
// Nobody may be left who would end this process from outside.
setTimeout(() => process.kill(process.pid, 'SIGKILL'), seconds * 1000).unref();
// Another thread draws, and this one is free to watch.
const watch = setInterval(() => {
  if (process.memoryUsage.rss() < megabytes * 1e6) return;
  writeSync(1, 'heavy');
  // An orderly exit would wait for the other thread.
  process.kill(process.pid, 'SIGKILL');
}, 5);
sharp.cache(false);

const parts = [];
for await (const part of process.stdin) parts.push(part);
const svg = Buffer.concat(parts);
parts.length = 0;
try {
  const options = { density, limitInputPixels, unlimited: true, failOn: 'error' };
  const { data, info } = await sharp(svg, options)
    .toColourspace('srgb')
    .ensureAlpha()
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
  const head = Buffer.alloc(8);
  head.writeUInt32LE(info.width, 0);
  head.writeUInt32LE(info.height, 4);
  process.stdout.write(head);
  process.stdout.write(data);
} catch (error) {
  process.stdout.write(error.message.split('\n')[0]);
  process.exitCode = 3;
}
clearInterval(watch);
