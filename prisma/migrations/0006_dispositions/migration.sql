-- Product is decided pound by pound: as many dispositions as it takes, each of so much of one lot or delivery and for
-- every deviation that it speaks for. What is condemned is destroyed with a record of its own. A corrective action has
-- the parts of its form. As every record they are only ever inserted.

ALTER TABLE "corrective_action" DROP COLUMN "cause", DROP COLUMN "control", DROP COLUMN "prevention",
  DROP COLUMN "product", ADD COLUMN "form" TEXT NOT NULL, ADD COLUMN "parts" JSONB NOT NULL;
ALTER TABLE corrective_action ADD CHECK (form IN ('critical', 'unforeseen', 'prerequisite'));

DROP TABLE "disposition";

CREATE TABLE "disposition" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "lot_id" UUID,
    "receipt_id" UUID,
    "decision" TEXT NOT NULL,
    "weight_value" DECIMAL(12,3) NOT NULL,
    "weight_unit" TEXT NOT NULL,
    "grams" DECIMAL(30,15) NOT NULL,
    "reason" TEXT NOT NULL,
    "basis" TEXT,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "disposition_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "decided_deviation" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "disposition_id" UUID NOT NULL,
    "deviation_id" UUID NOT NULL,

    CONSTRAINT "decided_deviation_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "destruction" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "disposition_id" UUID NOT NULL,
    "method" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "destruction_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE INDEX "disposition_establishment_id_lot_id_idx" ON "disposition"("establishment_id", "lot_id");
CREATE INDEX "disposition_establishment_id_receipt_id_idx" ON "disposition"("establishment_id", "receipt_id");
CREATE UNIQUE INDEX "decided_deviation_establishment_id_deviation_id_disposition_key" ON "decided_deviation"("establishment_id", "deviation_id", "disposition_id");
CREATE INDEX "decided_deviation_establishment_id_disposition_id_idx" ON "decided_deviation"("establishment_id", "disposition_id");
CREATE UNIQUE INDEX "destruction_establishment_id_disposition_id_key" ON "destruction"("establishment_id", "disposition_id");

ALTER TABLE "decided_deviation" ADD CONSTRAINT "decided_deviation_establishment_id_disposition_id_fkey" FOREIGN KEY ("establishment_id", "disposition_id") REFERENCES "disposition"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "decided_deviation" ADD CONSTRAINT "decided_deviation_establishment_id_deviation_id_fkey" FOREIGN KEY ("establishment_id", "deviation_id") REFERENCES "deviation"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "destruction" ADD CONSTRAINT "destruction_establishment_id_disposition_id_fkey" FOREIGN KEY ("establishment_id", "disposition_id") REFERENCES "disposition"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE disposition ADD CHECK (decision IN ('release', 'rework', 'condemn', 'return', 'recall')),
  ADD CHECK ((lot_id IS NULL) <> (receipt_id IS NULL)), ADD CHECK (grams > 0),
  ADD CHECK ((decision = 'release') = (basis IS NOT NULL)),
  ADD CHECK (decision <> 'return' OR lot_id IS NULL), ADD CHECK (decision NOT IN ('rework', 'recall') OR receipt_id IS NULL);

DO $$
DECLARE t text;
BEGIN
  FOREACH t IN ARRAY ARRAY['disposition', 'decided_deviation', 'destruction'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('CREATE POLICY own_establishment ON %I
      USING (establishment_id = current_establishment()) WITH CHECK (establishment_id = current_establishment())', t);
    EXECUTE format('GRANT SELECT, INSERT ON %I TO larderbook_api', t);
    EXECUTE format('CREATE TRIGGER note_record AFTER INSERT ON %I FOR EACH ROW EXECUTE FUNCTION note_record()', t);
    EXECUTE format('CREATE CONSTRAINT TRIGGER refuse_unledgered AFTER INSERT ON %I
      DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION refuse_unledgered()', t);
  END LOOP;
END $$;
