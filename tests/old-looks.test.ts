import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readPalette } from '../src/core/beads/palette/read-palette.js';
import { makePattern } from '../src/core/make.js';
import { readPicture } from '../src/node/read/read-picture.js';

const file = (name: string) => readFileSync(new URL(`../${name}`, import.meta.url));
const { beads } = readPalette(file('palettes/drawers.csv').toString(), 'drawers.csv');

// SHA-256 of beads, rounds and choice as they were before place, ground, edges and lift had
// defaults of their own: whoever made a panel then can make it again.
test.each([
  ['cat-chelsea.png', '975fb27c0ac0f510a3bcb9b21bf875841c70456603f43a01cd2bedd642cd0994'],
  ['alpha-lotus.png', '5b9f1c67f3ac86be7d958f8359df34896d73dc9c5dc7835068a7724baf0a8fae'],
  ['dahlia.jpg', '69edbc809d105609d30b65f23c2134d05e670665f541117982330b7bb62657c4'],
  ['flamingo.png', 'c715345978190bbec44ca673553e836c15b278c80b5206e90beb9f710047db5e'],
])('--place fill --background ffffff: %s looks as it did', async (name, sha256) => {
  const picture = await readPicture(file(`fixtures/pictures/${name}`), name);
  const { pattern } = makePattern({
    picture,
    pictureName: 'x',
    title: 'x',
    beads,
    colours: 8,
    shape: { wedges: 7, rounds: 12, beadDiameterMm: 2.1 },
    place: { place: 'fill' },
    art: 'auto',
    edges: 0,
    lift: 0,
    background: '#ffffff',
    tidy: 3,
  });
  const told = [pattern.beads.map(({ id }) => id), pattern.panels[0].rounds, pattern.choice];
  expect(createHash('sha256').update(JSON.stringify(told)).digest('hex')).toBe(sha256);
});
