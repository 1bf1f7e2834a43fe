"""What documents say: the plan's own numbers, bands, cautions where the risk is, what is not known."""

import re
from dataclasses import replace
from datetime import date, timedelta
from itertools import pairwise

import pytest

from planner.catalogue.figure import Confidence
from planner.catalogue.names import CODE_OF_LANGUAGE, named_beside
from planner.farm.crops import Phase
from planner.farm.farm import DAYS_PER_WEEK
from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.farm.water import Quantity
from planner.forecast.occupancy import holds
from planner.forecast.water.targets import target_bands
from planner.forecast.week import OF_SOLIDS, DueKind, due_in_week
from planner.paper.bilingual import SecondLanguage, in_two_languages
from planner.paper.documents.amounts import ration_g
from planner.paper.documents.ask import Ask
from planner.paper.documents.bed_drawing import UnitPlan, unit_drawings
from planner.paper.documents.charts import bar_chart, ticks_of
from planner.paper.documents.weeks_drawing import Life, lanes_of
from planner.paper.marks import Words
from planner.paper.palette import letters, look
from planner.paper.pictograms import NAMES, pictogram
from planner.paper.qt_writer import laid_out
from planner.paper.registry import DOCUMENTS, UnknownDocumentError, document_named
from planner.paper.report import Caution, Drawing, DrawnRect, DrawnText, Paragraph, Report, Table, Tone
from planner.paper.seeding_calendar import BENCH_LEAST_PT, WALL_LEAST_PT
from planner.paper.sheet_files import LANGUAGES, second_language, sheet_file
from planner.paper.style import A3, A4, A5, TABLOID
from planner.paper.words import NO_BREAK
from planner.planning.orders import order_list
from tests.paper.documents_helpers import empty, hostile, looked, sample, with_water
from tests.paper.helpers import bare_farm

MONDAY = date(2027, 2, 1)


def text_of(report: Report) -> str:
    """All words of a report in order, with plain spaces."""
    found = [report.title, report.subtitle, *report.header_lines]
    for section in report.sections:
        found.append(section.heading)
        for part in section.parts:
            if isinstance(part, Caution):
                found += [part.title, part.text]
            elif isinstance(part, Paragraph):
                found.append(part.text)
            elif isinstance(part, Table):
                for column in part.columns:
                    found += [column.heading, column.unit, column.band]
                for group in part.groups:
                    found += [group.heading, group.detail, group.empty]
                    found += [line.text for row in group.rows for cell in row for line in cell.lines]
    return "\n".join(found).replace(NO_BREAK, " ")


def made(key, farm=None, **how) -> Report:
    return (farm or sample()).report(document_named(key), **how)


def table_named(report, start):
    return next(table for table in report.tables if table.name.startswith(start))


def test_that_keys_are_told_apart_and_an_unknown_one_is_named_with_all_there_are():
    keys = [document.key for document in DOCUMENTS]
    assert len(set(keys)) == len(keys) == 18
    with pytest.raises(UnknownDocumentError) as fault:
        document_named("weektasks")
    assert "weektasks" in str(fault.value)
    assert all(key in str(fault.value) for key in keys)


@pytest.mark.parametrize("weeks", [0, -1, 521])
def test_that_a_span_of_no_or_too_many_weeks_is_refused_by_name_value_and_limit(weeks):
    with pytest.raises(ValueError, match=rf"weeks: {weeks} must lie within 1 to 520"):
        sample().ask(weeks=weeks)


