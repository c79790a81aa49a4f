"""The assignment of seals to slots against scipy.optimize.linear_sum_assignment.

Random tasks up to 60 x 60 from a fixed seed go through core/examples/assign_seals.rs; scipy solves the
same tasks from a cost written anew here. The three aims are one number, small enough (below 2^53) for
scipy's floats to add exactly. Run from anywhere: python tests/reference/assignment.py
"""

import pathlib
import subprocess
import sys

import numpy
from scipy.optimize import linear_sum_assignment

ROOT = pathlib.Path(__file__).resolve().parents[2]
TASKS = 300
LARGEST = 60


def random_tasks(generator):
    for number in range(TASKS):
        # The last ones are full size; the others any size and shape.
        full = number >= TASKS - 20
        seals, slots = (LARGEST, LARGEST) if full else generator.integers(1, LARGEST + 1, 2)
        lower = int(generator.integers(20, 80))
        upper = lower + int(generator.integers(1, 80))
        aim = int(generator.integers(lower, upper + 1))
        spread = int(generator.integers(5, 400))
        shift = int(generator.integers(-100, 200))
        yield (
            (lower, upper, aim),
            generator.integers(42_000, 42_000 + spread, seals),
            generator.integers(42_000 + shift, 42_000 + shift + spread, slots),
        )


def reference(edges, seals, slots):
    lower, upper, aim = edges
    gap = slots[None, :].astype(numpy.int64) - seals[:, None].astype(numpy.int64)
    unfit = gap > upper
    metal = numpy.where(gap < lower, aim - gap, 0)
    squares = numpy.where(unfit | (gap < lower), 0, (gap - aim) ** 2)
    pairs = min(len(seals), len(slots))
    metal_unit = pairs * int(squares.max()) + 1
    unfit_unit = metal_unit * (pairs * int(metal.max()) + 1)
    assert unfit_unit * (pairs + 1) < 2**53, "the weights are no longer exact"
    cost = unfit * unfit_unit + metal * metal_unit + squares
    rows, columns = linear_sum_assignment(cost.astype(numpy.float64))
    return tuple(int(part[rows, columns].sum()) for part in (unfit, metal, squares))


def main():
    tasks = list(random_tasks(numpy.random.default_rng(20_240_229)))
    lines = [
        " | ".join(" ".join(str(int(n)) for n in part) for part in task) for task in tasks
    ]
    command = ["cargo", "run", "--quiet", "--package", "pitleaf-core", "--example", "assign_seals"]
    run = subprocess.run(
        command, cwd=ROOT, input="\n".join(lines) + "\n", capture_output=True, text=True, check=True
    )
    answers = [tuple(int(n) for n in line.split()) for line in run.stdout.splitlines()]
    assert len(answers) == len(tasks), f"{len(answers)} answers to {len(tasks)} tasks"
    wrong = 0
    for task, ours in zip(tasks, answers):
        theirs = reference(*task)
        if ours != theirs:
            wrong += 1
            print(f"{len(task[1])} x {len(task[2])}, limit {task[0]}: ours {ours}, scipy {theirs}")
    with_unfit = sum(answer[0] > 0 for answer in answers)
    with_metal = sum(answer[1] > 0 for answer in answers)
    print(f"{TASKS} tasks, {wrong} differ; {with_unfit} leave something unfit, {with_metal} remove metal")
    sys.exit(wrong > 0)


if __name__ == "__main__":
    main()
