import type { TraceLink } from './trace-graph';

/** CSS pixels. Letters have a mean width, on the safe side for the faces in use. */
export const measures = {
  head: 44,
  padding: 8,
  titleLine: 19,
  textLine: 17,
  titleLetter: 7.2,
  textLetter: 6.7,
  betweenNodes: 16,
  leastNode: 118,
  mostNode: 190,
  leastHeight: 48, // tapped with a wet hand
  leastGap: 74,
  mostGap: 110,
  /** Room for a weight, or for a weight and a count, between lines that end at the same node. */
  betweenLines: 21,
  betweenCounted: 36,
};

/** Height a line takes at the edge of a node. */
export const roomOf = ({ count }: TraceLink): number => (count === undefined ? measures.betweenLines : measures.betweenCounted);