@pytest.mark.parametrize(
    ("key", "cautions"),
    [
        ("solids-card", ["solids-as-manure"]),
        ("harvest-record", ["water-on-leaves", "ill-workers", "produce-records"]),
        ("water-log", ["caustic-bases", "acids"]),
        ("scouting", ["pesticides"]),
        ("emergency", ["power-cut", "tripped-device", "electricity-near-water"]),
        ("fish-sampling", ["fish-medicine", "species-law", "fish-welfare", "fish-as-food"]),
        ("feed-sheet", ["fish-medicine"]),
        ("hand-over", ["local-codes", "species-law", "electricity-near-water", "power-cut", "caustic-bases"]),
        ("maintenance", ["electricity-near-water", "animals"]),
        ("symptoms", ["pesticides", "caustic-bases", "fish-medicine"]),
        ("shopping", ["caustic-bases"]),
        ("season-plan", ["planning-aid"]),
        ("week-tasks", ["ill-workers", "slips-and-drowning"]),
        ("food-safety", ["produce-records", "ill-workers", "water-on-leaves"]),
    ],
)
def test_that_cautions_stand_on_the_sheet_where_the_risk_is(key, cautions):
    book = sample().ask().catalogue.cautions
    said = text_of(made(key))
    for caution in cautions:
        assert book[caution].text in said


def test_that_no_time_that_fish_survive_is_ever_told():
    said = text_of(made("emergency"))
    assert not re.search(r"\d+\s*(min|minute|hour|h)\b", said)
    assert "Stop feeding." in said
    assert "battery air" in said


@pytest.mark.parametrize("document", DOCUMENTS, ids=lambda document: document.key)
def test_that_produce_is_never_called_safe_or_organic(document):
    titles = [book.title.lower() for book in sample().ask().catalogue.publications.values()]
    said = text_of(sample().report(document)).lower()
    for title in titles:
        said = said.replace(title, "")
    assert "organic" not in said
    assert not re.search(r"\bis safe\b(?<!anything is safe)", said)


def test_that_the_task_sheet_has_every_task_of_the_week_once():
    farm = sample()
    week = farm.forecast.ruler.week_of(MONDAY)
    due = [
        t
        for t in due_in_week(farm.farm, farm.forecast, week)
        if t.kind is not DueKind.FEED and t.kind not in OF_SOLIDS
    ]
    table = made("week-tasks", from_on=MONDAY).tables[0]
    verbs = {
        DueKind.SOW: "Sow", DueKind.MOVE: "Move to bed", DueKind.PICK: "Pick",
        DueKind.CLEAR: "Clear and clean", DueKind.DOSE: "Give to the water",
    }  # fmt: skip
    for task in due:
        rows = [row for row in table.rows if row[1].lines and row[1].lines[0].text == verbs[task.kind]]
        name = farm.ask().catalogue.supplements[task.what].name if task.kind is DueKind.DOSE else task.what
        assert len([row for row in rows if row[1].lines[-1].text == name]) == 1, task
    kinds = {row[1].lines[0].text for row in table.rows if row[1].lines}
    assert {"Feed", "Look", "Test the water"} <= kinds


def test_that_the_task_sheet_says_feed_of_this_week_and_the_one_before():
    farm = sample()
    group = farm.forecast.loops[0].groups[0]
    week = farm.forecast.ruler.week_of(MONDAY)
    now, before = (float(group.feed_g[w * 7 : w * 7 + 7].mean()) for w in (week, week - 1))
    row = next(
        r for r in made("week-tasks", from_on=MONDAY).tables[0].rows if r[1].text == f"Feed; {group.name}"
    )
    assert row[2].lines[0].text.replace(NO_BREAK, " ") == f"{ration_g(now)} g"
    assert f"week before: {ration_g(before)} g" in row[3].text.replace(NO_BREAK, " ")


def test_that_the_feed_sheet_has_each_days_feed_of_all_groups_of_the_tank():
    farm = sample()
    table = made("feed-sheet", from_on=MONDAY).tables[0]
    first = farm.forecast.ruler.day_of(MONDAY)
    wanted = [
        ration_g(sum(float(g.feed_g[day]) for g in farm.forecast.loops[0].groups))
        for day in range(first, first + 28)
    ]
    assert [int(row[1].value) for row in table.rows] == wanted
    assert "most to give" in text_of(made("feed-sheet"))
    for row in table.rows:
        assert 3 * int(row[2].text.replace(",", "")) <= int(row[1].value)


