import type { WorktableWords } from '../index.js';

/** The step Purse: both sides in their frame. */
export const purse: WorktableWords['purse'] = {
  step: 'Peněženka',
  label: 'Peněženka, jak visí, s mincí a pravítkem vedle',
  back: 'Zadní díl',
  backHow: 'Pod peněženkou zvolte Vzadu, pak krok Obrázek: obrázek zadního dílu se klade zvlášť.',
  plain: 'Nebo celý z jednoho korálku',
  frame: 'Rámeček',
  width: 'Šířka',
  height: 'Výška',
  corner: 'Poloměr rohů',
  hinges: 'Mezi panty',
  channel: 'Hloubka žlábku',
  holes: 'Od dírky k dírce',
  bare: 'Kola bez korálků',
  mm: 'mm',
  frameHow: 'Měřte tam, kde bude okraj: napříč a od čáry mezi panty nahoru.',
  fixing: 'Jak se upevní',
  fits: (n) => `Už se hodí: počet kol v tomto rámečku je ${n}.`,
  fitNow: ({ before, after }) => `Díl se teď hodí do rámečku. Kola: ${before} → ${after}.`,
  sits: 'Jak sedí',
  worn: ({ panel, frame }) => `Díl visí ${panel} mm široký v rámečku širokém ${frame} mm.`,
  inFrame: ({ n, round, bare }) =>
    `V rámečku: očka ${n} v kole ${round}. Kola bez korálků pod ním: ${bare}.`,
  hingesAt: ({ left, right }) => `Panty přijdou mezi očka ${left} vlevo a ${right} vpravo.`,
  seam: ({ n, mm }) => `Dole sešito: očka ${n}, ${mm} mm.`,
  holesHow: ({ spaces, stitches, more }) =>
    `Asi ${spaces} mezer mezi dírkami: v každé ${stitches} oček, o jedno víc v ${more} z nich.`,
  lining: 'Podšívka',
  liningHow: ({ cut, seam }) =>
    `Látku střihněte ${cut} mm širokou; šev vede v ${seam} mm. Střih je v sešitu.`,
  size: 'Skutečná velikost',
  cardHow:
    'Přiložte k obrazovce platební kartu a táhněte, až bude pole stejně velké. Platí pro tuto obrazovku.',
  cardBox: 'velké jako platební karta',
  steps: {
    frame: 'rámeček',
    back: 'zadní díl peněženky',
    fit: 'přizpůsobení dílu rámečku',
  },
};
