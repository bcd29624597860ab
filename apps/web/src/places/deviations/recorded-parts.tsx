import type { Deviation } from '@larderbook/contracts';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { writtenParts } from './action-parts';
import { By } from './by';
import { DecidedList } from './decided-list';
import css from './deviations.module.css';

/** What was recorded about a deviation, each part under the name of whoever made it. */
export function RecordedParts({ deviation }: { deviation: Deviation }) {
  const { actions, closing, open } = deviation;
  return (
    <Stack>
      <DecidedList deviation={deviation} />
      {actions.map(({ actionId, action, made }, i) => (
        <Section
          key={actionId}
          title={i === 0 ? 'Corrective action' : 'Added to the corrective action'}
          aside={<By name={made.name} at={made.at} recordedAt={made.recordedAt} />}
        >
          <dl className={css.parts}>
            {writtenParts(action.form).map(({ key, question }) => {
              const said = (action as Record<string, string | undefined>)[key];
              return said ? (
                <div key={key}>
                  <dt>{question}</dt>
                  <dd>{said}</dd>
                </div>
              ) : null;
            })}
          </dl>
        </Section>
      ))}
      {closing && (
        <Section title={open ? 'Was closed' : 'Closed'} aside={<By name={closing.by} at={closing.at} />}>
          {closing.note ? <p>{closing.note}</p> : <p>Without a note.</p>}
          {open && <p>A weight was corrected or a decision voided since, so not all of it is decided.</p>}
        </Section>
      )}
    </Stack>
  );
}
