-- The record book: its tables, what can never be true of them, the rows that count, the rights of the API, row security and
-- the ledger.

-- ═══ Who may ask ══════════════════════════════════════════════════════════════════════════════════════════════════
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

-- Every transaction names its establishment with set_config('larderbook.establishment', …, true). Without it nothing
-- is visible and nothing can be added.
CREATE FUNCTION current_establishment() RETURNS uuid LANGUAGE sql STABLE PARALLEL SAFE AS
$$ SELECT nullif(current_setting('larderbook.establishment', true), '')::uuid $$;

-- The line of the ledger that this write will close. What begin_write says is checked by note_records.
CREATE FUNCTION current_line() RETURNS bigint LANGUAGE sql STABLE PARALLEL SAFE AS
$$ SELECT nullif(current_setting('larderbook.line', true), '')::bigint $$;

-- Signing in happens before the establishment is known; the connections that do it say so.
CREATE FUNCTION at_the_sign_in_door() RETURNS boolean LANGUAGE sql STABLE PARALLEL SAFE AS
$$ SELECT coalesce(current_setting('larderbook.door', true), '') = 'sign-in' $$;

-- ═══ Tables ═══════════════════════════════════════════════════════════════════════════════════════════════════════

CREATE TABLE "establishment" (
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "demonstration" BOOLEAN NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "establishment_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "establishment_details" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "name" TEXT NOT NULL,
    "number" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "time_zone" TEXT NOT NULL,
    "units" TEXT NOT NULL,
    "paper" TEXT NOT NULL,
    "lot_code_pattern" TEXT NOT NULL,
    "jurisdiction" TEXT,
    "place" TEXT,
    "limit_set" TEXT,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "establishment_details_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "person" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "name" TEXT NOT NULL,
    "user_name" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "person_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "role_grant" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "person_id" UUID NOT NULL,
    "roles" TEXT[],
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "role_grant_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "credential" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "person_id" UUID NOT NULL,
    "digest" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "credential_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "sign_in" (
    "id" UUID NOT NULL,
    "establishment_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "email_verified" BOOLEAN NOT NULL DEFAULT false,
    "image" TEXT,
    "username" TEXT NOT NULL,
    "display_username" TEXT,
    "language" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updated_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "sign_in_pkey" PRIMARY KEY ("id")
);

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

CREATE TABLE "sign_in_attempt" (
    "id" UUID NOT NULL,
    "establishment_id" UUID,
    "user_name" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "sign_in_attempt_pkey" PRIMARY KEY ("id")
);

CREATE TABLE "supplier" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "name" TEXT NOT NULL,
    "establishment_number" TEXT,
    "address" TEXT NOT NULL,
    "contact" TEXT NOT NULL,
    "amends_id" UUID,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "supplier_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "item" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "species" TEXT,
    "substance" TEXT,
    "fraction_percent" DECIMAL(9,4),
    "salt_percent" DECIMAL(7,4),
    "water_percent" DECIMAL(7,4),
    "allergens" TEXT[],
    "receiving_limit" JSONB,
    "amends_id" UUID,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "item_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "receipt" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
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
    "amends_id" UUID,
    "first_id" UUID,
    "amend_reason" TEXT,
    "voided" BOOLEAN,

    CONSTRAINT "receipt_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "product" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "name" TEXT NOT NULL,
    "code" TEXT NOT NULL,
    "process" TEXT NOT NULL,
    "species" TEXT NOT NULL,
    "product_class" TEXT,
    "storage" TEXT NOT NULL,
    "use_by_days" INTEGER NOT NULL,
    "amends_id" UUID,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "product_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "formula" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "product_id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "expected_yield_percent" DECIMAL(7,4) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "formula_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "formula_line" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "formula_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "part" TEXT NOT NULL,
    "item_id" UUID NOT NULL,
    "percent" DECIMAL(9,4) NOT NULL,

    CONSTRAINT "formula_line_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "plan" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "product_id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "content" JSONB NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "plan_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "plan_adoption" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "plan_id" UUID NOT NULL,
    "statement" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "plan_adoption_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "own_limit_set" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "title" TEXT NOT NULL,
    "edition" TEXT NOT NULL,
    "valid_from" DATE NOT NULL,
    "replaces_id" UUID,
    "rows" JSONB NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "own_limit_set_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "lot" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
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

CREATE TABLE "lot_input" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
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
    "voided" BOOLEAN,
    "flags" TEXT[],
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "lot_input_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "weighing" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
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
    "voided" BOOLEAN,
    "flags" TEXT[],
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "weighing_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "removal" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
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
    "amends_id" UUID,
    "first_id" UUID,
    "amend_reason" TEXT,
    "voided" BOOLEAN,

    CONSTRAINT "removal_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "instrument" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "unit" TEXT NOT NULL,
    "tolerance" DECIMAL(9,3) NOT NULL,
    "check_every_days" INTEGER NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "instrument_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "calibration" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
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
    "amends_id" UUID,
    "first_id" UUID,
    "amend_reason" TEXT,
    "voided" BOOLEAN,

    CONSTRAINT "calibration_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "reading" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "lot_id" UUID NOT NULL,
    "control_point_id" UUID NOT NULL,
    "plan_id" UUID NOT NULL,
    "probe" TEXT NOT NULL,
    "instrument_id" UUID,
    "value" DECIMAL(9,3),
    "unit" TEXT,
    "answer" BOOLEAN,
    "seen" TEXT NOT NULL,
    "humidity" JSONB,
    "judged" JSONB NOT NULL,
    "amends_id" UUID,
    "reason" TEXT NOT NULL,
    "voided" BOOLEAN,
    "flags" TEXT[],
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "reading_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "clarification" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
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

