-- Whatever is recorded may be corrected or voided. A correction is a row of its own that names the row it amends and
-- the first row of all; whatever points at the thing goes on pointing at that first row. A row that voids says so and
-- repeats what it voids. All of it is null in what nobody corrected; a null column leaves the digests of the rows before
-- as they were.

ALTER TABLE "receipt" ADD COLUMN "amends_id" UUID, ADD COLUMN "first_id" UUID, ADD COLUMN "amend_reason" TEXT, ADD COLUMN "voided" BOOLEAN,
  ADD CHECK ((amends_id IS NULL) = (first_id IS NULL)), ADD CHECK ((amends_id IS NULL) = (amend_reason IS NULL)),
  ADD CHECK (voided IS NOT TRUE OR amends_id IS NOT NULL),
  ADD FOREIGN KEY ("establishment_id", "amends_id") REFERENCES "receipt" ("establishment_id", "id"),
  ADD FOREIGN KEY ("establishment_id", "first_id") REFERENCES "receipt" ("establishment_id", "id");
CREATE UNIQUE INDEX "receipt_establishment_id_amends_id_key" ON "receipt" ("establishment_id", "amends_id");
CREATE INDEX "receipt_lasting_id_idx" ON "receipt" ("establishment_id", (coalesce("first_id", "id")));
ALTER TABLE "stage_end" ADD COLUMN "amends_id" UUID, ADD COLUMN "first_id" UUID, ADD COLUMN "amend_reason" TEXT, ADD COLUMN "voided" BOOLEAN,
  ADD CHECK ((amends_id IS NULL) = (first_id IS NULL)), ADD CHECK ((amends_id IS NULL) = (amend_reason IS NULL)),
  ADD CHECK (voided IS NOT TRUE OR amends_id IS NOT NULL),
  ADD FOREIGN KEY ("establishment_id", "amends_id") REFERENCES "stage_end" ("establishment_id", "id"),
  ADD FOREIGN KEY ("establishment_id", "first_id") REFERENCES "stage_end" ("establishment_id", "id");
CREATE UNIQUE INDEX "stage_end_establishment_id_amends_id_key" ON "stage_end" ("establishment_id", "amends_id");
CREATE INDEX "stage_end_lasting_id_idx" ON "stage_end" ("establishment_id", (coalesce("first_id", "id")));
ALTER TABLE "packing" ADD COLUMN "amends_id" UUID, ADD COLUMN "first_id" UUID, ADD COLUMN "amend_reason" TEXT, ADD COLUMN "voided" BOOLEAN,
  ADD CHECK ((amends_id IS NULL) = (first_id IS NULL)), ADD CHECK ((amends_id IS NULL) = (amend_reason IS NULL)),
  ADD CHECK (voided IS NOT TRUE OR amends_id IS NOT NULL),
  ADD FOREIGN KEY ("establishment_id", "amends_id") REFERENCES "packing" ("establishment_id", "id"),
  ADD FOREIGN KEY ("establishment_id", "first_id") REFERENCES "packing" ("establishment_id", "id");
CREATE UNIQUE INDEX "packing_establishment_id_amends_id_key" ON "packing" ("establishment_id", "amends_id");
CREATE INDEX "packing_lasting_id_idx" ON "packing" ("establishment_id", (coalesce("first_id", "id")));
ALTER TABLE "shipment" ADD COLUMN "amends_id" UUID, ADD COLUMN "first_id" UUID, ADD COLUMN "amend_reason" TEXT, ADD COLUMN "voided" BOOLEAN,
  ADD CHECK ((amends_id IS NULL) = (first_id IS NULL)), ADD CHECK ((amends_id IS NULL) = (amend_reason IS NULL)),
  ADD CHECK (voided IS NOT TRUE OR amends_id IS NOT NULL),
  ADD FOREIGN KEY ("establishment_id", "amends_id") REFERENCES "shipment" ("establishment_id", "id"),
  ADD FOREIGN KEY ("establishment_id", "first_id") REFERENCES "shipment" ("establishment_id", "id");
