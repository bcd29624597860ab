import { useState } from 'react';
import { useSession } from '../../api/session';
import { useShop } from '../../api/use-shop';
import { Button } from '../../ui/button';
import { useSay } from '../../ui/voice';
import { EstablishmentForm } from './establishment/establishment-form';
import { EstablishmentFacts } from './establishment/establishment-facts';
import { OnlyOwners } from './persons/only-owners';
import { ShopFrame } from './shop-frame';

export function ShopPage() {
  const say = useSay('shared');
  const who = useSession();
  const { isOwner } = useShop();
  const [isChanging, setIsChanging] = useState(false);
  if (!who) return null;
  const change = isOwner && !isChanging && <Button onClick={() => setIsChanging(true)}>{say('change')}</Button>;
  return (
    <ShopFrame title="establishment" actions={change}>
      {isChanging ? (
        <EstablishmentForm establishment={who.establishment} onDone={() => setIsChanging(false)} />
      ) : (
        <EstablishmentFacts establishment={who.establishment} />
      )}
      <OnlyOwners may="change" />
    </ShopFrame>
  );
}
