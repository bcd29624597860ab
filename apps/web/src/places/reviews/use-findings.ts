import type { TellAccount } from '@larderbook/messages';
import { useAccount } from '../../ui/use-account';

/** Tells what a review finds, with the names of entries, allergens and substances. */
export const useFindings = (): TellAccount => useAccount('items', 'limits', 'review-findings');
