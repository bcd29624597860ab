/** One thing in which two versions of a plan differ; `before` stood there, `after` stands there now. */
export type Difference = { where: string; what: string; before?: string; after?: string };

export type Named = [what: string, before: string, after: string];

/** The fields that differ, each with both its values. */
export const changedFields = (where: string, fields: Named[]): Difference[] =>
  fields
    .filter(([, before, after]) => before !== after)
    .map(([what, before, after]) => ({ where, what, before: before || 'nothing', after: after || 'nothing' }));
