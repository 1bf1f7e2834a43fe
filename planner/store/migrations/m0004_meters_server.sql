CREATE TABLE meter (
    id TEXT NOT NULL,
    position INTEGER NOT NULL,
    name VARCHAR(120) NOT NULL,
    kind VARCHAR(40) NOT NULL,
    factor DOUBLE PRECISION,
    calibrate_every_days INTEGER,
    used_from DATE,
    notes TEXT NOT NULL,
    CONSTRAINT pk_meter PRIMARY KEY (id),
    CONSTRAINT ck_meter_name_limits CHECK (trim("name") <> '' AND length("name") <= 120),
    CONSTRAINT ck_meter_factor_limits CHECK ("factor" BETWEEN 0.3 AND 1),
    CONSTRAINT ck_meter_calibrate_every_days_limits CHECK ("calibrate_every_days" BETWEEN 1 AND 400),
    CONSTRAINT ck_meter_used_from_limits CHECK (("used_from" IS NULL OR ("used_from" = date("used_from")) IS TRUE) AND "used_from" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_meter_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT uq_meter_name UNIQUE (name),
    CONSTRAINT ck_meter_kind CHECK (kind IN ('pH', 'conductivity', 'dissolved solids', 'pH and conductivity', 'oxygen', 'temperature'))
)

CREATE INDEX ix_meter_position ON meter (position)

ALTER TABLE seed_lot ADD COLUMN supplier TEXT NOT NULL DEFAULT ''

ALTER TABLE seed_lot ALTER COLUMN supplier DROP DEFAULT

ALTER TABLE seed_lot ADD CONSTRAINT ck_seed_lot_supplier_limits CHECK (length("supplier") <= 120)

ALTER TABLE seed_lot ADD COLUMN primed BOOLEAN NOT NULL DEFAULT false

ALTER TABLE seed_lot ALTER COLUMN primed DROP DEFAULT

ALTER TABLE seed_lot ADD COLUMN packed_on DATE

ALTER TABLE seed_lot ADD CONSTRAINT ck_seed_lot_packed_on_limits CHECK (("packed_on" IS NULL OR ("packed_on" = date("packed_on")) IS TRUE) AND "packed_on" BETWEEN '1990-01-01' AND '2199-12-31')

ALTER TABLE fish_event ADD COLUMN cleared_on DATE

ALTER TABLE fish_event ADD CONSTRAINT ck_fish_event_cleared_on_limits CHECK (("cleared_on" IS NULL OR ("cleared_on" = date("cleared_on")) IS TRUE) AND "cleared_on" BETWEEN '1990-01-01' AND '2199-12-31')

ALTER TABLE fish_event DROP CONSTRAINT ck_fish_event_kind

ALTER TABLE fish_event ADD CONSTRAINT ck_fish_event_kind CHECK (kind IN ('harvest', 'deaths', 'added', 'sample', 'off feed', 'feed given', 'treated'))

ALTER TABLE reading ADD COLUMN at TEXT NOT NULL DEFAULT ''

ALTER TABLE reading ALTER COLUMN at DROP DEFAULT

ALTER TABLE reading ADD CONSTRAINT ck_reading_at_limits CHECK (length("at") <= 5)

ALTER TABLE reading ADD COLUMN meter TEXT

ALTER TABLE reading ADD CONSTRAINT fk_reading_meter FOREIGN KEY(meter) REFERENCES meter (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED

CREATE INDEX ix_reading_meter ON reading (meter)

ALTER TABLE log_entry ADD COLUMN seed_lot TEXT

ALTER TABLE log_entry ADD CONSTRAINT fk_log_entry_seed_lot FOREIGN KEY(seed_lot) REFERENCES seed_lot (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED

ALTER TABLE log_entry ADD COLUMN meter TEXT

ALTER TABLE log_entry ADD CONSTRAINT fk_log_entry_meter FOREIGN KEY(meter) REFERENCES meter (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED

ALTER TABLE log_entry ADD COLUMN quantity VARCHAR(40)

ALTER TABLE log_entry ADD CONSTRAINT ck_log_entry_quantity CHECK (quantity IN ('ph', 'water °C', 'air °C', 'ec mS/cm', 'tds mg/L', 'tan mg/L', 'nitrite-N mg/L', 'nitrate-N mg/L', 'alkalinity mg/L CaCO3', 'oxygen mg/L', 'P mg/L', 'K mg/L', 'Ca mg/L', 'Mg mg/L', 'Fe mg/L', 'top-up L'))

ALTER TABLE log_entry ADD COLUMN out_of INTEGER

ALTER TABLE log_entry ADD CONSTRAINT ck_log_entry_out_of_limits CHECK ("out_of" BETWEEN 1 AND 1000000)

ALTER TABLE log_entry ADD COLUMN noted_at TEXT NOT NULL DEFAULT ''

ALTER TABLE log_entry ALTER COLUMN noted_at DROP DEFAULT

ALTER TABLE log_entry ADD CONSTRAINT ck_log_entry_noted_at_limits CHECK (length("noted_at") <= 17)

ALTER TABLE log_entry DROP CONSTRAINT ck_log_entry_amount_limits

ALTER TABLE log_entry ADD CONSTRAINT ck_log_entry_amount_limits CHECK ("amount" BETWEEN -50 AND 10000000)

ALTER TABLE log_entry DROP CONSTRAINT ck_log_entry_what

ALTER TABLE log_entry ADD CONSTRAINT ck_log_entry_what CHECK (what IN ('sown', 'germinated', 'moved to bed', 'picked', 'culled', 'cleared', 'feed given', 'feed left over', 'fish dead', 'fish weighed', 'fish taken', 'dose given', 'solids siphoned', 'liquor returned', 'topped up', 'pest seen', 'maintenance', 'not done', 'note', 'reading', 'meter calibrated', 'seed tested', 'fish treated', 'fish cleared to eat', 'withdrawn'))

CREATE INDEX ix_log_entry_meter ON log_entry (meter)

CREATE INDEX ix_log_entry_seed_lot ON log_entry (seed_lot)
