import type { Account } from '@larderbook/contracts';
import { Suspense } from 'react';
import { useAccount } from './use-account';

/** An account in words that come with the first of them: a page that shows few of them does not wait. */
export const AccountWords = ({ account }: { account: Account }) => (
  <Suspense fallback={null}>
    <InWords account={account} />
  </Suspense>
);

const InWords = ({ account }: { account: Account }) => useAccount()(account);
