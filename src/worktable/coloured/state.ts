import { signal } from '@preact/signals';

/** Whether the screen for a photo of a coloured chart is open. */
export const colouring = signal(false);
