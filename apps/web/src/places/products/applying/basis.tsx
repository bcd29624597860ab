import type { ProductLimits } from '@larderbook/contracts';
import { Link } from '@tanstack/react-router';
import { Facts } from '../../../ui/facts';
import { Stack } from '../../../ui/stack';
import { codeOf } from '@larderbook/messages';
import { useSay } from '../../../ui/voice';
import { sayEdition } from './say-edition';

const ToPlan = ({ plan: { planId, version, inForce } }: { plan: NonNullable<ProductLimits['plan']> }) => (
  <Link to="/plans/$planId" params={{ planId }}>
    Plan {version}
    {!inForce && ', not adopted'}
  </Link>
);

/** What the limits were chosen by, and what to know of the edition in use. */
export function Basis({ limits }: { limits: ProductLimits }) {
  const sayProduct = useSay('products');
  const { productClass, jurisdiction, place, placesToSay, set, newer, nitriteCountedAs, plan } = limits;
  return (
    <Stack>
      <Facts
        facts={[
          { name: 'Class', value: productClass ? sayProduct(codeOf('class', productClass)) : 'not said' },
          { name: 'Jurisdiction', value: [jurisdiction ?? 'not said', place].filter(Boolean).join(', ') },
          { name: 'Edition in use', value: set ? sayEdition(set) + (set.isUsual ? ' (the usual one)' : '') : 'not known' },
          ...(nitriteCountedAs.length > 0 ? [{ name: 'Nitrite is counted as', value: nitriteCountedAs.join('; or as ') }] : []),
          { name: 'Compared with', value: plan ? <ToPlan plan={plan} /> : 'no plan yet' },
        ]}
      />
      {placesToSay.length > 0 && (
        <p>
          Where within {jurisdiction} was not said: the limits of each are shown. <Link to="/shop">Establishment</Link>
        </p>
      )}
      {set?.isPartial && (
        <p>
          <strong>Only some figures of this edition were read.</strong> What is not here may still have a limit.
        </p>
      )}
      {newer && (
        <p>
          <strong>A newer edition is published: {sayEdition(newer)}.</strong> Nothing changes by itself: the edition in use is the
          establishment’s to say, and a plan is reassessed and signed by its owner.
        </p>
      )}
    </Stack>
  );
}
