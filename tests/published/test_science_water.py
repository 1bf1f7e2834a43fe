"""Water chemistry and nitrification against published tables and second opinions."""

import gsw
import numpy as np
import pytest

from planner.science import compounds, elements, nitrification, water
from tests.science.figures import ammonia, atomic_masses, figure, oxygen, published_table

CACO3_G_PER_EQ = compounds.molar_mass("CaCO3", atomic_mass=atomic_masses()) / 2.0
BASE_EQUIVALENTS = {
    "KOH": 1,
    "Ca(OH)2": 2,
    "K2CO3": 2,
    "KHCO3": 1,
    "NaHCO3": 1,
    "Na2CO3": 2,
    "NaOH": 1,
    "CaCO3": 2,
    "CaO": 2,
    "Mg(OH)2": 2,
    "CaMg(CO3)2": 4,
}


def _base_g_per_eq(formula: str) -> float:
    molar = compounds.molar_mass(formula, atomic_mass=atomic_masses())
    return nitrification.base_per_equivalent_g(molar, equivalents_per_mol=BASE_EQUIVALENTS[formula])


def _base_for(alkalinity_g: float, formula: str) -> float:
    return nitrification.base_for_alkalinity_g(
        alkalinity_g, base_g_per_eq=_base_g_per_eq(formula), caco3_g_per_eq=CACO3_G_PER_EQ
    )


def _saturation(temperature_c: float, salinity: float = 0.0) -> float:
    return water.oxygen_saturation(temperature_c, salinity_g_per_kg=salinity, coefficients=oxygen())


def test_that_unionised_ammonia_meets_the_extension_example() -> None:
    """UF/IFAS FA-16: 1.0 mg/L at 24 degC and pH 8.0 holds 0.0502 mg/L NH3-N; 0.0001."""
    found = water.unionised_ammonia_n(1.0, ph=8.0, temperature_c=24.0, **ammonia())
    assert found == pytest.approx(0.0502, abs=0.0001)


def test_that_unionised_ammonia_meets_the_extension_column() -> None:
    """UF/IFAS FA-16 after Emerson and others 1975, pH 7 column, partly cut rather than rounded; 0.00006.

    The slip of the table at 32 degC is held against the formula instead.
    """
    rows = [
        (float(row["temperature_c"]), float(row["share"]))
        for row in published_table("unionised_ammonia_ph7.csv")
    ]
    for warmth, share in rows:
        found = water.unionised_ammonia_share(7.0, temperature_c=warmth, **ammonia())
        if warmth == 32.0:
            assert found == pytest.approx(0.0091, abs=0.00005)
            continue
        assert found == pytest.approx(share, abs=0.00006)


def test_that_ammonium_speciation_agrees_with_a_speciation_program() -> None:
    """Water-chemistry text, 15 degC, 0.03 mM: 0.002383 mM NH3 at pH 8.5 and 0.00643 at 9.0; 0.5 %."""
    for ph, millimol in ((8.5, 0.002383), (9.0, 0.00643)):
        found = 0.03 * water.unionised_ammonia_share(ph, temperature_c=15.0, **ammonia())
        assert found == pytest.approx(millimol, rel=0.005)


def test_that_ammonia_shares_are_those_of_the_formula() -> None:
    """Emerson and others 1975, values worked from the formula, percent; 1 %."""
    grid = {(20.0, 7.0): 0.394, (20.0, 8.0): 3.81, (25.0, 7.0): 0.564, (25.0, 8.0): 5.37, (28.0, 7.0): 0.695}
    grid |= {(28.0, 8.0): 6.54, (0.0, 6.0): 0.008233, (32.0, 9.0): 47.91}
    for (warmth, ph), percent in grid.items():
        found = 100.0 * water.unionised_ammonia_share(ph, temperature_c=warmth, **ammonia())
        assert found == pytest.approx(percent, rel=0.01)


def test_that_another_ionisation_page_is_within_its_five_percent() -> None:
    """Page after Hobiger: 0.2 mg/L at 18 degC, pH 7.7 gives 0.0032; its constant differs, 6 %."""
    found = water.unionised_ammonia_n(0.2, ph=7.7, temperature_c=18.0, **ammonia())
    assert found == pytest.approx(0.0032, rel=0.06)


def test_that_oxygen_saturation_is_that_of_the_standard() -> None:
    """EN 25814:1992, every degree from 0 to 30; two thirds of its last digit (7 degC is cut up)."""
    for row in published_table("oxygen_saturation_fresh.csv"):
        digits = len(row["oxygen_mg_per_l"].split(".")[1])
        found = _saturation(float(row["temperature_c"]))
        assert found == pytest.approx(float(row["oxygen_mg_per_l"]), abs=0.65 * 10.0**-digits)