CREATE TABLE "clarified_reading" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "clarification_id" UUID NOT NULL,
    "reading_id" UUID NOT NULL,

    CONSTRAINT "clarified_reading_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "stage_end" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "lot_id" UUID NOT NULL,
    "control_point_id" UUID NOT NULL,
    "judged" JSONB NOT NULL,
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,
    "amends_id" UUID,
    "first_id" UUID,
    "amend_reason" TEXT,
    "voided" BOOLEAN,

    CONSTRAINT "stage_end_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "deviation" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "number" INTEGER NOT NULL,
    "dedupe_key" TEXT NOT NULL,
    "lot_id" UUID,
    "receipt_id" UUID,
    "control_point_id" UUID,
    "limit_id" UUID,
    "subject_id" UUID,
    "description" TEXT,
    "substance" TEXT,
    "limit" JSONB,
    "verdict" JSONB,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "deviation_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "corrective_action" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "deviation_id" UUID NOT NULL,
    "form" TEXT NOT NULL,
    "parts" JSONB NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,
    "amends_id" UUID,
    "first_id" UUID,
    "amend_reason" TEXT,
    "voided" BOOLEAN,

    CONSTRAINT "corrective_action_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "disposition" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
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
    "amends_id" UUID,
    "first_id" UUID,
    "amend_reason" TEXT,
    "voided" BOOLEAN,

    CONSTRAINT "disposition_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "decided_deviation" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "disposition_id" UUID NOT NULL,
    "deviation_id" UUID NOT NULL,

    CONSTRAINT "decided_deviation_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "destruction" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "disposition_id" UUID NOT NULL,
    "method" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,
    "amends_id" UUID,
    "first_id" UUID,
    "amend_reason" TEXT,
    "voided" BOOLEAN,

    CONSTRAINT "destruction_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "deviation_closing" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "deviation_id" UUID NOT NULL,
    "note" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "deviation_closing_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "closing_taken_back" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "closing_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "closing_taken_back_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "review" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "lot_id" UUID NOT NULL,
    "findings" JSONB NOT NULL,
    "statement" TEXT NOT NULL,
    "sole_worker" BOOLEAN NOT NULL,
    "rules_version" INTEGER,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "review_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "review_taken_back" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "review_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "review_taken_back_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "packing" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
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
    "amends_id" UUID,
    "first_id" UUID,
    "amend_reason" TEXT,
    "voided" BOOLEAN,

    CONSTRAINT "packing_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "customer" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "name" TEXT NOT NULL,
    "address" TEXT NOT NULL,
    "contact" TEXT NOT NULL,
    "amends_id" UUID,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,

    CONSTRAINT "customer_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "shipment" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "number" INTEGER NOT NULL,
    "customer_id" UUID NOT NULL,
    "document" TEXT NOT NULL,
    "station" TEXT NOT NULL,
    "taken_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_at" TIMESTAMPTZ(3) NOT NULL,
    "recorded_by" UUID NOT NULL,
    "amends_id" UUID,
    "first_id" UUID,
    "amend_reason" TEXT,
    "voided" BOOLEAN,

    CONSTRAINT "shipment_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "shipment_line" (
    "establishment_id" UUID NOT NULL,
    "id" UUID NOT NULL,
    "seq" BIGINT NOT NULL DEFAULT current_line(),
    "shipment_id" UUID NOT NULL,
    "packing_id" UUID NOT NULL,
    "count" INTEGER NOT NULL,

    CONSTRAINT "shipment_line_pkey" PRIMARY KEY ("establishment_id","id")
);

CREATE TABLE "ledger_entry" (
    "establishment_id" UUID NOT NULL,
    "seq" BIGINT NOT NULL,
    "id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "person" UUID NOT NULL,
    "station" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "subject" UUID NOT NULL,
    "request_digest" BYTEA NOT NULL,
    "reply" TEXT NOT NULL,
    "digest" BYTEA NOT NULL,
    "previous_hash" BYTEA NOT NULL,
    "hash" BYTEA NOT NULL,

    CONSTRAINT "ledger_entry_pkey" PRIMARY KEY ("establishment_id","seq")
);

CREATE TABLE "ledger_text" (
    "establishment_id" UUID NOT NULL,
    "seq" BIGINT NOT NULL,
    "place" INTEGER NOT NULL,
    "records" TEXT NOT NULL,

    CONSTRAINT "ledger_text_pkey" PRIMARY KEY ("establishment_id","seq","place")
);

