"""Which tables a farm text has, which thing each stands for, and which keys it knows.

Reader, writer, near-miss help and the page for growers all look here. The keys come from the
fields of the farm's values; what a text knows beyond them (conveniences) is declared in the same way.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum
from functools import cache
from types import NoneType, UnionType
from typing import Any, Final, get_args, get_origin, get_type_hints

from planner.farm import fields, species
from planner.farm.farm import SETTINGS_KIND, Kind, Shelf, kind_named
from planner.farm.fields import SPEC, FieldKind, FieldSpec, specs_of
from planner.farm.species import UNIT_WORDS, BedKind
from planner.store.text import limits

ORDER: Final = "order"


def _many(refers_to: str, *, meaning: str) -> Any:
    spec = FieldSpec(kind=FieldKind.REFERENCE, refers_to=refers_to, meaning=meaning)
    return dataclasses.field(default=(), metadata={SPEC: spec})


def _runs(*, meaning: str) -> Any:
    return fields.text(default="", meaning=meaning)


@dataclass(frozen=True, slots=True, kw_only=True)
class OrderAid:
    """Where a thing stands among all of its kind, when the order of the text does not say it."""

    order: int | None = fields.whole(
        1, limits.MOST_THINGS, default=None, meaning="its number among all of its kind; seldom needed by hand"
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class BedAid(OrderAid):
    """Other ways to say how many places a bed has, and how large it is."""

    length_m: float | None = fields.number(
        0.01, 10_000, "m", default=None, meaning="of one raft, block or tray"
    )
    width_m: float | None = fields.number(
        0.01, 10_000, "m", default=None, meaning="of one raft, block or tray"
    )
    spacing_cm: float | None = fields.number(
        0.1, 1_000, "cm", default=None, meaning="from plant to plant, the same both ways"
    )
    places: int | None = fields.whole(
        1, 4_000_000, unit="places", default=None, meaning="on one raft, block or tray, when no grid matters"
    )
    density_per_m2: float | None = fields.number(
        0.01, 100_000, "places/m²", default=None, meaning="places are rounded down, at least 1"
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class RepeatAid:
    """Says that one table stands for several, so many days apart."""

    repeat_every_days: int | None = fields.whole(1, 400, unit="d", default=None, meaning="days between two")
    repeat_times: int | None = fields.whole(
        1, limits.MOST_REPEATS, default=None, meaning="how many in all, the first counted"
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class GroupAid(RepeatAid):
    """Staggered stocking over several tanks, and the harvest planned with it."""

    tanks: tuple[str, ...] = _many("tank", meaning="list of tank names, taken in turn by repeated groups")
    harvest_after_days: int | None = fields.whole(
        1, 4_000, unit="d", default=None, meaning="harvests the whole group so many days after stocking"
    )


@dataclass(frozen=True, slots=True, kw_only=True)
class PlaceAid(OrderAid):
    """The places a batch holds, as growers say them."""

    raft: str = _runs(meaning='number of the raft, or several: "1-3"')
    block: str = _runs(meaning="the same for a media bed")
    tray: str = _runs(meaning="the same for a nursery")
    unit: str = _runs(meaning="the same for any bed")
    places: str = _runs(meaning='5, "1-18", "1-6, 9-12", or "all"')


@dataclass(frozen=True, slots=True, kw_only=True)
class Key:
    """One key of a table: its name in the text, the field it fills, and what it may hold."""

    name: str
    field: str
    spec: FieldSpec
    hint: Any
    default: Any
    needed: bool
    aid: bool = False
    figure: bool = False

    @property
    def runs(self) -> bool:
        """Whether the key takes numbers and runs of numbers such as "1-6, 9"."""
        return self.aid and self.spec.kind is FieldKind.TEXT

    @property
    def many(self) -> bool:
        """Whether the key takes a list of names."""
        return self.aid and self.spec.kind is FieldKind.REFERENCE

    @property
    def choices(self) -> tuple[str, ...]:
        """The words that a choice allows."""
        return tuple(str(one.value) for one in self.hint) if isinstance(self.hint, type(Enum)) else ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Form:
    """One table of the text: its header, the kind of thing it stands for, how its keys differ."""

    word: str
    kind: Kind
    meaning: str
    parent: str = ""
    parent_field: str = ""
    fixed: Mapping[str, Any] = field(default_factory=dict)
    renamed: Mapping[str, str] = field(default_factory=dict)
    hidden: frozenset[str] = frozenset()
    optional: frozenset[str] = frozenset()
    aid: type[Any] | None = None
    figures: type[Any] | None = None

    @property
    def header(self) -> str:
        """The header as it is written in the text."""
        if self.kind is SETTINGS_KIND:
            return f"[{self.word}]"
        return f"[[{self.parent}.{self.word}]]" if self.parent else f"[[{self.word}]]"

    @property
    def keys(self) -> dict[str, Key]:
        """Every key of the table by its name, in the order it is written in."""
        return _keys(self.header)


def _bed(word: str, kind: BedKind, meaning: str) -> Form:
    return Form(
        word=word,
        kind=kind_named("bed"),
        meaning=meaning,
        fixed={"kind": kind},
        renamed={"units": f"{UNIT_WORDS[kind]}s"},
        hidden=frozenset({"kind"}),
        optional=frozenset({"rows", "columns", "area_m2"}),
        aid=BedAid,
    )


def _shelf(word: str, shelf: Shelf, figures: type[Any]) -> Form:
    return Form(
        word=word,
        kind=kind_named("own entry"),
        meaning=f"a {word} of the grower's own, like one of the book but for the figures given",
        fixed={"shelf": shelf},
        hidden=frozenset({"shelf", "values"}),
        aid=OrderAid,
        figures=figures,
    )


def _plain(word: str, kind: str, meaning: str) -> Form:
    return Form(word=word, kind=kind_named(kind), meaning=meaning)


MOST_FISH_STAGES: Final = 6
"""How many stages of a fish may be given figures of their own."""

_LISTS_IN_WORDS: Final[dict[type[Any], tuple[Key, ...]]] = {
    species.Crop: (
        Key(
            name="beds",
            field="beds",
            spec=FieldSpec(
                kind=FieldKind.TEXT, length=60, meaning='kinds of bed it may stand in, such as "raft, media"'
            ),
            hint=str,
            default=dataclasses.MISSING,
            needed=False,
        ),
    ),
}

FORMS: Final[tuple[Form, ...]] = (
    Form(word="farm", kind=SETTINGS_KIND, meaning="the farm as a whole"),
    _plain("site", "site", "a place with its climate"),
    _plain("loop", "loop", "one body of water that goes round"),
    _plain("tank", "tank", "a fish tank"),
    _plain("filter", "filter", "a stage of water treatment"),
    _bed("nursery", BedKind.NURSERY, "trays that lie together, where seedlings stand"),
    _bed("raft_bed", BedKind.RAFT, "rafts that float together"),
    _bed("media_bed", BedKind.MEDIA, "blocks of gravel or clay that lie together"),
    _shelf("crop", Shelf.CROP, species.Crop),
    _shelf("fish", Shelf.FISH, species.FishSpecies),
    _shelf("feed", Shelf.FEED, species.Feed),
    _shelf("supplement", Shelf.SUPPLEMENT, species.Supplement),
    _plain("seed_lot", "seed lot", "one packet or delivery of seed"),
    Form(
        word="fish_group",
        kind=kind_named("fish group"),
        meaning="fish stocked together",
        optional=frozenset({"tank"}),
        aid=GroupAid,
    ),
    Form(
        word="event",
        kind=kind_named("fish event"),
        meaning="what happens to the fish group above it",
        parent="fish_group",
        parent_field="group",
        hidden=frozenset({"group"}),
        aid=OrderAid,
    ),
    Form(
        word="batch",
        kind=kind_named("batch"),
        meaning="plants sown together",
        optional=frozenset({"code"}),
        aid=RepeatAid,
    ),
    Form(
        word="place",
        kind=kind_named("placement"),
        meaning="places that the batch above it holds",
        parent="batch",
        parent_field="batch",
        hidden=frozenset({"batch", "unit", "first", "count"}),
        optional=frozenset({"bed"}),
        aid=PlaceAid,
    ),
    _plain("target", "target", "so much of a crop wanted each week"),
    _plain("dose", "dose", "a supplement or base put into the water"),
    _plain("meter", "meter", "a meter that water is read with"),
    _plain("reading", "reading", "one value read from a meter or test kit"),
    _plain("solids_batch", "solids batch", "solids kept apart until their liquor goes back to the water"),
    _plain("log", "log entry", "one thing that really happened"),
)
"""Every table, in the order it is written in; nested tables after their parents."""

TOP_FORMS: Final = {form.word: form for form in FORMS if not form.parent}


def form_of_header(header: str) -> Form:
    """Return the form written under a header such as `[[batch.place]]`."""
    return next(form for form in FORMS if form.header == header)


def nested_in(form: Form) -> tuple[Form, ...]:
    """Return the forms that stand inside a table."""
    return tuple(inner for inner in FORMS if inner.parent == form.word)


@cache
def _keys(header: str) -> dict[str, Key]:
    form = form_of_header(header)
    found: dict[str, Key] = {}
    for key in (*_own_keys(form), *_figure_keys(form), *_aid_keys(form)):
        found.setdefault(key.name, key)
    return found


def _own_keys(form: Form) -> list[Key]:
    return [
        _key(form.kind.owner, name, name=form.renamed.get(name, name), optional=name in form.optional)
        for name in specs_of(form.kind.owner)
        if name not in form.hidden
    ]


def _aid_keys(form: Form) -> list[Key]:
    if form.aid is None:
        return []
    return [
        dataclasses.replace(_key(form.aid, name, name=name, optional=True), aid=True)
        for name in specs_of(form.aid)
    ]


def _figure_keys(form: Form) -> list[Key]:
    """Return keys for the figures of a book entry; lists are told in words, fish stages by number."""
    if form.figures is None:
        return []
    keys = [_key(form.figures, name, name=name, optional=True) for name in specs_of(form.figures)]
    single = [key for key in keys if get_origin(key.hint) is not tuple]
    return [
        dataclasses.replace(key, figure=True, default=dataclasses.MISSING)
        for key in (*single, *_LISTS_IN_WORDS.get(form.figures, ()), *_stage_keys(form.figures))
    ]


def _stage_keys(figures: type[Any]) -> list[Key]:
    if figures is not species.FishSpecies:
        return []
    return [
        _key(
            species.FishStage,
            name,
            name=f"stage_{number}_{name}",
            optional=True,
            field=f"stage_{number}_{name}",
        )
        for number in range(1, MOST_FISH_STAGES + 1)
        for name in specs_of(species.FishStage)
    ]


def _key(owner: type[Any], field_name: str, *, name: str, optional: bool, field: str = "") -> Key:
    spec = specs_of(owner)[field_name]
    default = next(one.default for one in dataclasses.fields(owner) if one.name == field_name)
    return Key(
        name=name,
        field=field or field_name,
        spec=spec,
        hint=_without_none(get_type_hints(owner)[field_name]),
        default=default,
        needed=spec.needed and not optional and spec.kind is not FieldKind.ID,
    )


def _without_none(hint: Any) -> Any:
    """Return the type of a field without the None that stands for "not known"."""
    if isinstance(hint, UnionType):
        left = [one for one in get_args(hint) if one is not NoneType]
        return left[0] if len(left) == 1 else hint
    return hint
