/** Every string of a reply with the path at which it stands: ".lots[].code". */
export function stringsIn(value: unknown, path = ''): { path: string; text: string }[] {
  if (typeof value === 'string') return [{ path, text: value }];
  if (Array.isArray(value)) return value.flatMap((each) => stringsIn(each, `${path}[]`));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, each]) => stringsIn(each, `${path}.${name}`));
}
