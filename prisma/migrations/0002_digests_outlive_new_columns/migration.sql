-- A column that is added to a table of records later is null in every row that was there before. What is null is therefore
-- left out of the text that a row's digest is taken of: those rows still give the digest they had when they were written.
-- Nothing can be hidden in this: a value that was there and is null now changes the text, and so does the opposite.
--
--   row digest = SHA-256 of the row as a flat JSON object in the form of RFC 8785: every value that is not null as text, as
--                PostgreSQL prints it in UTC, members sorted by name

CREATE OR REPLACE FUNCTION canonical_row(r jsonb) RETURNS text LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT '{' || string_agg(to_json(key)::text || ':' || to_json(value)::text, ',' ORDER BY key COLLATE "C") || '}'
  FROM jsonb_each_text(r) WHERE value IS NOT NULL
$$;
