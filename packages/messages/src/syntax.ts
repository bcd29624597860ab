/** A message with any of these signs is more than its text. */
export const SYNTAX = /[{<']/;
