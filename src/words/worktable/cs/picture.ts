import type { WorktableWords } from '../index.js';

/** The step Picture. */
export const picture: WorktableWords['picture'] = {
  step: 'Obrázek',
  invite: 'Dejte na díl vlastní obrázek',
  inviteHow: 'Pusťte ho kamkoli, vložte ho, nebo:',
  drop: 'Pusťte: obrázek se položí na díl',
  yours: 'Váš obrázek',
  sampleNote: 'Toto je naše ukázka. Vyzkoušejte na ní všechno.',
  local: 'Váš obrázek zůstává v tomto zařízení. Nic se nikam neposílá.',
  moveHow:
    'Obrázek pod dílem táhněte. Kolečkem nebo dvěma prsty měníte jeho velikost; kulatým úchytem ho otáčíte.',
  size: 'Velikost',
  sizeUnit: '%',
  turned: 'Otočení',
  turnedUnit: '°',
  across: 'Doprava',
  down: 'Dolů',
  mm: 'mm',
  lies: 'Jak leží',
  liesHow: {
    subject:
      'Co stojí na jednobarevném pozadí, je tak velké, jak se vejde do okraje; kde nic nevyniká, obrázek díl vyplní.',
    fill: 'Obrázek pokryje celý díl; co přečnívá přes okraj, se odřízne.',
    fit: 'Delší strana jde přes celý díl: rohy se odříznou a podél delších stran zůstane pozadí.',
    inside: 'Nic se neodřízne; kolem celého obrázku je pozadí.',
  },
  kind: 'Co to je',
  kindHow: 'V kresbě vyhrává korálek tmavá čára; u fotografie dostane každý korálek střední barvu.',
  kindDecided: ({ art }) => (art === 'photo' ? 'Beru to jako fotografii.' : 'Beru to jako kresbu.'),
  around: 'Kolem něj a za ním',
  groundAuto: 'Co se k němu hodí',
  cutOutHow:
    'Odstraní jednobarevné pozadí, takže to, co na něm stojí, leží na vlastních korálcích.',
  white: 'Bílá',
  bare: 'Bez korálků',
  aroundHow: 'Co je vidět tam, kde obrázek končí nebo kde je průhledný.',
  mind: 'Co se nesmí ztratit',
  mindHow: 'Přejeďte na dílu oko nebo zobák: jeho korálky se vyberou s větší péčí.',
  mindSize: 'Štětec',
  mindKeys:
    'Klávesnicí: šipky vedou štětec podél kola a z kola na kolo, mezerník přejede, čárka a tečka ho zmenší a zvětší. Se Shiftem přejíždějí šipky cestou. Esc štětec odloží.',
  mindThere: ({ place }) => `${place}; přejeto štětcem`,
  opening: 'Otevírám obrázek …',
  noPicture:
    'Toto schéma přišlo bez obrázku. Korálky zůstanou, jak jsou; nový obrázek položíte tak, že ho otevřete.',
  steps: {
    move: 'posunout obrázek',
    size: 'velikost obrázku',
    turn: 'otočit obrázek',
    place: 'položit obrázek',
    open: 'otevřít obrázek',
    art: 'druh obrázku',
    background: 'pozadí',
    mind: 'přejet, co se nesmí ztratit',
  },
};
