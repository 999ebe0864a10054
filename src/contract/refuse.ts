import { InputProblems } from './problem.ts';

/** Refuses one thing of an input, in its own terms. */
export function refuse(path: string, found: string, allowed: string): never {
  throw new InputProblems([{ path, found, allowed }]);
}
