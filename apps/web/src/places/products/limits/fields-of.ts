import type { FieldErrors } from '../../../api/check';

/** What the fields of one kind of limit are given. */
export type FieldsOf<D> = { draft: D; errors: FieldErrors; onChange: (draft: D) => void };
