-- A deviation keeps the words of a person who opened it by hand. Of one that a miss opened, the control point, the finding
-- and the figures tell what it is about, in the language of whoever reads it: it keeps no sentence.
ALTER TABLE "deviation" ALTER COLUMN "description" DROP NOT NULL;
ALTER TABLE "deviation" ADD CONSTRAINT deviation_says_what_it_is_about CHECK (description IS NOT NULL OR verdict IS NOT NULL OR receipt_id IS NOT NULL);
