import type { Deviation } from '@larderbook/contracts';
import { useShop } from '../../api/use-shop';
import { Moment } from '../../ui/moment';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { decisionWords } from './decision-words';
import css from './deviations.module.css';
import { fourParts } from './four-parts';

/** What was recorded about a deviation, each part under the name of whoever made it. */
export function RecordedParts({ deviation: { actions, disposition, closing } }: { deviation: Deviation }) {
  return (
    <Stack>
      {actions.map((action, i) => (
        <Section
          key={action.actionId}
          title={i === 0 ? 'Corrective action' : 'Added to the corrective action'}
          aside={<By name={action.made.name} at={action.made.at} />}
        >
          <dl className={css.parts}>
            {fourParts.map(({ key, question }) => (
              <div key={key}>
                <dt>{question}</dt>
                <dd>{action[key]}</dd>
              </div>
            ))}
          </dl>
        </Section>
      ))}
      {disposition && (
        <Section title="What becomes of the product" aside={<By name={disposition.by} at={disposition.at} />}>
          <dl className={css.parts}>
            <div>
              <dt>Decision</dt>
              <dd>
                {decisionWords[disposition.decision].title}
                {disposition.weight.grams > 0 && ` ${disposition.weight.value} ${disposition.weight.unit}`}
              </dd>
            </div>
            <div>
              <dt>On what it is based</dt>
              <dd>{disposition.basis}</dd>
            </div>
          </dl>
        </Section>
      )}
      {closing && (
        <Section title="Closed" aside={<By name={closing.by} at={closing.at} />}>
          {closing.note ? <p>{closing.note}</p> : <p>Without a note.</p>}
        </Section>
      )}
    </Stack>
  );
}

function By({ name, at }: { name: string; at: string }) {
  const { zone } = useShop();
  return (
    <span className={css.by}>
      {name}, <Moment at={at} zone={zone} />
    </span>
  );
}