def test_that_the_water_log_has_the_bands_of_the_catalogue_in_its_heading():
    bands = target_bands(sample().ask().catalogue)
    columns = {column.key: column for column in made("water-log").tables[0].columns}
    ph, tan = bands[Quantity.PH], bands[Quantity.TAN_MG_PER_L]
    assert columns["ph"].band == f"{ph.low.value:g}–{ph.high.value:g}"
    assert columns["tan"].band.replace(NO_BREAK, " ") == f"≤ {tan.high.value:g}"
    assert columns["tds"].unit == "ppm"
    assert {"time", "initials", "kh", "do", "top_up", "base", "iron"} <= set(columns)


def test_that_ions_are_turned_into_nitrogen_by_the_atomic_masses():
    # 62.0 and 46.0 g of ion hold 14.0 g of nitrogen: 4.43 and 3.28, as water chemists print it.
    said = text_of(made("water-log"))
    nitrite, nitrate = re.search(r"by ([\d.]+) and by ([\d.]+)\.", said).groups()
    assert float(nitrate) == pytest.approx(4.43, abs=0.05)
    assert float(nitrite) == pytest.approx(3.28, abs=0.05)


def test_that_the_bed_map_letters_as_many_holes_as_are_held():
    farm = sample()
    report = made("bed-map", from_on=MONDAY)
    held = holds(farm.farm, farm.forecast)
    names = {bed.id: bed.name for bed in farm.farm.beds}
    week_end = MONDAY + timedelta(days=DAYS_PER_WEEK)
    for section in report.sections:
        drawings = [part for part in section.parts if isinstance(part, Drawing)]
        if not drawings:
            continue
        (bed,) = [key for key, name in names.items() if section.heading.startswith(f"{name}, W")]
        places = {
            (hold.unit, place)
            for hold in held
            if hold.bed == bed and hold.from_on < week_end and hold.until_on > MONDAY
            for place in range(hold.first, hold.last + 1)
        }
        lettered = [s for d in drawings for s in d.shapes if isinstance(s, DrawnRect) and s.label]
        assert len(lettered) == len(places)
        free = [int(s.text.split()[-2]) for d in drawings for s in d.shapes if isinstance(s, DrawnText)]
        assert sum(free) == next(b.places for b in farm.farm.beds if b.id == bed) - len(places)


def test_that_the_legend_of_the_bed_map_names_each_letter_drawn():
    report = made("bed-map", from_on=MONDAY)
    drawn = None
    for section in report.sections:
        for part in section.parts:
            if isinstance(part, Drawing):
                drawn = (drawn or set()) | {
                    s.label for s in part.shapes if isinstance(s, DrawnRect) and s.label
                }
            elif isinstance(part, Table):
                legend = {row[0].picture.shapes[0].label for row in part.rows}
                assert drawn <= legend
                unseen = [row for row in part.rows if row[0].picture.shapes[0].label not in drawn]
                assert all("free again" in row[3].text for row in unseen)  # another took its place
                drawn = None


def test_that_a_place_of_a_batch_looks_the_same_in_map_and_legend():
    plan = UnitPlan(standing={1: 2}, coming={}, going=frozenset())
    (row, *_) = unit_drawings(sample().farm.beds[1], {1: plan})
    shapes = [s for s in row.shapes if isinstance(s, DrawnRect) and s.label]
    assert [(s.label, s.tint, s.hatch) for s in shapes] == [("C", look(2).tint, look(2).hatch)]


def test_that_looks_of_many_batches_are_told_apart_by_letter_and_mostly_by_pattern():
    assert len({letters(n) for n in range(1000)}) == 1000
    assert len({(look(n).tint, look(n).hatch) for n in range(49)}) == 49


