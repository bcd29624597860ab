import type { LimitKind } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';

/** What says in a few words what a kind of limit is for. */
export const detailOf = <K extends LimitKind>(kind: K) => `${codeOf('kind', kind)}-detail` as const;
