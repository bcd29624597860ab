-- What readings in doubt were, as a person says with a reason: not of the core, the time is right after all, or as
-- recorded, which takes back what was said before. Of several about one reading the newest by the ledger counts. As
-- every record they are only ever inserted, seen by their establishment alone and covered by the ledger.

-- CreateTable
CREATE TABLE "clarification" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "control_point_id" UUID NOT NULL,
    "word" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "judged" JSONB NOT NULL,
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "clarification_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "clarified_reading" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "clarification_id" UUID NOT NULL,
    "reading_id" UUID NOT NULL,

    CONSTRAINT "clarified_reading_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateIndex
CREATE INDEX "clarification_establishment_id_lot_id_control_point_id_idx" ON "clarification"("establishment_id", "lot_id", "control_point_id");

-- CreateIndex
CREATE INDEX "clarified_reading_establishment_id_clarification_id_idx" ON "clarified_reading"("establishment_id", "clarification_id");

-- CreateIndex
CREATE UNIQUE INDEX "clarified_reading_establishment_id_reading_id_clarification_key" ON "clarified_reading"("establishment_id", "reading_id", "clarification_id");

-- AddForeignKey
ALTER TABLE "clarification" ADD CONSTRAINT "clarification_establishment_id_lot_id_fkey" FOREIGN KEY ("establishment_id", "lot_id") REFERENCES "lot"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "clarified_reading" ADD CONSTRAINT "clarified_reading_establishment_id_clarification_id_fkey" FOREIGN KEY ("establishment_id", "clarification_id") REFERENCES "clarification"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "clarified_reading" ADD CONSTRAINT "clarified_reading_establishment_id_reading_id_fkey" FOREIGN KEY ("establishment_id", "reading_id") REFERENCES "reading"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE clarification ADD CHECK (word IN ('not of the core', 'time is right', 'as recorded')),
  ADD CHECK (reason <> '');

DO $$
DECLARE t text;
BEGIN
  FOREACH t IN ARRAY ARRAY['clarification', 'clarified_reading'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('CREATE POLICY own_establishment ON %I
      USING (establishment_id = current_establishment()) WITH CHECK (establishment_id = current_establishment())', t);
    EXECUTE format('GRANT SELECT, INSERT ON %I TO larderbook_api', t);
    EXECUTE format('CREATE TRIGGER note_record AFTER INSERT ON %I FOR EACH ROW EXECUTE FUNCTION note_record()', t);
    EXECUTE format('CREATE CONSTRAINT TRIGGER refuse_unledgered AFTER INSERT ON %I
      DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION refuse_unledgered()', t);
  END LOOP;
END $$;
