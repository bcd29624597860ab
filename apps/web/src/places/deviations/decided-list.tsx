import type { Deviation, ProductConcerned } from '@larderbook/contracts';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { useSay } from '../../ui/voice';
import { Decided } from './decided';
import css from './deviations.module.css';
import { leftToDecide } from './weights';

export function DecidedList({ deviation }: { deviation: Deviation }) {
  const say = useSay('settling');
  const { products, dispositions, covered, atStake } = deviation;
  if (dispositions.length === 0 && atStake.grams === 0) return null;
  return (
    <Section title={say('becomes-of-product')}>
      <Stack gap="near">
        <div className={css.remainder} data-open={!covered || undefined}>
          {products
            .filter((product) => product.atStake.grams > 0)
            .map((product) => (
              <Remainder key={product.code} product={product} />
            ))}
        </div>
        {dispositions.length > 0 && (
          <ol className={css.decided} aria-label={say('decisions')}>
            {dispositions.map((disposition) => (
              <Decided key={disposition.dispositionId} disposition={disposition} of={deviation} />
            ))}
          </ol>
        )}
      </Stack>
    </Section>
  );
}

function Remainder({ product }: { product: ProductConcerned }) {
  const say = useSay('settling');
  const sayDeviation = useSay('deviations');
  const { code, what } = product;
  if (product.undecided.grams === 0) return <p>{say('all-decided', { code, what })}</p>;
  const { weight, all } = leftToDecide(product);
  return (
    <p>
      <strong>{all ? sayDeviation('of-still-to-decide', { weight, all }) : sayDeviation('still-to-decide', { weight })}</strong>
      {` · ${say('still-to-decide-of', { code, what })}`}
    </p>
  );
}
