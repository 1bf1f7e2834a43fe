"""The catalogue in words: entries to choose from, figures with their source and how sure they are.

Must know nothing of widgets.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final

from planner.catalogue.catalogue import Catalogue
from planner.catalogue.errors import UnknownFigureError
from planner.catalogue.figure import Confidence, Figure
from planner.desk.conditions import condition_words
from planner.desk.forms.editors import Choice
from planner.desk.say import tr
from planner.desk.words import choice_words, number_words, unit_words

_SHELVES: Final = {
    "crop": "crops",
    "fish": "fish",
    "feed": "feeds",
    "supplement": "supplements",
    "feeding table": "feeding_tables",
}
_CONFIDENCE: Final = {
    Confidence.READ: "read in the source",
    Confidence.MEMORY: "from memory, not checked",
    Confidence.COMMON_PRACTICE: "common practice",
    Confidence.GROWERS_VALUE: "your own value",
}
_NOTED: Final = {
    "crop": ("bed_days", "bed_density_per_m2", "yield_g_per_plant"),
    "fish": ("optimum_c", "harvest_weight_g"),
    "feed": ("protein_share",),
    "supplement": (),
}
FIGURE_LABELS: Final = {
    "pick_interval_days": "Days from one picking to the next",
    "first_pick_share": "First picking, as a share of a full one",
    "pick_decline_share": "Loss from one picking to the next",
    "nursery_density_per_m2": "Plants in the nursery",
    "spacing_density_per_m2": "Plants at the middle spacing",
    "width_cm": "Width of a plant that has room",
    "dry_matter_share": "Dry matter of what is picked",
    "harvest_share": "Picked part of the whole plant",
    "n_g_per_kg": "Nitrogen in dry matter",
    "ca_g_per_kg": "Calcium",
    "mg_g_per_kg": "Magnesium",
    "fe_mg_per_kg": "Iron",
    "growth_midpoint": "Where in its life it grows fastest",
    "growth_steepness": "How sharply growth sets in",
    "base_c": "Too cold to grow below",
    "ceiling_c": "Too warm to grow above",
    "germination_base_c": "Too cold to germinate below",
    "germination_optimum_c": "Best warmth to germinate",
    "germination_ceiling_c": "Too warm to germinate above",
    "germination_thermal_time_c_d": "Sum of warmth to germinate",
    "light_target_mol_per_m2_d": "Light wanted each day",
    "lethal_low_c": "Deadly cold",
    "lethal_high_c": "Deadly heat",
    "density_limit_small_tank_kg_per_m3": "Stocking limit in a small tank",
    "purge_days": "Days off feed before harvest",
    "body_p_g_per_kg": "Phosphorus in the fish",
    "body_k_g_per_kg": "Potassium in the fish",
    "body_ca_g_per_kg": "Calcium in the fish",
    "body_mg_g_per_kg": "Magnesium in the fish",
    "body_fe_mg_per_kg": "Iron in the fish",
    "length_weight_a": "Weight by length, factor",
    "length_weight_b": "Weight by length, exponent",
    "oxygen_low_mg_per_l": "Least oxygen",
    "ph_low": "Lowest pH",
    "ph_high": "Highest pH",
    "nh3_n_limit_mg_per_l": "Most un-ionised ammonia, as nitrogen",
    "for_fish_from_g": "For fish from",
    "for_fish_to_g": "For fish up to",
    "up_to_g": "Up to a weight of",
    "tgc": "growth coefficient",
    "fcr": "feed conversion",
    "n_share": "Nitrogen",
    "p_share": "Phosphorus",
    "k_share": "Potassium",
    "ca_share": "Calcium",
    "mg_share": "Magnesium",
    "fe_share": "Iron",
    "base_eq_per_kg": "Base it brings",
    "botanical": "Botanical name",
    "code": "Three letters for batch codes",
    "group": "Leafy or fruiting",
    "harvest": "How it is harvested",
    "beds": "Grows in",
    "tall": "Tall, shades its neighbours",
    "ornamental": "Kept for show, not eaten",
    "pellet_mm": "Size of pellets",
    "formula": "Chemical formula",
    "bed_days": "Days in the bed until the first pick",
    "bed_density_per_m2": "Plants in the bed",
    "bed_survival_share": "Share that lives in the bed",
    "clearing_days": "Days for clearing",
    "germination_days": "Days of germination",
    "germination_share": "Share that germinates",
    "nursery_days": "Days in the nursery",
    "nursery_survival_share": "Share that lives in the nursery",
    "picking_days": "Days of picking",
    "spacing_days": "Days at the middle spacing",
    "yield_g_per_plant": "Yield of one plant",
    "marketable_share": "Share that can be sold",
    "optimum_c": "Best water temperature",
    "harvest_weight_g": "Weight at harvest",
    "daily_death_share": "Share dying each day",
    "density_limit_kg_per_m3": "Stocking limit",
    "body_n_g_per_kg": "Nitrogen in the fish",
    "protein_share": "Protein in the feed",
    "p_g_per_kg": "Phosphorus",
    "k_g_per_kg": "Potassium",
}


@dataclass(frozen=True, slots=True, kw_only=True)
class FigureWords:
    """One figure in words; `own` when the grower's own number stands in its place."""

    label: str
    value: str
    source: str
    conditions: str
    own: bool = False


