-- What settles a deviation can be put right as everything else. A corrective action, a decision and a destruction are
-- corrected or voided by a row that amends them; a closing and a review are signatures, and are taken back by a record of
-- their own. Null columns leave the digests of the rows before as they were.

-- A row that amends a decision or a destruction takes its place, or voids it.
DO $$
DECLARE r record;
BEGIN
  FOR r IN SELECT conrelid::regclass AS t, conname FROM pg_constraint
    WHERE conrelid IN ('disposition'::regclass, 'destruction'::regclass) AND contype = 'c'
      AND pg_get_constraintdef(oid) LIKE '%voided IS TRUE%'
  LOOP
    EXECUTE format('ALTER TABLE %s DROP CONSTRAINT %I', r.t, r.conname);
  END LOOP;
END $$;
ALTER TABLE "disposition" ADD CHECK (voided IS NOT TRUE OR amends_id IS NOT NULL);
ALTER TABLE "destruction" ADD CHECK (voided IS NOT TRUE OR amends_id IS NOT NULL);

ALTER TABLE "corrective_action" ADD COLUMN "amends_id" UUID, ADD COLUMN "first_id" UUID, ADD COLUMN "amend_reason" TEXT, ADD COLUMN "voided" BOOLEAN,
  ADD CHECK ((amends_id IS NULL) = (first_id IS NULL)), ADD CHECK ((amends_id IS NULL) = (amend_reason IS NULL)),
  ADD CHECK (voided IS NOT TRUE OR amends_id IS NOT NULL),
  ADD FOREIGN KEY ("establishment_id", "amends_id") REFERENCES "corrective_action" ("establishment_id", "id"),
  ADD FOREIGN KEY ("establishment_id", "first_id") REFERENCES "corrective_action" ("establishment_id", "id");
CREATE UNIQUE INDEX "corrective_action_establishment_id_amends_id_key" ON "corrective_action" ("establishment_id", "amends_id");

CREATE TABLE "closing_taken_back" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "closing_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "closing_taken_back_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "review_taken_back" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "review_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "review_taken_back_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE UNIQUE INDEX "closing_taken_back_establishment_id_closing_id_key" ON "closing_taken_back"("establishment_id", "closing_id");
CREATE UNIQUE INDEX "review_taken_back_establishment_id_review_id_key" ON "review_taken_back"("establishment_id", "review_id");
ALTER TABLE "closing_taken_back" ADD CONSTRAINT "closing_taken_back_establishment_id_closing_id_fkey" FOREIGN KEY ("establishment_id", "closing_id") REFERENCES "deviation_closing"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "review_taken_back" ADD CONSTRAINT "review_taken_back_establishment_id_review_id_fkey" FOREIGN KEY ("establishment_id", "review_id") REFERENCES "review"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE closing_taken_back ADD CHECK (reason <> '');
ALTER TABLE review_taken_back ADD CHECK (reason <> '');

-- One that was taken back is closed anew; that only one counts is seen to in the turn of the establishment.
DROP INDEX "deviation_closing_establishment_id_deviation_id_key";
CREATE INDEX "deviation_closing_establishment_id_deviation_id_idx" ON "deviation_closing" ("establishment_id", "deviation_id");

DO $$
DECLARE t text;
BEGIN
  FOREACH t IN ARRAY ARRAY['closing_taken_back', 'review_taken_back'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('CREATE POLICY own_establishment ON %I
      USING (establishment_id = current_establishment()) WITH CHECK (establishment_id = current_establishment())', t);
    EXECUTE format('GRANT SELECT, INSERT ON %I TO larderbook_api', t);
    EXECUTE format('CREATE TRIGGER note_record AFTER INSERT ON %I FOR EACH ROW EXECUTE FUNCTION note_record()', t);
    EXECUTE format('CREATE CONSTRAINT TRIGGER refuse_unledgered AFTER INSERT ON %I
      DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION refuse_unledgered()', t);
  END LOOP;
END $$;

-- The rows that count.
CREATE VIEW corrective_action_now WITH (security_invoker = true) AS
  SELECT r.* FROM corrective_action r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM corrective_action later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW deviation_closing_now WITH (security_invoker = true) AS
  SELECT r.* FROM deviation_closing r WHERE NOT EXISTS
  (SELECT FROM closing_taken_back t WHERE t.establishment_id = r.establishment_id AND t.closing_id = r.id);
GRANT SELECT ON corrective_action_now, deviation_closing_now TO larderbook_api;