CREATE UNIQUE INDEX "shipment_establishment_id_amends_id_key" ON "shipment" ("establishment_id", "amends_id");
CREATE INDEX "shipment_lasting_id_idx" ON "shipment" ("establishment_id", (coalesce("first_id", "id")));
ALTER TABLE "calibration" ADD COLUMN "amends_id" UUID, ADD COLUMN "first_id" UUID, ADD COLUMN "amend_reason" TEXT, ADD COLUMN "voided" BOOLEAN,
  ADD CHECK ((amends_id IS NULL) = (first_id IS NULL)), ADD CHECK ((amends_id IS NULL) = (amend_reason IS NULL)),
  ADD CHECK (voided IS NOT TRUE OR amends_id IS NOT NULL),
  ADD FOREIGN KEY ("establishment_id", "amends_id") REFERENCES "calibration" ("establishment_id", "id"),
  ADD FOREIGN KEY ("establishment_id", "first_id") REFERENCES "calibration" ("establishment_id", "id");
CREATE UNIQUE INDEX "calibration_establishment_id_amends_id_key" ON "calibration" ("establishment_id", "amends_id");
CREATE INDEX "calibration_lasting_id_idx" ON "calibration" ("establishment_id", (coalesce("first_id", "id")));
ALTER TABLE "removal" ADD COLUMN "amends_id" UUID, ADD COLUMN "first_id" UUID, ADD COLUMN "amend_reason" TEXT, ADD COLUMN "voided" BOOLEAN,
  ADD CHECK ((amends_id IS NULL) = (first_id IS NULL)), ADD CHECK ((amends_id IS NULL) = (amend_reason IS NULL)),
  ADD CHECK (voided IS NOT TRUE OR amends_id IS NOT NULL),
  ADD FOREIGN KEY ("establishment_id", "amends_id") REFERENCES "removal" ("establishment_id", "id"),
  ADD FOREIGN KEY ("establishment_id", "first_id") REFERENCES "removal" ("establishment_id", "id");
CREATE UNIQUE INDEX "removal_establishment_id_amends_id_key" ON "removal" ("establishment_id", "amends_id");
CREATE INDEX "removal_lasting_id_idx" ON "removal" ("establishment_id", (coalesce("first_id", "id")));

-- A number is given once: to the first row. The rows that correct it repeat it.
DROP INDEX "receipt_establishment_id_code_key";
CREATE UNIQUE INDEX "receipt_establishment_id_code_key" ON "receipt" ("establishment_id", "code") WHERE "amends_id" IS NULL;
DROP INDEX "packing_establishment_id_code_key";
CREATE UNIQUE INDEX "packing_establishment_id_code_key" ON "packing" ("establishment_id", "code") WHERE "amends_id" IS NULL;
DROP INDEX "shipment_establishment_id_number_key";
CREATE UNIQUE INDEX "shipment_establishment_id_number_key" ON "shipment" ("establishment_id", "number") WHERE "amends_id" IS NULL;
DROP INDEX "stage_end_establishment_id_lot_id_control_point_id_key";
CREATE UNIQUE INDEX "stage_end_establishment_id_lot_id_control_point_id_key" ON "stage_end" ("establishment_id", "lot_id", "control_point_id")
  WHERE "amends_id" IS NULL;

-- A reading, an input or a weighing is voided by a row that amends it and counts as nothing.
ALTER TABLE "reading" ADD COLUMN "voided" BOOLEAN, ADD CHECK (voided IS NOT TRUE OR amends_id IS NOT NULL);
ALTER TABLE "lot_input" ADD COLUMN "voided" BOOLEAN, ADD CHECK (voided IS NOT TRUE OR amends_id IS NOT NULL);
ALTER TABLE "weighing" ADD COLUMN "voided" BOOLEAN, ADD CHECK (voided IS NOT TRUE OR amends_id IS NOT NULL);