def test_that_oxygen_saturation_meets_the_worked_values() -> None:
    """Benson and Krause 1984 (APHA form): 9.092, 8.263, 7.559 mg/L at 20, 25, 30 degC; 0.005."""
    for warmth, level in ((20.0, 9.092), (25.0, 8.263), (30.0, 7.559)):
        assert _saturation(warmth) == pytest.approx(level, abs=0.005)


def test_that_salt_lowers_oxygen_as_published() -> None:
    """Benson and Krause 1984: 8.170 at 25 degC and salinity 2; EN 25814 correction gives 8.176; 0.01."""
    assert _saturation(25.0, 2.0) == pytest.approx(8.170, abs=0.005)
    row = next(r for r in published_table("oxygen_saturation_fresh.csv") if r["temperature_c"] == "25")
    corrected = float(row["oxygen_mg_per_l"]) - 2.0 * float(row["salt_mg_per_l_per_g_kg"])
    assert _saturation(25.0, 2.0) == pytest.approx(corrected, abs=0.01)


@pytest.mark.parametrize("salinity", [0.0, 2.0, 5.0])
def test_that_oxygen_agrees_with_the_seawater_library(salinity: float) -> None:
    """TEOS-10 library gsw (Garcia and Gordon on the data of Benson and Krause); 0.3 %."""
    warmth = np.arange(0.0, 36.0)
    micromol = gsw.O2sol_SP_pt(salinity, warmth)
    density = gsw.rho_t_exact(salinity, warmth, 0.0)
    other = micromol * density / 1000.0 * 2.0 * atomic_masses()["O"] / 1000.0
    ours = water.oxygen_saturation(warmth, salinity_g_per_kg=salinity, coefficients=oxygen())
    assert ours == pytest.approx(other, rel=0.003)


def _at_altitude(temperature_c: float, pressure_mmhg: float) -> float:
    vapour = water.vapour_pressure_mmhg(
        temperature_c,
        constant=figure("vapour_pressure_constant"),
        slope_c=figure("vapour_pressure_slope_c"),
        offset_c=figure("vapour_pressure_offset_c"),
    )
    return water.oxygen_at_pressure(
        _saturation(temperature_c),
        pressure_mmhg=pressure_mmhg,
        vapour_mmhg=vapour,
        sea_level_mmhg=figure("sea_level_pressure_mmhg"),
    )


def test_that_oxygen_falls_with_altitude_as_computed_elsewhere() -> None:
    """USGS pressure ratio, standard atmosphere: 20 degC at 1000 m is 8.04, 25 at 2000 m 6.43; 0.03."""
    for warmth, metres, level in ((20.0, 1000.0, 8.04), (25.0, 2000.0, 6.43), (10.0, 3000.0, 7.77)):
        pressure = water.pressure_at_altitude(
            metres,
            lapse_per_m=figure("pressure_lapse_per_m"),
            exponent=figure("pressure_exponent"),
            sea_level_mmhg=figure("sea_level_pressure_mmhg"),
        )
        assert _at_altitude(warmth, pressure) == pytest.approx(level, abs=0.03)


def test_that_oxygen_by_pressure_is_near_an_instrument_table() -> None:
    """Instrument manual, 20 degC, 0.1 mg/L and called approximate: 9.2 at 760 to 7.5 at 625 mmHg; 0.12."""
    for pressure, level in ((760.0, 9.2), (725.0, 8.7), (700.0, 8.4), (650.0, 7.8), (625.0, 7.5)):
        assert _at_altitude(20.0, pressure) == pytest.approx(level, abs=0.12)


def test_that_ammonia_of_feed_meets_the_manual() -> None:
    """Kentucky State University 2021: 2000 g/d of 32 % feed gives 58.9 g TAN a day; exact to its digit."""
    factor = figure("tan_share_of_feed_protein")
    found = elements.total_ammonia_nitrogen(2000.0, protein_share=0.32, nitrogen_factor=factor)
    assert found == pytest.approx(58.9, abs=0.05)
    assert found / 2000.0 == pytest.approx(0.03, abs=0.001)


