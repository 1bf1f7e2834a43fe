"""What the seeding calendar rests on: the sum behind the seeds, days, shares, sources, cautions.

Printed on the sheet itself, so that it can be checked by hand without the program.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Final

from planner.catalogue.catalogue import Catalogue, Publication
from planner.catalogue.figure import Confidence
from planner.farm.crops import Batch
from planner.farm.farm import Farm
from planner.farm.species import HarvestKind
from planner.forecast.profiles import BATCH_FIGURES, Profile
from planner.forecast.values import FlagKind, Forecast
from planner.paper.report import (
    Align,
    Caution,
    Cell,
    Column,
    Line,
    Paragraph,
    RowGroup,
    Section,
    Size,
    Table,
    Tone,
)
from planner.paper.words import NO_BREAK, count_words, list_words, percent_words, whole_words

CAUTION_KEYS: Final = ("water-on-leaves", "planning-aid")
ASSUMPTIONS_NAME: Final = "Assumptions"
_COLUMNS_OF_TEXT: Final = {False: 2, True: 3}

FIGURE_WORDS: Final = {
    "germination_share": "share that comes up",
    "nursery_survival_share": "share that lives",
    "germination_days": "days to come up",
    "nursery_days": "nursery days",
    "spacing_days": "days spaced out",
    "bed_days": "move to first pick",
    "picking_days": "picking days",
}
"""The figures of a crop that this sheet uses, in words."""

_OF_LONG_HARVESTS: Final = ("picking_days",)

_SAME_DAYS: Final = (
    "A crop is reckoned with the same days in every season. Expect longer in cold or dark months and "
    "shorter in warm, bright ones; your own records are the better guide."
)

_BY_SEASON: Final = (
    "Warmth and light of the site's months make the days of each batch longer or shorter than the book's, "
    "which the table below shows. Your own records are the better guide."
)

_CONFIDENCE_WORDS: Final = {
    Confidence.READ: "read",
    Confidence.MEMORY: "from memory, check it",
    Confidence.COMMON_PRACTICE: "common practice",
    Confidence.GROWERS_VALUE: "the grower's own figure",
}


def notes(
    farm: Farm, forecast: Forecast, catalogue: Catalogue, *, rows: tuple[int, ...], large: bool
) -> tuple[Section, ...]:
    """Return the sections that stand at the end of the calendar."""
    columns = _COLUMNS_OF_TEXT[large]
    profiles = _profiles(forecast, catalogue, rows)
    care = Section(heading="Take care", columns=columns, parts=tuple(_cautions(catalogue)))
    rules = Section(
        heading="How these numbers were made", columns=columns, parts=tuple(_rules(farm, forecast, rows))
    )
    if not profiles:
        return care, rules
    table = _table(farm, forecast, rows, profiles, large=large)
    return (
        care,
        rules,
        Section(heading="Figures used for each crop", parts=(table,)),
        Section(
            heading="Where the figures come from",
            columns=columns,
            parts=tuple(_sources(catalogue, profiles)),
        ),
    )


def _profiles(forecast: Forecast, catalogue: Catalogue, rows: tuple[int, ...]) -> dict[int, Profile]:
    """Return number -> profile of the sowings, by the crop's name, which is the one the sheet is in."""
    numbers = {int(forecast.batches.profile[row]) for row in rows}
    found = {number: forecast.profiles[number] for number in sorted(numbers)}
    named = {
        number: replace(profile, crop=catalogue.crops.get(profile.crop.key, profile.crop))
        for number, profile in found.items()
    }
    return dict(sorted(named.items(), key=_by_crop))


def _by_crop(pair: tuple[int, Profile]) -> tuple[str, int]:
    return pair[1].crop.name.casefold(), pair[0]


def _rules(farm: Farm, forecast: Forecast, rows: tuple[int, ...]) -> Iterator[Paragraph]:
    yield Paragraph(
        text="Seeds to sow = plants wanted ÷ (share of seeds that come up × share of seedlings that live "
        "until they are moved), rounded up to whole seeds."
    )
    if rows:
        yield Paragraph(text=_worked(farm, forecast, rows[0]))
    yield Paragraph(
        text="Trays and pots hold one seed a cell. Where no tray has been chosen, the cells needed are "
        "rounded up to whole trays."
    )
    yield Paragraph(
        text="Move and harvest dates are counted in whole days from the sowing date. Sow late, and both "
        "dates move with it: change the date in the plan and print again."
    )
    yield Paragraph(text=_BY_SEASON if _season_counts(forecast, rows) else _SAME_DAYS)
    yield from _climate(forecast)


def _season_counts(forecast: Forecast, rows: tuple[int, ...]) -> bool:
    """Tell whether any batch takes other days to its first pick than the book says."""
    table = forecast.batches
    return any(
        table.pick_days(row)[0] - int(table.sow_day[row])
        != forecast.profiles[int(table.profile[row])].first_pick_day
        for row in rows
    )


def _worked(farm: Farm, forecast: Forecast, row: int) -> str:
    batch, profile = farm.batches[row], forecast.profiles[int(forecast.batches.profile[row])]
    return (
        f"For example {batch.code}: {whole_words(batch.plants)} ÷ "
        f"({percent_words(profile.germination_share)} × {percent_words(profile.survival_share)}) gives "
        f"{count_words(int(forecast.batches.seeds[row]), 'seed', 'seeds')}."
    )


