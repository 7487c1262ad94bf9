/** A coin that most people have at hand. */
export type Coin = 'two-euro' | 'quarter';

/**
 * Across, millimetres: Council Regulation (EU) No 729/2014, Annex I; 31 U.S.C. 5112(a)(2), 0.955 inch.
 */
const coins: Readonly<Record<Coin, number>> = { 'two-euro': 25.75, quarter: 24.26 };

export const coinMm = (coin: Coin): number => coins[coin];

/** The coin of the reader's region, as the browser says it. */
export const coinFor = (): Coin => (/-US$/i.test(navigator.language) ? 'quarter' : 'two-euro');

/** Width and height of a bank card, millimetres (ISO/IEC 7810, ID-1). */
export const cardMm = { width: 85.6, height: 53.98 } as const;

/** However small the purse is shown, its scale can be read. */
const leastLetterPx = 13;

/**
 * The coin in millimetres, its box beginning at the origin.
 *
 * @param across its diameter, as the reader writes it
 */
export function drawCoin(
  context: CanvasRenderingContext2D,
  coin: Coin,
  across: string,
  ink: string,
  pxPerMm: number,
): void {
  const r = coinMm(coin) / 2;
  const disc = (radius: number, light: string, dark: string) => {
    const shine = context.createRadialGradient(r - radius * 0.4, r - radius * 0.5, 0, r, r, radius);
    shine.addColorStop(0, light);
    shine.addColorStop(1, dark);
    context.fillStyle = shine;
    context.beginPath();
    context.arc(r, r, radius, 0, 7);
    context.fill();
  };
  const silver = ['#f3f3f1', '#9c9c9a'] as const;
  disc(r, ...silver);
  if (coin === 'two-euro') disc(r * 0.73, '#efe0ae', '#b39a5c');
  context.strokeStyle = '#6f6f6d';
  context.lineWidth = 0.3;
  context.stroke();
  context.fillStyle = coin === 'two-euro' ? '#4d3f1c' : '#3b3b3a';
  context.textAlign = 'center';
  context.textBaseline = 'middle';
  context.font = `600 ${r * 0.62}px system-ui, sans-serif`;
  context.fillText(coin === 'two-euro' ? '2 €' : '25 ¢', r, r * 1.03);
  context.fillStyle = ink;
  const letterMm = Math.max(4, leastLetterPx / pxPerMm);
  context.font = `${letterMm}px system-ui, sans-serif`;
  context.fillText(across, r, -0.85 * letterMm);
}

/** A ruler in millimetres, from the origin to the right. */
export function drawRuler(
  context: CanvasRenderingContext2D,
  longMm: number,
  pxPerMm: number,
): void {
  const whole = Math.floor(longMm / 10) * 10;
  const letterMm = Math.max(3.4, leastLetterPx / pxPerMm);
  const deepMm = Math.max(10, 5.6 + 0.8 * letterMm);
  // Large figures stand at every second or fifth centimetre.
  const everyMm = letterMm < 4.5 ? 10 : letterMm < 9 ? 20 : 50;
  context.fillStyle = '#f4ead0';
  context.strokeStyle = '#8a7a54';
  context.lineWidth = 0.25;
  context.beginPath();
  context.rect(-2, 0, whole + 4, deepMm);
  context.fill();
  context.stroke();
  context.strokeStyle = '#3a3122';
  context.fillStyle = '#3a3122';
  context.textAlign = 'center';
  context.textBaseline = 'alphabetic';
  context.font = `${letterMm}px system-ui, sans-serif`;
  context.beginPath();
  for (let mm = 0; mm <= whole; mm++) {
    context.moveTo(mm, 0);
    context.lineTo(mm, mm % 10 === 0 ? 4.2 : mm % 5 === 0 ? 3 : 1.8);
    if (mm % everyMm === 0 && mm > 0) context.fillText(String(mm / 10), mm, deepMm - 1.4);
  }
  context.lineWidth = 0.2;
  context.stroke();
  context.textAlign = 'left';
  context.fillText('cm', 1, deepMm - 1.4);
}
