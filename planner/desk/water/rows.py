"""Readings of a loop as ready rows and as points of a chart. Pure: must know nothing of widgets."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.balance.weeks import loop_ranges
from planner.desk.behind import Behind
from planner.desk.outlook import Outlook
from planner.desk.pages import Ask, Basis, Entered, Fact, Section
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.theme import Theme
from planner.desk.water_words import (
    caution_texts,
    level_words,
    quantity_unit,
    quantity_value,
    quantity_words,
    rough_words,
    span_words,
)
from planner.desk.words import NONE, day_words
from planner.farm.farm import Farm
from planner.farm.fields import NO_ID, Id
from planner.farm.species import ELEMENTS
from planner.farm.water import Quantity, Reading, SolidsBatch
from planner.forecast.values import LoopForecast, SolidsBatchForecast
from planner.forecast.water.courses import Ahead, dissolved_ahead
from planner.forecast.water.meters import MeterBook, meter_book
from planner.forecast.water.readings import ReadingFigures, odd_readings, reading_figures, series
from planner.forecast.water.spans import Span
from planner.forecast.water.targets import Level, TargetBand, target_bands
from planner.forecast.why.solids_batches import SolidsPart
from planner.forecast.why.values import Subject, SubjectKind

Foreseen = tuple[tuple[date, float], ...]
"""What is foreseen: values by date."""

_FORESEEN_WEEKS: Final = 12
_ELEMENT_OF: Final = {
    Quantity.NITRATE_N_MG_PER_L: "n",
    Quantity.P_MG_PER_L: "p",
    Quantity.K_MG_PER_L: "k",
    Quantity.CA_MG_PER_L: "ca",
    Quantity.MG_MG_PER_L: "mg",
    Quantity.FE_MG_PER_L: "fe",
}
_SOLIDS_CAUTION: Final = "solids-as-manure"


@dataclass(frozen=True, slots=True, kw_only=True)
class Point:
    """One reading of a chart; `odd` stands alone, `doubtful` is of a meter overdue for calibration."""

    on: date
    value: float
    odd: bool
    doubtful: bool = False
    reading: Id = NO_ID


@dataclass(frozen=True, slots=True, kw_only=True)
class Course:
    """A quantity over time, with the band it should lie in: bounds, and where watching turns to acting.

    `foreseen` is what the forecast says, a value a week, and `spread` its low and high where those are
    known; `foreseen_asks` has what each is asked. `days` are the first and the last day that are drawn;
    without them those of the values. `calibrated` are days on which a meter was set right: no line is drawn
    across them.
    """

    quantity: Quantity
    points: tuple[Point, ...]
    low: tuple[float, float] | None
    high: tuple[float, float] | None
    foreseen: Foreseen = ()
    spread: tuple[tuple[float, float], ...] = ()
    today: date | None = None
    days: tuple[date, date] | None = None
    calibrated: tuple[date, ...] = ()
    foreseen_asks: tuple[Ask, ...] = ()

    def facts_on(self, day: date) -> tuple[Fact, ...]:
        """Return what can be asked of a day: what was read on it, and what is foreseen for it."""
        name = quantity_words(self.quantity)
        read = [
            Fact(
                label=f"{name}, {day_words(point.on)}",
                value=quantity_value(self.quantity, point.value),
                ask=Entered(about=point.reading, field="value"),
            )
            for point in self.points
            if point.on == day and point.reading
        ]
        foreseen = [
            Fact(
                label=tr("{name} foreseen, {day}", name=name, day=day_words(on)),
                value=rough_words(value, quantity_unit(self.quantity)),
                ask=ask,
            )
            for (on, value), ask in zip(self.foreseen, self.foreseen_asks, strict=False)
            if on == day
        ]
        return (*read, *foreseen)

    @property
    def own_days(self) -> tuple[date, ...]:
        """The days that something is known of, in order."""
        return tuple(sorted((*(point.on for point in self.points), *(on for on, _ in self.foreseen))))


@dataclass(frozen=True, slots=True, kw_only=True, eq=False)
class ReadingBook:
    """The readings of one loop of a farm with the rules they are looked at by."""

    farm: Farm
    loop: Id
    figures: ReadingFigures
    bands: Mapping[Quantity, TargetBand]
    meters: MeterBook

    def of(self, quantity: Quantity) -> tuple[Reading, ...]:
        """Return the readings of a quantity by date."""
        return series(self.farm.readings, quantity, loop=self.loop)

    def level(self, reading: Reading) -> Level | None:
        """Return how a reading stands to its band, None without one."""
        band = self.bands.get(reading.quantity)
        return None if band is None else band.level(reading.value)


def reading_book(farm: Farm, loop: Id, catalogue: Catalogue) -> ReadingBook:
    """Return the readings of a loop with the rules of the catalogue."""
    return ReadingBook(
        farm=farm,
        loop=loop,
        figures=reading_figures(catalogue),
        bands=target_bands(catalogue),
        meters=meter_book(farm),
    )


def reading_columns() -> tuple[Column, ...]:
    """Return the columns of the table of readings."""
    return (
        Column(title=tr("Date")),
        Column(title=tr("What was read")),
        Column(title=tr("Value"), numeric=True),
        Column(title=tr("Band")),
    )


def reading_rows(book: ReadingBook, theme: Theme) -> tuple[Row, ...]:
    """Return one row for each reading of the loop, the newest first."""
    odd = {
        reading.id
        for quantity in {each.quantity for each in book.farm.readings}
        for reading in odd_readings(book.of(quantity), book.figures)
    }
    found = sorted((each for each in book.farm.readings if each.loop == book.loop), key=_on, reverse=True)
    return tuple(_row(reading, book, theme, odd=reading.id in odd) for reading in found)


def _on(reading: Reading) -> date:
    return reading.on


def _row(reading: Reading, book: ReadingBook, theme: Theme, *, odd: bool) -> Row:
    level = book.level(reading)
    band = level_words(level)
    if odd:
        band = tr("{band} · test again", band=band) if band else tr("test again")
    if book.meters.is_doubtful(reading):
        doubt = tr("doubtful: {meter} was overdue", meter=book.meters.meters[reading.meter].name)
        band = f"{band} · {doubt}" if band else doubt
    texts = (
        " ".join(part for part in (day_words(reading.on).partition(" ")[2], reading.at) if part),
        quantity_words(reading.quantity),
        quantity_value(reading.quantity, reading.value),
        band,
    )
    urgency = -1 if level is None else list(Level).index(level)
    return Row(
        id=reading.id,
        texts=texts,
        sort=((reading.on.toordinal(), reading.at), texts[1], reading.value, urgency),
        spoken=", ".join(text for text in texts if text),
        ink=theme.wrong if level is Level.ACT else None,
        asks=_asks(reading, book),
    )


def _asks(reading: Reading, book: ReadingBook) -> tuple[Ask | None, ...]:
    """Return what each column can be asked: what was typed, and the figures of the band."""
    band = book.bands.get(reading.quantity)
    basis = Basis(figures=band.basis) if band is not None and band.basis else None
    day = Entered(about=reading.id, field="on")
    return day, None, Entered(about=reading.id, field="value"), basis if book.level(reading) else None


def course_of(book: ReadingBook, quantity: Quantity) -> Course:
    """Return a quantity over time."""
    found = book.of(quantity)
    odd = {reading.id for reading in odd_readings(found, book.figures)}
    band = book.bands.get(quantity)
    low = band.low if band else None
    high = band.high if band else None
    return Course(
        quantity=quantity,
        points=tuple(
            Point(
                on=reading.on,
                value=reading.value,
                odd=reading.id in odd,
                doubtful=book.meters.is_doubtful(reading),
                reading=reading.id,
            )
            for reading in found
        ),
        calibrated=book.meters.marks(found),
        low=None if low is None else (low.low, low.value),
        high=None if high is None else (high.value, high.high),
    )


def whole_course(book: ReadingBook, quantity: Quantity, behind: Behind, loop: LoopForecast) -> Course:
    """Return a quantity over time with what is foreseen of it."""
    ahead = _ahead(quantity, behind, loop)
    known = any(each.span.low < each.span.high for each in ahead)
    return replace(
        course_of(book, quantity),
        foreseen=tuple((each.on, each.span.likely) for each in ahead),
        spread=tuple((each.span.low, each.span.high) for each in ahead) if known else (),
        today=behind.today,
        foreseen_asks=tuple(_foreseen_ask(quantity, behind, loop, each.on) for each in ahead),
    )


def _foreseen_ask(quantity: Quantity, behind: Behind, loop: LoopForecast, on: date) -> Subject:
    day = behind.outlook.forecast.ruler.day_of(on)
    if quantity is Quantity.ALKALINITY_MG_PER_L:
        return Subject(kind=SubjectKind.ALKALINITY, about=loop.loop, on=behind.water_on, day=day)
    element = ELEMENTS.index(_ELEMENT_OF[quantity])
    return Subject(kind=SubjectKind.STOCK, about=loop.loop, day=day, element=element)


def _ahead(quantity: Quantity, behind: Behind, loop: LoopForecast) -> tuple[Ahead, ...]:
    outlook = behind.outlook
    ruler, today = outlook.forecast.ruler, behind.water_on
    if quantity is Quantity.ALKALINITY_MG_PER_L:
        return behind.alkalinity(loop, weeks=_FORESEEN_WEEKS)
    element = _ELEMENT_OF.get(quantity)
    if element is None:
        return ()
    row = ELEMENTS.index(element)
    ranges = loop_ranges(behind.sure, loop.loop)
    return dissolved_ahead(loop, row=row, ranges=ranges, today=today, ruler=ruler, weeks=_FORESEEN_WEEKS)


def together(courses: Sequence[Course]) -> tuple[Course, ...]:
    """Return courses drawn over the same days, so that they can be read below each other."""
    days = sorted(day for course in courses for day in course.own_days)
    return tuple(replace(course, days=(days[0], days[-1]) if days else None) for course in courses)


def course_words(course: Course) -> str:
    """Return a course in one sentence, for those who do not see the chart."""
    name = quantity_words(course.quantity)
    if not course.points:
        return tr("{name}: no reading yet", name=name) + _foreseen_words(course)
    last = course.points[-1]
    values = [point.value for point in course.points]
    return tr(
        "{name}: {count} readings from {low} to {high}, the last {value} on {day}",
        name=name,
        count=len(values),
        low=quantity_value(course.quantity, min(values)),
        high=quantity_value(course.quantity, max(values)),
        value=quantity_value(course.quantity, last.value),
        day=day_words(last.on),
    ) + "".join((_doubt_words(course), _foreseen_words(course)))


def _doubt_words(course: Course) -> str:
    """Return how many readings are doubtful, and when a meter was set right, in so many words."""
    doubtful = sum(point.doubtful for point in course.points)
    said = ""
    if doubtful:
        said = tr("; {count} of them doubtful: the meter was overdue for calibration", count=doubtful)
    if course.calibrated:
        days = ", ".join(day_words(day) for day in course.calibrated)
        said += tr("; meter calibrated on {days}: no trend across that", days=days)
    return said


def _foreseen_words(course: Course) -> str:
    if not course.foreseen:
        return ""
    on, value = course.foreseen[-1]
    unit = quantity_unit(course.quantity)
    words = rough_words(value, unit)
    if course.spread:
        low, high = course.spread[-1]
        words = span_words(Span(low=low, likely=value, high=high), unit)
    return tr("; foreseen {value} on {day}", value=words, day=day_words(on))


def solids_sections(outlook: Outlook, loop: LoopForecast) -> tuple[Section, ...]:
    """Return what becomes of the solids batches of a loop, with their caution; empty without any."""
    foreseen = {each.batch: each for each in loop.solids.batches}
    batches = [each for each in outlook.farm.solids_batches if each.loop == loop.loop]
    if not batches:
        return ()
    return (
        Section(
            title=tr("Solids batches of {loop}", loop=loop.name),
            cautions=caution_texts((_SOLIDS_CAUTION,), outlook.catalogue),
            facts=tuple(fact for batch in batches for fact in _solids_facts(batch, foreseen.get(batch.id))),
        ),
    )


def _solids_facts(batch: SolidsBatch, found: SolidsBatchForecast | None) -> Iterator[Fact]:
    back = day_words(batch.returned_on) if batch.returned_on else tr("not planned")
    air = tr("aerated") if batch.aerated else tr("not aerated")
    filled = tr(
        "filled {day}, {days} d of solids, {air}",
        day=day_words(batch.siphoned_on),
        days=batch.days,
        air=air,
    )
    yield Fact(
        label=batch.code,
        value=tr("liquor goes back: {day}", day=back),
        note=filled,
        ask=Entered(about=batch.id, field="returned_on" if batch.returned_on else "days"),
    )
    if found is None:
        return
    parts = [(tr("went in"), SolidsPart.GATHERED, found.gathered_g)]
    if batch.returned_on is not None:
        parts.append((tr("comes back"), SolidsPart.BACK, found.liquor_g))
        parts.append((tr("lost as gas"), SolidsPart.GAS, found.lost_g))
    for label, part, grams in parts:
        ask = Subject(kind=SubjectKind.SOLIDS_BATCH, about=batch.id, part=part.value)
        yield Fact(label=label, value=_elements(grams), ask=ask)


def _elements(grams: Sequence[float]) -> str:
    there = [
        f"{element.capitalize()} {rough_words(each, 'g')}"
        for element, each in zip(ELEMENTS, grams, strict=True)
        if each > 0
    ]
    return ", ".join(there) or NONE