def _climate(forecast: Forecast) -> Iterator[Paragraph]:
    without = list(dict.fromkeys(flag.name for flag in forecast.flags if flag.kind is FlagKind.NO_CLIMATE))
    if without:
        yield Paragraph(
            text=f"No climate by month has been entered for {list_words(without)}: book days apply."
        )


def _table(
    farm: Farm, forecast: Forecast, rows: tuple[int, ...], profiles: dict[int, Profile], *, large: bool
) -> Table:
    codes: dict[int, list[str]] = {}
    for row in rows:
        if _has_own_figures(farm.batches[row]):
            codes.setdefault(int(forecast.batches.profile[row]), []).append(farm.batches[row].code)
    lines = tuple(
        dict.fromkeys(_profile_row(profile, codes.get(number, [])) for number, profile in profiles.items())
    )  # batches whose days differ only by what is not told here have one row
    return Table(name=ASSUMPTIONS_NAME, columns=_columns(large=large), groups=(RowGroup(rows=lines),))


def _has_own_figures(batch: Batch) -> bool:
    return any(getattr(batch, name) is not None for name in BATCH_FIGURES)


def _profile_row(profile: Profile, own: list[str]) -> tuple[Cell, ...]:
    germination, nursery, spacing, bed, *_ = profile.stage_days
    last_pick = profile.picking_window - 1
    name = [Line(text=profile.crop.name, tone=Tone.STRONG)]
    if own:
        name.append(Line(text=f"own figures for {list_words(own)}"))
    figures = (
        percent_words(profile.germination_share),
        percent_words(profile.survival_share),
        str(germination),
        str(nursery),
        str(spacing),
        str(germination + nursery + spacing),
        str(bed),
        str(profile.first_pick_day),
        str(last_pick) if last_pick else "once",
    )
    return (Cell(lines=tuple(name)), *(Cell(lines=(Line(text=figure),)) for figure in figures))


_WALL_SIZE: Final = Size(best_pt=14.0, least_pt=12.0)
_BENCH_SIZE: Final = Size(best_pt=11.0, least_pt=11.0)
_NAME_MM: Final = 50.0
_FIGURE_MM: Final = 20.0
_HEADINGS: Final = (
    ("come_up", "Seeds that come up", ""),
    ("live", "Seedlings that live", ""),
    ("germination", "To come up", "days"),
    ("nursery", "In nursery", "days"),
    ("spacing", "Spaced out", "days"),
    ("move", "Sowing to move", "days"),
    ("bed", "Move to first pick", "days"),
    ("pick", "Sowing to first pick", "days"),
    ("picking", "First to last pick", "days"),
)


def _columns(*, large: bool) -> tuple[Column, ...]:
    size = _WALL_SIZE if large else _BENCH_SIZE
    name = Column(
        key="crop", heading="Crop", share=3.0, least_mm=_NAME_MM, main=size, detail=size, wrap=3, fold=0
    )
    figures = tuple(
        Column(
            key=key,
            heading=heading,
            unit=unit,
            share=1.0,
            least_mm=_FIGURE_MM,
            main=size,
            detail=size,
            align=Align.RIGHT,
            wrap=3,
            fold=1,
        )
        for key, heading, unit in _HEADINGS
    )
    return (name, *figures)


def sureness_words(confidence: Confidence) -> str:
    """Return how sure a figure is, in words."""
    return _CONFIDENCE_WORDS[confidence]


def _sources(catalogue: Catalogue, profiles: dict[int, Profile]) -> Iterator[Paragraph]:
    """Yield what each crop's figures rest on, by how sure they are, then the publications by number."""
    numbers: dict[str, int] = {}
    crops = {profile.crop.key: profile.crop for profile in profiles.values()}
    for crop in crops.values():
        grouped: dict[str, list[str]] = {}
        for field, words in FIGURE_WORDS.items():
            if field in _OF_LONG_HARVESTS and crop.harvest is HarvestKind.SINGLE:
                continue
            source, sureness = _origin(catalogue, crop.key, field)
            mark = ""
            if source in catalogue.publications:
                mark = f"{NO_BREAK}[{numbers.setdefault(source, len(numbers) + 1)}]"
            grouped.setdefault(sureness, []).append(f"{words}{mark}")
        said = "; ".join(f"{sureness}: {', '.join(what)}" for sureness, what in grouped.items())
        yield Paragraph(text=f"{crop.name} – {said}.", item=True)
    for source, number in numbers.items():
        yield Paragraph(text=f"[{number}] {cited(catalogue.publications[source])}")


def _origin(catalogue: Catalogue, crop: str, field: str) -> tuple[str, str]:
    """Return source key and sureness of a crop's figure."""
    figure = catalogue.figures.get(f"crop/{crop}/{field}")
    if figure is None:
        return "", _CONFIDENCE_WORDS[Confidence.GROWERS_VALUE]
    return figure.source, _CONFIDENCE_WORDS[figure.confidence]


def cited(book: Publication) -> str:
    """Return a publication as it is named at the foot of figures."""
    return f"{book.authors} ({book.year}). {book.title}. {book.where}."


def _cautions(catalogue: Catalogue) -> Iterator[Caution]:
    for key in CAUTION_KEYS:
        caution = catalogue.cautions[key]
        yield Caution(title=caution.topic, text=caution.text)
