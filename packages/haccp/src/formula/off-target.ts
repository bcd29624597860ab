/** Either way. Common practice, no source: what a limit depends on is judged by its limit. */
const TWENTIETH = 20n;

/** Femtograms, above zero when too much; zero within a twentieth, or within a step of the scale. */
export function offTarget(target: bigint, weighed: bigint, step: bigint): bigint {
  const off = weighed - target;
  const passed = target / TWENTIETH > step ? target / TWENTIETH : step;
  return off > passed || -off > passed ? off : 0n;
}
