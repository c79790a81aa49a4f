"""Verdicts and probabilities of conformity against scipy.stats.

Asks core/examples/reference_conformity.rs with random limits, readings and uncertainties, every
fourth reading exactly on the edge of a guard band or one tenth of a nanometre past it.
The probability is a difference of normal distributions (JCGM 106:2012, clause 7) and may differ by
1e-12; the call follows from whole fractions (ISO 14253-1:2017, guard band 1.65 u) and may not differ.
Ends with 1 at any difference.
"""

import random
import subprocess
import sys
from fractions import Fraction
from pathlib import Path

import scipy
from scipy.stats import norm

SEED = 14253
COUNT = 4_000
TOLERANCE = 1e-12
TICK = Fraction(1, 10**7)


def text(value):
    if value is None:
        return "-"
    digits = str(abs(value) * 10**7).rjust(8, "0")
    return ("-" if value < 0 else "") + digits[:-7] + "." + digits[-7:]


def inputs():
    """(lower, upper, reading, uncertainty), in mm; None for an edge that isn't there."""
    rng = random.Random(SEED)
    while True:
        # Five decimals of uncertainty: a guard band of 1.65 u is then a whole number of ticks.
        uncertainty = Fraction(rng.randint(1, 10 ** rng.randint(1, 4)), 10**5)
        lower = Fraction(rng.randint(-10**6, 10**6), 10**4)
        upper = lower + Fraction(rng.randint(0, 10 ** rng.randint(1, 5)), 10**4)
        if rng.randrange(4) == 0:
            edge, out = rng.choice([(lower, -1), (upper, 1)])
            guard = Fraction(165, 100) * uncertainty * rng.choice([-1, 1])
            reading = edge + guard + rng.choice([0, out, -out]) * TICK
        else:
            middle, width = (lower + upper) / 2, upper - lower + 8 * uncertainty
            reading = round(middle + Fraction(rng.uniform(-0.7, 0.7)) * width, 5)
        if reading == 0 or lower == 0 or upper == 0:
            continue
        yield rng.choice([(lower, upper), (lower, upper), (lower, None), (None, upper)]) + (reading, uncertainty)


def wanted(lower, upper, reading, uncertainty):
    guard = Fraction(165, 100) * uncertainty
    inside = [edge for edge in (lower is not None and reading - lower, upper is not None and upper - reading)
              if edge is not False]
    if lower is not None and reading - lower < -guard:
        call = "below"
    elif upper is not None and upper - reading < -guard:
        call = "above"
    else:
        call = "meets" if all(distance >= guard for distance in inside) else "too close"
    below = 1 if upper is None else norm.cdf(float((upper - reading) / uncertainty))
    above = 0 if lower is None else norm.cdf(float((lower - reading) / uncertainty))
    return call, all(distance >= 0 for distance in inside), below - above


def main():
    draw = inputs()
    asked = [next(draw) for _ in range(COUNT)]
    root = Path(__file__).resolve().parents[2]
    run = subprocess.run(
        ["cargo", "run", "--quiet", "-p", "pitleaf-core", "--example", "reference_conformity"],
        input="".join("\t".join(map(text, question)) + "\n" for question in asked),
        stdout=subprocess.PIPE, text=True, encoding="utf-8", check=True, cwd=root)
    answers = [line.split("\t") for line in run.stdout.splitlines()]
    if len(answers) != len(asked):
        sys.exit(f"conformity: {len(answers)} answers to {len(asked)} questions")
    wrong, furthest, calls = 0, 0.0, {}
    for question, (call, within, probability) in zip(asked, answers):
        want = wanted(*question)
        calls[call] = calls.get(call, 0) + 1
        furthest = max(furthest, abs(float(probability) - want[2]))
        if (call, within == "true") != want[:2] or abs(float(probability) - want[2]) > TOLERANCE:
            wrong += 1
            if wrong <= 10:
                print(f"{[text(value) for value in question]}: got {call}, {within}, {probability}; wanted {want}",
                      file=sys.stderr)
    print(f"conformity: {len(asked)} inputs against scipy {scipy.__version__} ({calls}), "
          f"probabilities within {furthest:.1e}, {wrong} differ")
    sys.exit(bool(wrong))


main()
