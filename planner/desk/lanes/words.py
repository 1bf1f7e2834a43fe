"""Every word the lanes show or speak, ready for translation, and numbers and dates as the locale has them.

Must know nothing of painting or of farms as a whole.
"""

from __future__ import annotations

from datetime import date
from functools import lru_cache
from typing import Final

from PySide6.QtCore import QCoreApplication, QDate, QLocale

from planner.desk.lanes.scene import BandMark, Bar, FishMark, FishMarkKind
from planner.farm.crops import Stage

_G_PER_KG: Final = 1000
_MONTH_SHORT: Final = QLocale.FormatType.ShortFormat


def stage_letter(stage: Stage) -> str:
    """Return the letter that stands for a stage."""
    letters = {
        Stage.GERMINATION: QCoreApplication.translate("Lanes", "G", "letter of the stage germination"),
        Stage.NURSERY: QCoreApplication.translate("Lanes", "N", "letter of the stage nursery"),
        Stage.SPACING: QCoreApplication.translate("Lanes", "S", "letter of the stage spacing"),
        Stage.BED: QCoreApplication.translate("Lanes", "B", "letter of the stage bed"),
        Stage.PICKING: QCoreApplication.translate("Lanes", "P", "letter of the stage picking"),
        Stage.CLEARING: QCoreApplication.translate("Lanes", "C", "letter of the stage clearing"),
    }
    return letters[stage]


def stage_name(stage: Stage) -> str:
    """Return what a stage is called."""
    names = {
        Stage.GERMINATION: QCoreApplication.translate("Lanes", "germination"),
        Stage.NURSERY: QCoreApplication.translate("Lanes", "nursery"),
        Stage.SPACING: QCoreApplication.translate("Lanes", "spacing"),
        Stage.BED: QCoreApplication.translate("Lanes", "bed"),
        Stage.PICKING: QCoreApplication.translate("Lanes", "picking"),
        Stage.CLEARING: QCoreApplication.translate("Lanes", "clearing"),
    }
    return names[stage]


def band_letter(band: BandMark) -> str:
    """Return the letter that stands for a band of supply."""
    letters = {
        BandMark.SHORT: QCoreApplication.translate("Lanes", "S", "letter of the band short"),
        BandMark.THIN: QCoreApplication.translate("Lanes", "T", "letter of the band thin"),
        BandMark.MET: QCoreApplication.translate("Lanes", "M", "letter of the band met"),
        BandMark.AMPLE: QCoreApplication.translate("Lanes", "A", "letter of the band ample"),
        BandMark.NO_DEMAND: QCoreApplication.translate("Lanes", "–", "letter of the band no demand"),
    }
    return letters[band]


def band_name(band: BandMark) -> str:
    """Return what a band of supply is called."""
    names = {
        BandMark.SHORT: QCoreApplication.translate("Lanes", "short"),
        BandMark.THIN: QCoreApplication.translate("Lanes", "thin"),
        BandMark.MET: QCoreApplication.translate("Lanes", "met"),
        BandMark.AMPLE: QCoreApplication.translate("Lanes", "ample"),
        BandMark.NO_DEMAND: QCoreApplication.translate("Lanes", "no demand"),
    }
    return names[band]


def element_symbol(element: str) -> str:
    """Return the symbol of an element, the same in every language."""
    return element.capitalize()


def mark_letter(kind: FishMarkKind) -> str:
    """Return the letter that stands for what happens to a fish group."""
    letters = {
        FishMarkKind.STOCKED: QCoreApplication.translate("Lanes", "S", "letter of fish stocked"),
        FishMarkKind.HARVEST: QCoreApplication.translate("Lanes", "H", "letter of fish harvested"),
        FishMarkKind.ADDED: QCoreApplication.translate("Lanes", "A", "letter of fish added"),
        FishMarkKind.OFF_FEED: QCoreApplication.translate("Lanes", "O", "letter of days off feed"),
    }
    return letters[kind]


def mark_name(kind: FishMarkKind) -> str:
    """Return what happens to a fish group, in a word."""
    names = {
        FishMarkKind.STOCKED: QCoreApplication.translate("Lanes", "stocked"),
        FishMarkKind.HARVEST: QCoreApplication.translate("Lanes", "harvested"),
        FishMarkKind.ADDED: QCoreApplication.translate("Lanes", "added"),
        FishMarkKind.OFF_FEED: QCoreApplication.translate("Lanes", "off feed"),
    }
    return names[kind]


def whole(number: int) -> str:
    """Return a whole number as the locale writes it."""
    return QLocale().toString(number)


def figure(value: float) -> str:
    """Return a number with about two figures that mean something."""
    if value >= 10 or value == 0:
        return QLocale().toString(round(value))
    return QLocale().toString(value, "f", 1 if value >= 1 else 2)


def grams(value_g: float) -> str:
    """Return a mass in g or kg, whichever reads better."""
    if value_g >= _G_PER_KG:
        return QCoreApplication.translate("Lanes", "{value} kg").format(value=figure(value_g / _G_PER_KG))
    return QCoreApplication.translate("Lanes", "{value} g").format(value=figure(value_g))


