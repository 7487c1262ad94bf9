import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { pixelLimit } from '../../core/picture/limits.js';
import type { Picture } from '../../core/picture/picture.js';

const program = fileURLToPath(new URL('../../../bin/draw-svg.js', import.meta.url));

/** The most memory that the drawing process may take. */
export const svgMegabytesLimit = 400;

/** Why an SVG was not drawn: it took too long or too much memory, or it cannot be drawn at all. */
export class DrawingFailure extends Error {
  constructor(
    readonly why: 'late' | 'heavy' | 'damaged',
    detail: string,
  ) {
    super(detail);
  }
}

/**
 * Draws an SVG, whose root has its size in pixels, in a process of its own, which is ended when
 * the time is up, and ends itself when it takes too much memory: a thread that draws can only be
 * waited for.
 *
 * @param seconds how long it may take
 * @throws DrawingFailure
 */
export async function drawSvgApart(
  svg: string,
  density: number,
  seconds: number,
): Promise<Picture> {
  const limits = [pixelLimit, Math.ceil(seconds) + 1, svgMegabytesLimit];
  const argv = [program, String(density), ...limits.map(String)];
  const child = spawn(process.execPath, argv, { stdio: ['pipe', 'pipe', 'ignore'] });
  let late = false;
  const timer = setTimeout(() => {
    late = true;
    child.kill('SIGKILL');
  }, seconds * 1000);
  const ended = new Promise<number | null>((done, fail) => {
    child.on('error', fail);
    child.on('close', done);
  });
  // A child that ends before it has read everything is told of by its exit code.
  child.stdin.on('error', () => {});
  child.stdin.end(svg);
  const parts: Buffer[] = [];
  child.stdout.on('data', (part: Buffer) => void parts.push(part));
  try {
    const code = await ended;
    const bytes = Buffer.concat(parts);
    if (late) throw new DrawingFailure('late', 'not drawn in time');
    if (code === 3) throw new DrawingFailure('damaged', bytes.toString('utf8'));
    // A system that is short of memory ends a process too, without a word.
    if (code === null || (code !== 0 && bytes.toString('latin1') === 'heavy'))
      throw new DrawingFailure('heavy', 'too much memory');
    if (code !== 0) throw new DrawingFailure('damaged', `the drawing program ended with ${code}`);
    return pictureIn(bytes);
  } finally {
    clearTimeout(timer);
  }
}

function pictureIn(bytes: Buffer): Picture {
  const [width, height] = [bytes.readUInt32LE(0), bytes.readUInt32LE(4)];
  if (bytes.length !== 8 + 4 * width * height)
    throw new DrawingFailure('damaged', `drawn as ${width} × ${height} pixels, and not whole`);
  return { width, height, data: bytes.subarray(8) };
}
