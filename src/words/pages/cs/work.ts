import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count } = numbersIn('cs');

/** The order of the work, and what stands on its pages. */
export const work: PageWords['booklet']['work'] = {
  contents: 'Obsah',
  glance: 'Postup v kostce',
  steps: {
    gather: 'Připravte korálky, nit a nářadí',
    swatch: 'Uháčkujte vzorek a změřte ho',
    string: (f) => (f.lengths === 1 ? 'Navlékněte korálky' : `Navlékněte úsek ${f.length}`),
    rounds: (f) =>
      f.first === f.last ? `Uháčkujte kolo ${f.first}` : `Uháčkujte kola ${f.first} až ${f.last}`,
    again: 'Uháčkujte stejný díl ještě jednou',
    seam: 'Sešijte díly',
    frame: 'Upevněte peněženku do rámečku',
    lining: 'Všijte podšívku',
  },
  print: 'Než začnete tisknout',
  printText: (f) =>
    `Tiskněte ve 100 %, bez přizpůsobení stránce. Každá strana tohoto čtverce musí měřit ${f.side}. Pokud neměří, není v tomto sešitu ve skutečné velikosti nic, co tak má být: nastavte tiskárnu na 100 % nebo „skutečnou velikost“ a vytiskněte znovu.`,
  stop: 'Stůjte',
  seePage: (f) => `Viz strana ${f.page}.`,
  part: 'Navlékání a háčkování',
  heads: { string: 'Korálky k navlečení', total: 'Součet', grams: 'g', count: 'Korálky' },
  tick: (f) =>
    `Každý řádek${f.brackets ? ' i každé opakování části v závorkách' : ''} má čtvereček: odškrtněte ho, když jsou jeho korálky na niti. Víc než 20 stejných korálků je rozděleno po deseti. Součet za řádkem počítá korálky tohoto úseku až do jeho konce.`,
  twoBoxes: 'Ze dvou čtverečků vedle sebe patří každému dílu jeden.',
  roundsTick:
    'Tenká svislá čára odděluje klíny. Čtvereček odškrtněte, když je kolo hotové; součet počítá všechny dosud uháčkované korálky.',
  mixed: (f) =>
    `${count(f.beads)}/${count(f.stitches)} znamená ${count(f.beads)} korálků v ${count(f.stitches)} sloupcích; ostatní jsou holé.`,
  round: (round) => `Kolo ${round}`,
  working: {
    part: 'Schéma, jak ho vidíte při práci',
    note: (f) =>
      `Toto je strana, na kterou se při háčkování díváte, otočená tak, jak vám leží v ruce: začátek je nahoře a práce běží ${f.hand === 'right' ? 'doleva' : 'doprava'}, směrem od háčku.${f.mirrored ? ' Korálky leží vzadu, proto je obrázek stranově obrácený proti hotové peněžence.' : ''}`,
    wedges: 'Čísla v kroužcích počítají klíny ve směru práce.',
    hook: 'háček',
    use: 'Při háčkování se řiďte schématem, jak ho vidíte při práci; hotový díl přiložte ke schématu strany s korálky.',
  },
  sector: {
    name: (f) => (f.from === f.to ? `klín ${f.from}` : `klíny ${f.from} až ${f.to}`),
    how: 'Bledé korálky po stranách patří sousedním klínům. Čísla stojí před prvním okem každého kola.',
  },
  time: (f) => `Čas: ${f.time}`,
  rights: {
    title: 'Práva',
    none: 'Tento sešit neuvádí autora ani licenci. Používejte ho jen pro sebe, dokud vám ten, od koho ho máte, neřekne, co dalšího s ním smíte dělat.',
    authorOnly: (f) =>
      `Autor návodu: ${f.author}; licence není uvedena. Než návod předáte dál nebo prodáte, co podle něj uděláte, zeptejte se.`,
    contact: 'Opravy',
    contactText: (f) => `Našli jste chybu nebo je něco nejasné? Napište: ${f.contact}.`,
  },
  yours: {
    title: 'Vaše peněženka',
    madeFor: 'Pro koho',
    begun: 'Začato',
    finished: 'Dokončeno',
    swatch: 'Můj vzorek',
    bead: 'Korálky',
    thread: 'Nit',
    hook: 'Háček',
    after: (f) => `Šířka po ${f.rounds} kolech`,
    notes: 'Poznámky',
  },
  alt: {
    square: 'Čtverec, podle kterého se přeměří tisk.',
    photo: 'Fotografie hotového kusu.',
    purse: (f) => `Kresba zavřené peněženky v rámečku: ${f.panel}.`,
    working:
      'Schéma dílu, jak ho vidíte při práci. Seznam kol říká totéž slovy a u materiálu jsou vysvětlena písmena.',
    sector: (f) => `Zvětšené schéma, ${f.wedges}. Seznam kol říká totéž slovy.`,
  },
  listing: {
    size: 'Velikost',
    level: 'Obtížnost',
    beads: 'Korálky',
    tools: 'Dále potřebujete',
    file: 'V souboru',
    fileText: (f) =>
      `Jedno PDF, ${f.pages} stran, ${f.paper}, ${f.languages}. Dá se prohledávat a nechat předčítat; každý korálek má písmeno, takže není třeba rozlišovat barvy.`,
    digital: 'Je to návod ke stažení a vytištění. Korálky ani nářadí nejsou součástí.',
  },
};