def day_month(day: int) -> str:
    """Return day and short month, such as 30 Mar."""
    on = date.fromordinal(day)
    return f"{on.day} {month_short(day)}"


def day_month_year(day: int) -> str:
    """Return day, short month and year."""
    return f"{day_month(day)} {date.fromordinal(day).year}"


def weekday_short(day: int) -> str:
    """Return the short name of the day of the week."""
    return QLocale().dayName(date.fromordinal(day).isoweekday(), _MONTH_SHORT)


def month_short(day: int) -> str:
    """Return the short name of the month."""
    return _months(QLocale().name())[date.fromordinal(day).month - 1]


@lru_cache(maxsize=4)
def _months(locale: str) -> tuple[str, ...]:
    names = QLocale(locale)
    return tuple(names.standaloneMonthName(month, _MONTH_SHORT) for month in range(1, 13))


def month_year(day: int) -> str:
    """Return month and year."""
    on = date.fromordinal(day)
    return QLocale().toString(QDate(on.year, on.month, 1), "MMMM yyyy")


def month_year_short(day: int) -> str:
    """Return short month and year."""
    return f"{month_short(day)} {date.fromordinal(day).year}"


def week_label(number: int) -> str:
    """Return the short name of a week of the year."""
    return QCoreApplication.translate("Lanes", "W{number}", "short for week").format(number=f"{number:02d}")


def quarter_label(day: int) -> str:
    """Return the short name of a quarter of the year."""
    return QCoreApplication.translate("Lanes", "Q{number}", "short for quarter").format(
        number=(date.fromordinal(day).month + 2) // 3
    )


def bar_titles(bar: Bar) -> tuple[str, ...]:
    """Return what is written on a bar, longest first: crop, batch and plants, down to the crop alone."""
    named, bare = bar.code, bar.code
    if not bar.code.upper().startswith(bar.crop.upper()):
        named = f"{bar.crop} {bar.code}"
    else:
        bare = bar.code[len(bar.crop) :].lstrip("-_ .") or bar.code
    return (f"{named} · {whole(bar.plants)}", named, bare, bar.crop)


def bar_summary(bar: Bar, row_name: str) -> str:
    """Return a bar in a sentence, for reading aloud."""
    text = QCoreApplication.translate(
        "Lanes", "Batch {code}, {crop}, {plants} plants, {place}, from {start} to {end}."
    )
    said = text.format(
        code=bar.code,
        crop=bar.crop_name,
        plants=whole(bar.plants),
        place=row_name,
        start=day_month_year(bar.start),
        end=day_month_year(bar.end - 1),
    )
    stages = [f"{stage_name(each.stage)} {day_month(each.start)}" for each in bar.segments]
    said += " " + QCoreApplication.translate("Lanes", "Stages: {stages}.").format(stages=", ".join(stages))
    return said + (" " + QCoreApplication.translate("Lanes", "Locked.") if bar.locked else "")


def row_title(group_name: str, row_name: str) -> str:
    """Return the name of a row with that of its bed."""
    return QCoreApplication.translate("Lanes", "{row} of {bed}").format(row=row_name, bed=group_name)


def moved(bar: Bar, days: int, place: str) -> str:
    """Return what a drag would do, for the label beside the pointer."""
    text = QCoreApplication.translate("Lanes", "{code}: {start} – {end}").format(
        code=bar.code, start=day_month(bar.start), end=day_month_year(bar.end - 1)
    )
    more = " · ".join(each for each in (days_moved(days) if days else "", place) if each)
    return f"{text}\n{more}" if more else text


def days_moved(days: int) -> str:
    """Return by how much something moves, with its direction."""
    if days > 0:
        return _plural(
            QCoreApplication.translate("Lanes", "1 day later"),
            QCoreApplication.translate("Lanes", "{number} days later"),
            days,
        )
    return _plural(
        QCoreApplication.translate("Lanes", "1 day earlier"),
        QCoreApplication.translate("Lanes", "{number} days earlier"),
        -days,
    )


def locked_refusal(bar: Bar) -> str:
    """Return why a locked batch stays."""
    text = QCoreApplication.translate("Lanes", "Batch {code} is locked. Unlock it to move it.")
    return text.format(code=bar.code)


def unplaced_refusal() -> str:
    """Return why a bar cannot be dropped among the unplaced ones."""
    return QCoreApplication.translate("Lanes", "A bar cannot be put here. Drop it on a raft, block or tray.")


def no_other_unit(bar: Bar) -> str:
    """Return that no further unit has room."""
    text = QCoreApplication.translate("Lanes", "Batch {code} fits on no further unit in this direction.")
    return text.format(code=bar.code)


def moved_done(code: str, text: str) -> str:
    """Return what is said when a batch has been moved."""
    return QCoreApplication.translate("Lanes", "Batch {code} moved. {text}").format(code=code, text=text)