def figure_label(name: str) -> str:
    """Return what a figure is called on the screen."""
    known = FIGURE_LABELS.get(name)
    return tr(known) if known else name.replace("_", " ")


def value_words(figure: Figure) -> str:
    """Return a figure's likely value with its spread, such as "28 (24 to 35) d"."""
    unit = unit_words(figure.unit)
    spread = ""
    if (figure.low, figure.high) != (figure.value, figure.value):
        low, high = number_words(figure.low), number_words(figure.high)
        spread = tr(" ({low} to {high})", low=low, high=high)
    return f"{number_words(figure.value)}{spread} {unit}".rstrip()


def source_words(figure: Figure, catalogue: Catalogue) -> str:
    """Return where a figure comes from and how sure it is."""
    return told_words(figure.source, figure.confidence.value, catalogue)


def told_words(source: str, confidence: str, catalogue: Catalogue) -> str:
    """Return a source by its key in words, with how sure it is; without both it is just of the catalogue."""
    if not confidence:
        return tr("of the catalogue")
    sure = tr(_CONFIDENCE[Confidence(confidence)])
    publication = catalogue.publications.get(source)
    if publication is None:
        return sure
    return f"{_authors(publication.authors)} {publication.year}, {sure}"


def _authors(authors: str) -> str:
    """Return the authors shortened to the first when there are three or more."""
    names = authors.split(", ")
    return tr("{first} and others", first=names[0]) if len(names) > 2 else authors


def figure_words(catalogue: Catalogue, path: str) -> FigureWords | None:
    """Return a figure in words, None when the catalogue has none at that path."""
    try:
        figure = catalogue.figure(path)
    except UnknownFigureError:
        return None
    return FigureWords(
        label=figure_label(path.rpartition("/")[2]),
        value=value_words(figure),
        source=source_words(figure, catalogue),
        conditions=condition_words(figure.conditions),
        own=figure.confidence is Confidence.GROWERS_VALUE,
    )


def entry_name(catalogue: Catalogue, shelf: str, key: str) -> str:
    """Return what an entry of the catalogue is called; its key where the shelf has none."""
    name = _SHELVES.get(shelf)
    entry = getattr(catalogue, name).get(key) if name else None
    return entry.name if entry is not None else key


class BookShelf:
    """Gives the entries of the catalogue as choices, by the shelf's word."""

    def __init__(self, catalogue: Catalogue) -> None:
        self._catalogue = catalogue

    def __call__(self, shelf: str) -> tuple[Choice, ...]:
        """Return the entries of a shelf, by name; none for a shelf that is not known."""
        name = _SHELVES.get(shelf)
        entries: Mapping[str, Any] = getattr(self._catalogue, name) if name else {}
        found = (
            Choice(value=key, words=entry.name, note=self._note(shelf, key)) for key, entry in entries.items()
        )
        return tuple(sorted(found, key=lambda choice: choice.words.casefold()))

    def _note(self, shelf: str, key: str) -> str:
        known = (figure_words(self._catalogue, f"{shelf}/{key}/{name}") for name in _NOTED.get(shelf, ()))
        lines = [f"{found.label}: {found.value} – {found.source}" for found in known if found]
        if shelf == "crop":
            beds = ", ".join(choice_words(kind) for kind in self._catalogue.crops[key].beds)
            lines.insert(0, tr("Grows in: {beds}", beds=beds))
        return "\n".join(lines)
