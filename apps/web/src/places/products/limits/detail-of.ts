import type { LimitKind } from '@larderbook/haccp';
import { codeOf } from '@larderbook/messages';

export const detailOf = <K extends LimitKind>(kind: K) => `${codeOf('kind', kind)}-detail` as const;
