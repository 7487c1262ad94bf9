// Draws one SVG in a process of its own, which can be ended at any moment: a drawing thread cannot.
// Standard input: the SVG. Arguments: density, the most pixels, seconds to live. Standard output:
// width and height as 32-bit numbers, little end first, then red, green, blue, alpha a pixel; or,
// with exit code 3, a line that says what is wrong with the SVG.
import sharp from 'sharp';

const [density, limitInputPixels, seconds] = process.argv.slice(2).map(Number);
// Nobody may be left who would end this process from outside.
setTimeout(() => process.kill(process.pid, 'SIGKILL'), seconds * 1000).unref();
sharp.cache(false);

const parts = [];
for await (const part of process.stdin) parts.push(part);
try {
  const options = { density, limitInputPixels, unlimited: true, failOn: 'error' };
  const { data, info } = await sharp(Buffer.concat(parts), options)
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
