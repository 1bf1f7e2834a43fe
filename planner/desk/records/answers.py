"""What the records answer when they are asked why: entries, planned against actual, lessons, lots, meters.

Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date, datetime, timedelta
from typing import Final

from planner.desk.outlook import Outlook
from planner.desk.pages import Ask, Basis, Entered, Fact
from planner.desk.session import Session
from planner.desk.why.entered import counted
from planner.desk.why.figures import figure_answer
from planner.desk.why.late import due_asked, late_asked, shortfall
from planner.desk.words import choice_words, field_words, kind_words, time_words
from planner.farm.changes import ChangeSet
from planner.farm.crops import Batch, SeedLot
from planner.farm.farm import Thing, kind_of, label_of
from planner.farm.log import LogEntry
from planner.forecast.seed_lots import LotShare
from planner.forecast.water.meters import MeterState
from planner.forecast.why.formulas import Formula
from planner.forecast.why.values import Explanation, Input, Note, NoteKind, Origin, Subject, SubjectKind
from planner.planning.late import CarriedOver
from planner.planning.learning import Learned, Observed, StageOutcome
from planner.planning.why_learning import (
    why_actual,
    why_learned,
    why_longer,
    why_planned,
    why_spread,
)

_LONGEST_APART: Final = timedelta(minutes=10)
"""An act is kept at once; what lies farther from the moment an entry was noted is another act."""
_MOST_CHANGED: Final = 6
_BESIDE: Final = ", "


def entry_answer(entry: LogEntry, about: str) -> Explanation:
    """Return what an entry says, who noted it, and when; `about` names what it is about."""
    inputs: tuple[Input, ...] = ()
    if entry.amount is not None:
        unit = entry.quantity.value.partition(" ")[2] if entry.quantity else entry.unit.value
        inputs = (_entered("value", entry.amount, unit, entry),)
    if entry.out_of is not None:
        inputs = (*inputs, _entered("seeds_laid_out", float(entry.out_of), "seeds", entry))
    return Explanation(
        title=choice_words(entry.quantity or entry.what),
        about=_BESIDE.join(part for part in (about, entry.code) if part),
        value=entry.amount,
        unit=inputs[0].unit if inputs else "",
        formula=Formula.AS_ENTERED,
        inputs=inputs,
        notes=(_noted(entry),),
        on=entry.on,
    )


def _entered(name: str, value: float, unit: str, entry: LogEntry) -> Input:
    return Input(name=name, value=value, unit=unit, origin=Origin.ENTERED, about=entry.code)


def _noted(entry: LogEntry) -> Note:
    when = noted_words(entry.noted_at)
    if not entry.who:
        return Note(kind=NoteKind.NOTED_WHEN, values=(("when", when),))
    return Note(kind=NoteKind.NOTED, values=(("who", entry.who), ("when", when)))


def noted_words(noted_at: str) -> str:
    """Return when something was noted in the user's own time; a file may hold a moment that never was."""
    try:
        return time_words(datetime.fromisoformat(noted_at))
    except ValueError:
        return noted_at


def with_act(fact: Fact, entries: Sequence[LogEntry], session: Session | None) -> Fact:
    """Return the fact of an entry with the act that kept it, and what that act changed besides."""
    if not isinstance(fact.ask, Explanation):
        return fact
    code = fact.ask.about.rpartition(_BESIDE)[2]
    entry = next((each for each in entries if each.code == code), None)
    act = act_of(entry, session) if entry is not None else None
    if entry is None or act is None:
        return fact
    return replace(fact, ask=replace(fact.ask, notes=(*fact.ask.notes, *_act_notes(act, entry))))


def act_of(entry: LogEntry, session: Session | None) -> ChangeSet | None:
    """Return the act that kept an entry; None when it came with the farm or cannot be told any more."""
    try:
        noted = datetime.fromisoformat(entry.noted_at)
    except ValueError:
        return None
    for at, line in enumerate(session.history if session is not None else ()):
        if session is not None and line.done and abs(line.at - noted) <= _LONGEST_APART:
            act = session.trail(at).act
            if any(change.after is not None and change.after.id == entry.id for change in act.changes):
                return act
    return None


def _act_notes(act: ChangeSet, entry: LogEntry) -> tuple[Note, ...]:
    kept = Note(kind=NoteKind.BY_ACT, values=(("act", act.title),))
    touched = (change.after or change.before for change in act.changes)
    names = [_name(thing) for thing in touched if thing is not None and thing.id != entry.id]
    if not names:
        return kept, Note(kind=NoteKind.ENTRY_ONLY)
    told = [*names[:_MOST_CHANGED], *(["…"] if len(names) > _MOST_CHANGED else [])]
    return kept, Note(kind=NoteKind.ACT_CHANGED, values=(("things", ", ".join(dict.fromkeys(told))),))


def _name(thing: Thing) -> str:
    kind = kind_of(thing)
    word = kind_words(kind.word)
    return f"{word} {label_of(thing)}" if kind.label else word


def outcome_asks(outlook: Outlook, one: StageOutcome, today: date) -> tuple[Ask | None, ...]:
    """Return what the columns of planned against actual can be asked, in their order."""
    batch = outlook.found[one.batch]
    assert isinstance(batch, Batch)
    return (
        None,
        None,
        why_planned(one, batch, outlook.catalogue),
        why_actual(one, batch, today),
        why_longer(one, batch, outlook.catalogue, today),
        None,
    )


def lesson_asks(outlook: Outlook, one: Learned, seen: tuple[Observed, ...]) -> tuple[Ask | None, ...]:
    """Return what the columns of what was learned can be asked, in their order."""
    path, catalogue = f"crop/{one.crop}/{one.field}", outlook.catalogue
    name = catalogue.crops[one.crop].name
    book = figure_answer(catalogue, catalogue, path, title=field_words(one.field), about=name)
    over = tuple(each.batch.code for each in seen if each.over)
    lasting = tuple(each.batch.code for each in seen if not each.over)
    return (
        None,
        None,
        None,
        None,
        book,
        why_learned(one, seen, outlook.catalogue),
        why_spread(one, seen, outlook.catalogue),
        counted("batches that were seen", over),
        counted("batches that still last", lasting),
    )


def late_asks(outlook: Outlook, one: CarriedOver) -> tuple[Ask | None, ...]:
    """Return what the columns of late tasks can be asked, in their order."""
    short = shortfall(one.short[0], outlook) if one.short else None
    return None, due_asked(one), late_asked(one, outlook), short


def lot_asks(lot: SeedLot, share: LotShare, today: date) -> tuple[Ask | None, ...]:
    """Return what the columns of seed lots can be asked, in their order."""
    day = "packed_on" if lot.packed_on else "bought_on"
    reckoned = Subject(kind=SubjectKind.LOT_SHARE, about=lot.id, on=today)
    return (
        None,
        None,
        None,
        None,
        Entered(about=lot.id, field=day) if lot.packed_on or lot.bought_on else None,
        reckoned,
        reckoned if share.seeds else None,
        None if lot.seeds_left is None else Entered(about=lot.id, field="seeds_left"),
        None,
    )


def meter_asks(state: MeterState, today: date, factor: Basis | None) -> tuple[Ask | None, ...]:
    """Return what the columns of meters can be asked; `factor` is what stands in for one not noted."""
    meter = state.meter
    watched = state.last_on is not None and state.due_on is not None
    late = Subject(kind=SubjectKind.METER_LATE, about=meter.id, on=today) if watched else None
    own = None if meter.factor is None else Entered(about=meter.id, field="factor")
    return None, None, own or factor, late, late, late