def test_that_a_kilogram_of_feed_takes_the_tabled_oxygen_and_base() -> None:
    """Stoichiometry per kg of 32 % feed: TAN 29.44, O2 134.5, alkalinity 210.2, bases; 0.5 %."""
    tan = elements.total_ammonia_nitrogen(1000.0, protein_share=0.32, nitrogen_factor=0.092)
    oxygen_g = nitrification.oxygen_for_nitrification(
        tan, oxygen_per_nitrogen=figure("oxygen_per_nitrogen_nitrified")
    )
    alkalinity = nitrification.alkalinity_for_nitrification(
        tan, alkalinity_per_nitrogen=figure("alkalinity_per_nitrogen_nitrified")
    )
    assert [tan, oxygen_g, alkalinity] == pytest.approx([29.44, 134.5, 210.2], rel=0.005)
    for formula, grams in (("NaHCO3", 352.9), ("KOH", 235.7), ("Ca(OH)2", 155.6)):
        assert _base_for(alkalinity, formula) == pytest.approx(grams, rel=0.005)


def test_that_the_constants_of_nitrification_follow_from_its_reaction() -> None:
    """Two O2 and two equivalents a nitrogen: 4.569 and 7.145 g/g; 0.1 %."""
    masses = atomic_masses()
    assert 4.0 * masses["O"] / masses["N"] == pytest.approx(
        figure("oxygen_per_nitrogen_nitrified"), rel=0.001
    )
    alkalinity = 2.0 * CACO3_G_PER_EQ / masses["N"]
    assert alkalinity == pytest.approx(figure("alkalinity_per_nitrogen_nitrified"), rel=0.001)


def test_that_the_biofilter_route_of_the_manual_comes_out() -> None:
    """FAO 589 appendix 4: 200 g of 32 % feed, 61 %: 7.5 g NH3, 13.2 m2, 44 L tuff, 22 L balls; 1 %.

    The inputs and the 61 % are read; the results are held from memory and checked by arithmetic.
    """
    share = elements.ammonia_share_of_feed_nitrogen(
        excreted_share=figure("feed_nitrogen_excreted_share"),
        solids_share=figure("element/n/solids_share"),
        solids_removed_share=figure("loop/solids_captured_share"),
    )
    assert share == pytest.approx(0.61)
    nitrogen = elements.ammonia_nitrogen_by_shares(
        200.0, protein_share=0.32, protein_per_nitrogen=figure("protein_per_nitrogen"), ammonia_share=share
    )
    assert nitrogen == pytest.approx(6.25, abs=0.005)
    ammonia_g = nitrogen * figure("ammonia_per_nitrogen")
    area = nitrification.biofilter_area_m2(
        ammonia_g, areal_rate_g_per_m2_day=figure("biofilm_rate_nh3_g_per_m2_day")
    )
    assert [ammonia_g, area] == pytest.approx([7.5, 13.2], rel=0.01)
    volumes = [
        nitrification.media_volume_l(area, surface_m2_per_m3=figure(key))
        for key in ("surface_volcanic_gravel", "surface_plastic_balls")
    ]
    assert volumes == pytest.approx([44.0, 22.0], rel=0.01)


def test_that_nitrifying_the_manuals_nitrogen_takes_known_amounts() -> None:
    """Ebeling and others 2006 constants: 6.25 g N a day takes 44.6 g CaCO3 and 26 to 29 g O2; 1 %."""
    assert nitrification.alkalinity_for_nitrification(6.25, alkalinity_per_nitrogen=7.14) == pytest.approx(
        44.6, rel=0.01
    )
    low, high = (nitrification.oxygen_for_nitrification(6.25, oxygen_per_nitrogen=k) for k in (4.18, 4.57))
    assert (low, high) == (pytest.approx(26.0, rel=0.01), pytest.approx(28.6, rel=0.01))


def test_that_the_biofilm_rates_of_the_study_come_out() -> None:
    """Zhu and Chen 1999, 27.2 degC: 153, 329, 590, 913, 1105 mg/m2/d at 0.25 to 3 mg/L; 1."""
    film = {
        "greatest_mg_per_m2_day": figure("biofilm_greatest_mg_per_m2_day"),
        "threshold_mg_per_l": figure("biofilm_threshold_mg_per_l"),
        "half_mg_per_l": figure("biofilm_half_mg_per_l"),
    }
    found = nitrification.biofilm_rate(np.array([0.07, 0.25, 0.5, 1.0, 2.0, 3.0]), **film)
    assert found == pytest.approx([0.0, 153.0, 329.0, 590.0, 913.0, 1105.0], abs=1.0)


