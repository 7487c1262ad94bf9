import { readFileSync, readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import { decideArt } from '../src/core/picture/sampling/art.js';
import { readPicture } from '../src/node/read/read-picture.js';

/** Photo or drawing, as judged by looking at each, before `auto` was asked. */
const verdicts: Record<string, 'photo' | 'drawing'> = {
  'kingfisher.svg': 'drawing',
  'lighthouse.svg': 'drawing',
  'barley-moon.svg': 'drawing',
  'pictures/alpha-lotus.png': 'drawing',
  'pictures/gradient-blue-button.svg': 'drawing',
  'pictures/cat-chelsea.png': 'photo',
  'pictures/dahlia.jpg': 'photo',
  'pictures/flamingo.png': 'drawing',
  'pictures/format-dahlia.webp': 'photo',
  'pictures/moon.svg': 'drawing',
  'pictures/nesting-doll.svg': 'drawing',
  'pictures/onebit-engraving.png': 'drawing',
  'pictures/rooster.svg': 'drawing',
  'pictures/sakura.svg': 'drawing',
  'pictures/solomons-knot.svg': 'drawing',
  'pictures/star-30-thin.svg': 'drawing',
  'pictures/sunflower.svg': 'drawing',
  'pictures/triskell.svg': 'drawing',
};

const fixtures = new URL('../fixtures/', import.meta.url);

it('every open picture has a verdict', () => {
  const files = readdirSync(new URL('pictures/', fixtures)).filter((name) => name.includes('.'));
  const open = files.filter((name) => !/\.md$|^fully-transparent/.test(name));
  expect(Object.keys(verdicts)).toEqual(expect.arrayContaining(open.map((f) => `pictures/${f}`)));
});

it.each(Object.entries(verdicts))('%s is a %s', async (file, verdict) => {
  const picture = await readPicture(readFileSync(new URL(file, fixtures)), file);
  expect(decideArt(picture).art).toBe(verdict);
});
