"""Computations on where the elements of feed go, and on what plants take."""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.forecast.verify.ledger import Computation, Inputs, Ledger
from planner.science import elements, labour, uptake

_NITROGEN: Final = "feed_split/protein_per_nitrogen"
_G_PER_KG: Final = 1000.0
_PERCENT: Final = 100.0


def nitrogen_in_feed(inputs: Inputs, ledger: Ledger) -> float:
    """Nitrogen in the protein of feed."""
    protein = inputs.number("feed_g") * inputs.number("protein_share")
    return elements.nitrogen_from_protein(protein, protein_per_nitrogen=ledger.coefficient(_NITROGEN))


def shipped_feed_nitrogen(inputs: Inputs, ledger: Ledger) -> float:
    """Nitrogen in an amount of a feed of the catalogue."""
    protein = inputs.number("feed_g") * ledger.value(f"feed/{inputs.text('feed')}/protein_share")
    return elements.nitrogen_from_protein(protein, protein_per_nitrogen=ledger.coefficient(_NITROGEN))


def protein_behind_nitrogen(inputs: Inputs, ledger: Ledger) -> float:
    """Protein that holds an amount of nitrogen."""
    return elements.protein_from_nitrogen(
        inputs.number("nitrogen"), protein_per_nitrogen=ledger.coefficient(_NITROGEN)
    )


def _split(inputs: Inputs) -> elements.FeedSplit:
    return elements.split_feed(
        np.asarray([inputs.number("fed_g")]),
        gain_g=inputs.number("gain_g"),
        body_content_g_per_g=inputs.number("body_content_g_per_g"),
        solids_share=inputs.number("solids_share"),
    )


def kept_in_fish(inputs: Inputs, ledger: Ledger) -> float:
    """Part of an element of the feed that fish keep."""
    del ledger
    return float(_split(inputs).fish_g[0])


def dissolved_from_feed(inputs: Inputs, ledger: Ledger) -> float:
    """Part of an element of the feed that dissolves."""
    del ledger
    return float(_split(inputs).dissolved_g[0])


def all_of_feed(inputs: Inputs, ledger: Ledger) -> float:
    """Sum of what fish keep, what goes with solids and what dissolves."""
    del ledger
    split = _split(inputs)
    return float((split.fish_g + split.solids_g + split.dissolved_g)[0])


def solids_caught(inputs: Inputs, ledger: Ledger) -> float:
    """Nitrogen taken out with solids, from an amount of feed nitrogen."""
    solids = np.asarray([inputs.number("feed_n") * ledger.value("element/n/solids_share")])
    captured = ledger.value("loop/solids_captured_share")
    split = elements.split_solids(solids, captured_share=captured, media_share_of_passed=0.0)
    return float(split.captured_g[0])


def gas_loss(inputs: Inputs, ledger: Ledger) -> float:
    """Nitrogen that leaves as gas, from an amount of feed nitrogen."""
    share = ledger.value("element/n/gas_loss_share")
    return elements.gaseous_loss(inputs.number("feed_n"), loss_share=share)


def budget_share(inputs: Inputs, ledger: Ledger) -> float:
    """Share of an element of feed that goes to fish, to solids, or to the water and its plants [%]."""
    element, content = inputs.text("element"), inputs.number("content_g_per_kg")
    body = ledger.value(f"fish/{inputs.text('fish')}/body_{element}_g_per_kg") / _G_PER_KG
    split = elements.split_feed(
        np.asarray([content]),
        gain_g=_G_PER_KG / inputs.number("feed_conversion"),
        body_content_g_per_g=body,
        solids_share=ledger.value(f"element/{element}/solids_share"),
    )
    gas = elements.gaseous_loss(content, loss_share=ledger.value(f"element/{element}/gas_loss_share"))
    parts = {
        "fish": split.fish_g,
        "solids": split.solids_g,
        "water": split.dissolved_g - gas,
    }
    return _PERCENT * float(parts[inputs.text("part")][0]) / content


def released(inputs: Inputs, ledger: Ledger) -> float:
    """Share of an element in solids that is back in the water after days."""
    return elements.released_share(
        inputs.number("days"),
        final_share=ledger.value(f"element/{inputs.text('element')}/mineral_limit_share"),
        rate_per_day=ledger.value(f"element/{inputs.text('element')}/mineral_rate_per_day"),
    )


def content_of_sludge(inputs: Inputs, ledger: Ledger) -> float:
    """Element in a suspension of solids [mg/L]."""
    del ledger
    return inputs.number("content_mg_per_g") * inputs.number("solids_g_per_l")


