import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';
import { before } from './before.js';
import { alt, edition } from './edition.js';
import { lists } from './lists.js';
import { making } from './making.js';
import { enlarged, level, wedgeChart } from './sheets.js';
import { work } from './work.js';

const { fixed, many, sizeInches, sizeMm } = numbersIn('cs');

/** What stands on the pages of a booklet that no other file says. */
export const booklet: PageWords['booklet'] = {
  subject: 'Návod na kulatý díl háčkovaný s korálky',
  kind: 'Návod na háčkování s korálky do kruhu',
  size: (f) => `Hotový díl široký asi ${sizeMm(f.across, 0)} mm (${sizeInches(f.across)} palce)`,
  sizeFrom: {
    swatch: 'podle vzorku autora návodu',
    model: 'odhad, dokud neuháčkujete vzorek',
  },
  amounts: (f) =>
    [
      f.panels === 1
        ? '1 díl, háčkuje se dvakrát'
        : many(f.panels, { one: 'díl', few: 'díly', other: 'dílů' }),
      many(f.rounds, { one: 'kolo', few: 'kola', other: 'kol' }),
      lists.beads(f.beads),
      many(f.colours, { one: 'barva', few: 'barvy', other: 'barev' }),
    ].join('  ·  '),
  by: (author) => `autor: ${author}`,

  panelNames: { front: 'přední', back: 'zadní' },
  pageOf: (f) => `${f.page} z ${f.pages}`,
  panel: (f) => `díl „${f.panel}“`,
  // M: úsek, one strung thread of several.
  length: (f) => `úsek ${f.length} z ${f.lengths}`,
  continued: (heading) => `${heading}, pokračování`,
  parts: {
    cover: 'Obálka',
    materials: 'Materiál a nářadí',
    before: 'Než začnete',
    chart: 'Schéma',
    rounds: 'Kolo po kole',
    stringing: 'Seznam navlékání',
    making: 'Dokončení',
    lining: 'Střih podšívky',
    cautions: 'Pozor',
    last: 'O tomto návodu',
  },
  ofPanel: (f) => `${f.part}: ${f.panel}`,

  materials: {
    beads: 'Korálky',
    columns: {
      bead: 'Písm.',
      name: 'Název',
      id: 'Kód',
      charted: (panels) => (panels === 1 ? 'Jeden díl' : 'Oba díly'),
      reserve: 'Na peněženku, s rezervou',
      grams: 'Kolik gramů',
    },
    total: 'Všechny korálky',
    unknownGrams: '–',
    onePanel:
      'Schéma je jeden díl. Peněženka má dva: počty s rezervou jsou na přední a stejný zadní.',
    twoPanels: 'Peněženka má dva díly a tento návod má oba.',
    thread: 'Nit',
    estimate:
      'Kolik nitě vezme očko, je u každé ruky jiné: označte si na niti metr, uháčkujte ho, spočítejte očka a toto číslo před nákupem opravte.',
    ownFigure: 'Spotřeba nitě na očko je vlastní údaj autora návodu.',
    tools: 'Nářadí, rámeček, podšívka',
  },

  before,

  rounds: {
    round: 'Kolo',
    work: 'Jak háčkovat',
    stitches: 'Očka',
    beads: 'Korálky',
    total: 'Korálky celkem',
    how: 'Počítejte, když je kolo hotové: poslední sloupec říká, kolik korálků je uháčkováno do konce kola.',
  },

  stringing: {
    round: (f) =>
      f.part
        ? `${lists.round(f.round)}, část: ${lists.beads(f.beads)}`
        : `${lists.round(f.round)}: ${lists.beads(f.beads)}`,
    total: (total) => `celkem ${lists.number(total)}`,
    totalGrams: (f) => `celkem ${lists.number(f.total)} · ${fixed(f.grams, 1)} g`,
    weigh:
      'Gramy vedle součtu jsou gramy dosud navlečených korálků: nit před začátkem zvažte a její hmotnost odečtěte. Váha musí ukazovat desetiny gramu; korálky z jedné skleničky se liší, proto rozhoduje počítání.',
    tickOne:
      'V každém řádku zleva. Odškrtněte čtvereček, když je jeho řádek na niti, a u každého součtu počítejte.',
    tick: 'Nejdřív levý sloupec dolů, potom pravý; v každém řádku zleva. Odškrtněte čtvereček, když je jeho řádek na niti, a u každého součtu počítejte.',
    weight: (f) =>
      `Dohromady ${lists.beads(f.beads)}; navlečené, bez nitě: hmotnost asi ${fixed(f.grams, 1)} g, délka asi ${fixed(f.metres, 2)} m. Na jejich uháčkování je třeba asi ${fixed(f.threadM, 1)} m nitě, i s konci a rezervou.`,
    noWeight: (f) =>
      `Dohromady ${lists.beads(f.beads)}, navlečené asi ${fixed(f.metres, 2)} m. Na jejich uháčkování je třeba asi ${fixed(f.threadM, 1)} m nitě, i s konci a rezervou.`,
    rounds: (f) =>
      f.first === f.last ? `Pro kolo ${f.first}.` : `Pro kola ${f.first} až ${f.last}.`,
    first: 'První korálek tohoto seznamu jde na nit jako první a uháčkuje se jako poslední.',
    nothing: 'O žádném korálku ještě není rozhodnuto, takže není co navlékat.',
  },

  work,

  making,
  enlarged,
  wedgeChart,
  level,
  edition,
  alt,

  last: {
    title: 'Název',
    author: 'Autor',
    date: 'Datum tohoto vydání',
    licence: 'Licence',
    noLicence:
      'Žádná není uvedena. Než návod předáte dál nebo prodáte, co podle něj uděláte, zeptejte se autora.',
    version: 'Verze',
    versionText: (f) => `Vytvořeno programem Rondure ${f.program}, formát návodu ${f.format}`,
    figures: 'Čísla',
    figuresText:
      'Počty korálků jsou přesné. Gramy, délky nitě, velikosti a nářadí jsou odhady, dokud neuháčkujete vzorek; co se uvádí jako obvyklé, je běžná praxe nebo údaj zpaměti, bez zveřejněného zdroje.',
    read: 'K předčítání',
    readText:
      'Všechny seznamy v tomto sešitu jsou text, který lze prohledávat, kopírovat a nechat předčítat. Každý korálek má písmeno, takže není třeba rozeznávat žádnou barvu.',
  },
};
