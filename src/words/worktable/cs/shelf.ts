import type { WorktableWords } from '../index.js';

/** The shelf of pieces, and how they are kept. */
export const shelf: WorktableWords['shelf'] = {
  title: 'Police',
  intro: 'Vaše práce se po každém kroku ukládají v tomto zařízení, v tomto prohlížeči.',
  empty: 'Zatím tu nic neleží. Práce přijde na polici s prvním obrázkem.',
  onTable: 'na stole',
  removed: 'Sundáno z police',
  removedHow: 'Tyto práce se dají vrátit, dokud je neodklidíte.',
  open: (title) => `Položit ${title} na stůl`,
  take: (title) => `Sundat ${title} z police`,
  back: (title) => `Vrátit ${title} na polici`,
  takeShort: 'Sundat',
  backShort: 'Vrátit',
  takenOff: (title) => `${title}: sundáno z police.`,
  putBack: (title) => `${title}: zase na polici.`,
  waits: (title) => `${title}: čeká na polici.`,
  copyOf: (title) => `${title}, druhý kus`,
  copied: 'Druhé okno si svou práci nechává. Co uděláte tady, pokračuje jako samostatná práce.',
  when: (date) => `naposledy ${date}`,
  elsewhere: 'Tato práce je otevřená v jiném okně.',
  refused:
    'Tento prohlížeč nic neuchovává, možná proto, že je okno anonymní. Než ho zavřete, uložte práci jako soubor.',
  full: 'V tomto zařízení už není místo. Vaše poslední kroky jsou na stole, ale neuložily se: uložte práci hned jako soubor.',
  edition: 'Je připravené nové vydání této stránky. Vaše práce zůstává.',
  fileDamaged: (file) => `${file}: tuto práci nejde otevřít, část chybí nebo je poškozená.`,
  fileNewer: (file) =>
    `${file}: tuto práci vytvořilo novější vydání této stránky. Otevřete stránku znovu, nebo požádejte o starší soubor.`,
  forClass: 'Pro kurz',
  classHow:
    'Schéma a postup každé zaškrtnuté práce v jednom PDF: pro každé jméno, vždy od nového listu; beze jmen jednou.',
  classNames: 'Jména, na každém řádku jedno',
  classSave: 'Uložit jako jedno PDF',
};
