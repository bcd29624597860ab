import type { Deviation, Disposition } from '@larderbook/contracts';
import { useState } from 'react';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { Moment } from '../../ui/moment';
import { Section } from '../../ui/section';
import { Stack } from '../../ui/stack';
import { By } from './by';
import { basisWords, decisionWords } from './decision-words';
import { Destroy } from './destroy';
import css from './deviations.module.css';
import { Voided, VoidDecided } from './void-decided';
import { sayLeftToDecide, sayWeight } from './weights';

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

function Decided({ disposition, of }: { disposition: Disposition; of: Deviation }) {
  const { zone, roles, mayRecord } = useShop();
  const [doing, setDoing] = useState<'destroy' | 'void decision' | 'void destruction'>();
  const { decision, weight, code, basis, reason, speaksFor, by, at, toDestroy, destruction, voided } = disposition;
  const what = `${sayWeight(weight)} ${decisionWords[decision].saved}`;
  const stop = () => setDoing(undefined);
  const mayVoid = !voided && !destruction && roles.some((role) => role === 'owner' || role === 'reviewer');
  const others = speaksFor.filter(({ deviationId }) => deviationId !== of.deviationId);
  return (
    <li>
      <p>
        <strong>
          {voided ? <s>{what}</s> : what}
        </strong>
        {` · ${code}`}
      </p>
      {basis && <p>Basis: {basisWords[basis].title}.</p>}
      <p className={css.said}>{reason}</p>
      {others.length > 0 && <p className={css.by}>Also for {others.map(({ number }) => `deviation ${number}`).join(', ')}</p>}
      <By name={by} at={at} />
      {voided && <Voided {...voided} />}
      {disposition.voidedDestructions.map(({ destructionId, method, at: destroyedAt, voided: since }) => (
        <div key={destructionId}>
          <p>
            <s>
              Destroyed <Moment at={destroyedAt} zone={zone} />: {method}
            </s>
          </p>
          <Voided {...since} />
        </div>
      ))}
      {destruction && (
        <p>
          <strong>Destroyed</strong> <Moment at={destruction.at} zone={zone} />: {destruction.method}{' '}
          <By name={destruction.by} at={destruction.at} recordedAt={destruction.recordedAt} />
        </p>
      )}
      {toDestroy && (
        <div className={css.toDestroy}>
          <strong>Not destroyed yet: keep it apart.</strong>
          {mayRecord && <Button onClick={() => setDoing('destroy')}>Record its destruction</Button>}
        </div>
      )}
      {mayVoid && <Button look="quiet" onClick={() => setDoing('void decision')}>Void this decision</Button>}
      {mayRecord && destruction && (
        <Button look="quiet" onClick={() => setDoing('void destruction')}>
          Void its destruction
        </Button>
      )}
      {doing === 'destroy' && <Destroy disposition={disposition} onClose={stop} />}
      {doing === 'void decision' && (
        <VoidDecided what="disposition" amends={disposition.dispositionId} said={what} onClose={stop} />
      )}
      {doing === 'void destruction' && destruction && (
        <VoidDecided what="destruction" amends={destruction.destructionId} said={`Destruction of ${sayWeight(weight)}`} onClose={stop} />
      )}
    </li>
  );
}
