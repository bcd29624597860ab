import type { LimitKind, LimitOf } from '@larderbook/haccp';
import type { ReactNode } from 'react';
import type { FieldsOf } from '../fields-of';

/** Every number of a draft stands as it was typed. */
export type Editor<Limit, Draft> = {
  /** The usual longest gap between two readings stands there already. */
  empty(): Draft;
  draftOf(limit: Limit): Draft;
  /** What is no number is left for the contract to ask for. */
  figuresOf(draft: Draft): object;
  Fields(props: FieldsOf<Draft>): ReactNode;
};

export type EditorOfKind<K extends LimitKind> = Omit<Editor<LimitOf<K>, { kind: K }>, 'Fields'> & { Fields(props: never): ReactNode };
