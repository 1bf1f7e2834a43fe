"""The owner's month is told from the log: sums by hand, feed over gain, never a caretaker's note."""

from dataclasses import replace
from datetime import UTC, datetime, time, timedelta

import pytest

from planner.farm.fish import FishEvent, FishEventKind
from planner.farm.ids import id_from
from planner.farm.log import Happening, LogEntry, Reason, Unit
from planner.paper.documents.month_log import MonthLog
from planner.paper.qt_writer import laid_out
from planner.paper.registry import document_named
from planner.paper.report import Drawing
from planner.paper.style import A4
from planner.paper.words import day_words
from tests.paper.documents_helpers import looked, sample
from tests.paper.test_documents_say import text_of

SECRET = "the owner pays late"


def entry(name, what, on, **told):
    return LogEntry(id=id_from("log entry", name), code=name, what=what, on=on, **told)


@pytest.fixture(scope="module")
def month():
    """A month of the sample farm with its work noted: pickings, feed, two samples, a pest, a note."""
    farm = sample().farm
    first = farm.settings.plan_from
    group = farm.fish_groups[0]
    heads = next(batch for batch in farm.batches if batch.crop == "lettuce-butterhead")
    basil = next(batch for batch in farm.batches if batch.crop == "basil")
    day = [first + timedelta(days=at) for at in range(28)]
    entries = [
        entry("a", Happening.PICKED, day[1], batch=heads.id, amount=10, unit=Unit.HEADS, notes=SECRET),
        entry("b", Happening.PICKED, day[9], batch=heads.id, amount=12, unit=Unit.HEADS),
        entry("c", Happening.PICKED, day[10], batch=basil.id, amount=1.5, unit=Unit.KG),
        entry("wrong", Happening.PICKED, day[11], batch=basil.id, amount=99, unit=Unit.KG),
        entry("right", Happening.WITHDRAWN, day[11], batch=basil.id, corrects=id_from("log entry", "wrong")),
        entry("d", Happening.PEST, day[12], batch=basil.id, amount=2, unit=Unit.SCORE, reason=Reason.HEAT),
        entry("e", Happening.NOTE, day[13], notes=SECRET),
        entry("f", Happening.PICKED, first - timedelta(days=1), batch=heads.id, amount=50, unit=Unit.HEADS),
    ]
    fish = [
        FishEvent(id=id_from("s1"), group=group.id, on=day[2], kind=FishEventKind.SAMPLE, mean_weight_g=100),
        FishEvent(id=id_from("s2"), group=group.id, on=day[12], kind=FishEventKind.SAMPLE, mean_weight_g=125),
        *(
            FishEvent(
                id=id_from("fed", str(at)), group=group.id, on=day[at], kind=FishEventKind.FEED_GIVEN,
                days=1, feed_g_per_day=150, notes=SECRET,
            )
            for at in range(2, 12)
        ),
    ]  # fmt: skip
    return looked(replace(farm, log_entries=tuple(entries), fish_events=tuple(fish)))


def test_that_pickings_are_summed_by_crop_and_what_was_withdrawn_does_not_count(month):
    picked = MonthLog(month.ask()).picked()
    assert picked["lettuce-butterhead"].heads == 22
    assert picked["basil"].kg == 1.5
    assert set(picked) == {"lettuce-butterhead", "basil"}


def test_that_pickings_fall_into_their_weeks(month):
    log = MonthLog(month.ask())
    weeks = log.picked_by_week()
    each = log.picked()["lettuce-butterhead"].kg_of_all / 22
    assert weeks == pytest.approx([10 * each, 12 * each + 1.5, 0, 0])
    assert each > 0


def test_that_feed_over_gain_is_the_sum_by_hand(month):
    """Fed 10 days of 150 g; each fish gained 25 g over the same days."""
    group = month.forecast.loops[0].groups[0]
    alive = group.count[month.forecast.ruler.day_of(month.farm.settings.plan_from) :][2:12]
    by_hand = 1500 / (float(alive.sum()) * 2.5)
    (said,) = MonthLog(month.ask()).feed_ratios()
    assert float(said.rsplit(" ", 1)[1]) == pytest.approx(by_hand, abs=0.01)


def test_that_feed_over_gain_is_not_told_when_days_are_missing(month):
    fewer = replace(month.farm, fish_events=month.farm.fish_events[:-3])
    (said,) = MonthLog(looked(fewer).ask()).feed_ratios()
    assert "noted on 7 of the 10 days" in said
    assert "÷ gain" in said


def test_that_no_note_is_printed_for_the_owner(month):
    said = text_of(month.report(document_named("monthly-report")))
    assert SECRET not in said
    assert "pests, BAS" in said
    assert "many (heat)" in said
    assert "22 heads" in said


def test_that_the_report_is_one_page_with_three_charts_while_there_are_few_crops(qapp, month):
    report = month.report(document_named("monthly-report"))
    assert len(laid_out(report, A4)) == 1
    drawings = [part for section in report.sections for part in section.parts if isinstance(part, Drawing)]
    stock, water = drawings
    assert stock.says.startswith("bars: ")
    assert stock.says.count("; ") == 1
    assert water.says


def test_that_the_harvest_record_shows_what_is_noted_already(month):
    said = text_of(month.report(document_named("harvest-record"), weeks=4))
    assert "Noted in the program already" in said
    assert "10 heads" in said
    assert "99 kg" not in said
    assert "Noted in the program already" not in text_of(sample().report(document_named("harvest-record")))


def test_that_the_task_sheet_carries_over_what_was_not_noted_as_done():
    farm = sample().farm
    first = farm.settings.plan_from
    late, later = sorted((b for b in farm.batches if b.sow_on >= first), key=lambda batch: batch.sow_on)[:2]
    noted = entry("n", Happening.NOTE, first)
    known = looked(replace(farm, log_entries=(noted,)))
    monday = first + timedelta(days=14)
    ask = replace(known.ask(from_on=monday, weeks=1), printed_on=datetime.combine(monday, time(8), UTC))
    head = text_of(document_named("week-tasks").make(ask)).partition("Every day")[0]
    assert "Carried over, not noted as done" in head
    assert f"due {day_words(late.sow_on)}, {(monday - late.sow_on).days} days late" in head
    sown = entry("s", Happening.SOWN, late.sow_on, batch=late.id)
    done = looked(replace(farm, log_entries=(noted, sown)))
    ask = replace(ask, farm=done.farm, forecast=done.forecast)
    head = text_of(document_named("week-tasks").make(ask)).partition("Every day")[0]
    assert f"Sow\n{late.code}" not in head.replace(", ", "\n")
    assert later.code in head


def test_that_a_sheet_of_a_farm_that_logs_nothing_carries_nothing_over():
    assert "Carried over" not in text_of(sample().report(document_named("week-tasks")))
