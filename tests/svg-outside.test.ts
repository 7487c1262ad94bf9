import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { RondureError } from '../src/core/errors.js';
import { readBytes } from '../src/node/read/read-bytes.js';
import { readPicture } from '../src/node/read/read-picture.js';

/*
 * A canary, magenta all over, lies beside each drawing, once as a PNG and once as an SVG, and on a
 * server of ours that counts what is asked for. No way of pointing there may show any of it.
 */
const fixtures = join(import.meta.dirname, '../fixtures/pictures/bad');
let [folder, address, asked] = ['', '', 0];
let server: Server;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'rondure-outside-'));
  copyFileSync(join(fixtures, 'canary-magenta.png'), join(folder, 'canary.png'));
  writeFileSync(
    join(folder, 'canary.svg'),
    svg('<rect id="x" width="100" height="99" fill="#f0f"/>'),
  );
  writeFileSync(join(folder, 'canary.css'), 'rect,text{fill:#f0f !important}');
  writeFileSync(join(folder, 'canary.dtd'), '<!ENTITY magenta "#f0f">');
  server = createServer((request, response) => {
    asked++;
    response.end(readFileSync(join(folder, basename(request.url!))));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
});
afterAll(() => {
  server.close();
  rmSync(folder, { recursive: true, force: true });
});

const ground = '<rect width="100" height="99" fill="#0a0"/>';
const names = 'xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink"';
const svg = (content: string) => `<svg ${names} viewBox="0 0 100 2">${content}</svg>`;
const whole = 'x="0" y="0" width="100" height="2" preserveAspectRatio="none"';
const encoded = (text: Uint8Array | string) => Buffer.from(text).toString('base64');

