/** Batches of the demo kitchen: all invented, as are their logs. */
import type { DemoBatch } from '../src/app/demo-shape.ts';

export const batches: readonly DemoBatch[] = [];
