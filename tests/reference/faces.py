"""faces against scipy: minimum zone by linear programming, least squares by lstsq, 1,000 random sets.

Run from the repository's root, with cargo on the path and requirements.txt installed:
    python tests/reference/faces.py
Ends with status 1 when anything disagrees.
"""

import subprocess
import sys

import numpy as np
from scipy.optimize import linprog

SEED = 20_654
AGREE = 1e-9  # mm


def ask(lines):
    """The calculators' answers, one row a line."""
    command = ["cargo", "run", "--quiet", "--release", "-p", "pitleaf-core", "--example", "faces_reference"]
    run = subprocess.run(command, input="\n".join(lines), capture_output=True, text=True, check=True)
    return [[float(number) for number in line.split()] for line in run.stdout.splitlines()]


def line(word, numbers):
    return word + " " + " ".join(repr(float(number)) for number in np.ravel(numbers))


def face(random):
    """A random face: scattered or on a grid, warped or coarse, tilted."""
    if random.random() < 0.5:
        n = int(random.integers(4, 61))
        x, y = random.uniform(-150, 150, (2, n))
    else:
        nx, ny = random.integers(2, 9, 2)
        x, y = (axis.ravel() for axis in np.meshgrid(np.arange(nx) * 25.0, np.arange(ny) * 25.0))
    kind = random.integers(0, 4)
    if kind == 0:
        z = random.normal(0, 0.01, x.size)
    elif kind == 1:  # whole micrometres in a narrow range: many ties
        z = random.integers(0, 4, x.size) * 0.001
    elif kind == 2:
        z = 0.02 * (x / 150) ** 2 - 0.03 * x * y / 150**2 + random.normal(0, 0.001, x.size)
    else:
        z = -0.04 * ((x / 150) ** 2 + (y / 150) ** 2)
    tilt = random.normal(0, 1e-3, 2)
    return np.column_stack([x, y, z + tilt[0] * x + tilt[1] * y + random.uniform(-1, 1)])


def minimum_zone(points):
    """min t with |z - ax - by - c| <= t/2, in micrometres and places of size 1 so that HiGHS is exact enough."""
    places = points[:, :2] - points[:, :2].mean(axis=0)
    places /= np.abs(places).max()
    columns = np.column_stack([places, np.ones(len(points))])
    heights = points[:, 2] * 1e3
    heights = heights - columns @ np.linalg.lstsq(columns, heights, rcond=None)[0]
    half = np.full((len(points), 1), -0.5)
    solved = linprog(
        [0, 0, 0, 1],
        A_ub=np.block([[-columns, half], [columns, half]]),
        b_ub=np.concatenate([-heights, heights]),
        bounds=[(None, None)] * 3 + [(0, None)],
        method="highs",
        options={"primal_feasibility_tolerance": 1e-10, "dual_feasibility_tolerance": 1e-10},
    )
    assert solved.success, solved.message
    return solved.fun / 1e3


def least_squares(points):
    columns = np.column_stack([points[:, :2], np.ones(len(points))])
    rest = points[:, 2] - columns @ np.linalg.lstsq(columns, points[:, 2], rcond=None)[0]
    return rest.max() - rest.min()


def check_flatness(random):
    faces = []
    while len(faces) < 1000:
        points = face(random)
        if np.linalg.svd(points[:, :2] - points[:, :2].mean(axis=0))[1][1] > 1:
            faces.append(points)
    answers = ask([line("flatness", points) for points in faces])
    assert len(answers) == 1000, "an answer for each face"
    zone = max(abs(answer[0] - minimum_zone(points)) for answer, points in zip(answers, faces))
    squares = max(abs(answer[1] - least_squares(points)) for answer, points in zip(answers, faces))
    yield "minimum zone against linprog, 1,000 faces", zone, AGREE, "mm"
    yield "least squares against lstsq, 1,000 faces", squares, AGREE, "mm"


def main():
    random = np.random.default_rng(SEED)
    failed = False
    for check in [check_flatness]:
        for what, off, allowed, unit in check(random):
            failed |= not off <= allowed
            print(f"{'agrees' if off <= allowed else 'DISAGREES':9}  {what}: worst {off:.2e} of {allowed:.0e} {unit}")
    sys.exit(failed)


if __name__ == "__main__":
    main()