/** The ways to point at something outside, by the place of a canary and a number for its own ids. */
const ways: [way: string, content: (at: (ending: string) => string, n: number) => string][] = [
  ['image href', (at) => `<image href="${at('png')}" ${whole}/>`],
  ['image href to an SVG', (at) => `<image href="${at('svg')}" ${whole}/>`],
  ['image xlink:href', (at) => `<image xlink:href="${at('png')}" ${whole}/>`],
  ['use href', (at) => `<use href="${at('svg')}#x"/>`],
  ['use xlink:href', (at) => `<use xlink:href="${at('svg')}#x"/>`],
  [
    'feImage',
    (at, n) =>
      `<filter id="f${n}" ${whole}><feImage href="${at('png')}"/><feMerge><feMergeNode in="SourceGraphic"/><feMergeNode/></feMerge></filter><g filter="url(#f${n})">${ground}</g>`,
  ],
  ['a paint server', (at) => `<rect ${whole} fill="url(${at('svg')}#x)"/>`],
  ['style with url()', (at) => `<rect ${whole} style="fill:url('${at('svg')}#x') none"/>`],
  [
    'mask and clip-path',
    (at) => `<g mask="url(${at('svg')}#x)" clip-path="url(${at('svg')}#x)">${ground}</g>`,
  ],
  ['marker', (at) => `<path d="M0 0L99 99" marker-end="url(${at('svg')}#x)"/>`],
  ['@import', (at) => `<style>@import url("${at('css')}");</style>`],
  ['@import without url', (at) => `<style>@import '${at('css')}';</style>`],
  [
    'font-face',
    (at, n) =>
      `<style>@font-face{font-family:c${n};src:url("${at('png')}")}</style><text y="1" font-family="c${n}" fill="#0a0">a</text>`,
  ],
  [
    'link to a style sheet',
    (at) => `<link xmlns="http://www.w3.org/1999/xhtml" rel="stylesheet" href="${at('css')}"/>`,
  ],
  [
    'script',
    (at) =>
      `<script>document.querySelector('rect').setAttribute('fill','#f0f');fetch('${at('png')}')</script><script href="${at('svg')}"/>`,
  ],
  [
    'foreignObject',
    (at) =>
      `<foreignObject ${whole}><img xmlns="http://www.w3.org/1999/xhtml" src="${at('png')}" style="background:url(${at('png')})"/></foreignObject>`,
  ],
  [
    'textPath and tref',
    (at) =>
      `<text fill="#0a0"><textPath href="${at('svg')}#x">a</textPath><tref xlink:href="${at('svg')}#x"/></text>`,
  ],
  [
    'an SVG inside by data:',
    (at) =>
      `<image ${whole} href="data:image/svg+xml;base64,${encoded(svg(`<image href="${at('png')}" ${whole}/>`))}"/>`,
  ],
  ['XInclude', (at) => `<include xmlns="http://www.w3.org/2001/XInclude" href="${at('svg')}"/>`],
  ['xml:base', (at) => `<g xml:base="${at('png')}"><image href="canary.png" ${whole}/></g>`],
];
/** The same before the root. */
const preambles: [way: string, drawing: (at: (ending: string) => string) => string][] = [
  [
    'a style sheet by instruction',
    (at) => `<?xml-stylesheet type="text/css" href="${at('css')}"?>`,
  ],
  ['a document type', (at) => `<!DOCTYPE svg SYSTEM "${at('dtd')}">`],
  ['a document type by public name', (at) => `<!DOCTYPE svg PUBLIC "c" "${at('dtd')}">`],
];
/** Entities are refused altogether when they come from outside. */
const entities: [way: string, drawing: (at: (ending: string) => string) => string][] = [
  [
    'entity from outside',
    (at) => `<!DOCTYPE svg [<!ENTITY c SYSTEM "${at('svg')}">]>${svg(`${ground}&c;`)}`,
  ],
  [
    'entity by public name',
    (at) => `<!DOCTYPE svg [<!ENTITY c PUBLIC "c" "${at('svg')}">]>${svg(`${ground}&c;`)}`,
  ],
  [
    'parameter entity',
    (at) =>
      `<!DOCTYPE svg [<!ENTITY % c SYSTEM "${at('dtd')}"> %c;]>${svg('<rect width="100" height="99" fill="&magenta;"/>')}`,
  ],
  [
    'entity behind a document type in a comment',
    (at) =>
      `<!-- <!DOCTYPE x> --><!DOCTYPE svg [<!ENTITY c SYSTEM "${at('svg')}">]>${svg(`${ground}&c;`)}`,
  ],
  [
    'entity behind a quotation mark in an instruction',
    (at) =>
      `<!DOCTYPE svg [<!ENTITY a "x"><?pi " ?><!ENTITY b "]>" ><!ENTITY c SYSTEM "${at('svg')}">]>${svg(`${ground}&c;`)}`,
  ],
];

const places: [kind: string, (ending: string) => string][] = [
  ['a neighbour', (ending) => `canary.${ending}`],
  ['./', (ending) => `./canary.${ending}`],
  ['a path', (ending) => join(folder, `canary.${ending}`)],
  ['file:', (ending) => pathToFileURL(join(folder, `canary.${ending}`)).href],
  ['http:', (ending) => `${address}canary.${ending}`],
  ['//', (ending) => `${address.replace('http:', '')}canary.${ending}`],
];

let count = 0;
/** 'green' when nothing else is to be seen, or the code of the error. */
async function drawn(drawing: string): Promise<string> {
  const path = join(folder, `drawing-${count++}.svg`);
  writeFileSync(path, drawing);
  try {
    const { data } = await readPicture(await readBytes(path), path);
    const pixels = new Uint32Array(data.buffer, data.byteOffset, data.length / 4);
    const [green] = new Uint32Array(Uint8Array.of(0, 0xaa, 0, 255).buffer);
    return pixels.every((pixel) => pixel === green) ? 'green' : 'something else';
  } catch (error) {
    expect(error).toBeInstanceOf(RondureError);
    return (error as RondureError).code;
  }
}

