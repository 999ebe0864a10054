/** What the worker that makes a mix otherwise answers. */
import type { Made } from '../../contract/make-it-question.ts';

export type FromFormulate = { readonly made: Made } | { readonly fault: string };