def element_in_crop(inputs: Inputs, ledger: Ledger) -> float:
    """Element in a fresh mass of crop."""
    del ledger
    dry = uptake.dry_mass_g(inputs.number("fresh_g"), dry_share=inputs.number("dry_share"))
    return uptake.element_uptake_g(dry, tissue_g_per_g=inputs.number("tissue_g_per_g"))


def shipped_element_in_plant(inputs: Inputs, ledger: Ledger) -> float:
    """Element in a dry mass of a crop of the catalogue [mg]."""
    content = ledger.value(f"crop/{inputs.text('crop')}/{inputs.text('element')}_g_per_kg")
    return uptake.element_uptake_g(inputs.number("dry_mg"), tissue_g_per_g=content / _G_PER_KG)


def dry_mass_behind(inputs: Inputs, ledger: Ledger) -> float:
    """Dry mass that holds an uptake."""
    del ledger
    return uptake.dry_mass_behind_uptake_g(
        inputs.number("uptake_g"), tissue_g_per_g=inputs.number("tissue_g_per_g")
    )


def uptake_of_bed(inputs: Inputs, ledger: Ledger) -> float:
    """Element that a square metre takes up a day on the way to a yield."""
    del ledger
    fresh = inputs.number("yield_g_per_m2") / inputs.number("days")
    dry = uptake.dry_mass_g(fresh, dry_share=inputs.number("dry_share"))
    return uptake.element_uptake_g(dry, tissue_g_per_g=inputs.number("tissue_g_per_g"))


def water_for_growth(inputs: Inputs, ledger: Ledger) -> float:
    """Water that a crop transpires for its dry mass."""
    dry = uptake.dry_mass_g(inputs.number("fresh_g"), dry_share=inputs.number("dry_share"))
    return uptake.water_for_dry_mass_l(dry, water_use_g_per_l=ledger.coefficient("season/water_use_g_per_l"))


def water_for_yield(inputs: Inputs, ledger: Ledger) -> float:
    """Water that a yield of greenhouse lettuce draws."""
    ratio = ledger.coefficient("season/water_per_lettuce_yield_l_per_kg")
    return uptake.water_for_yield_l(inputs.number("yield_g"), water_l_per_kg=ratio) / inputs.number("days")


def balanced_solution(inputs: Inputs, ledger: Ledger) -> float:
    """Concentration that comes in with the water as it is built in."""
    del ledger
    return uptake.balanced_concentration_mg_per_l(
        inputs.number("tissue_g_per_g"), water_use_g_per_l=inputs.number("water_use_g_per_l")
    )


def bed_removal(inputs: Inputs, ledger: Ledger) -> float:
    """Element that a planted area removes."""
    del ledger
    return uptake.removal_g(
        inputs.number("area_m2"),
        rate_g_per_m2_day=inputs.number("rate_g_per_m2_day"),
        days=inputs.number("days"),
    )


def work_pace(inputs: Inputs, ledger: Ledger) -> float:
    """Units a person does in an hour."""
    del ledger
    return labour.units_per_person_hour(
        inputs.number("units"), people=inputs.number("people"), hours=inputs.number("hours")
    )


def work_minutes(inputs: Inputs, ledger: Ledger) -> float:
    """Minutes of one person for a unit."""
    return labour.minutes_for(1.0, units_per_hour=work_pace(inputs, ledger))


def work_cost(inputs: Inputs, ledger: Ledger) -> float:
    """Wage for a unit."""
    pace = work_pace(inputs, ledger)
    return labour.cost_per_unit(inputs.number("wage_per_hour"), units_per_hour=pace)


def seeds_a_gram(inputs: Inputs, ledger: Ledger) -> float:
    """Seeds in a gram from seeds in an ounce."""
    del ledger
    return labour.seeds_per_gram(inputs.number("seeds_per_ounce"))


FEED: Final[dict[str, Computation]] = {
    each.__name__: each
    for each in (
        nitrogen_in_feed,
        shipped_feed_nitrogen,
        protein_behind_nitrogen,
        kept_in_fish,
        dissolved_from_feed,
        all_of_feed,
        solids_caught,
        gas_loss,
        budget_share,
        released,
        content_of_sludge,
        element_in_crop,
        shipped_element_in_plant,
        dry_mass_behind,
        uptake_of_bed,
        water_for_growth,
        water_for_yield,
        balanced_solution,
        bed_removal,
        work_pace,
        work_minutes,
        work_cost,
        seeds_a_gram,
    )
}
