import type { WorktableWords } from '../index.js';

/** The step Purse: both sides in their frame. */
export const purse: WorktableWords['purse'] = {
  step: 'Borsellino',
  label: 'Il borsellino come pende, con una moneta e un righello accanto',
  back: 'Il dietro',
  backHow:
    'Scegli Dietro sotto il borsellino, poi il passo Immagine: l’immagine del dietro si dispone per sé.',
  plain: 'O una sola perlina ovunque',
  frame: 'La cerniera',
  width: 'Larghezza',
  height: 'Altezza',
  corner: 'Raggio degli angoli',
  hinges: 'Tra i perni',
  channel: 'Profondità del canale',
  holes: 'Da foro a foro',
  bare: 'Giri senza perline',
  mm: 'mm',
  frameHow: 'Misura dove starà il bordo: in larghezza, e dalla linea tra i perni fino in cima.',
  fixing: 'Come si fissa',
  fits: (n) => `Va già bene: a questa cerniera sono appesi ${n} giri.`,
  fitNow: ({ before, after }) =>
    `Ora il pannello va bene alla cerniera. Giri: ${before} → ${after}.`,
  sits: 'Come sta',
  worn: ({ panel, frame }) =>
    `Il pannello pende largo ${panel} mm in una cerniera larga ${frame} mm.`,
  inFrame: ({ n, round, bare }) =>
    `Nella cerniera: ${n} maglie del giro ${round}. Giri senza perline sotto: ${bare}.`,
  hingesAt: ({ left, right }) =>
    `I perni vengono tra le maglie ${left} a sinistra e ${right} a destra.`,
  seam: ({ n, mm }) => `Cucito insieme sotto: ${n} maglie, ${mm} mm.`,
  holesHow: ({ spaces, stitches, more }) =>
    `Circa ${spaces} spazi tra i fori: ${stitches} maglie in ciascuno, una in più in ${more}.`,
  lining: 'La fodera',
  liningHow: ({ cut, seam }) =>
    `Taglia la stoffa larga ${cut} mm; la cucitura corre a ${seam} mm. La sagoma è nel libretto.`,
  size: 'Grandezza vera',
  cardHow:
    'Tieni una carta bancaria contro lo schermo e tira finché il riquadro è grande uguale. Vale per questo schermo.',
  cardBox: 'grande come una carta',
  steps: {
    frame: 'cerniera',
    back: 'dietro del borsellino',
    fit: 'adattare il pannello alla cerniera',
  },
};
