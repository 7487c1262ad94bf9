// Drawings that would eat the machine. tests/heavy-input.test.ts and bench/heavy-inputs.js read them.
import { readFileSync } from 'node:fs';

const bad = new URL('../../fixtures/pictures/bad/', import.meta.url);

/** A drawing of 99 by 99. */
export const svg = (content, before = '') =>
  `${before}<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 99 99">${content}</svg>`;
export const image = (href) => svg(`<image width="99" height="99" href="${href}"/>`);
const repeated = (count, one) => Array.from({ length: count }, (_, n) => one(n)).join('');
const square = '<rect width="99" height="99" fill="#0a0"/>';

/** 400 valid megapixels of one bit, in base64. */
const bomb = readFileSync(new URL('bomb-valid-20000x20000-1bit.png', bad)).toString('base64');
const inner = Buffer.from(image(`data:image/png;base64,${bomb}`)).toString('base64');
const css = `fill:url(d\\61 ta:image/svg+xml;base64,${inner}#p)`;

/** The same with 5,000 pixels a side in its header, which is all that is looked at. */
function smaller() {
  const bytes = Buffer.from(bomb, 'base64');
  bytes.writeUInt32BE(5000, 16);
  bytes.writeUInt32BE(5000, 20);
  return bytes.toString('base64');
}

const percent = Buffer.from(bomb, 'base64').subarray(0, 99).toString('hex').replace(/../g, '%$&');

/** Pictures of 400 megapixels inside, each [how it is hidden, drawing]: 1.5 to 7.7 GB when decoded. */
export const hiddenPictures = [
  ['as it stands', image(`data:image/png;base64,${bomb}`)],
  ['behind a character reference', image(`d&#x0000061;ta:image/png;base64,${bomb}`)],
  ['with a reference for its comma', image(`data:image/png;base64&#44;${bomb}`)],
  [
    'behind an entity',
    image(`&d;${bomb}`).replace('<svg', '<!DOCTYPE svg [<!ENTITY d "data:image/png;base64,">]><svg'),
  ],
  ['behind a tab', image(`d&#9;ata:image/png;base64,${bomb}`)],
  ['behind spaces', image(`  data:image/png;base64 ,${bomb}`)],
  ['behind a long type', image(`data:image/png;${'a=b;'.repeat(1000)}base64,${bomb}`)],
  ['behind a mark in its type', image(`data:image/png;a=&gt;;base64,${bomb}`)],
  ['with a percent sign', image(`data:image/png;base64,%69${bomb.slice(1)}`)],
  ['in a style sheet', svg(`<style>rect{${css}}</style><rect width="9" height="9"/>`)],
  [
    'in a style sheet, cut by a comment',
    svg(`<style>rect{${css.replace('base64', 'base<!-- -->64').replace('\\61 ', 'a')}}</style>`),
  ],
  ['in a drawing in a drawing', image(`data:image/svg+xml;base64,${inner}`)],
  [
    'in a drawing behind percent signs',
    image(`data:image/svg+xml,${encodeURIComponent(image(`data:image/png;base64,${bomb}`))}`),
  ],
  ['as bytes behind percent signs', image(`data:image/png,${percent}`)],
  ['four times, each small enough', svg(image(`data:image/png;base64,${smaller()}`).repeat(4))],
]; // prettier-ignore

/** Texts that are long rather than hard to draw, each [what it is, drawing]. */
export const longTexts = [
  ['200,000 comments before the root', svg('', '<!-- a -->'.repeat(200_000))],
  ['200,000 comments and no root', '<!-- a -->\n'.repeat(200_000)],
  ['a million spaces before a comment', ' '.repeat(1_000_000) + '<!--'],
  ['300,000 instructions before the root', svg('', '<?a b?>'.repeat(300_000))],
  ['200,000 attributes', svg('').replace('viewBox', `${'a="1" '.repeat(200_000)} viewBox`)],
  ['200,000 data: with one comma', svg(`<title>${'data:'.repeat(200_000)},</title>`)],
  ['100,000 CDATA that are not closed', svg('<![CDATA[<!--'.repeat(100_000))],
  ['a million references', svg(`<title>${'&#9;'.repeat(1_000_000)}</title>`)],
  ['a million spaces in a head', svg(`<a b="data:${' '.repeat(1_000_000)},"/>`)],
];

