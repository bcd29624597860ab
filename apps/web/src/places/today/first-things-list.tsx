import { listInstruments, listItems, listProducts, listReceipts, listSuppliers } from '@larderbook/contracts';
import { useQueries } from '@tanstack/react-query';
import { ask } from '../../api/ask';
import { useShop } from '../../api/use-shop';
import { LinkButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { Section } from '../../ui/section';
import { Sheet } from '../../ui/sheet';
import { SheetEntry } from '../../ui/sheet-entry';
import { SheetLink } from '../../ui/sheet-link';
import { useSay } from '../../ui/voice';
import { nextThree } from './first-things';

export function FirstThings() {
  const say = useSay('today');
  const { zone, isOwner } = useShop();
  const [items, suppliers, instruments, products, receipts] = useQueries({
    queries: [
      ask(listItems, {}),
      ask(listSuppliers, {}),
      ask(listInstruments, {}),
      ask(listProducts, {}),
      ask(listReceipts, { left: 'any' }),
    ],
  });
  if (!items.data || !suppliers.data || !instruments.data || !products.data || !receipts.data) return <Loading />;
  const three = nextThree({
    items: items.data.items.length,
    suppliers: suppliers.data.suppliers.length,
    instruments: instruments.data.instruments.length,
    products: products.data.products.length,
    ready: products.data.products.filter(({ formulaVersion, planInForce }) => formulaVersion !== undefined && planInForce !== undefined)
      .length,
    deliveries: receipts.data.receipts.length,
  });
  return (
    <Section
      title={say('comes-next')}
      aside={
        isOwner && (
          <LinkButton look="quiet" to="/shop/people">
            {say('add-people')}
          </LinkButton>
        )
      }
    >
      <Sheet label={say('set-up-next')} zone={zone}>
        {three.map(({ to, what }, i) => (
          <SheetEntry
            key={what}
            what={<SheetLink to={to}>{say('numbered-thing', { number: String(i + 1), thing: say(`do-${what}`) })}</SheetLink>}
            note={say(`why-${what}`)}
          />
        ))}
      </Sheet>
    </Section>
  );
}
