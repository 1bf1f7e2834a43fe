"""Broken farm texts: each gives one fault of the right kind, at the right field and line, in a sentence."""

from pathlib import Path

import pytest

from planner.farm.farm import Farm
from planner.farm.faults import FarmFaultError, Fault, FaultKind
from planner.store.text import read_farm_file, read_farm_text

BROKEN = Path(__file__).parent / "broken"
CASES: tuple[tuple[str, FaultKind, str, int, str], ...] = (
    ("empty", FaultKind.MISSING, "format", 0, "format is missing"),
    ("no-format", FaultKind.MISSING, "format", 0, "Write format = "),
    ("newer-format", FaultKind.WRONG_TYPE, "format", 1, "newer form needs a newer program"),
    ("no-farm", FaultKind.MISSING, "farm", 0, "the table [farm] is missing"),
    ("farm-without-name", FaultKind.MISSING, "name", 2, "name is missing"),
    ("no-plan-date", FaultKind.MISSING, "plan_from", 2, "date such as 2026-03-02"),
    ("date-with-time", FaultKind.WRONG_TYPE, "plan_from", 4, "the date with a time"),
    ("date-in-quotes", FaultKind.WRONG_TYPE, "plan_from", 4, "without quotes"),
    ("date-before-1990", FaultKind.OUT_OF_LIMITS, "plan_from", 4, "1990-01-01 to 2199-12-31"),
    ("day-of-no-month", FaultKind.SYNTAX, "", 4, ""),
    ("weeks-as-text", FaultKind.WRONG_TYPE, "plan_weeks", 5, "whole number"),
    ("weeks-with-a-point", FaultKind.WRONG_TYPE, "plan_weeks", 5, "whole number"),
    ("too-many-weeks", FaultKind.OUT_OF_LIMITS, "plan_weeks", 5, "1 to 520 weeks"),
    (
        "tank-volume-in-cubic-metres",
        FaultKind.UNKNOWN_KEY,
        "volume_m3",
        13,
        "tank has no key volume_m3; volume_l is in litres",
    ),
    ("weight-in-kilograms", FaultKind.UNKNOWN_KEY, "weight_kg", 20, "mean_weight_g is in grams"),
    ("area-in-square-feet", FaultKind.UNKNOWN_KEY, "area_ft2", 16, "area_m2 is in square metres"),
    ("temperature-in-fahrenheit", FaultKind.UNKNOWN_KEY, "temp_f", 10, "water_c is in degrees Celsius"),
    ("slip-of-the-pen", FaultKind.UNKNOWN_KEY, "notse", 13, "Did you mean notes?"),
    ("unknown-table", FaultKind.UNKNOWN_KEY, "tnak", 13, "Did you mean tank?"),
    ("bed-without-kind", FaultKind.UNKNOWN_KEY, "bed", 10, "raft_bed or media_bed or nursery"),
    ("single-brackets", FaultKind.WRONG_TYPE, "tank", 10, "[[tank]]"),
    ("places-without-a-batch", FaultKind.WRONG_TYPE, "batch", 16, "no [[batch]] is above it"),
    ("event-in-single-brackets", FaultKind.WRONG_TYPE, "event", 20, "[[fish_group.event]]"),
    ("date-day-first", FaultKind.SYNTAX, "", 4, "year first"),
    ("key-twice", FaultKind.DUPLICATE, "volume_l", 13, "given twice"),
    ("farm-twice", FaultKind.DUPLICATE, "farm", 5, "given twice"),
    ("name-twice", FaultKind.DUPLICATE, "name", 14, "used by more than one tank"),
    ("text-without-quotes", FaultKind.SYNTAX, "", 11, "Texts need quotes"),
    ("text-not-closed", FaultKind.SYNTAX, "", 11, "not closed"),
    ("decimal-comma", FaultKind.SYNTAX, "", 12, "2.5"),
    ("list-not-closed", FaultKind.SYNTAX, "", 10, ""),
    ("key-without-value", FaultKind.SYNTAX, "", 12, "followed by ="),
    ("number-in-quotes", FaultKind.WRONG_TYPE, "volume_l", 12, "without quotes or unit"),
    ("true-for-a-number", FaultKind.WRONG_TYPE, "volume_l", 12, "is true, but must be a number"),
    ("number-for-true", FaultKind.WRONG_TYPE, "pelleted", 8, "true or false"),
    ("not-a-number", FaultKind.OUT_OF_LIMITS, "volume_l", 12, "is nan"),
    ("endless-number", FaultKind.OUT_OF_LIMITS, "volume_l", 12, "is inf"),
    ("huge-number", FaultKind.OUT_OF_LIMITS, "volume_l", 12, "15 digits"),
    ("number-of-five-thousand-digits", FaultKind.TOO_LARGE, "", 12, "too many digits"),
    ("tank-too-small", FaultKind.OUT_OF_LIMITS, "volume_l", 12, "10 to 10000000 L"),
    ("eleven-months", FaultKind.WRONG_TYPE, "water_c", 10, "needs 12"),
    ("hot-august", FaultKind.OUT_OF_LIMITS, "water_c[8]", 10, "0 to 45"),
    ("unknown-choice", FaultKind.UNKNOWN_NAME, "kind", 12, 'Did you mean "settler"?'),
    ("unknown-tank", FaultKind.UNKNOWN_NAME, "tank", 20, 'Did you mean "Tank 1"?'),
    ("which-tank", FaultKind.MISSING, "tank", 16, 'there are 2: "Tank 1", "Tank 2"'),
    ("loop-without-site", FaultKind.MISSING, "site", 5, "Add a site first"),
    ("tank-and-tanks", FaultKind.DUPLICATE, "tanks", 21, "Keep one"),
    ("two-tanks-for-one-group", FaultKind.NOT_SUITED, "tanks", 23, "repeat_times"),
    ("repeat-without-days", FaultKind.MISSING, "repeat_every_days", 13, "Give both"),
    ("too-many-repeats", FaultKind.OUT_OF_LIMITS, "repeat_times", 22, "1 to 520"),
    ("repeats-with-an-id", FaultKind.NOT_SUITED, "id", 21, "Leave id out"),
    ("id-of-our-own-making", FaultKind.WRONG_TYPE, "id", 12, "Leave id out"),
    ("harvest-before-stocking", FaultKind.WRONG_ORDER, "on", 22, "before the group was stocked"),
    ("deaths-without-count", FaultKind.MISSING, "count", 20, "needs it"),
    ("percent-feeding-without-percent", FaultKind.MISSING, "feed_percent", 13, "needs it"),
    ("no-plants", FaultKind.OUT_OF_LIMITS, "plants", 20, "1 to 1000000 plants"),
    ("crop-left-empty", FaultKind.MISSING, "crop", 18, "must be given"),
    ("raft-that-is-not-there", FaultKind.NO_SUCH_PLACE, "raft", 23, "has 4 rafts, not 5"),
    ("places-beyond-the-raft", FaultKind.NO_SUCH_PLACE, "places", 24, "places 1 to 72"),
    ("places-backwards", FaultKind.WRONG_TYPE, "places", 24, "1-18"),
    ("places-from-nought", FaultKind.WRONG_TYPE, "places", 24, "count from 1"),
    ("places-in-words", FaultKind.WRONG_TYPE, "places", 24, "1-6, 9-12"),
    ("tank-in-single-brackets", FaultKind.DUPLICATE, "tank", 13, "begin each with the line [[tank]]"),
    ("place-twice", FaultKind.HELD_PLACE, "places", 28, "place 6 is given twice on raft 1"),
    (
        "more-places-than-plants",
        FaultKind.OUT_OF_LIMITS,
        "places",
        16,
        "19 places are held in beds for 18 plants",
    ),
    ("which-raft", FaultKind.MISSING, "raft", 21, "raft = 1 to 4"),
    ("tray-on-a-raft-bed", FaultKind.NOT_SUITED, "tray", 24, "Write raft instead"),
    ("seedlings-on-rafts", FaultKind.NOT_SUITED, "bed", 33, "cannot stand in"),
    ("no-bed-for-the-phase", FaultKind.MISSING, "bed", 21, "that could be meant"),
    ("bed-without-area", FaultKind.MISSING, "area_m2", 10, "length_m and width_m"),
    ("bed-without-places", FaultKind.MISSING, "rows", 10, "spacing_cm, places or density_per_m2"),
    ("spacing-wider-than-the-raft", FaultKind.OUT_OF_LIMITS, "spacing_cm", 14, "leaves no place"),
    ("places-against-rows", FaultKind.NOT_SUITED, "places", 16, "makes 72"),
    ("row-too-long", FaultKind.OUT_OF_LIMITS, "places", 12, "rows and columns"),
    ("own-crop-with-odd-figure", FaultKind.OUT_OF_LIMITS, "bed_days", 9, "1 to 400 d"),
    ("own-feed-protein-in-percent", FaultKind.UNKNOWN_KEY, "protein_percent", 9, "protein_share"),
    ("reading-beyond-its-scale", FaultKind.OUT_OF_LIMITS, "value", 13, "2 to 12"),
    ("dose-that-ends-before-it-starts", FaultKind.WRONG_ORDER, "until_on", 15, "before it starts"),
    ("target-of-nothing", FaultKind.OUT_OF_LIMITS, "amount_per_week", 7, "0.01 to 1000000"),
    ("brackets-without-end", FaultKind.TOO_LARGE, "", 5, "nested more than"),
    ("key-of-many-parts", FaultKind.TOO_LARGE, "", 5, "parts"),
    ("line-without-end", FaultKind.TOO_LARGE, "", 5, "characters"),
    ("note-too-long", FaultKind.TOO_LARGE, "notes", 5, "at most 4000"),
    ("name-over-two-lines", FaultKind.WRONG_TYPE, "name", 11, "one plain line"),
    ("name-that-turns-round", FaultKind.WRONG_TYPE, "name", 11, "holds U+202E, a mark that turns the order"),
    ("name-with-a-hidden-mark", FaultKind.WRONG_TYPE, "name", 11, "holds U+200B, a mark that is not seen"),
    ("variety-over-two-lines", FaultKind.WRONG_TYPE, "variety", 13, "holds U+000A, a line break"),
    ("code-with-a-bell", FaultKind.WRONG_TYPE, "code", 11, "holds U+0007, a control character"),
    ("name-of-blanks", FaultKind.MISSING, "name", 11, "is empty"),
    ("harvest-of-more-than-there-are", FaultKind.OUT_OF_LIMITS, "count", 27, "the group then has 90 at most"),
    ("deaths-after-the-last-harvest", FaultKind.OUT_OF_LIMITS, "count", 26, "the group then has 0 at most"),
    ("seed-of-another-crop", FaultKind.NOT_SUITED, "seed_lot", 18, 'seed of crop "mint"'),
    ("seed-of-another-variety", FaultKind.NOT_SUITED, "seed_lot", 20, 'seed of variety "Thai"'),
    ("solids-without-the-meter-factor", FaultKind.MISSING, "meter_factor", 10, "0.3 to 1 ppm per µS/cm"),
    (
        "crop-with-a-hidden-mark",
        FaultKind.WRONG_TYPE,
        "crop",
        18,
        "U+200B, a mark that is not seen, as character 4",
    ),
    ("botanical-over-two-lines", FaultKind.WRONG_TYPE, "botanical", 20, "holds U+000A, a line break"),
    ("target-of-a-hundred-digits", FaultKind.OUT_OF_LIMITS, "amount_per_week", 18, "is 1e+99, but"),
    ("latin-letters", FaultKind.SYNTAX, "", 5, "Save the file as UTF-8"),
    ("utf-16", FaultKind.SYNTAX, "", 0, "the file is UTF-16"),
    ("utf-32", FaultKind.SYNTAX, "", 0, "the file is UTF-32"),
    ("utf-16-without-mark", FaultKind.SYNTAX, "", 1, "bytes of value zero"),
    ("carriage-returns-alone", FaultKind.SYNTAX, "", 1, "Save the file with line ends of Windows or Unix"),
)
"""Name of the file, kind of fault, field, line (0: cannot be told), words that the sentence holds."""


