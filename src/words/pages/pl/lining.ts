import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { fixed, short, sizeMm } = numbersIn('pl');
const tenth = (mm: number): string => fixed(mm, 1);
const percent = (share: number): string => `${short(100 * share, 1)}%`;

/** What stands on the cutting template of a lining. */
export const lining: PageWords['lining'] = {
  title: (f) =>
    f.panel === undefined ? `Podszewka: ${f.title}` : `Podszewka: ${f.title}, ${f.panel}`,
  size: (f) =>
    f.easeMm === 0
      ? `W najszerszym miejscu: linia cięcia ${tenth(f.cutMm)} mm, linia szwu ${tenth(f.seamMm)} mm (zapas na szew ${short(f.allowanceMm, 1)} mm dookoła, bez zwężenia).`
      : `W najszerszym miejscu: linia cięcia ${tenth(f.cutMm)} mm, linia szwu ${tenth(f.seamMm)} mm (zapas na szew ${short(f.allowanceMm, 1)} mm dookoła; linia szwu o ${short(f.easeMm, 1)} mm węższa niż panel).`,
  measured: (f) =>
    `Dla panelu ${tenth(f.measuredMm)} mm, zgodnie z pomiarem (według modelu ${sizeMm(f.model, 1)} mm).`,
  estimate: (f) =>
    `WYMIAR SZACUNKOWY: ${sizeMm(f.model, 1)} mm to wielkość panelu obliczona z modelu, a nie zmierzona linijką. Zmierzyć gotowy panel w najszerszym miejscu, po zewnętrznych brzegach koralików, i wyciąć o tę różnicę szerzej lub węziej.`,
  cutTwo:
    'Wyciąć 2 sztuki (po jednej na każdy panel): szablon tą stroną do góry na lewej stronie tkaniny, strzałka wzdłuż nitki prostej. Linia ciągła: ciąć. Linia przerywana: szyć.',
  cutOne:
    'Wyciąć 1 sztukę dla tego panelu; drugi panel ma własny arkusz. Szablon tą stroną do góry na lewej stronie tkaniny, strzałka wzdłuż nitki prostej. Linia ciągła: ciąć. Linia przerywana: szyć.',
  sew: (f) =>
    f.gapMm > 0
      ? `Złożyć prawą stroną do prawej i szyć od jednego znaku zawiasu dołem do drugiego; między dwiema kreskami zostawić otwarte ${short(f.gapMm, 1)} mm do wywinięcia.`
      : 'Złożyć prawą stroną do prawej i szyć od jednego znaku zawiasu dołem do drugiego.',
  put: 'Nie wywijać: włożyć do portmonetki tak, jak jest, lewą stroną do paneli, żeby w środku było widać prawą stronę tkaniny.',
  fold: (f) =>
    `Otwarty brzeg powyżej znaków zawiasów założyć na lewą stronę wzdłuż linii przerywanej (${short(f.allowanceMm, 1)} mm) i przyszyć zagięcie do brzegu panelu wzdłuż bigla, pod otworami albo wewnątrz krawędzi rowka.`,
  close:
    'Przy otworze do wywinięcia podszewkę i panele najpierw zszywa się wzdłuż bigla prawą stroną do prawej; wywinąć portmonetkę przez otwór, jego brzegi założyć do środka i zaszyć go ręcznie drobnymi ściegami.',
  hinges: (f) =>
    ({
      asked: `Znaki zawiasów (kropki): w biglu leży ${percent(f.share)} brzegu, jak podano.`,
      frame: `Znaki zawiasów (kropki): w biglu leży ${Math.round(100 * f.share)}% brzegu, według bigla z tego wzoru.`,
      usual: `Znaki zawiasów (kropki): szacunkowo w biglu leży ${percent(f.share)} brzegu${f.marked ? ' (powszechna praktyka, bez źródła)' : ''}: zaznaczyć, gdzie kończy się własny bigiel.`,
    })[f.from],
  spiral:
    'Uskok spirali na brzegu jest pominięty: obrys to zamknięty pierścień w połowie wysokości uskoku.',
  print:
    'Drukować w skali 100%, bez dopasowania do strony. Zmierzyć oba kwadraty: jeśli choć jeden różni się o więcej niż 0,5 mm, nie ciąć.',
  caution:
    'Uwaga: policzyć szpilki i igły przed pracą i po niej; trzymać je, nożyczki i koraliki z dala od małych dzieci. Strzępiące się brzegi zabezpieczać płomieniem tylko na tkaninie syntetycznej, nigdy w pobliżu kleju; przy klejeniu wietrzyć. Pierwszeństwo mają przepisy obowiązujące tam, gdzie się mieszka lub sprzedaje.',
  sheets: (f) =>
    f.rows * f.columns === 1
      ? 'Szablon jest na następnym arkuszu.'
      : `Szablon jest na ${f.rows * f.columns} następnych arkuszach: ${f.rows} w pionie i ${f.columns} w poziomie. Zachodzą one na siebie: jeden z dwóch sąsiednich obciąć wzdłuż kropkowanej linii, położyć na drugim, krzyżyki na krzyżykach, i skleić taśmą.`,
  sheet: (f) =>
    f.rows * f.columns === 1
      ? 'Szablon'
      : `Rząd ${f.row} z ${f.rows}, kolumna ${f.column} z ${f.columns}`,
  marks: {
    pieces: (f) => `wyciąć ${f.pieces} szt.`,
    cut: (f) => `linia cięcia ${tenth(f.mm)} mm`,
    seam: (f) => `linia szwu ${tenth(f.mm)} mm`,
    estimate: 'szacunkowo',
    grain: 'nitka prosta',
    top: 'środek u góry',
    hinge: 'zawias',
    gap: (f) => `otwarte ${short(f.mm, 1)} mm`,
  },
  check: {
    mm: '50 mm',
    inch: '2 cale',
    cm: 'cm',
    in: '″',
  },
};
