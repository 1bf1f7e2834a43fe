"""Computations on nitrification, bases and compounds."""

from __future__ import annotations

from typing import Final

from planner.forecast.verify.ledger import Computation, Inputs, Ledger
from planner.forecast.verify.on_water import chalk_g_per_eq
from planner.science import compounds, elements, nitrification

_FEED_NITROGEN: Final = "feed_split/protein_per_nitrogen"


def shipped_figure(inputs: Inputs, ledger: Ledger) -> float:
    """A figure as it is shipped."""
    return ledger.value(inputs.text("figure"))


def shipped_low(inputs: Inputs, ledger: Ledger) -> float:
    """The low end of a figure as it is shipped."""
    path = inputs.text("figure")
    ledger.value(path)
    return ledger.catalogue.figure(path).low


def ammonia_of_feed(inputs: Inputs, ledger: Ledger) -> float:
    """Total ammonia nitrogen that fish give off from feed."""
    return elements.total_ammonia_nitrogen(
        inputs.number("feed_g"),
        protein_share=inputs.number("protein_share"),
        nitrogen_factor=ledger.coefficient("feed_split/tan_share_of_feed_protein"),
    )


def oxygen_for_nitrogen(inputs: Inputs, ledger: Ledger) -> float:
    """Oxygen that nitrifying takes."""
    ratio = ledger.coefficient("nitrification/oxygen_per_nitrogen_nitrified")
    return nitrification.oxygen_for_nitrification(inputs.number("nitrogen_g"), oxygen_per_nitrogen=ratio)


def _alkalinity(nitrogen_g: float, ledger: Ledger) -> float:
    ratio = ledger.coefficient("nitrification/alkalinity_per_nitrogen_nitrified")
    return nitrification.alkalinity_for_nitrification(nitrogen_g, alkalinity_per_nitrogen=ratio)


def alkalinity_for_nitrogen(inputs: Inputs, ledger: Ledger) -> float:
    """Alkalinity that nitrifying takes."""
    return _alkalinity(inputs.number("nitrogen_g"), ledger)


def oxygen_for_feed(inputs: Inputs, ledger: Ledger) -> float:
    """Oxygen that nitrifying the ammonia of feed takes."""
    ratio = ledger.coefficient("nitrification/oxygen_per_nitrogen_nitrified")
    return nitrification.oxygen_for_nitrification(ammonia_of_feed(inputs, ledger), oxygen_per_nitrogen=ratio)


def alkalinity_for_feed(inputs: Inputs, ledger: Ledger) -> float:
    """Alkalinity that nitrifying the ammonia of feed takes."""
    return _alkalinity(ammonia_of_feed(inputs, ledger), ledger)


def _base_g_per_eq(inputs: Inputs, ledger: Ledger) -> float:
    molar = compounds.molar_mass(inputs.text("base"), atomic_mass=ledger.atomic_masses())
    return nitrification.base_per_equivalent_g(molar, equivalents_per_mol=inputs.whole("equivalents_per_mol"))


def _base_for(alkalinity_g: float, inputs: Inputs, ledger: Ledger) -> float:
    return nitrification.base_for_alkalinity_g(
        alkalinity_g, base_g_per_eq=_base_g_per_eq(inputs, ledger), caco3_g_per_eq=chalk_g_per_eq(ledger)
    )


def base_equivalent(inputs: Inputs, ledger: Ledger) -> float:
    """Mass of a base that takes up one equivalent of acid."""
    return _base_g_per_eq(inputs, ledger)


def base_for_chalk(inputs: Inputs, ledger: Ledger) -> float:
    """Base that does the work of an amount of calcium carbonate."""
    return _base_for(inputs.number("chalk_g"), inputs, ledger)


def base_for_nitrogen(inputs: Inputs, ledger: Ledger) -> float:
    """Base that makes good the nitrifying of nitrogen."""
    return _base_for(_alkalinity(inputs.number("nitrogen_g"), ledger), inputs, ledger)


def base_for_feed(inputs: Inputs, ledger: Ledger) -> float:
    """Base that makes good the nitrifying of the ammonia of feed."""
    return _base_for(alkalinity_for_feed(inputs, ledger), inputs, ledger)


def base_for_rise(inputs: Inputs, ledger: Ledger) -> float:
    """Base that raises the alkalinity of a volume."""
    rise_g = nitrification.alkalinity_to_raise_g(
        inputs.number("rise_mg_per_l"), volume_m3=inputs.number("volume_m3")
    )
    return _base_for(rise_g, inputs, ledger)


def base_without_plants(inputs: Inputs, ledger: Ledger) -> float:
    """Base for the acid of feed in recirculation without plants."""
    acid = nitrification.net_acid_eq(
        inputs.number("feed_kg"),
        acid_eq_per_kg_feed=ledger.coefficient("nitrification/acid_eq_per_kg_feed_without_plants"),
    )
    return nitrification.base_for_acid_g(acid, base_g_per_eq=_base_g_per_eq(inputs, ledger))


