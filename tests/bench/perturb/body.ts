/**
 * The centre of a piece in a medium that changes, by the series of Carslaw and Jaeger: each mode follows the surface by
 * itself and their sum is the core. The surface follows the medium late, as air and packaging make it. Time is told as
 * α t ÷ L², so that one curve serves pieces of every size.
 */
export type Shape = 'slab' | 'cylinder' | 'sphere';
/** From when on (α t ÷ L²) the medium is so warm (°C). */
export type Medium = readonly { from: number; celsius: number }[];
export type TrueCurve = { step: number; core: readonly number[] };

type Mode = { rate: number; share: number };
const MODES = 12;
const ZEROS = [2.404825557695773, 5.520078110286311, 8.653727912911013, 11.791534439014281, 14.930917708487787];
/** 2 ÷ (β J1(β)) of the zeros above. */
const SHARES = [1.6019746962, -1.0647992591, 0.8513991927, -0.72964524, 0.6485236139];

/** Cut off as they are, the shares are made to start where the body is: the last takes what is lacking. */
const whole = (modes: readonly Mode[]): readonly Mode[] => {
  const before = modes.slice(0, -1);
  const last = modes[modes.length - 1] as Mode;
  return [...before, { ...last, share: 1 - before.reduce((sum, { share }) => sum + share, 0) }];
};

const modesOf: Record<Shape, readonly Mode[]> = {
  slab: Array.from({ length: MODES }, (_, n) => {
    const root = ((2 * n + 1) * Math.PI) / 2;
    return { rate: root ** 2, share: (2 / root) * (n % 2 === 0 ? 1 : -1) };
  }),
  cylinder: ZEROS.map((zero, n) => ({ rate: zero ** 2, share: SHARES[n] as number })),
  sphere: Array.from({ length: MODES }, (_, n) => ({ rate: ((n + 1) * Math.PI) ** 2, share: n % 2 === 0 ? 2 : -2 })),
};

const STEP = 0.004;

/** @param lag of the surface behind the medium (α t ÷ L²) */
export function coreIn(shape: Shape, medium: Medium, start: number, lag: number, until: number): TrueCurve {
  const modes = whole(modesOf[shape]).map((mode) => ({ ...mode, left: 0, keeps: Math.exp(-mode.rate * STEP) }));
  const core: number[] = [start];
  let surface = start;
  let index = 0;
  for (let now = STEP; now <= until; now += STEP) {
    while ((medium[index + 1]?.from ?? Infinity) <= now) index += 1;
    const before = surface;
    surface += ((medium[index]?.celsius ?? start) - surface) * (1 - Math.exp(-STEP / lag));
    let value = surface;
    for (const mode of modes) {
      // The surface moves evenly within the step.
      mode.left = mode.left * mode.keeps - ((surface - before) * (1 - mode.keeps)) / (mode.rate * STEP);
      value += mode.share * mode.left;
    }
    core.push(value);
  }
  return { step: STEP, core };
}

/** °C at an instant in the unit of the curve; its last value ever after. */
export function coreAt({ step, core }: TrueCurve, at: number): number {
  const place = Math.min(Math.max(at / step, 0), core.length - 1);
  const low = Math.floor(place);
  const [a, b] = [core[low] as number, core[Math.min(low + 1, core.length - 1)] as number];
  return a + (b - a) * (place - low);
}

/** When a curve first is past a temperature, from an instant on. */
export function passes({ step, core }: TrueCurve, celsius: number, way: 'up' | 'down', since = 0): number | undefined {
  const index = core.findIndex((one, at) => at * step >= since && (way === 'up' ? one >= celsius : one <= celsius));
  return index < 0 ? undefined : index * step;
}
