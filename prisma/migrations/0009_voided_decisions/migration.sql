-- A decision about product, and the record that it was destroyed, can be voided as everything else: by a row that amends
-- it, repeats what it says and counts as nothing. Null columns leave the digests of the rows before as they were.

ALTER TABLE "disposition" ADD COLUMN "amends_id" UUID, ADD COLUMN "first_id" UUID, ADD COLUMN "amend_reason" TEXT, ADD COLUMN "voided" BOOLEAN,
  ADD CHECK ((amends_id IS NULL) = (first_id IS NULL)), ADD CHECK ((amends_id IS NULL) = (amend_reason IS NULL)),
  ADD CHECK ((amends_id IS NOT NULL) = (voided IS TRUE)),
  ADD FOREIGN KEY ("establishment_id", "amends_id") REFERENCES "disposition" ("establishment_id", "id"),
  ADD FOREIGN KEY ("establishment_id", "first_id") REFERENCES "disposition" ("establishment_id", "id");
CREATE UNIQUE INDEX "disposition_establishment_id_amends_id_key" ON "disposition" ("establishment_id", "amends_id");
ALTER TABLE "destruction" ADD COLUMN "amends_id" UUID, ADD COLUMN "first_id" UUID, ADD COLUMN "amend_reason" TEXT, ADD COLUMN "voided" BOOLEAN,
  ADD CHECK ((amends_id IS NULL) = (first_id IS NULL)), ADD CHECK ((amends_id IS NULL) = (amend_reason IS NULL)),
  ADD CHECK ((amends_id IS NOT NULL) = (voided IS TRUE)),
  ADD FOREIGN KEY ("establishment_id", "amends_id") REFERENCES "destruction" ("establishment_id", "id"),
  ADD FOREIGN KEY ("establishment_id", "first_id") REFERENCES "destruction" ("establishment_id", "id");
CREATE UNIQUE INDEX "destruction_establishment_id_amends_id_key" ON "destruction" ("establishment_id", "amends_id");

-- One that was voided is recorded anew; that only one counts is seen to in the turn of the establishment.
DROP INDEX "destruction_establishment_id_disposition_id_key";
CREATE INDEX "destruction_establishment_id_disposition_id_idx" ON "destruction" ("establishment_id", "disposition_id");

-- The rows that count.
CREATE VIEW disposition_now WITH (security_invoker = true) AS
  SELECT r.* FROM disposition r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM disposition later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW destruction_now WITH (security_invoker = true) AS
  SELECT r.* FROM destruction r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM destruction later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
GRANT SELECT ON disposition_now, destruction_now TO larderbook_api;
