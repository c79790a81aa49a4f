"""Viscosity at temperature: Walther's rule (ASTM D341) solved anew, one published oil and two from memory.

Random pairs of points from a fixed seed go through core/examples/reference_joints.rs. The reference
solves the rule's two equations as a linear system and works in logarithms of base e. The last two oils
were measured at three temperatures: the middle one is asked for from the outer two.
Ends with 1 at any difference.
"""

import math
import pathlib
import random
import subprocess
import sys

import numpy

ROOT = pathlib.Path(__file__).resolve().parents[2]
SEED = 341
PAIRS = 500
TOLERANCE = 1e-9
# (T in °C, mm²/s) three times; what the rule may miss a measured oil by, and where it stands.
OILS = [
    # A gear oil worked through with ASTM D341 (published): the middle to its last digit.
    ("gear oil", (40.0, 404.0), (60.0, 132.126), (100.0, 28.0), 1e-5),
    # Synthetic paraffinic oil, NASA; Hamrock, Fundamentals of Fluid Film Lubrication (from memory).
    ("paraffinic oil", (37.8, 414.0), (98.9, 34.3), (148.9, 10.9), 0.01),
    # Super-refined naphthenic mineral oil, likewise.
    ("naphthenic oil", (37.8, 68.1), (98.9, 6.86), (148.9, 2.74), 0.05),
]


def reference(one, other, at):
    rows = [[1.0, -math.log(t + 273.15)] for t, _ in (one, other)]
    sides = [math.log(math.log(v + 0.7)) for _, v in (one, other)]
    intercept, slope = numpy.linalg.solve(rows, sides)
    return math.exp(math.exp(intercept - slope * math.log(at + 273.15))) - 0.7


def pairs():
    generator = random.Random(SEED)
    while True:
        cold, warm = sorted(generator.uniform(-20.0, 150.0) for _ in range(2))
        thin = 10 ** generator.uniform(0.31, 3.0)
        thick = thin * 10 ** generator.uniform(0.05, 1.5)
        at = generator.uniform(cold, warm)
        if warm - cold > 5.0 and thick < 20_000.0:
            points = [(cold, thick), (warm, thin)]
            generator.shuffle(points)
            yield *points, at


def ask(questions):
    lines = "".join(f"viscosity {a[0]!r} {a[1]!r} {b[0]!r} {b[1]!r} {at!r}\n" for a, b, at in questions)
    run = subprocess.run(
        ["cargo", "run", "--quiet", "-p", "pitleaf-core", "--example", "reference_joints"],
        cwd=ROOT, input=lines, capture_output=True, text=True, check=True,
    )
    return run.stdout.splitlines()


def main():
    source = pairs()
    questions = [next(source) for _ in range(PAIRS)]
    questions += [(cold, warm, middle[0]) for _, cold, middle, warm, _ in OILS]
    answers = ask(questions)
    assert len(answers) == len(questions), f"{len(questions)} questions, {len(answers)} answers"
    failed, worst = 0, 0.0
    for question, answer in zip(questions[:PAIRS], answers):
        expected = reference(*question)
        off = float("inf") if answer.startswith("refused") else abs(float(answer) / expected - 1)
        if off > TOLERANCE:
            failed += 1
            print(f"{question}: got {answer}, wanted {expected}", file=sys.stderr)
        else:
            worst = max(worst, off)
    print(f"viscosity: {PAIRS} pairs of points, {failed} differ, worst of the rest {worst:.1e}")
    for (name, _, middle, _, room), answer in zip(OILS, answers[PAIRS:]):
        off = abs(float(answer) / middle[1] - 1)
        print(f"viscosity: {name} at {middle[0]} °C: {float(answer):.4g}, given as {middle[1]}, off {off:.2%}")
        failed += off > room
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
