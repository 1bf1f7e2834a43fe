"""Computations on fish: growth, feeding tables, weight from length, sampling, density."""

from __future__ import annotations

from typing import Final

import numpy as np

from planner.forecast.verify.ledger import Computation, Inputs, Ledger
from planner.science import feeding_table, fish, stock

_G_PER_KG: Final = 1000.0
_NORMAL: Final = "fish/sample_z_quantile"
_HALVINGS: Final = 40
"""Times that a bound is halved: by then it is as near as a number can be."""


def growth_coefficient(inputs: Inputs, ledger: Ledger) -> float:
    """Thermal growth coefficient between two weights."""
    return fish.thermal_growth_coefficient(
        inputs.number("start_g"),
        end_g=inputs.number("end_g"),
        degree_days=inputs.number("temperature_c") * inputs.number("days"),
        exponent=ledger.coefficient("fish/tgc_exponent"),
    )


def weight_after_days(inputs: Inputs, ledger: Ledger) -> float:
    """Weight after days at a growth coefficient."""
    return fish.weight_by_tgc(
        inputs.number("start_g"),
        tgc=inputs.number("coefficient"),
        degree_days=inputs.number("temperature_c") * inputs.number("days"),
        exponent=ledger.coefficient("fish/tgc_exponent"),
    )


def weight_with_exponent(inputs: Inputs, ledger: Ledger) -> float:
    """Weight after days at a growth coefficient with an exponent of its own."""
    del ledger
    return fish.weight_by_tgc(
        inputs.number("start_g"),
        tgc=inputs.number("coefficient"),
        degree_days=inputs.number("temperature_c") * inputs.number("days"),
        exponent=inputs.number("exponent"),
    )


def specific_growth(inputs: Inputs, ledger: Ledger) -> float:
    """Specific growth rate."""
    del ledger
    return fish.specific_growth_rate(
        inputs.number("start_g"), end_g=inputs.number("end_g"), days=inputs.number("days")
    )


def weight_by_rate(inputs: Inputs, ledger: Ledger) -> float:
    """Weight after days at a specific growth rate."""
    del ledger
    return fish.weight_by_sgr(
        inputs.number("start_g"),
        rate_percent_per_day=inputs.number("rate_percent_per_day"),
        days=inputs.number("days"),
    )


def weight_grown(inputs: Inputs, ledger: Ledger) -> float:
    """Weight of a fish of the catalogue after days at one warmth, by the coefficient of each stage."""
    key = inputs.text("fish")
    species = ledger.fish(key, "base_c", "optimum_c", "ceiling_c")
    ledger.note_shelf(f"fish/{key}", ("tgc",))
    warmth = fish.effective_temperature(
        inputs.number("temperature_c"),
        base_c=species.base_c,
        optimum_c=species.optimum_c,
        ceiling_c=species.ceiling_c,
    )
    from_g = np.asarray([0.0, *(stage.up_to_g for stage in species.stages[:-1])])
    weights = fish.weight_series(
        inputs.number("start_g"),
        effective_temperature_c=np.full(inputs.whole("days"), warmth),
        stage_from_g=from_g,
        stage_tgc=np.asarray([stage.tgc for stage in species.stages]),
    )
    return float(weights[-1])


def _share_of_best(key: str, ledger: Ledger, temperature_c: float) -> float:
    """Return how quickly a fish of the catalogue grows at a warmth, against its best."""
    species = ledger.fish(key, "base_c", "optimum_c", "ceiling_c")
    bounds = {"base_c": species.base_c, "optimum_c": species.optimum_c, "ceiling_c": species.ceiling_c}
    return fish.effective_temperature(temperature_c, **bounds) / species.optimum_c


def growth_by_warmth(inputs: Inputs, ledger: Ledger) -> float:
    """Growth of a fish of the catalogue at one warmth over that at another."""
    key = inputs.text("fish")
    at, against = (_share_of_best(key, ledger, inputs.number(name)) for name in ("at_c", "against_c"))
    return at / against


