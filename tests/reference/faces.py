"""faces against numpy and scipy: minimum zone by linear programming, circles and models by least squares,
uncertainties by Monte Carlo.

Asks core/examples/reference_faces.rs with random faces, bores, turns and readings of fixed seed.
Ends with 1 at any difference.
"""

import subprocess
import sys
from pathlib import Path

import numpy as np
from scipy.optimize import least_squares as nonlinear, linprog

SEED = 20_654
AGREE = 1e-9  # mm
DRAWS = 100_000
ONE_PERCENT = 0.01  # 100,000 draws give a standard deviation to 0.22 %


def ask(lines):
    """The calculators' answers, one row a line."""
    command = ["cargo", "run", "--quiet", "-p", "pitleaf-core", "--example", "reference_faces"]
    root = Path(__file__).resolve().parents[2]
    run = subprocess.run(
        command, input="\n".join(lines), stdout=subprocess.PIPE, text=True, encoding="utf-8", check=True, cwd=root)
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
    squares = max(abs(answer[2] - least_squares(points)) for answer, points in zip(answers, faces))
    yield "minimum zone against linprog, 1,000 faces", zone, AGREE, "mm"
    yield "least squares against lstsq, 1,000 faces", squares, AGREE, "mm"


def check_circle(random):
    """Bores of 15 to 60 mm radius, up to 0.1 mm out of round, off the origin."""
    bores = []
    for _ in range(1000):
        n = int(random.integers(6, 40))
        angle = np.sort(random.uniform(0, 2 * np.pi, n))
        lobes, size = int(random.integers(2, 6)), random.uniform(0, 0.05)
        radius = random.uniform(15, 60) + size * np.cos(lobes * angle) + random.normal(0, 0.002, n)
        centre = random.uniform(-20, 20, 2)
        bores.append(np.column_stack([radius * np.cos(angle), radius * np.sin(angle)]) + centre)
    worst = 0
    for points, answer in zip(bores, ask([line("circle", points) for points in bores]), strict=True):
        def off(circle, points=points):
            return np.hypot(*(points - circle[:2]).T) - circle[2]

        start = [*points.mean(axis=0), np.ptp(points, axis=0).mean() / 2]
        found = nonlinear(off, start, method="lm", xtol=1e-15, ftol=1e-15, gtol=1e-15)
        theirs = [*found.x, np.ptp(off(found.x))]
        worst = max(worst, np.abs(np.subtract(answer, theirs)).max())
    # scipy itself settles to about 1e-8: at the bottom the sum of squares no longer tells steps apart.
    yield "circle and roundness against scipy, 1,000 bores", worst, 1e-7, "mm"


def check_runout(random):
    """The first harmonic against numpy's Fourier transform, at 8 and 12 places."""
    worst = 0
    turns = [random.normal(0, 0.02, int(random.choice([8, 12]))) for _ in range(1000)]
    answers = ask([line("runout", [0.001, *turn]) for turn in turns])
    for turn, answer in zip(turns, answers, strict=True):
        harmonics = np.fft.rfft(turn)
        first = 2 * np.conj(harmonics[1]) / len(turn)
        harmonics[:2] = 0
        rest = np.ptp(np.fft.irfft(harmonics, len(turn)))
        around = np.angle(np.exp(1j * (answer[2] - np.angle(first))))
        worst = max(worst, abs(answer[0] - abs(first)), abs(around) * abs(first), abs(answer[3] - rest))
    yield "runout against a Fourier transform, 1,000 turns", worst, AGREE, "mm"


def check_step(random):
    """Step and bend told apart, against lstsq with the covariance of the textbook."""
    cases = []
    for _ in range(1000):
        angle = np.tile(np.arange(12) * np.pi / 6, 3)
        radius = np.repeat([70, 100, 120], 12) + random.uniform(-3, 3, 36)
        x, y = radius * np.cos(angle), radius * np.sin(angle)
        swept = np.repeat([1, 1, 0], 12)
        bend = random.normal(0, 0.02, 3)
        z = (bend[0] * x * x + bend[1] * x * y + bend[2] * y * y) / 1e4 - 0.03 * swept
        z += random.normal(0, 0.002, 36) + 1e-4 * x
        cases.append(np.column_stack([x, y, z, swept]))
    answers = ask([line("step", [0, *case.ravel()]) for case in cases])
    off = {"step": 0, "doubt": 0, "warp": 0, "rest": 0}
    for case, answer in zip(cases, answers, strict=True):
        x, y, z, swept = case.T
        model = np.column_stack([np.ones(36), x, y, x * x, x * y, y * y, swept])
        model /= np.abs(model).max(axis=0)
        found, squares, *_ = np.linalg.lstsq(model, z, rcond=None)
        rest = np.sqrt(squares[0] / (36 - 7))
        doubt = rest * np.sqrt(np.linalg.inv(model.T @ model)[6, 6])
        bend = np.column_stack([x, y, model[:, 3:6] @ found[3:6]])
        theirs = [-found[6], doubt, minimum_zone(bend), rest]
        for key, mine, other in zip(off, answer, theirs):
            off[key] = max(off[key], abs(mine - other))
    for key, worst in off.items():
        yield f"step wear told from warp, {key}, against lstsq, 1,000 faces", worst, AGREE, "mm"


