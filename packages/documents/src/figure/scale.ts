export type Scale = { (value: number): number; domain: [number, number] };

export function scale(domain: [number, number], range: [number, number]): Scale {
  const [from, to] = domain;
  const factor = (range[1] - range[0]) / (to - from || 1);
  return Object.assign((value: number) => range[0] + (value - from) * factor, { domain });
}
