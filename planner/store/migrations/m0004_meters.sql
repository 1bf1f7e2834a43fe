CREATE TABLE meter (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    name VARCHAR(120) NOT NULL,
    kind VARCHAR(40) NOT NULL,
    factor DOUBLE,
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

CREATE TABLE newer_seed_lot (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    code VARCHAR(120) NOT NULL,
    crop VARCHAR(60) NOT NULL,
    variety VARCHAR(120) NOT NULL,
    supplier TEXT NOT NULL,
    pelleted BOOLEAN NOT NULL,
    primed BOOLEAN NOT NULL,
    packed_on DATE,
    bought_on DATE,
    germination_share DOUBLE,
    seeds_left INTEGER,
    notes TEXT NOT NULL,
    CONSTRAINT pk_seed_lot PRIMARY KEY (id),
    CONSTRAINT ck_seed_lot_code_limits CHECK (trim("code") <> '' AND length("code") <= 120),
    CONSTRAINT ck_seed_lot_crop_limits CHECK (length("crop") <= 60),
    CONSTRAINT ck_seed_lot_variety_limits CHECK (length("variety") <= 120),
    CONSTRAINT ck_seed_lot_supplier_limits CHECK (length("supplier") <= 120),
    CONSTRAINT ck_seed_lot_packed_on_limits CHECK (("packed_on" IS NULL OR ("packed_on" = date("packed_on")) IS TRUE) AND "packed_on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_seed_lot_bought_on_limits CHECK (("bought_on" IS NULL OR ("bought_on" = date("bought_on")) IS TRUE) AND "bought_on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_seed_lot_germination_share_limits CHECK ("germination_share" BETWEEN 0.01 AND 1),
    CONSTRAINT ck_seed_lot_seeds_left_limits CHECK ("seeds_left" BETWEEN 0 AND 100000000),
    CONSTRAINT ck_seed_lot_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT uq_seed_lot_code UNIQUE (code)
)

INSERT INTO newer_seed_lot (id, position, code, crop, variety, pelleted, bought_on, germination_share, seeds_left, notes, supplier, primed)
SELECT id, position, code, crop, variety, pelleted, bought_on, germination_share, seeds_left, notes, '', 0 FROM seed_lot

DROP TABLE seed_lot

ALTER TABLE newer_seed_lot RENAME TO seed_lot

CREATE INDEX ix_seed_lot_position ON seed_lot (position)

CREATE TABLE newer_fish_event (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    "group" TEXT(36) NOT NULL,
    "on" DATE NOT NULL,
    kind VARCHAR(40) NOT NULL,
    count INTEGER,
    mean_weight_g DOUBLE,
    days INTEGER,
    feed_g_per_day DOUBLE,
    cleared_on DATE,
    notes TEXT NOT NULL,
    CONSTRAINT pk_fish_event PRIMARY KEY (id),
    CONSTRAINT ck_fish_event_on_limits CHECK (("on" IS NULL OR ("on" = date("on")) IS TRUE) AND "on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_fish_event_count_limits CHECK ("count" BETWEEN 1 AND 10000000),
    CONSTRAINT ck_fish_event_mean_weight_g_limits CHECK ("mean_weight_g" BETWEEN 0.01 AND 100000),
    CONSTRAINT ck_fish_event_days_limits CHECK ("days" BETWEEN 1 AND 400),
    CONSTRAINT ck_fish_event_feed_g_per_day_limits CHECK ("feed_g_per_day" BETWEEN 0 AND 100000000),
    CONSTRAINT ck_fish_event_cleared_on_limits CHECK (("cleared_on" IS NULL OR ("cleared_on" = date("cleared_on")) IS TRUE) AND "cleared_on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_fish_event_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT fk_fish_event_group FOREIGN KEY("group") REFERENCES fish_group (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT ck_fish_event_kind CHECK (kind IN ('harvest', 'deaths', 'added', 'sample', 'off feed', 'feed given', 'treated'))
)

INSERT INTO newer_fish_event (id, position, "group", "on", kind, count, mean_weight_g, days, feed_g_per_day, notes)
SELECT id, position, "group", "on", kind, count, mean_weight_g, days, feed_g_per_day, notes FROM fish_event

DROP TABLE fish_event

ALTER TABLE newer_fish_event RENAME TO fish_event

CREATE INDEX ix_fish_event_group ON fish_event ("group")

CREATE INDEX ix_fish_event_position ON fish_event (position)

CREATE TABLE newer_reading (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    loop TEXT(36) NOT NULL,
    "on" DATE NOT NULL,
    at TEXT NOT NULL,
    quantity VARCHAR(40) NOT NULL,
    value DOUBLE NOT NULL,
    meter TEXT(36),
    meter_factor DOUBLE,
    notes TEXT NOT NULL,
    CONSTRAINT pk_reading PRIMARY KEY (id),
    CONSTRAINT ck_reading_on_limits CHECK (("on" IS NULL OR ("on" = date("on")) IS TRUE) AND "on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_reading_at_limits CHECK (length("at") <= 5),
    CONSTRAINT ck_reading_value_limits CHECK ("value" BETWEEN -50 AND 10000000),
    CONSTRAINT ck_reading_meter_factor_limits CHECK ("meter_factor" BETWEEN 0.3 AND 1),
    CONSTRAINT ck_reading_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT fk_reading_loop FOREIGN KEY(loop) REFERENCES loop (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT ck_reading_quantity CHECK (quantity IN ('ph', 'water °C', 'air °C', 'ec mS/cm', 'tds mg/L', 'tan mg/L', 'nitrite-N mg/L', 'nitrate-N mg/L', 'alkalinity mg/L CaCO3', 'oxygen mg/L', 'P mg/L', 'K mg/L', 'Ca mg/L', 'Mg mg/L', 'Fe mg/L', 'top-up L')),
    CONSTRAINT fk_reading_meter FOREIGN KEY(meter) REFERENCES meter (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED
)

INSERT INTO newer_reading (id, position, loop, "on", quantity, value, meter_factor, notes, at)
SELECT id, position, loop, "on", quantity, value, meter_factor, notes, '' FROM reading

DROP TABLE reading

ALTER TABLE newer_reading RENAME TO reading

CREATE INDEX ix_reading_loop ON reading (loop)

CREATE INDEX ix_reading_meter ON reading (meter)

CREATE INDEX ix_reading_position ON reading (position)

CREATE TABLE newer_log_entry (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    code VARCHAR(120) NOT NULL,
    what VARCHAR(40) NOT NULL,
    "on" DATE NOT NULL,
    at TEXT NOT NULL,
    batch TEXT(36),
    "group" TEXT(36),
    bed TEXT(36),
    loop TEXT(36),
    seed_lot TEXT(36),
    meter TEXT(36),
    supplement VARCHAR(60) NOT NULL,
    quantity VARCHAR(40),
    amount DOUBLE,
    out_of INTEGER,
    unit VARCHAR(40) NOT NULL,
    reason VARCHAR(40) NOT NULL,
    who TEXT NOT NULL,
    noted_at TEXT NOT NULL,
    corrects TEXT(36),
    notes TEXT NOT NULL,
    CONSTRAINT pk_log_entry PRIMARY KEY (id),
    CONSTRAINT ck_log_entry_code_limits CHECK (trim("code") <> '' AND length("code") <= 120),
    CONSTRAINT ck_log_entry_on_limits CHECK (("on" IS NULL OR ("on" = date("on")) IS TRUE) AND "on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_log_entry_at_limits CHECK (length("at") <= 5),
    CONSTRAINT ck_log_entry_supplement_limits CHECK (length("supplement") <= 60),
    CONSTRAINT ck_log_entry_amount_limits CHECK ("amount" BETWEEN -50 AND 10000000),
    CONSTRAINT ck_log_entry_out_of_limits CHECK ("out_of" BETWEEN 1 AND 1000000),
    CONSTRAINT ck_log_entry_who_limits CHECK (length("who") <= 120),
    CONSTRAINT ck_log_entry_noted_at_limits CHECK (length("noted_at") <= 17),
    CONSTRAINT ck_log_entry_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT uq_log_entry_code UNIQUE (code),
    CONSTRAINT ck_log_entry_what CHECK (what IN ('sown', 'germinated', 'moved to bed', 'picked', 'culled', 'cleared', 'feed given', 'feed left over', 'fish dead', 'fish weighed', 'fish taken', 'dose given', 'solids siphoned', 'liquor returned', 'topped up', 'pest seen', 'maintenance', 'not done', 'note', 'reading', 'meter calibrated', 'seed tested', 'fish treated', 'fish cleared to eat', 'withdrawn')),
    CONSTRAINT fk_log_entry_batch FOREIGN KEY(batch) REFERENCES batch (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT fk_log_entry_group FOREIGN KEY("group") REFERENCES fish_group (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT fk_log_entry_bed FOREIGN KEY(bed) REFERENCES bed (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT fk_log_entry_loop FOREIGN KEY(loop) REFERENCES loop (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT fk_log_entry_seed_lot FOREIGN KEY(seed_lot) REFERENCES seed_lot (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT fk_log_entry_meter FOREIGN KEY(meter) REFERENCES meter (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT ck_log_entry_quantity CHECK (quantity IN ('ph', 'water °C', 'air °C', 'ec mS/cm', 'tds mg/L', 'tan mg/L', 'nitrite-N mg/L', 'nitrate-N mg/L', 'alkalinity mg/L CaCO3', 'oxygen mg/L', 'P mg/L', 'K mg/L', 'Ca mg/L', 'Mg mg/L', 'Fe mg/L', 'top-up L')),
    CONSTRAINT ck_log_entry_unit CHECK (unit IN ('', 'seeds', 'plants', 'heads', 'kg', 'g', 'fish', 'L', 'score 0-3')),
    CONSTRAINT ck_log_entry_reason CHECK (reason IN ('', 'heat', 'cold', 'too little light', 'poor seed', 'pest', 'disease', 'water', 'nutrient short', 'no free place', 'no time', 'power cut', 'not wanted', 'other')),
    CONSTRAINT fk_log_entry_corrects FOREIGN KEY(corrects) REFERENCES log_entry (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED
)

INSERT INTO newer_log_entry (id, position, code, what, "on", at, batch, "group", bed, loop, supplement, amount, unit, reason, who, corrects, notes, noted_at)
SELECT id, position, code, what, "on", at, batch, "group", bed, loop, supplement, amount, unit, reason, who, corrects, notes, '' FROM log_entry

DROP TABLE log_entry

ALTER TABLE newer_log_entry RENAME TO log_entry

CREATE INDEX ix_log_entry_batch ON log_entry (batch)

CREATE INDEX ix_log_entry_bed ON log_entry (bed)

CREATE INDEX ix_log_entry_corrects ON log_entry (corrects)

CREATE INDEX ix_log_entry_group ON log_entry ("group")

CREATE INDEX ix_log_entry_loop ON log_entry (loop)

CREATE INDEX ix_log_entry_meter ON log_entry (meter)

CREATE INDEX ix_log_entry_position ON log_entry (position)

CREATE INDEX ix_log_entry_seed_lot ON log_entry (seed_lot)
