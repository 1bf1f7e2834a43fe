"""Which units a column of readings may be in, and what one of each is in the unit that is kept."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Final

from planner.farm.water import Quantity

FigureOf = Callable[[str], float]
"""Returns a figure of the catalogue by its path."""

_UNITS: Final = "coefficient/units/"
_MASSES: Final = "coefficient/atomic_masses/atomic_mass_"
PPM: Final = "ppm"


@dataclass(frozen=True, slots=True, kw_only=True)
class Unit:
    """One unit: kept value = (read value - `zero`) × `scale`. A meter's ppm needs the meter's factor."""

    name: str
    scale: float = 1.0
    zero: float = 0.0
    needs_factor: bool = False


def unit_table(figure: FigureOf) -> Mapping[Quantity, tuple[Unit, ...]]:
    """Return the units each quantity may be read in, the one that is kept first."""
    celsius = (
        Unit(name="°C"),
        Unit(
            name="°F",
            scale=1 / figure(_UNITS + "fahrenheit_per_celsius"),
            zero=figure(_UNITS + "fahrenheit_zero"),
        ),
    )
    micro = 1 / figure(_UNITS + "microsiemens_per_millisiemens")
    mass = {symbol: figure(_MASSES + symbol) for symbol in ("h", "n", "o")}
    known = {
        Quantity.PH: (Unit(name="pH"),),
        Quantity.WATER_C: celsius,
        Quantity.AIR_C: celsius,
        Quantity.EC_MS_PER_CM: (Unit(name="mS/cm"), Unit(name="dS/m"), Unit(name="µS/cm", scale=micro)),
        Quantity.TDS_MG_PER_L: (Unit(name=PPM, needs_factor=True),),
        Quantity.TAN_MG_PER_L: _as_nitrogen("NH4", mass["n"] / (mass["n"] + 4 * mass["h"])),
        Quantity.NITRITE_N_MG_PER_L: _as_nitrogen("NO2", mass["n"] / (mass["n"] + 2 * mass["o"])),
        Quantity.NITRATE_N_MG_PER_L: _as_nitrogen("NO3", mass["n"] / (mass["n"] + 3 * mass["o"])),
        Quantity.ALKALINITY_MG_PER_L: (
            Unit(name="mg/L CaCO3"),
            Unit(name="°dKH", scale=figure(_UNITS + "german_degree_mg_per_l")),
        ),
        Quantity.TOP_UP_L: (Unit(name="L"), Unit(name="gal", scale=figure(_UNITS + "us_gallon_l"))),
    }
    return {quantity: known.get(quantity, (Unit(name="mg/L"),)) for quantity in Quantity}


def _as_nitrogen(ion: str, share: float) -> tuple[Unit, ...]:
    return Unit(name="mg/L N"), Unit(name=f"mg/L {ion}", scale=share)


def unit_named(word: str, units: tuple[Unit, ...]) -> Unit | None:
    """Return the unit a word stands for, None when it is none of them."""
    plain = _plain(word)
    return next((unit for unit in units if _plain(unit.name) == plain), None)


_SPELLINGS: Final = {"degf": "f", "degc": "c", "us/cm": "us/cm", "dkh": "dkh", "kh": "dkh", "ppmtds": "ppm"}


def _plain(word: str) -> str:
    bare = "".join(word.lower().split()).replace("°", "").replace("µ", "u").replace("μ", "u").replace("-", "")
    return _SPELLINGS.get(bare, bare)
