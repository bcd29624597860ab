import type { Account, Finding } from '@larderbook/contracts';

/** Blockers keep a lot from being signed for. */
export type Blocker = {
  kind: Finding['kind'];
  what: Account;
  next?: Account;
  /** Dealt with on the page of this deviation; otherwise on the lot. */
  deviationId?: string;
};

/** In the order of the work. A missed limit and the deviation it opened are one thing to do, not two. */
export function blockers(findings: readonly Finding[]): Blocker[] {
  const blocking = findings.filter(({ blocks }) => blocks);
  const deviationOf = ({ controlPointId }: Finding) =>
    blocking.find((other) => other.about === 'deviation' && controlPointId !== undefined && other.controlPointId === controlPointId);
  const said = new Set(blocking.filter(({ about }) => about === 'control-point').map(deviationOf));

  return blocking
    .filter((finding) => !said.has(finding))
    .map((finding) => {
      const { kind, what, next, deviationId } = finding;
      const deviation = finding.about === 'control-point' ? deviationOf(finding) : undefined;
      return deviation ? { kind, what, next: deviation.next, deviationId: deviation.deviationId } : { kind, what, next, deviationId };
    });
}
