CREATE TABLE log_entry (
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
    supplement VARCHAR(60) NOT NULL,
    amount DOUBLE,
    unit VARCHAR(40) NOT NULL,
    reason VARCHAR(40) NOT NULL,
    who TEXT NOT NULL,
    corrects TEXT(36),
    notes TEXT NOT NULL,
    CONSTRAINT pk_log_entry PRIMARY KEY (id),
    CONSTRAINT ck_log_entry_code_limits CHECK (trim("code") <> '' AND length("code") <= 120),
    CONSTRAINT ck_log_entry_on_limits CHECK (("on" IS NULL OR ("on" = date("on")) IS TRUE) AND "on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_log_entry_at_limits CHECK (length("at") <= 5),
    CONSTRAINT ck_log_entry_supplement_limits CHECK (length("supplement") <= 60),
    CONSTRAINT ck_log_entry_amount_limits CHECK ("amount" BETWEEN 0 AND 10000000),
    CONSTRAINT ck_log_entry_who_limits CHECK (length("who") <= 120),
    CONSTRAINT ck_log_entry_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT uq_log_entry_code UNIQUE (code),
    CONSTRAINT ck_log_entry_what CHECK (what IN ('sown', 'germinated', 'moved to bed', 'picked', 'culled', 'cleared', 'feed given', 'feed left over', 'fish dead', 'fish weighed', 'fish taken', 'dose given', 'solids siphoned', 'liquor returned', 'topped up', 'pest seen', 'maintenance', 'not done', 'note', 'withdrawn')),
    CONSTRAINT fk_log_entry_batch FOREIGN KEY(batch) REFERENCES batch (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT fk_log_entry_group FOREIGN KEY("group") REFERENCES fish_group (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT fk_log_entry_bed FOREIGN KEY(bed) REFERENCES bed (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT fk_log_entry_loop FOREIGN KEY(loop) REFERENCES loop (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT ck_log_entry_unit CHECK (unit IN ('', 'seeds', 'plants', 'heads', 'kg', 'g', 'fish', 'L', 'score 0-3')),
    CONSTRAINT ck_log_entry_reason CHECK (reason IN ('', 'heat', 'cold', 'too little light', 'poor seed', 'pest', 'disease', 'water', 'nutrient short', 'no free place', 'no time', 'power cut', 'not wanted', 'other')),
    CONSTRAINT fk_log_entry_corrects FOREIGN KEY(corrects) REFERENCES log_entry (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED
)

CREATE INDEX ix_log_entry_batch ON log_entry (batch)

CREATE INDEX ix_log_entry_bed ON log_entry (bed)

CREATE INDEX ix_log_entry_corrects ON log_entry (corrects)

CREATE INDEX ix_log_entry_group ON log_entry ("group")

CREATE INDEX ix_log_entry_loop ON log_entry (loop)

CREATE INDEX ix_log_entry_position ON log_entry (position)
