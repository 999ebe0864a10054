/** A value that the engine cannot work with: says what was found, what is allowed and in which unit. */
export class OutOfRange extends RangeError {
  override readonly name = 'OutOfRange';
  constructor(
    /** Path of the offending value in the caller's own structure, e.g. `body.profile[2].diameter`. */
    readonly path: string,
    readonly found: string,
    readonly allowed: string,
  ) {
    super(`${path}: found ${found}, allowed ${allowed}`);
  }
}

/** Input whose parts are each possible but contradict one another (a skin thicker than the radius). */
export class Contradiction extends TypeError {
  override readonly name = 'Contradiction';
  constructor(
    readonly path: string,
    readonly found: string,
    readonly allowed: string,
  ) {
    super(`${path}: ${found}; ${allowed}`);
  }
}
