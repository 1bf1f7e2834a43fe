"""What stands on tray labels and raft tags: everything in words, so that the square code may be torn off.

Must not know sheets, sizes or toolkits.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import date
from enum import Enum
from typing import Final

from planner.catalogue.catalogue import Catalogue
from planner.farm.crops import Batch, Phase, Placement
from planner.farm.farm import Farm, by_id
from planner.farm.fields import NO_ID, Id
from planner.farm.site import Bed, WeekStart
from planner.forecast.values import Forecast
from planner.paper.places import PLACE_WORDS, UNIT_WORDS, PlaceBook, runs_of
from planner.paper.plain_names import one_line
from planner.paper.report import Caution
from planner.paper.words import (
    EN_DASH,
    count_words,
    day_words,
    list_words,
    range_words,
    span_words,
    week_name,
)

CAUTION_KEY: Final = "water-on-leaves"
NO_LOT: Final = "lot not chosen"
NO_PLACE: Final = "places not chosen"
SOWN_IN_PLACE: Final = "grows where it is sown"


class LabelKind(Enum):
    """Which labels: for trays and pots in the nursery, or for rafts and blocks in the beds."""

    TRAY = "tray"
    RAFT = "raft"


class Loudness(Enum):
    """How large a text of a label is set."""

    LOUD = "loud"
    STRONG = "strong"
    PLAIN = "plain"


@dataclass(frozen=True, slots=True, kw_only=True)
class LabelText:
    """One text of a label; only a name may be shortened when the label is too small for all of it."""

    text: str
    loudness: Loudness = Loudness.PLAIN
    may_shorten: bool = False


@dataclass(frozen=True, slots=True, kw_only=True)
class Label:
    """One label: its texts from top to bottom, and the batch code that is also drawn as a square."""

    code: str
    texts: tuple[LabelText, ...]


def label_caution(catalogue: Catalogue) -> Caution:
    """Return the warning that belongs on the back of every label."""
    found = catalogue.cautions[CAUTION_KEY]
    return Caution(title=found.topic, text=found.text)


def labels_of(
    kind: LabelKind, farm: Farm, forecast: Forecast, *, rows: Iterable[int], copies: int | None = None
) -> tuple[Label, ...]:
    """Return the labels of some batches, in their order; `copies` overrules one for each tray or raft."""
    maker = _Maker(farm, forecast)
    many = maker.tray_labels if kind is LabelKind.TRAY else maker.raft_tags
    made: list[Label] = []
    for row in rows:
        found = tuple(many(row))
        made.extend(found if copies is None else found[:1] * copies)
    return tuple(made)


def rows_asked(
    kind: LabelKind, farm: Farm, forecast: Forecast, *, first_day: int, last_day: int
) -> tuple[int, ...]:
    """Return the batches sown (tray) or moved to their bed (raft) from a day up to the day before another."""
    table = forecast.batches
    day_of = table.sow_day if kind is LabelKind.TRAY else table.ends[:, 2]
    rows = [row for row in range(len(farm.batches)) if first_day <= int(day_of[row]) < last_day]
    return tuple(sorted(rows, key=lambda row: (int(day_of[row]), farm.batches[row].code)))


class _Maker:
    """Writes the labels of one farm."""

    def __init__(self, farm: Farm, forecast: Forecast) -> None:
        self._farm, self._forecast = farm, forecast
        self._places = PlaceBook(farm)
        self._beds: dict[Id, Bed] = by_id(farm.beds)
        self._lots = by_id(farm.seed_lots)
        self._starts = farm.sites[0].week_start if farm.sites else WeekStart.MONDAY

    def tray_labels(self, row: int) -> Iterator[Label]:
        """Yield one label for each tray of a batch."""
        batch = self._farm.batches[row]
        trays = tuple(self._trays(batch, row))
        for number, (amount, where) in enumerate(trays, start=1):
            which = f", tray {number} of {len(trays)}" if len(trays) > 1 else ""
            texts = (
                *self._names(batch, row),
                LabelText(text=f"sown {self._iso_words(batch.sow_on)}", loudness=Loudness.STRONG),
                LabelText(text=self._move_words(row), loudness=Loudness.STRONG),
                LabelText(text=f"{amount}{which}"),
                LabelText(text=self._lot_words(batch), may_shorten=True),
                *((LabelText(text=where, may_shorten=True),) if where else ()),
            )
            yield Label(code=one_line(batch.code), texts=texts)

    def raft_tags(self, row: int) -> Iterator[Label]:
        """Yield one tag for each raft or block a batch stands on; one in all while none is chosen."""
        batch = self._farm.batches[row]
        begins, _ = self._forecast.batches.phase_days(row, Phase.BED)
        in_since = f"in {self._iso_words(self._forecast.ruler.date_of(begins))}"
        for where, holes in self._rafts(batch):
            texts = (
                LabelText(text=where, loudness=Loudness.LOUD, may_shorten=True),
                *self._names(batch, row),
                LabelText(text=in_since, loudness=Loudness.STRONG),
                LabelText(text=f"harvest {self._harvest_weeks(row)}", loudness=Loudness.STRONG),
                LabelText(text=self._harvest_words(row)),
                LabelText(text=holes),
            )
            yield Label(code=one_line(batch.code), texts=texts)

    def _names(self, batch: Batch, row: int) -> Iterator[LabelText]:
        profile = self._forecast.profiles[int(self._forecast.batches.profile[row])]
        yield LabelText(text=one_line(profile.crop.name), loudness=Loudness.LOUD, may_shorten=True)
        if one_line(batch.variety):
            yield LabelText(text=one_line(batch.variety), may_shorten=True)
        yield LabelText(text=one_line(batch.code), loudness=Loudness.STRONG)

    def _trays(self, batch: Batch, row: int) -> Iterator[tuple[str, str]]:
        """Yield seeds and cells of each tray, and which tray it is."""
        seeds = int(self._forecast.batches.seeds[row])
        by_tray: dict[tuple[Id, int], int] = {}
        for run in self._places.held(batch, Phase.NURSERY):
            by_tray[run.bed, run.unit] = by_tray.get((run.bed, run.unit), 0) + run.count
        if by_tray:
            left = seeds
            for (bed, unit), cells in by_tray.items():
                sown = min(left, cells)
                left -= sown
                yield _amount(sown, cells, "cell", "cells"), one_line(f"{self._beds[bed].name} tray {unit}")
            return
        per_tray = self._places.cells_per_tray()
        if per_tray is None:
            yield _amount(seeds, seeds, "pot", "pots"), ""
            return
        while seeds > 0:
            cells = min(seeds, per_tray)
            yield _amount(cells, cells, "cell", "cells"), ""
            seeds -= cells

    def _rafts(self, batch: Batch) -> Iterator[tuple[str, str]]:
        """Yield raft and holes of a batch, a raft at a time."""
        by_raft: dict[tuple[Id, int], list[Placement]] = {}
        for run in self._places.held(batch, Phase.BED):
            by_raft.setdefault((run.bed, run.unit), []).append(run)
        for (bed_id, unit), runs in by_raft.items():
            bed = self._beds[bed_id]
            one, many = PLACE_WORDS[bed.kind]
            held = list_words(range_words(run.first, run.last) for run in runs_of(bed, runs))
            count = sum(run.count for run in runs)
            yield (
                one_line(f"{UNIT_WORDS[bed.kind][0].capitalize()} {unit} · {bed.name}"),
                f"{count_words(count, one, many)}: {held}",
            )
        if not by_raft:
            bed_name = self._beds[batch.bed].name if batch.bed != NO_ID else "Bed"
            yield one_line(bed_name), NO_PLACE

    def _iso_words(self, on: date) -> str:
        return f"{on.isoformat()} {day_words(on)[:3]} {week_name(on, self._starts)}"

    def _move_words(self, row: int) -> str:
        begins, _ = self._forecast.batches.phase_days(row, Phase.BED)
        if begins <= int(self._forecast.batches.sow_day[row]):
            return SOWN_IN_PLACE
        on = self._forecast.ruler.date_of(begins)
        beside = self._farm.batches[row].sow_on
        return f"transplant {week_name(on, self._starts)} ({day_words(on, beside=beside)})"

    def _harvest_words(self, row: int) -> str:
        first, last = self._harvest_days(row)
        spelt = day_words(first) if first == last else span_words(first, last)
        return f"({spelt})"

    def _harvest_weeks(self, row: int) -> str:
        return EN_DASH.join(dict.fromkeys(week_name(on, self._starts) for on in self._harvest_days(row)))

    def _harvest_days(self, row: int) -> tuple[date, date]:
        first, behind = self._forecast.batches.pick_days(row)
        return self._forecast.ruler.date_of(first), self._forecast.ruler.date_of(behind - 1)

    def _lot_words(self, batch: Batch) -> str:
        lot = self._lots.get(batch.seed_lot)
        return NO_LOT if lot is None else f"lot {one_line(lot.code)}"


def _amount(seeds: int, places: int, one: str, many: str) -> str:
    return f"{count_words(seeds, 'seed', 'seeds')} × {count_words(places, one, many)}"