CREATE INDEX "role_grant_establishment_id_person_id_seq_idx" ON "role_grant"("establishment_id", "person_id", "seq");
CREATE INDEX "credential_establishment_id_person_id_seq_idx" ON "credential"("establishment_id", "person_id", "seq");
CREATE UNIQUE INDEX "sign_in_email_key" ON "sign_in"("email");
CREATE UNIQUE INDEX "sign_in_username_key" ON "sign_in"("username");
CREATE INDEX "sign_in_establishment_id_idx" ON "sign_in"("establishment_id");
CREATE UNIQUE INDEX "sign_in_session_token_key" ON "sign_in_session"("token");
CREATE INDEX "sign_in_session_user_id_idx" ON "sign_in_session"("user_id");
CREATE INDEX "sign_in_account_user_id_idx" ON "sign_in_account"("user_id");
CREATE INDEX "sign_in_verification_identifier_idx" ON "sign_in_verification"("identifier");
CREATE INDEX "sign_in_attempt_user_name_at_idx" ON "sign_in_attempt"("user_name", "at");
CREATE UNIQUE INDEX "supplier_establishment_id_amends_id_key" ON "supplier"("establishment_id", "amends_id");
CREATE UNIQUE INDEX "item_establishment_id_amends_id_key" ON "item"("establishment_id", "amends_id");
CREATE INDEX "receipt_establishment_id_supplier_lot_idx" ON "receipt"("establishment_id", "supplier_lot");
CREATE INDEX "receipt_establishment_id_item_id_taken_at_idx" ON "receipt"("establishment_id", "item_id", "taken_at");
CREATE UNIQUE INDEX "receipt_establishment_id_amends_id_key" ON "receipt"("establishment_id", "amends_id");
CREATE UNIQUE INDEX "product_establishment_id_amends_id_key" ON "product"("establishment_id", "amends_id");
CREATE UNIQUE INDEX "formula_establishment_id_product_id_version_key" ON "formula"("establishment_id", "product_id", "version");
CREATE UNIQUE INDEX "formula_line_establishment_id_formula_id_position_key" ON "formula_line"("establishment_id", "formula_id", "position");
CREATE UNIQUE INDEX "plan_establishment_id_product_id_version_key" ON "plan"("establishment_id", "product_id", "version");
CREATE UNIQUE INDEX "plan_adoption_establishment_id_plan_id_key" ON "plan_adoption"("establishment_id", "plan_id");
CREATE UNIQUE INDEX "own_limit_set_establishment_id_replaces_id_key" ON "own_limit_set"("establishment_id", "replaces_id");
CREATE INDEX "lot_establishment_id_taken_at_idx" ON "lot"("establishment_id", "taken_at");
CREATE UNIQUE INDEX "lot_establishment_id_code_key" ON "lot"("establishment_id", "code");
CREATE INDEX "lot_input_establishment_id_lot_id_idx" ON "lot_input"("establishment_id", "lot_id");
CREATE INDEX "lot_input_establishment_id_receipt_id_idx" ON "lot_input"("establishment_id", "receipt_id");
CREATE INDEX "lot_input_establishment_id_source_lot_id_idx" ON "lot_input"("establishment_id", "source_lot_id");
CREATE UNIQUE INDEX "lot_input_establishment_id_amends_id_key" ON "lot_input"("establishment_id", "amends_id");
CREATE INDEX "weighing_establishment_id_lot_id_idx" ON "weighing"("establishment_id", "lot_id");
CREATE INDEX "weighing_establishment_id_receipt_id_idx" ON "weighing"("establishment_id", "receipt_id");
CREATE UNIQUE INDEX "weighing_establishment_id_amends_id_key" ON "weighing"("establishment_id", "amends_id");
CREATE INDEX "removal_establishment_id_lot_id_idx" ON "removal"("establishment_id", "lot_id");
CREATE INDEX "removal_establishment_id_receipt_id_idx" ON "removal"("establishment_id", "receipt_id");
CREATE UNIQUE INDEX "removal_establishment_id_amends_id_key" ON "removal"("establishment_id", "amends_id");
CREATE INDEX "calibration_establishment_id_instrument_id_taken_at_idx" ON "calibration"("establishment_id", "instrument_id", "taken_at");
CREATE UNIQUE INDEX "calibration_establishment_id_amends_id_key" ON "calibration"("establishment_id", "amends_id");
CREATE INDEX "reading_establishment_id_lot_id_control_point_id_taken_at_idx" ON "reading"("establishment_id", "lot_id", "control_point_id", "taken_at");
CREATE INDEX "reading_establishment_id_control_point_id_taken_at_idx" ON "reading"("establishment_id", "control_point_id", "taken_at");
CREATE UNIQUE INDEX "reading_establishment_id_amends_id_key" ON "reading"("establishment_id", "amends_id");
CREATE INDEX "clarification_establishment_id_lot_id_control_point_id_idx" ON "clarification"("establishment_id", "lot_id", "control_point_id");
CREATE INDEX "clarified_reading_establishment_id_clarification_id_idx" ON "clarified_reading"("establishment_id", "clarification_id");
CREATE UNIQUE INDEX "clarified_reading_establishment_id_reading_id_clarification_key" ON "clarified_reading"("establishment_id", "reading_id", "clarification_id");
CREATE UNIQUE INDEX "stage_end_establishment_id_amends_id_key" ON "stage_end"("establishment_id", "amends_id");
CREATE INDEX "deviation_establishment_id_lot_id_idx" ON "deviation"("establishment_id", "lot_id");
CREATE INDEX "deviation_establishment_id_receipt_id_idx" ON "deviation"("establishment_id", "receipt_id");
CREATE UNIQUE INDEX "deviation_establishment_id_dedupe_key_key" ON "deviation"("establishment_id", "dedupe_key");
CREATE UNIQUE INDEX "deviation_establishment_id_number_key" ON "deviation"("establishment_id", "number");
CREATE INDEX "corrective_action_establishment_id_deviation_id_idx" ON "corrective_action"("establishment_id", "deviation_id");
CREATE UNIQUE INDEX "corrective_action_establishment_id_amends_id_key" ON "corrective_action"("establishment_id", "amends_id");
CREATE INDEX "disposition_establishment_id_lot_id_idx" ON "disposition"("establishment_id", "lot_id");
CREATE INDEX "disposition_establishment_id_receipt_id_idx" ON "disposition"("establishment_id", "receipt_id");
CREATE UNIQUE INDEX "disposition_establishment_id_amends_id_key" ON "disposition"("establishment_id", "amends_id");
CREATE INDEX "decided_deviation_establishment_id_disposition_id_idx" ON "decided_deviation"("establishment_id", "disposition_id");
CREATE UNIQUE INDEX "decided_deviation_establishment_id_deviation_id_disposition_key" ON "decided_deviation"("establishment_id", "deviation_id", "disposition_id");
CREATE INDEX "destruction_establishment_id_disposition_id_idx" ON "destruction"("establishment_id", "disposition_id");
CREATE UNIQUE INDEX "destruction_establishment_id_amends_id_key" ON "destruction"("establishment_id", "amends_id");
CREATE INDEX "deviation_closing_establishment_id_deviation_id_idx" ON "deviation_closing"("establishment_id", "deviation_id");
CREATE UNIQUE INDEX "closing_taken_back_establishment_id_closing_id_key" ON "closing_taken_back"("establishment_id", "closing_id");
CREATE INDEX "review_establishment_id_lot_id_seq_idx" ON "review"("establishment_id", "lot_id", "seq");
CREATE UNIQUE INDEX "review_taken_back_establishment_id_review_id_key" ON "review_taken_back"("establishment_id", "review_id");
CREATE INDEX "packing_establishment_id_lot_id_idx" ON "packing"("establishment_id", "lot_id");
CREATE UNIQUE INDEX "packing_establishment_id_amends_id_key" ON "packing"("establishment_id", "amends_id");
CREATE UNIQUE INDEX "customer_establishment_id_amends_id_key" ON "customer"("establishment_id", "amends_id");
CREATE INDEX "shipment_establishment_id_customer_id_idx" ON "shipment"("establishment_id", "customer_id");
CREATE UNIQUE INDEX "shipment_establishment_id_amends_id_key" ON "shipment"("establishment_id", "amends_id");
CREATE INDEX "shipment_line_establishment_id_packing_id_idx" ON "shipment_line"("establishment_id", "packing_id");
CREATE INDEX "shipment_line_establishment_id_shipment_id_idx" ON "shipment_line"("establishment_id", "shipment_id");
CREATE UNIQUE INDEX "ledger_entry_establishment_id_id_key" ON "ledger_entry"("establishment_id", "id");

