import type { FieldErrors } from '../../../api/check';

export type FieldsOf<D> = { draft: D; errors: FieldErrors; onChange: (draft: D) => void };
