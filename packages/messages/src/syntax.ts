/** What makes a message more than the text itself. */
export const SYNTAX = /[{<']/;