ALTER TABLE "sign_in_session" ADD CONSTRAINT "sign_in_session_user_id_fkey" FOREIGN KEY ("user_id") REFERENCES "sign_in"("id") ON DELETE CASCADE;
ALTER TABLE "sign_in_account" ADD CONSTRAINT "sign_in_account_user_id_fkey" FOREIGN KEY ("user_id") REFERENCES "sign_in"("id") ON DELETE CASCADE;
ALTER TABLE "ledger_text" ADD CONSTRAINT "ledger_text_establishment_id_seq_fkey" FOREIGN KEY ("establishment_id", "seq") REFERENCES "ledger_entry"("establishment_id", "seq") DEFERRABLE INITIALLY DEFERRED;

-- ═══ What can never be true ═══════════════════════════════════════════════════════════════════════════════════════

ALTER TABLE receipt ADD CHECK (grams > 0), ADD CHECK (decision IN ('accepted', 'refused'));
ALTER TABLE lot_input ADD CHECK (grams > 0 AND trimmed_grams > 0 AND trimmed_grams <= grams),
  ADD CHECK ((receipt_id IS NULL) <> (source_lot_id IS NULL));
ALTER TABLE weighing ADD CHECK (grams > 0);
ALTER TABLE removal ADD CHECK (grams > 0), ADD CHECK ((lot_id IS NULL) <> (receipt_id IS NULL));
ALTER TABLE reading ADD CHECK ((value IS NULL) <> (answer IS NULL)), ADD CHECK ((value IS NULL) = (unit IS NULL));
ALTER TABLE clarification ADD CHECK (word IN ('not of the core', 'time is right', 'as recorded')), ADD CHECK (reason <> '');
ALTER TABLE packing ADD CHECK (count > 0 AND net_grams > 0);
ALTER TABLE shipment_line ADD CHECK (count > 0);
ALTER TABLE formula_line ADD CHECK (percent > 0), ADD CHECK (part IN ('meat', 'ingredient'));
ALTER TABLE own_limit_set ADD CHECK (replaces_id <> id), ADD CHECK (jsonb_array_length(rows) > 0);
ALTER TABLE deviation ADD CHECK (description IS NOT NULL OR verdict IS NOT NULL OR receipt_id IS NOT NULL),
  ADD CHECK (substance IN ('sodium nitrite', 'sodium nitrate', 'sodium erythorbate', 'phosphate'));
