import type { Picture } from '../../core/picture/picture.js';
import type { PanelGeometry } from '../../core/panel/geometry.js';
import { outlineOf } from './outline.js';
import { pictureCanvas } from './picture-bitmap.js';
import type { Scene } from './scene.js';

/** How much of the ground's tone lies over a picture around the panel. */
export const veil = 0.74;

let shade: { geometry: PanelGeometry; same: string; canvas: HTMLCanvasElement } | undefined;

/**
 * The panel's shadow with the cloth below its beads, on a canvas of its own: a blur takes longer than a
 * move of the finger may.
 *
 * @param same what its place on the screen hangs on
 */
export function shadowOf(
  geometry: PanelGeometry,
  { width, height }: { width: number; height: number },
  scene: Scene,
  dots: number,
  same: string,
): HTMLCanvasElement {
  if (shade?.geometry === geometry && shade.same === same) return shade.canvas;
  const canvas = canvasOf(width, height);
  const context = canvas.getContext('2d')!;
  scene.apply(context, dots);
  context.shadowColor = 'rgb(0 0 0 / 0.4)';
  context.shadowBlur = 22 * dots;
  context.shadowOffsetX = 5 * dots;
  context.shadowOffsetY = 10 * dots;
  context.fillStyle = '#7e756b';
  context.fill(outlineOf(geometry).edge);
  shade = { geometry, same, canvas };
  return canvas;
}

let veiled: { picture: Picture; same: string; canvas: HTMLCanvasElement } | undefined;

/**
 * A picture below its veil, as many dots across as it takes on the screen: while a finger moves it, it is
 * laid down as it is.
 */
export function veiledCopy(
  picture: Picture,
  width: number,
  height: number,
  ground: string,
): HTMLCanvasElement {
  const same = `${width} ${height} ${ground}`;
  if (veiled?.picture === picture && veiled.same === same) return veiled.canvas;
  const canvas = canvasOf(width, height);
  const context = canvas.getContext('2d')!;
  context.imageSmoothingQuality = 'high';
  context.drawImage(pictureCanvas(picture), 0, 0, width, height);
  context.globalAlpha = veil;
  context.fillStyle = ground;
  context.fillRect(0, 0, width, height);
  veiled = { picture, same, canvas };
  return canvas;
}

function canvasOf(width: number, height: number): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  Object.assign(canvas, { width, height });
  return canvas;
}
