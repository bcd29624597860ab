/** Far more than the program has; the rest are lists of rare lengths. */
const most = 256;

/** The same text gets the same name, so a connection plans it once. Later texts get none, so plans do not pile up. */
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
