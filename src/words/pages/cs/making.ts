import type { PageWords } from '../index.js';

/** Seam, frame and lining. */
export const making: PageWords['booklet']['making'] = {
  panels: 'Díly',
  two: 'Uháčkovat oba díly, každý podle jeho schématu a seznamu. Nechat je vlhké a naplocho ležet pod látkou, dokud neuschnou, pokud to korálky a nit snesou.',
  one: 'Uháčkovat stejný díl dvakrát: peněženka má dva. Nechat je vlhké a naplocho ležet pod látkou, dokud neuschnou, pokud to korálky a nit snesou.',
  seam: 'Šev',
  oneSeam:
    'Položit díly na sebe, korálky vně na obou stranách a oba obrázky vzpřímeně. V každém označit první očko posledního kola, sešpendlit 12. hodinu s 12. hodinou a 6. hodinu s 6. hodinou, potom místa mezi nimi. Nahoře nechat otevřeno pro rámeček, obvykle o něco méně než polovinu okraje (běžná praxe, bez zdroje). Sešívat očko k očku, pod oběma nitkami, pevnou nylonovou nebo polyesterovou nití, asi třikrát delší než šev, od jednoho kloubu dolů přes 6. hodinu k druhému; skončit 5 až 10 mm pod každým kloubem.',
  pairs: 'Očka posledního kola, která se setkají',
  frame: 'Rámeček',
  frameText:
    'Najít střed rámečku a otevřeného okraje na každé straně a sešpendlit střed na střed. Šít od středu ven k oběma kloubům, každým otvorem rámečku s otvory; rámeček s drážkou se lepí tak, jak udává jeho výrobce, jedna strana po druhé, a vyplní se papírovou šňůrkou. Okraj bývá až o 10 % delší než rámeček (zpaměti, neověřeno).',
  lining: 'Podšívka',
  liningText:
    'Střih podšívky v tomto sešitu je ve skutečné velikosti. Před stříháním změřit hotový díl a čáru švu nakreslit o rozdíl šířeji nebo úžeji. Podšívku ušít, vložit lícem viditelným dovnitř a její okraj přišít k okraji dílu podél rámečku, pod otvory nebo uvnitř hrany drážky.',
  noTemplate:
    'Pro díl této velikosti střih není: položit hotový díl na látku, obkreslit ho a přidat 5 mm na šev.',
  washing: 'Praní a péče',
  washingText:
    'Peněženku raději otírat vlhkým hadříkem, než prát: malované a potažené korálky mohou při praní a chemickém čištění ztratit barvu a kovový rámeček může zrezivět.',
};
