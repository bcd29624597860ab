/**
 * The bare SQL of one reading: no request, no session, nothing judged. Names after a colon are its parameters; `id` is
 * another each time.
 */
export const readingSql = [
  'BEGIN',
  'SELECT * FROM begin_write(:establishment::uuid, :id::uuid)',
  `INSERT INTO reading (establishment_id, id, lot_id, control_point_id, plan_id, probe, instrument_id, value, unit, seen, judged,
     reason, flags, station, taken_at, recorded_at, recorded_by)
   VALUES (:establishment::uuid, :id::uuid, :lot::uuid, :point::uuid, :plan::uuid, 'core', :instrument::uuid, 42, '°F', '', :judged::jsonb,
     '', '{}', 'tablet by the smoker', now(), now(), :person::uuid)`,
  `SELECT seq FROM append_entry(:id::uuid, now(), :person::uuid, 'tablet by the smoker', 'reading', :lot::uuid, :digest::text, :reply)`,
  'COMMIT',
];

/** Of one establishment: what a reading that Larderbook recorded there holds. */
export type ReadingParameters = Record<
  'establishment' | 'lot' | 'point' | 'plan' | 'instrument' | 'judged' | 'person' | 'digest' | 'reply',
  string
>;
