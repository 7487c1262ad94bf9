import type { WorktableWords } from '../index.js';

/** The step Purse: both sides in their frame. */
export const purse: WorktableWords['purse'] = {
  step: 'Portmonetka',
  label: 'Portmonetka tak, jak wisi, z monetą i linijką obok',
  back: 'Tył',
  backHow: 'Wybierz Tył pod portmonetką, potem krok Obraz: obraz tyłu kładzie się osobno.',
  plain: 'Albo cały z jednego koralika',
  frame: 'Bigiel',
  width: 'Szerokość',
  height: 'Wysokość',
  corner: 'Promień rogów',
  hinges: 'Między zawiasami',
  channel: 'Głębokość rowka',
  holes: 'Od dziurki do dziurki',
  bare: 'Okrążenia bez koralików',
  mm: 'mm',
  frameHow: 'Mierz tam, gdzie będzie brzeg: w poprzek i od linii między zawiasami do góry.',
  fixing: 'Jak jest mocowany',
  fits: (n) => `Już pasuje: liczba okrążeń w tym biglu to ${n}.`,
  fitNow: ({ before, after }) => `Panel pasuje teraz do bigla. Okrążenia: ${before} → ${after}.`,
  sits: 'Jak leży',
  worn: ({ panel, frame }) =>
    `Panel wisi na ${panel} mm szerokości w biglu szerokim na ${frame} mm.`,
  inFrame: ({ n, round, bare }) =>
    `W biglu: oczka ${n} w okrążeniu ${round}. Okrążenia bez koralików pod nim: ${bare}.`,
  hingesAt: ({ left, right }) =>
    `Zawiasy przypadają między oczkami ${left} z lewej i ${right} z prawej.`,
  seam: ({ n, mm }) => `Zszyte na dole: oczka ${n}, ${mm} mm.`,
  holesHow: ({ spaces, stitches, more }) =>
    `Około ${spaces} odstępów między dziurkami: po ${stitches} oczek, o jedno więcej w ${more} z nich.`,
  lining: 'Podszewka',
  liningHow: ({ cut, seam }) =>
    `Wytnij tkaninę na ${cut} mm szerokości; szew biegnie na ${seam} mm. Szablon jest w zeszycie.`,
  size: 'Prawdziwa wielkość',
  cardHow:
    'Przyłóż kartę bankową do ekranu i ciągnij, aż pole będzie tak samo duże. Dotyczy tego ekranu.',
  cardBox: 'wielkości karty bankowej',
  steps: {
    frame: 'bigiel',
    back: 'tył portmonetki',
    fit: 'dopasowanie panelu do bigla',
  },
};
