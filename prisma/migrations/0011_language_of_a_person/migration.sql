-- In which language a person is spoken to, where they have said so. The sign-in tables are no records: it is changed in place.

ALTER TABLE "sign_in" ADD COLUMN "language" TEXT;

-- As before, and the language with it. Its columns cannot be added to in place.
DROP FUNCTION signed_in(text, timestamptz);
CREATE FUNCTION signed_in(p_token text, p_now timestamptz)
RETURNS TABLE (person_id uuid, name text, user_name text, language text, roles text[], establishment_id uuid, demonstration boolean,
               establishment_name text, establishment_number text, address text, time_zone text, units text, paper text,
               lot_code_pattern text, jurisdiction text, place text, limit_set text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
  SELECT p.id, p.name, p.user_name, i.language, g.roles, e.id, e.demonstration, d.name, d.number, d.address, d.time_zone, d.units,
         d.paper, d.lot_code_pattern, d.jurisdiction, d.place, d.limit_set
  FROM sign_in_session s
  JOIN sign_in i ON i.id = s.user_id
  JOIN person p ON p.establishment_id = s.establishment_id AND p.id = s.user_id
  JOIN establishment e ON e.id = s.establishment_id
  CROSS JOIN LATERAL (SELECT r.roles FROM role_grant r
    WHERE r.establishment_id = s.establishment_id AND r.person_id = s.user_id ORDER BY r.recorded_at DESC, r.id DESC LIMIT 1) g
  CROSS JOIN LATERAL (SELECT x.* FROM establishment_details x
    WHERE x.establishment_id = s.establishment_id ORDER BY x.recorded_at DESC, x.id DESC LIMIT 1) d
  WHERE s.token = p_token AND s.expires_at > p_now AND cardinality(g.roles) > 0
$$;

REVOKE ALL ON FUNCTION signed_in(text, timestamptz) FROM PUBLIC;
GRANT EXECUTE ON FUNCTION signed_in(text, timestamptz) TO larderbook_api;
