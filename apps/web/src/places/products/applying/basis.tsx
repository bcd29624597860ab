import type { ProductLimits } from '@larderbook/contracts';
import { codeOf } from '@larderbook/messages';
import { Link } from '@tanstack/react-router';
import { Facts } from '../../../ui/facts';
import { Stack } from '../../../ui/stack';
import { useLimits } from '../../../ui/use-tell';
import { useSay } from '../../../ui/voice';
import { editionWords } from './edition-words';

export function Basis({ limits }: { limits: ProductLimits }) {
  const say = useSay('product-limits');
  const told = useLimits();
  const { productClass, jurisdiction, place, placesToSay, set, newer, nitriteCountedAs, plan } = limits;
  const edition = set && editionWords(set, say);
  return (
    <Stack>
      <Facts
        facts={[
          { name: say('class'), value: productClass ? told.say(codeOf('class', productClass)) : say('not-said') },
          { name: say('jurisdiction'), value: jurisdiction ? told.sayWhere({ jurisdiction, place }) : say('not-said') },
          { name: say('edition-in-use'), value: edition ? (set.isUsual ? say('usual-edition', { edition }) : edition) : say('not-known') },
          ...(nitriteCountedAs.length > 0
            ? [
                {
                  name: say('nitrite-as'),
                  value: nitriteCountedAs.map(told.sayName).reduce((one, other) => say('nitrite-one-or', { one, other })),
                },
              ]
            : []),
          { name: say('compared-with'), value: plan ? <ToPlan plan={plan} /> : say('no-plan-yet') },
        ]}
      />
      {jurisdiction && placesToSay.length > 0 && (
        <p>
          {say('where-unsaid', { jurisdiction: told.sayName(jurisdiction) })} <Link to="/shop">{say('establishment')}</Link>
        </p>
      )}
      {set?.isPartial && <p>{say('partial')}</p>}
      {newer && (
        <p>
          <strong>{say('newer', { edition: editionWords(newer, say) })}</strong> {say('nothing-changes')}
        </p>
      )}
    </Stack>
  );
}

function ToPlan({ plan: { planId, version, inForce } }: { plan: NonNullable<ProductLimits['plan']> }) {
  const say = useSay('product-limits');
  return (
    <Link to="/plans/$planId" params={{ planId }}>
      {say(inForce ? 'plan-version' : 'plan-not-adopted', { version })}
    </Link>
  );
}
