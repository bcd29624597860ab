-- Limits of one's own: editions of a set, each with its support on file. As every record they are only ever inserted,
-- seen by their establishment alone and covered by the ledger. An edition takes the place of at most one other, and at
-- most one takes its place.

-- CreateTable
CREATE TABLE "own_limit_set" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "title" TEXT NOT NULL,
    "edition" TEXT NOT NULL,
    "valid_from" DATE NOT NULL,
    "replaces_id" UUID,
    "rows" JSONB NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "own_limit_set_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateIndex
CREATE UNIQUE INDEX "own_limit_set_establishment_id_replaces_id_key" ON "own_limit_set"("establishment_id", "replaces_id");

-- AddForeignKey
ALTER TABLE "own_limit_set" ADD CONSTRAINT "own_limit_set_establishment_id_replaces_id_fkey" FOREIGN KEY ("establishment_id", "replaces_id") REFERENCES "own_limit_set"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE own_limit_set ADD CHECK (replaces_id <> id), ADD CHECK (jsonb_array_length(rows) > 0);

ALTER TABLE own_limit_set ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_establishment ON own_limit_set
  USING (establishment_id = current_establishment()) WITH CHECK (establishment_id = current_establishment());
GRANT SELECT, INSERT ON own_limit_set TO larderbook_api;

CREATE TRIGGER note_record AFTER INSERT ON own_limit_set FOR EACH ROW EXECUTE FUNCTION note_record();
CREATE CONSTRAINT TRIGGER refuse_unledgered AFTER INSERT ON own_limit_set
  DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION refuse_unledgered();