-- The rows that count. A thing keeps the id of its first row; `row_id` is the row that says what counts of it now.
CREATE VIEW receipt_now WITH (security_invoker = true) AS
  SELECT r.establishment_id, coalesce(r.first_id, r.id) AS id, r.id AS row_id, r.amends_id, r.amend_reason,
  r.code, r.item_id, r.supplier_id, r.supplier_lot, r.supplier_establishment_number, r.kill_date, r.pack_date,
  r.weight_value, r.weight_unit, r.grams, r.temperature_value, r.temperature_unit, r."limit", r.verdict,
  r.decision, r.reason, r.fraction_percent, r.flags, r.station, r.taken_at, r.recorded_at, r.recorded_by
  FROM receipt r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM receipt later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW stage_end_now WITH (security_invoker = true) AS
  SELECT r.establishment_id, coalesce(r.first_id, r.id) AS id, r.id AS row_id, r.amends_id, r.amend_reason,
  r.lot_id, r.control_point_id, r.judged, r.station, r.taken_at, r.recorded_at, r.recorded_by
  FROM stage_end r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM stage_end later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW packing_now WITH (security_invoker = true) AS
  SELECT r.establishment_id, coalesce(r.first_id, r.id) AS id, r.id AS row_id, r.amends_id, r.amend_reason,
  r.lot_id, r.code, r."count", r.net_value, r.net_unit, r.net_grams, r.use_by, r.flags, r.station, r.taken_at,
  r.recorded_at, r.recorded_by
  FROM packing r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM packing later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW shipment_now WITH (security_invoker = true) AS
  SELECT r.establishment_id, coalesce(r.first_id, r.id) AS id, r.id AS row_id, r.amends_id, r.amend_reason, coalesce(first.recorded_at, r.recorded_at) AS first_recorded_at,
  r.number, r.customer_id, r.document, r.station, r.taken_at, r.recorded_at, r.recorded_by
  FROM shipment r LEFT JOIN shipment first ON first.establishment_id = r.establishment_id AND first.id = r.first_id
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM shipment later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW calibration_now WITH (security_invoker = true) AS
  SELECT r.establishment_id, coalesce(r.first_id, r.id) AS id, r.id AS row_id, r.amends_id, r.amend_reason, coalesce(first.recorded_at, r.recorded_at) AS first_recorded_at,
  r.instrument_id, r.method, r.expected, r.observed, r.unit, r.verdict, r.action, r.station, r.taken_at,
  r.recorded_at, r.recorded_by
  FROM calibration r LEFT JOIN calibration first ON first.establishment_id = r.establishment_id AND first.id = r.first_id
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM calibration later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW removal_now WITH (security_invoker = true) AS
  SELECT r.establishment_id, coalesce(r.first_id, r.id) AS id, r.id AS row_id, r.amends_id, r.amend_reason,
  r.lot_id, r.receipt_id, r.kind, r.weight_value, r.weight_unit, r.grams, r.note, r.station, r.taken_at,
  r.recorded_at, r.recorded_by
  FROM removal r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM removal later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW shipment_line_now WITH (security_invoker = true) AS
  SELECT l.establishment_id, l.id, s.id AS shipment_id, l.packing_id, l.count
  FROM shipment_line l JOIN shipment_now s ON s.establishment_id = l.establishment_id AND s.row_id = l.shipment_id;
CREATE VIEW reading_now WITH (security_invoker = true) AS
  SELECT r.* FROM reading r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM reading later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW lot_input_now WITH (security_invoker = true) AS
  SELECT r.* FROM lot_input r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM lot_input later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW weighing_now WITH (security_invoker = true) AS
  SELECT r.* FROM weighing r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM weighing later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);

GRANT SELECT ON receipt_now, stage_end_now, packing_now, shipment_now, shipment_line_now, calibration_now, removal_now,
  reading_now, lot_input_now, weighing_now TO larderbook_api;
