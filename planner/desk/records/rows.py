"""The log, planned against actual, lessons and late sowings as ready rows. Pure: knows nothing of widgets."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date
from typing import Any

from planner.actions.learning import Adoption
from planner.desk.late import cost_words, late_words, task_words
from planner.desk.outlook import Outlook
from planner.desk.pages import Ask
from planner.desk.records.answers import entry_answer, late_asks, lesson_asks, noted_words, outcome_asks
from planner.desk.rows import Column, Row
from planner.desk.say import tr
from planner.desk.water_words import quantity_value, quantity_words
from planner.desk.words import NONE, choice_words, day_words, field_words, listed, number_words, with_unit
from planner.farm.farm import label_of
from planner.farm.fields import NO_ID
from planner.farm.log import LogEntry, standing
from planner.planning.late import CarriedOver
from planner.planning.learning import Key, Learned, Observed, ReasonTotal, StageOutcome, key_of


def _columns(*titles: str, numeric: tuple[int, ...] = ()) -> tuple[Column, ...]:
    return tuple(Column(title=title, numeric=at in numeric) for at, title in enumerate(titles))


def _row(
    key: str,
    texts: tuple[str, ...],
    sort: tuple[Any, ...],
    payload: Any = None,
    asks: tuple[Ask | None, ...] = (),
) -> Row:
    return Row(id=key, texts=texts, sort=sort, spoken=", ".join(texts), payload=payload, asks=asks)


def entry_columns() -> tuple[Column, ...]:
    """Return the columns of the log."""
    titles = (tr("Day"), tr("Time"), tr("What"), tr("About"), tr("Amount"), tr("Reason"))
    return _columns(*titles, tr("Who"), tr("Noted"), tr("Note"), tr("State"), numeric=(4,))


def entry_rows(outlook: Outlook) -> tuple[Row, ...]:
    """Return every entry, newest first, those that were corrected among them."""
    entries = outlook.farm.log_entries
    holds = {entry.id for entry in standing(entries)}
    codes = {entry.id: entry.code for entry in entries}
    corrected = {entry.corrects: entry.code for entry in entries if entry.corrects != NO_ID}
    ordered = sorted(entries, key=_when, reverse=True)
    return tuple(_entry_row(outlook, entry, holds, codes, corrected) for entry in ordered)


def _when(entry: LogEntry) -> tuple[str, str]:
    return entry.on.isoformat(), entry.at


def _entry_row(
    outlook: Outlook, entry: LogEntry, holds: set[Any], codes: dict[Any, str], corrected: dict[Any, str]
) -> Row:
    state = ""
    if entry.corrects != NO_ID:
        state = tr("corrects {code}", code=codes[entry.corrects])
    if entry.id in corrected:
        state = tr("replaced by {code}", code=corrected[entry.id])
    about = ", ".join(
        label_of(outlook.found[each])
        for each in (entry.batch, entry.group, entry.bed, entry.loop, entry.seed_lot, entry.meter)
        if each in outlook.found
    )
    amount = amount_words(entry)
    head = (day_words(entry.on), entry.at, choice_words(entry.what), about, amount)
    noted = noted_words(entry.noted_at)
    notes = entry.notes.replace("\n", " ")
    texts = (*head, choice_words(entry.reason), entry.who, noted, notes, state)
    sort = (entry.on.toordinal(), *texts[1:4], entry.amount or 0.0, *texts[5:7], entry.noted_at, *texts[8:])
    why = entry_answer(entry, about)
    amounts = why if entry.amount is not None else None
    asks = (why, why if entry.at else None, None, None, amounts, None, None, why, None, None)
    return _row(entry.id, texts, sort, payload=entry.id in holds, asks=asks)


def amount_words(entry: LogEntry) -> str:
    """Return the amount of an entry with its unit; what was read, for a reading."""
    if entry.amount is None:
        return NONE
    if entry.quantity is not None:
        return f"{quantity_words(entry.quantity)} {quantity_value(entry.quantity, entry.amount)}"
    if entry.out_of is not None:
        return tr("{many} of {seeds} seeds", many=number_words(entry.amount), seeds=entry.out_of)
    return with_unit(entry.amount, entry.unit.value)


def totals_words(totals: tuple[ReasonTotal, ...]) -> str:
    """Return by how many days stages were longer or shorter, by reason, in one sentence."""
    if not totals:
        return ""
    parts = (
        tr(
            "{reason}: {stages} stages, {days} d",
            reason=choice_words(one.reason) if one.reason.value else tr("no reason given"),
            stages=one.stages,
            days=f"{one.days:+d}".replace("-", "−"),
        )
        for one in totals
    )
    return tr("By reason: {parts}", parts="; ".join(parts))


def outcome_columns() -> tuple[Column, ...]:
    """Return the columns of planned against actual."""
    titles = (tr("Batch"), tr("Stage"), tr("Planned [d]"), tr("Actual [d]"), tr("Difference [d]"))
    return _columns(*titles, tr("Reason"), numeric=(2, 3, 4))


def outcome_rows(outlook: Outlook, found: tuple[StageOutcome, ...], today: date) -> tuple[Row, ...]:
    """Return one row for each stage of a batch that the log speaks of."""
    rows = []
    for one in found:
        code = label_of(outlook.found[one.batch])
        late = one.difference_days
        actual = tr("{days} so far", days=str(one.so_far_days)) if late is None else str(one.actual_days)
        said = NONE if late is None else f"{late:+d}".replace("-", "−")
        texts = (code, choice_words(one.stage), str(one.planned_days), actual, said, choice_words(one.reason))
        sort = (code, texts[1], one.planned_days, one.so_far_days, late or 0, texts[5])
        asks = outcome_asks(outlook, one, today)
        rows.append(_row(f"{one.batch} {one.stage.value}", texts, sort, asks=asks))
    return tuple(rows)


def lesson_columns() -> tuple[Column, ...]:
    """Return the columns of what was learned."""
    titles = (tr("Crop"), tr("Variety"), tr("Sown in"), tr("What"), tr("Book"), tr("Learned"), tr("± spread"))
    return _columns(*titles, tr("Batches"), tr("Unfinished"), numeric=(4, 5, 6, 7, 8))


def lesson_rows(
    outlook: Outlook, lessons: tuple[Learned, ...], seen: Mapping[Key, tuple[Observed, ...]]
) -> tuple[Row, ...]:
    """Return one row for each lesson, with its number as id; `seen` is what the log shows of each."""
    quarters = (tr("January–March"), tr("April–June"), tr("July–September"), tr("October–December"))
    rows = []
    for number, one in enumerate(lessons):
        found = one.estimate
        numbers = (found.book, found.value, found.spread)
        head = (outlook.crop_name(one.crop), one.variety, quarters[one.quarter], field_words(one.field))
        texts = (
            *head,
            *(number_words(each, digits=2) for each in numbers),
            str(found.n),
            str(found.unfinished),
        )
        asks = lesson_asks(outlook, one, seen[key_of(one)])
        rows.append(_row(str(number), texts, (*head, *numbers, found.n, found.unfinished), one, asks))
    return tuple(rows)


def nothing_taken_up_words(found: Adoption) -> str:
    """Return why no batch takes a lesson up: none is there, or the beds have no room for it."""
    if not found.left_out:
        return tr("No batch is still to be sown that this is for.")
    return tr("Nothing was taken up. {why}", why=_no_room(found))


def left_out_words(found: Adoption) -> str:
    """Return how many batches took a lesson up, and which could not."""
    many, left = len(found.act.changes), len(found.left_out)
    return tr("Taken up by {many} of {all} batches. {why}", many=many, all=many + left, why=_no_room(found))


def _no_room(found: Adoption) -> str:
    return tr(
        "With it these would share places with others: {batches}. Make room for them, then take it up again.",
        batches=listed([batch.code for batch in found.left_out]),
    )


def late_columns() -> tuple[Column, ...]:
    """Return the columns of the late tasks."""
    return _columns(tr("Task"), tr("Was due"), tr("Days late"), tr("If done today"), numeric=(2,))


def late_rows(outlook: Outlook, late: tuple[CarriedOver, ...]) -> tuple[Row, ...]:
    """Return one row for each late task, with what it costs."""
    rows = []
    for one in late:
        texts = (
            task_words(one, outlook),
            day_words(one.due_on),
            number_words(one.late_days),
            cost_words(one, outlook),
        )
        sort = (texts[0], one.due_on.toordinal(), one.late_days, texts[3])
        rows.append(_row(str(one.batch), texts, sort, asks=late_asks(outlook, one)))
    return tuple(rows)


def late_sentence(outlook: Outlook, late: tuple[CarriedOver, ...]) -> str:
    """Return how many tasks are late and the longest late of them; empty when none is."""
    if not late:
        return ""
    first = f"{late_words(late[0], outlook)} – {cost_words(late[0], outlook)}"
    return first if len(late) == 1 else tr("{many} tasks are late. {first}", many=len(late), first=first)
