"""Shares and base of salts against standard atomic weights; default splits against published budgets."""

import re

import pytest

from planner.catalogue.loading import shipped_catalogue

# IUPAC 2021, conventional standard atomic weights.
WEIGHTS = {
    "H": 1.008,
    "C": 12.011,
    "N": 14.007,
    "O": 15.999,
    "Mg": 24.305,
    "S": 32.06,
    "Cl": 35.45,
    "K": 39.098,
    "Ca": 40.078,
}
# Charges of acid that one formula unit takes up.
BASES = {
    "potassium-hydroxide": 1,
    "calcium-hydroxide": 2,
    "potassium-carbonate": 2,
    "potassium-bicarbonate": 1,
    "calcium-carbonate": 2,
    "dolomite": 4,
    "magnesium-hydroxide": 2,
}
SALTS = ("magnesium-sulfate", "potassium-sulfate", "calcium-chloride")
ELEMENTS = {"n": "N", "k": "K", "ca": "Ca", "mg": "Mg"}


@pytest.fixture(scope="module")
def book():
    return shipped_catalogue()


def counts(formula):
    """Atoms of a formula such as CaMg(CO3)2 or MgSO4·7H2O."""
    found = {}
    for part in formula.split("·"):
        times, body = re.fullmatch(r"(\d*)(.*)", part).groups()
        for group, number in re.findall(r"\(([^)]*)\)(\d*)", body):
            add(found, group, int(number or 1) * int(times or 1))
        add(found, re.sub(r"\([^)]*\)\d*", "", body), int(times or 1))
    return found


def add(found, body, times):
    for symbol, number in re.findall(r"([A-Z][a-z]?)(\d*)", body):
        found[symbol] = found.get(symbol, 0) + int(number or 1) * times


def molar_mass(formula):
    return sum(WEIGHTS[symbol] * number for symbol, number in counts(formula).items())


@pytest.mark.parametrize("key", [*BASES, *SALTS])
def test_that_shares_follow_from_atomic_weights(book, key):
    """IUPAC 2021; shares are kept to four figures."""
    supplement = book.supplements[key]
    atoms, mass = counts(supplement.formula), molar_mass(supplement.formula)
    for field, symbol in ELEMENTS.items():
        share = WEIGHTS[symbol] * atoms.get(symbol, 0) / mass
        assert getattr(supplement, f"{field}_share") == pytest.approx(share, abs=0.00005), field


@pytest.mark.parametrize("key", BASES)
def test_that_base_equivalents_follow_from_atomic_weights(book, key):
    """IUPAC 2021; equivalents are kept to five figures."""
    supplement = book.supplements[key]
    expected = 1000 * BASES[key] / molar_mass(supplement.formula)
    assert supplement.base_eq_per_kg == pytest.approx(expected, abs=0.0005)


@pytest.mark.parametrize("key", SALTS)
def test_that_neutral_salts_are_no_base(book, key):
    assert book.supplements[key].base_eq_per_kg == 0


@pytest.mark.parametrize(
    ("key", "grams"),
    [
        ("calcium-hydroxide", 74.0),
        ("potassium-hydroxide", 112.1),
        ("potassium-bicarbonate", 200.1),
        ("potassium-carbonate", 138.1),
        ("magnesium-hydroxide", 58.3),
        ("dolomite", 92.1),
    ],
)
def test_that_each_base_stands_for_a_hundred_grams_of_chalk(book, key, grams):
    """Grams of a base that stand for 100 g of calcium carbonate, as usually tabled (to 0.1 g)."""
    chalk = book.supplements["calcium-carbonate"].base_eq_per_kg
    assert 100 * chalk / book.supplements[key].base_eq_per_kg == pytest.approx(grams, abs=0.06)


def test_that_solids_hold_the_nitrogen_fao_gives(book):
    """FAO technical paper 589, appendix 4: 15 % of feed nitrogen in solids, filters take out 60 % of them."""
    assert book.elements["n"].solids_share == 0.15
    assert book.figure("loop/solids_captured_share").value == 0.60


@pytest.mark.parametrize(
    ("path", "published"),
    [
        ("element/n/gas_loss_share", (0.45, 0.50)),
        ("element/p/solids_share", (0.14, 0.70)),
        ("element/n/mineral_limit_share", (0.50,)),
        ("element/p/mineral_limit_share", (0.46,)),
        ("element/ca/mineral_limit_share", (0.53,)),
        ("element/mg/mineral_limit_share", (0.49,)),
    ],
)
def test_that_published_splits_lie_within_the_spread(book, path, published):
    """Yang and Kim 2020 (gas); Strauch 2018, Shnel 2002 (solids); Delaide 2018, 42 days aerated (release)."""
    figure = book.figure(path)
    for value in published:
        assert figure.low <= value <= figure.high


def test_that_potassium_hardly_stays_in_solids(book):
    """Tilapia sludge holds 1.85-2.4 g K/kg dry; 0.25 kg of solids per kg of feed with 9 g K/kg."""
    figure = book.figure("element/k/solids_share")
    for sludge_g_per_kg in (1.85, 2.4):
        assert figure.low <= sludge_g_per_kg * 0.25 / 9 <= figure.high


def test_that_the_working_bands_of_water_are_the_compromise_of_fao(book):
    """FAO paper 589, table 3.2: pH 6-7, 18-30 °C, oxygen > 5, TAN and nitrite < 1, nitrate 5-150."""
    names = {
        "ph_low": 6,
        "ph_high": 7,
        "water_low_c": 18,
        "water_high_c": 30,
        "oxygen_low_mg_per_l": 5,
        "tan_limit_mg_per_l": 1,
        "nitrite_n_limit_mg_per_l": 1,
        "nitrate_n_low_mg_per_l": 5,
        "nitrate_n_high_mg_per_l": 150,
    }
    assert {name: book.figure(f"loop/{name}").value for name in names} == names
