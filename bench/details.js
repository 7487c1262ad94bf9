// Small features that the beads keep, without and with `--detail`, and what it costs in mean
// difference. Lighthouse and nesting doll took no part when the default was chosen.
import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { decideBeads } from '../dist/core/beads/decide-beads.js';
import { panelFootprints } from '../dist/core/panel/footprints.js';
import { panelGeometry } from '../dist/core/panel/geometry.js';
import { defaultDetail } from '../dist/core/picture/importance/stitch-importance.js';
import { readPalette } from '../dist/core/beads/palette/read-palette.js';
import { decideArt } from '../dist/core/picture/sampling/art.js';
import { placePicture } from '../dist/core/picture/sampling/place.js';
import { samplePanel } from '../dist/core/picture/sampling/sample.js';
import { completeShape } from '../dist/core/panel/shape.js';
import { readPicture } from '../dist/node/read/read-picture.js';
import { featuresKept, smallFeatures } from './small-features.js';

const pictures = [
  ...['kingfisher', 'barley-moon', 'lighthouse'].map((name) => `${name}.svg`),
  ...['sunflower', 'nesting-doll', 'rooster', 'sakura'].map((name) => `pictures/${name}.svg`),
  ...['solomons-knot', 'triskell', 'moon'].map((name) => `pictures/${name}.svg`),
  ...['flamingo.png', 'cat-chelsea.png', 'dahlia.jpg'].map((name) => `pictures/${name}`),
];
const fixtures = new URL('../fixtures/', import.meta.url);
const palette = new URL('../palettes/drawers.csv', import.meta.url);
const { beads } = readPalette(readFileSync(palette, 'utf8'), 'drawers.csv');
/** Most that detail may cost in mean difference, on average. */
const mostCost = 0.01;

/** @returns {Promise<{ name: string, value: number, bar: string, ok: boolean }[]>} */
export async function run() {
  const geometry = panelGeometry(completeShape({ wedges: 7, rounds: 30, beadDiameterMm: 2.1 }));
  const footprints = panelFootprints(geometry);
  const panels = [];
  for (const file of pictures) {
    const picture = await readPicture(readFileSync(new URL(file, fixtures)), file);
    const place = placePicture(picture, geometry, { place: 'fill' });
    const { art } = decideArt(picture);
    const sampled = { picture, geometry, footprints, place, art, background: [255, 255, 255] };
    const features = smallFeatures(picture, { geometry, footprints, place });
    const colours = samplePanel(sampled);
    panels.push({ features, panel: { geometry, footprints, colours, repeat: false } });
  }
  const all = panels.reduce((sum, { features }) => sum + features.length, 0);
  return [4, 6, 8, 12].flatMap((most) => {
    let [off, on, cost] = [0, 0, 0];
    for (const { features, panel } of panels) {
      const decide = (detail) =>
        decideBeads({ beads, colours: most, background: '#ffffff', detail }, panel);
      const [without, withDetail] = [decide(0), decide(defaultDetail)];
      off += featuresKept(features, (s) => beads[without.beadOf[s]].lab);
      on += featuresKept(features, (s) => beads[withDetail.beadOf[s]].lab);
      cost += (withDetail.mean / without.mean - 1) / panels.length;
    }
    const what = `${most} colours, --detail ${defaultDetail}`;
    return [
      {
        name: `small features kept ÷ without (${on} : ${off} of ${all}), ${what}`,
        value: on / off,
        bar: '≥ 1',
        ok: on >= off,
      },
      { name: `added mean difference, ${what}`, value: cost, bar: '≤ 0.01', ok: cost <= mostCost },
    ];
  });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) console.table(await run());
