import { v7 } from 'uuid';
import { connected } from '../../../apps/api/src/platform/connected';
import type { Larder } from './open-larder';

const [levels, width, sources] = [50, 200, 3];
export const reworkLinks = (levels - 1) * width * sources;

/**
 * Ten thousand lots, each with rework of three of the level before, put straight into the tables: far more than a shop
 * has. They are copies of one lot, so nothing but the links is true of them. Returns one of the last level.
 */
export const reworkedLots = ({ database }: Larder, { establishmentId }: { establishmentId: string }, like: string): Promise<string> =>
  connected(database.ownerUrl, async (owner) => {
    const last = v7();
    for (const table of ['lot', 'lot_input']) await owner.query(`ALTER TABLE ${table} DISABLE TRIGGER USER`);
    await owner.query(
      `CREATE TEMP TABLE place AS SELECT level, spot, CASE WHEN level = ${levels} AND spot = 1 THEN $1::uuid ELSE gen_random_uuid() END AS id
         FROM generate_series(1, ${levels}) level, generate_series(1, ${width}) spot`,
      [last],
    );
    await owner.query(
      `INSERT INTO lot SELECT copy.* FROM place p, lot l, LATERAL jsonb_populate_record(NULL::lot, to_jsonb(l) ||
           jsonb_build_object('id', p.id, 'code', format('R-%s-%s', p.level, p.spot))) copy
         WHERE l.establishment_id = $1 AND l.id = $2`,
      [establishmentId, like],
    );
    await owner.query(
      `INSERT INTO lot_input SELECT copy.*
         FROM place p CROSS JOIN generate_series(0, ${sources - 1}) nth
         JOIN place s ON s.level = p.level - 1 AND s.spot = 1 + (p.spot * 7 + nth * 61) % ${width},
         LATERAL (SELECT * FROM lot_input WHERE establishment_id = $1 AND lot_id = $2 LIMIT 1) i,
         LATERAL jsonb_populate_record(NULL::lot_input, to_jsonb(i) ||
           jsonb_build_object('id', gen_random_uuid(), 'lot_id', p.id, 'receipt_id', NULL, 'source_lot_id', s.id)) copy`,
      [establishmentId, like],
    );
    for (const table of ['lot', 'lot_input']) await owner.query(`ALTER TABLE ${table} ENABLE TRIGGER USER`);
    await owner.query('ANALYZE lot, lot_input');
    return last;
  });