def spread(mine, draws):
    """How far an uncertainty lies from the standard deviation of the draws, as a part of it."""
    return abs(mine / np.std(draws, ddof=1) - 1)


def check_uncertainty(random):
    """Uncertainties against 100,000 draws of the readings behind them."""
    three_by_three = np.array([0, 4, -2, 6, 10, 3, -1, 5, 1]) / 1000
    grid = np.column_stack([np.tile([0, 50, 100], 3), np.repeat([0, 50, 100], 3), three_by_three])
    triangle = np.array([[0, 0, 0], [100, 0, 0], [50, 86.60254, 0], [40, 20, 0.02]])
    for name, points in [("3 by 3", grid), ("triangle", triangle)]:
        mine = ask([line("flatness", points)])[0]
        doubt = 2e-5
        draws = np.tile(points, (DRAWS, 1, 1))
        draws[:, :, 2] += random.normal(0, doubt, (DRAWS, len(points)))
        drawn = np.array(ask([line("flatness", draw) for draw in draws]))
        for at, method in [(0, "minimum zone"), (2, "least squares")]:
            yield f"uncertainty of {method}, {name}", spread(mine[at + 1] * doubt, drawn[:, at]), ONE_PERCENT, ""

    bore_scatter, bore_gauge, journal_scatter, journal_gauge = 0.002, 0.003, 0.001, 0.002
    doubts = [bore_scatter, bore_gauge, journal_scatter, journal_gauge]
    bore = np.array([[43.060, 43.062, 43.061], [43.090, 43.092, 43.091]])
    journal = np.array([[43.000, 43.001, 43.002], [42.999, 43.000, 43.001]])
    mine = ask([line("clearance", [*doubts, 3, *bore.ravel(), *journal.ravel()])])[0]
    bores = bore + random.normal(0, bore_scatter, (DRAWS, *bore.shape))
    bores += random.normal(0, bore_gauge, (DRAWS, 1, 1))
    journals = journal + random.normal(0, journal_scatter, (DRAWS, *journal.shape))
    journals += random.normal(0, journal_gauge, (DRAWS, 1, 1))
    room = bores.mean(axis=(1, 2)) - journals.mean(axis=(1, 2))
    single = bores[:, 0, 0] - journals[:, 0, 2]
    yield "uncertainty of a mean clearance", spread(mine[3], room), ONE_PERCENT, ""
    yield "uncertainty of the least clearance", spread(mine[1], single), ONE_PERCENT, ""
    # One place by itself: both parts of the doubt scatter.
    apart = bore + random.normal(0, np.hypot(bore_scatter, bore_gauge), (DRAWS, *bore.shape))
    taper = apart[:, 1].mean(axis=1) - apart[:, 0].mean(axis=1)
    yield "uncertainty of a taper", spread(mine[7], taper), ONE_PERCENT, ""

    parts = [(79.99, 0.001, 0.0025, 0), (80.01, 0.001, 0.0025, 0), (50.0, 0.002, 0.003, 1), (40.0, 0.002, 0.0025, 0)]
    mine = ask([line("stack", parts)])[0]
    errors = random.normal(0, 1, (2, DRAWS))
    drawn = sum(w + random.normal(0, s, DRAWS) + e * errors[g] for w, s, e, g in parts)
    yield "uncertainty of a stack from two micrometers", spread(mine[1], drawn), ONE_PERCENT, ""

    angle = np.arange(8) * np.pi / 4
    turn, doubt = 0.03 * np.cos(angle - 0.7), 0.001
    mine = ask([line("runout", [doubt, *turn])])[0]
    drawn = np.array(ask([line("runout", [doubt, *t]) for t in turn + random.normal(0, doubt, (DRAWS, 8))]))
    yield "uncertainty of an eccentricity", spread(mine[1], drawn[:, 0]), ONE_PERCENT, ""
    yield "uncertainty of its direction", spread(mine[1] / mine[0], drawn[:, 2]), ONE_PERCENT, ""


def main():
    random = np.random.default_rng(SEED)
    failed = False
    for check in [check_flatness, check_circle, check_runout, check_step, check_uncertainty]:
        for what, off, allowed, unit in check(random):
            failed |= not off <= allowed
            print(f"{'agrees' if off <= allowed else 'DISAGREES':9}  {what}: worst {off:.2e} of {allowed:.0e} {unit}")
    sys.exit(failed)


if __name__ == "__main__":
    main()
