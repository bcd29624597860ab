import type { Flag } from '@larderbook/contracts';
import { asGiven, askAboutPiece, roundedMass, massOf, usualOfPiece, weightMeant, type EnteredMass, type Quantity } from '@larderbook/haccp';
import { Problem } from '../platform/problem';
import { told, type Told } from '../platform/told';

/** A person answers once, before the value is kept. */
export type Question = readonly Told[];

export const askMeant = (meant: Quantity | undefined): Told => (meant ? told('did-you-mean', { meant }) : told('is-it-really-so'));

/** Weights to be weighed are in femtograms. Undefined when there is nothing to ask. */
export function askBesideTarget(weight: EnteredMass, target: bigint, stillToWeigh = target): Question | undefined {
  const meant = weightMeant(weight, [stillToWeigh, target]);
  if (!meant) return undefined;
  const wanted = roundedMass(stillToWeigh > 0n ? stillToWeigh : target, meant.unit, 2);
  return [told('target-expected', { entered: asGiven(weight.value, weight.unit), wanted }), askMeant(asGiven(meant.value, meant.unit))];
}

export function askAboutTrimmed(taken: EnteredMass, trimmed: EnteredMass): Question | undefined {
  const usual = usualOfPiece([massOf(taken)]);
  const meant = usual && askAboutPiece(trimmed, usual)?.meant;
  return (
    meant && [
      told('little-after-trimming', { trimmed: asGiven(trimmed.value, trimmed.unit), taken: asGiven(taken.value, taken.unit) }),
      askMeant(asGiven(meant.value, meant.unit)),
    ]
  );
}

export const flagUnlessSure = (question: Question | undefined, sure: boolean | undefined): Flag[] =>
  refuseUnlessSure(question, sure) ? ['unusual-value'] : [];

/** True when a person was asked and is sure. Throws `implausible-value` with the question. */
export function refuseUnlessSure(question: Question | undefined, sure: boolean | undefined): boolean {
  if (question && !sure) throw new Problem('implausible-value', question);
  return question !== undefined;
}
