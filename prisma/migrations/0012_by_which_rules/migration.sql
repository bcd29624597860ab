-- By which rules a review was signed: what later rules say otherwise is a reason to look again, and takes nothing back.
ALTER TABLE "review" ADD COLUMN "rules_version" INTEGER;
ALTER TABLE "review" ADD CONSTRAINT review_rules_version CHECK (rules_version > 0);

-- The restricted substance that a deviation is about, where no control point judges it.
ALTER TABLE "deviation" ADD COLUMN "substance" TEXT;
ALTER TABLE "deviation" ADD CONSTRAINT deviation_substance
  CHECK (substance IN ('sodium nitrite', 'sodium nitrate', 'sodium erythorbate', 'phosphate'));
