// The pure core alone: pixels made in code, no files, no canvas. All but the last import runs in a
// browser as it stands; there, give `loadFonts` the bytes of two TTF files instead.
//
//   node examples/pixels-to-chart.js > moon.svg
import {
  chartSvg,
  en,
  expandStringing,
  makePattern,
  panelFootprints,
  panelGeometry,
  readPalette,
  stringingCsv,
} from 'rondure';
import { bundledFonts } from 'rondure/node';

/** A barley moon on a night sky: 64 × 64 pixels, 4 bytes each (red, green, blue, alpha). */
export function moonPicture(width = 64, height = 64) {
  const data = new Uint8ClampedArray(4 * width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const fromMiddle = Math.hypot(x + 0.5 - width / 2, y + 0.5 - height / 2);
      const [r, g, b] = fromMiddle < width / 4 ? [240, 214, 138] : [27, 42, 82];
      data.set([r, g, b, 255], 4 * (y * width + x));
    }
  }
  return { width, height, data };
}

export function moonPattern() {
  const palette = readPalette('id,name,hex\nn1,night,#1b2a52\nm1,barley,#f0d68a\n', 'two beads');
  return makePattern({
    picture: moonPicture(),
    pictureName: 'moon',
    title: 'Barley moon',
    beads: palette.beads,
    colours: 2,
    shape: { wedges: 6, rounds: 12, beadDiameterMm: palette.diameterMm },
    place: { place: 'fill' },
    art: 'drawing',
    background: '#1b2a52',
  }).pattern;
}

const pattern = moonPattern();
const panel = 0;

// The geometry is the heart: centres in millimetres, and the area that each stitch owns.
const { startDegrees } = pattern.panels[panel];
const geometry = panelGeometry(pattern.shape, { startDegrees });
const footprints = panelFootprints(geometry);
const fonts = await bundledFonts();
console.log(chartSvg({ pattern, panel, geometry, footprints, words: en, fonts }));

// What goes on the thread, first bead strung first, is the panel from its last stitch to its first.
const strung = expandStringing(stringingCsv(pattern, panel));
const worked = pattern.panels[panel].rounds.join('');
if ([...strung].reverse().join('') !== worked) throw new Error('The list does not fit the chart.');
