"""The commands `compare` and `expand`: farms beside each other, and whether a loop can carry more beds.

Exit codes: 0 good, 1 the farm has faults or cannot be read, 2 wrong usage.
"""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any, Final

from planner.bootstrap import Means
from planner.cli_shared import WrongUsageError
from planner.commands_advice import add_file, loop_named, number_of, print_json
from planner.commands_answers import add_why_option, print_answers

if TYPE_CHECKING:
    from planner.catalogue.catalogue import Catalogue
    from planner.farm.farm import Farm
    from planner.farm.fields import Id
    from planner.forecast.values import Ruler
    from planner.planning.expansion.pump import PumpCurve
    from planner.planning.expansion.verdicts import Expansion, Question
    from planner.planning.scenarios.compare import Column, Comparison, Money, Prices
    from planner.planning.scenarios.sets import Difference, Scenario

_GOOD: Final = 0
_G_PER_KG: Final = 1000.0
_PRICED: Final = {
    "crop": "crop_per_kg",
    "fish": "fish_per_kg",
    "feed": "feed_per_kg",
    "supplement": "supplement_per_kg",
    "seed": "seed_per_thousand",
}
_SHOWN_DIFFERENCES: Final = 12
_PLACEMENT: Final = "placement"


# --- compare -----------------------------------------------------------------------------------------


def add_compare(commands: Any) -> None:
    """Add the command to the parsers of the command line."""
    parser = commands.add_parser(
        "compare",
        help="hold up to three changed farms against one",
        description="Compares a farm with one to three others that were made of it: the balance, harvest, "
        "occupancy, feed, fullest tank, cost, and what differs. Things are told apart by their names. A "
        "price that is not given leaves a sum unknown.",
    )
    add_file(parser)
    parser.add_argument("others", nargs="*", type=Path, metavar="OTHER", help="a farm made of it")
    parser.add_argument(
        "--lose",
        action="append",
        default=[],
        metavar="GROUP@DATE",
        help="a group of fish that is dead or gone from a day on, as one more farm beside it; says which "
        "plantings to hold back",
    )
    parser.add_argument(
        "--price",
        nargs="+",
        default=[],
        metavar="WHAT:KEY=MONEY",
        help="such as crop:basil=9 feed:KEY=1.8 seed:basil=3; a kg, and a thousand seeds",
    )
    parser.add_argument("--json", action="store_true", help="as JSON (docs/advice.md)")
    add_why_option(parser)
    parser.set_defaults(run=run_compare)


def run_compare(parsed: argparse.Namespace) -> int:
    """Print the farms beside each other."""
    from planner.planning.scenarios.compare import compare, plantings_to_hold
    from planner.planning.scenarios.plain import FORMAT, comparison_data
    from planner.planning.scenarios.sets import MOST, scenario_of

    many = len(parsed.others) + len(parsed.lose)
    if not 1 <= many <= MOST:
        raise WrongUsageError(
            f"at least 1 and at most {MOST} farms are held against one, by OTHER or --lose, "
            f"but {many} were named."
        )
    prices = _prices(parsed.price)
    means = Means()
    base = means.read(parsed.file).farm
    losses = [_loss(word, base) for word in parsed.lose]
    scenarios = [scenario_of(str(path), base, means.read(path).farm) for path in parsed.others]
    scenarios += [scenario for scenario, _ in losses]
    if parsed.why is not None:
        from planner.planning.why_scenarios import scenario_whys

        whys = scenario_whys(base, scenarios, means.forecaster, prices=prices)
        print_answers(whys, parsed.why, means, as_json=parsed.json)
        return _GOOD
    held = {one.name: plantings_to_hold(base, one, means.forecaster, loop=loop) for one, loop in losses}
    found = compare(base, scenarios, means.forecaster, prices=prices)
    ruler = means.forecaster.preview(base).ruler
    if parsed.json:
        data = comparison_data(found, ruler)
        for column in data["columns"]:
            column["hold_back"] = list(held.get(column["name"], ()))
        print_json({"format": FORMAT, "farm": base.settings.name, **data})
    else:
        print("\n".join(_comparison_lines(found, ruler)))
        for name, codes in held.items():
            print(f"{name}: hold back {', '.join(codes) or 'no planting'}")
    return _GOOD


