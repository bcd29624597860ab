import { Link } from '@tanstack/react-router';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import css from './calculators.module.css';
import { CalculatorsFrame } from './calculators-frame';
import { forms, groups } from './forms';

/** Everything that can be worked out without a lot. */
export function CalculatorsPage() {
  return (
    <CalculatorsFrame title="Work it out" under="Before a lot, or beside it. Nothing here is recorded.">
      <Stack gap="wide">
        {groups.map((group) => (
          <Section key={group} title={group}>
            <ul className={css.list}>
              {forms
                .filter((form) => form.group === group)
                .map(({ name, title, about }) => (
                  <li key={name}>
                    <Link to="/calculators/$calculation" params={{ calculation: name }} className={css.entry}>
                      <strong>{title}</strong>
                      <span>{about}</span>
                    </Link>
                  </li>
                ))}
            </ul>
          </Section>
        ))}
      </Stack>
    </CalculatorsFrame>
  );
}
