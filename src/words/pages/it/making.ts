import type { PageWords } from '../index.js';

export const making: PageWords['booklet']['making'] = {
  panels: 'I pannelli',
  two: 'Lavorare entrambi i pannelli, ognuno secondo il proprio schema e la propria lista. Lasciarli umidi e in piano sotto un panno finché sono asciutti, se perline e filo lo sopportano. Poi misurarli nel punto più largo, da bordo esterno a bordo esterno delle perline, e annotare la misura: in base a questa si taglia la fodera.',
  one: 'Lavorare lo stesso pannello una seconda volta, con lo stesso schema e la stessa lista: un borsellino ha due pannelli uguali. Lasciarli umidi e in piano sotto un panno finché sono asciutti, se perline e filo lo sopportano. Poi misurarli nel punto più largo, da bordo esterno a bordo esterno delle perline, e annotare la misura: in base a questa si taglia la fodera.',
  ends: 'Capi di filo: con un ago passare quelli dell’anello, delle giunte e dell’ultimo giro in cinque o sei maglie sulla faccia senza perline, tornare indietro in due o tre e tagliare.',
  wrong: 'Se una perlina è sbagliata',
  wrongText:
    'Se ci si accorge subito: disfare fino a lì. Se ci si accorge più tardi: rompere la perlina sbagliata (con occhiali protettivi e un panno sopra) e cucire quella giusta con un ago sottile e lo stesso filo; lo stesso dove ne manca una.',
  seam: 'La cucitura',
  oneSeam: (f) =>
    `Mettere i pannelli uno sull’altro, con le perline all’esterno da tutte e due le parti ed entrambi i disegni diritti. Segnare in ognuno la prima maglia dell’ultimo giro, fermare con spilli ore 12 con ore 12 e ore 6 con ore 6, poi i punti intermedi. Lasciare aperta la parte in alto per la montatura${f.framed ? '' : ', di solito un po’ meno della metà del bordo'}. Cucire maglia con maglia, prendendo entrambi i fili, con un filo robusto di nylon o poliestere lungo circa tre volte la cucitura, da uno snodo verso il basso, passando da ore 6, fino all’altro${f.framed ? '.' : '; fermarsi 5–10 mm sotto ogni snodo.'}`,
  pairs: 'Maglie dell’ultimo giro che vanno insieme',
  frame: 'La montatura',
  frameText:
    'Trovare il centro della montatura e quello del bordo aperto su ogni lato, e fermare con spilli centro con centro. Cucire dal centro verso l’esterno fino ai due snodi, in ogni foro se la montatura ha i fori; una montatura con scanalatura si incolla come dice il suo produttore, un lato dopo l’altro, e si riempie con cordoncino di carta.',
  frameEase:
    'Di solito il bordo è fino al 10% più lungo della montatura: distribuire l’abbondanza in modo uniforme cucendo.',
  lining: 'La fodera',
  liningText:
    'Il cartamodello della fodera in questo libretto è a grandezza naturale. Misurare il pannello finito prima di tagliare e tracciare la linea di cucitura più larga o più stretta secondo la differenza.',
  liningShown:
    'Il cartamodello della fodera in questo libretto è a grandezza naturale e mostra passo per passo come si mette la fodera.',
  noTemplate:
    'Per un pannello di questa misura non c’è un cartamodello della fodera: posare il pannello finito sulla stoffa, disegnarne il contorno e aggiungere 5 mm per la cucitura.',
  washing: 'Lavaggio e cura',
  washingText:
    'Pulire il borsellino con un panno umido invece di lavarlo: le perline dipinte o rivestite possono perdere il colore con il lavaggio e la pulitura a secco, e una montatura di metallo può arrugginire.',
};