def shipped_base_for_chalk(inputs: Inputs, ledger: Ledger) -> float:
    """Base of the catalogue that does the work of an amount of calcium carbonate."""
    chalk, base = (
        ledger.value(f"supplement/{key}/base_eq_per_kg") for key in ("calcium-carbonate", inputs.text("key"))
    )
    return nitrification.base_for_alkalinity_g(
        inputs.number("chalk_g"), base_g_per_eq=1.0 / base, caco3_g_per_eq=1.0 / chalk
    )


def element_share(inputs: Inputs, ledger: Ledger) -> float:
    """Share of an element in a pure compound."""
    return compounds.element_share(
        inputs.text("compound"), element=inputs.text("element"), atomic_mass=ledger.atomic_masses()
    )


def conversion(inputs: Inputs, ledger: Ledger) -> float:
    """An amount of one form of an element as another form."""
    factor = compounds.conversion_factor(
        inputs.text("of"),
        to_formula=inputs.text("as_form"),
        element=inputs.text("element"),
        atomic_mass=ledger.atomic_masses(),
    )
    return inputs.number("amount") * factor


def salt_for_element(inputs: Inputs, ledger: Ledger) -> float:
    """Pure salt that brings an amount of an element."""
    return compounds.grams_for_element(
        inputs.number("element_g"),
        formula=inputs.text("salt"),
        element=inputs.text("element"),
        purity=1.0,
        atomic_mass=ledger.atomic_masses(),
    )


def ammonia_share(inputs: Inputs, ledger: Ledger) -> float:
    """Share of feed nitrogen that becomes ammonia, the manual's way."""
    del inputs
    return elements.ammonia_share_of_feed_nitrogen(
        excreted_share=ledger.coefficient("feed_split/feed_nitrogen_excreted_share"),
        solids_share=ledger.value("element/n/solids_share"),
        solids_removed_share=ledger.value("loop/solids_captured_share"),
    )


def ammonia_nitrogen_by_shares(inputs: Inputs, ledger: Ledger) -> float:
    """Ammonia nitrogen from feed, the manual's way."""
    return elements.ammonia_nitrogen_by_shares(
        inputs.number("feed_g"),
        protein_share=inputs.number("protein_share"),
        protein_per_nitrogen=ledger.coefficient(_FEED_NITROGEN),
        ammonia_share=ammonia_share(inputs, ledger),
    )


def ammonia_by_shares(inputs: Inputs, ledger: Ledger) -> float:
    """Ammonia from feed, the manual's way and with its factor."""
    return ammonia_nitrogen_by_shares(inputs, ledger) * ledger.coefficient("feed_split/ammonia_per_nitrogen")


def biofilter_area(inputs: Inputs, ledger: Ledger) -> float:
    """Area that a biofilter needs at the manual's rate."""
    rate = ledger.coefficient("nitrification/biofilm_rate_nh3_g_per_m2_day")
    return nitrification.biofilter_area_m2(inputs.number("ammonia_g_per_day"), areal_rate_g_per_m2_day=rate)


def filter_media(inputs: Inputs, ledger: Ledger) -> float:
    """Volume of media of a kind that holds the area a biofilter needs."""
    surface = ledger.coefficient(f"nitrification/surface_{inputs.text('media')}")
    return nitrification.media_volume_l(biofilter_area(inputs, ledger), surface_m2_per_m3=surface)


def biofilm_rate(inputs: Inputs, ledger: Ledger) -> float:
    """Nitrogen that a biofilm takes out at a level of ammonia."""
    return nitrification.biofilm_rate(
        inputs.number("ammonia_n_mg_per_l"),
        greatest_mg_per_m2_day=ledger.coefficient("nitrification/biofilm_greatest_mg_per_m2_day"),
        threshold_mg_per_l=ledger.coefficient("nitrification/biofilm_threshold_mg_per_l"),
        half_mg_per_l=ledger.coefficient("nitrification/biofilm_half_mg_per_l"),
    )


def biofilm_warmed(inputs: Inputs, ledger: Ledger) -> float:
    """Rate of a biofilm at another temperature."""
    return nitrification.rate_at_temperature(
        inputs.number("rate_at_reference"),
        temperature_c=inputs.number("temperature_c"),
        reference_c=ledger.coefficient("nitrification/biofilm_reference_c"),
        change_per_c=ledger.coefficient(f"nitrification/biofilm_change_per_c_{inputs.text('limit')}_limited"),
    )


FILTERS: Final[dict[str, Computation]] = {
    each.__name__: each
    for each in (
        shipped_figure,
        shipped_low,
        ammonia_of_feed,
        oxygen_for_nitrogen,
        alkalinity_for_nitrogen,
        oxygen_for_feed,
        alkalinity_for_feed,
        base_equivalent,
        base_for_chalk,
        base_for_nitrogen,
        base_for_feed,
        base_for_rise,
        base_without_plants,
        shipped_base_for_chalk,
        element_share,
        conversion,
        salt_for_element,
        ammonia_share,
        ammonia_nitrogen_by_shares,
        ammonia_by_shares,
        biofilter_area,
        filter_media,
        biofilm_rate,
        biofilm_warmed,
    )
}
