import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { fixed, short, sizeMm } = numbersIn('cs');
const tenth = (mm: number): string => fixed(mm, 1);
const percent = (share: number): string => `${short(100 * share, 1)} %`;

/** What stands on the cutting template of a lining. */
export const lining: PageWords['lining'] = {
  title: (f) =>
    f.panel === undefined ? `Podšívka: ${f.title}` : `Podšívka: ${f.title}, ${f.panel}`,
  size: (f) =>
    f.easeMm === 0
      ? `V nejširším místě: čára střihu ${tenth(f.cutMm)} mm, čára švu ${tenth(f.seamMm)} mm (přídavek ${short(f.allowanceMm, 1)} mm dokola, bez zúžení).`
      : `V nejširším místě: čára střihu ${tenth(f.cutMm)} mm, čára švu ${tenth(f.seamMm)} mm (přídavek ${short(f.allowanceMm, 1)} mm dokola, o ${short(f.easeMm, 1)} mm užší než díl).`,
  measured: (f) =>
    `Pro díl ${tenth(f.measuredMm)} mm, jak jste ho změřili (podle výpočtu ${sizeMm(f.model, 1)} mm).`,
  estimate: (f) =>
    `ODHAD: ${sizeMm(f.model, 1)} mm je velikost dílu podle výpočtu, ne podle pravítka. Hotový díl změřte v nejširším místě, přes okraje korálků, a střih o rozdíl zvětšete nebo zmenšete.`,
  cutTwo:
    'Střihněte 2krát (jednou pro každý díl): touto stranou nahoru na rubu látky, šipka po niti. Plná čára: stříhejte. Čárkovaná čára: šijte.',
  cutOne:
    'Střihněte 1krát pro tento díl; druhý díl má vlastní list. Touto stranou nahoru na rubu látky, šipka po niti. Plná čára: stříhejte. Čárkovaná čára: šijte.',
  sew: (f) =>
    f.gapMm > 0
      ? `Lícem k sobě šijte od jedné značky kloubu spodem ke druhé a mezi dvěma čárkami nechte otvor ${short(f.gapMm, 1)} mm na obrácení.`
      : 'Lícem k sobě šijte od jedné značky kloubu spodem ke druhé.',
  put: 'Neobracejte ji: vložte ji do peněženky tak, jak je, rubem k dílům, aby byl uvnitř vidět její líc.',
  fold: (f) =>
    `Otevřený okraj nad značkami kloubů založte podél čárkované čáry na rub (${short(f.allowanceMm, 1)} mm) a záhyb přišijte k okraji dílu podél rámečku, pod otvory nebo uvnitř hrany drážky.`,
  close:
    'S otvorem se podšívka a díly nejprve sešijí podél rámečku lícem k sobě; peněženku otvorem obraťte, jeho okraje založte dovnitř a ručně ho zašijte drobnými stehy.',
  hinges: (f) =>
    ({
      asked: `Značky kloubů (tečky): v rámečku leží ${percent(f.share)} okraje, jak jste zadali.`,
      frame: `Značky kloubů (tečky): v rámečku leží ${Math.round(100 * f.share)} % okraje, podle rámečku návodu.`,
      usual: `Značky kloubů (tečky): odhad, v rámečku ${percent(f.share)} okraje${f.marked ? ' (běžná praxe, bez zdroje)' : ''}: označte, kde končí váš rámeček.`,
    })[f.from],
  spiral: 'Schod spirály na okraji je vynechán: obrys je uzavřený kruh v polovině výšky schodu.',
  print:
    'Tiskněte ve 100% měřítku, bez přizpůsobení stránce. Změřte oba čtverce: liší-li se některý o víc než 0,5 mm, nestříhejte.',
  caution:
    'Pozor: špendlíky a jehly spočítejte před prací i po ní a držte je, nůžky i korálky dál od malých dětí. Roztřepené okraje zatavujte plamenem jen u syntetické látky, nikdy blízko lepidla; při lepení větrejte. Přednost mají místní předpisy tam, kde bydlíte nebo prodáváte.',
  sheets: (f) =>
    f.rows * f.columns === 1
      ? 'Střih je na dalším listu.'
      : `Střih je na dalších listech (${f.rows * f.columns}): ${f.rows} na výšku a ${f.columns} na šířku. Překrývají se: jeden ze dvou sousedních odstřihněte podle tečkované čáry, položte ho na druhý tak, aby křížky ležely na křížcích, a slepte je páskou.`,
  sheet: (f) =>
    f.rows * f.columns === 1
      ? 'Střih'
      : `Řada ${f.row} z ${f.rows}, sloupec ${f.column} z ${f.columns}`,
  marks: {
    pieces: (f) => `stříhat ${f.pieces}krát`,
    cut: (f) => `čára střihu ${tenth(f.mm)} mm`,
    seam: (f) => `čára švu ${tenth(f.mm)} mm`,
    estimate: 'odhad',
    grain: 'po niti',
    top: 'střed nahoře',
    hinge: 'kloub',
    gap: (f) => `otvor ${short(f.mm, 1)} mm`,
  },
  check: {
    mm: '50 mm',
    inch: '2 palce',
    cm: 'cm',
    in: '″',
  },
};
