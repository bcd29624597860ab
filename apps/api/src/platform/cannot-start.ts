/** A reason not to start that a person can act on. Its message is one plain sentence; no stack trace is shown. */
export class CannotStart extends Error {
  override readonly name = 'CannotStart';
}
