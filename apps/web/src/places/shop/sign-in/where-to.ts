/** A page of our own that was asked for, or Today; never another site, sign-in or welcome. */
export function whereTo(asked: string | undefined): string {
  if (asked === undefined || !/^\/(?![/\\])/.test(asked)) return '/';
  return /^\/(sign-in|welcome)\b/.test(asked) ? '/' : asked;
}