def test_that_a_warmer_filter_gains_as_the_study_says() -> None:
    """Zhu and Chen 2002: at 20 degC +4.275 % a degree when ammonia limits, +1.108 % when oxygen limits."""
    for key, percent in (("ammonia", 4.275), ("oxygen", 1.108)):
        found = nitrification.rate_at_temperature(
            100.0,
            temperature_c=21.0,
            reference_c=figure("biofilm_reference_c"),
            change_per_c=figure(f"biofilm_change_per_c_{key}_limited"),
        )
        assert found - 100.0 == pytest.approx(percent)


@pytest.mark.parametrize(
    ("formula", "per_eq", "per_caco3"),
    [
        ("KOH", 56.11, 1.1211),
        ("Ca(OH)2", 37.05, 0.7403),
        ("K2CO3", 69.10, 1.3809),
        ("KHCO3", 100.11, 2.0006),
        ("NaHCO3", 84.01, 1.6787),
        ("Na2CO3", 52.99, 1.0590),
        ("NaOH", 40.00, 0.7993),
        ("CaO", 28.04, 0.5603),
        ("Mg(OH)2", 29.16, 0.5827),
        ("CaMg(CO3)2", 46.10, 0.9212),
    ],
)
def test_that_base_equivalents_follow_from_atomic_masses(
    formula: str, per_eq: float, per_caco3: float
) -> None:
    """IUPAC standard atomic weights; the table is worked to four figures."""
    assert _base_g_per_eq(formula) == pytest.approx(per_eq, abs=0.006)
    assert _base_for(1.0, formula) == pytest.approx(per_caco3, rel=1e-4)


@pytest.mark.parametrize(
    ("formula", "element", "share"),
    [
        ("KOH", "K", 0.6969),
        ("Ca(OH)2", "Ca", 0.5409),
        ("K2CO3", "K", 0.5658),
        ("KHCO3", "K", 0.3905),
        ("CaMg(CO3)2", "Ca", 0.2173),
        ("CaMg(CO3)2", "Mg", 0.1318),
        ("Mg(OH)2", "Mg", 0.4168),
        ("MgCO3", "Mg", 0.288),
        ("MgSO4.7H2O", "Mg", 0.099),
        ("CaO", "Ca", 0.7147),
    ],
)
def test_that_nutrient_shares_follow_from_atomic_masses(formula: str, element: str, share: float) -> None:
    """IUPAC standard atomic weights; as printed."""
    found = compounds.element_share(formula, element=element, atomic_mass=atomic_masses())
    assert found == pytest.approx(share, rel=0.005)


def test_that_forms_of_nitrogen_and_oxides_are_turned_into_elements() -> None:
    """IUPAC: NH3 1.2159, NO2 3.2845, NO3 4.4267 per N; P 0.4364 of P2O5, K 0.8301 of K2O; four figures."""
    cases = [("N", "NH3", "N", 1.2159), ("N", "NO2", "N", 3.2845), ("N", "NO3", "N", 4.4267)]
    cases += [("P2O5", "P", "P", 0.4364), ("K2O", "K", "K", 0.8301)]
    for given, wanted, element, factor in cases:
        found = compounds.conversion_factor(
            given, to_formula=wanted, element=element, atomic_mass=atomic_masses()
        )
        assert found == pytest.approx(factor, rel=2e-4)


def test_that_potassium_is_topped_up_by_known_salts() -> None:
    """IUPAC: one gram of potassium is 2.56 g KHCO3 or 2.23 g K2SO4; exact to the digits."""
    for formula, grams in (("KHCO3", 2.56), ("K2SO4", 2.23)):
        found = compounds.grams_for_element(
            1.0, formula=formula, element="K", purity=1.0, atomic_mass=atomic_masses()
        )
        assert found == pytest.approx(grams, abs=0.005)


def test_that_the_bicarbonate_rule_of_recirculation_is_understood() -> None:
    """Tellbuscher and others 2024: 250 g NaHCO3 per kg of 35 % feed is 2.976 eq, 0.744 per mol of N; 1 %."""
    acid = nitrification.net_acid_eq(1.0, acid_eq_per_kg_feed=figure("acid_eq_per_kg_feed_without_plants"))
    assert nitrification.base_for_acid_g(acid, base_g_per_eq=_base_g_per_eq("NaHCO3")) == pytest.approx(
        250.0, rel=0.01
    )
    nitrogen = elements.nitrogen_from_protein(350.0, protein_per_nitrogen=figure("protein_per_nitrogen"))
    assert nitrogen == pytest.approx(56.0)
    assert acid / (nitrogen / atomic_masses()["N"]) == pytest.approx(0.744, rel=0.01)