def test_that_a_bed_of_very_many_places_is_drawn_as_bars_and_told_in_words():
    farm = bare_farm()
    huge = replace(farm.beds[1], units=5000, rows=50, columns=90)
    plan = {7: UnitPlan(standing=dict.fromkeys(range(1, 2001), 0), coming={}, going=frozenset())}
    parts = list(unit_drawings(huge, plan))
    assert isinstance(parts[0], Paragraph)
    assert "1–6, 8–5000" in parts[0].text
    assert len([part for part in parts if isinstance(part, Drawing)]) == 1
    assert sum(len(part.shapes) for part in parts if isinstance(part, Drawing)) < 10


def test_that_the_season_plan_lists_every_batch_of_its_weeks_and_draws_each_once():
    farm = sample()
    report = made("season-plan", weeks=26)
    table, end = farm.forecast.batches, 26 * 7
    rows = [r for r in range(len(farm.farm.batches)) if table.sow_day[r] < end and table.ends[r, -1] > 0]
    listed = report.tables[2].rows
    assert sorted(row[1].text for row in listed) == sorted(farm.farm.batches[r].code for r in rows)
    labels = [
        s.label
        for row in report.tables[1].rows
        for s in row[0].picture.shapes
        if isinstance(s, DrawnRect) and s.label
    ]
    assert len(labels) == len(set(labels))
    assert set(labels) <= {row[1].text for row in listed}


def test_that_the_harvest_bars_of_the_season_plan_add_up_to_the_forecast():
    farm = sample()
    groups = {group.heading: group for group in made("season-plan", weeks=26).tables[0].groups}
    heads = 0
    for at, key in enumerate(farm.forecast.crops):
        group = groups.get(f"Harvest, {farm.ask().catalogue.crops[key].name}")
        if group is not None and group.detail.startswith("heads"):
            total = float(farm.forecast.harvest_plants[at, : 26 * 7].sum())
            said = float(re.search(r"([\d,.]+) in all", group.detail).group(1).replace(",", ""))
            assert said == pytest.approx(total, abs=0.6)
            heads += 1
    assert heads == 3


def test_that_lanes_never_hold_two_batches_at_once_and_lose_none():
    lives = [Life(code=str(n), number=n, spans=(("bed", n % 7, n % 7 + 3 + n % 5),)) for n in range(60)]
    lanes = lanes_of(lives)
    assert sorted(life.code for lane in lanes for life in lane) == sorted(life.code for life in lives)
    for lane in lanes:
        assert all(one.end <= after.first for one, after in pairwise(lane))
    most = max(sum(life.first <= day < life.end for life in lives) for day in range(20))
    assert len(lanes) == most


def test_that_the_season_plan_names_its_sources_and_a_sum_to_check():
    said = text_of(made("season-plan"))
    assert "Somerville" in said
    assert "Rakocy" in said
    match = re.search(r"(\d+) g feed a day ÷ ([\d.]+) m² planted = (\d+) g/m²", said)
    feed, area, ratio = map(float, match.groups())
    assert feed / area == pytest.approx(ratio, rel=0.03)


def test_that_the_shopping_list_is_the_order_list():
    farm = sample()
    ask = farm.ask(weeks=13)
    lines = order_list(farm.farm, farm.forecast, ask.catalogue, first_day=0, last_day=13 * 7)
    table = made("shopping", weeks=13).tables[0]
    assert [float(row[2].value) for row in table.rows] == pytest.approx(
        [line.amount for line in lines], rel=1e-5
    )
    assert len(table.groups) == len({line.month for line in lines})
    assert all(re.search(r"in the house by \w{3} \d+ \w{3} 2027", group.detail) for group in table.groups)


def test_that_the_hand_over_lists_what_was_built_and_calls_blanks_not_recorded():
    farm = sample()
    said = text_of(made("hand-over"))
    for thing in (*farm.farm.beds, *farm.farm.tanks, *farm.farm.filters, *farm.farm.fish_groups):
        assert thing.name in said
    assert "3,000 L" in said
    pump = table_named(made("hand-over"), "Pump")
    assert {row[1].text for row in pump.rows} == {"not recorded"}
    depth = next(
        row for row in table_named(made("hand-over"), "Beds").rows if row[0].text == "Seedling bench"
    )
    assert depth[4].text == "not recorded"