def _plural(one: str, many: str, number: int) -> str:
    return one if number == 1 else many.format(number=whole(number))


def feed_scale(top_g: float) -> str:
    """Return what the height of the feed plot stands for."""
    return QCoreApplication.translate("Lanes", "feed, to {mass}/day").format(mass=grams(top_g))


def biomass_scale(top_g: float) -> str:
    """Return what the height of the biomass line stands for."""
    return QCoreApplication.translate("Lanes", "fish, to {mass}").format(mass=grams(top_g))


def mark_text(mark: FishMark) -> str:
    """Return an event of a fish group in two words."""
    name = mark_name(mark.kind)
    if mark.count is None:
        return name
    return QCoreApplication.translate("Lanes", "{count} {event}").format(count=whole(mark.count), event=name)


def limiting_element() -> str:
    """Return the title of the strip that names the limiting element."""
    return QCoreApplication.translate("Lanes", "Limiting element")


def element_full(element: str) -> str:
    """Return name and symbol of an element."""
    names = {
        "n": QCoreApplication.translate("Lanes", "Nitrogen"),
        "p": QCoreApplication.translate("Lanes", "Phosphorus"),
        "k": QCoreApplication.translate("Lanes", "Potassium"),
        "ca": QCoreApplication.translate("Lanes", "Calcium"),
        "mg": QCoreApplication.translate("Lanes", "Magnesium"),
        "fe": QCoreApplication.translate("Lanes", "Iron"),
    }
    return f"{element_symbol(element)}  {names.get(element, '')}".rstrip()


def mass_per_week(top_g: float) -> str:
    """Return what the height of a plot of supply and demand stands for."""
    return QCoreApplication.translate("Lanes", "to {mass} a week").format(mass=grams(top_g))


def feed_rate_ratio() -> str:
    """Return the title of the plot of feed over planted area."""
    return QCoreApplication.translate("Lanes", "Feed-rate ratio")


def ratio_scale(top: float) -> str:
    """Return what the height of the plot of feed over area stands for."""
    return QCoreApplication.translate("Lanes", "to {value} g/m²/day").format(value=figure(top))


def loop_shown() -> str:
    """Return what the chooser of loops is for."""
    return QCoreApplication.translate("Lanes", "Loop whose balance is shown")


def all_elements() -> str:
    """Return the name of the switch that shows every element."""
    return QCoreApplication.translate("Lanes", "All")


def all_elements_hint() -> str:
    """Return what the switch that shows every element does."""
    return QCoreApplication.translate("Lanes", "Show the bands of all elements")


def lane_titles() -> tuple[str, str, str]:
    """Return the titles of the three lanes, from top to bottom."""
    return (
        QCoreApplication.translate("Lanes", "Fish and feed"),
        QCoreApplication.translate("Lanes", "Beds"),
        QCoreApplication.translate("Lanes", "Balance"),
    )


def view_name() -> str:
    """Return what the whole ruler with its lanes is called."""
    return QCoreApplication.translate("Lanes", "Ruler of weeks")


def why_hint() -> str:
    """Return how the numbers of a week in a lane are asked why."""
    return QCoreApplication.translate(
        "Lanes", "Why? The right button offers the numbers of this week; Ctrl+I asks about those beside it"
    )


def view_help() -> str:
    """Return what the keys do, for reading aloud."""
    return QCoreApplication.translate(
        "Lanes",
        "Arrow keys go from bar to bar. Alt with left or right moves the batch by a day, "
        "with Shift, or by Alt with Page Up or Page Down, by a week. "
        "Alt with up or down moves it to another unit, with plus or minus it is picked a week more or less. "
        "Shift with an arrow chooses the next batch as well, Control with A all in sight. "
        "Enter opens it. Plus and minus zoom.",
    )


def ruler_name() -> str:
    """Return what the ruler above the lanes is called."""
    return QCoreApplication.translate("Lanes", "Years, months and weeks")


def cannot_go() -> str:
    """Return that a batch cannot be moved there, when no better reason is known."""
    return QCoreApplication.translate("Lanes", "The batch cannot go here.")


def no_fish() -> str:
    """Return what the lane of fish says while there are none."""
    return QCoreApplication.translate(
        "Lanes", "No loop of water yet. Its fish and their feed are shown here."
    )


def no_beds() -> str:
    """Return what the lane of beds says while there are none."""
    return QCoreApplication.translate("Lanes", "No beds yet. Every raft, block and tray gets a row here.")


def no_balance() -> str:
    """Return what the lane of the balance says while there is nothing to weigh."""
    return QCoreApplication.translate(
        "Lanes", "Supply and demand of each element are weighed here, week by week."
    )


def supply() -> str:
    """Return what the line in the plot of an element is."""
    return QCoreApplication.translate("Lanes", "supply")


def demand() -> str:
    """Return what the bars in the plot of an element are."""
    return QCoreApplication.translate("Lanes", "demand")


def gap() -> str:
    """Return what the hatched part of a bar of demand is."""
    return QCoreApplication.translate("Lanes", "not covered")
