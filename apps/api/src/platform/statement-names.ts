/** Far more than the program has; the rest are lists of a rare length, which are planned each time. */
const most = 256;

/**
 * Names the texts of statements, the same text always the same, so that a connection has PostgreSQL read and plan each
 * once. Past the first few hundred texts a statement goes without a name, so that no connection holds plans without end.
 */
export function statementNames(): (statement: { sql: string }) => string {
  const names = new Map<string, string>();
  return ({ sql }) => {
    const known = names.get(sql);
    if (known !== undefined || names.size >= most) return known ?? '';
    const name = `larderbook ${names.size + 1}`;
    names.set(sql, name);
    return name;
  };
}