def test_that_the_water_of_a_raft_bed_is_area_times_depth():
    bed = next(bed for bed in sample().farm.beds if bed.name == "North raft")
    row = next(r for r in table_named(made("hand-over"), "Beds").rows if r[0].text == "North raft")
    litres = float(row[5].text.split(NO_BREAK)[0].replace(",", ""))
    assert litres == pytest.approx(bed.area_m2 * bed.depth_cm * 10, rel=0.01)


def test_that_the_monthly_report_tells_what_was_recorded_from_what_was_only_planned():
    bare = looked(with_water(bare_farm()))
    bare = looked(replace(bare.farm, readings=(), fish_events=()))
    said = text_of(made("monthly-report", farm=bare))
    for sentence in (
        "no picking was noted",
        "No test of the water was recorded",
        "No sample of fish was recorded",
        "No feed was noted.",
        "Nothing was noted as done; see the task sheets.",
    ):
        assert sentence in said
    group = bare.farm.fish_groups[0]
    fed = FishEvent(
        id=id_from("fed"), group=group.id, on=bare.farm.settings.plan_from, kind=FishEventKind.FEED_GIVEN,
        days=7, feed_g_per_day=150,
    )  # fmt: skip
    known = looked(replace(with_water(bare_farm()), fish_events=(fed, *with_water(bare_farm()).fish_events)))
    said = text_of(made("monthly-report", farm=known))
    for sentence in ("2 fish found dead", "a sample weighed 75 g each", "Feed noted: 1.1 kg."):
        assert sentence in said
    assert "No sample" not in said
    assert "Near the edge of the band, watch: pH 7.4" in said


def test_that_the_monthly_report_has_three_charts():
    report = made("monthly-report", from_on=MONDAY)
    charts = [part for section in report.sections[:4] for part in section.parts if isinstance(part, Drawing)]
    harvest_and_fish, water = charts
    assert harvest_and_fish.says.count("; ") == 1
    assert water.says


def test_that_the_sheets_of_an_empty_farm_say_what_is_missing():
    assert "There is no fish tank" in text_of(made("feed-sheet", farm=empty()))
    assert "There is no loop of water" in text_of(made("water-log", farm=empty()))
    assert "There are no beds" in text_of(made("bed-map", farm=empty()))
    assert "nothing is used" in text_of(made("shopping", farm=empty()))


@pytest.mark.parametrize(
    "key", ["harvest-record", "week-tasks", "water-log", "scouting", "fish-sampling", "feed-sheet"]
)
def test_that_work_is_signed_with_initials_and_time(key):
    headings = {c.heading for t in made(key).tables for c in t.columns}
    units = {c.unit for t in made(key).tables for c in t.columns}
    assert "Initials" in headings
    assert "Time" in headings or "time" in units


def test_that_what_hangs_on_the_wall_is_read_at_a_step_and_a_half():
    for key, column in (("seeding-calendar", "crop"), ("seeding-calendar", "seeds"), ("maintenance", "task")):
        table = made(key, large=True).tables[0]
        found = next(c for c in table.columns if c.key == column)
        assert found.main.least_pt >= WALL_LEAST_PT
    assert document_named("maintenance").is_large_on(A3)
    assert document_named("seeding-calendar").is_large_on(TABLOID)
    assert not document_named("seeding-calendar").is_large_on(A4)


@pytest.mark.parametrize("document", DOCUMENTS, ids=lambda document: document.key)
def test_that_no_row_is_set_below_eleven_points_and_bench_sheets_tell_their_work_at_fourteen(document):
    for table in sample().report(document).tables:
        for column in table.columns:
            assert column.detail.least_pt >= 11.0
            assert column.main.least_pt >= 11.0
    if document.key == "week-tasks":
        assert made("week-tasks").tables[0].columns[1].main.least_pt >= BENCH_LEAST_PT


@pytest.mark.parametrize("key", ["season-plan", "week-tasks", "shopping", "feed-sheet"])
def test_that_no_date_can_be_misread(key):
    assert not re.search(r"\b\d{1,2}/\d{1,2}\b", text_of(made(key)))


