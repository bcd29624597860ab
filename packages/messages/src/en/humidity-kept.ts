/** How humidity was kept while cooking: in an entry and in its verdict. */
export const humidityKept = {
  'kept-live-steam': 'live steam, {time} in all',
  'kept-sealed-oven': 'sealed oven, {time} in all',
  'kept-humid-for-a-quarter': 'relative humidity at least {percent} for {time}',
  'kept-humid-throughout': 'relative humidity at least {percent} for {time}',
  'kept-large-piece-in-a-hot-oven': 'a piece of {piece}, the oven at least {oven}',
  'kept-moisture-proof-bag': 'sealed moisture-proof bag',
} as const;
