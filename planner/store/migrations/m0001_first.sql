CREATE TABLE act (
    seq INTEGER NOT NULL,
    title TEXT NOT NULL,
    at DATETIME NOT NULL,
    state VARCHAR(40) NOT NULL,
    changes TEXT NOT NULL,
    CONSTRAINT pk_act PRIMARY KEY (seq),
    CONSTRAINT ck_act_state CHECK (state IN ('done', 'undone'))
)

CREATE TABLE meta (
    id INTEGER NOT NULL,
    schema_version INTEGER NOT NULL,
    revision INTEGER NOT NULL,
    CONSTRAINT pk_meta PRIMARY KEY (id),
    CONSTRAINT ck_meta_one_row CHECK (id = 1)
)

CREATE TABLE own_entry (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    shelf VARCHAR(40) NOT NULL,
    "key" VARCHAR(60) NOT NULL,
    "like" VARCHAR(60) NOT NULL,
    name VARCHAR(120) NOT NULL,
    notes TEXT NOT NULL,
    CONSTRAINT pk_own_entry PRIMARY KEY (id),
    CONSTRAINT ck_own_entry_key_limits CHECK (length("key") <= 60),
    CONSTRAINT ck_own_entry_like_limits CHECK (length("like") <= 60),
    CONSTRAINT ck_own_entry_name_limits CHECK (trim("name") <> '' AND length("name") <= 120),
    CONSTRAINT ck_own_entry_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT ck_own_entry_shelf CHECK (shelf IN ('crop', 'fish', 'feed', 'supplement')),
    CONSTRAINT uq_own_entry_key UNIQUE ("key")
)

CREATE INDEX ix_own_entry_position ON own_entry (position)

