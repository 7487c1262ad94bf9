import type { WorktableWords } from '../index.js';

/** Help while working: where one is, what is wrong, notes, time, and a colour that runs out. */
export const mending: WorktableWords['mending'] = {
  findTitle: '¿Dónde estoy?',
  findHow: 'Toque los abalorios que salen ahora del hilo, primero el más cercano al ganchillo.',
  findNone: 'Así no aparecen en ninguna parte. Mire el último que tocó.',
  findMore: (n) => `Sitios que encajan: ${n}. Toque el abalorio siguiente.`,
  found: (f) => `Sigue el punto ${f.stitch} de la vuelta ${f.round}, en el sector ${f.wedge}.`,
  foundSlips: (n) => `Abalorios que allí difieren de la lista: ${n}.`,
  goThere: 'Seguir desde ahí',
  jumped: (f) => `Se llegó aquí desde el punto ${f.stitch} de la vuelta ${f.round}.`,
  checkTitle: '¿Está bien?',
  checkHow: (after) =>
    after === '0'
      ? 'Así debe verse el hilo, con el primer abalorio ensartado al principio.'
      : `Así debe verse el hilo después de los ${after} abalorios comprobados.`,
  checkRight: 'El mío es igual',
  readStrung: (after) =>
    after === '0'
      ? 'Si no, toque lo que hay de verdad, empezando por el primer abalorio ensartado.'
      : `Si no, toque lo que hay de verdad, empezando detrás del abalorio ${after}.`,
  wrongTitle: 'Algo va mal',
  readComing:
    'Toque los abalorios tal como salen de verdad del hilo, primero el más cercano al ganchillo.',
  agree: (n) => `Como en la lista: ${n} abalorios.`,
  tooMany: 'No es ese trozo de hilo, o se leyó desde el otro extremo.',
  notHere: 'Estos abalorios no van aquí. Quizá la labor esté en otro sitio.',
  slip: {
    missing: (f) =>
      `Detrás del abalorio ${f.after}: falta ${f.wanted} (vuelta ${f.round}, punto ${f.stitch})`,
    extra: (f) =>
      `Detrás del abalorio ${f.after}: sobra ${f.got} (vuelta ${f.round}, antes del punto ${f.stitch})`,
    other: (f) =>
      `Detrás del abalorio ${f.after}: ${f.got} en vez de ${f.wanted} (vuelta ${f.round}, punto ${f.stitch})`,
    swap: (f) =>
      `Detrás del abalorio ${f.after}: ${f.got} en orden equivocado, va ${f.wanted} (vuelta ${f.round}, punto ${f.stitch})`,
  },
  ways: {
    missing:
      'Falta: teja ese punto sin abalorio y cosa el abalorio después con una aguja fina y el mismo hilo.',
    extra:
      'Sobra: rompa el abalorio con unos alicates planos cuando llegue a él. Use gafas protectoras, ponga un paño sobre el abalorio y los alicates, recoja las esquirlas y palpe el hilo por si tiene un corte.',
    other:
      'Otro color: rompa el abalorio equivocado cuando llegue a él, teja el punto sin abalorio y cosa el correcto después.',
    swap: 'Orden equivocado: trátelos como dos de otro color, o téjalos como están si nadie lo va a ver.',
  },
  broken: 'El vidrio roto corta el hilo y la piel y salta a los ojos: nunca sin gafas protectoras.',
  takeOff: (after) => `Quité todo lo que va detrás del abalorio ${after}`,
  mendLater: 'Dejarlo y arreglarlo al tejer',
  noteThem: 'Anotarlo en sus puntos',
  here: {
    sewOn: (letter) => `Aquí falta ${letter}: teja el punto sin abalorio y cósalo después.`,
    extra: (letters) => `Quite primero esto del hilo: ${letters}.`,
  },
  ten: 'De diez en diez',
  takeBack: 'Quitar el último',
  typeThem: 'O escríbalos, por ejemplo 3A 2B',
  addTyped: 'Añadirlos',
  typedWrong: (letters) => `Solo números y estas letras: ${letters}`,
  tapped: (n) => `Abalorios indicados: ${n}`,
  notes: 'Notas',
  noteAt: (f) => `Nota en el punto ${f.stitch} de la vuelta ${f.round}`,
  noteHow: 'Toque un punto de la labor para ponerle una nota.',
  noteLine: (f) => `Vuelta ${f.round}, punto ${f.stitch}: ${f.text}`,
  sewOnLine: (f) => `Vuelta ${f.round}, punto ${f.stitch}: coser ${f.letter}, ${f.name}.`,
  sewn: 'Cosido',
  takeAway: 'Quitar',
  sewOnTitle: 'Abalorios por coser',
  timeTitle: 'Tiempo y coste',
  time: (f) => `${f.h} h ${f.min} min`,
  timeHow: 'Cuenta el tiempo entre toque y toque; una pausa de más de dos minutos no cuenta.',
  hourly: 'Lo que vale una hora',
  cost: {
    beads: 'Abalorios',
    thread: 'Hilo',
    time: 'Tiempo',
    sum: 'En total',
    unknown: 'sin precio conocido',
  },
  costHow: 'Para uno de cada panel, en la moneda de los precios de los abalorios.',
  outTitle: 'Se acaba un color',
  outHow:
    'Lo ensartado se queda. A partir de una vuelta va otro abalorio, y todas las listas lo siguen.',
  outWhich: 'Qué color',
  outFrom: 'Desde la vuelta',
  outPanels: 'En qué panel',
  outAll: 'En todos',
  outNeeds: (n) => `Abalorios necesarios desde ahí: ${n}`,
  outInJar: (n) => `en el frasco: ${n}`,
  outNone: 'Desde esa vuelta este color ya no aparece.',
  outDone: (f) => `Desde la vuelta ${f.round} va ${f.to} en vez de ${f.from}.`,
  practice: 'Pieza de práctica',
  practiceHow:
    'Cuatro vueltas para aprender, con su punto y sus abalorios: los dos puntos de cada aumento tienen su propio color, y también el primer punto de cada vuelta. Páginas hace para ella un cuaderno propio.',
  steps: { runsOut: 'otro abalorio donde uno se acaba' },
};