def span_of_good_warmth(inputs: Inputs, ledger: Ledger) -> float:
    """Degrees over which a fish of the catalogue grows at least at a share of its best [degC]."""
    key, least = inputs.text("fish"), inputs.number("least_share")
    species = ledger.fish(key, "base_c", "optimum_c", "ceiling_c")

    def bound(best_c: float, end_c: float) -> float:
        for _ in range(_HALVINGS):
            middle_c = (best_c + end_c) / 2.0
            if _share_of_best(key, ledger, middle_c) >= least:
                best_c = middle_c
            else:
                end_c = middle_c
        return best_c

    return bound(species.optimum_c, species.ceiling_c) - bound(species.optimum_c, species.base_c)


def shipped_length_weight(inputs: Inputs, ledger: Ledger) -> float:
    """Weight of a fish of the catalogue from its length."""
    species = ledger.fish(inputs.text("fish"), "length_weight_a", "length_weight_b")
    return fish.weight_from_length(
        inputs.number("length_cm"), factor=species.length_weight_a, exponent=species.length_weight_b
    )


def weight_by_condition(inputs: Inputs, ledger: Ledger) -> float:
    """Weight from length and condition factor."""
    del ledger
    return fish.weight_from_condition(inputs.number("length_cm"), condition=inputs.number("condition"))


def standard_weight(inputs: Inputs, ledger: Ledger) -> float:
    """Standard weight from length."""
    del ledger
    return fish.weight_by_standard(
        inputs.number("length_mm"),
        intercept=inputs.number("intercept"),
        slope=inputs.number("slope"),
        bend=inputs.number("bend"),
    )


def growth_left(inputs: Inputs, ledger: Ledger) -> float:
    """Share of growth left at a level of un-ionised ammonia."""
    return fish.growth_left_by_ammonia(
        inputs.number("ammonia_n_mg_per_l"),
        harmless_mg_per_l=ledger.coefficient("fish/ammonia_growth_harmless_mg_per_l"),
        stopping_mg_per_l=ledger.coefficient("fish/ammonia_growth_stopping_mg_per_l"),
    )


def shipped_ration(inputs: Inputs, ledger: Ledger) -> float:
    """Ration from a feeding table of the catalogue."""
    table = ledger.feeding_table(inputs.text("table"))
    science = feeding_table.FeedingTable(
        temperature_c=np.asarray(table.temperatures_c),
        weight_g=np.asarray(table.weights_g),
        percent_per_day=np.asarray(table.percent_per_day),
    )
    return feeding_table.ration_interpolated(
        inputs.number("weight_g"), temperature_c=inputs.number("temperature_c"), table=science
    )


def ration_of_table(inputs: Inputs, ledger: Ledger) -> float:
    """Ration between the nodes of a table that the case itself holds, one row a temperature."""
    del ledger
    warmths, weights = inputs.numbers("temperatures_c"), inputs.numbers("weights_g")
    table = feeding_table.FeedingTable(
        temperature_c=warmths,
        weight_g=weights,
        percent_per_day=inputs.numbers("percents").reshape(warmths.size, weights.size),
    )
    return feeding_table.ration_interpolated(
        inputs.number("weight_g"), temperature_c=inputs.number("temperature_c"), table=table
    )


def weight_by_length_table(inputs: Inputs, ledger: Ledger) -> float:
    """Weight from length by a table that the case itself holds."""
    del ledger
    return fish.weight_from_length_table(
        inputs.number("length_cm"),
        table_inches=inputs.numbers("lengths_in"),
        table_g=inputs.numbers("weights_g"),
    )


def shipped_chart_feed(inputs: Inputs, ledger: Ledger) -> float:
    """Daily feed of a stock of one weight from a feeding table of the catalogue [g/d]."""
    feed_kg = feeding_table.feed_for_stock_kg(
        inputs.number("fish_count"),
        weight_g=inputs.number("weight_g"),
        percent_per_day=shipped_ration(inputs, ledger),
    )
    return feed_kg * _G_PER_KG


def stock_feed(inputs: Inputs, ledger: Ledger) -> float:
    """Daily feed of a stock at a ration."""
    del ledger
    return feeding_table.feed_for_stock_kg(
        inputs.number("fish_count"),
        weight_g=inputs.number("weight_g"),
        percent_per_day=inputs.number("percent_per_day"),
    )


