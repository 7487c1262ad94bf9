import { piece } from '../../store/store.js';
import { directionOf } from '../../../core/panel/shape.js';

/** A swatch seen on its bead face: an arrow shows the way of work, a thread where the wedge has gone. */
export function TurnDrawing({ way }: { way: 'with' | 'against' }) {
  const { hand = 'right', beadsFace = 'away' } = piece.value.wish.shape;
  const direction = directionOf({ hand, beadsFace });
  const sign = way === 'with' ? direction : -direction;
  const at = (degrees: number, radius: number) => {
    const angle = ((degrees - 90) * Math.PI) / 180;
    return `${(60 + radius * Math.cos(angle)).toFixed(1)} ${(60 + radius * Math.sin(angle)).toFixed(1)}`;
  };
  const arrowEnd = direction * 62;
  return (
    <svg viewBox="0 0 120 120" aria-hidden="true" focusable="false">
      {[12, 22, 32, 42].map((radius) => (
        <circle key={radius} cx="60" cy="60" r={radius} class="ring" />
      ))}
      <path
        class="mark"
        d={`M${at(0, 12)} L${at(sign * 14, 22)} L${at(sign * 22, 32)} L${at(sign * 27, 42)}`}
      />
      <circle class="dot" cx={at(0, 12).split(' ')[0]} cy={at(0, 12).split(' ')[1]} r="4.5" />
      <path
        class="work"
        d={`M${at(direction * 20, 53)} A53 53 0 0 ${direction === 1 ? 1 : 0} ${at(arrowEnd, 53)}`}
      />
      <path
        class="work"
        d={`M${at(arrowEnd - direction * 11, 47)} L${at(arrowEnd, 53)} L${at(arrowEnd - direction * 10, 59)}`}
      />
    </svg>
  );
}