describe('an SVG that points outside', () => {
  it('would show the canary, were it inside', async () => {
    const inside = svg(
      `<image ${whole} href="data:image/png;base64,${readFileSync(join(folder, 'canary.png')).toString('base64')}"/>`,
    );
    const { data } = await readPicture(Buffer.from(inside), 'inside.svg');
    expect([...data.subarray(0, 4)]).toEqual([255, 0, 255, 255]);
    expect(await (await fetch(`${address}canary.css`)).text()).toContain('#f0f');
    expect(asked).toBe(1);
    asked = 0;
  });

  it.each(ways)('by %s: shows nothing of it and asks for nothing', async (_, content) => {
    const all = places.map(([, at], n) => content(at, n)).join('');
    expect(await drawn(svg(ground + all))).toBe('green');
    expect(asked).toBe(0);
  });

  it.each(preambles)('by %s: shows nothing of it and asks for nothing', async (_, preamble) => {
    // With a reference in it the drawing goes the long way, by a process of its own.
    const drawing = svg(`${ground}<g clip-path="none"/>`);
    for (const [, at] of places) expect(await drawn(preamble(at) + drawing)).toBe('green');
    expect(asked).toBe(0);
  });

  it.each(entities)('by %s: is refused', async (_, drawing) => {
    for (const [, at] of places) expect(await drawn(drawing(at))).toBe('svg-entities');
    expect(asked).toBe(0);
  });
});

/** Pictures inside an SVG are looked at before it is drawn, and that must not be its undoing. */
describe('an SVG with pictures inside', () => {
  const inside = (bytes: Uint8Array | string) =>
    svg(`${ground}<image ${whole} href="data:image/svg+xml;base64,${encoded(bytes)}"/>`);
  const laughs = Array.from(
    { length: 9 },
    (_, n) => `<!ENTITY a${n + 1} "${`&a${n};`.repeat(10)}">`,
  ).join('');

  it('that are empty is drawn without them', async () => {
    for (const href of ['data:,', 'data:image/png;base64,', 'data:image/svg+xml,']) {
      expect(await drawn(svg(`${ground}<image href="${href}" ${whole}/>`))).toBe('green');
    }
  });

  it('that swell is refused, packed or not', async () => {
    const bomb = `<!DOCTYPE svg [<!ENTITY a0 "ha">${laughs}]>${svg('<text>&a9;</text>')}`;
    const blank = gzipSync(Buffer.alloc(60e6, 32));
    for (const bytes of [bomb, gzipSync(bomb), gzipSync(inside(gzipSync(bomb))), blank]) {
      expect(await drawn(inside(bytes))).toMatch(/^svg-(entities|nested)$/);
    }
  });

  it.each([
    ['150,000 data: inside each other', svg(`<title>${'data:,'.repeat(150_000)}</title>${ground}`)],
    ['a name of 200,000 letters', svg(ground).replace('viewBox', `${'a'.repeat(200_000)} viewBox`)],
    [
      'a width of 200,000 digits',
      svg(ground).replace('viewBox', `width="${'1'.repeat(200_000)}!" viewBox`),
    ],
    ['100,000 comments that are not closed', `<!DOCTYPE svg [${'<!--'.repeat(100_000)}`],
    [
      '50,000 entities that are not closed',
      `<!DOCTYPE svg [${'<!ENTITY a "'.repeat(50_000)}]>${svg(ground)}`,
    ],
    ['100,000 document types', svg(`<title>${'<!DOCTYPE ['.repeat(100_000)}</title>`)],
    [
      'a style of 40,000 widths',
      svg(ground).replace('viewBox', `style="${'width : '.repeat(40_000)}" viewBox`),
    ],
  ])('of %s takes no more than a moment', async (_, drawing) => {
    // The time of this process, not of the clock: other programs may be busy.
    const start = process.cpuUsage();
    await drawn(drawing);
    expect(process.cpuUsage(start).user / 1e6).toBeLessThan(5);
  });
});
