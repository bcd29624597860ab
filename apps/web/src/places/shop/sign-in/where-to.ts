/** Where to go after signing in: a page of our own that was asked for, or Today. Never another site, never a door. */
export function whereTo(asked: string | undefined): string {
  if (asked === undefined || !/^\/(?![/\\])/.test(asked)) return '/';
  return /^\/(sign-in|welcome)\b/.test(asked) ? '/' : asked;
}