def _loss(word: str, farm: Farm) -> tuple[Scenario, Id]:
    """Return the farm without a group of fish from a day on, and the loop that loses its feed."""
    from planner.farm.farm import by_id
    from planner.planning.scenarios.sets import Scenario, group_lost

    name, _, day = word.rpartition("@")
    try:
        on = date.fromisoformat(day)
    except ValueError:
        raise WrongUsageError(
            f'--lose "{word}" cannot be read; say GROUP@DATE with a date such as 2027-06-01.'
        ) from None
    groups = {group.name: group for group in farm.fish_groups}
    if name not in groups:
        raise WrongUsageError(
            f'--lose "{word}": no group is called "{name}". Groups are: {", ".join(groups)}.'
        )
    if not max(groups[name].stocked_on, farm.settings.plan_from) <= on < farm.plan_until:
        raise WrongUsageError(
            f'--lose "{word}": the day must lie within the plan and not before {groups[name].stocked_on}, '
            "when the group is stocked."
        )
    change_set = group_lost(farm, groups[name].id, on=on)
    loop = by_id(farm.tanks)[groups[name].tank].loop
    return Scenario(name=change_set.title, change_sets=(change_set,)), loop


def _prices(words: Sequence[str]) -> Prices:
    from planner.planning.scenarios.compare import Prices

    found: dict[str, dict[str, float]] = {name: {} for name in _PRICED.values()}
    for word in words:
        what, _, rest = word.partition(":")
        key, _, money = rest.rpartition("=")
        if what not in _PRICED or not key:
            raise WrongUsageError(
                f'--price "{word}" is not of the form WHAT:KEY=MONEY, such as crop:basil=9.'
            )
        try:
            value = float(money)
        except ValueError:
            raise WrongUsageError(f'--price "{word}": "{money}" is not an amount of money.') from None
        if not 0.0 <= value < float("inf"):
            raise WrongUsageError(f'--price "{word}": a price is a number of 0 or more.')
        found[_PRICED[what]][key] = value
    return Prices(**found)


def _comparison_lines(found: Comparison, ruler: Ruler) -> Iterator[str]:
    for number, column in enumerate(found.columns):
        yield f"{column.name}"
        yield from _column_lines(column, ruler)
        if number:
            yield from _differences_lines(found.differences(number))


def _differences_lines(differences: Sequence[Difference]) -> Iterator[str]:
    """Yield what differs; places that moved along are only counted."""
    told = [one for one in differences if one.kind != _PLACEMENT]
    for one in told[:_SHOWN_DIFFERENCES]:
        yield f"  {_difference_words(one)}"
    if len(told) > _SHOWN_DIFFERENCES:
        yield f"  and {len(told) - _SHOWN_DIFFERENCES} more differences"
    moved = len(differences) - len(told)
    if moved:
        yield f"  {moved} run{'' if moved == 1 else 's'} of places differ"
    if not differences:
        yield "  no difference"


def _column_lines(column: Column, ruler: Ruler) -> Iterator[str]:
    worst = column.worst
    if worst is not None and worst.ratio is not None:
        where = f"{worst.element} {worst.ratio:.2f} of demand in {ruler.week_name(worst.week)}"
        yield f"  least supply: {where}; weeks short: {column.weeks_short}"
    mean, peak = column.occupancy_share
    yield f"  beds planted: {mean:.0%} on average, {peak:.0%} at most"
    if column.unplaced_batches:
        yield f"  batches without places: {column.unplaced_batches}"
    yield f"  feed: {column.feed_kg:.1f} kg, fish harvested: {column.fish_kg:.1f} kg"
    if column.peak_kg_per_m3 is not None:
        yield f"  fullest tank: {column.peak_kg_per_m3:.1f} of {column.density_limit_kg_per_m3:.0f} kg/m³"
    harvest = [f"{key} {grams / _G_PER_KG:.1f} kg" for key, grams in column.harvest_g if grams > 0.0]
    yield f"  harvest: {', '.join(harvest) or 'none'}"
    yield f"  cost: {_money_words(column.cost)}; income: {_money_words(column.income)}"


def _money_words(money: Money) -> str:
    if money.total is not None:
        return f"{money.total:.2f}"
    missing = len(money.blank)
    return f"unknown, {missing} price{'' if missing == 1 else 's'} not given ({money.known:.2f} known)"


def _difference_words(one: Difference) -> str:
    changed = ", ".join(f"{name} {before or '–'} to {after or '–'}" for name, before, after in one.fields)
    return f"{one.where}: {one.what}{f' ({changed})' if changed else ''}"


# --- expand ------------------------------------------------------------------------------------------

_ENTERED: Final = (
    ("--depth", "depth_cm", "CM", "depth of water or gravel"),
    ("--head", "head_m", "M", "height the water is lifted to the new beds"),
    ("--friction", "friction_m", "M", "head lost in pipes (default: a stated allowance)"),
    ("--oxygen", "oxygen_g_per_h", "G", "oxygen that air pumps give the loop, g an hour"),
    ("--light", "light_mol_per_m2_d", "MOL", "light that reaches the new beds, mol/m²/d"),
    ("--lamps", "lamps_w", "W", "power of lamps to be added, 0 for none"),
    ("--pump-power", "pump_w", "W", "power of pumps to be added, 0 for none"),
    ("--spare-power", "spare_w", "W", "power that the circuit has to spare"),
    ("--load", "load_allowed_kg_per_m2", "KG", "load that floor and frame may carry, kg/m²"),
    ("--dry-load", "dry_kg_per_m2", "KG", "load of frame, liner and rafts, kg/m²"),
)


