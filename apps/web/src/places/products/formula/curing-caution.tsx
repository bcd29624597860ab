import { Caution } from '../../../ui/caution';

/** Said wherever a curing ingredient is written, weighed or worked out. */
export function CuringCaution() {
  return (
    <Caution>
      <p>
        Curing salts are toxic in excess. The ppm here follow from the percentages; what decides is what was weighed against the meat as
        trimmed. Read the content from the label of each delivery: curing salt is sold with 6.25 % nitrite and with other contents. Local
        codes, your inspector and a licensed process authority decide what is allowed.
      </p>
    </Caution>
  );
}
