import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { fixed, short } = numbersIn('pl');
const tenth = (mm: number): string => fixed(mm, 1);
const percent = (share: number): string => `${short(100 * share, 1)} %`;

/** What stands on the cutting template of a lining. */
export const lining: PageWords['lining'] = {
  title: (f) =>
    f.panel === undefined ? `Podszewka: ${f.title}` : `Podszewka: ${f.title}, ${f.panel}`,
  size: (f) =>
    f.easeMm === 0
      ? `W najszerszym miejscu: linia cięcia ${tenth(f.cutMm)} mm, linia szwu ${tenth(f.seamMm)} mm (zapas ${short(f.allowanceMm, 1)} mm dookoła, bez zwężenia).`
      : `W najszerszym miejscu: linia cięcia ${tenth(f.cutMm)} mm, linia szwu ${tenth(f.seamMm)} mm (zapas ${short(f.allowanceMm, 1)} mm dookoła, o ${short(f.easeMm, 1)} mm węższa niż panel).`,
  estimated: (f) =>
    `SZACUNEK: ${tenth(f.modelMm)} mm to wielkość panelu z obliczeń, nie z linijki. Zmierzyć gotowy panel w najszerszym miejscu, razem z brzegami koralików, i wyciąć o tyle większe lub mniejsze.`,
  cutTwo:
    'Wyciąć 2 razy (po jednym na każdy panel): tą stroną do góry na lewej stronie tkaniny, strzałka wzdłuż nitki prostej. Linia ciągła: ciąć. Linia przerywana: szyć.',
  cutOne:
    'Wyciąć 1 raz dla tego panelu; drugi panel ma własny arkusz. Tą stroną do góry na lewej stronie tkaniny, strzałka wzdłuż nitki prostej. Linia ciągła: ciąć. Linia przerywana: szyć.',
  sew: (f) =>
    f.gapMm > 0
      ? `Prawą stroną do prawej szyć od jednego znaku zawiasu dołem do drugiego i między dwiema kreskami zostawić ${short(f.gapMm, 1)} mm otwarte do przewinięcia.`
      : 'Prawą stroną do prawej szyć od jednego znaku zawiasu dołem do drugiego.',
  hinges: (f) =>
    ({
      asked: `Znaki zawiasów (kropki): w biglu leży ${percent(f.share)} brzegu, jak podano.`,
      frame: `Znaki zawiasów (kropki): w biglu leży ${Math.round(100 * f.share)} % brzegu, według bigla wzoru.`,
      usual: `Znaki zawiasów (kropki): szacunek, w biglu ${percent(f.share)} brzegu (powszechna praktyka, bez źródła): zaznaczyć, gdzie kończy się własny bigiel.`,
    })[f.from],
  spiral:
    'Stopień spirali na brzegu jest pominięty: obrys to zamknięty pierścień w połowie wysokości stopnia.',
  print:
    'Drukować w skali 100 %, bez dopasowania. Zmierzyć oba kwadraty: jeśli któryś różni się o więcej niż 0,5 mm, nie ciąć.',
  caution:
    'Uwaga: policzyć szpilki i igły przed i po, i trzymać je, nożyczki i koraliki z dala od małych dzieci. Płomieniem zabezpieczać tylko brzegi tkaniny syntetycznej, nigdy w pobliżu kleju; przy klejeniu wietrzyć. Tam, gdzie się mieszka lub sprzedaje, pierwsze są miejscowe przepisy.',
  sheets: (f) =>
    f.rows * f.columns === 1
      ? 'Część jest na następnym arkuszu.'
      : `Część jest na następnych arkuszach (${f.rows * f.columns}): ${f.rows} na wysokość i ${f.columns} na szerokość. Zachodzą na siebie: z dwóch sąsiednich jeden obciąć wzdłuż kropkowanej linii, położyć na drugim, krzyżyki na krzyżykach, i skleić taśmą.`,
  sheet: (f) =>
    f.rows * f.columns === 1
      ? 'Część'
      : `Rząd ${f.row} z ${f.rows}, kolumna ${f.column} z ${f.columns}`,
  marks: {
    pieces: (f) => `wyciąć ${f.pieces} x`,
    cut: (f) => `linia cięcia ${tenth(f.mm)} mm`,
    seam: (f) => `linia szwu ${tenth(f.mm)} mm`,
    estimate: 'szacunek',
    grain: 'nitka prosta',
    top: 'środek góry',
    hinge: 'zawias',
    gap: (f) => `zostawić ${short(f.mm, 1)} mm`,
  },
  check: {
    mm: '50 mm',
    inch: '2 cale',
    cm: 'cm',
    in: '″',
  },
};
