import type { WorktableWords } from '../index.js';

/** The shelf of pieces, and how they are kept. */
export const shelf: WorktableWords['shelf'] = {
  title: 'El estante',
  intro: 'Las piezas se guardan en este dispositivo, en este navegador, después de cada paso.',
  empty: 'Aquí todavía no hay nada. Una pieza llega al estante con su primera imagen.',
  onTable: 'en la mesa',
  removed: 'Retiradas del estante',
  removedHow: 'Se pueden volver a poner mientras no se retiren para siempre.',
  open: (title) => `Poner ${title} en la mesa`,
  take: (title) => `Retirar ${title} del estante`,
  back: (title) => `Volver a poner ${title} en el estante`,
  takeShort: 'Retirar',
  backShort: 'Volver a poner',
  takenOff: (title) => `${title} se ha retirado del estante.`,
  putBack: (title) => `${title} está otra vez en el estante.`,
  waits: (title) => `${title} está en el estante.`,
  copyOf: (title) => `${title}, otra pieza`,
  copied: 'La otra ventana conserva su pieza. Lo que se haga aquí sigue como una pieza aparte.',
  when: (date) => `última vez: ${date}`,
  elsewhere: 'Esta pieza está abierta en otra ventana.',
  refused:
    'Este navegador no guarda nada, quizá porque la ventana es privada. Guardar la pieza como archivo antes de cerrarla.',
  full: 'En este dispositivo ya no queda sitio. Los últimos pasos están en la mesa, pero no se han guardado: guardar ahora la pieza como archivo.',
  edition: 'Hay una edición nueva de esta página. La pieza se conserva.',
  fileDamaged: (file) =>
    `${file}: esta pieza no se puede abrir, porque falta una parte o está dañada.`,
  fileNewer: (file) =>
    `${file}: esta pieza se hizo con una edición más nueva de esta página. Abrir la página de nuevo o pedir un archivo anterior.`,
  forClass: 'Para un taller',
  classHow:
    'El esquema y la labor de cada pieza marcada, en un solo PDF: para cada nombre, siempre en hoja nueva; sin nombres, una vez.',
  classNames: 'Nombres, uno por línea',
  classSave: 'Guardar en un solo PDF',
};
