/**
 * Extrapolated differential equations. The package ships TypeScript that our compiler's settings refuse, so what the
 * tests use of it is declared here.
 */
export class Solver {
  constructor(equations: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  solve(derivative: (x: number, y: number[]) => number[], from: number, start: number[], to: number): { y: number[] };
}
