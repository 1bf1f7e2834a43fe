"""A proposal of successions as words, rows and a chart: what is sown when, and what does not fit.

Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from datetime import date
from typing import Any, Final

from planner.catalogue.catalogue import Catalogue
from planner.desk.plan.chart import Chart, Form, Strand
from planner.desk.plan.remedy_words import percent_words
from planner.desk.plan.season_rows import amount_words
from planner.desk.plan.whys import week_asks
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.words import (
    NONE,
    choice_words,
    day_words,
    middle_of_week,
    number_words,
    short_day_words,
    week_words,
)
from planner.farm.crops import Batch, Phase, TargetUnit
from planner.farm.farm import Farm, by_id
from planner.forecast.values import Ruler
from planner.planning.answering import Whys
from planner.planning.placement import Freeing, Refusal
from planner.planning.proposal import Note, NoteKind, Proposal, Sowing, steady_share
from planner.planning.seeding import LossRule, Seeding

_MOST_NAMED: Final = 6

NOTE_WORDS: Final[Mapping[NoteKind, str]] = {
    NoteKind.TOO_SOON: "{crop}: {amount} wanted in {week} cannot be sown in time any more.",
    NoteKind.NO_BED: "{crop}: there is no bed of a kind it grows in.",
    NoteKind.EARLY: "{crop}: what is wanted in {week} is ready {days} days before that week.",
    NoteKind.TOO_SLOW: "{crop}: what is wanted in {week} only reaches {ripe_share} of its size.",
    NoteKind.LESS: "{crop}: of {wanted} plants for {week}, {sown} have room and are sown.",
    NoteKind.POOR_STAND: "{crop}: in {week} only {stand_share} of good seed comes up in the warmth; "
    "{sowings} sowings take more seed for it.",
    NoteKind.NO_WORK_DAY: "{crop}: {amount} wanted in {week} finds no sowing day that suits.",
}


def note_words(note: Note, catalogue: Catalogue) -> str:
    """Return a note of the engine in words."""
    crop = catalogue.crops[note.crop].name if note.crop in catalogue.crops else note.crop
    values = {name: _value(name, value) for name, value in note.values}
    week = note.week if note.on is None else week_words(note.on)
    return tr(NOTE_WORDS[note.kind]).format_map(_Gaps(crop=crop, week=week, **values))


class _Gaps(dict[str, Any]):
    def __missing__(self, key: str) -> str:
        return NONE


def _value(name: str, value: float | str) -> str:
    if isinstance(value, str):
        return value
    return percent_words(value) if name.endswith("_share") else number_words(round(value, 1))


# --- sowings -------------------------------------------------------------------------------------------


def sowing_columns() -> tuple[Column, ...]:
    """Return the columns of the table of sowings."""
    return (
        Column(title=tr("Sow")),
        Column(title=tr("Batch")),
        Column(title=tr("Crop")),
        Column(title=tr("Plants"), numeric=True),
        Column(title=tr("Seeds"), numeric=True, tip=tr("After rounding up to whole pots and trays")),
        Column(title=tr("Trays"), numeric=True),
        Column(title=tr("Move"), tip=tr("From the nursery to the last place")),
        Column(title=tr("First pick")),
        Column(title=tr("Last pick")),
        Column(title=tr("Where")),
    )


def sowing_rows(found: Proposal, farm: Farm, catalogue: Catalogue) -> tuple[Row, ...]:
    """Return a row for each sowing."""
    where = where_words(found, farm)
    return tuple(_sowing_row(one, where.get(one.batch.id, NONE), catalogue) for one in found.sowings)


def _sowing_row(one: Sowing, where: str, catalogue: Catalogue) -> Row:
    batch, seeding = one.batch, one.seeding
    crop = catalogue.crops[batch.crop].name
    trays = number_words(seeding.trays) if seeding.trays else NONE
    return Row(
        id=batch.id,
        texts=(
            short_day_words(one.sow_on),
            batch.code,
            crop,
            number_words(batch.plants),
            number_words(seeding.seeds),
            trays,
            NONE if one.move_on is None else short_day_words(one.move_on),
            short_day_words(one.first_pick_on),
            short_day_words(one.last_pick_on),
            where,
        ),
        sort=(
            one.sow_on,
            batch.code,
            crop.casefold(),
            batch.plants,
            seeding.seeds,
            seeding.trays,
            one.move_on or date.max,
            one.first_pick_on,
            one.last_pick_on,
            where,
        ),
        spoken=tr(
            "{sow}, {crop}, {code}: {seeds} seeds for {plants} plants, first pick {pick}, {where}",
            sow=day_words(one.sow_on),
            crop=crop,
            code=batch.code,
            seeds=number_words(seeding.seeds),
            plants=number_words(batch.plants),
            pick=day_words(one.first_pick_on),
            where=where,
        ),
        payload=one,
    )


def where_words(found: Proposal, farm: Farm) -> dict[str, str]:
    """Return batch id -> bed and rafts in which its plants have their last place."""
    beds = by_id(farm.beds)
    units: dict[str, dict[str, set[int]]] = {}
    for run in found.placements:
        if run.phase is Phase.BED:
            units.setdefault(run.batch, {}).setdefault(beds[run.bed].name, set()).add(run.unit)
    return {
        batch: "; ".join(f"{bed} {_ranges(many)}" for bed, many in of.items()) for batch, of in units.items()
    }


def _ranges(numbers: set[int]) -> str:
    """Return numbers as people write them, such as 1–3, 7."""
    runs: list[list[int]] = []
    for number in sorted(numbers):
        if runs and number == runs[-1][-1] + 1:
            runs[-1].append(number)
        else:
            runs.append([number])
    return ", ".join(f"{run[0]}–{run[-1]}" if len(run) > 1 else str(run[0]) for run in runs)


def seed_words(seeding: Seeding) -> str:
    """Return how the seeds of a sowing come about, step by step."""
    rule = seeding.rule
    if rule.rule is LossRule.DIVIDE:
        words = tr(
            "{plants} plants ÷ {germination} that come up ÷ {survival} that live = {needed} seeds",
            plants=number_words(seeding.plants),
            germination=number_words(round(rule.germination, 3)),
            survival=number_words(round(rule.survival, 3)),
            needed=number_words(seeding.seeds_needed),
        )
    else:
        words = tr(
            "{plants} plants × {allowance} ÷ {germination} that come up = {needed} seeds",
            plants=number_words(seeding.plants),
            allowance=number_words(rule.allowance),
            germination=number_words(round(rule.germination, 3)),
            needed=number_words(seeding.seeds_needed),
        )
    if seeding.trays:
        words = tr(
            "{words}; in {pots} pots: {seeds} seeds, trays of {cells}: {trays}, cells left empty: {spare}",
            words=words,
            pots=number_words(seeding.pots),
            seeds=number_words(seeding.seeds),
            trays=number_words(seeding.trays),
            cells=number_words(rule.per_tray),
            spare=number_words(seeding.spare_cells),
        )
    return words


def seed_lines(found: Proposal, catalogue: Catalogue) -> Iterator[str]:
    """Yield the rule of seeds worked out for the first sowing of each crop."""
    seen = set()
    for one in found.sowings:
        if one.batch.crop not in seen:
            seen.add(one.batch.crop)
            yield tr(
                "{crop}: {words}.", crop=catalogue.crops[one.batch.crop].name, words=seed_words(one.seeding)
            )


# --- what it comes to ----------------------------------------------------------------------------------


def headline(found: Proposal) -> str:
    """Return how much is sown."""
    if not found.sowings:
        return tr("Nothing is to be sown.")
    seeds = sum(one.seeding.seeds for one in found.sowings)
    plants = sum(one.batch.plants for one in found.sowings)
    return tr(
        "{count} sowings, {seeds} seeds for {plants} plants",
        count=number_words(len(found.sowings)),
        seeds=number_words(seeds),
        plants=number_words(plants),
    )


def summary_lines(found: Proposal, farm: Farm, catalogue: Catalogue, ruler: Ruler) -> Iterator[str]:
    """Yield how even the supply is, what makes way, how full the nursery gets, what is shifted."""
    for crop in dict.fromkeys(week.crop for week in found.weeks):
        weeks = tuple(week for week in found.weeks if week.crop == crop)
        yield tr(
            "{crop}: {share} of {weeks} weeks lie within {even} of what is wanted.",
            crop=catalogue.crops[crop].name,
            share=percent_words(steady_share(weeks, within=found.even_share)),
            weeks=len(weeks),
            even=percent_words(found.even_share),
        )
    if found.removed:
        yield tr("In place of {batches}, which make way.", batches=_codes(found, farm))
    if found.nursery:
        fullest = min(found.nursery, key=_free)
        yield tr(
            "Nursery: at least {free} of {cells} cells stay free, in {week}.",
            free=number_words(fullest.free),
            cells=number_words(fullest.cells),
            week=week_words(middle_of_week(ruler.week_start(fullest.week))),
        )
    yield from _shifts(found)


def _free(week: Any) -> int:
    return int(week.free)


def _codes(found: Proposal, farm: Farm) -> str:
    batches = by_id(farm.batches)
    codes = [batches[key].code for key in found.removed if key in batches]
    if len(codes) <= _MOST_NAMED:
        return ", ".join(codes)
    return tr("{named} and {rest} more", named=", ".join(codes[:_MOST_NAMED]), rest=len(codes) - _MOST_NAMED)


def _shifts(found: Proposal) -> Iterator[str]:
    sown = [one.sown_early_days for one in found.sowings if one.sown_early_days]
    moved = [one.moved_early_days for one in found.sowings if one.moved_early_days]
    if sown:
        yield tr(
            "{count} are sown up to {days} days earlier, to keep to days of work.",
            count=len(sown),
            days=max(sown),
        )
    if moved:
        yield tr(
            "{count} are moved up to {days} days earlier, to keep to days of work.",
            count=len(moved),
            days=max(moved),
        )


def shortage_words(batch: Batch, refusal: Refusal) -> str:
    """Return why a sowing has no room, how many places are missing and what would make room."""
    if not refusal.short:
        return tr("{batch} cannot stand in {bed}.", batch=batch.code, bed=refusal.bed or NONE)
    words = tr(
        "{batch}: {short} places too few in {bed} ({needed} needed, {free} free), tightest on {day}.",
        batch=batch.code,
        short=refusal.short,
        bed=refusal.bed,
        needed=refusal.needed,
        free=refusal.free,
        day=NONE if refusal.tight_on is None else day_words(refusal.tight_on),
    )
    if refusal.freeing:
        freed = ", ".join(_freeing(one) for one in refusal.freeing[:_MOST_NAMED])
        words = tr("{words} Room would come from {freed}.", words=words, freed=freed)
    return words


def _freeing(one: Freeing) -> str:
    words = tr(
        "{code} ({places} places, leaves {day})",
        code=one.code,
        places=one.places,
        day=short_day_words(one.until_on),
    )
    return tr("{words}, locked", words=words) if one.locked else words


def unfit_lines(found: Proposal, catalogue: Catalogue) -> Iterator[str]:
    """Yield everything that does not fit or come out as wanted."""
    for batch, refusal in found.refused:
        yield shortage_words(batch, refusal)
    for note in found.notes:
        yield note_words(note, catalogue)


def unfit_words(found: Proposal) -> str:
    """Return in a line what does not fit; empty when everything does."""
    parts = []
    if found.refused:
        plants = sum(batch.plants for batch, _ in found.refused)
        parts.append(
            tr("{count} sowings of {plants} plants in all lack room", count=len(found.refused), plants=plants)
        )
    if found.notes:
        parts.append(
            tr("1 thing to note")
            if len(found.notes) == 1
            else tr("{count} things to note", count=len(found.notes))
        )
    return tr("⚠ {parts}: see below.", parts=", ".join(parts)) if parts else ""


def supply_chart(found: Proposal, crop: str, catalogue: Catalogue, ruler: Ruler, whys: Whys) -> Chart:
    """Return what is foreseen of a crop against what is wanted, in the weeks that want any."""
    weeks = [week for week in found.weeks if week.crop == crop]
    unit = weeks[0].unit if weeks else TargetUnit.HEADS
    return Chart(
        title=tr("Harvest of {crop}", crop=catalogue.crops[crop].name),
        unit=tr("{unit} a week", unit=choice_words(unit)),
        weeks=tuple(week_words(middle_of_week(ruler.week_start(week.week))) for week in weeks),
        strands=(
            Strand(
                label=tr("foreseen"),
                values=tuple(week.foreseen for week in weeks),
                form=Form.BARS,
                colour=0,
                asks=week_asks(weeks, ruler, "foreseen", whys),
            ),
            Strand(
                label=tr("wanted"),
                values=tuple(week.wanted for week in weeks),
                form=Form.STEPS,
                colour=0,
                asks=week_asks(weeks, ruler, "wanted", whys),
            ),
        ),
    )


def supply_columns() -> tuple[Column, ...]:
    """Return the columns of the table of weeks."""
    return (
        Column(title=tr("Week")),
        Column(title=tr("Crop")),
        Column(title=tr("Wanted"), numeric=True),
        Column(title=tr("Foreseen"), numeric=True),
    )


def supply_rows(found: Proposal, catalogue: Catalogue, ruler: Ruler) -> tuple[Row, ...]:
    """Return a row for each week and crop that wants any."""
    return tuple(
        Row(
            id=f"{week.week} {week.crop}",
            texts=(
                week_words(middle_of_week(ruler.week_start(week.week))),
                catalogue.crops[week.crop].name,
                amount_words(week.wanted, week.unit),
                amount_words(week.foreseen, week.unit),
            ),
            sort=(week.week, catalogue.crops[week.crop].name.casefold(), week.wanted, week.foreseen),
        )
        for week in found.weeks
    )
