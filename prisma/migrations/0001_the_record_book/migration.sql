-- The first shop: tables, the rights of the API, row security and the ledger. They belong together and come first.

-- CreateSchema
CREATE SCHEMA IF NOT EXISTS "public";

-- CreateTable
CREATE TABLE "establishment" (
    "id" UUID NOT NULL,
    "demonstration" BOOLEAN NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "establishment_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "establishment_details" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "number" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "time_zone" TEXT NOT NULL,
    "units" TEXT NOT NULL,
    "paper" TEXT NOT NULL,
    "lot_code_pattern" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "establishment_details_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "person" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "user_name" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "person_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "role_grant" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "roles" TEXT[],
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "role_grant_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "sign_in" (
    "id" UUID NOT NULL,
    "establishment_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "email_verified" BOOLEAN NOT NULL DEFAULT false,
    "image" TEXT,
    "username" TEXT NOT NULL,
    "display_username" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "sign_in_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "sign_in_session" (
    "id" UUID NOT NULL,
    "establishment_id" UUID NOT NULL,
    "user_id" UUID NOT NULL,
    "token" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "ip_address" TEXT,
    "user_agent" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "sign_in_session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "sign_in_account" (
    "id" UUID NOT NULL,
    "establishment_id" UUID NOT NULL,
    "account_id" TEXT NOT NULL,
    "provider_id" TEXT NOT NULL,
    "user_id" UUID NOT NULL,
    "access_token" TEXT,
    "refresh_token" TEXT,
    "id_token" TEXT,
    "access_token_expires_at" TIMESTAMPTZ(3),
    "refresh_token_expires_at" TIMESTAMPTZ(3),
    "scope" TEXT,
    "password" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "sign_in_account_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "sign_in_verification" (
    "id" UUID NOT NULL,
    "establishment_id" UUID,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "sign_in_verification_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "sign_in_attempt" (
    "id" UUID NOT NULL,
    "establishment_id" UUID,
    "user_name" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "sign_in_attempt_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "supplier" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "establishment_number" TEXT,
    "address" TEXT NOT NULL,
    "contact" TEXT NOT NULL,
    "amends_id" UUID,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "supplier_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "item" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "species" TEXT,
    "substance" TEXT,
    "fraction_percent" DECIMAL(9,4),
    "allergens" TEXT[],
    "receiving_limit" JSONB,
    "amends_id" UUID,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "item_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "receipt" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "item_id" UUID NOT NULL,
    "supplier_id" UUID NOT NULL,
    "supplier_lot" TEXT NOT NULL,
    "supplier_establishment_number" TEXT,
    "kill_date" DATE,
    "pack_date" DATE,
    "weight_value" DECIMAL(12,3) NOT NULL,
    "weight_unit" TEXT NOT NULL,
    "grams" DECIMAL(30,15) NOT NULL,
    "temperature_value" DECIMAL(7,2),
    "temperature_unit" TEXT,
    "limit" JSONB,
    "verdict" JSONB,
    "decision" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "fraction_percent" DECIMAL(9,4),
    "flags" TEXT[],
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "receipt_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "product" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "process" TEXT NOT NULL,
    "species" TEXT NOT NULL,
    "storage" TEXT NOT NULL,
    "use_by_days" INTEGER NOT NULL,
    "amends_id" UUID,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "product_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "formula" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "product_id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "expected_yield_percent" DECIMAL(7,4) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "formula_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "formula_line" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "formula_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "part" TEXT NOT NULL,
    "item_id" UUID NOT NULL,
    "percent" DECIMAL(9,4) NOT NULL,

    CONSTRAINT "formula_line_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "plan" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "product_id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "content" JSONB NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "plan_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "plan_adoption" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "statement" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "plan_adoption_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "lot" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "product_id" UUID NOT NULL,
    "formula_id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "note" TEXT NOT NULL,
    "flags" TEXT[],
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "lot_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "lot_input" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "receipt_id" UUID,
    "source_lot_id" UUID,
    "weight_value" DECIMAL(12,3) NOT NULL,
    "weight_unit" TEXT NOT NULL,
    "grams" DECIMAL(30,15) NOT NULL,
    "trimmed_value" DECIMAL(12,3) NOT NULL,
    "trimmed_unit" TEXT NOT NULL,
    "trimmed_grams" DECIMAL(30,15) NOT NULL,
    "amends_id" UUID,
    "reason" TEXT NOT NULL,
    "flags" TEXT[],
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "lot_input_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "weighing" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "item_id" UUID NOT NULL,
    "receipt_id" UUID,
    "weight_value" DECIMAL(12,3) NOT NULL,
    "weight_unit" TEXT NOT NULL,
    "grams" DECIMAL(30,15) NOT NULL,
    "fraction_percent" DECIMAL(9,4),
    "target_grams" DECIMAL(30,15),
    "control_point_id" UUID,
    "judged" JSONB NOT NULL,
    "instrument_id" UUID,
    "amends_id" UUID,
    "reason" TEXT NOT NULL,
    "flags" TEXT[],
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "weighing_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "removal" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "lot_id" UUID,
    "receipt_id" UUID,
    "kind" TEXT NOT NULL,
    "weight_value" DECIMAL(12,3) NOT NULL,
    "weight_unit" TEXT NOT NULL,
    "grams" DECIMAL(30,15) NOT NULL,
    "note" TEXT NOT NULL,
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "removal_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "instrument" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "tolerance" DECIMAL(9,3) NOT NULL,
    "check_every_days" INTEGER NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "instrument_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "calibration" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "instrument_id" UUID NOT NULL,
    "method" TEXT NOT NULL,
    "expected" DECIMAL(9,3) NOT NULL,
    "observed" DECIMAL(9,3) NOT NULL,
    "unit" TEXT NOT NULL,
    "verdict" JSONB NOT NULL,
    "action" TEXT NOT NULL,
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "calibration_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "reading" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "control_point_id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "probe" TEXT NOT NULL,
    "instrument_id" UUID,
    "value" DECIMAL(9,3),
    "unit" TEXT,
    "answer" BOOLEAN,
    "seen" TEXT NOT NULL,
    "judged" JSONB NOT NULL,
    "amends_id" UUID,
    "reason" TEXT NOT NULL,
    "flags" TEXT[],
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "reading_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "stage_end" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "control_point_id" UUID NOT NULL,
    "judged" JSONB NOT NULL,
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "stage_end_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "deviation" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "cause" TEXT NOT NULL,
    "lot_id" UUID,
    "receipt_id" UUID,
    "control_point_id" UUID,
    "limit_id" UUID,
    "subject_id" UUID,
    "description" TEXT NOT NULL,
    "limit" JSONB,
    "verdict" JSONB,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "deviation_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "corrective_action" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "deviation_id" UUID NOT NULL,
    "cause" TEXT NOT NULL,
    "control" TEXT NOT NULL,
    "prevention" TEXT NOT NULL,
    "product" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "corrective_action_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "disposition" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "deviation_id" UUID NOT NULL,
    "decision" TEXT NOT NULL,
    "weight_value" DECIMAL(12,3) NOT NULL,
    "weight_unit" TEXT NOT NULL,
    "grams" DECIMAL(30,15) NOT NULL,
    "basis" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "disposition_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "deviation_closing" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "deviation_id" UUID NOT NULL,
    "note" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "deviation_closing_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "review" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "findings" JSONB NOT NULL,
    "statement" TEXT NOT NULL,
    "sole_worker" BOOLEAN NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "review_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "packing" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "code" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "net_value" DECIMAL(12,3) NOT NULL,
    "net_unit" TEXT NOT NULL,
    "net_grams" DECIMAL(30,15) NOT NULL,
    "use_by" DATE NOT NULL,
    "flags" TEXT[],
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "packing_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "customer" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "contact" TEXT NOT NULL,
    "amends_id" UUID,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "customer_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "shipment" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "customer_id" UUID NOT NULL,
    "document" TEXT NOT NULL,
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "shipment_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "shipment_line" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "shipment_id" UUID NOT NULL,
    "packing_id" UUID NOT NULL,
    "count" INTEGER NOT NULL,

    CONSTRAINT "shipment_line_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateTable
CREATE TABLE "ledger_entry" (
    "establishment_id" UUID NOT NULL,
    "seq" BIGINT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "person" UUID NOT NULL,
    "station" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "subject" UUID NOT NULL,
    "records" TEXT NOT NULL,
    "digest" TEXT NOT NULL,
    "previous_hash" TEXT NOT NULL,
    "hash" TEXT NOT NULL,

    CONSTRAINT "ledger_entry_pkey" PRIMARY KEY ("establishment_id","seq")
);

-- CreateTable
CREATE TABLE "acknowledgement" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "request_digest" TEXT NOT NULL,
    "reply" JSONB NOT NULL,
    "seq" BIGINT NOT NULL,

    CONSTRAINT "acknowledgement_pkey" PRIMARY KEY ("establishment_id","id")
);

