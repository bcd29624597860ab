/** A person can act on this reason. The message is one plain sentence, shown without a stack trace. */
export class CannotStart extends Error {
  override readonly name = 'CannotStart';
}