def test_that_the_maintenance_calendar_keeps_to_its_weeks_wherever_it_begins():
    first = made("maintenance", weeks=8).tables[0]
    later = made(
        "maintenance", weeks=4, from_on=sample().farm.settings.plan_from + timedelta(weeks=4)
    ).tables[0]
    for row, after in zip(first.rows, later.rows, strict=True):
        assert [cell.box for cell in row[6:10]] == [cell.box for cell in after[2:6]]


def test_that_only_what_is_on_the_farm_is_looked_after():
    assert "Siphons" in text_of(made("maintenance"))
    bare = looked(replace(bare_farm(), beds=bare_farm().beds[:2]))
    said = text_of(made("maintenance", farm=bare))
    assert "Siphons" not in said
    assert "Filters" not in said


def test_that_every_sign_and_step_has_its_picture_and_its_ground():
    signs = sheet_file("symptoms")
    for row in (*signs["leaf"], *signs["water"]):
        assert row["picture"] in NAMES
        assert row["basis"]
    assert len(sheet_file("emergency")["step"]) == 5
    for step in sheet_file("emergency")["step"]:
        assert pictogram(step["picture"]).shapes
    for task in sheet_file("maintenance")["task"]:
        assert task["basis"]
        assert task["every_weeks"] >= 1


def test_that_each_figure_of_the_sheets_has_a_row_that_says_how_sure_it_is():
    book = sample().ask().catalogue
    rows = [figure for path, figure in book.figures.items() if path.startswith("coefficient/sheets/")]
    assert len(rows) == 5
    for figure in rows:
        assert figure.source or figure.confidence is Confidence.COMMON_PRACTICE


def fixed_heads(report):
    """What a document heads its parts with, but for the groups, which are weeks and names."""
    heads = {report.title, *(section.heading for section in report.sections)}
    for section in report.sections:
        heads |= {part.title for part in section.parts if isinstance(part, Caution)}
    return heads | {column.heading for table in report.tables for column in table.columns}


def all_heads(report):
    heads = fixed_heads(report)
    for section in report.sections:
        heads |= {part.text for part in section.parts if isinstance(part, Paragraph) and part.leads}
    groups = {group.heading for table in report.tables for group in table.groups}
    return heads | groups | {heading.partition(", ")[0] for heading in groups}


@pytest.mark.parametrize("name", LANGUAGES)
def test_that_words_of_a_second_language_belong_to_headings_there_are_and_are_marked(name):
    found = second_language(name)
    assert not found.reviewed
    heads = {head for document in DOCUMENTS for head in all_heads(sample().report(document, weeks=4))}
    assert set(found.words) <= heads, set(found.words) - heads


SIGNS = {"", "pH", "EC", "TAN", "NO₂", "NO₃", "KH", "No."}


@pytest.mark.parametrize("name", LANGUAGES)
@pytest.mark.parametrize("document", DOCUMENTS, ids=lambda document: document.key)
def test_that_no_heading_of_a_sheet_is_left_in_english_only(document, name):
    heads = fixed_heads(sample().report(document)) - SIGNS
    named = {one.name for one in (*sample().farm.loops, *sample().farm.beds, *sample().farm.tanks)}
    second = second_language(name)
    left = {head for head in heads if second.beside(head) == head}
    left = {head for head in left if not any(head.startswith(one) for one in named)}
    assert {head for head in left if not re.fullmatch(r"W\d\d|Barrel \d", head)} == set()


@pytest.mark.parametrize("name", LANGUAGES)
@pytest.mark.parametrize("document", DOCUMENTS, ids=lambda document: document.key)
def test_that_every_caution_of_a_sheet_is_told_whole_in_both_languages(document, name):
    report = in_two_languages(sample().report(document), second_language(name))
    cautions = [part for section in report.sections for part in section.parts if isinstance(part, Caution)]
    english = {caution.text for caution in sample().ask().catalogue.cautions.values()}
    assert {caution.text for caution in cautions} <= english
    assert [caution.title for caution in cautions if not caution.second] == []
    assert [caution.title for caution in cautions if caution.second in english] == []


