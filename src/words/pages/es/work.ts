import type { PageWords } from '../index.js';
import { numbersIn } from '../numbers.js';

const { count } = numbersIn('es');

/** The order of the work, and what stands on its pages. */
export const work: PageWords['booklet']['work'] = {
  contents: 'Contenido',
  glance: 'La labor de un vistazo',
  steps: {
    gather: 'Reunir abalorios, hilo y herramientas',
    swatch: 'Tejer una muestra y medirla',
    string: (f) => (f.lengths === 1 ? 'Ensartar los abalorios' : `Ensartar el tramo ${f.length}`),
    rounds: (f) =>
      f.first === f.last
        ? `Tejer la vuelta ${f.first}`
        : `Tejer las vueltas ${f.first} a ${f.last}`,
    again: 'Tejer otra vez el mismo panel',
    seam: 'Coser los paneles',
    frame: 'Fijar el monedero en la boquilla',
    lining: 'Forrarlo con tela',
  },
  print: 'Antes de imprimir',
  printText: (f) =>
    `Imprimir al 100 %, sin ajustar a la página. Cada lado de este cuadrado debe medir ${f.side}. Si no es así, nada de lo que este cuadernillo dibuja a tamaño real lo está: poner la impresora al 100 % o en «tamaño real» e imprimir de nuevo.`,
  stop: 'Alto',
  seePage: (f) => `Véase la página ${f.page}.`,
  part: 'Ensartar y tejer',
  heads: { string: 'Abalorios que se ensartan', total: 'Total', grams: 'g', count: 'Abal.' },
  tick: (f) =>
    `Cada línea${f.brackets ? ', y cada repetición de una parte entre paréntesis,' : ''} tiene una casilla: marcarla cuando sus abalorios estén en el hilo. Más de 20 iguales van de diez en diez. El total al final de una línea cuenta los abalorios de este tramo hasta ahí.`,
  twoBoxes: 'De dos casillas juntas, cada panel tiene la suya.',
  roundsTick:
    'Una raya vertical fina separa los sectores. Marcar la casilla al acabar la vuelta; su total es el de todos los abalorios tejidos hasta ahí.',
  mixed: (f) =>
    `${count(f.beads)}/${count(f.stitches)} quiere decir ${count(f.beads)} abalorios en ${count(f.stitches)} puntos; los demás van sin abalorio.`,
  round: (round) => `Vuelta ${round}`,
  working: {
    part: 'Esquema tal como se ve al tejer',
    note: (f) =>
      `Esta es la cara que se mira al tejer, girada como está en la mano: el inicio queda arriba y la labor avanza hacia ${f.hand === 'right' ? 'la izquierda' : 'la derecha'}, alejándose de la aguja de ganchillo.${f.mirrored ? ' Los abalorios quedan detrás, por lo que el dibujo está al revés que en el monedero terminado.' : ''}`,
    wedges: 'Los números en anillos cuentan los sectores en el sentido de la labor.',
    hook: 'ganchillo',
    use: 'Al tejer, seguir el esquema tal como se ve al tejer; comparar el panel terminado con el esquema de la cara de los abalorios.',
  },
  sector: {
    name: (f) => (f.from === f.to ? `sector ${f.from}` : `sectores ${f.from} a ${f.to}`),
    how: 'Los abalorios pálidos de los lados son de los sectores vecinos. Los números están delante del primer punto de cada vuelta.',
  },
  time: (f) => `Tiempo: ${f.time}`,
  rights: {
    title: 'Derechos',
    none: 'Este cuadernillo no indica ni autor ni licencia. Guardarlo para uso propio hasta que la persona de quien procede diga qué más se puede hacer con él.',
    authorOnly: (f) =>
      `El patrón es de ${f.author} y no indica ninguna licencia. Preguntar antes de pasarlo a otras personas o de vender lo tejido.`,
    contact: 'Correcciones',
    contactText: (f) => `¿Hay un error o algo que no se entiende? Escribir a ${f.contact}.`,
  },
  yours: {
    title: 'Mi monedero',
    madeFor: 'Hecho para',
    begun: 'Empezado',
    finished: 'Terminado',
    swatch: 'Mi muestra',
    bead: 'Abalorios',
    thread: 'Hilo',
    hook: 'Aguja de ganchillo',
    after: (f) => `Ancho tras ${f.rounds} vueltas`,
    notes: 'Notas',
  },
  alt: {
    square: 'Un cuadrado para comprobar la impresión.',
    photo: 'Fotografía de la pieza terminada.',
    purse: (f) => `Dibujo del monedero cerrado en su boquilla: ${f.panel}.`,
    working:
      'Esquema del panel tal como se ve al tejer. La lista de vueltas dice lo mismo con palabras, y los materiales dicen qué es cada letra.',
    sector: (f) => `Esquema ampliado, ${f.wedges}. La lista de vueltas dice lo mismo con palabras.`,
  },
  listing: {
    size: 'Tamaño',
    level: 'Nivel',
    beads: 'Abalorios',
    tools: 'Además hace falta',
    file: 'En el archivo',
    fileText: (f) =>
      `Un PDF, ${f.pages} páginas, ${f.paper}, ${f.languages}. Se puede buscar en él y escucharlo leído; cada abalorio tiene una letra, así que no hay que distinguir colores.`,
    digital: 'Es un patrón para descargar e imprimir. No incluye abalorios ni herramientas.',
  },
};