-- CreateIndex
CREATE INDEX "role_grant_establishment_id_person_id_recorded_at_idx" ON "role_grant"("establishment_id", "person_id", "recorded_at");

-- CreateIndex
CREATE UNIQUE INDEX "sign_in_email_key" ON "sign_in"("email");

-- CreateIndex
CREATE UNIQUE INDEX "sign_in_username_key" ON "sign_in"("username");

-- CreateIndex
CREATE INDEX "sign_in_establishment_id_idx" ON "sign_in"("establishment_id");

-- CreateIndex
CREATE UNIQUE INDEX "sign_in_session_token_key" ON "sign_in_session"("token");

-- CreateIndex
CREATE INDEX "sign_in_session_user_id_idx" ON "sign_in_session"("user_id");

-- CreateIndex
CREATE INDEX "sign_in_account_user_id_idx" ON "sign_in_account"("user_id");

-- CreateIndex
CREATE INDEX "sign_in_verification_identifier_idx" ON "sign_in_verification"("identifier");

-- CreateIndex
CREATE INDEX "sign_in_attempt_user_name_at_idx" ON "sign_in_attempt"("user_name", "at");

-- CreateIndex
CREATE UNIQUE INDEX "supplier_establishment_id_amends_id_key" ON "supplier"("establishment_id", "amends_id");