def test_that_the_second_language_of_a_caution_stands_above_its_english_in_one_frame(qapp):
    report = in_two_languages(made("emergency"), second_language("spanish"))
    words = [mark.text for page in laid_out(report, A4) for mark in page.marks if isinstance(mark, Words)]
    spanish = next(at for at, text in enumerate(words) if text.startswith("Deje de alimentar"))
    english = next(at for at, text in enumerate(words) if text.startswith("Stop feeding. Run battery"))
    assert spanish < english


def test_that_a_heading_with_a_name_behind_it_is_told_twice_but_for_the_name():
    second = SecondLanguage(name="Test", reviewed=True, words={"Harvest": "Ernte", "Who, when": "Wer"})
    assert second.beside("Harvest, Okra, red") == "Harvest · Ernte, Okra, red"
    assert second.beside("Who, when") == "Who, when · Wer"
    assert second.beside("Okra, Harvest") == "Okra, Harvest"


def test_that_crops_of_the_seeding_calendar_have_their_name_in_the_second_language():
    ask = sample().ask(weeks=9)
    ask = replace(ask, catalogue=named_beside(ask.catalogue, CODE_OF_LANGUAGE["filipino"]))
    calendar = document_named("seeding-calendar").make(ask)
    sown, figures = calendar.tables
    crops = {
        tuple(line.text for line in row[1].lines): row[1].lines[-1].tone
        for group in sown.groups
        for row in group.rows
    }
    assert (
        crops["Leaf lettuce", "(Letsugas na dahon)"] is Tone.DETAIL
    )  # wraps whole where the column is narrow
    assert {row[0].lines[0].text for row in figures.groups[0].rows} == {" ".join(crop) for crop in crops}


def test_that_a_sheet_does_not_say_that_something_stands_on_a_side_it_may_not_stand_on():
    card, poster = made("emergency"), made("year-poster")
    assert "back of this card" not in text_of(card)
    assert "Call" in {section.heading for section in card.sections}
    assert "stands below" not in text_of(poster)


def test_that_a_heading_without_a_word_stays_in_english_and_a_checked_language_is_not_excused():
    second = SecondLanguage(name="Test", reviewed=True, words={"Date": "Datum"})
    report = in_two_languages(made("harvest-record"), second)
    columns = {column.heading: column.second for column in report.tables[0].columns}
    assert columns["Date"] == "Datum"
    assert columns["Crop"] == ""
    assert not any("native speaker" in line for line in report.header_lines)


@pytest.mark.parametrize(("low", "high"), [(0, 0.3), (0, 1), (6.4, 7.2), (0, 23), (0, 99_999), (20, 20)])
def test_that_ticks_are_round_few_and_hold_the_values(low, high):
    ticks = ticks_of(low, high)
    assert ticks[0] <= low
    assert ticks[-1] >= high
    assert 2 <= len(ticks) <= 7


def test_that_bars_are_as_high_as_their_amounts():
    drawing = bar_chart([1.0, 2.0, 4.0], ["a", "b", "c"], wanted=[0, 0, 0], width_mm=170, height_mm=40)
    high = [s.height_mm for s in drawing.shapes if isinstance(s, DrawnRect)]
    assert high[1] == pytest.approx(2 * high[0])
    assert high[2] == pytest.approx(4 * high[0])


def test_that_a_batch_crosses_the_bed_map_from_the_day_it_comes_to_the_day_it_goes():
    farm = sample()
    table = farm.forecast.batches
    for placement in farm.farm.placements[:40]:
        row = table.row_of[placement.batch]
        first, end = table.phase_days(row, placement.phase)
        if placement.phase is not Phase.BED or first < 0 or end > 300 or end <= first:
            continue
        code = farm.farm.batches[row].code
        start = farm.forecast.ruler.date_of(first)
        assert code in text_of(made("bed-map", from_on=start))
        assert code not in text_of(made("bed-map", from_on=farm.forecast.ruler.date_of(end + 6)))


