"""How fish grow and eat: growth coefficients, temperature, ration, length and weight.

Weights are of one fish. Must not know tanks, groups or dates.
"""

from __future__ import annotations

from bisect import bisect_right

import numpy as np

from planner.science.limits import (
    FloatArray,
    T,
    Values,
    require_above,
    require_at_least,
    require_between,
    require_rising,
    shaped_like,
)
from planner.science.response import cardinal_response

CUBE_ROOT = 1.0 / 3.0
"""Weight goes as the cube of length; some papers print 0.33 instead, which is not the same fish."""
_TGC_SCALE = 1000.0
"""The thermal growth coefficient is quoted times 1000."""
_CM_PER_INCH = 2.54


def thermal_growth_coefficient(
    start_g: T, *, end_g: Values, degree_days: Values, exponent: float = CUBE_ROOT
) -> T:
    """Thermal growth coefficient between two weighings [x1000, g^(1/3)/degC/d].

    start_g, end_g [g] above 0; degree_days [degC d] above 0, the summed water temperature. Linear
    in the cube root of weight: fails above the growth optimum. Source: iwamatautz1981, jobling2003.

    >>> round(thermal_growth_coefficient(10.0, end_g=350.0, degree_days=11.0 * 200), 3)
    2.224
    """
    require_above("start weight", start_g, low=0.0, unit="g")
    require_above("end weight", end_g, low=0.0, unit="g")
    require_above("degree-days", degree_days, low=0.0, unit="degC d")
    gain = np.power(end_g, exponent) - np.power(start_g, exponent)
    return shaped_like(start_g, _TGC_SCALE * gain / degree_days)


def weight_by_tgc(start_g: T, *, tgc: Values, degree_days: Values, exponent: float = CUBE_ROOT) -> T:
    """Weight after growth at a thermal growth coefficient [g].

    start_g [g] above 0; tgc [x1000, g^(1/3)/degC/d] >= 0; degree_days [degC d] >= 0 (an array gives
    the weight at each). Source: iwamatautz1981.

    >>> round(weight_by_tgc(10.0, tgc=1.0, degree_days=11.0 * 200), 1)
    82.6
    >>> round(weight_by_tgc(10.0, tgc=1.0, degree_days=11.0 * 200, exponent=0.33), 1)
    85.3
    """
    require_above("start weight", start_g, low=0.0, unit="g")
    require_at_least("growth coefficient", tgc, low=0.0)
    require_at_least("degree-days", degree_days, low=0.0, unit="degC d")
    root = np.power(start_g, exponent) + np.asarray(tgc) / _TGC_SCALE * np.asarray(degree_days)
    return shaped_like(start_g, np.power(root, 1.0 / exponent))


def weight_after_day(weight_g: T, *, tgc: Values, effective_temperature_c: Values, fry_weight_g: float) -> T:
    """Weight of a fish at the end of a day [g], never less than it began with.

    weight_g [g] >= 0; tgc [x1000] >= 0; effective_temperature_c [degC] >= 0; fry_weight_g [g] above 0: a
    lighter fish grows by the same share as one of that weight, since by the law of the cube root the share
    would rise without end as fish get lighter. Source: iwamatautz1981; the bound is ours.

    >>> warm = dict(tgc=1.15, effective_temperature_c=29.0, fry_weight_g=0.5)
    >>> [round(weight_after_day(weight, **warm) / weight - 1, 3) for weight in (0.02, 0.5, 50.0)]
    [0.131, 0.131, 0.027]
    """
    require_at_least("weight", weight_g, low=0.0, unit="g")
    require_at_least("growth coefficient", tgc, low=0.0)
    require_at_least("effective temperature", effective_temperature_c, low=0.0, unit="degC")
    require_above("weight of fry", fry_weight_g, low=0.0, unit="g")
    by = np.maximum(weight_g, fry_weight_g)
    root = np.cbrt(by) + np.asarray(tgc) / _TGC_SCALE * effective_temperature_c
    return shaped_like(weight_g, np.asarray(weight_g) * np.maximum(np.power(root, 1.0 / CUBE_ROOT) / by, 1.0))


def degree_days_to_weight(start_g: T, *, end_g: Values, tgc: Values, exponent: float = CUBE_ROOT) -> T:
    """Degree-days from one weight to another at a growth coefficient [degC d], 0 if already there.

    start_g, end_g [g] above 0; tgc [x1000] above 0. Source: iwamatautz1981.

    >>> round(degree_days_to_weight(10.0, end_g=350.0, tgc=2.224), 0)
    2200.0
    """
    require_above("growth coefficient", tgc, low=0.0)
    require_above("start weight", start_g, low=0.0, unit="g")
    require_above("end weight", end_g, low=0.0, unit="g")
    gain = np.power(end_g, exponent) - np.power(start_g, exponent)
    return shaped_like(start_g, np.maximum(gain, 0.0) * _TGC_SCALE / tgc)


