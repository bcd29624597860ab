-- What an item holds of salt and water, for conditions on the salt in a lot's water phase. Null where nobody has said; a
-- null column leaves the digests of the rows before as they were.

ALTER TABLE "item" ADD COLUMN "salt_percent" DECIMAL(7,4), ADD COLUMN "water_percent" DECIMAL(7,4);
