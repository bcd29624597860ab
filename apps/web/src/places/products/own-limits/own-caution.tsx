import { Caution } from '../../../ui/caution';

/** Said wherever limits of one's own are written. */
export function OwnCaution() {
  return (
    <Caution>
      <p>
        A limit of your own needs its scientific support on file and a process that is validated for it (9 CFR 417.4(a)(1)); where a rule
        prints a stricter figure, that one counts. This book checks that a figure does not contradict itself, never that it is safe. Local
        codes, your inspector and a licensed process authority decide.
      </p>
    </Caution>
  );
}
