/** Far more than the program has; lists of a rare length make up the rest. */
const most = 256;

/**
 * The same text gets the same name, so a connection plans it once. Later texts get no name, so that plans do not pile
 * up.
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