/** 40 masks, each under the next (2.8 GB when drawn). */
export const masksInMasks = svg(
  `<defs>${repeated(40, (n) => `<mask id="m${n}" x="-9" y="-9" width="999" height="999"><rect width="99" height="99" fill="#fff" mask="url(#m${n + 1})"/></mask>`)}</defs>` +
    '<rect width="99" height="99" mask="url(#m0)"/>',
);

const radial = '<radialGradient id="a"><stop stop-color="red"/><stop offset="1"/></radialGradient>';
const filtered = (filter, count) =>
  `<filter id="f">${filter}</filter>${repeated(count, () => `<g filter="url(#f)">${square}</g>`)}`;

/** Sheets that all stay in memory until they are laid on each other. */
export const filterOfSheets = svg(
  filtered(
    repeated(80, (n) => `<feFlood result="r${n}"/>`) +
      `<feMerge>${repeated(80, (n) => `<feMergeNode in="r${n}"/>`)}</feMerge>`,
    1,
  ),
);

/** Each doubles what the one before it names: 2^24 squares out of some 1200 letters. */
const doubling =
  `<defs><g id="g0">${square}</g>` +
  repeated(24, (n) => `<g id="g${n + 1}"><use href="#g${n}"/><use href="#g${n}"/></g>`) +
  '</defs><use href="#g24"/>';

/** Drawings that take long to draw, each [what it is, content of the drawing]. */
export const longDrawings = [
  [
    '1,000 gradients over everything',
    radial + repeated(1000, () => `<path fill="url(#a)" d="M0 0h99v99H0"/>`),
  ],
  [
    'a path of 16,000 letters',
    `<path stroke="red" stroke-width="9" stroke-linejoin="round" d="M0 0${repeated(2700, (n) => `T${(n * 37) % 99} ${(n * 61) % 99}`)}"/>`,
  ],
  [
    '100 filters of wide blur',
    filtered('<feGaussianBlur stdDeviation="30"/><feTurbulence numOctaves="9"/><feGaussianBlur stdDeviation="30"/>', 100),
  ],
  ['uses that double 24 times', doubling],
  [
    'patterns within patterns',
    repeated(
      9,
      (n) =>
        `<pattern id="p${n}" width=".01" height=".01">${n > 0 ? `<rect width="99" height="99" fill="url(#p${n - 1})"/>` : square}</pattern>`,
    ) + '<rect width="99" height="99" fill="url(#p8)"/>',
  ],
  [
    '600 see-through groups inside each other',
    repeated(600, () => '<g opacity=".9">') + square + repeated(600, () => '</g>'),
  ],
  ['100,000 elements', repeated(100_000, (n) => `<rect x="${n % 99}" width="9" height="9"/>`)],
  [
    '100,000 elements inside each other',
    repeated(100_000, () => '<g>') + square + repeated(100_000, () => '</g>'),
  ],
]; // prettier-ignore

/** Filters that take long, each [what it is, drawing]. */
export const longFilters = [
  ['a filter of 9,999 octaves', svg(filtered('<feTurbulence baseFrequency="9" numOctaves="9999"/>', 99))],
  ['a filter that thickens by 99', svg(filtered('<feMorphology operator="dilate" radius="99"/>', 99))],
  ['a filter of a large matrix', svg(filtered(`<feConvolveMatrix order="99" kernelMatrix="${'1 '.repeat(99 * 99)}"/>`, 99))],
  ['a filter of 300 lights', svg(filtered('<feDiffuseLighting><fePointLight x="9" y="9" z="9"/></feDiffuseLighting>'.repeat(300), 9))],
]; // prettier-ignore