ALTER TABLE corrective_action ADD CHECK (form IN ('critical', 'unforeseen', 'prerequisite'));
ALTER TABLE disposition ADD CHECK (decision IN ('release', 'rework', 'condemn', 'return', 'recall')),
  ADD CHECK ((lot_id IS NULL) <> (receipt_id IS NULL)), ADD CHECK (grams > 0),
  ADD CHECK ((decision = 'release') = (basis IS NOT NULL)),
  ADD CHECK (decision <> 'return' OR lot_id IS NULL), ADD CHECK (decision NOT IN ('rework', 'recall') OR receipt_id IS NULL);
ALTER TABLE review ADD CHECK (rules_version > 0);
ALTER TABLE ledger_entry ADD CHECK (seq > 0), ADD CHECK (isfinite(at)),
  ADD CHECK (octet_length(request_digest) = 32 AND octet_length(digest) = 32 AND octet_length(previous_hash) = 32 AND octet_length(hash) = 32);
ALTER TABLE closing_taken_back ADD CHECK (reason <> '');
ALTER TABLE review_taken_back ADD CHECK (reason <> '');

-- A number is given once: to the first row. The rows that correct it repeat it.
CREATE UNIQUE INDEX "receipt_establishment_id_code_key" ON "receipt" ("establishment_id", "code") WHERE "amends_id" IS NULL;
CREATE UNIQUE INDEX "packing_establishment_id_code_key" ON "packing" ("establishment_id", "code") WHERE "amends_id" IS NULL;
CREATE UNIQUE INDEX "shipment_establishment_id_number_key" ON "shipment" ("establishment_id", "number") WHERE "amends_id" IS NULL;
CREATE UNIQUE INDEX "stage_end_establishment_id_lot_id_control_point_id_key" ON "stage_end" ("establishment_id", "lot_id", "control_point_id")
  WHERE "amends_id" IS NULL;

-- ═══ The ledger ═══════════════════════════════════════════════════════════════════════════════════════════════════
-- One line per write. Each statement that adds records keeps, as one text of the line to come, what it added; in the same
-- transaction append_entry closes the texts into the line. A record without its line cannot commit: its text names one.
--
--   text         = canonical JSON (RFC 8785) of [{"id","row","table"}, …]; `row` is a flat object of the columns that are
--                  not null, as PostgreSQL prints them in UTC, without those that the line says itself (establishment, seq)
--   entry digest = SHA-256 of the SHA-256 (32 bytes each) of its texts, one after the other
--   entry hash   = SHA-256 of the previous hash in hex (64 zeros before the first) followed by the canonical JSON of
--                  {"answer","at","digest","establishment","id","kind","person","request","seq","station","subject"};
--                  "answer" is the SHA-256 of the reply, "request" that of what was asked

CREATE FUNCTION sha256_of(said text) RETURNS bytea LANGUAGE sql IMMUTABLE PARALLEL SAFE AS
$$ SELECT sha256(convert_to(said, 'UTF8')) $$;

CREATE FUNCTION canonical_row(r jsonb) RETURNS text LANGUAGE sql IMMUTABLE PARALLEL SAFE AS $$
  SELECT '{' || coalesce(string_agg(to_json(key)::text || ':' || to_json(value)::text, ',' ORDER BY key COLLATE "C"), '') || '}'
  FROM jsonb_each_text(r) WHERE value IS NOT NULL
$$;

CREATE FUNCTION next_line(p_establishment uuid) RETURNS bigint LANGUAGE sql STABLE AS
$$ SELECT coalesce(max(seq), 0) + 1 FROM ledger_entry WHERE establishment_id = p_establishment $$;

-- SECURITY DEFINER: the API's role can neither write a text itself nor take one back.
CREATE FUNCTION note_records() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER
SET search_path = public, pg_temp SET timezone = 'UTC' AS $$
DECLARE
  v_added record;
BEGIN
  FOR v_added IN
    SELECT coalesce(r ->> 'establishment_id', r ->> 'id')::uuid AS establishment, (r ->> 'seq')::bigint AS line,
      '[' || string_agg('{"id":' || to_json(r ->> 'id') || ',"row":' || canonical_row(r - '{establishment_id,id,seq}'::text[]) ||
        ',"table":' || to_json(tg_table_name::text) || '}', ',') || ']' AS records
    FROM (SELECT to_jsonb(a) AS r FROM added a) rows GROUP BY 1, 2
  LOOP
    IF v_added.line <> next_line(v_added.establishment) THEN
      RAISE EXCEPTION 'A record was added to % under line %, which is not the next', tg_table_name, v_added.line
        USING ERRCODE = 'integrity_constraint_violation';
    END IF;
    INSERT INTO ledger_text (establishment_id, seq, place, records)
      SELECT v_added.establishment, v_added.line, count(*), v_added.records FROM ledger_text t
      WHERE t.establishment_id = v_added.establishment AND t.seq = v_added.line;
  END LOOP;
  RETURN NULL;
END $$;

