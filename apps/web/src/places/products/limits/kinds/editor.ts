import type { LimitKind, LimitOf } from '@larderbook/haccp';
import type { ReactNode } from 'react';
import type { FieldsOf } from '../fields-of';

/** How a kind of limit is typed: every number of a draft stands as it was typed. */
export type Editor<Limit, Draft> = {
  /** A limit of one's own to begin with; the usual longest gap between two readings stands there already. */
  empty(): Draft;
  /** A limit as it would be typed, to change its figures. */
  draftOf(limit: Limit): Draft;
  /** The figures as the contract writes them; what is no number stays away and is asked for. */
  figuresOf(draft: Draft): object;
  Fields(props: FieldsOf<Draft>): ReactNode;
};

/** The editor of a kind, whatever its draft holds. */
export type EditorOfKind<K extends LimitKind> = Omit<Editor<LimitOf<K>, { kind: K }>, 'Fields'> & { Fields(props: never): ReactNode };
