import type { Flag } from '@larderbook/contracts';
import { askAboutPiece, massOf, sayMass, usualOfPiece, weightMeant, type EnteredMass } from '@larderbook/haccp';
import { Problem } from '../platform/problem';

export const sayWeight = ({ value, unit }: EnteredMass): string => `${value} ${unit}`;

export const sayMeant = (meant: EnteredMass | undefined): string => (meant ? `Did you mean ${sayWeight(meant)}?` : 'Is it really so?');

/** The question about a weight beside what was to be weighed (femtograms); undefined when there is nothing to ask. */
export function askBesideTarget(weight: EnteredMass, target: bigint, stillToWeigh = target): string | undefined {
  const meant = weightMeant(weight, [stillToWeigh, target]);
  const wanted = meant && sayMass(stillToWeigh > 0n ? stillToWeigh : target, meant.unit, 2);
  return meant && `${sayWeight(weight)} was entered; ${wanted} would be expected. ${sayMeant(meant)}`;
}

/** The question about what is left of meat after trimming; undefined when there is nothing to ask. */
export function askAboutTrimmed(taken: EnteredMass, trimmed: EnteredMass): string | undefined {
  const usual = usualOfPiece([massOf(taken)]);
  const meant = usual && askAboutPiece(trimmed, usual)?.meant;
  return meant && `${sayWeight(trimmed)} is little of ${sayWeight(taken)} taken. ${sayMeant(meant)}`;
}

/** Asks once; a person who is sure has the weight kept, and flagged. */
export function flagUnlessSure(question: string | undefined, sure: boolean | undefined): Flag[] {
  if (question && !sure) throw new Problem('implausible-value', { detail: question });
  return question ? ['unusual-value'] : [];
}