-- Opens a write: names the establishment and the line, lets its writes happen one after the other (what is left of a
-- receipt, the next number, the head of the chain are read without a race), and returns the answer given if this id came
-- before.
CREATE FUNCTION begin_write(p_establishment uuid, p_id uuid)
RETURNS TABLE (kind text, request text, reply text) LANGUAGE plpgsql AS $$
BEGIN
  PERFORM set_config('larderbook.establishment', p_establishment::text, true);
  PERFORM pg_advisory_xact_lock(hashtextextended(p_establishment::text, 0));
  PERFORM set_config('larderbook.line', next_line(p_establishment)::text, true);
  RETURN QUERY SELECT e.kind, encode(e.request_digest, 'hex'), e.reply FROM ledger_entry e
               WHERE e.establishment_id = p_establishment AND e.id = p_id;
END $$;

-- Closes a write. SECURITY DEFINER: the API's role has no right of its own to add a line to the chain.
CREATE FUNCTION append_entry(p_id uuid, p_at timestamptz, p_person uuid, p_station text, p_kind text, p_subject uuid,
                             p_request text, p_reply text)
RETURNS TABLE (seq bigint, hash text) LANGUAGE plpgsql SECURITY DEFINER SET search_path = public, pg_temp AS $$
DECLARE
  v_establishment uuid := current_establishment();
  v_line bigint;
  v_previous bytea;
  v_digest bytea;
  v_hash bytea;
