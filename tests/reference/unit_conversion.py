"""Unit conversion against pint, in whole fractions: every digit must agree.

Asks core/examples/reference_quantity.rs. Every pair of units of a dimension once, then random pairs
and figures. Ends with 1 at any difference.
"""

import random
import subprocess
import sys
from fractions import Fraction
from math import ceil, floor
from pathlib import Path

import pint

SEED = 811
RANDOM = 4_000
PLACES = 9
MOST_PLACES = 12

# Per dimension: the range taken, in the first unit; and each symbol with pint's name for it.
# In pint a mil is an angle: the thousandth of an inch is its thou.
DIMENSIONS = [
    (-99_000, 99_000, {"mm": "millimeter", "in": "inch", "thou": "thou", "µm": "micrometer",
                       "cm": "centimeter", "m": "meter", "ft": "foot"}),
    (0, 9_900, {"N·m": "newton * meter", "lbf·ft": "force_pound * foot", "lbf·in": "force_pound * inch",
                "kgf·m": "force_kilogram * meter", "kgf·cm": "force_kilogram * centimeter"}),
    (0, 9_900, {"bar": "bar", "psi": "psi", "kPa": "kilopascal", "kgf/cm²": "force_kilogram / centimeter ** 2",
                "atm": "atm", "inHg": "inch_Hg", "MPa": "megapascal", "hPa": "hectopascal", "Pa": "pascal"}),
    (0, 990_000, {"mL": "milliliter", "in³": "inch ** 3", "L": "liter", "US fl oz": "fluid_ounce", "US qt": "quart"}),
    (0, 990_000, {"g": "gram", "oz": "ounce", "kg": "kilogram", "lb": "pound"}),
    (0, 990_000, {"N": "newton", "lbf": "force_pound", "kgf": "force_kilogram", "kN": "kilonewton"}),
    (0, 9_900, {"kW": "kilowatt", "hp": "horsepower", "hp (metric)": "metric_horsepower", "W": "watt"}),
    (-272, 2_900, {"°C": "degree_Celsius", "°F": "degree_Fahrenheit", "K": "kelvin"}),
    (-3_500, 3_500, {"°": "degree", "′": "arcminute", "turn": "turn"}),
    (0, 99_000, {"L/min": "liter / minute", "US gal/min": "gallon / minute", "mL/s": "milliliter / second",
                 "mL/min": "milliliter / minute"}),
    (0, 990_000, {"g·mm": "gram * millimeter", "oz·in": "ounce * inch", "g·in": "gram * inch"}),
]


def inputs(registry):
    """(text, symbol, symbol, figure in the second unit as a fraction)"""
    rng = random.Random(SEED)
    pairs = [(low, high, units, one, other)
             for low, high, units in DIMENSIONS for one in units for other in units]
    for number in range(len(pairs) + RANDOM):
        low, high, units, one, other = pairs[number] if number < len(pairs) else rng.choice(pairs)
        # Small figures as often as large ones.
        value = rng.uniform(low, high) * 10 ** rng.uniform(-6, 0)
        first = registry.Unit(next(iter(units.values())))
        within = registry.Quantity(Fraction(value), first).to(units[one]).magnitude
        typed = round(within, rng.randint(0, 3))
        if typed == 0:
            typed = Fraction(1)
        yield decimal(typed, 3), one, other, registry.Quantity(typed, units[one]).to(units[other]).magnitude


def decimal(fraction, places):
    """A fraction that ends within so many decimals, as text."""
    scaled = abs(fraction) * 10**places
    assert scaled.denominator == 1, f"{fraction} has more than {places} decimals"
    digits = str(scaled.numerator).rjust(places + 1, "0")
    return ("−" if fraction < 0 and scaled else "") + digits[:-places] + "." + digits[-places:]


def wanted(figure):
    scaled = figure * 10**PLACES
    rounded = [Fraction(whole(scaled), 10**PLACES) for whole in (round, floor, ceil)]
    ends = (figure * 10**MOST_PLACES).denominator == 1
    exact = decimal(figure, MOST_PLACES).rstrip("0").rstrip(".") if ends else "-"
    return [exact] + [decimal(fraction, PLACES) for fraction in rounded]


def main():
    registry = pint.UnitRegistry(non_int_type=Fraction)
    asked = list(inputs(registry))
    root = Path(__file__).resolve().parents[2]
    run = subprocess.run(
        ["cargo", "run", "--quiet", "-p", "pitleaf-core", "--example", "reference_quantity"],
        input="".join(f"{text}\t{one}\t{other}\n" for text, one, other, _ in asked),
        stdout=subprocess.PIPE, text=True, encoding="utf-8", check=True, cwd=root)
    answers = [line.split("\t") for line in run.stdout.splitlines()]
    if len(answers) != len(asked):
        sys.exit(f"unit conversion: {len(answers)} answers to {len(asked)} questions")
    wrong = [(text, one, other, got, wanted(figure))
             for (text, one, other, figure), got in zip(asked, answers) if got != wanted(figure)]
    for text, one, other, got, want in wrong[:10]:
        print(f"{text} {one} in {other}: got {got}, pint {want}", file=sys.stderr)
    print(f"unit conversion: {len(asked)} inputs against pint {pint.__version__}, {len(wrong)} differ")
    sys.exit(bool(wrong))


main()