def feed_conversion(inputs: Inputs, ledger: Ledger) -> float:
    """Feed over gain."""
    del ledger
    return fish.feed_conversion_ratio(inputs.number("feed"), gain=inputs.number("gain"))


def gain_of_ration(inputs: Inputs, ledger: Ledger) -> float:
    """Gain of fish of the catalogue on a ration that is left as it was at the start [kg]."""
    feed_kg = inputs.number("start_kg") * inputs.number("ration_share_per_day") * inputs.number("days")
    return feed_kg / ledger.value(f"fish/{inputs.text('fish')}/stage/{inputs.whole('stage')}/fcr")


def sample_count(inputs: Inputs, ledger: Ledger) -> float:
    """Fish to weigh of a stock without end."""
    return float(
        stock.sample_size(
            variation=inputs.number("variation"),
            relative_error=inputs.number("relative_error"),
            z_quantile=ledger.coefficient(_NORMAL),
        )
    )


def sample_count_of_stock(inputs: Inputs, ledger: Ledger) -> float:
    """Fish to weigh of a stock of a size."""
    return float(
        stock.sample_size(
            variation=inputs.number("variation"),
            relative_error=inputs.number("relative_error"),
            z_quantile=ledger.coefficient(_NORMAL),
            stock=inputs.number("fish_count"),
        )
    )


def _sample(inputs: Inputs) -> stock.SampleStatistics:
    return stock.sample_statistics(inputs.numbers("weights_g").tolist())


def sample_mean(inputs: Inputs, ledger: Ledger) -> float:
    """Mean of a weighed sample."""
    del ledger
    return _sample(inputs).mean


def sample_deviation(inputs: Inputs, ledger: Ledger) -> float:
    """Standard deviation of a weighed sample."""
    del ledger
    return _sample(inputs).standard_deviation


def sample_half_width(inputs: Inputs, ledger: Ledger) -> float:
    """Half width of the mean of a weighed sample."""
    del ledger
    return stock.half_width_of_mean(_sample(inputs), t_quantile=inputs.number("t_quantile"))


def hauling_load(inputs: Inputs, ledger: Ledger) -> float:
    """Fish that may be hauled when it is warmer."""
    return stock.loading_at_temperature(
        inputs.number("load"),
        warmer_by_f=inputs.number("warmer_by_f"),
        change_per_f=ledger.coefficient("fish/loading_change_per_f"),
    )


def flow_index(inputs: Inputs, ledger: Ledger) -> float:
    """Flow index at another level of oxygen."""
    del ledger
    return stock.index_at_oxygen(
        inputs.number("index"),
        rated_mg_per_l=inputs.number("rated_mg_per_l"),
        oxygen_mg_per_l=inputs.number("oxygen_mg_per_l"),
        least_mg_per_l=inputs.number("least_mg_per_l"),
    )


def raceway_ammonia(inputs: Inputs, ledger: Ledger) -> float:
    """Ammonia at the end of one of a row of raceways."""
    levels = stock.ammonia_in_series(
        inputs.numbers("feed_lb_per_day"),
        flow_gpm=inputs.number("flow_gpm"),
        ammonia_factor=ledger.coefficient("fish/ammonia_factor_hatchery"),
    )
    return inputs.pick(levels, "raceways_before")


def metric_density(inputs: Inputs, ledger: Ledger) -> float:
    """Stocking density from pounds a gallon."""
    del ledger
    return stock.density_from_pounds_per_gallon(inputs.number("pounds_per_gallon"))


FISH: Final[dict[str, Computation]] = {
    each.__name__: each
    for each in (
        growth_coefficient,
        weight_after_days,
        weight_with_exponent,
        specific_growth,
        weight_by_rate,
        weight_grown,
        growth_by_warmth,
        span_of_good_warmth,
        shipped_length_weight,
        weight_by_condition,
        standard_weight,
        growth_left,
        shipped_ration,
        ration_of_table,
        weight_by_length_table,
        shipped_chart_feed,
        stock_feed,
        feed_conversion,
        gain_of_ration,
        sample_count,
        sample_count_of_stock,
        sample_mean,
        sample_deviation,
        sample_half_width,
        hauling_load,
        flow_index,
        raceway_ammonia,
        metric_density,
    )
}