def test_that_alkalinity_of_a_whole_system_is_raised_by_known_masses() -> None:
    """IUPAC masses, 20 mg/L in 110 m3: 2.20 kg CaCO3, KOH 2.466, Ca(OH)2 1.629, NaHCO3 3.693; 0.2 %."""
    rise = nitrification.alkalinity_to_raise_g(20.0, volume_m3=110.0)
    assert rise == pytest.approx(2200.0)
    for formula, kg in (("KOH", 2.466), ("Ca(OH)2", 1.629), ("K2CO3", 3.038), ("NaHCO3", 3.693)):
        assert _base_for(rise, formula) / 1000.0 == pytest.approx(kg, rel=0.002)
    small = nitrification.alkalinity_to_raise_g(10.0, volume_m3=3.785)
    assert _base_for(small, "NaHCO3") == pytest.approx(63.5, rel=0.005)


def test_that_carbon_dioxide_follows_alkalinity_and_ph() -> None:
    """Carbonate equilibrium at 25 degC (constant from memory): 19.7, 62.4 and 9.9 mg/L; 1 %."""
    chemistry = {
        "pk1": figure("carbonic_pk1"),
        "co2_g_per_mol": compounds.molar_mass("CO2", atomic_mass=atomic_masses()),
        "caco3_g_per_eq": CACO3_G_PER_EQ,
    }
    for alkalinity, ph, level in ((100.0, 7.0, 19.7), (100.0, 6.5, 62.4), (50.0, 7.0, 9.9)):
        assert water.carbon_dioxide(alkalinity, ph=ph, **chemistry) == pytest.approx(level, rel=0.01)


def test_that_meters_show_their_own_scale() -> None:
    """Instrument manual: 1413 uS/cm shows 702 (NaCl), 745 (KCl), 1000 ppm (442); 0.6 mS/cm 300, 384, 420."""
    for factor, ppm in ((702.1 / 1413.0, 702.0), (744.7 / 1413.0, 745.0), (1000.0 / 1413.0, 1000.0)):
        assert water.dissolved_solids(1413.0, meter_factor=factor) == pytest.approx(ppm, abs=1.0)
    shown = [water.dissolved_solids(600.0, meter_factor=factor) for factor in (0.5, 0.64, 0.7)]
    assert shown == pytest.approx([300.0, 384.0, 420.0])
    for key, factor in (("nacl", 702.1 / 1413.0), ("kcl", 744.7 / 1413.0), ("442", 1000.0 / 1413.0)):
        assert figure(f"meter_factor_{key}") == pytest.approx(factor, rel=0.02)


def test_that_iron_is_dosed_as_at_the_island_system() -> None:
    """UVI note: 2 mg/L in 110 m3 each 3 weeks: 220 g iron, 2.2 kg of a 10 % chelate; 17.3 doses a year."""
    target = figure("iron_target_mg_per_l")
    pure = water.dose_for_level_g(target, present_mg_per_l=0.0, volume_m3=110.0, share=1.0)
    product = water.dose_for_level_g(target, present_mg_per_l=0.0, volume_m3=110.0, share=0.10)
    assert [pure, product] == pytest.approx([220.0, 2200.0])
    assert 364.0 / figure("iron_interval_days") == pytest.approx(17.3, abs=0.05)


def test_that_oxygen_runs_out_in_the_straight_line_time() -> None:
    """Arithmetic of fish-farm practice: 6.5 to 2 mg/L, 67.5 min at 20 kg/m3, 15 at 60; 0.1."""
    for density, uptake, minutes in ((20.0, 200.0, 67.5), (60.0, 300.0, 15.0), (5.0, 100.0, 540.0)):
        found = water.minutes_to_critical_oxygen(
            6.5, critical_mg_per_l=2.0, density_kg_per_m3=density, uptake_mg_per_kg_h=uptake
        )
        assert found == pytest.approx(minutes, abs=0.1)


def test_that_the_island_system_has_its_published_exchange() -> None:
    """UVI pages: 7.8 m3 at 100 L/min is 78 min (stated 80), rafts 68.1 m3 at 400 L/min 2.84 h; 2.5 %."""
    assert water.hydraulic_retention_min(7800.0, flow_l_per_min=100.0) == pytest.approx(80.0, rel=0.026)
    hours = water.hydraulic_retention_min(6 * 11_356.0, flow_l_per_min=400.0) / 60.0
    assert hours == pytest.approx(2.84, abs=0.005)
