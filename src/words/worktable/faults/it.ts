import type { FaultWords } from './english.js';

export const it: FaultWords = {
  shape: (f) =>
    `Questa misura del pannello può andare da ${f.least} a ${f.most}: cambiarla nel passo Pannello.`,
  corners:
    'Un pannello con angoli vuole l’aumento nella prima o nell’ultima maglia di ogni spicchio: sceglierlo così, o prendere un bordo tondo.',
  notOurs: (f) =>
    `${f.name} non contiene uno schema di Rondure in buono stato: aprirne un’altra copia, o rifarlo dall’immagine.`,
  notOursAt: (f) =>
    `${f.name} non è uno schema di Rondure in buono stato (in ${f.place}): aprirne un’altra copia, o rifarlo dall’immagine.`,
  tooNew: (f) =>
    `${f.name} è stato scritto da un Rondure più nuovo: ricaricare questa pagina e riaprirlo.`,
  noLetter: (f) =>
    `Uno schema ha al massimo ${f.most} colori di perline, e questo li ha tutti: unirne prima due.`,
  beadsTyped: (f) => `«${f.got}» non si legge come perline: scrivere serie come 3A 2B 1A.`,
  beadsNone: 'Non è data nessuna perlina: scrivere serie come 3A 2B 1A.',
  beadsMany: (f) =>
    `Sono date più di ${f.most} perline, più di quante ne porti un pannello: controllare i numeri.`,
  measured: (f) =>
    `Una delle misure non può essere giusta: con queste perline sta tra ${f.least} e ${f.most}. Misurare di nuovo, e controllare giri, spicchi e misura delle perline.`,
  turn: 'La maglia segnata si sposterebbe più di quanto le maglie possano inclinarsi: controllare il verso, e segnare in ogni giro la prima maglia dello stesso spicchio.',
  pointsFew:
    'I punti non mostrano come girano le maglie: indicare la prima maglia di uno spicchio nell’ultimo giro e in uno più interno.',
  pointsLine:
    'I punti non dicono come è posato il pannello: distribuire quelli sul bordo tutt’intorno.',
  pointsLean:
    'Secondo questi punti le maglie s’inclinerebbero più di quanto possano: controllare giro e spicchio di ognuno, e che la foto mostri le perline.',
  nothingMeasured: 'Non è ancora misurato nulla: riempire almeno una misura.',
  across: (f) =>
    `Con questa maglia un pannello può avere da ${f.least} a ${f.most} mm (2–80 giri): scegliere un’altra misura, o altre perline.`,
  nothingToBead:
    'Nessuna maglia porterebbe una perlina, perché l’immagine non arriva al pannello: tirarla sotto il pannello, o scegliere una perlina per ciò che sta intorno.',
  stock: (f) =>
    `Nei barattoli mancano ${f.missing} perline per questo pannello: permettere più colori, o fare il pannello più piccolo.`,
  stockBuy: (f) =>
    `Nei barattoli mancano ${f.missing} perline per questo pannello: comprarne ${f.beads} di ${f.name}, o fare il pannello più piccolo.`,
  stockPlain: (f) =>
    `Il retro in tinta unita vuole ${f.needed} perline ${f.name}, e il barattolo può darne ${f.most}: scegliere un’altra perlina per il retro, o fare i pannelli più piccoli.`,
  colour: (f) => `«${f.got}» non è un colore: scriverlo con sei caratteri, per esempio d9b36a.`,
  noBeadLeft: 'Non resta nessuna perlina da scegliere: escluderne meno.',
  keptMany: (f) =>
    `Perline da usare sempre: ${f.kept}; colori permessi: ${f.most}. Permettere più colori, o tenere meno perline.`,
  letterMissing: (f) =>
    `Il carattere delle pagine non ha «${f.character}»: toglierlo dal titolo e dai nomi delle perline.`,
  size: (f) =>
    `La misura «${f.got}» non è nota: usare una di ${f.known}, o dare il diametro di ogni perlina.`,
  paletteEmpty: (f) =>
    `${f.name} non contiene perline: serve una riga con i nomi delle colonne e una riga per ogni perlina, almeno con il suo colore.`,
  paletteColumn: (f) =>
    `${f.name} non ha una colonna di colori: chiamarne una hex, con colori come #d9b36a.`,
  paletteNoTable: (f) => `${f.name} non è una tabella semplice: aprirlo e salvarlo come CSV.`,
  paletteUnread: (f) =>
    `${f.name} non si legge: salvarlo di nuovo con il programma che l’ha scritto.`,
  paletteLong: (f) =>
    `${f.name} è troppo lungo (al massimo ${f.most}): tenere le perline che potrebbero servire.`,
  paletteSize: (f) =>
    `${f.name} non ha perline della misura ${f.size}, solo ${f.found}: scegliere una di queste misure.`,
  paletteRow: (f) =>
    `Riga ${f.line} di ${f.name}: «${f.got}» lì non va. Correggerlo e riaprire il file.`,
  paletteTwice: (f) =>
    `La riga ${f.line} di ${f.name} ripete l’identificativo «${f.id}» della riga ${f.first}: darne a ogni perlina uno suo.`,
  jarsNone: (f) =>
    `In ${f.name} non si vedono perline su carta bianca: posare mucchietti distanziati su carta bianca, in luce uniforme, e fotografarli dall’alto.`,
  jarsGrid: (f) =>
    `Le perline in ${f.name} non stanno in ${f.rows} file da ${f.columns}: controllare i due numeri, e lasciare un dito di carta tra i mucchietti.`,
  fileEmpty: (f) => `${f.name} è vuoto: copiarlo o scaricarlo di nuovo.`,
  fileBig: (f) =>
    `${f.name} è troppo grande, si leggono al massimo ${f.most} MB: salvare una copia più piccola.`,
  format: (f) =>
    `${f.name} non è un’immagine che si legge qui: salvarla come JPEG o PNG e aprire quella.`,
  damaged: (f) =>
    `${f.name} è incompleto o danneggiato: copiarlo o scaricarlo di nuovo, o aprirlo e salvarlo in un programma d’immagini.`,
  pixels: (f) =>
    `${f.name} ha ${f.width} × ${f.height} pixel, e se ne leggono al massimo ${f.most} milioni: salvare una copia più piccola; 2000 per lato bastano e avanzano.`,
  invisible: (f) =>
    `In ${f.name} non si vede nulla, perché è tutto trasparente: salvarlo con i livelli accesi.`,
  drawing: (f) =>
    `${f.name} è troppo pesante da disegnare: salvarlo come PNG in un programma di disegno e aprire quello.`,
  marks: (f) =>
    `I quattro segni rotondi negli angoli non si trovano in ${f.name}: fotografare la pagina intera, piana e nitida, con i quattro segni puliti e in vista.`,
  uncoloured: (f) => `In ${f.name} nessuna casella è colorata: controllare che sia la foto giusta.`,
  frameReach: (f) =>
    `Nessun pannello va con una cerniera di questa larghezza: con questa maglia può essere da ${f.least} a ${f.most} mm.`,
  frameWide: (f) =>
    `La cerniera è troppo larga per un pannello di ${f.rounds} giri: prenderne da ${f.from} a ${f.to}.`,
  frameRail: (f) =>
    `La guida della cerniera è troppo lunga per un pannello di ${f.rounds} giri: controllare larghezza e altezza della cerniera, o prendere più giri.`,
  lining: (f) => `Questa misura della fodera non ci sta: può andare da ${f.least} a ${f.most} mm.`,
  undo: 'Con queste perline non si può fare: annullare l’ultimo passo e provare in un altro modo.',
};
