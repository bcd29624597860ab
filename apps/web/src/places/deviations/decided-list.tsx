import type { Deviation } from '@larderbook/contracts';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { Decided } from './decided';
import css from './deviations.module.css';
import { sayLeftToDecide } from './weights';

/** What becomes of the product: every decision with its weight, what is still to decide, and what is to be destroyed. */
export function DecidedList({ deviation }: { deviation: Deviation }) {
  const { products, dispositions, covered, atStake } = deviation;
  if (dispositions.length === 0 && atStake.grams === 0) return null;
  return (
    <Section title="What becomes of the product">
      <Stack gap="near">
        <div className={css.remainder} data-open={!covered || undefined}>
          {products
            .filter((product) => product.atStake.grams > 0)
            .map((product) => (
              <p key={product.code}>
                {product.undecided.grams > 0 ? (
                  <>
                    <strong>{sayLeftToDecide(product)} still to decide</strong>
                    {` · ${product.code}, ${product.what}`}
                  </>
                ) : (
                  `All of it is decided · ${product.code}, ${product.what}`
                )}
              </p>
            ))}
        </div>
        {dispositions.length > 0 && (
          <ol className={css.decided} aria-label="Decisions">
            {dispositions.map((disposition) => (
              <Decided key={disposition.dispositionId} disposition={disposition} of={deviation} />
            ))}
          </ol>
        )}
      </Stack>
    </Section>
  );
}
