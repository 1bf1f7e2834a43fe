"""Ways of stocking, of harvesting and of starting up as words, rows and charts.

Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.plan.remedy_words import percent_words, weeks_words
from planner.desk.plan.stocking_work import HarvestsFound, WaysFound
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.words import (
    NONE,
    choice_words,
    day_words,
    number_words,
    short_day_words,
)
from planner.farm.farm import Farm, by_id
from planner.planning.stocking.harvests import HarvestOption
from planner.planning.stocking.options import HarvestHole, Stocked, StockingOption
from planner.planning.stocking.startup import HeldBatch, StartUp

_WHOLE: Final = 1.0


def share_words(share: float) -> str:
    """Return how much of a group is taken at a harvest."""
    return tr("all at once") if share >= _WHOLE else tr("{share} at a time", share=percent_words(share))


def hole_words(weeks: float | None) -> str:
    """Return how long feed is down after a harvest."""
    return tr("not back") if weeks is None else weeks_words(round(weeks))


# --- ways of stocking ----------------------------------------------------------------------------------


def way_columns() -> tuple[Column, ...]:
    """Return the columns of the table of ways."""
    return (
        Column(title=tr("Groups"), numeric=True),
        Column(title=tr("Harvested")),
        Column(title=tr("Apart"), numeric=True, tip=tr("Weeks between two groups")),
        Column(title=tr("Worst fall"), numeric=True, tip=tr("Of the feed at a harvest, against before")),
        Column(title=tr("Longest"), numeric=True, tip=tr("Until the feed is back")),
        Column(title=tr("Uneven"), numeric=True, tip=tr("Coefficient of variation of the feed")),
        Column(title=tr("In band"), numeric=True, tip=tr("Share of weeks whose feed the beds can use")),
        Column(title=tr("Fullest tank"), numeric=True, tip=tr("kg/m³, and the limit")),
        Column(title=tr("Feed"), numeric=True, tip=tr("g a day on average")),
    )


def way_id(option: StockingOption) -> str:
    """Return what tells a way from the others."""
    return f"{option.groups} {option.share:g}"


def way_rows(found: WaysFound) -> tuple[Row, ...]:
    """Return a row for each way, and for each there is no room for."""
    best = found.table.best
    rows = [_way_row(number, one, one is best) for number, one in enumerate(found.table.options)]
    rows += [_no_room_row(groups, share) for groups, share in found.table.impossible]
    return tuple(rows)


def _way_row(number: int, one: StockingOption, best: bool) -> Row:
    peak, limit = one.peak_density_kg_per_m3, one.density_limit_kg_per_m3
    density = f"{number_words(peak, digits=1)} / {number_words(limit, digits=0)}"
    longest = one.longest_weeks
    groups = number_words(one.groups)
    return Row(
        id=way_id(one),
        texts=(
            tr("★ {groups}", groups=groups) if best else groups,
            share_words(one.share),
            number_words(one.apart_weeks, digits=1),
            percent_words(one.deepest_share),
            hole_words(longest),
            percent_words(one.variation),
            percent_words(one.inside_share),
            density,
            tr("{grams} g", grams=number_words(one.mean_feed_g_per_day, digits=0)),
        ),
        sort=(
            one.groups,
            one.share,
            one.apart_weeks,
            one.deepest_share,
            float("inf") if longest is None else longest,
            one.variation,
            one.inside_share,
            one.peak_density_kg_per_m3,
            one.mean_feed_g_per_day,
        ),
        spoken=way_words(one, best=best),
        payload=number,
    )


def _no_room_row(groups: int, share: float) -> Row:
    texts = (number_words(groups), share_words(share), NONE, tr("no room"), NONE, NONE, NONE, NONE, NONE)
    last = float("inf")
    return Row(
        id=f"{groups} {share:g}",
        texts=texts,
        sort=(groups, share, last, last, last, last, -1.0, last, -1.0),
        spoken=tr(
            "{groups}, {share}: the tanks have no room for it.", groups=groups_words(groups), share=texts[1]
        ),
        payload=-1,
    )


def way_words(one: StockingOption, *, best: bool) -> str:
    """Return a way in a sentence."""
    words = tr(
        "{groups}, {share}: the feed falls by {fall} at most, for {weeks}; it varies by {uneven} and lies in "
        "the band for {inside} of the weeks.",
        groups=groups_words(one.groups),
        share=share_words(one.share),
        fall=percent_words(one.deepest_share),
        weeks=hole_words(one.longest_weeks),
        uneven=percent_words(one.variation),
        inside=percent_words(one.inside_share),
    )
    return tr("Best of these: {words}", words=words) if best else words


def groups_words(groups: int) -> str:
    """Return a number of groups."""
    return tr("1 group") if groups == 1 else tr("{groups} groups", groups=number_words(groups))


def way_act(one: StockingOption) -> str:
    """Return what taking a way up is called in the menu of undo."""
    return tr("Stock in {groups}, {share}", groups=groups_words(one.groups), share=share_words(one.share))


def stocked_columns() -> tuple[Column, ...]:
    """Return the columns of the table of groups."""
    return (
        Column(title=tr("Stock on")),
        Column(title=tr("Fish"), numeric=True),
        Column(title=tr("Tank")),
        Column(title=tr("Harvest")),
    )


def stocked_rows(one: StockingOption, farm: Farm) -> tuple[Row, ...]:
    """Return a row for each group that is stocked within the plan."""
    tanks = by_id(farm.tanks)
    return tuple(
        _stocked_row(number, each, tanks[each.tank].name, farm.plan_until)
        for number, each in enumerate(one.stocked)
        if each.on < farm.plan_until
    )


def _stocked_row(number: int, each: Stocked, tank: str, until_on: date) -> Row:
    days = [take.on for take in each.takes]
    inside = [day for day in days if day < until_on]
    harvests = ", ".join(short_day_words(day) for day in inside) or tr("after the plan")
    return Row(
        id=str(number),
        texts=(day_words(each.on), number_words(each.count), tank, harvests),
        sort=(each.on, each.count, tank, min(days, default=date.max)),
    )


def hole_columns() -> tuple[Column, ...]:
    """Return the columns of the table of holes."""
    return (
        Column(title=tr("Harvest on")),
        Column(title=tr("Feed falls by"), numeric=True),
        Column(title=tr("Back after"), numeric=True),
    )


def hole_rows(holes: tuple[HarvestHole, ...]) -> tuple[Row, ...]:
    """Return a row for each harvest that is judged."""
    return tuple(
        Row(
            id=hole.on.isoformat(),
            texts=(day_words(hole.on), percent_words(hole.depth_share), hole_words(hole.weeks)),
            sort=(hole.on, hole.depth_share, float("inf") if hole.weeks is None else hole.weeks),
        )
        for hole in holes
    )


def band_words(found: WaysFound) -> str:
    """Return why no way reaches the band of feed; empty when one does."""
    options = found.table.options
    if not options or any(one.inside_share > 0.0 for one in options):
        return ""
    asked = [value for value in found.low if value > 0.0]
    most = max(one.mean_feed_g_per_day for one in options)
    if asked and most < sum(asked) / len(asked):
        return tr(
            "No way reaches the band of feed that the beds need: the tanks hold too few fish for them. A "
            "larger tank, fewer beds or a supplement would close the gap."
        )
    return tr(
        "No way keeps within the band of feed that the beds need: there is more fish than the beds use."
    )


def judged_words(found: WaysFound) -> str:
    """Return over which weeks the ways are judged."""
    table = found.table
    if table.best is None:
        return tr("The tanks have no room for any of these ways.")
    return tr(
        "All ways are judged over the same weeks, from {a} to {b}, once every group has been harvested. A "
        "fall is against the month before. ★ marks the best.",
        a=day_words(table.judged_from_on),
        b=day_words(table.judged_until_on),
    )


# --- one harvest ---------------------------------------------------------------------------------------


def harvest_columns() -> tuple[Column, ...]:
    """Return the columns of the table of ways to take a harvest."""
    return (
        Column(title=tr("Harvested")),
        Column(title=tr("Days")),
        Column(title=tr("Feed falls by"), numeric=True),
        Column(title=tr("Back after"), numeric=True),
        Column(title=tr("Lowest feed"), numeric=True),
        Column(title=tr("In the week from")),
        Column(title=tr("Least supply"), numeric=True, tip=tr("Of any element, against demand")),
        Column(title=tr("Fullest tank"), numeric=True, tip=tr("kg/m³")),
    )


def harvest_rows(found: HarvestsFound) -> tuple[Row, ...]:
    """Return a row for each way to take a harvest."""
    return tuple(_harvest_row(number, one) for number, one in enumerate(found.options))


def _harvest_row(number: int, one: HarvestOption) -> Row:
    days = ", ".join(short_day_words(on) for on, _ in one.takes)
    ratio = one.lowest_ratio
    return Row(
        id=f"{one.share:g}",
        texts=(
            share_words(one.share),
            days,
            percent_words(one.hole.depth_share),
            hole_words(one.hole.weeks),
            tr("{grams} g", grams=number_words(one.lowest_feed_g_per_day, digits=0)),
            short_day_words(one.lowest_on),
            NONE if ratio is None else percent_words(ratio),
            number_words(one.peak_kg_per_m3, digits=1),
        ),
        sort=(
            one.share,
            days,
            one.hole.depth_share,
            float("inf") if one.hole.weeks is None else one.hole.weeks,
            one.lowest_feed_g_per_day,
            one.lowest_on,
            -1.0 if ratio is None else ratio,
            one.peak_kg_per_m3,
        ),
        payload=number,
    )


# --- start-up ------------------------------------------------------------------------------------------


def start_columns() -> tuple[Column, ...]:
    """Return the columns of the table of a start-up."""
    return (
        Column(title=tr("Batch")),
        Column(title=tr("Crop")),
        Column(title=tr("Kind")),
        Column(title=tr("Area"), numeric=True),
        Column(title=tr("Meant for its bed")),
        Column(title=tr("May go from")),
        Column(title=tr("Waits"), numeric=True),
    )


def start_rows(found: StartUp, catalogue: Catalogue) -> tuple[Row, ...]:
    """Return a row for each batch of a loop that starts up."""
    return tuple(_start_row(one, catalogue) for one in found.batches)


def _start_row(one: HeldBatch, catalogue: Catalogue) -> Row:
    wait = one.wait_days
    waits = tr("beyond the plan") if wait is None else tr("{days} days", days=wait) if wait else NONE
    crop = catalogue.crops[one.crop].name
    return Row(
        id=one.batch,
        texts=(
            one.code,
            crop,
            choice_words(one.group),
            tr("{area} m²", area=number_words(one.area_m2, digits=2)),
            day_words(one.planned_on),
            NONE if one.may_on is None else day_words(one.may_on),
            waits,
        ),
        sort=(
            one.code,
            crop.casefold(),
            one.group.value,
            one.area_m2,
            one.planned_on,
            one.may_on or date.max,
            float("inf") if wait is None else wait,
        ),
    )


def start_lines(found: StartUp, catalogue: Catalogue) -> Iterator[str]:
    """Yield when it may begin, crop by crop."""
    if found.first_fish_on is None:
        yield tr("No fish are stocked in this loop yet: stock fish first.")
        return
    yield tr(
        "First fish on {day}. Leafy crops come first; fruiting ones wait.", day=day_words(found.first_fish_on)
    )
    waiting = [one for one in found.batches if one.wait_days is None or one.wait_days > 0]
    yield (
        tr("Every batch may go to its bed on the day it is meant to.")
        if not waiting
        else tr("1 batch has to wait.")
        if len(waiting) == 1
        else tr("{count} batches have to wait.", count=len(waiting))
    )
    for crop, on in sorted(found.first_on_by_crop.items(), key=_by_day):
        name = catalogue.crops[crop].name
        if on is None:
            yield tr("{crop}: not carried by the feed within the plan.", crop=name)
        elif any(one.crop == crop for one in waiting):
            yield tr("{crop}: to its bed from {day}.", crop=name, day=day_words(on))


def _by_day(entry: tuple[str, date | None]) -> tuple[date, str]:
    return entry[1] or date.max, entry[0]