def test_that_hostile_names_make_no_difference_to_numbers():
    ask: Ask = hostile().ask(weeks=1)
    assert ask.span_words.startswith("W14")
    assert len(made("week-tasks", farm=hostile()).tables[0].rows) > 8


def test_that_the_page_on_paper_lists_every_document(root):
    page = (root / "docs" / "paper.md").read_text(encoding="utf-8")
    told = [line.split("`")[1] for line in page.splitlines() if line.startswith("| `") and "| A" in line]
    assert told == [document.key for document in DOCUMENTS]
    for document in DOCUMENTS:
        assert f"| {document.weeks} | {document.says} |" in page


def test_that_the_year_poster_has_every_week_with_codes_to_be_read_at_a_step_and_a_half(qapp):
    farm = sample()
    report = made("year-poster")
    (table,) = report.tables
    works = [column for column in table.columns if column.key.startswith("work")]
    assert all(column.detail.least_pt >= 20 and column.main.least_pt >= 20 for column in works)
    weeks = [row[at].text for at in (0, 2) for row in table.rows if row[at].text]
    assert len(weeks) == 52
    assert weeks[0].startswith("W01;")
    told = [cell.text for row in table.rows for cell in (row[1], row[3])]
    sown = next(batch for batch in farm.farm.batches if batch.sow_on >= farm.farm.settings.plan_from)
    code = farm.ask().catalogue.crops[sown.crop].code
    week = farm.forecast.ruler.week_of(sown.sow_on)
    assert code in table.rows[week][1].text.split("●")[0]
    assert any("▼" in text and "●" in text for text in told)
    assert farm.ask().catalogue.crops[sown.crop].name in text_of(report)
    words = [mark for page in laid_out(report, A3) for mark in page.marks if isinstance(mark, Words)]
    marked = [mark for mark in words if f"▼{NO_BREAK}" in mark.text]
    assert len(marked) > 20
    assert all(mark.pt >= 20 for mark in marked)


FIXED_SHEETS = ("emergency", "maintenance", "symptoms")


@pytest.mark.parametrize("name", LANGUAGES)
def test_that_every_step_sign_and_task_of_the_sheets_is_told_in_the_second_language(name):
    second = second_language(name)
    texts = {
        line.text
        for key in FIXED_SHEETS
        for table in made(key).tables
        for row in table.rows
        for cell in row
        for line in cell.lines
        if any(letter.isalpha() for letter in line.text)
    }
    assert len(texts) > 100
    assert sorted(text for text in texts if not second.told(text)) == []


@pytest.mark.parametrize("name", LANGUAGES)
def test_that_both_languages_have_the_same_texts_with_the_same_blanks(name):
    texts, other = second_language(name).texts, second_language(LANGUAGES[0]).texts
    assert set(texts) - set(other) <= {"Iron: {what}"}
    wrong = [text for text, said in texts.items() if not blanks(said) <= blanks(text)]
    assert wrong == []


def blanks(text):
    return set(re.findall(r"{\w+}", text))


def test_that_the_steps_of_the_emergency_card_stay_together_in_each_language(qapp):
    report = in_two_languages(made("emergency"), second_language("filipino"))
    pages = [{mark.text for mark in page.marks if isinstance(mark, Words)} for page in laid_out(report, A5)]
    assert {"Stop feeding.", "Call for help."} <= pages[0]
    assert {"Itigil ang pagpapakain.", "Tumawag ng tulong."} <= pages[1]


def test_that_a_line_with_numbers_is_told_with_its_numbers():
    second = second_language("spanish")
    assert second.told("every 4\u00a0weeks") == "cada 4 semanas"
    assert second.told("80 fish of 38 g") == "80 peces de 38 g"
    assert second.told("no such line") == ""
    assert second.both("seeds") == "seeds · semillas"
