export type Shape = 'slab' | 'cylinder' | 'sphere';

const TERMS = 12;
const counted = Array.from({ length: TERMS }, (_, n) => n);

/** Bessel’s function of the first kind by its integral, with the trapezoid that is exact for what is periodic. */
function bessel(order: 0 | 1, x: number): number {
  const steps = 400;
  let sum = 0;
  for (let k = 0; k < steps; k += 1) {
    const angle = (2 * Math.PI * k) / steps;
    sum += Math.cos(order * angle - x * Math.sin(angle));
  }
  return sum / steps;
}

/** The zeros of J0 from McMahon’s first guess by Newton’s steps; J0′ = −J1. */
const zeros = counted.map((n) => {
  let x = (n + 0.75) * Math.PI;
  for (let step = 0; step < 20; step += 1) x += bessel(0, x) / bessel(1, x);
  return x;
});

/** What is left of its way at the centre when the surface is at its end at once; from Fo 0.02 on the terms suffice. */
export function centreAt(shape: Shape, fo: number): number {
  const term = (n: number): number => {
    switch (shape) {
      case 'slab': {
        const b = ((2 * n + 1) * Math.PI) / 2;
        return ((2 * (-1) ** n) / b) * Math.exp(-b * b * fo);
      }
      case 'cylinder': {
        const b = zeros[n] as number;
        return (2 / (b * bessel(1, b))) * Math.exp(-b * b * fo);
      }
      case 'sphere':
        return 2 * (-1) ** n * Math.exp(-(((n + 1) * Math.PI) ** 2) * fo);
    }
  };
  return counted.reduce((sum, n) => sum + term(n), 0);
}

type Course = {
  shape: Shape;
  /** Half the smallest dimension, in m. */
  half: number;
  alpha: number;
  /** The temperature of the whole piece at first, in °C. */
  from: number;
  /** What it lies in, one after the other. */
  media: { celsius: number; minutes: number }[];
  lagSeconds: number;
  everySeconds: number;
};

const CELLS = 20;
const curvature = { slab: 0, cylinder: 1, sphere: 2 };

/** The centre over time by finite volumes, the surface following what it lies in by and by: one value every so often. */
export function centreOver({ shape, half, alpha, from, media, lagSeconds, everySeconds }: Course): number[] {
  const m = curvature[shape];
  const dx = half / CELLS;
  const longest = (0.4 * dx * dx) / (alpha * (m + 1));
  const faces = Array.from({ length: CELLS + 1 }, (_, i) => (i * dx) ** m);
  const volumes = counted20.map((i) => (((i + 1) * dx) ** (m + 1) - (i * dx) ** (m + 1)) / (m + 1));
  let cells = counted20.map(() => from);
  let surface = from;
  const read = [from];
  for (const { celsius, minutes } of media) {
    for (let passed = 0; passed < minutes * 60; passed += everySeconds) {
      const steps = Math.ceil(everySeconds / longest);
      const dt = everySeconds / steps;
      for (let step = 0; step < steps; step += 1) {
        surface = lagSeconds === 0 ? celsius : surface + (celsius - surface) * (1 - Math.exp(-dt / lagSeconds));
        cells = cells.map((own, i) => {
          const inward = i === 0 ? 0 : ((faces[i] as number) * ((cells[i - 1] as number) - own)) / dx;
          const outward = i === CELLS - 1 ? (surface - own) / (dx / 2) : ((cells[i + 1] as number) - own) / dx;
          return own + ((alpha * dt) / (volumes[i] as number)) * (inward + (faces[i + 1] as number) * outward);
        });
      }
      read.push(cells[0] as number);
    }
  }
  return read;
}

const counted20 = Array.from({ length: CELLS }, (_, i) => i);
