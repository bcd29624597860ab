import { exportLedger, ledgerHead } from '@larderbook/contracts';
import { useQuery } from '@tanstack/react-query';
import { ask } from '../../api/ask';
import { hrefOf } from '../../api/client';
import { FileButton } from '../../ui/link-button';
import { Loading } from '../../ui/loading';
import { Problem } from '../../ui/problem';
import { useSay } from '../../ui/voice';
import { LatestEntries } from './ledger/latest-entries';
import { LedgerHead } from './ledger/ledger-head';
import { VerifyLedger } from './ledger/verify-ledger';
import { ShopFrame } from './shop-frame';

/** Every record is a line of this chain. */
export function LedgerPage() {
  const say = useSay('shop');
  const { data, error, refetch } = useQuery(ask(ledgerHead, {}));
  return (
    <ShopFrame
      title="ledger"
      actions={
        <FileButton href={hrefOf(exportLedger, {})} download>
          {say('export')}
        </FileButton>
      }
    >
      <p>{say('ledger-is')}</p>
      {!data && (error ? <Problem error={error} onRetry={() => void refetch()} /> : <Loading />)}
      {data?.head && <LedgerHead head={data.head} />}
      <VerifyLedger />
      {data && <LatestEntries entries={data.latest} />}
    </ShopFrame>
  );
}
