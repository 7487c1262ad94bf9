import type { PageWords } from '../index.js';
import { amountsIn } from '../amounts.js';
import { numbersIn } from '../numbers.js';

const { count, fixed, many, short } = numbersIn('ru');
const { tenths, metres, cm } = amountsIn('ru');
const range = (f: readonly [number, number], digits: number): string =>
  `${short(f[0], digits)}–${short(f[1], digits)}`;
const kinds = { 'half-round': 'полукруглый', squared: 'прямоугольный', oval: 'овальный' };
const fixings = { sewn: 'пришивной', glued: 'вклеиваемый' };

/** Things to have for a purse: thread, tools, frame, lining, and the usual cautions. */
export const shopping: PageWords['shopping'] = {
  beadReserveSaid: (f) =>
    f.percent === 0
      ? 'Без запаса: битые и неровные бисерины не учтены.'
      : f.batch
        ? `Запас ${short(f.percent, 2)} %, не меньше 30 бисерин каждого вида, посчитан один раз на все кошельки.`
        : `Запас ${short(f.percent, 2)} %, не меньше 30 бисерин каждого вида.`,
  noBeads: 'Бисер ещё не выбран.',
  crochetThread: (f) =>
    [
      `${f.name ?? `Нить для вязания в цвет бисера${f.mostMm === undefined ? '' : `, толщиной до ${short(f.mostMm, 2)} мм`}`}: ${metres(f.mm)}`,
      ...(f.grams === undefined
        ? []
        : [`около ${f.grams < 10 ? short(f.grams, 1) : count(Math.ceil(f.grams))} г`]),
    ].join(', '),
  threadSum: (f) =>
    `${[
      `${many(f.stitches, { one: 'петля', few: 'петли', many: 'петель', other: 'петли' })} по ${short(f.perStitchMm, 1)} мм: ${tenths(f.netMm / 1000)} м`,
      ...(f.reservePercent === 0
        ? []
        : [`запас ${short(f.reservePercent, 1)} %: ещё ${tenths(f.reserveMm / 1000)} м`]),
      `${many(f.tails, { one: 'конец', few: 'конца', many: 'концов', other: 'конца' })} по ${short(f.tailMm / 10, 1)} см: ещё ${tenths(f.tailsMm / 1000)} м`,
    ].join('; ')}.`,
  lengths: (f) =>
    f.lengths === 1
      ? `Нанизанный бисер занимает из этого ${fixed(f.strungMm / 1000, 2)} м, одним отрезком.`
      : `Нанизанный бисер занимает из этого ${fixed(f.strungMm / 1000, 2)} м; отрезков: ${count(f.lengths)}.`,
  thickness: (f) =>
    `Через отверстие бисера ${f.size}, обычно ${short(f.holeMm, 2)} мм, проходит нить до ${short(f.singleMostMm, 2)} мм; сложенная у ушка иглы вдвое — до ${short(f.doubledMostMm, 2)} мм (около ${short(f.doubledMostTex, 0)} текс: 1 г — около ${short(1000 / f.doubledMostTex, 0)} м).`,
  thicknessGiven: (f) => {
    const start = `Толщина нити ${short(f.diameterMm, 2)} мм, отверстие бисера ${f.size} обычно ${short(f.holeMm, 2)} мм:`;
    if (!f.single) return `${start} СЛИШКОМ ТОЛСТАЯ. Взять нить тоньше или бисер крупнее.`;
    return f.doubled
      ? `${start} проходит, и сложенная вдвое у ушка иглы тоже.`
      : `${start} проходит в одно сложение, но не сложенная вдвое у ушка иглы. Нанизывать проклеенным концом нити или через петлю из более тонкой нити.`;
  },
  sewingThread: (f) =>
    `Прочная нить для шитья, нейлоновая или полиэфирная, 70–135 текс или в 2–6 сложений: ${metres(f.mm)}`,
  cord: (f) => `Клей для фермуара и бумажный шнур для его паза: ${cm(f.mm)}`,
  hook: (f) =>
    f.range === undefined
      ? 'Крючок: какой нужен по образцу'
      : `Крючок ${range(f.range, 2)} мм, для ${f.size ?? 'этого бисера'}: решает образец`,
  needle: (f) =>
    f.range === undefined
      ? 'Бисерная игла, которая проходит через бисер'
      : `Бисерная игла толщиной ${range(f.range, 2)} мм: она должна проходить через каждую бисерину`,
  sewingNeedle: (f) =>
    f.panels === 2
      ? 'Швейная игла и булавки: для шва, фермуара и подкладки'
      : 'Швейная игла и булавки: для концов нити и подкладки',
  frame: (f) => {
    const wide =
      f.range === undefined
        ? `ширина ${short(f.widthMm, 1)} мм`
        : `ширина около ${short(f.widthMm, 0)} мм (подойдёт ${range(f.range, 0)} мм)`;
    return [
      f.pieces === 1 ? 'Фермуар' : `Фермуар (${count(f.pieces)} шт.)`,
      ...(f.kind === undefined ? [] : [kinds[f.kind]]),
      ...(f.fixing ? [fixings[f.fixing]] : []),
      wide,
    ].join(', ');
  },
  lining: (f) =>
    `Ткань на подкладку, ${f.widthCm} x ${f.heightCm} см (из ткани шириной ${f.clothWidthCm} см, на 2 см больше кроя): ${many(f.pieces, { one: 'кусок', few: 'куска', many: 'кусков', other: 'куска' })} ${f.pieceWidthCm} x ${f.pieceHeightCm} см, припуск ${short(f.allowanceMm, 1)} мм учтён`,
  crochetInstead: (f) =>
    `Подкладку можно и связать: обе детали ещё раз без бисера, примерно ${metres(f.mm)} нити. Сшить их, как детали с бисером, вложить внутрь и пришить их край к краю кошелька вдоль фермуара.`,
  crochetedLining: (f) =>
    `На вязаную подкладку, ${many(f.pieces, { one: 'деталь', few: 'детали', many: 'деталей', other: 'детали' })} без бисера: ${metres(f.mm)} нити`,
  frameThread: (f) => `Прозрачная нейлоновая нить, чтобы пришить фермуар: ${metres(f.mm)}`,
  spools: (f) =>
    `${many(f.spools, { one: 'моток или катушка', few: 'мотка или катушки', many: 'мотков или катушек', other: 'мотка или катушки' })} по ${short(f.metres, 1)} м${f.cost === undefined ? '' : `, всего ${fixed(f.cost, 2)}`}`,
  ownHook: (f) => `Крючок ${short(f.mm, 2)} мм: им вяжут по этому описанию`,
  marker: 'Кусочек нити другого цвета — маркер начала ряда: его переносят выше в каждом ряду',
  mat: 'Коврик для бисера и клейкие листочки, чтобы отмечать строку',
  pencil: 'Мягкий карандаш или портновский мел для подкладки',
  seal: 'Зажигалка (только для синтетических концов) или средство от осыпания',
  glue: 'Прозрачный клей для ткани — на узелки и концы нити',
  liningThread: 'Швейная нить в цвет подкладки',
  scissors: 'Маленькие острые ножницы для нити и ткани',
  samples:
    'Коды — это не магазинные номера, а наши собственные цвета-образцы: покупать по цвету и покрытию.',
  braid: (f) => `Тесьма, чтобы закрыть шов фермуара изнутри, по желанию: ${cm(f.mm)}`,
  care: [
    'Каждая бисерина — мелкая деталь, которой ребёнок младше трёх лет может подавиться: держать бисер, иглы, ножницы и готовые кошельки подальше от маленьких детей. Кошелёк — не игрушка.',
    'Если нужно разбить неверно нанизанную бисерину: надеть защитные очки, накрыть бисерину тканью. Иглы и крючки пересчитать до и после работы.',
    'Оплавлять только синтетические концы и никогда рядом с клеем на растворителе; когда клеите, проветривать.',
    'Металлические фермуары могут содержать никель. Каждые полчаса давать отдых глазам и рукам; остановиться, если что-то болит.',
    'Это обычные предостережения, а не юридический совет: если продаёте, узнать правила там, где живёте вы и ваши покупатели.',
  ],
};
