"""Open areas and opening angles of random ports against Shapely's polygons.

Run from the repository's root, after `pip install -r tests/reference/requirements.txt`:

    python3 tests/reference/port_areas.py

Builds and asks `core/examples/reference_port_areas.rs`. Ends with 1 if an area differs by more than 1e-6 of
the port's, or an opening by more than 0.01 degrees.
"""

import json
import subprocess
import sys

import numpy as np
import shapely
from chambers import Engine

ENGINES = 210
TIMED = 40
ANGLES = 9
AREA_TOLERANCE = 1e-6
ANGLE_TOLERANCE = 0.01
FINE, COARSE = 8_000, 1_000


def random_case(rng):
    while True:
        e = rng.uniform(8, 20)
        k = rng.uniform(5, 10)
        r, a = e * k, rng.choice([0.0, rng.uniform(0, 4)])
        if k < 9 and a >= 0.9 * (r - 3 * e) ** 2 / (9 * e - r):
            continue
        inset = rng.uniform(1, 6)
        oil = 0.9 * (r - 2 * e)
        centre = rng.uniform(0.55 * oil, r + e) * np.exp(1j * rng.uniform(0, 2 * np.pi))
        count = rng.integers(3, 40)
        turns = np.sort(rng.uniform(0, 2 * np.pi, count))
        if np.max(np.diff(np.append(turns, turns[0] + 2 * np.pi))) > 0.9 * np.pi:
            continue
        size = rng.uniform(5, 30)
        points = centre + size * rng.uniform(0.5, 1, count) * np.exp(1j * turns)
        return {
            "engine": [e, r, float(a)],
            "inset": inset,
            "side_seal": bool(rng.integers(2)),
            "outline": [[p.real, p.imag] for p in points],
            "angles": list(rng.uniform(0, 1080, ANGLES)),
        }


def engine_of(case, count):
    return Engine(*case["engine"], case["inset"] if case["side_seal"] else 0.0, count)


def worst_area(case, answer, port):
    engine = engine_of(case, FINE)
    inside = port.intersection(engine.whole_bore()).area
    worst = abs(answer["area"] - inside)
    for theta, got in zip(case["angles"], answer["open"]):
        for k in range(3):
            wanted = engine.open_area(port, k, np.radians(theta))
            worst = max(worst, abs(got[k] - wanted))
    return worst / inside


def edges_by_bisection(case, port):
    """The shaft angles at which the port opens or closes to the first chamber, by Shapely alone."""
    coarse, fine = engine_of(case, COARSE), engine_of(case, FINE)
    grid = np.arange(0.0, 1080.5, 1.0)
    states = [coarse.is_open(port, 0, np.radians(theta)) for theta in grid]
    found = []
    for low, high, before, after in zip(grid, grid[1:], states, states[1:]):
        if before == after:
            continue
        while high - low > 1e-4:
            middle = (low + high) / 2
            if fine.is_open(port, 0, np.radians(middle)) == before:
                low = middle
            else:
                high = middle
        found.append((low + high) / 2)
    return np.array(found)


def main():
    rng = np.random.default_rng(654)
    cases, ports = [], []
    while len(cases) < ENGINES:
        case = random_case(rng)
        port = shapely.Polygon(case["outline"])
        inside = port.intersection(engine_of(case, COARSE).whole_bore()).area
        # What barely reaches into the bore has no area to compare a millionth of.
        if port.is_valid and inside > 0.1 * port.area:
            cases.append(case)
            ports.append(port)
    command = ["cargo", "run", "--quiet", "-p", "pitleaf-core", "--example", "reference_port_areas"]
    asked = "\n".join(map(json.dumps, cases))
    answers = subprocess.run(command, input=asked, stdout=subprocess.PIPE, text=True, check=True)
    answers = [json.loads(line) for line in answers.stdout.splitlines()]
    if len(answers) != ENGINES:
        sys.exit(f"{len(answers)} answers to {ENGINES} cases")
    worst_of_all, failed = 0.0, 0
    for number, (case, answer, port) in enumerate(zip(cases, answers, ports)):
        worst = worst_area(case, answer, port)
        worst_of_all = max(worst_of_all, worst)
        if not worst <= AREA_TOLERANCE:
            failed += 1
            print(f"case {number}: area differs by {worst:.2e} of the port's: {json.dumps(case)}")
    print(f"{ENGINES} engines, {ENGINES * ANGLES * 3} areas: worst {worst_of_all:.2e} of the port's")
    worst_of_all, edges = 0.0, 0
    for number, (case, answer, port) in enumerate(zip(cases[:TIMED], answers, ports)):
        wanted = edges_by_bisection(case, port)
        got = np.sort(np.array(answer["openings"]).reshape(-1) % 1080)
        if len(got) != len(wanted):
            failed += 1
            print(f"case {number}: openings at {got}, by bisection at {wanted}: {json.dumps(case)}")
            continue
        worst = np.max(np.abs(got - wanted), initial=0.0)
        worst_of_all, edges = max(worst_of_all, worst), edges + len(got)
        if not worst <= ANGLE_TOLERANCE:
            failed += 1
            print(f"case {number}: opens and closes at {got}, by bisection at {wanted}: {json.dumps(case)}")
    print(f"{TIMED} engines, {edges} openings and closings: worst {worst_of_all:.2e} degrees")
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
