import type { PageWords } from '../index.js';

/** Seam, frame and lining. */
export const making: PageWords['booklet']['making'] = {
  panels: 'Díly',
  two: 'Uháčkujte oba díly, každý podle jeho schématu a seznamu. Vlhké je nechte ležet naplocho pod látkou, dokud neuschnou, pokud to korálky a nit snesou. Potom je změřte v nejširším místě, přes vnější okraje korálků, a míru si zapište: podle ní se stříhá podšívka.',
  one: 'Stejný díl uháčkujte ještě jednou, podle stejného schématu a seznamu: peněženka má dva stejné díly. Vlhké je nechte ležet naplocho pod látkou, dokud neuschnou, pokud to korálky a nit snesou. Potom je změřte v nejširším místě, přes vnější okraje korálků, a míru si zapište: podle ní se stříhá podšívka.',
  ends: 'Konce nití: konce z kroužku, napojení a posledního kola protáhněte jehlou na straně bez korálků pěti nebo šesti očky, dvěma nebo třemi zpět a odstřihněte.',
  wrong: 'Když je korálek špatně',
  wrongText:
    'Všimnete-li si hned: párejte až k němu. Později: špatný korálek rozbijte (s ochrannými brýlemi a látkou přes korálek) a správný přišijte tenkou jehlou a stejnou nití; stejně tam, kde korálek chybí.',
  seam: 'Šev',
  oneSeam: (f) =>
    `Položte díly na sebe, korálky vně na obou stranách a oba obrázky vzpřímeně. V každém označte první očko posledního kola, sešpendlete 12. hodinu s 12. hodinou a 6. hodinu s 6. hodinou, potom místa mezi nimi. Nahoře nechte otevřeno pro rámeček${f.framed ? '' : ', obvykle o něco méně než polovinu okraje'}. Sešívejte očko k očku, pod oběma nitkami každého očka, pevnou nylonovou nebo polyesterovou nití, asi třikrát delší než šev, od jednoho kloubu dolů přes 6. hodinu k druhému${f.framed ? '.' : '; skončete 5 až 10 mm pod každým kloubem.'}`,
  pairs: 'Očka posledního kola, která se setkají',
  frame: 'Rámeček',
  frameText:
    'Najděte střed rámečku a otevřeného okraje na každé straně a sešpendlete střed na střed. Šijte od středu ven k oběma kloubům, každým otvorem rámečku s otvory; rámeček s drážkou se lepí tak, jak udává jeho výrobce, jedna strana po druhé, a vyplní se papírovou šňůrkou.',
  frameEase: 'Okraj bývá až o 10 % delší než rámeček; přebytek při šití rovnoměrně rozdělte.',
  lining: 'Podšívka',
  liningText:
    'Střih podšívky v tomto sešitu je ve skutečné velikosti. Před stříháním změřte hotový díl a čáru švu nakreslete o rozdíl šířeji nebo úžeji.',
  liningShown:
    'Střih podšívky v tomto sešitu je ve skutečné velikosti a krok za krokem ukazuje, jak přijde podšívka dovnitř.',
  noTemplate:
    'Pro díl této velikosti střih není: položte hotový díl na látku, obkreslete ho a přidejte 5 mm na šev.',
  washing: 'Praní a péče',
  washingText:
    'Peněženku raději otírejte vlhkým hadříkem, neperte ji: barvené korálky a korálky s povrchovou úpravou mohou při praní a chemickém čištění ztratit barvu a kovový rámeček může zrezivět.',
};
