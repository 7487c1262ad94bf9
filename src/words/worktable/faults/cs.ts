import type { FaultWords } from './english.js';

export const cs: FaultWords = {
  shape: (f) => `Tato míra dílu může být ${f.least} až ${f.most}: změňte ji v kroku Díl.`,
  corners:
    'Díl s rohy potřebuje přidávání v prvním nebo posledním očku každého klínu: zvolte to, nebo kulatý okraj.',
  notOurs: (f) =>
    `${f.name} neobsahuje použitelný vzor Rondure: otevřete jinou kopii, nebo ho vytvořte znovu z obrázku.`,
  notOursAt: (f) =>
    `${f.name} není použitelný vzor Rondure (místo ${f.place}): otevřete jinou kopii, nebo ho vytvořte znovu z obrázku.`,
  tooNew: (f) =>
    `${f.name} zapsalo novější Rondure: načtěte tuto stránku znovu a soubor otevřete ještě jednou.`,
  noLetter: (f) =>
    `Vzor má nejvýše tolik barev korálků: ${f.most}. Tento je má všechny, nejdřív dvě z nich slučte.`,
  beadsTyped: (f) => `„${f.got}“ nejde přečíst jako korálky: pište úseky jako 3A 2B 1A.`,
  beadsNone: 'Žádné korálky nejsou zadány: pište úseky jako 3A 2B 1A.',
  beadsMany: (f) => `Zadáno je víc korálků, než díl pojme (víc než ${f.most}): zkontrolujte počty.`,
  measured: (f) =>
    `Jedna z měr nemůže být správná: s těmito korálky leží mezi ${f.least} a ${f.most}. Změřte znovu a zkontrolujte kola, klíny a velikost korálků.`,
  turn: 'Označené očko by se posouvalo víc, než se očka mohou klonit: zkontrolujte směr a v každém kole označte první očko téhož klínu.',
  pointsFew:
    'Z bodů není vidět, jak se očka stáčejí: ukažte na první očko klínu v posledním kole a v některém blíž ke středu.',
  pointsLine: 'Body neurčují, jak díl leží: rozložte ty na okraji kolem celého dílu.',
  pointsLean:
    'Podle těchto bodů by se očka klonila víc, než mohou: zkontrolujte kolo a klín každého bodu a zda fotografie ukazuje korálky.',
  nothingMeasured: 'Zatím není nic změřeno: vyplňte aspoň jednu míru.',
  across: (f) =>
    `Díl z tohoto očka může měřit ${f.least} až ${f.most} mm (2 až 80 kol): zvolte jinou velikost, nebo jiné korálky.`,
  nothingToBead:
    'Žádné očko by nemělo korálek, protože obrázek k dílu nedosahuje: přitáhněte ho pod díl, nebo zvolte korálek pro okolí.',
  stock: (f) =>
    `Ve skleničkách na tento díl chybí korálků: ${f.missing}. Povolte víc barev, nebo díl zmenšete.`,
  stockBuy: (f) =>
    `Ve skleničkách na tento díl chybí korálků: ${f.missing}. Přikupte ${f.beads} ks ${f.name}, nebo díl zmenšete.`,
  stockPlain: (f) =>
    `Jednobarevný zadní díl potřebuje ${f.needed} ks ${f.name} a sklenička jich dá ${f.most}: zvolte jiný korálek, nebo díly zmenšete.`,
  colour: (f) => `„${f.got}“ není barva: napište ji šesti znaky, například d9b36a.`,
  noBeadLeft: 'Nezbývá korálek, ze kterého vybírat: vynechte jich méně.',
  keptMany: (f) =>
    `Korálků, které mají být použity: ${f.kept}; povolených barev: ${f.most}. Povolte víc barev, nebo ponechte méně korálků.`,
  letterMissing: (f) =>
    `Písmo stránek nemá „${f.character}“: vynechte ho v názvu i ve jménech korálků.`,
  size: (f) =>
    `Velikost korálků „${f.got}“ neznáme: použijte některou z ${f.known}, nebo uveďte průměr každého korálku.`,
  paletteEmpty: (f) =>
    `${f.name} neobsahuje korálky: potřebuje řádek s názvy sloupců a řádek pro každý korálek, aspoň s jeho barvou.`,
  paletteColumn: (f) =>
    `${f.name} nemá sloupec barev: jeden sloupec pojmenujte hex, s barvami jako #d9b36a.`,
  paletteNoTable: (f) => `${f.name} není prostá tabulka: otevřete soubor a uložte ho jako CSV.`,
  paletteUnread: (f) => `${f.name} nejde přečíst: uložte soubor znovu v programu, který ho zapsal.`,
  paletteLong: (f) =>
    `${f.name} je příliš dlouhý (nejvýše ${f.most}): ponechte korálky, které připadají v úvahu.`,
  paletteSize: (f) =>
    `${f.name} nemá korálky velikosti ${f.size}, jen ${f.found}: zvolte některou z těchto velikostí.`,
  paletteRow: (f) =>
    `Řádek ${f.line} v ${f.name}: „${f.got}“ tam nejde použít. Opravte to a soubor otevřete znovu.`,
  paletteTwice: (f) =>
    `Řádek ${f.line} v ${f.name} opakuje označení „${f.id}“ z řádku ${f.first}: dejte každému korálku vlastní.`,
  jarsNone: (f) =>
    `Na ${f.name} nejsou vidět korálky na bílém papíře: rozložte hromádky po bílém papíře v rovnoměrném světle a vyfoťte je shora.`,
  jarsGrid: (f) =>
    `Korálky na ${f.name} neleží v ${f.rows} řadách po ${f.columns}: zkontrolujte obě čísla a mezi hromádkami nechte na prst papíru.`,
  fileEmpty: (f) => `${f.name} je prázdný: zkopírujte nebo stáhněte ho znovu.`,
  fileBig: (f) => `${f.name} je příliš velký, čte se nejvýše ${f.most} MB: uložte menší kopii.`,
  format: (f) =>
    `${f.name} není obrázek, který se tu čte: uložte ho jako JPEG nebo PNG a otevřete ten.`,
  damaged: (f) =>
    `${f.name} je neúplný nebo poškozený: zkopírujte či stáhněte ho znovu, nebo ho otevřete a uložte v programu na obrázky.`,
  pixels: (f) =>
    `${f.name} má ${f.width} × ${f.height} bodů a čte se nejvýše ${f.most} milionů: uložte menší kopii; 2000 bodů na stranu bohatě stačí.`,
  invisible: (f) =>
    `Na ${f.name} není nic vidět, celý je průhledný: uložte ho se zapnutými vrstvami.`,
  drawing: (f) =>
    `${f.name} je na nakreslení příliš náročný: uložte ho v kreslicím programu jako PNG a otevřete ten.`,
  marks: (f) =>
    `Čtyři kulaté rohové značky předlohy na ${f.name} nejde najít: vyfoťte celou stránku, rovnou a ostrou, se všemi čtyřmi značkami čistými a v záběru.`,
  uncoloured: (f) =>
    `Na ${f.name} není vybarveno žádné políčko předlohy: zkontrolujte, zda je to správná fotografie.`,
  frameReach: (f) =>
    `K rámečku této šířky se nehodí žádný díl: s tímto očkem může být široký ${f.least} až ${f.most} mm.`,
  frameWide: (f) =>
    `Rámeček je pro díl s tolika koly (${f.rounds}) příliš široký: zvolte ${f.from} až ${f.to} kol.`,
  frameRail: (f) =>
    `Lišta rámečku je pro díl s tolika koly (${f.rounds}) příliš dlouhá: zkontrolujte šířku a výšku rámečku, nebo přidejte kola.`,
  lining: (f) => `Pro tuto míru podšívky není místo: může být ${f.least} až ${f.most} mm.`,
  undo: 'S těmito korálky to nejde: vraťte poslední krok a zkuste to jinak.',
};
