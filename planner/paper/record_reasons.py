"""Words for the formulas and notes of rations by hand, lessons and published cases; see `reasons`."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from planner.forecast.why.formulas import Formula
from planner.forecast.why.values import NoteKind

RECORD_WORDS: Final[Mapping[Formula, str]] = {
    Formula.MEAL: "feed of a day over the meals of a day",
    Formula.SCOOPS: "feed of a meal over what a level scoop holds",
    Formula.PELLET: "the feed that is made for fish of this weight",
    Formula.LEARNED: "the book's value, times the ratio of seen to planned, drawn to 1 by the book's weight",
    Formula.LEARNED_SHARE: "the book's share, times the ratio of seen to book, drawn toward 1 by the book's "
    "weight; at most all",
    Formula.SEEN_RATIO: "what was seen, over what the book says",
    Formula.SPREAD_SEEN: "how far ratios lie apart by their median distance, at least the rule's least, "
    "times the book's value",
    Formula.LONGER: "days that it took, less days planned",
    Formula.CASE: "worked out from what the publication gives and from figures of the catalogue",
    Formula.PRINTED: "as somebody else printed it",
    Formula.FROM_PRINT: "our figure, less the published one",
    Formula.FROM_PRINT_PERCENT: "our figure less the published one, over the published one, in percent",
    Formula.TOLERANCE: "how far our figure may be from the print; it comes from the print or from physics",
    Formula.OF_BOOK: "as the catalogue has it",
    Formula.OWN_VALUE: "your own value, laid over that of the catalogue",
}

RECORD_NOTES: Final[Mapping[NoteKind, str]] = {
    NoteKind.WEIGHT_OF: "counts as {weight} of a batch: the farther from the others, the less",
    NoteKind.STILL_LASTS: "not over yet: it says only that it lasts longer than so far",
    NoteKind.NOTED: "noted by {who}, {when}",
    NoteKind.NOTED_WHEN: "noted {when}",
    NoteKind.BY_ACT: "kept by the act “{act}”",
    NoteKind.ACT_CHANGED: "the same act changed: {things}",
    NoteKind.ENTRY_ONLY: "the act changed nothing in the plan besides",
    NoteKind.BEFORE_OWN: "before your own value it was {value} ({source})",
    NoteKind.PUBLISHED: "published: {line}",
    NoteKind.COMPUTED_BY: "computation: {formula}",
    NoteKind.TOLERATED_FOR: "the tolerance is that of: {reason}",
    NoteKind.SAID: "{words}",
}
