import { Link } from '@tanstack/react-router';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import css from './figures.module.css';
import { FiguresFrame } from './figures-frame';
import { forms, groups } from './forms';

/** Everything that can be worked out without a lot. */
export function FiguresPage() {
  return (
    <FiguresFrame title="Work it out" under="Before a lot, or beside it. Nothing here is recorded.">
      <Stack gap="wide">
        {groups.map((group) => (
          <Section key={group} title={group}>
            <ul className={css.list}>
              {forms
                .filter((form) => form.group === group)
                .map(({ name, title, about }) => (
                  <li key={name}>
                    <Link to="/figures/$calculation" params={{ calculation: name }} className={css.entry}>
                      <strong>{title}</strong>
                      <span>{about}</span>
                    </Link>
                  </li>
                ))}
            </ul>
          </Section>
        ))}
      </Stack>
    </FiguresFrame>
  );
}