CREATE TABLE seed_lot (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    code VARCHAR(120) NOT NULL,
    crop VARCHAR(60) NOT NULL,
    variety VARCHAR(120) NOT NULL,
    pelleted BOOLEAN NOT NULL,
    bought_on DATE,
    germination_share DOUBLE,
    seeds_left INTEGER,
    notes TEXT NOT NULL,
    CONSTRAINT pk_seed_lot PRIMARY KEY (id),
    CONSTRAINT ck_seed_lot_code_limits CHECK (trim("code") <> '' AND length("code") <= 120),
    CONSTRAINT ck_seed_lot_crop_limits CHECK (length("crop") <= 60),
    CONSTRAINT ck_seed_lot_variety_limits CHECK (length("variety") <= 120),
    CONSTRAINT ck_seed_lot_bought_on_limits CHECK (("bought_on" IS NULL OR ("bought_on" = date("bought_on")) IS TRUE) AND "bought_on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_seed_lot_germination_share_limits CHECK ("germination_share" BETWEEN 0.01 AND 1),
    CONSTRAINT ck_seed_lot_seeds_left_limits CHECK ("seeds_left" BETWEEN 0 AND 100000000),
    CONSTRAINT ck_seed_lot_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT uq_seed_lot_code UNIQUE (code)
)

CREATE INDEX ix_seed_lot_position ON seed_lot (position)

CREATE TABLE settings (
    id TEXT(36) NOT NULL,
    name VARCHAR(120) NOT NULL,
    plan_from DATE NOT NULL,
    plan_weeks INTEGER NOT NULL,
    notes TEXT NOT NULL,
    CONSTRAINT pk_settings PRIMARY KEY (id),
    CONSTRAINT ck_settings_name_limits CHECK (trim("name") <> '' AND length("name") <= 120),
    CONSTRAINT ck_settings_plan_from_limits CHECK (("plan_from" IS NULL OR ("plan_from" = date("plan_from")) IS TRUE) AND "plan_from" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_settings_plan_weeks_limits CHECK ("plan_weeks" BETWEEN 1 AND 520),
    CONSTRAINT ck_settings_notes_limits CHECK (length("notes") <= 4000)
)

CREATE TABLE site (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    name VARCHAR(120) NOT NULL,
    place VARCHAR(120) NOT NULL,
    latitude_deg DOUBLE,
    longitude_deg DOUBLE,
    altitude_m DOUBLE NOT NULL,
    time_zone VARCHAR(60) NOT NULL,
    week_start VARCHAR(40) NOT NULL,
    units VARCHAR(40) NOT NULL,
    air_c TEXT NOT NULL,
    nursery_c TEXT NOT NULL,
    radiation_mj_per_m2_d TEXT NOT NULL,
    roof_transmission DOUBLE NOT NULL,
    notes TEXT NOT NULL,
    CONSTRAINT pk_site PRIMARY KEY (id),
    CONSTRAINT ck_site_name_limits CHECK (trim("name") <> '' AND length("name") <= 120),
    CONSTRAINT ck_site_place_limits CHECK (length("place") <= 120),
    CONSTRAINT ck_site_latitude_deg_limits CHECK ("latitude_deg" BETWEEN -90 AND 90),
    CONSTRAINT ck_site_longitude_deg_limits CHECK ("longitude_deg" BETWEEN -180 AND 180),
    CONSTRAINT ck_site_altitude_m_limits CHECK ("altitude_m" BETWEEN -430 AND 6000),
    CONSTRAINT ck_site_time_zone_limits CHECK (length("time_zone") <= 60),
    CONSTRAINT ck_site_roof_transmission_limits CHECK ("roof_transmission" BETWEEN 0.05 AND 1),
    CONSTRAINT ck_site_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT uq_site_name UNIQUE (name),
    CONSTRAINT ck_site_week_start CHECK (week_start IN ('monday', 'sunday')),
    CONSTRAINT ck_site_units CHECK (units IN ('metric', 'us'))
)

CREATE INDEX ix_site_position ON site (position)

CREATE TABLE target (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    crop VARCHAR(60) NOT NULL,
    amount_per_week DOUBLE NOT NULL,
    unit VARCHAR(40) NOT NULL,
    from_on DATE NOT NULL,
    until_on DATE,
    notes TEXT NOT NULL,
    CONSTRAINT pk_target PRIMARY KEY (id),
    CONSTRAINT ck_target_crop_limits CHECK (length("crop") <= 60),
    CONSTRAINT ck_target_amount_per_week_limits CHECK ("amount_per_week" BETWEEN 0.01 AND 1000000),
    CONSTRAINT ck_target_from_on_limits CHECK (("from_on" IS NULL OR ("from_on" = date("from_on")) IS TRUE) AND "from_on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_target_until_on_limits CHECK (("until_on" IS NULL OR ("until_on" = date("until_on")) IS TRUE) AND "until_on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_target_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT ck_target_unit CHECK (unit IN ('heads', 'kg'))
)

CREATE INDEX ix_target_position ON target (position)

CREATE TABLE loop (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    name VARCHAR(120) NOT NULL,
    site TEXT(36) NOT NULL,
    water_l DOUBLE NOT NULL,
    water_c TEXT NOT NULL,
    top_up_l_per_day DOUBLE,
    top_up_n_mg_per_l DOUBLE NOT NULL,
    top_up_p_mg_per_l DOUBLE NOT NULL,
    top_up_k_mg_per_l DOUBLE NOT NULL,
    top_up_ca_mg_per_l DOUBLE NOT NULL,
    top_up_mg_mg_per_l DOUBLE NOT NULL,
    top_up_fe_mg_per_l DOUBLE NOT NULL,
    top_up_alkalinity_mg_per_l DOUBLE,
    gas_loss_share DOUBLE,
    solids_settled_siphoned_every_days INTEGER,
    notes TEXT NOT NULL,
    CONSTRAINT pk_loop PRIMARY KEY (id),
    CONSTRAINT ck_loop_name_limits CHECK (trim("name") <> '' AND length("name") <= 120),
    CONSTRAINT ck_loop_water_l_limits CHECK ("water_l" BETWEEN 10 AND 100000000),
    CONSTRAINT ck_loop_top_up_l_per_day_limits CHECK ("top_up_l_per_day" BETWEEN 0 AND 10000000),
    CONSTRAINT ck_loop_top_up_n_mg_per_l_limits CHECK ("top_up_n_mg_per_l" BETWEEN 0 AND 500),
    CONSTRAINT ck_loop_top_up_p_mg_per_l_limits CHECK ("top_up_p_mg_per_l" BETWEEN 0 AND 500),
    CONSTRAINT ck_loop_top_up_k_mg_per_l_limits CHECK ("top_up_k_mg_per_l" BETWEEN 0 AND 1000),
    CONSTRAINT ck_loop_top_up_ca_mg_per_l_limits CHECK ("top_up_ca_mg_per_l" BETWEEN 0 AND 2000),
    CONSTRAINT ck_loop_top_up_mg_mg_per_l_limits CHECK ("top_up_mg_mg_per_l" BETWEEN 0 AND 1000),
    CONSTRAINT ck_loop_top_up_fe_mg_per_l_limits CHECK ("top_up_fe_mg_per_l" BETWEEN 0 AND 50),
    CONSTRAINT ck_loop_top_up_alkalinity_mg_per_l_limits CHECK ("top_up_alkalinity_mg_per_l" BETWEEN 0 AND 3000),
    CONSTRAINT ck_loop_gas_loss_share_limits CHECK ("gas_loss_share" BETWEEN 0 AND 1),
    CONSTRAINT ck_loop_solids_settled_siphoned_every_days_limits CHECK ("solids_settled_siphoned_every_days" BETWEEN 1 AND 400),
    CONSTRAINT ck_loop_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT uq_loop_name UNIQUE (name),
    CONSTRAINT fk_loop_site FOREIGN KEY(site) REFERENCES site (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED
)

CREATE INDEX ix_loop_position ON loop (position)

CREATE INDEX ix_loop_site ON loop (site)

CREATE TABLE own_value (
    entry TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    name VARCHAR(120) NOT NULL,
    number DOUBLE,
    text TEXT,
    yes_no BOOLEAN,
    CONSTRAINT pk_own_value PRIMARY KEY (entry, position),
    CONSTRAINT ck_own_value_one_value CHECK ((number IS NOT NULL) + (text IS NOT NULL) + (yes_no IS NOT NULL) = 1),
    CONSTRAINT fk_own_value_entry FOREIGN KEY(entry) REFERENCES own_entry (id) ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED
)

CREATE TABLE bed (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    name VARCHAR(120) NOT NULL,
    loop TEXT(36) NOT NULL,
    kind VARCHAR(40) NOT NULL,
    units INTEGER NOT NULL,
    rows INTEGER NOT NULL,
    columns INTEGER NOT NULL,
    area_m2 DOUBLE NOT NULL,
    layer INTEGER NOT NULL,
    depth_cm DOUBLE,
    light_share DOUBLE NOT NULL,
    lamp_mol_per_m2_d DOUBLE NOT NULL,
    notes TEXT NOT NULL,
    CONSTRAINT pk_bed PRIMARY KEY (id),
    CONSTRAINT ck_bed_name_limits CHECK (trim("name") <> '' AND length("name") <= 120),
    CONSTRAINT ck_bed_units_limits CHECK ("units" BETWEEN 1 AND 5000),
    CONSTRAINT ck_bed_rows_limits CHECK ("rows" BETWEEN 1 AND 2000),
    CONSTRAINT ck_bed_columns_limits CHECK ("columns" BETWEEN 1 AND 2000),
    CONSTRAINT ck_bed_area_m2_limits CHECK ("area_m2" BETWEEN 0.01 AND 1000000),
    CONSTRAINT ck_bed_layer_limits CHECK ("layer" BETWEEN 0 AND 20),
    CONSTRAINT ck_bed_depth_cm_limits CHECK ("depth_cm" BETWEEN 1 AND 300),
    CONSTRAINT ck_bed_light_share_limits CHECK ("light_share" BETWEEN 0 AND 1),
    CONSTRAINT ck_bed_lamp_mol_per_m2_d_limits CHECK ("lamp_mol_per_m2_d" BETWEEN 0 AND 60),
    CONSTRAINT ck_bed_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT uq_bed_name UNIQUE (name),
    CONSTRAINT fk_bed_loop FOREIGN KEY(loop) REFERENCES loop (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT ck_bed_kind CHECK (kind IN ('nursery', 'raft', 'media'))
)

CREATE INDEX ix_bed_loop ON bed (loop)

CREATE INDEX ix_bed_position ON bed (position)

CREATE TABLE dose (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    loop TEXT(36) NOT NULL,
    supplement VARCHAR(60) NOT NULL,
    grams DOUBLE NOT NULL,
    "on" DATE NOT NULL,
    every_days INTEGER NOT NULL,
    until_on DATE,
    notes TEXT NOT NULL,
    CONSTRAINT pk_dose PRIMARY KEY (id),
    CONSTRAINT ck_dose_supplement_limits CHECK (length("supplement") <= 60),
    CONSTRAINT ck_dose_grams_limits CHECK ("grams" BETWEEN 0.001 AND 1000000),
    CONSTRAINT ck_dose_on_limits CHECK (("on" IS NULL OR ("on" = date("on")) IS TRUE) AND "on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_dose_every_days_limits CHECK ("every_days" BETWEEN 0 AND 400),
    CONSTRAINT ck_dose_until_on_limits CHECK (("until_on" IS NULL OR ("until_on" = date("until_on")) IS TRUE) AND "until_on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_dose_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT fk_dose_loop FOREIGN KEY(loop) REFERENCES loop (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED
)

CREATE INDEX ix_dose_loop ON dose (loop)

CREATE INDEX ix_dose_position ON dose (position)

CREATE TABLE filter (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    name VARCHAR(120) NOT NULL,
    loop TEXT(36) NOT NULL,
    kind VARCHAR(40) NOT NULL,
    volume_l DOUBLE,
    media_area_m2 DOUBLE,
    solids_captured_share DOUBLE,
    notes TEXT NOT NULL,
    CONSTRAINT pk_filter PRIMARY KEY (id),
    CONSTRAINT ck_filter_name_limits CHECK (trim("name") <> '' AND length("name") <= 120),
    CONSTRAINT ck_filter_volume_l_limits CHECK ("volume_l" BETWEEN 1 AND 10000000),
    CONSTRAINT ck_filter_media_area_m2_limits CHECK ("media_area_m2" BETWEEN 0 AND 10000000),
    CONSTRAINT ck_filter_solids_captured_share_limits CHECK ("solids_captured_share" BETWEEN 0 AND 1),
    CONSTRAINT ck_filter_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT uq_filter_name UNIQUE (name),
    CONSTRAINT fk_filter_loop FOREIGN KEY(loop) REFERENCES loop (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT ck_filter_kind CHECK (kind IN ('settler', 'screen', 'static', 'moving bed', 'trickling', 'mineraliser', 'degassing'))
)

CREATE INDEX ix_filter_loop ON filter (loop)

CREATE INDEX ix_filter_position ON filter (position)

CREATE TABLE reading (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    loop TEXT(36) NOT NULL,
    "on" DATE NOT NULL,
    quantity VARCHAR(40) NOT NULL,
    value DOUBLE NOT NULL,
    meter_factor DOUBLE,
    notes TEXT NOT NULL,
    CONSTRAINT pk_reading PRIMARY KEY (id),
    CONSTRAINT ck_reading_on_limits CHECK (("on" IS NULL OR ("on" = date("on")) IS TRUE) AND "on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_reading_value_limits CHECK ("value" BETWEEN -50 AND 10000000),
    CONSTRAINT ck_reading_meter_factor_limits CHECK ("meter_factor" BETWEEN 0.3 AND 1),
    CONSTRAINT ck_reading_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT fk_reading_loop FOREIGN KEY(loop) REFERENCES loop (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT ck_reading_quantity CHECK (quantity IN ('ph', 'water °C', 'air °C', 'ec mS/cm', 'tds mg/L', 'tan mg/L', 'nitrite-N mg/L', 'nitrate-N mg/L', 'alkalinity mg/L CaCO3', 'oxygen mg/L', 'P mg/L', 'K mg/L', 'Ca mg/L', 'Mg mg/L', 'Fe mg/L', 'top-up L'))
)

CREATE INDEX ix_reading_loop ON reading (loop)

CREATE INDEX ix_reading_position ON reading (position)

CREATE TABLE solids_batch (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    code VARCHAR(120) NOT NULL,
    loop TEXT(36) NOT NULL,
    siphoned_on DATE NOT NULL,
    days INTEGER NOT NULL,
    aerated BOOLEAN NOT NULL,
    returned_on DATE,
    returned_share DOUBLE NOT NULL,
    notes TEXT NOT NULL,
    CONSTRAINT pk_solids_batch PRIMARY KEY (id),
    CONSTRAINT ck_solids_batch_code_limits CHECK (trim("code") <> '' AND length("code") <= 120),
    CONSTRAINT ck_solids_batch_siphoned_on_limits CHECK (("siphoned_on" IS NULL OR ("siphoned_on" = date("siphoned_on")) IS TRUE) AND "siphoned_on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_solids_batch_days_limits CHECK ("days" BETWEEN 1 AND 400),
    CONSTRAINT ck_solids_batch_returned_on_limits CHECK (("returned_on" IS NULL OR ("returned_on" = date("returned_on")) IS TRUE) AND "returned_on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_solids_batch_returned_share_limits CHECK ("returned_share" BETWEEN 0 AND 1),
    CONSTRAINT ck_solids_batch_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT uq_solids_batch_code UNIQUE (code),
    CONSTRAINT fk_solids_batch_loop FOREIGN KEY(loop) REFERENCES loop (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED
)

CREATE INDEX ix_solids_batch_loop ON solids_batch (loop)

CREATE INDEX ix_solids_batch_position ON solids_batch (position)

CREATE TABLE tank (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    name VARCHAR(120) NOT NULL,
    loop TEXT(36) NOT NULL,
    volume_l DOUBLE NOT NULL,
    notes TEXT NOT NULL,
    CONSTRAINT pk_tank PRIMARY KEY (id),
    CONSTRAINT ck_tank_name_limits CHECK (trim("name") <> '' AND length("name") <= 120),
    CONSTRAINT ck_tank_volume_l_limits CHECK ("volume_l" BETWEEN 10 AND 10000000),
    CONSTRAINT ck_tank_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT uq_tank_name UNIQUE (name),
    CONSTRAINT fk_tank_loop FOREIGN KEY(loop) REFERENCES loop (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED
)

CREATE INDEX ix_tank_loop ON tank (loop)

CREATE INDEX ix_tank_position ON tank (position)

CREATE TABLE batch (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    code VARCHAR(120) NOT NULL,
    crop VARCHAR(60) NOT NULL,
    variety VARCHAR(120) NOT NULL,
    sow_on DATE NOT NULL,
    plants INTEGER NOT NULL,
    bed TEXT(36),
    seed_lot TEXT(36),
    germination_days DOUBLE,
    nursery_days DOUBLE,
    spacing_days DOUBLE,
    bed_days DOUBLE,
    picking_days DOUBLE,
    clearing_days DOUBLE,
    germination_share DOUBLE,
    bed_survival_share DOUBLE,
    yield_g_per_plant DOUBLE,
    locked BOOLEAN NOT NULL,
    notes TEXT NOT NULL,
    CONSTRAINT pk_batch PRIMARY KEY (id),
    CONSTRAINT ck_batch_code_limits CHECK (trim("code") <> '' AND length("code") <= 120),
    CONSTRAINT ck_batch_crop_limits CHECK (length("crop") <= 60),
    CONSTRAINT ck_batch_variety_limits CHECK (length("variety") <= 120),
    CONSTRAINT ck_batch_sow_on_limits CHECK (("sow_on" IS NULL OR ("sow_on" = date("sow_on")) IS TRUE) AND "sow_on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_batch_plants_limits CHECK ("plants" BETWEEN 1 AND 1000000),
    CONSTRAINT ck_batch_germination_days_limits CHECK ("germination_days" BETWEEN 0 AND 120),
    CONSTRAINT ck_batch_nursery_days_limits CHECK ("nursery_days" BETWEEN 0 AND 200),
    CONSTRAINT ck_batch_spacing_days_limits CHECK ("spacing_days" BETWEEN 0 AND 200),
    CONSTRAINT ck_batch_bed_days_limits CHECK ("bed_days" BETWEEN 1 AND 400),
    CONSTRAINT ck_batch_picking_days_limits CHECK ("picking_days" BETWEEN 0 AND 400),
    CONSTRAINT ck_batch_clearing_days_limits CHECK ("clearing_days" BETWEEN 0 AND 60),
    CONSTRAINT ck_batch_germination_share_limits CHECK ("germination_share" BETWEEN 0.05 AND 1),
    CONSTRAINT ck_batch_bed_survival_share_limits CHECK ("bed_survival_share" BETWEEN 0.05 AND 1),
    CONSTRAINT ck_batch_yield_g_per_plant_limits CHECK ("yield_g_per_plant" BETWEEN 1 AND 100000),
    CONSTRAINT ck_batch_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT uq_batch_code UNIQUE (code),
    CONSTRAINT fk_batch_bed FOREIGN KEY(bed) REFERENCES bed (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT fk_batch_seed_lot FOREIGN KEY(seed_lot) REFERENCES seed_lot (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED
)

CREATE INDEX ix_batch_bed ON batch (bed)

CREATE INDEX ix_batch_position ON batch (position)

CREATE INDEX ix_batch_seed_lot ON batch (seed_lot)

CREATE TABLE fish_group (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    name VARCHAR(120) NOT NULL,
    tank TEXT(36) NOT NULL,
    species VARCHAR(60) NOT NULL,
    feed VARCHAR(60) NOT NULL,
    stocked_on DATE NOT NULL,
    count INTEGER NOT NULL,
    mean_weight_g DOUBLE NOT NULL,
    feeding VARCHAR(40) NOT NULL,
    feeding_table VARCHAR(60) NOT NULL,
    feed_percent DOUBLE,
    feed_g_per_day DOUBLE,
    fcr DOUBLE,
    tgc DOUBLE,
    daily_death_share DOUBLE,
    notes TEXT NOT NULL,
    CONSTRAINT pk_fish_group PRIMARY KEY (id),
    CONSTRAINT ck_fish_group_name_limits CHECK (trim("name") <> '' AND length("name") <= 120),
    CONSTRAINT ck_fish_group_species_limits CHECK (length("species") <= 60),
    CONSTRAINT ck_fish_group_feed_limits CHECK (length("feed") <= 60),
    CONSTRAINT ck_fish_group_stocked_on_limits CHECK (("stocked_on" IS NULL OR ("stocked_on" = date("stocked_on")) IS TRUE) AND "stocked_on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_fish_group_count_limits CHECK ("count" BETWEEN 1 AND 10000000),
    CONSTRAINT ck_fish_group_mean_weight_g_limits CHECK ("mean_weight_g" BETWEEN 0.01 AND 100000),
    CONSTRAINT ck_fish_group_feeding_table_limits CHECK (length("feeding_table") <= 60),
    CONSTRAINT ck_fish_group_feed_percent_limits CHECK ("feed_percent" BETWEEN 0.01 AND 40),
    CONSTRAINT ck_fish_group_feed_g_per_day_limits CHECK ("feed_g_per_day" BETWEEN 0 AND 100000000),
    CONSTRAINT ck_fish_group_fcr_limits CHECK ("fcr" BETWEEN 0.3 AND 10),
    CONSTRAINT ck_fish_group_tgc_limits CHECK ("tgc" BETWEEN 0.01 AND 10),
    CONSTRAINT ck_fish_group_daily_death_share_limits CHECK ("daily_death_share" BETWEEN 0 AND 0.2),
    CONSTRAINT ck_fish_group_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT uq_fish_group_name UNIQUE (name),
    CONSTRAINT fk_fish_group_tank FOREIGN KEY(tank) REFERENCES tank (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT ck_fish_group_feeding CHECK (feeding IN ('growth', 'table', 'percent', 'fixed'))
)

CREATE INDEX ix_fish_group_position ON fish_group (position)

CREATE INDEX ix_fish_group_tank ON fish_group (tank)

CREATE TABLE fish_event (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    "group" TEXT(36) NOT NULL,
    "on" DATE NOT NULL,
    kind VARCHAR(40) NOT NULL,
    count INTEGER,
    mean_weight_g DOUBLE,
    days INTEGER,
    feed_g_per_day DOUBLE,
    notes TEXT NOT NULL,
    CONSTRAINT pk_fish_event PRIMARY KEY (id),
    CONSTRAINT ck_fish_event_on_limits CHECK (("on" IS NULL OR ("on" = date("on")) IS TRUE) AND "on" BETWEEN '1990-01-01' AND '2199-12-31'),
    CONSTRAINT ck_fish_event_count_limits CHECK ("count" BETWEEN 1 AND 10000000),
    CONSTRAINT ck_fish_event_mean_weight_g_limits CHECK ("mean_weight_g" BETWEEN 0.01 AND 100000),
    CONSTRAINT ck_fish_event_days_limits CHECK ("days" BETWEEN 1 AND 400),
    CONSTRAINT ck_fish_event_feed_g_per_day_limits CHECK ("feed_g_per_day" BETWEEN 0 AND 100000000),
    CONSTRAINT ck_fish_event_notes_limits CHECK (length("notes") <= 4000),
    CONSTRAINT fk_fish_event_group FOREIGN KEY("group") REFERENCES fish_group (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT ck_fish_event_kind CHECK (kind IN ('harvest', 'deaths', 'added', 'sample', 'off feed', 'feed given'))
)

CREATE INDEX ix_fish_event_group ON fish_event ("group")

CREATE INDEX ix_fish_event_position ON fish_event (position)

CREATE TABLE placement (
    id TEXT(36) NOT NULL,
    position INTEGER NOT NULL,
    batch TEXT(36) NOT NULL,
    phase VARCHAR(40) NOT NULL,
    bed TEXT(36) NOT NULL,
    unit INTEGER NOT NULL,
    first INTEGER NOT NULL,
    count INTEGER NOT NULL,
    held_from DATE,
    held_until DATE,
    CONSTRAINT pk_placement PRIMARY KEY (id),
    CONSTRAINT ck_placement_unit_limits CHECK ("unit" BETWEEN 1 AND 5000),
    CONSTRAINT ck_placement_first_limits CHECK ("first" BETWEEN 1 AND 4000000),
    CONSTRAINT ck_placement_count_limits CHECK ("count" BETWEEN 1 AND 4000000),
    CONSTRAINT ck_placement_held_both CHECK ((held_from IS NULL) = (held_until IS NULL)),
    CONSTRAINT ck_placement_held_order CHECK (held_from < held_until),
    CONSTRAINT ck_placement_held_from_date CHECK (held_from IS NULL OR (held_from = date(held_from)) IS TRUE),
    CONSTRAINT ck_placement_held_until_date CHECK (held_until IS NULL OR (held_until = date(held_until)) IS TRUE),
    CONSTRAINT fk_placement_batch FOREIGN KEY(batch) REFERENCES batch (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT ck_placement_phase CHECK (phase IN ('nursery', 'spacing', 'bed')),
    CONSTRAINT fk_placement_bed FOREIGN KEY(bed) REFERENCES bed (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED
)

CREATE INDEX ix_placement_batch ON placement (batch)

CREATE INDEX ix_placement_held ON placement (bed, unit, held_from, held_until, first, count, id)

CREATE INDEX ix_placement_position ON placement (position)

CREATE TRIGGER placement_guard_insert BEFORE INSERT ON placement
WHEN NEW.held_from IS NOT NULL
BEGIN
  SELECT RAISE(ABORT, 'held place: two batches would stand there on one day')
  WHERE EXISTS (
    SELECT 1 FROM placement AS other
    WHERE other.bed = NEW.bed AND other.unit = NEW.unit AND other.id <> NEW.id
      AND other.first < NEW.first + NEW.count AND NEW.first < other.first + other.count
      AND other.held_from < NEW.held_until AND NEW.held_from < other.held_until
  );
END

CREATE TRIGGER placement_guard_update BEFORE UPDATE OF id, bed, unit, first, count, held_from, held_until ON placement
WHEN NEW.held_from IS NOT NULL
BEGIN
  SELECT RAISE(ABORT, 'held place: two batches would stand there on one day')
  WHERE EXISTS (
    SELECT 1 FROM placement AS other
    WHERE other.bed = NEW.bed AND other.unit = NEW.unit AND other.id <> OLD.id
      AND other.first < NEW.first + NEW.count AND NEW.first < other.first + other.count
      AND other.held_from < NEW.held_until AND NEW.held_from < other.held_until
  );
END
