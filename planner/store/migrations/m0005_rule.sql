CREATE TABLE newer_site (
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
    rain_mm TEXT NOT NULL,
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

INSERT INTO newer_site (id, position, name, place, latitude_deg, longitude_deg, altitude_m, time_zone, week_start, units, air_c, nursery_c, radiation_mj_per_m2_d, roof_transmission, notes, rain_mm)
SELECT id, position, name, place, latitude_deg, longitude_deg, altitude_m, time_zone, week_start, units, air_c, nursery_c, radiation_mj_per_m2_d, roof_transmission, notes, '[]' FROM site

DROP TABLE site

ALTER TABLE newer_site RENAME TO site

CREATE INDEX ix_site_position ON site (position)

CREATE TABLE newer_loop (
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
    area_rule VARCHAR(40) NOT NULL,
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
    CONSTRAINT fk_loop_site FOREIGN KEY(site) REFERENCES site (id) ON DELETE NO ACTION DEFERRABLE INITIALLY DEFERRED,
    CONSTRAINT ck_loop_area_rule CHECK (area_rule IN ('fao', 'uvi'))
)

INSERT INTO newer_loop (id, position, name, site, water_l, water_c, top_up_l_per_day, top_up_n_mg_per_l, top_up_p_mg_per_l, top_up_k_mg_per_l, top_up_ca_mg_per_l, top_up_mg_mg_per_l, top_up_fe_mg_per_l, top_up_alkalinity_mg_per_l, gas_loss_share, solids_settled_siphoned_every_days, notes, area_rule)
SELECT id, position, name, site, water_l, water_c, top_up_l_per_day, top_up_n_mg_per_l, top_up_p_mg_per_l, top_up_k_mg_per_l, top_up_ca_mg_per_l, top_up_mg_mg_per_l, top_up_fe_mg_per_l, top_up_alkalinity_mg_per_l, gas_loss_share, solids_settled_siphoned_every_days, notes, 'fao' FROM loop

DROP TABLE loop

ALTER TABLE newer_loop RENAME TO loop

CREATE INDEX ix_loop_position ON loop (position)

CREATE INDEX ix_loop_site ON loop (site)
