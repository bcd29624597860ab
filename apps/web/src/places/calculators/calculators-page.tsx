import { Link } from '@tanstack/react-router';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import css from './calculators.module.css';
import { CalculatorsFrame } from './calculators-frame';
import { forms, groups } from './forms';
import { useSay } from '../../ui/voice';

export function CalculatorsPage() {
  const say = useSay('calculators');
  const sayList = useSay('calculators-list');
  return (
    <CalculatorsFrame title={say('calculators')} under={say('under')}>
      <Stack gap="wide">
        {groups.map((group) => (
          <Section key={group} title={sayList(group)}>
            <ul className={css.list}>
              {forms
                .filter((form) => form.group === group)
                .map(({ name }) => (
                  <li key={name}>
                    <Link to="/calculators/$calculator" params={{ calculator: name }} className={css.entry}>
                      <strong>{sayList(name)}</strong>
                      <span>{sayList(`${name}.about`)}</span>
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
