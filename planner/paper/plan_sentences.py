"""Plain lines of text for proposals of successions and for order lists, for the command line."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from itertools import groupby
from typing import Any, Final

from planner.paper.words import count_words, day_words, list_words, percent_words
from planner.planning.orders import OrderKind, OrderLine, OrderUnit
from planner.planning.plain import places_by_bed
from planner.planning.proposal import NoteKind

_HEADS: Final = ("sow on", "crop", "seeds", "plants", "where", "harvest week")
_NUMBERS: Final = (2, 3)
_NAMED_AT_MOST: Final = 6
_NOTE_WORDS: Final = {
    NoteKind.TOO_SOON.value: "{crop}: {amount:g} wanted in {week} cannot be sown in time any more.",
    NoteKind.NO_BED.value: "{crop}: there is no bed of a kind it grows in.",
    NoteKind.EARLY.value: "{crop}: what is wanted in {week} is ready {days:.0f} days before that week.",
    NoteKind.TOO_SLOW.value: "{crop}: what is wanted in {week} only reaches {ripe} of its size.",
    NoteKind.LESS.value: "{crop}: of {wanted:.0f} plants for {week}, {sown:.0f} have room and are sown.",
    NoteKind.POOR_STAND.value: "{crop}: in {week} only {stand} of good seed comes up in the warmth; "
    "{sowings:.0f} sowings take more seed for it.",
    NoteKind.NO_WORK_DAY.value: "{crop}: {amount:g} wanted in {week} finds no sowing day that suits.",
}


def proposal_lines(data: Mapping[str, Any], *, crop_names: Mapping[str, str]) -> Iterator[str]:
    """Yield a proposal for people, from the data of `proposal_data`: a table, then what to know of it."""
    yield f"{data['farm']}, sowings from {data['from']}"
    yield from _table([_HEADS, *(_cells(sowing, crop_names) for sowing in data["sowings"])])
    if data["removed"]:
        yield _removed_sentence(data["removed"])
    yield from _shift_lines(data["sowings"])
    yield from _rule_lines(data["sowings"], crop_names)
    yield from _supply_lines(data["weeks"], crop_names, even_share=data["even_share"])
    yield from _nursery_lines(data["nursery"])
    for note in data["notes"]:
        yield f"note: {_note_sentence(note, crop_names)}"
    for refused in data["refused"]:
        yield f"note: {shortage_sentence(refused)}"


def _removed_sentence(codes: Sequence[str]) -> str:
    named = list(codes[:_NAMED_AT_MOST])
    if len(codes) > _NAMED_AT_MOST:
        named.append(f"{len(codes) - _NAMED_AT_MOST} more")
    return f"In place of {count_words(len(codes), 'batch', 'batches')}: {list_words(named)}."


def _cells(sowing: Mapping[str, Any], names: Mapping[str, str]) -> tuple[str, ...]:
    return (
        sowing["sow_on"],
        names.get(sowing["crop"], sowing["crop"]),
        str(sowing["seeds"]),
        str(sowing["plants"]),
        _where_words(sowing["where"]),
        sowing["harvest_week"],
    )


def _where_words(where: Sequence[Mapping[str, Any]]) -> str:
    beds = places_by_bed(where)
    return "; ".join(f"{bed} {_ranges(units)}" for bed, units in beds.items()) or "no place"


def _ranges(units: Sequence[int]) -> str:
    """Return numbers as people write them, such as 1-3, 7."""
    runs = [
        [unit for _, unit in group]
        for _, group in groupby(enumerate(units), key=lambda pair: pair[1] - pair[0])
    ]
    return ", ".join(f"{run[0]}-{run[-1]}" if len(run) > 1 else str(run[0]) for run in runs)


def _table(rows: Sequence[Sequence[str]]) -> Iterator[str]:
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    for row in rows:
        cells = [
            cell.rjust(width) if place in _NUMBERS else cell.ljust(width)
            for place, (cell, width) in enumerate(zip(row, widths, strict=True))
        ]
        yield "  ".join(cells).rstrip()


def _shift_lines(sowings: Sequence[Mapping[str, Any]]) -> Iterator[str]:
    """Yield by how much sowings and moves come sooner because of days without work."""
    for field, words in (("sown_early_days", "sown"), ("moved_early_days", "moved")):
        early = [sowing for sowing in sowings if sowing[field]]
        if early:
            most = max(sowing[field] for sowing in early)
            yield (
                f"{count_words(len(early), 'batch is', 'batches are')} {words} earlier, by at most "
                f"{count_words(most, 'day', 'days')}, to keep to days of work."
            )


def _rule_lines(sowings: Sequence[Mapping[str, Any]], names: Mapping[str, str]) -> Iterator[str]:
    """Yield the rule that seeds are counted by, worked out for the first sowing of each crop."""
    for crop in dict.fromkeys(sowing["crop"] for sowing in sowings):
        one = next(sowing for sowing in sowings if sowing["crop"] == crop)
        shares = f"germination {one['germination_share']:g}, survival {one['survival_share']:g}"
        if one["allowance"] != 1:
            shares = f"germination {one['germination_share']:g}, allowance {one['allowance']:g}"
        trays = f" in {count_words(one['trays'], 'tray', 'trays')}" if one["trays"] else ""
        yield (
            f"seeds of {names.get(crop, crop)}: {one['seed_rule']}, {shares}: {one['plants']} plants take "
            f"{one['seeds_needed']}, sown {one['seeds']}{trays}."
        )


def _supply_lines(
    weeks: Sequence[Mapping[str, Any]], names: Mapping[str, str], *, even_share: float
) -> Iterator[str]:
    for crop in dict.fromkeys(week["crop"] for week in weeks):
        of_crop = [week for week in weeks if week["crop"] == crop]
        even = sum(abs(week["foreseen"] - week["wanted"]) <= even_share * week["wanted"] for week in of_crop)
        yield (
            f"{names.get(crop, crop)}: {even} of {count_words(len(of_crop), 'week', 'weeks')} within "
            f"{percent_words(even_share)} of what is wanted."
        )


def _nursery_lines(nursery: Sequence[Mapping[str, Any]]) -> Iterator[str]:
    if nursery:
        fullest = min(nursery, key=lambda week: (week["free"], week["week"]))
        yield f"nursery: at least {fullest['free']} of {fullest['cells']} cells free, in {fullest['week']}."


def _note_sentence(note: Mapping[str, Any], names: Mapping[str, str]) -> str:
    values = dict(note["values"])
    ripe = percent_words(values["ripe_share"]) if "ripe_share" in values else ""
    stand = percent_words(values["stand_share"]) if "stand_share" in values else ""
    crop = names.get(note["crop"], note["crop"])
    words = {"crop": crop, "week": note["week"], "ripe": ripe, "stand": stand}
    return _NOTE_WORDS[note["what"]].format(**words, **values)


def shortage_sentence(refused: Mapping[str, Any]) -> str:
    """Return why a sowing has no room, in which week, how much is missing and what would make room."""
    if not refused["short"]:
        return f'{refused["batch"]} cannot stand in "{refused["bed"]}": {refused["why"]}.'
    tight = date.fromisoformat(refused["tight_on"])
    year, week, _ = tight.isocalendar()
    text = (
        f'{refused["batch"]} has no room in "{refused["bed"]}" from {refused["from"]} to {refused["until"]}: '
        f"{refused['needed']} places are needed and {refused['free']} are free, {refused['short']} too few, "
        f"tightest in {year}-W{week:02d}."
    )
    makers = [
        f"{one['batch']} ({one['places']}, leaves on {day_words(date.fromisoformat(one['until']))})"
        for one in refused["freeing"]
    ]
    return f"{text} Room would come from {list_words(makers)}." if makers else text


def order_lines(lines: Sequence[OrderLine]) -> Iterator[str]:
    """Yield an order list for people, under its months."""
    if not lines:
        yield "nothing is needed"
    for month, group in groupby(lines, key=lambda line: line.month):
        yield month
        yield from (f"  {_order_sentence(line)}" for line in group)


def _order_sentence(line: OrderLine) -> str:
    detail = f" ({line.detail})" if line.detail else ""
    name = (
        line.name if line.kind in (OrderKind.PLUG, OrderKind.NET_POT) else f"{line.kind.value}: {line.name}"
    )
    return "".join((f"{name}{detail}: {_amount_words(line)}", *_order_notes(line)))


def _amount_words(line: OrderLine) -> str:
    digits = 1 if line.unit is OrderUnit.KG else 0
    return f"{line.amount:,.{digits}f} {line.unit.value}"


def _order_notes(line: OrderLine) -> Iterator[str]:
    if line.in_stock is not None:
        yield f", {line.in_stock:,.0f} in stock"
    if line.to_buy:
        yield f", {line.to_buy:,.0f} to buy"
    if line.germination_share is not None:
        yield f", germination {percent_words(line.germination_share)}"
    if line.lot_age_days is not None:
        yield f", lot {count_words(line.lot_age_days, 'day', 'days')} old"
    if line.fish_g is not None and line.made_for_g is not None:
        low, high = line.fish_g
        from_g, to_g = line.made_for_g
        if low < from_g or high > to_g:
            yield f", made for fish of {from_g:,.0f} to {to_g:,.0f} g"
            yield f", eaten by fish of {low:,.0f} to {high:,.0f} g"
