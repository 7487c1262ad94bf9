import type { FaultWords } from './english.js';

export const es: FaultWords = {
  shape: (f) =>
    `Esta medida del panel puede ir de ${f.least} a ${f.most}: cambiarla en el paso Panel.`,
  corners:
    'Un panel con esquinas necesita el aumento en el primer o el último punto de cada sector: elegirlo así, o un borde redondo.',
  notOurs: (f) =>
    `${f.name} no contiene un patrón de Rondure en buen estado: abrir otra copia, o hacerlo de nuevo con la imagen.`,
  notOursAt: (f) =>
    `${f.name} no es un patrón de Rondure en buen estado (en ${f.place}): abrir otra copia, o hacerlo de nuevo con la imagen.`,
  tooNew: (f) =>
    `${f.name} lo escribió un Rondure más nuevo: volver a cargar esta página y abrirlo otra vez.`,
  noLetter: (f) =>
    `Un patrón tiene como mucho ${f.most} colores de abalorios, y este los tiene todos: unir antes dos de ellos.`,
  beadsTyped: (f) => `«${f.got}» no se puede leer como abalorios: escribir series como 3A 2B 1A.`,
  beadsNone: 'No se ha dado ningún abalorio: escribir series como 3A 2B 1A.',
  beadsMany: (f) =>
    `Se han dado más de ${f.most} abalorios, más de los que caben en un panel: revisar los números.`,
  measured: (f) =>
    `Una de las medidas no puede ser correcta: con estos abalorios está entre ${f.least} y ${f.most}. Medir otra vez, y revisar vueltas, sectores y tamaño.`,
  turn: 'El punto marcado se desplazaría más de lo que los puntos pueden inclinarse: revisar el sentido, y marcar en cada vuelta el primer punto del mismo sector.',
  pointsFew:
    'Las señales no muestran cómo giran los puntos: señalar el primer punto de un sector en la última vuelta y en otra más adentro.',
  pointsLine:
    'Las señales no dicen cómo está puesto el panel: repartir las del borde por todo alrededor.',
  pointsLean:
    'Según estas señales los puntos se inclinarían más de lo posible: revisar la vuelta y el sector de cada una, y que la foto muestre los abalorios.',
  nothingMeasured: 'Aún no hay nada medido: rellenar al menos una medida.',
  across: (f) =>
    `Con este punto un panel puede medir de ${f.least} a ${f.most} mm (2 a 80 vueltas): elegir otro tamaño, u otros abalorios.`,
  nothingToBead:
    'Ningún punto llevaría abalorio, porque la imagen no llega al panel: arrastrarla bajo el panel, o elegir un abalorio para lo que la rodea.',
  stock: (f) =>
    `En los botes faltan ${f.missing} abalorios para este panel: permitir más colores, o hacer el panel más pequeño.`,
  stockBuy: (f) =>
    `En los botes faltan ${f.missing} abalorios para este panel: comprar ${f.beads} de ${f.name}, o hacer el panel más pequeño.`,
  stockPlain: (f) =>
    `El dorso liso lleva ${f.needed} abalorios de ${f.name}, y el bote puede dar ${f.most}: elegir otro abalorio para el dorso, o hacer los paneles más pequeños.`,
  colour: (f) => `«${f.got}» no es un color: escribirlo con seis caracteres, por ejemplo d9b36a.`,
  noBeadLeft: 'No queda ningún abalorio que elegir: dejar fuera menos.',
  keptMany: (f) =>
    `Abalorios que deben usarse: ${f.kept}; colores permitidos: ${f.most}. Permitir más colores, o conservar menos abalorios.`,
  letterMissing: (f) =>
    `La letra de las páginas no tiene «${f.character}»: quitarlo del título y de los nombres de los abalorios.`,
  size: (f) =>
    `El tamaño «${f.got}» no se conoce: usar uno de ${f.known}, o dar el diámetro de cada abalorio.`,
  paletteEmpty: (f) =>
    `${f.name} no contiene abalorios: necesita una línea con los nombres de las columnas y una por abalorio, al menos con su color.`,
  paletteColumn: (f) =>
    `${f.name} no tiene columna de colores: llamar hex a una columna, con colores como #d9b36a.`,
  paletteNoTable: (f) => `${f.name} no es una tabla sencilla: abrirlo y guardarlo como CSV.`,
  paletteUnread: (f) =>
    `${f.name} no se puede leer: guardarlo otra vez con el programa que lo escribió.`,
  paletteLong: (f) =>
    `${f.name} es demasiado largo (${f.most} como mucho): conservar los abalorios que puedan servir.`,
  paletteSize: (f) =>
    `${f.name} no tiene abalorios de tamaño ${f.size}, solo de ${f.found}: elegir uno de estos tamaños.`,
  paletteRow: (f) =>
    `Línea ${f.line} de ${f.name}: «${f.got}» no sirve ahí. Corregirlo y abrir el archivo otra vez.`,
  paletteTwice: (f) =>
    `La línea ${f.line} de ${f.name} repite el identificador «${f.id}» de la línea ${f.first}: dar a cada abalorio el suyo.`,
  jarsNone: (f) =>
    `En ${f.name} no se ven abalorios sobre papel blanco: poner montoncitos separados sobre papel blanco, con luz pareja, y fotografiarlos desde arriba.`,
  jarsGrid: (f) =>
    `Los abalorios de ${f.name} no están en ${f.rows} filas de ${f.columns}: revisar los dos números, y dejar un dedo de papel entre los montoncitos.`,
  fileEmpty: (f) => `${f.name} está vacío: copiarlo o descargarlo de nuevo.`,
  fileBig: (f) =>
    `${f.name} es demasiado grande, se leen ${f.most} MB como mucho: guardar una copia más pequeña.`,
  format: (f) =>
    `${f.name} no es una imagen que se lea aquí: guardarla como JPEG o PNG y abrir ese archivo.`,
  damaged: (f) =>
    `${f.name} está cortado o dañado: copiarlo o descargarlo de nuevo, o abrirlo y guardarlo en un programa de imágenes.`,
  pixels: (f) =>
    `${f.name} tiene ${f.width} × ${f.height} píxeles, y se leen ${f.most} millones como mucho: guardar una copia más pequeña; 2000 por lado sobran.`,
  invisible: (f) =>
    `En ${f.name} no se ve nada, porque todo es transparente: guardarlo con sus capas encendidas.`,
  drawing: (f) =>
    `${f.name} cuesta demasiado de dibujar: guardarlo como PNG en un programa de dibujo y abrir ese archivo.`,
  marks: (f) =>
    `Las cuatro marcas redondas de las esquinas no se encuentran en ${f.name}: fotografiar la página entera, plana y nítida, con las cuatro marcas limpias y a la vista.`,
  uncoloured: (f) =>
    `En ${f.name} no hay ninguna casilla coloreada: comprobar que es la foto correcta.`,
  frameReach: (f) =>
    `Ningún panel va con una boquilla de este ancho: con este punto puede tener de ${f.least} a ${f.most} mm.`,
  frameWide: (f) =>
    `La boquilla es demasiado ancha para un panel de ${f.rounds} vueltas: tomar de ${f.from} a ${f.to} vueltas.`,
  frameRail: (f) =>
    `El riel de la boquilla es demasiado largo para un panel de ${f.rounds} vueltas: revisar el ancho y el alto de la boquilla, o tomar más vueltas.`,
  lining: (f) => `Esta medida del forro no cabe: puede ir de ${f.least} a ${f.most} mm.`,
  undo: 'Eso no puede hacerse con estos abalorios: deshacer el último paso y probar de otra manera.',
};
