"""Fish groups and what happens to them as ready rows. Pure: must know nothing of widgets."""

from __future__ import annotations

from collections.abc import Iterator

from planner.desk.behind import Behind
from planner.desk.pages import Ask, Entered
from planner.desk.rations import feed_words
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.why.together import together
from planner.desk.words import NONE, choice_words, day_words, number_words
from planner.farm.farm import by_id, label_of
from planner.farm.fields import Id
from planner.farm.fish import FishEvent, FishEventKind, FishGroup
from planner.forecast.values import Ruler
from planner.forecast.why.values import Subject, SubjectKind

_G_PER_KG = 1000.0
_TEN = 10.0


def group_columns() -> tuple[Column, ...]:
    """Return the columns of the table of groups."""
    return (
        Column(title=tr("Group")),
        Column(title=tr("Fish")),
        Column(title=tr("Tank")),
        Column(title=tr("Number"), numeric=True, tip=tr("Fish foreseen on the day shown")),
        Column(title=tr("Each [g]"), numeric=True, tip=tr("Mean weight foreseen on the day shown")),
        Column(title=tr("All [kg]"), numeric=True),
        Column(
            title=tr("Feed [g a day]"),
            numeric=True,
            tip=tr("Feed foreseen, as it is weighed"),
        ),
    )


def group_rows(behind: Behind) -> tuple[Row, ...]:
    """Return one row for each group of the farm, as it is today."""
    tanks = by_id(behind.outlook.farm.tanks)
    return tuple(_group_row(behind, group, tanks) for group in behind.outlook.farm.fish_groups)


def _group_row(behind: Behind, group: FishGroup, tanks: dict[Id, object]) -> Row:
    outlook = behind.outlook
    species = outlook.catalogue.fish[group.species].name
    tank = label_of(tanks[group.tank])  # type: ignore[arg-type]
    count, weight_g, feed_g = _today(behind, group)
    if behind.shown_on < group.stocked_on:
        said = (tr("to come"), NONE, NONE, NONE)
    elif count <= 0:
        said = (tr("none left"), NONE, NONE, NONE)
    else:
        said = (
            number_words(count, digits=0),
            number_words(weight_g, digits=0 if weight_g >= _TEN else 1),
            number_words(count * weight_g / _G_PER_KG, digits=1),
            feed_words(feed_g) if feed_g > 0 else number_words(0.0, digits=0),
        )
    texts = (group.name, species, tank, *said)
    titles = [column.title for column in group_columns()]
    return Row(
        id=group.id,
        texts=texts,
        sort=(group.name, species, tank, count, weight_g, count * weight_g, feed_g),
        spoken=", ".join(f"{title} {text}" for title, text in zip(titles, texts, strict=True)),
        asks=_asks(behind, group, there=said[1] != NONE),
    )


def _asks(behind: Behind, group: FishGroup, *, there: bool) -> tuple[Ask | None, ...]:
    """Return what each column can be asked; a group to come or gone tells why there is none of it."""
    ruler = behind.outlook.forecast.ruler
    day = min(max(ruler.day_of(behind.shown_on), 0), ruler.days - 1)
    kinds = (SubjectKind.GROUP_COUNT, SubjectKind.GROUP_WEIGHT, SubjectKind.GROUP_MASS, SubjectKind.FEED)
    found = [Subject(kind=kind, about=group.id, day=day) for kind in kinds]
    return (None, None, None, *(found if there else (found[0], None, None, None)))


def _today(behind: Behind, group: FishGroup) -> tuple[float, float, float]:
    found = behind.outlook.group(group.id)
    ruler = behind.outlook.forecast.ruler
    at = min(max(ruler.day_of(behind.shown_on), 0), ruler.days - 1)
    if found is None:
        return 0.0, 0.0, 0.0
    forecast = found[1]
    return float(forecast.count[at]), float(forecast.weight_g[at]), float(forecast.feed_g[at])


def event_columns() -> tuple[Column, ...]:
    """Return the columns of the table of events."""
    return (Column(title=tr("Date")), Column(title=tr("What happens")), Column(title=tr("How much")))


def event_rows(events: tuple[FishEvent, ...], ruler: Ruler) -> tuple[Row, ...]:
    """Return one row for each event, the latest first."""
    return tuple(_event_row(event, ruler) for event in reversed(events))


def _event_row(event: FishEvent, ruler: Ruler) -> Row:
    texts = (day_words(event.on), choice_words(event.kind), ", ".join(event_amounts(event)) or tr("all fish"))
    return Row(
        id=event.id,
        texts=texts,
        sort=(event.on.toordinal(), texts[1], texts[2]),
        spoken=", ".join(texts),
        asks=(Entered(about=event.id, field="on"), None, event_ask(event, ruler)),
    )


_AMOUNTS = ("count", "mean_weight_g", "feed_g_per_day", "days")


def event_ask(event: FishEvent, ruler: Ruler) -> Ask | None:
    """Return what the amounts of an event are asked; all fish of a harvest are those foreseen for the day."""
    day = ruler.day_of(event.on)
    if event.kind is FishEventKind.HARVEST and event.count is None and 0 <= day < ruler.days:
        return Subject(kind=SubjectKind.FISH_HARVEST_COUNT, about=event.group, day=day)
    return together(event, _AMOUNTS, about=choice_words(event.kind))


def event_amounts(event: FishEvent) -> Iterator[str]:
    """Yield what an event says by numbers."""
    if event.count is not None:
        yield tr("{count} fish", count=number_words(event.count, digits=0))
    if event.mean_weight_g is not None:
        yield tr("{grams} g each", grams=number_words(event.mean_weight_g))
    if event.feed_g_per_day is not None:
        yield tr("{grams} g a day", grams=number_words(event.feed_g_per_day))
    if event.days is not None:
        yield tr("{days} d", days=event.days)