@pytest.mark.parametrize(("name", "kind", "field", "line", "words"), CASES, ids=[case[0] for case in CASES])
def test_that_a_broken_text_is_refused_with_one_clear_sentence(
    name: str, kind: FaultKind, field: str, line: int, words: str
) -> None:
    path = BROKEN / f"{name}.toml"
    with pytest.raises(FarmFaultError) as caught:
        read_farm_file(path)
    first = caught.value.faults[0]
    found = [(fault.kind, fault.field, fault.line) for fault in caught.value.faults]
    assert (kind, field, line) in found, caught.value
    assert words in str(caught.value)
    assert first.file == str(path)
    assert all(fault.sentence().endswith((".", "?", '"', ")")) for fault in caught.value.faults)


@pytest.mark.parametrize(
    "name", [case[0] for case in CASES if case[0] not in ("empty", "no-format", "no-farm")]
)
def test_that_one_slip_gives_one_fault(name: str) -> None:
    with pytest.raises(FarmFaultError) as caught:
        read_farm_file(BROKEN / f"{name}.toml")
    assert len(caught.value.faults) == 1, caught.value


def test_that_every_broken_text_is_in_the_table() -> None:
    assert {path.stem for path in BROKEN.glob("*.toml")} == {case[0] for case in CASES}


REPEATED = """format = "raftweek.farm/1"
[farm]
name = "Mine"
plan_from = 2026-03-02
[[batch]]
crop = "lettuce-leef"
sow_on = 2026-03-02
plants = 12
repeat_every_days = 7
repeat_times = 20
[[batch]]
crop = "lettuce-leef"
sow_on = 2026-03-03
plants = 12
"""


def test_that_what_is_wrong_in_a_repeated_batch_is_said_once_for_each_place_in_the_text() -> None:
    def unknown(farm: Farm) -> tuple[Fault, ...]:
        return tuple(
            Fault(
                kind=FaultKind.UNKNOWN_NAME,
                where=f'batch "{batch.code}"',
                field="crop",
                message=f'crop "{batch.crop}" is unknown.',
            )
            for batch in farm.batches
        )

    with pytest.raises(FarmFaultError) as caught:
        read_farm_text(REPEATED, more_faults=unknown)
    assert [fault.line for fault in caught.value.faults] == [6, 12]
