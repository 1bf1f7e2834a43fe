"""Words for the formulas and notes of stocks, solids, alkalinity, readings and doses; see `reasons`."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Final

from planner.forecast.why.formulas import Formula
from planner.forecast.why.values import NoteKind

WATER_WORDS: Final[Mapping[Formula, str]] = {
    Formula.STOCK: "what was there, and what was supplied since, less what plants took and what left",
    Formula.TAKEN: "what the plants want, less what is not there to be taken",
    Formula.LACKING: "what the plants want, less what they can take",
    Formula.COVERED: "supply and what is dissolved when the week begins, over demand",
    Formula.HELD_GRAMS: "the level, times the water of the loop",
    Formula.GATHERED: "solids of the days before it was filled, those before the plan among them",
    Formula.BATCH_GAS: "what was gathered, times what rots free by then, times the share lost as gas",
    Formula.ALKALINITY_AHEAD: "the last reading, raised by base of doses and make-up water, lowered by acid",
    Formula.FALL_OF_ACID: "acid of the week, as the alkalinity it takes, over the water of the loop",
    Formula.ACID_SEEN: "acid that takes as much alkalinity as was seen to go, and the base given meanwhile",
    Formula.TREND: "the median of the slopes between all pairs of readings of the last weeks",
    Formula.DAYS_LATE: "days since it was last done, less days between",
    Formula.GRAVEL: "the bed's area, times depth, times the surface of gravel, as much of it as works",
    Formula.OXYGEN_PEAK: "the mean of the day, times how much more is asked for after feeding",
    Formula.OXYGEN_HELD: "oxygen in balance with air at the water's warmth and the height of the place, "
    "as the mean over the days of the week",
    Formula.ELEMENT_IN_DOSE: "grams of the product, times the share of the element in it",
    Formula.LEVEL_OF_GRAMS: "grams over the water of the loop",
    Formula.BASE_IN_DOSE: "grams of the product, times the base in a kilogram of it",
    Formula.BASE_LEFT: "base wanted, less what fits into the doses of a week without moving pH too far",
}

WATER_NOTES: Final[Mapping[NoteKind, str]] = {
    NoteKind.STOCK_ASSUMED: "not tested: the least that leafy crops are grown with is taken to be there when "
    "the plan begins",
    NoteKind.STOCK_BEFORE: "begins with the last test before the plan, and is counted on from {day}",
    NoteKind.STOCK_TESTED: "counted on from the test of {day}; {expected} mg/L were expected there",
    NoteKind.DAY_BY_DAY: "reckoned day by day: plants cannot take today what is only supplied tomorrow",
    NoteKind.LIKE_FIRST_WEEK: "{grams} g are of days before the plan, taken to be like its first week",
    NoteKind.READ_ON: "read on {day}",
    NoteKind.SPREAD: "from {low} to {high} must be reckoned with",
    NoteKind.SEEN_BETWEEN: "as the log shows it from {first} to {last}",
    NoteKind.MIDDLE_HALF: "the middle half of all slopes lies between {low} and {high}",
    NoteKind.LAST_DONE: "last done on {day}",
}
