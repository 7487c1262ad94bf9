import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count, form, short } = numbersIn('cs');

/** What stands on the guide to a swatch. */
export const swatch: PageWords['swatch'] = {
  guide: {
    title: 'Změřte své očko',
    describe:
      'Jak uháčkovat a změřit vzorek, s měřidlem pootočení, na které se položí; tiskne se ve 100% měřítku.',
    intro:
      'Každá ruka háčkuje jiné očko. Malý zkušební díl, vzorek, řekne, jak je vaše vysoké, široké a šikmé, aby schéma i hotová velikost odpovídaly vaší ruce.',
    steps: (f) => [
      {
        head: 'Uháčkujte ho.',
        text: `Na klubko navlékněte ${count(f.beads)} ${form(f.beads, { one: 'korálek', few: 'korálky', other: 'korálků' })} (${f.size}) jedné barvy a nití a háčkem na peněženku uháčkujte vzorek: kola: ${f.rounds}, klíny: ${f.wedges}, v každém očku korálek (poslední list řekne, jak se očko háčkuje), přidání v ${{ first: 'prvním', middle: 'prostředním', last: 'posledním' }[f.increase]} očku každého klínu, ${f.construction === 'spiral' ? 've spirále' : 'každé kolo uzavřené'}, ${f.hand === 'right' ? 'pravou' : 'levou'} rukou. Po kole ${f.fromRound} označte nit 1 m od háčku.`,
      },
      {
        head: 'Označte ho.',
        text: `V kole ${f.fromRound} a v kole ${f.toRound} dejte kolem prvního očka klínu ${f.markedWedge} smyčku z výrazné nitě${f.markedWedge === 1 ? ' (je to první očko kola)' : ''}.`,
      },
      {
        head: 'Prohlédněte ho.',
        text: 'Navlhčete ho, urovnejte dlaní a nechte uschnout. Leží naplocho? Pokud stojí jako miska nebo se okraj vlní, zapište to a krok 4 vynechejte.',
      },
      {
        head: 'Šířka.',
        text: 'Nejširší místo, přes vnější okraje korálků, posuvným měřítkem nebo mezi dvěma svislými hranoly.',
      },
      {
        head: 'Po okraji.',
        text: `Uprostřed klínu ${f.rimWedge} položte po posledním kole nit v délce 50 mm, přes středy korálků, a spočítejte očka od středu korálku ke středu korálku. Poloviny se počítají.`,
      },
      {
        head: 'Pootočení.',
        text: `Položte ho na měřidlo, korálky nahoru, otvorem na křížek, označeným očkem kola ${f.fromRound} na čáru 0. Od křížku přes označené očko kola ${f.toRound} přiložte pravítko: odečtěte stupně a to, zda jsou po směru práce, nebo proti němu.`,
      },
      {
        head: 'Nit.',
        text: `Kolik oček dal ten metr, od konce kola ${f.fromRound}, až značka došla k háčku?`,
      },
      { head: 'Korálky.', text: 'Navlékněte 50 korálků, srazte je k sobě a změřte řadu.' },
    ],
    write: 'Zapište si',
    blanks: (f) => [
      'naplocho, miska nebo vlny',
      'šířka, mm',
      'oček na 50 mm okraje',
      `pootočení, kolo ${f.fromRound} až ${f.toRound}, stupně`,
      'po směru práce, nebo proti',
      'oček z 1 m nitě',
      '50 korálků, mm',
      'očko 1 až 3 (poslední list)',
    ],
    then: 'Tato čísla pak i s tím, co říká krok 1, zadejte tam, kde vzniká schéma: v programu pod „Díl“, „Moje očko“.',
    stitchTitle: 'Očko',
    stitchIntro:
      'Vyberte to, kterým budete háčkovat peněženku, a zůstaňte u něj: velikost dělají nit, háček, nitky očka a ruka. Vzorek v jednom z nich neříká nic o ostatních. Jeho číslo zapište na první list.',
    ways: {
      'both-loops': 'Krátký sloupek, pod obě nitky',
      'bead-side-loop': 'Totéž pod jednu nitku, tu na straně korálků',
      slip: 'Pevné očko',
    },
    gaugeTitle: 'Měřidlo pootočení',
    gaugeAlt:
      'Kruh se stupni, nahoře 0 a dole 180, po směru práce i proti němu; uprostřed kola a klíny, na které se položí vzorek.',
    round: (r) => `kolo ${r}`,
    lean: (lean) => `posun ${short(lean, 2)}`,
    with: 'po směru práce',
    against: 'proti směru práce',
    scale:
      'Tiskněte ve 100% měřítku, bez přizpůsobení stránce. Změřte čtverce: liší-li se o víc než půl milimetru, vytiskněte list znovu bez změny velikosti.',
    read: `Šedě: kola a klíny s obvyklým očkem, abyste kus položili doprostřed. Vně stupnice: kam přijde označené očko s posunem 0, ${short(0.25, 2)} a ${short(0.5, 1)} očka.`,
  },
};
