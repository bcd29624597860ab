-- How humidity was kept while cooking, with its times and values. Null with every other reading; a null column leaves the
-- digests of the rows before as they were.

ALTER TABLE "reading" ADD COLUMN "humidity" JSONB;
