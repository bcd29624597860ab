/**
 * What a limit on predicted growth does to a chill that is exactly the published option 1: worked out with the shipped
 * sets, and held by a test.
 */
export const GROWTH_AT_OPTION_1 =
  'For a chill that is exactly FSIS cooling option 1 (130 to 80 °F in 1 h 30 min, 80 to 40 °F in 5 h) 2.1 log are ' +
  'predicted in beef or unknown meat, and just under 1 log in chicken or pork: a limit of 1 log may hold a chill that ' +
  'its cooling limit lets pass.';

/** What it is for first. */
export const SCREEN_DEVIATIONS_FIRST =
  'Screen deviations with it first: how a chill was judged shows the estimate beside every chill, without this limit.';
