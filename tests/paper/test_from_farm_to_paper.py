"""From a farm through the shipped catalogue and the real forecast to the printed sheet and back."""

from planner.farm.crops import Phase
from planner.farm.site import WeekStart
from planner.forecast.engine import Forecaster
from planner.paper.csv_form import csv_text
from planner.paper.qt_writer import write_pdf
from planner.paper.seeding_calendar import seeding_calendar
from planner.paper.style import A3, A4
from planner.paper.words import day_words, week_name
from tests.paper.helpers import PRINTED, START, book, calendar_of, pdf_text, sown_farm, squeezed, strange_farm


def calendar_by_engine(farm, *, weeks=9, large=False):
    forecaster = Forecaster(book())
    forecast = forecaster.forecast(farm)
    report = seeding_calendar(
        farm, forecast, forecaster.catalogue_for(farm), from_on=START, weeks=weeks, printed_on=PRINTED,
        large=large,
    )  # fmt: skip
    return forecast, report


def test_that_seeds_dates_and_codes_of_the_real_forecast_reach_the_paper(qapp, tmp_path):
    farm = sown_farm(16)
    forecast, report = calendar_by_engine(farm, large=True)
    write_pdf(report, tmp_path / "wall.pdf", A3.turned(landscape=True))
    text = squeezed(pdf_text(tmp_path / "wall.pdf"))
    table = forecast.batches
    for row, batch in enumerate(farm.batches):
        assert batch.code in text
        assert f"{int(table.seeds[row]):,}" in text
        moved = forecast.ruler.date_of(table.phase_days(row, Phase.BED)[0])
        said = f"{week_name(moved, WeekStart.MONDAY)} {day_words(moved, beside=batch.sow_on)}"
        assert squeezed(said) in text
    rows = {cells[4].lines[0].text: cells[2].lines[0].text for cells in report.tables[0].rows}
    assert rows == {b.code: f"{int(table.seeds[n]):,}" for n, b in enumerate(farm.batches)}


def test_that_own_crops_of_the_grower_reach_the_paper_by_their_names(qapp, tmp_path):
    _, report = calendar_by_engine(strange_farm(), weeks=2)
    assert write_pdf(report, tmp_path / "bench.pdf", A4.turned(landscape=True)) > 1
    assert "Extraordinarily long name" in csv_text(report)


def test_that_the_farms_made_by_hand_for_these_tests_say_what_the_forecast_says():
    farm = sown_farm(16)
    _, report = calendar_by_engine(farm)
    assert report.tables == calendar_of(farm).tables
