import type { WorktableWords } from '../index.js';

/** The step Work: stringing and crocheting beside the bead mat. */
export const work: WorktableWords['work'] = {
  step: 'Labor',
  intro:
    'Apoye la pantalla junto al tapete de abalorios. Muestra una sola cosa cada vez y recuerda, abalorio por abalorio, dónde lo dejó.',
  waiting: 'Todavía se están eligiendo los abalorios …',
  changed:
    'El panel se cambió después de empezar. Se sigue trabajando el panel con el que se empezó.',
  which: 'Cuál',
  copies: 'Cuántos de cada uno',
  panel: 'Panel',
  sides: { front: 'Delantero', back: 'Trasero' },
  panelOf: (f) => `${f.name}, ${f.n} de ${f.of}`,
  strung: (f) => `${f.done} de ${f.all} abalorios ensartados`,
  worked: (f) => `${f.done} de ${f.all} puntos tejidos`,
  length: (f) => `tramo ${f.n} de ${f.of}`,
  stringRound: (f) => `Vuelta ${f.r} · ${f.done} de ${f.all} abalorios`,
  then: (run) => `luego ${run}`,
  thenDone: 'estos son los últimos',
  notStrung: (n) =>
    `Según esta página, de este tramo faltan por ensartar: ${n}. Primero se ensartan.`,
  strungByList: 'Ya están todos en el hilo',
  tapStrung: 'Toque en cualquier parte cuando estén en el hilo',
  stands: (f) =>
    `En el hilo: ${f.beads} abalorios, ${f.metres} m${f.grams === undefined ? '' : `, ${f.grams} g`}`,
  lengthDone: (f) =>
    f.of === '1'
      ? `Los ${f.beads} abalorios están ensartados`
      : `El tramo ${f.n} de ${f.of} está ensartado: ${f.beads} abalorios`,
  lengthDoneHow:
    'El último abalorio ensartado se teje primero. Empuje los abalorios por el hilo y deje el hilo en el ovillo.',
  stringLength: (f) => `Ensartar el tramo ${f.n} de ${f.of}`,
  inHand: 'La labor tal como está en la mano, con el punto actual en el ganchillo',
  roundOf: (f) => `Vuelta ${f.r} de ${f.of}`,
  inRound: (f) => `sector ${f.wedge} · punto ${f.stitch} de ${f.of}`,
  allWorked: (n) => `los ${n} puntos`,
  begin: (wedges) => `Empiece con un anillo y teja en él los ${wedges} puntos de la vuelta 1.`,
  roundDone: (f) =>
    `La vuelta ${f.r} está terminada: ${f.stitches} puntos, ${f.beads} abalorios, ${f.all} abalorios en total.`,
  moveMarker: 'Pase el marcador al primer punto de la vuelta siguiente.',
  closeRound:
    'Cierre la vuelta con un punto raso y teja una cadeneta para subir; ambos sin abalorio.',
  joinHere: (length) => `Alto: una aquí el tramo ${length}.`,
  bothInOne: 'los dos en un mismo punto',
  bare: 'sin abalorio',
  open: 'sin decidir',
  tapWorked: 'Toque cuando esté tejido',
  coming: 'Próximos abalorios del hilo',
  pace: 'Cuánto cada vez',
  panelDone: 'El panel está terminado',
  endSpiral:
    'Teja dos o tres puntos rasos sin abalorio para suavizar el escalón, corte el hilo dejando 20 cm y páselo por el bucle.',
  endJoined:
    'Cierre la vuelta con un punto raso, corte el hilo dejando 20 cm y páselo por el bucle.',
  voiceless: 'Este dispositivo no tiene voz para el idioma de la página.',
  cannot: {
    stayAwake:
      'Este navegador no puede mantener la pantalla encendida: alargar su tiempo en los ajustes del dispositivo.',
    speak: 'Este navegador no puede leer en voz alta.',
    listen: 'Este navegador no puede escuchar: un toque o la barra espaciadora sigue adelante.',
  },
  heard: { next: ['siguiente', 'sigue', 'sí'], back: ['atrás', 'mal'] },
  listens:
    'Escuchando «siguiente» y «atrás». Algunos navegadores envían lo que oyen a su fabricante para entenderlo; esta página no envía nada.',
  deaf: 'El navegador no puede escuchar ahora: no se le permitió o necesita una red para ello.',
};