def effective_temperature(temperature_c: T, *, base_c: float, optimum_c: float, ceiling_c: float) -> T:
    """Temperature to put into a growth coefficient, so that growth peaks and falls [degC].

    The optimum times the cardinal response, but never more than the water temperature itself: so a
    coefficient keeps the meaning it is printed with, growth over degrees of water, wherever it was measured
    up to the optimum; it is 0 at the base and at the ceiling.
    temperature_c [degC], any shape; 0 < optimum_c. The need for a peak: jobling2003; the form is ours.

    >>> effective_temperature(11.0, base_c=2.0, optimum_c=15.0, ceiling_c=21.0)
    11.0
    >>> effective_temperature(29.0, base_c=14.0, optimum_c=29.0, ceiling_c=38.0)
    29.0
    >>> effective_temperature(39.0, base_c=14.0, optimum_c=29.0, ceiling_c=38.0)
    0.0
    """
    require_above("optimum temperature", optimum_c, low=0.0, unit="degC")
    share = cardinal_response(temperature_c, base_c=base_c, optimum_c=optimum_c, ceiling_c=ceiling_c)
    degrees = np.maximum(np.asarray(temperature_c, dtype=np.float64), 0.0)
    return shaped_like(temperature_c, np.minimum(optimum_c * np.asarray(share), degrees))


def staged_coefficient(weight_g: T, *, stage_from_g: FloatArray, stage_tgc: FloatArray) -> T:
    """Growth coefficient of the stage a weight falls in [x1000].

    weight_g [g] at or above the first stage; stage_from_g [g], shape (stage,), rising, lower bounds;
    stage_tgc [x1000], shape (stage,).

    >>> staged_coefficient(60.0, stage_from_g=np.array([0.0, 50.0]), stage_tgc=np.array([1.4, 1.1]))
    1.1
    """
    if stage_from_g.size == 0 or stage_from_g.shape != stage_tgc.shape:
        raise ValueError(f"stages: {stage_from_g.size} weights for {stage_tgc.size} growth coefficients")
    require_rising("stage weights", stage_from_g, unit="g")
    require_at_least("weight", weight_g, low=float(stage_from_g[0]), unit="g")
    stage = np.searchsorted(stage_from_g, weight_g, side="right") - 1
    return shaped_like(weight_g, stage_tgc[stage])


def weight_series(
    start_g: float,
    *,
    effective_temperature_c: FloatArray,
    stage_from_g: FloatArray,
    stage_tgc: FloatArray,
    exponent: float = CUBE_ROOT,
) -> FloatArray:
    """Weight at the start of day 0 and at the end of every day, by stages [g].

    effective_temperature_c [degC], shape (day,), >= 0. Returns shape (day + 1,). The stage of a day is
    that of the weight it begins with. Source: iwamatautz1981.

    >>> warm = np.full(3, 28.0)
    >>> stages = dict(stage_from_g=np.array([0.0]), stage_tgc=np.array([1.0]))
    >>> [round(float(w), 2) for w in weight_series(100.0, effective_temperature_c=warm, **stages)]
    [100.0, 101.82, 103.66, 105.53]
    """
    require_at_least("effective temperature", effective_temperature_c, low=0.0, unit="degC")
    require_above("start weight", start_g, low=0.0, unit="g")
    require_at_least("growth coefficient", stage_tgc, low=0.0)
    staged_coefficient(start_g, stage_from_g=stage_from_g, stage_tgc=stage_tgc)  # refuses bad stages
    # days depend on each other, so plain numbers and not arrays: it runs on every move of the hand
    bounds, coefficients = stage_from_g.tolist(), (stage_tgc / _TGC_SCALE).tolist()
    root, weights = start_g**exponent, [start_g]
    for warmth in effective_temperature_c.tolist():
        root += coefficients[bisect_right(bounds, weights[-1]) - 1] * warmth
        weights.append(root ** (1.0 / exponent))
    return np.array(weights)


def specific_growth_rate(start_g: T, *, end_g: Values, days: Values) -> T:
    """Specific growth rate, 100 (ln end - ln start) / days [%/d].

    start_g, end_g [g] above 0; days [d] above 0. Source: hatchery-formulas.

    >>> round(specific_growth_rate(10.0, end_g=350.0, days=200.0), 3)
    1.778
    """
    require_above("start weight", start_g, low=0.0, unit="g")
    require_above("end weight", end_g, low=0.0, unit="g")
    require_above("days", days, low=0.0, unit="d")
    return shaped_like(start_g, 100.0 * (np.log(end_g) - np.log(start_g)) / days)


def weight_by_sgr(start_g: T, *, rate_percent_per_day: Values, days: Values) -> T:
    """Weight after growth at a specific growth rate [g].

    >>> round(weight_by_sgr(10.0, rate_percent_per_day=1.778, days=200.0), 0)
    350.0
    """
    require_above("start weight", start_g, low=0.0, unit="g")
    return shaped_like(start_g, start_g * np.exp(np.asarray(rate_percent_per_day) / 100.0 * days))