def add_expand(commands: Any) -> None:
    """Add the command to the parsers of the command line."""
    parser = commands.add_parser(
        "expand",
        help="say whether a loop can carry more beds",
        description="Answers in four verdicts: nutrients, flow at the new head, filter and oxygen, light "
        "with power and structure. Each is yes, yes with, no, or unknown where figures were not entered.",
    )
    add_file(parser)
    parser.add_argument("--area", type=number_of, required=True, metavar="M2", help="area to be added")
    parser.add_argument("--loop", metavar="NAME", help="which loop of water (default: the first)")
    parser.add_argument(
        "--bed", choices=("raft", "media"), default="raft", help="kind of bed (default: raft)"
    )
    parser.add_argument("--fruiting", action="store_true", help="for fruiting crops, not leafy ones")
    parser.add_argument(
        "--crop", metavar="KEY", help="the crop to be grown: its group and the light it wants"
    )
    parser.add_argument("--pump", metavar="CURVE", help='points of its curve, "0:3000,1:2400": m, L/h')
    for option, name, unit, words in _ENTERED:
        parser.add_argument(option, dest=name, type=number_of, metavar=unit, help=words)
    parser.add_argument("--json", action="store_true", help="as JSON (docs/advice.md)")
    add_why_option(parser)
    parser.set_defaults(run=run_expand)


def run_expand(parsed: argparse.Namespace) -> int:
    """Print the four verdicts."""
    from planner.planning.expansion.ask import expansion
    from planner.planning.expansion.plain import FORMAT, expansion_data

    means = Means()
    farm = means.read(parsed.file).farm
    loop = loop_named(farm, parsed.loop)
    catalogue = means.forecaster.catalogue_for(farm)
    question = _question(parsed, loop, catalogue)
    found = expansion(farm, means.forecaster, question)
    if parsed.why is not None:
        from planner.planning.why_expansion import expansion_whys

        whys = expansion_whys(farm, means.forecaster, question, found)
        print_answers(whys, parsed.why, means, as_json=parsed.json)
    elif parsed.json:
        print_json({"format": FORMAT, "farm": farm.settings.name, **expansion_data(found)})
    else:
        print("\n".join(_expansion_lines(found, catalogue)))
    return _GOOD


def _question(parsed: argparse.Namespace, loop: Any, catalogue: Catalogue) -> Question:
    from planner.farm.species import BedKind, CropGroup
    from planner.planning.expansion.verdicts import Question

    group, wanted = CropGroup.FRUITING if parsed.fruiting else CropGroup.LEAFY, None
    if parsed.crop is not None:
        if parsed.crop not in catalogue.crops:
            raise WrongUsageError(f'no crop is called "{parsed.crop}" in the catalogue.')
        crop = catalogue.crops[parsed.crop]
        group, wanted = crop.group, crop.light_target_mol_per_m2_d
    return Question(
        loop=loop,
        area_m2=parsed.area,
        kind=BedKind(parsed.bed),
        group=group,
        pump=None if parsed.pump is None else _curve(parsed.pump),
        light_wanted_mol_per_m2_d=wanted,
        **{name: getattr(parsed, name) for _, name, _, _ in _ENTERED},
    )


def _curve(words: str) -> PumpCurve:
    from planner.planning.expansion.pump import pump_curve

    points = []
    for word in words.split(","):
        head, _, flow = word.partition(":")
        try:
            points.append((float(head), float(flow)))
        except ValueError:
            raise WrongUsageError(
                f'--pump: "{word}" is not a point such as 1:2400, head in m and flow in L/h.'
            ) from None
    return pump_curve(tuple(points))


def _expansion_lines(found: Expansion, catalogue: Catalogue) -> Iterator[str]:
    limiting = found.limiting
    by = "" if limiting is None or limiting.limit is None else f", because of {limiting.matter.value}"
    yield f"Altogether: {found.answer.value}{by}"
    for verdict in found.verdicts:
        limits = ", ".join(limit.value for limit in verdict.limits)
        yield f"{verdict.matter.value}: {verdict.answer.value}{f' ({limits})' if limits else ''}"
        for name, value in verdict.numbers:
            yield f"  {name}: {'not entered' if value is None else f'{value:,.4g}'}"
    yield "largest extra area the feed carries, by month (with a margin to at most):"
    for one in found.area_by_month:
        yield f"  {one.year}-{one.month:02d}: {one.cautious_m2:.1f} to {one.most_m2:.1f} m²"
    for key in found.cautions:
        yield f"! {catalogue.cautions[key].text}"
