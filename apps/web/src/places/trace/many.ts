/** "3 packages", "1 delivery", "none" */
export const many = (count: number, one: string, more = `${one}s`): string =>
  count === 0 ? 'none' : `${count} ${count === 1 ? one : more}`;