-- CreateIndex
CREATE UNIQUE INDEX "item_establishment_id_amends_id_key" ON "item"("establishment_id", "amends_id");

-- CreateIndex
CREATE INDEX "receipt_establishment_id_supplier_lot_idx" ON "receipt"("establishment_id", "supplier_lot");

-- CreateIndex
CREATE INDEX "receipt_establishment_id_item_id_taken_at_idx" ON "receipt"("establishment_id", "item_id", "taken_at");

-- CreateIndex
CREATE UNIQUE INDEX "receipt_establishment_id_code_key" ON "receipt"("establishment_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "product_establishment_id_amends_id_key" ON "product"("establishment_id", "amends_id");

-- CreateIndex
CREATE UNIQUE INDEX "formula_establishment_id_product_id_version_key" ON "formula"("establishment_id", "product_id", "version");

-- CreateIndex
CREATE UNIQUE INDEX "formula_line_establishment_id_formula_id_position_key" ON "formula_line"("establishment_id", "formula_id", "position");

-- CreateIndex
CREATE UNIQUE INDEX "plan_establishment_id_product_id_version_key" ON "plan"("establishment_id", "product_id", "version");

-- CreateIndex
CREATE UNIQUE INDEX "plan_adoption_establishment_id_plan_id_key" ON "plan_adoption"("establishment_id", "plan_id");

-- CreateIndex
CREATE INDEX "lot_establishment_id_taken_at_idx" ON "lot"("establishment_id", "taken_at");

-- CreateIndex
CREATE UNIQUE INDEX "lot_establishment_id_code_key" ON "lot"("establishment_id", "code");

-- CreateIndex
CREATE INDEX "lot_input_establishment_id_lot_id_idx" ON "lot_input"("establishment_id", "lot_id");

-- CreateIndex
CREATE INDEX "lot_input_establishment_id_receipt_id_idx" ON "lot_input"("establishment_id", "receipt_id");

-- CreateIndex
CREATE INDEX "lot_input_establishment_id_source_lot_id_idx" ON "lot_input"("establishment_id", "source_lot_id");

-- CreateIndex
CREATE UNIQUE INDEX "lot_input_establishment_id_amends_id_key" ON "lot_input"("establishment_id", "amends_id");

-- CreateIndex
CREATE INDEX "weighing_establishment_id_lot_id_idx" ON "weighing"("establishment_id", "lot_id");

-- CreateIndex
CREATE INDEX "weighing_establishment_id_receipt_id_idx" ON "weighing"("establishment_id", "receipt_id");

-- CreateIndex
CREATE UNIQUE INDEX "weighing_establishment_id_amends_id_key" ON "weighing"("establishment_id", "amends_id");

-- CreateIndex
CREATE INDEX "removal_establishment_id_lot_id_idx" ON "removal"("establishment_id", "lot_id");

-- CreateIndex
CREATE INDEX "removal_establishment_id_receipt_id_idx" ON "removal"("establishment_id", "receipt_id");

-- CreateIndex
CREATE INDEX "calibration_establishment_id_instrument_id_taken_at_idx" ON "calibration"("establishment_id", "instrument_id", "taken_at");

-- CreateIndex
CREATE INDEX "reading_establishment_id_lot_id_control_point_id_taken_at_idx" ON "reading"("establishment_id", "lot_id", "control_point_id", "taken_at");

-- CreateIndex
CREATE INDEX "reading_establishment_id_control_point_id_taken_at_idx" ON "reading"("establishment_id", "control_point_id", "taken_at");

-- CreateIndex
CREATE UNIQUE INDEX "reading_establishment_id_amends_id_key" ON "reading"("establishment_id", "amends_id");

-- CreateIndex
CREATE UNIQUE INDEX "stage_end_establishment_id_lot_id_control_point_id_key" ON "stage_end"("establishment_id", "lot_id", "control_point_id");

-- CreateIndex
CREATE INDEX "deviation_establishment_id_lot_id_idx" ON "deviation"("establishment_id", "lot_id");

-- CreateIndex
CREATE INDEX "deviation_establishment_id_receipt_id_idx" ON "deviation"("establishment_id", "receipt_id");

-- CreateIndex
CREATE UNIQUE INDEX "deviation_establishment_id_cause_key" ON "deviation"("establishment_id", "cause");

-- CreateIndex
CREATE UNIQUE INDEX "deviation_establishment_id_number_key" ON "deviation"("establishment_id", "number");

-- CreateIndex
CREATE INDEX "corrective_action_establishment_id_deviation_id_idx" ON "corrective_action"("establishment_id", "deviation_id");

-- CreateIndex
CREATE UNIQUE INDEX "disposition_establishment_id_deviation_id_key" ON "disposition"("establishment_id", "deviation_id");

-- CreateIndex
CREATE UNIQUE INDEX "deviation_closing_establishment_id_deviation_id_key" ON "deviation_closing"("establishment_id", "deviation_id");

-- CreateIndex
CREATE INDEX "review_establishment_id_lot_id_recorded_at_idx" ON "review"("establishment_id", "lot_id", "recorded_at");

-- CreateIndex
CREATE INDEX "packing_establishment_id_lot_id_idx" ON "packing"("establishment_id", "lot_id");

-- CreateIndex
CREATE UNIQUE INDEX "packing_establishment_id_code_key" ON "packing"("establishment_id", "code");

-- CreateIndex
CREATE UNIQUE INDEX "customer_establishment_id_amends_id_key" ON "customer"("establishment_id", "amends_id");

-- CreateIndex
CREATE INDEX "shipment_establishment_id_customer_id_idx" ON "shipment"("establishment_id", "customer_id");

-- CreateIndex
CREATE UNIQUE INDEX "shipment_establishment_id_number_key" ON "shipment"("establishment_id", "number");

-- CreateIndex
CREATE INDEX "shipment_line_establishment_id_packing_id_idx" ON "shipment_line"("establishment_id", "packing_id");

-- CreateIndex
CREATE INDEX "shipment_line_establishment_id_shipment_id_idx" ON "shipment_line"("establishment_id", "shipment_id");

-- AddForeignKey
ALTER TABLE "sign_in_session" ADD CONSTRAINT "sign_in_session_user_id_fkey" FOREIGN KEY ("user_id") REFERENCES "sign_in"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "sign_in_account" ADD CONSTRAINT "sign_in_account_user_id_fkey" FOREIGN KEY ("user_id") REFERENCES "sign_in"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "receipt" ADD CONSTRAINT "receipt_establishment_id_item_id_fkey" FOREIGN KEY ("establishment_id", "item_id") REFERENCES "item"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "receipt" ADD CONSTRAINT "receipt_establishment_id_supplier_id_fkey" FOREIGN KEY ("establishment_id", "supplier_id") REFERENCES "supplier"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "formula" ADD CONSTRAINT "formula_establishment_id_product_id_fkey" FOREIGN KEY ("establishment_id", "product_id") REFERENCES "product"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "formula_line" ADD CONSTRAINT "formula_line_establishment_id_formula_id_fkey" FOREIGN KEY ("establishment_id", "formula_id") REFERENCES "formula"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "formula_line" ADD CONSTRAINT "formula_line_establishment_id_item_id_fkey" FOREIGN KEY ("establishment_id", "item_id") REFERENCES "item"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan" ADD CONSTRAINT "plan_establishment_id_product_id_fkey" FOREIGN KEY ("establishment_id", "product_id") REFERENCES "product"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "plan_adoption" ADD CONSTRAINT "plan_adoption_establishment_id_plan_id_fkey" FOREIGN KEY ("establishment_id", "plan_id") REFERENCES "plan"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_establishment_id_product_id_fkey" FOREIGN KEY ("establishment_id", "product_id") REFERENCES "product"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_establishment_id_formula_id_fkey" FOREIGN KEY ("establishment_id", "formula_id") REFERENCES "formula"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_establishment_id_plan_id_fkey" FOREIGN KEY ("establishment_id", "plan_id") REFERENCES "plan"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot_input" ADD CONSTRAINT "lot_input_establishment_id_lot_id_fkey" FOREIGN KEY ("establishment_id", "lot_id") REFERENCES "lot"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot_input" ADD CONSTRAINT "lot_input_establishment_id_receipt_id_fkey" FOREIGN KEY ("establishment_id", "receipt_id") REFERENCES "receipt"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot_input" ADD CONSTRAINT "lot_input_establishment_id_source_lot_id_fkey" FOREIGN KEY ("establishment_id", "source_lot_id") REFERENCES "lot"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "weighing" ADD CONSTRAINT "weighing_establishment_id_lot_id_fkey" FOREIGN KEY ("establishment_id", "lot_id") REFERENCES "lot"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "weighing" ADD CONSTRAINT "weighing_establishment_id_item_id_fkey" FOREIGN KEY ("establishment_id", "item_id") REFERENCES "item"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "weighing" ADD CONSTRAINT "weighing_establishment_id_receipt_id_fkey" FOREIGN KEY ("establishment_id", "receipt_id") REFERENCES "receipt"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "removal" ADD CONSTRAINT "removal_establishment_id_lot_id_fkey" FOREIGN KEY ("establishment_id", "lot_id") REFERENCES "lot"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "removal" ADD CONSTRAINT "removal_establishment_id_receipt_id_fkey" FOREIGN KEY ("establishment_id", "receipt_id") REFERENCES "receipt"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "calibration" ADD CONSTRAINT "calibration_establishment_id_instrument_id_fkey" FOREIGN KEY ("establishment_id", "instrument_id") REFERENCES "instrument"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "reading" ADD CONSTRAINT "reading_establishment_id_lot_id_fkey" FOREIGN KEY ("establishment_id", "lot_id") REFERENCES "lot"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stage_end" ADD CONSTRAINT "stage_end_establishment_id_lot_id_fkey" FOREIGN KEY ("establishment_id", "lot_id") REFERENCES "lot"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "corrective_action" ADD CONSTRAINT "corrective_action_establishment_id_deviation_id_fkey" FOREIGN KEY ("establishment_id", "deviation_id") REFERENCES "deviation"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "disposition" ADD CONSTRAINT "disposition_establishment_id_deviation_id_fkey" FOREIGN KEY ("establishment_id", "deviation_id") REFERENCES "deviation"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "deviation_closing" ADD CONSTRAINT "deviation_closing_establishment_id_deviation_id_fkey" FOREIGN KEY ("establishment_id", "deviation_id") REFERENCES "deviation"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "review" ADD CONSTRAINT "review_establishment_id_lot_id_fkey" FOREIGN KEY ("establishment_id", "lot_id") REFERENCES "lot"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "packing" ADD CONSTRAINT "packing_establishment_id_lot_id_fkey" FOREIGN KEY ("establishment_id", "lot_id") REFERENCES "lot"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "shipment" ADD CONSTRAINT "shipment_establishment_id_customer_id_fkey" FOREIGN KEY ("establishment_id", "customer_id") REFERENCES "customer"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "shipment_line" ADD CONSTRAINT "shipment_line_establishment_id_shipment_id_fkey" FOREIGN KEY ("establishment_id", "shipment_id") REFERENCES "shipment"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "shipment_line" ADD CONSTRAINT "shipment_line_establishment_id_packing_id_fkey" FOREIGN KEY ("establishment_id", "packing_id") REFERENCES "packing"("establishment_id", "id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- ═══ What can never be true ═══════════════════════════════════════════════════════════════════════════════════════
ALTER TABLE receipt ADD CHECK (grams > 0), ADD CHECK (decision IN ('accepted', 'refused'));
ALTER TABLE lot_input ADD CHECK (grams > 0 AND trimmed_grams > 0 AND trimmed_grams <= grams),
  ADD CHECK ((receipt_id IS NULL) <> (source_lot_id IS NULL));
ALTER TABLE weighing ADD CHECK (grams > 0);
ALTER TABLE removal ADD CHECK (grams > 0), ADD CHECK ((lot_id IS NULL) <> (receipt_id IS NULL));
ALTER TABLE reading ADD CHECK ((value IS NULL) <> (answer IS NULL)), ADD CHECK ((value IS NULL) = (unit IS NULL));
ALTER TABLE packing ADD CHECK (count > 0 AND net_grams > 0);
ALTER TABLE shipment_line ADD CHECK (count > 0);
ALTER TABLE formula_line ADD CHECK (percent > 0), ADD CHECK (part IN ('meat', 'ingredient'));
ALTER TABLE disposition ADD CHECK (decision IN ('release', 'rework', 'reprocess', 'condemn'));

-- ═══ Rights ═══════════════════════════════════════════════════════════════════════════════════════════════════════
-- The API signs in as a plain role that is a member of larderbook_api. That role may read and add records, and nothing
-- else: no UPDATE, no DELETE, no TRUNCATE. Sign-in tables are not records (sessions end), so those it may change.

DO $$
BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'larderbook_api') THEN
    CREATE ROLE larderbook_api NOLOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOBYPASSRLS;
  END IF;
EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL; -- another database of this server made it just now
END $$;

GRANT USAGE ON SCHEMA public TO larderbook_api;

-- ═══ Row security ═════════════════════════════════════════════════════════════════════════════════════════════════
-- Every transaction names its establishment with set_config('larderbook.establishment', …, true). Without it nothing
-- is visible and nothing can be added.

CREATE FUNCTION current_establishment() RETURNS uuid LANGUAGE sql STABLE PARALLEL SAFE AS
$$ SELECT nullif(current_setting('larderbook.establishment', true), '')::uuid $$;

-- Signing in happens before the establishment is known; the connections that do it say so.
CREATE FUNCTION at_the_sign_in_door() RETURNS boolean LANGUAGE sql STABLE PARALLEL SAFE AS
$$ SELECT coalesce(current_setting('larderbook.door', true), '') = 'sign-in' $$;

ALTER TABLE establishment ENABLE ROW LEVEL SECURITY;
CREATE POLICY own_establishment ON establishment
  USING (id = current_establishment()) WITH CHECK (id = current_establishment());
GRANT SELECT, INSERT ON establishment TO larderbook_api;

DO $$
DECLARE t text;
BEGIN
  FOR t IN SELECT table_name FROM information_schema.columns
           WHERE table_schema = 'public' AND column_name = 'establishment_id'
  LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    IF t LIKE 'sign\_in%' THEN
      EXECUTE format('CREATE POLICY own_establishment ON %I
        USING (establishment_id = current_establishment() OR at_the_sign_in_door())
        WITH CHECK (establishment_id = current_establishment() OR at_the_sign_in_door())', t);
      EXECUTE format('GRANT SELECT, INSERT, UPDATE, DELETE ON %I TO larderbook_api', t);
    ELSE
      EXECUTE format('CREATE POLICY own_establishment ON %I
        USING (establishment_id = current_establishment()) WITH CHECK (establishment_id = current_establishment())', t);
      IF t IN ('ledger_entry', 'acknowledgement') THEN
        EXECUTE format('GRANT SELECT ON %I TO larderbook_api', t); -- written by append_entry alone
      ELSE
        EXECUTE format('GRANT SELECT, INSERT ON %I TO larderbook_api', t);
      END IF;
    END IF;
  END LOOP;
END $$;

-- ═══ The ledger ═══════════════════════════════════════════════════════════════════════════════════════════════════
-- Every row added to a record table is noted with its digest; append_entry closes the note into one line of the chain
-- in the same transaction. A transaction that adds a record without a ledger entry cannot commit.
--
--   row digest   = SHA-256 of the row as a flat JSON object in the form of RFC 8785: every value that is not null as
--                  text, as PostgreSQL prints it in UTC, members sorted by name
--   entry digest = SHA-256 of the canonical JSON list [{"digest","id","table"}, …] in the order of writing
--   entry hash   = SHA-256 of the previous hash (64 zeros before the first) followed by the canonical JSON of
--                  {"at","digest","establishment","kind","person","seq","station","subject"}

CREATE FUNCTION sha256_hex(said text) RETURNS text LANGUAGE sql IMMUTABLE PARALLEL SAFE AS
$$ SELECT encode(sha256(convert_to(said, 'UTF8')), 'hex') $$;

-- A column that is added to a table of records later is null in every row that was there before. What is null is left
-- out, so those rows still give the digest they had when they were written. Nothing can be hidden in this: a value put
-- in the place of a null changes the text, and so does a null in the place of a value.
CREATE FUNCTION canonical_row(r jsonb) RETURNS text LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT '{' || string_agg(to_json(key)::text || ':' || to_json(value)::text, ',' ORDER BY key COLLATE "C") || '}'
  FROM jsonb_each_text(r) WHERE value IS NOT NULL
$$;

CREATE FUNCTION note_record() RETURNS trigger LANGUAGE plpgsql SET timezone = 'UTC' AS $$
BEGIN
  PERFORM set_config('larderbook.noted',
    coalesce(current_setting('larderbook.noted', true), '') ||
    '{"digest":"' || sha256_hex(canonical_row(to_jsonb(new))) || '","id":"' || new.id || '","table":"' || tg_table_name || '"},',
    true);
  RETURN NULL;
END $$;

CREATE FUNCTION refuse_unledgered() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF coalesce(current_setting('larderbook.noted', true), '') <> '' THEN
    RAISE EXCEPTION 'A record was added to % without a ledger entry', tg_table_name USING ERRCODE = 'integrity_constraint_violation';
  END IF;
  RETURN NULL;
END $$;

DO $$
DECLARE t text;
BEGIN
  FOR t IN SELECT table_name FROM information_schema.tables
           WHERE table_schema = 'public' AND table_type = 'BASE TABLE'
             AND table_name NOT LIKE 'sign\_in%' AND table_name NOT LIKE '\_prisma%'
             AND table_name NOT IN ('ledger_entry', 'acknowledgement')
  LOOP
    EXECUTE format('CREATE TRIGGER note_record AFTER INSERT ON %I FOR EACH ROW EXECUTE FUNCTION note_record()', t);
    EXECUTE format('CREATE CONSTRAINT TRIGGER refuse_unledgered AFTER INSERT ON %I
      DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION refuse_unledgered()', t);
  END LOOP;
END $$;

-- Opens a write: names the establishment, lets its writes happen one after the other (what is left of a receipt, the
-- next number, the head of the chain are read without a race), and returns the answer given if this id came before.
CREATE FUNCTION begin_write(p_establishment uuid, p_id uuid)
RETURNS TABLE (kind text, request_digest text, reply jsonb) LANGUAGE plpgsql AS $$
BEGIN
  PERFORM set_config('larderbook.establishment', p_establishment::text, true);
  PERFORM pg_advisory_xact_lock(hashtextextended(p_establishment::text, 0));
  RETURN QUERY SELECT a.kind, a.request_digest, a.reply FROM acknowledgement a
               WHERE a.establishment_id = p_establishment AND a.id = p_id;
END $$;

-- Closes a write. SECURITY DEFINER: the API's role has no right of its own to add a line to the chain.
CREATE FUNCTION append_entry(p_id uuid, p_at timestamptz, p_person uuid, p_station text, p_kind text, p_subject uuid,
                             p_request_digest text, p_reply jsonb)
RETURNS TABLE (seq bigint, hash text) LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
  v_establishment uuid := current_establishment();
  v_records text := '[' || rtrim(coalesce(current_setting('larderbook.noted', true), ''), ',') || ']';
  v_digest text := sha256_hex(v_records);
  v_seq bigint;
  v_previous text;
  v_hash text;
BEGIN
  IF v_establishment IS NULL THEN
    RAISE EXCEPTION 'A ledger entry needs its establishment';
  END IF;
  SELECT e.seq, e.hash INTO v_seq, v_previous FROM ledger_entry e
    WHERE e.establishment_id = v_establishment ORDER BY e.seq DESC LIMIT 1;
  v_seq := coalesce(v_seq, 0) + 1;
  v_previous := coalesce(v_previous, repeat('0', 64));
  v_hash := sha256_hex(v_previous ||
    '{"at":"' || to_char(p_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') || '","digest":"' || v_digest ||
    '","establishment":"' || v_establishment || '","kind":' || to_json(p_kind) || ',"person":"' || p_person ||
    '","seq":' || v_seq || ',"station":' || to_json(p_station) || ',"subject":"' || p_subject || '"}');
  INSERT INTO ledger_entry (establishment_id, seq, at, person, station, kind, subject, records, digest, previous_hash, hash)
    VALUES (v_establishment, v_seq, p_at, p_person, p_station, p_kind, p_subject, v_records, v_digest, v_previous, v_hash);
  INSERT INTO acknowledgement (establishment_id, id, kind, request_digest, reply, seq)
    VALUES (v_establishment, p_id, p_kind, p_request_digest, p_reply, v_seq);
  PERFORM set_config('larderbook.noted', '', true);
  RETURN QUERY SELECT v_seq, v_hash;
END $$;

-- ═══ Who is asking ════════════════════════════════════════════════════════════════════════════════════════════════
-- One statement for every request: the session's person, what they may do now, and their establishment.

CREATE FUNCTION signed_in(p_token text, p_now timestamptz)
RETURNS TABLE (person_id uuid, name text, user_name text, roles text[], establishment_id uuid, demonstration boolean,
               establishment_name text, establishment_number text, address text, time_zone text, units text, paper text,
               lot_code_pattern text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
  SELECT p.id, p.name, p.user_name, g.roles, e.id, e.demonstration, d.name, d.number, d.address, d.time_zone, d.units, d.paper,
         d.lot_code_pattern
  FROM sign_in_session s
  JOIN person p ON p.establishment_id = s.establishment_id AND p.id = s.user_id
  JOIN establishment e ON e.id = s.establishment_id
  CROSS JOIN LATERAL (SELECT r.roles FROM role_grant r
    WHERE r.establishment_id = s.establishment_id AND r.person_id = s.user_id ORDER BY r.recorded_at DESC, r.id DESC LIMIT 1) g
  CROSS JOIN LATERAL (SELECT x.* FROM establishment_details x
    WHERE x.establishment_id = s.establishment_id ORDER BY x.recorded_at DESC, x.id DESC LIMIT 1) d
  WHERE s.token = p_token AND s.expires_at > p_now AND cardinality(g.roles) > 0
$$;

-- Is there a shop yet (the demonstration does not count), and is the demonstration open?
CREATE FUNCTION first_run() RETURNS TABLE (has_shop boolean, has_demonstration boolean)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
  SELECT EXISTS (SELECT FROM establishment WHERE NOT demonstration), EXISTS (SELECT FROM establishment WHERE demonstration)
$$;

REVOKE ALL ON ALL FUNCTIONS IN SCHEMA public FROM PUBLIC;
GRANT EXECUTE ON ALL FUNCTIONS IN SCHEMA public TO larderbook_api;