BEGIN
  IF v_establishment IS NULL THEN
    RAISE EXCEPTION 'A ledger entry needs its establishment';
  END IF;
  -- what is hashed is what is kept: milliseconds, and a digest in lower case
  p_at := date_trunc('milliseconds', p_at);
  p_request := encode(decode(p_request, 'hex'), 'hex');
  SELECT e.seq, e.hash INTO v_line, v_previous FROM ledger_entry e
    WHERE e.establishment_id = v_establishment ORDER BY e.seq DESC LIMIT 1;
  v_line := coalesce(v_line, 0) + 1;
  v_previous := coalesce(v_previous, decode(repeat('0', 64), 'hex'));
  SELECT sha256(coalesce(string_agg(sha256_of(t.records), '' ORDER BY t.place), '')) INTO v_digest FROM ledger_text t
    WHERE t.establishment_id = v_establishment AND t.seq = v_line;
  v_hash := sha256_of(encode(v_previous, 'hex') ||
    '{"answer":"' || encode(sha256_of(p_reply), 'hex') ||
    '","at":"' || to_char(p_at AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"') || '","digest":"' || encode(v_digest, 'hex') ||
    '","establishment":"' || v_establishment || '","id":"' || p_id || '","kind":' || to_json(p_kind) ||
    ',"person":"' || p_person || '","request":"' || p_request || '","seq":' || v_line ||
    ',"station":' || to_json(p_station) || ',"subject":"' || p_subject || '"}');
  INSERT INTO ledger_entry (establishment_id, seq, id, at, person, station, kind, subject, request_digest, reply, digest,
      previous_hash, hash)
    VALUES (v_establishment, v_line, p_id, p_at, p_person, p_station, p_kind, p_subject, decode(p_request, 'hex'), p_reply,
      v_digest, v_previous, v_hash);
  RETURN QUERY SELECT v_line, encode(v_hash, 'hex');
END $$;

-- ═══ A table of records ═══════════════════════════════════════════════════════════════════════════════════════════
-- Makes one of a table whose columns stand: seen by its establishment alone, only ever added to, noted in the ledger, and
-- every id in it one of a row there is. What a correction amends is a row of its own table; a thing keeps the id of its
-- first row. Ids of a plan's control points and limits, and of the record that a deviation is about, are of many kinds.

CREATE FUNCTION record_table(p_table regclass) RETURNS void LANGUAGE plpgsql AS $$
DECLARE
  v_own text := CASE p_table::text WHEN 'establishment' THEN 'id' ELSE 'establishment_id' END;
  v_column text;
  v_of text;
BEGIN
  EXECUTE format('ALTER TABLE %s ENABLE ROW LEVEL SECURITY', p_table);
  EXECUTE format('CREATE POLICY own_establishment ON %1$s USING (%2$I = current_establishment())
    WITH CHECK (%2$I = current_establishment())', p_table, v_own);
  EXECUTE format('GRANT SELECT, INSERT ON %s TO larderbook_api', p_table);
  EXECUTE format('CREATE TRIGGER note_records AFTER INSERT ON %s REFERENCING NEW TABLE AS added
    FOR EACH STATEMENT EXECUTE FUNCTION note_records()', p_table);

  FOR v_column IN SELECT attname FROM pg_attribute WHERE attrelid = p_table AND attnum > 0 AND NOT attisdropped
    AND (attname LIKE '%\_id' OR attname = 'recorded_by')
    AND attname NOT IN ('establishment_id', 'control_point_id', 'limit_id', 'subject_id') ORDER BY attnum
  LOOP
    v_of := CASE v_column
      WHEN 'amends_id' THEN p_table::text WHEN 'first_id' THEN p_table::text WHEN 'replaces_id' THEN p_table::text
      WHEN 'recorded_by' THEN 'person' WHEN 'source_lot_id' THEN 'lot' WHEN 'closing_id' THEN 'deviation_closing'
      ELSE left(v_column, -3) END;
    EXECUTE format('ALTER TABLE %s ADD FOREIGN KEY (establishment_id, %I) REFERENCES %I (establishment_id, id)',
      p_table, v_column, v_of);
    IF v_column = 'first_id' THEN
      EXECUTE format('ALTER TABLE %s ADD CHECK ((amends_id IS NULL) = (first_id IS NULL)),
        ADD CHECK ((amends_id IS NULL) = (amend_reason IS NULL))', p_table);
      EXECUTE format('CREATE INDEX ON %s (establishment_id, (coalesce(first_id, id)))', p_table);
    END IF;
  END LOOP;
  IF v_own <> 'id' THEN
    EXECUTE format('ALTER TABLE %s ADD FOREIGN KEY (establishment_id) REFERENCES establishment (id)', p_table);
  END IF;
  FOR v_column IN SELECT attname FROM pg_attribute WHERE attrelid = p_table AND attnum > 0 AND NOT attisdropped
    AND atttypid = 'jsonb'::regtype LOOP
    EXECUTE format('ALTER TABLE %s ADD CHECK (jsonb_typeof(%I) <> ''null'')', p_table, v_column); -- null would be told from it by nobody
  END LOOP;
  IF EXISTS (SELECT FROM pg_attribute WHERE attrelid = p_table AND attname = 'voided') THEN
    EXECUTE format('ALTER TABLE %s ADD CHECK (voided IS NOT TRUE OR amends_id IS NOT NULL)', p_table);
  END IF;
END $$;

SELECT record_table('establishment');
SELECT record_table('establishment_details');
SELECT record_table('person');
SELECT record_table('role_grant');
SELECT record_table('credential');
SELECT record_table('supplier');
SELECT record_table('item');
SELECT record_table('receipt');
SELECT record_table('product');
SELECT record_table('formula');
SELECT record_table('formula_line');
SELECT record_table('plan');
SELECT record_table('plan_adoption');
SELECT record_table('own_limit_set');
SELECT record_table('lot');
SELECT record_table('lot_input');
SELECT record_table('weighing');
SELECT record_table('removal');
SELECT record_table('instrument');
SELECT record_table('calibration');
SELECT record_table('reading');
SELECT record_table('clarification');
SELECT record_table('clarified_reading');
SELECT record_table('stage_end');
SELECT record_table('deviation');
SELECT record_table('corrective_action');
SELECT record_table('disposition');
SELECT record_table('decided_deviation');
SELECT record_table('destruction');
SELECT record_table('deviation_closing');
SELECT record_table('closing_taken_back');
SELECT record_table('review');
SELECT record_table('review_taken_back');
SELECT record_table('packing');
SELECT record_table('customer');
SELECT record_table('shipment');
SELECT record_table('shipment_line');

-- The chain is written by append_entry alone, in the name of somebody who works there.
ALTER TABLE ledger_entry ADD FOREIGN KEY (establishment_id, person) REFERENCES person (establishment_id, id);
DO $$
DECLARE t text;
BEGIN
  FOREACH t IN ARRAY ARRAY['ledger_entry', 'ledger_text'] LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('CREATE POLICY own_establishment ON %I
      USING (establishment_id = current_establishment()) WITH CHECK (establishment_id = current_establishment())', t);
    EXECUTE format('GRANT SELECT ON %I TO larderbook_api', t);
  END LOOP;
  FOR t IN SELECT table_name FROM information_schema.columns
           WHERE table_schema = 'public' AND column_name = 'establishment_id' AND table_name LIKE 'sign\_in%'
  LOOP
    EXECUTE format('ALTER TABLE %I ENABLE ROW LEVEL SECURITY', t);
    EXECUTE format('CREATE POLICY own_establishment ON %I
      USING (establishment_id = current_establishment() OR at_the_sign_in_door())
      WITH CHECK (establishment_id = current_establishment() OR at_the_sign_in_door())', t);
    EXECUTE format('GRANT SELECT, INSERT, UPDATE, DELETE ON %I TO larderbook_api', t);
  END LOOP;
END $$;
-- ═══ The rows that count ══════════════════════════════════════════════════════════════════════════════════════════
-- Whatever is recorded may be corrected or voided. A correction is a row of its own that names the row it amends and the
-- first row of all; whatever points at the thing goes on pointing at that first row. `row_id` is the row that says what
-- counts of it now.

CREATE VIEW receipt_now WITH (security_invoker = true) AS
  SELECT r.establishment_id, coalesce(r.first_id, r.id) AS id, r.id AS row_id, r.amends_id, r.amend_reason, r.seq,
  r.code, r.item_id, r.supplier_id, r.supplier_lot, r.supplier_establishment_number, r.kill_date, r.pack_date,
  r.weight_value, r.weight_unit, r.grams, r.temperature_value, r.temperature_unit, r."limit", r.verdict,
  r.decision, r.reason, r.fraction_percent, r.flags, r.station, r.taken_at, r.recorded_at, r.recorded_by
  FROM receipt r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM receipt later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW stage_end_now WITH (security_invoker = true) AS
  SELECT r.establishment_id, coalesce(r.first_id, r.id) AS id, r.id AS row_id, r.amends_id, r.amend_reason, r.seq,
  r.lot_id, r.control_point_id, r.judged, r.station, r.taken_at, r.recorded_at, r.recorded_by
  FROM stage_end r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM stage_end later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW packing_now WITH (security_invoker = true) AS
  SELECT r.establishment_id, coalesce(r.first_id, r.id) AS id, r.id AS row_id, r.amends_id, r.amend_reason, r.seq,
  r.lot_id, r.code, r."count", r.net_value, r.net_unit, r.net_grams, r.use_by, r.flags, r.station, r.taken_at,
  r.recorded_at, r.recorded_by
  FROM packing r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM packing later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW shipment_now WITH (security_invoker = true) AS
  SELECT r.establishment_id, coalesce(r.first_id, r.id) AS id, r.id AS row_id, r.amends_id, r.amend_reason, r.seq,
  r.number, r.customer_id, r.document, r.station, r.taken_at, r.recorded_at, r.recorded_by
  FROM shipment r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM shipment later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW calibration_now WITH (security_invoker = true) AS
  SELECT r.establishment_id, coalesce(r.first_id, r.id) AS id, r.id AS row_id, r.amends_id, r.amend_reason, r.seq, coalesce(first.recorded_at, r.recorded_at) AS first_recorded_at,
  r.instrument_id, r.method, r.expected, r.observed, r.unit, r.verdict, r.action, r.station, r.taken_at,
  r.recorded_at, r.recorded_by
  FROM calibration r LEFT JOIN calibration first ON first.establishment_id = r.establishment_id AND first.id = r.first_id
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM calibration later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW removal_now WITH (security_invoker = true) AS
  SELECT r.establishment_id, coalesce(r.first_id, r.id) AS id, r.id AS row_id, r.amends_id, r.amend_reason, r.seq,
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
CREATE VIEW disposition_now WITH (security_invoker = true) AS
  SELECT r.* FROM disposition r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM disposition later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW destruction_now WITH (security_invoker = true) AS
  SELECT r.* FROM destruction r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM destruction later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW corrective_action_now WITH (security_invoker = true) AS
  SELECT r.* FROM corrective_action r
  WHERE r.voided IS NOT TRUE AND NOT EXISTS
  (SELECT FROM corrective_action later WHERE later.establishment_id = r.establishment_id AND later.amends_id = r.id);
CREATE VIEW deviation_closing_now WITH (security_invoker = true) AS
  SELECT r.* FROM deviation_closing r WHERE NOT EXISTS
  (SELECT FROM closing_taken_back t WHERE t.establishment_id = r.establishment_id AND t.closing_id = r.id);

GRANT SELECT ON receipt_now, stage_end_now, packing_now, shipment_now, calibration_now, removal_now, shipment_line_now, reading_now, lot_input_now, weighing_now, disposition_now, destruction_now, corrective_action_now, deviation_closing_now TO larderbook_api;

-- ═══ Who is asking ════════════════════════════════════════════════════════════════════════════════════════════════
-- One statement for every request: the session's person, what they may do now, and their establishment. What holds is the
-- newest by the ledger: a clock may have been ahead.

CREATE FUNCTION signed_in(p_token text, p_now timestamptz)
RETURNS TABLE (person_id uuid, name text, user_name text, language text, roles text[], establishment_id uuid, demonstration boolean,
               establishment_name text, establishment_number text, address text, time_zone text, units text, paper text,
               lot_code_pattern text, jurisdiction text, place text, limit_set text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
  SELECT p.id, p.name, p.user_name, i.language, g.roles, e.id, e.demonstration, d.name, d.number, d.address, d.time_zone, d.units,
         d.paper, d.lot_code_pattern, d.jurisdiction, d.place, d.limit_set
  FROM sign_in_session s
  JOIN sign_in i ON i.id = s.user_id
  JOIN person p ON p.establishment_id = s.establishment_id AND p.id = s.user_id
  JOIN establishment e ON e.id = s.establishment_id
  CROSS JOIN LATERAL (SELECT r.roles FROM role_grant r
    WHERE r.establishment_id = s.establishment_id AND r.person_id = s.user_id ORDER BY r.seq DESC LIMIT 1) g
  CROSS JOIN LATERAL (SELECT x.* FROM establishment_details x
    WHERE x.establishment_id = s.establishment_id ORDER BY x.seq DESC LIMIT 1) d
  WHERE s.token = p_token AND s.expires_at > p_now AND cardinality(g.roles) > 0
$$;

-- Is there a shop yet (the demonstration does not count), and is the demonstration open?
CREATE FUNCTION first_run() RETURNS TABLE (has_shop boolean, has_demonstration boolean)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = public, pg_temp AS $$
  SELECT EXISTS (SELECT FROM establishment WHERE NOT demonstration), EXISTS (SELECT FROM establishment WHERE demonstration)
$$;

REVOKE ALL ON ALL FUNCTIONS IN SCHEMA public FROM PUBLIC;
GRANT EXECUTE ON ALL FUNCTIONS IN SCHEMA public TO larderbook_api;
-- A trigger needs no right to be fired, but one to be made: on a table of its own the API's role would note what it likes.
REVOKE EXECUTE ON FUNCTION note_records(), record_table(regclass) FROM larderbook_api;
