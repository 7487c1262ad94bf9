import type { FrameKind, StitchSpan } from '../english/frame.js';
import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { short } = numbersIn('tr');

/** `1–30 ve 111–140`. */
export const runsText = (runs: readonly StitchSpan[]): string =>
  runs.length === 0
    ? 'yok'
    : runs.map(({ from, to }) => (from === to ? String(from) : `${from}–${to}`)).join(' ve ');

const kinds: Record<FrameKind, string> = {
  'half-round': 'yarım ay',
  squared: 'köşeli',
  oval: 'oval',
};
const fixings = { sewn: 'dikilen', glued: 'yapıştırılan' };

export const frame: PageWords['frame'] = {
  kinds,
  // M: burs, a clasp frame.
  paragraph: (f) =>
    [
      `Burs (${kinds[f.kind]}, ${short(f.widthMm, 1)} mm genişlikte, ${fixings[f.fixing]} tür). ${f.round}. sıranın bursun içinde kalan ilmekleri: ${runsText(f.runs)}; saat 12 hizasının iki yanında uzunlukları eşittir.`,
      `Boncuklu yüzden bakınca sol menteşe ${f.left.inFrame} ve ${f.left.inSeam} numaralı ilmeklerin arasına, sağ menteşe ${f.right.inFrame} ve ${f.right.inSeam} numaralı ilmeklerin arasına gelir. Dikiş bunların altında başlar.`,
      f.bare.length === 0
        ? 'Burs için boş bırakılan ilmek yoktur.'
        : `Boş bırakılan, boncuksuz örülen ilmekler: ${f.bare.map(({ round, runs }) => `${round}. sırada ${runsText(runs)}`).join('; ')}.`,
    ].join(' '),
  spread: (f) =>
    `Her panelde bursun içindeki ilmekleri (${f.stitches}) burs boyunca, menteşeden menteşeye ${short(f.railMm, 1)} mm’ye eşit dağıtın${f.holes ? `: delikler ${short(f.holes.spacingMm, 1)} mm arayla ise iki delik arasına yaklaşık ${short(f.holes.perSpace, 1)} ilmek düşer. Kendi bursunuzun deliklerini sayın` : ''}.${
      Math.abs(f.longerPercent) < 0.05
        ? ''
        : f.longerPercent > 0
          ? ` Kenar burstan %${short(Math.abs(f.longerPercent), 1)} daha uzundur: bolluğu eşit yedirin.`
          : ` Kenar burstan %${short(Math.abs(f.longerPercent), 1)} daha kısadır: eşit esnetin.`
    }`,
  word: 'burs',
  mark: 'Kenarın, menteşe olan iki nokta arasındaki bölümü bursun içinde kalır.',
};
