import type { WorktableWords } from '../index.js';

/** An empty chart to colour by hand, and its photo read back. */
export const coloured: WorktableWords['coloured'] = {
  title: 'Vybarvit ručně',
  how: 'Vytiskněte prázdné schéma tohoto dílu, vybarvěte je pastelkami nebo fixy a načtěte zpět jeho fotku.',
  saved: (name) => `${name} je uložen. Vytiskněte ve 100 %, vybarvěte a vraťte se s fotkou.`,
  which: 'Vybarvené schéma',
  whichHow: 'Klíny a kola stojí nahoře na jeho stránce.',
  blank: ({ title, wedges, rounds }) => `${title}, klíny: ${wedges}, kola: ${rounds}`,
  openBlank: 'Otevřít jiné prázdné schéma',
  colours: 'Barvy, nejvýše',
  photo: 'Jeho fotka',
  photoHow:
    'Celá stránka, rovně a v rovnoměrném světle, se čtyřmi značkami v rozích. Pusťte fotku sem, nebo:',
  choose: 'Vybrat fotku',
  drop: 'Pusťte: fotka se přečte',
  goOn: ({ name, n, of }) => `Pokračovat s ${name}, ${n} z ${of}`,
  reading: 'Čtu vybarvené schéma …',
  stop: 'Zastavit',
  noCorners:
    'Čtyři kulaté značky v rozích se nenašly: vyfoťte celou stránku, rovně a ostře, se všemi čtyřmi značkami, a podívejte se, zda je nahoře vybráno správné schéma.',
  notColoured:
    'Nenašlo se žádné vybarvené políčko: podívejte se, zda je nahoře vybráno správné schéma a zda jsou políčka dobře krytá.',
  blankTaken: 'To je samo prázdné schéma; teď je vybráno. Chybí ještě jeho fotka.',
  uneven:
    'Na stránce leží stín, takže mohou být špatně přečtena i další políčka: prohlédněte díl, nebo stránku vyfoťte znovu v rovnoměrném světle.',
  many: 'Velmi mnoho políček je nejistých. Podívejte se, zda bylo vybráno správné schéma.',
  count: ({ n, of }) => `${n} z ${of}`,
  place: ({ round, wedge, place }) => `Kolo ${round}, klín ${wedge}, očko v klínu: ${place}`,
  reasons: {
    between: 'Jeho barva leží mezi dvěma korálky.',
    uneven: 'Má dvě barvy.',
    unlike: 'Jeho barva se nepodobá žádné jiné na stránce.',
    partly: 'Je vybarvené jen zčásti.',
    outside: 'Leží mimo fotku.',
  },
  patch: 'Fotka kolem políčka s nakresleným obrysem',
  ask: 'Co to je?',
  asRead: 'tak přečteno',
  white: 'Nechané bílé',
  other: 'Jiný korálek',
  rest: 'Zbytek vzít, jak byl přečten',
  keysHow: (n) => `Klávesy: 1 až ${n} vybírají, šipka vlevo se vrací.`,
  done: 'Všechna políčka jsou rozhodnutá',
  counts: ({ coloured, white }) => `Vybarvená políčka: ${coloured}. Bílá: ${white}.`,
  whiteAsk: 'Bílá políčka jsou',
  whiteOpen: 'Ještě nerozhodnutá',
  whiteHow: 'Co není rozhodnuto, můžete položit štětcem.',
  lay: 'Položit na stůl',
  laid: (title) => `„${title}“ leží na stole. Zpět vrátí, co tam leželo předtím.`,
  steps: {
    read: 'přečíst vybarvené schéma',
  },
};
