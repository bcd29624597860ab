/** Where growth is chosen as a limit, and where its verdict is explained. Tests of growth hold the figures. */
export const growthLimitNotes = {
  'growth-at-option-1':
    'For a chill that is exactly FSIS cooling option 1 (130 to 80 °F in 1 h 30 min, 80 to 40 °F in 5 h) 2.1 log are predicted in beef or unknown meat, and just under 1 log in chicken or pork: a limit of 1 log may hold a chill that its cooling limit lets pass.',
  'screen-deviations-first':
    'Screen deviations with it first: how a chill was judged shows the estimate beside every chill, without this limit.',
} as const;
