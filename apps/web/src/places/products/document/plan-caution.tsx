import { Caution } from '../../../ui/caution';

/** Said wherever a plan is read or written. */
export function PlanCaution() {
  return (
    <Caution>
      <p>
        A set of limits is a reference, not a proof. The plan must be validated for what you really do, with your own support on file (9 CFR
        417.4(a)(1)); this book keeps records and computes, it does not validate a process. Local codes, your inspector and a licensed
        process authority decide.
      </p>
    </Caution>
  );
}
