"""What the seeding calendar says, before it is set on any paper."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from planner.farm.crops import Batch, Phase, Placement
from planner.farm.ids import id_from
from planner.farm.mark import plan_mark
from planner.farm.site import WeekStart
from planner.paper.report import Box, Caution, Paragraph
from tests.paper.helpers import PRINTED, START, bare_farm, book, calendar_of, sown_farm

COLUMNS = ("sow", "crop", "seeds", "trays", "batch", "move", "harvest", "done", "initials", "date_done",
           "number_done")  # fmt: skip


def one_batch(**changes):
    values = {
        "id": id_from("one"), "code": "LTL-27W14-A", "crop": "lettuce-leaf", "variety": "Green Oak",
        "sow_on": date(2027, 4, 7), "plants": 28, **changes,
    }  # fmt: skip
    return Batch(**values)


def farm_with(*batches, **changes):
    return replace(bare_farm(), batches=batches, **changes)


def cells_of(farm, **span):
    table = calendar_of(farm, **span).tables[0]
    (row,) = table.rows
    return dict(zip((column.key for column in table.columns), row, strict=True))


def said(report):
    parts = [part for section in report.sections for part in section.parts]
    texts = [part.text for part in parts if isinstance(part, Paragraph | Caution)]
    return " ".join(texts)


def test_that_the_columns_are_those_a_grower_needs_at_the_bench():
    assert tuple(column.key for column in calendar_of(bare_farm()).tables[0].columns) == COLUMNS


def test_that_a_row_says_what_to_sow_when_and_how_many():
    cells = cells_of(farm_with(one_batch()))
    assert cells["sow"].text == "Wed; 7\u00a0Apr"
    assert cells["crop"].text == "Leaf lettuce; Green Oak"
    crop = book().crops["lettuce-leaf"]
    seeds = -(-28 // (crop.germination_share * crop.nursery_survival_share))
    assert cells["seeds"].text == f"{seeds:.0f}; for 28 plants"
    assert cells["batch"].text == "LTL-27W14-A; lot not chosen"


def test_that_moving_and_harvest_are_said_by_week_and_date_from_sowing():
    batch = one_batch(
        crop="basil", germination_days=5, nursery_days=16, spacing_days=0, bed_days=28, picking_days=42
    )
    cells = cells_of(farm_with(batch))
    assert cells["move"].text == "W17 Wed 28 Apr; 21 days from sowing; places not chosen"
    assert cells["harvest"].text.replace("\u00a0", " ") == "W21–W27; Wed 26 May –; Wed 7 Jul"


def test_that_a_crop_cut_once_has_one_harvest_day():
    batch = one_batch(germination_days=5, nursery_days=16, spacing_days=0, bed_days=28)
    assert cells_of(farm_with(batch))["harvest"].text.replace("\u00a0", " ") == "W21; Wed 26 May"


def test_that_a_harvest_in_another_year_says_so():
    batch = one_batch(crop="tomato", bed_days=300)
    assert "2028" in cells_of(farm_with(batch))["harvest"].text


def test_that_spacing_out_is_said_with_its_date():
    batch = one_batch(germination_days=4, nursery_days=10, spacing_days=7)
    text = cells_of(farm_with(batch))["move"].text
    assert "21 days from sowing" in text
    assert "before that, space out W16 Wed 21 Apr" in text


def test_that_a_crop_sown_in_its_bed_is_not_moved():
    batch = one_batch(germination_days=0, nursery_days=0, spacing_days=0)
    assert cells_of(farm_with(batch))["move"].text.startswith("sown where it grows")


def test_that_places_chosen_are_named_by_raft_and_hole():
    batch = one_batch(plants=40)
    held = (
        Placement(id=id_from("h1"), batch=batch.id, phase=Phase.BED, bed=id_from("bed", "A"), unit=2, first=1,
                  count=28),
        Placement(id=id_from("h2"), batch=batch.id, phase=Phase.BED, bed=id_from("bed", "A"), unit=3, first=1,
                  count=12),
        Placement(id=id_from("h3"), batch=batch.id, phase=Phase.NURSERY, bed=id_from("bed", "N"), unit=5,
                  first=1, count=46),
    )  # fmt: skip
    cells = cells_of(farm_with(batch, placements=held))
    assert cells["move"].text.endswith("Bed A: raft\u00a02 (all), raft\u00a03 holes\u00a01–12")
    assert cells["trays"].text == "1 tray; tray\u00a05 cells\u00a01–46"


def test_that_a_batch_meant_for_a_bed_says_that_its_places_are_open():
    batch = one_batch(bed=id_from("bed", "A"))
    assert cells_of(farm_with(batch))["move"].text.endswith("Bed A, places not chosen")


def test_that_trays_are_counted_from_seeds_when_none_is_chosen():
    cells = cells_of(farm_with(one_batch(plants=140, germination_share=1.0)))
    seeds = int(cells["seeds"].lines[0].text)
    assert cells["trays"].text == f"{-(-seeds // 72)} trays; of 72; {seeds} cells"


def test_that_pots_are_counted_where_there_is_no_nursery():
    farm = farm_with(one_batch())
    farm = replace(farm, beds=farm.beds[1:])
    cells = cells_of(farm)
    assert cells["trays"].text == f"{cells['seeds'].lines[0].text} pots; one seed each"


def test_that_there_is_a_box_to_tick_and_room_to_write():
    cells = cells_of(farm_with(one_batch()))
    assert [cells[key].box for key in COLUMNS[-4:]] == [Box.TICK, Box.WRITE, Box.WRITE, Box.WRITE]


def test_that_weeks_are_whole_and_weeks_without_sowing_say_so():
    groups = calendar_of(farm_with(one_batch()), weeks=3, from_on=date(2027, 4, 9)).tables[0].groups
    assert [(g.heading, g.detail, len(g.rows), g.empty) for g in groups] == [
        ("W14", "Mon 5 Apr – Sun 11 Apr 2027", 1, ""),
        ("W15", "Mon 12 Apr – Sun 18 Apr 2027", 0, "nothing to sow"),
        ("W16", "Mon 19 Apr – Sun 25 Apr 2027", 0, "nothing to sow"),
    ]


def test_that_weeks_begin_on_sunday_where_the_site_says_so():
    farm = replace(bare_farm(week_start=WeekStart.SUNDAY), batches=(one_batch(sow_on=date(2027, 4, 4)),))
    (group,) = calendar_of(farm, weeks=1).tables[0].groups
    assert (group.detail, len(group.rows)) == ("Sun 4 Apr – Sat 10 Apr 2027", 1)


def test_that_a_week_from_sunday_has_the_number_that_stands_in_the_codes_of_its_batches():
    # 2026 begins on a Thursday: counting whole weeks from Sunday would be one behind the ISO week.
    farm = replace(bare_farm(week_start=WeekStart.SUNDAY), batches=(one_batch(sow_on=date(2026, 3, 2)),))
    (group,) = calendar_of(farm, weeks=1, from_on=date(2026, 3, 1)).tables[0].groups
    assert (group.heading, date(2026, 3, 2).isocalendar().week) == ("W10", 10)


def test_that_the_first_day_is_in_and_the_day_after_the_last_is_out():
    days = (START - timedelta(days=1), START, START + timedelta(days=13), START + timedelta(days=14))
    batches = tuple(
        one_batch(id=id_from("d", str(n)), code=f"B{n}", sow_on=day) for n, day in enumerate(days)
    )
    table = calendar_of(farm_with(*batches), weeks=2).tables[0]
    assert [row[4].lines[0].text for row in table.rows] == ["B1", "B2"]


@pytest.mark.parametrize("weeks", [0, -3, 521])
def test_that_a_span_outside_the_limits_is_refused_by_name_value_and_limit(weeks):
    with pytest.raises(ValueError, match=f"weeks: {weeks} must lie within 1 to 520"):
        calendar_of(bare_farm(), weeks=weeks)


def test_that_the_sheet_says_whose_plan_it_is_and_when_it_was_printed():
    farm = sown_farm(5)
    report = calendar_of(farm)
    assert report.farm_name == "Brookside Loop"
    assert report.plan_mark == plan_mark(farm)
    assert report.printed_on == PRINTED
    assert report.landscape
    seeds = sum(int(row[2].lines[0].text.replace(",", "")) for row in report.tables[0].rows)
    assert f"5 sowings, {seeds:,} seeds" in report.header_lines[0]


def test_that_a_sheet_without_sowings_says_so_at_its_head():
    report = calendar_of(bare_farm())
    assert report.header_lines[0] == "Brookside Loop (Lower greenhouse): no sowings in these weeks."


def test_that_the_sum_can_be_checked_by_hand():
    text = said(calendar_of(farm_with(one_batch(germination_share=0.8)))).replace("\u00a0", " ")
    assert "Seeds to sow = plants wanted ÷" in text
    survival = book().crops["lettuce-leaf"].nursery_survival_share
    seeds = -(-28 // (0.8 * survival))
    assert f"LTL-27W14-A: 28 ÷ (80 % × {survival:.0%}) gives {seeds:.0f} seeds".replace("%)", " %)") in text


def test_that_the_figures_of_each_crop_say_where_days_are_counted_from():
    table = calendar_of(farm_with(one_batch(crop="basil", germination_share=0.7))).tables[1]
    headings = [column.heading for column in table.columns]
    assert {"Sowing to move", "Move to first pick", "Sowing to first pick"} <= set(headings)
    row = {h: cell.text for h, cell in zip(headings, table.rows[0], strict=True)}
    assert row["Crop"] == "Sweet basil; own figures for LTL-27W14-A"
    assert row["Seeds that come up"] == "70\u00a0%"
    basil = book().crops["basil"]
    assert row["Move to first pick"] == f"{basil.bed_days:.0f}"
    assert row["First to last pick"] == f"{basil.picking_days:.0f}"


def test_that_every_crop_on_the_sheet_is_sourced_and_no_other():
    text = said(calendar_of(sown_farm(2)))
    assert "Leaf lettuce –" in text
    assert "Sweet basil –" in text
    assert "Tomato –" not in text
    source = book().figure("crop/lettuce-leaf/germination_days").source
    assert book().publications[source].title in text
    assert "common practice" in text


def test_that_the_cautions_that_belong_here_are_printed_as_the_book_has_them():
    text = said(calendar_of(bare_farm()))
    for key in ("water-on-leaves", "planning-aid"):
        assert book().cautions[key].text in text


def test_that_a_farm_without_climate_is_told_that_book_days_apply():
    assert "No climate by month has been entered for Lower greenhouse" in said(calendar_of(sown_farm(1)))