def ration_for_gain(gain: T, *, feed_conversion: Values) -> T:
    """Feed that a gain asks for: gain x feed conversion [unit of gain].

    gain >= 0 [g or kg]; feed_conversion [g feed/g gain] above 0. Source: fao589.

    >>> round(ration_for_gain(432.9, feed_conversion=1.7), 1)
    735.9
    """
    require_at_least("gain", gain, low=0.0, unit="g")
    require_above("feed conversion", feed_conversion, low=0.0, unit="g/g")
    return shaped_like(gain, np.asarray(gain) * feed_conversion)


def gain_from_feed(feed: T, *, feed_conversion: Values) -> T:
    """Gain that a feed carries: feed / feed conversion [unit of feed].

    feed >= 0 [g or kg]; feed_conversion [g feed/g gain] above 0. Source: fao589.

    >>> round(gain_from_feed(735.9, feed_conversion=1.7), 1)
    432.9
    """
    require_at_least("feed", feed, low=0.0, unit="g")
    require_above("feed conversion", feed_conversion, low=0.0, unit="g/g")
    return shaped_like(feed, np.asarray(feed) / feed_conversion)


def feed_conversion_ratio(feed: T, *, gain: Values) -> T:
    """Feed given per gain of live weight over the same time [g/g]. gain above 0. Source: fao589.

    >>> feed_conversion_ratio(54.0, gain=24.0)
    2.25
    """
    require_at_least("feed", feed, low=0.0, unit="g")
    require_above("gain", gain, low=0.0, unit="g")
    return shaped_like(feed, np.asarray(feed) / gain)


def growth_left_by_ammonia(ammonia_n_mg_per_l: T, *, harmless_mg_per_l: float, stopping_mg_per_l: float) -> T:
    """Share of growth left at an un-ionised ammonia level, falling in a straight line [0..1].

    ammonia_n_mg_per_l [mg NH3-N/L] >= 0; harmless below stopping [mg NH3-N/L]. Source: abdallamcnabb1998.

    >>> growth_left_by_ammonia(0.76, harmless_mg_per_l=0.06, stopping_mg_per_l=1.46)
    0.5
    """
    require_at_least("un-ionised ammonia", ammonia_n_mg_per_l, low=0.0, unit="mg/L")
    require_above("stopping level", stopping_mg_per_l, low=harmless_mg_per_l, unit="mg/L")
    fall = (np.asarray(ammonia_n_mg_per_l) - harmless_mg_per_l) / (stopping_mg_per_l - harmless_mg_per_l)
    return shaped_like(ammonia_n_mg_per_l, np.clip(1.0 - fall, 0.0, 1.0))


def weight_from_length(length_cm: T, *, factor: float, exponent: float) -> T:
    """Weight of a fish from its total length: factor x length^exponent [g].

    length_cm [cm] above 0; factor [g/cm^exponent] above 0; exponent [1] above 0. A converted length carries
    about a quarter either way for tilapia: ask for a weighed sample. Source: wagaw2022 for tilapia.

    >>> round(weight_from_length(10.16, factor=0.0104, exponent=3.19), 1)
    16.9
    """
    require_above("length", length_cm, low=0.0, unit="cm")
    require_above("length-weight factor", factor, low=0.0)
    require_above("length-weight exponent", exponent, low=0.0)
    return shaped_like(length_cm, factor * np.power(length_cm, exponent))


def weight_from_condition(length_cm: T, *, condition: float) -> T:
    """Weight of a fish from its length and condition factor K: K x length^3 / 100 [g].

    length_cm [cm] above 0; condition [g/cm3 x 100] above 0. Source: piper1982.

    >>> round(weight_from_condition(10.0, condition=1.9), 1)
    19.0
    """
    require_above("condition factor", condition, low=0.0)
    return weight_from_length(length_cm, factor=condition / 100.0, exponent=1.0 / CUBE_ROOT)


def weight_by_standard(length_mm: T, *, intercept: float, slope: float, bend: float) -> T:
    """Standard weight of a species from total length, a curve in decimal logarithms [g].

    length_mm [mm] above 0; log10 weight = intercept + slope x + bend x^2 with x = log10 length.
    Valid only over the lengths it was fitted to. Source: fsa-package.

    >>> round(weight_by_standard(76.2, intercept=-8.7951, slope=6.751, bend=-0.8479), 1)
    8.1
    """
    require_above("length", length_mm, low=0.0, unit="mm")
    log_length = np.log10(length_mm)
    return shaped_like(length_mm, np.power(10.0, intercept + slope * log_length + bend * log_length**2))


def weight_from_length_table(length_cm: T, *, table_inches: FloatArray, table_g: FloatArray) -> T:
    """Weight of a fish by straight lines between the rows of a length table [g].

    length_cm [cm] within the table; table_inches [in] and table_g [g], shape (row,), rising.
    Source: alabama-catfish.

    >>> rows = dict(table_inches=np.array([3.0, 4.0]), table_g=np.array([4.54, 9.07]))
    >>> weight_from_length_table(7.62, **rows)
    4.54
    """
    require_rising("table lengths", table_inches, unit="in")
    inches = np.asarray(length_cm) / _CM_PER_INCH
    require_between("length", inches, low=float(table_inches[0]), high=float(table_inches[-1]), unit="in")
    return shaped_like(length_cm, np.interp(inches, table_inches, table_g))
