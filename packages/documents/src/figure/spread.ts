/** Moves as little as it can; order is kept. */
export function spread(places: number[], heights: number[]): number[] {
  const order = places.map((_place, index) => index).sort((one, other) => (places[one] ?? 0) - (places[other] ?? 0));
  const moved = [...places];
  for (let run = 0; run < order.length; run++) {
    for (let at = 1; at < order.length; at++) {
      const [before, after] = [order[at - 1] ?? 0, order[at] ?? 0];
      const least = ((heights[before] ?? 0) + (heights[after] ?? 0)) / 2;
      const lacking = least - ((moved[after] ?? 0) - (moved[before] ?? 0));
      if (lacking <= 0.001) continue;
      moved[before] = (moved[before] ?? 0) - lacking / 2;
      moved[after] = (moved[after] ?? 0) + lacking / 2;
    }
  }
  return moved;
}
