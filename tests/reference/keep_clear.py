"""What random ports run into, and what they do to the corner seals, against Shapely's polygons.

Run from the repository's root, after `pip install -r tests/reference/requirements.txt`:

    python3 tests/reference/keep_clear.py

Builds and asks `core/examples/reference_keep_clear.rs`. The track is the line of the seals' middles, widened
by Shapely; depth and area are those of the port's overlap with it. A seal is a disc less the ports; it can
drop in where its middle lies outside the convex hull of what is left. Ends with 1 if anything differs by
more than the tolerances below.
"""

import json
import subprocess
import sys

import numpy as np
import shapely
from chambers import bore

ENGINES, PORTS = 25, 20
DEPTH_TOLERANCE = 2e-3
AREA_TOLERANCE = 2e-3  # mm² to a millimetre of the port's edge
SHARE_TOLERANCE = 2e-3
HULL_TOLERANCE = 0.1  # mm: nearer to the hull's edge either answer will do
SIDES = 3_000
STEPS = 720


def random_engine(rng):
    while True:
        e, k, a = rng.uniform(12, 18), rng.uniform(6, 8), rng.uniform(1, 4)
        r = e * k
        if a < 0.8 * (r - 3 * e) ** 2 / (9 * e - r):
            break
    # A corner seal that fits into the rotor of each of these.
    return {
        "engine": [e, r, a],
        "corner": [0.955 * r, 0.045 * r],
        "oil": 0.5 * (r - 2 * e),
        "land": rng.uniform(4, 8),
        "margin": rng.uniform(0, 2),
    }


def random_port(rng, case):
    """Mostly about the bands; some go round the shaft and everything near it."""
    e, r, a = case["engine"]
    count = int(rng.integers(3, 24))
    turns = np.sort(rng.uniform(0, 2 * np.pi, count))
    if np.max(np.diff(np.append(turns, turns[0] + 2 * np.pi))) > 0.9 * np.pi:
        return random_port(rng, case)
    if rng.integers(12) == 0:
        centre, size = 0, rng.uniform(0.5, 1.6) * r
    else:
        path = bore(e, case["corner"][0], 0.0, rng.uniform(0, 2 * np.pi))
        centre, size = path * rng.uniform(0.5, 1.2), rng.choice([2.0, 5.0, 12.0, 30.0])
    points = centre + size * rng.uniform(0.5, 1, count) * np.exp(1j * turns)
    return [[p.real, p.imag] for p in points]


def ring(points):
    return shapely.Polygon(np.column_stack([points.real, points.imag]))


class Plate:
    """The bands of an engine, and the corner seal at every step."""

    def __init__(self, case):
        e, r, a = case["engine"]
        distance, self.radius = case["corner"]
        turn = np.linspace(0, 2 * np.pi, SIDES, endpoint=False)
        self.inside = ring(bore(e, distance, 0.0, turn))
        self.path = self.inside.exterior
        self.track = self.path.buffer(self.radius, quad_segs=64)
        self.oil = e + case["oil"]
        self.beyond = {
            "land": ring(bore(e, r, a + case["land"] - case["margin"], turn)),
            "bore": ring(bore(e, r, a, turn)),
        }
        self.generating = e, distance

    def middle(self, alpha):
        e, distance = self.generating
        return shapely.Point(bore_point(e, distance, alpha))

    def off(self, points):
        """How far outside the path; below zero inside."""
        away = shapely.distance(points, self.path)
        return np.where(shapely.contains(self.inside, points), -away, away)


def bore_point(e, r, alpha):
    point = bore(e, r, 0.0, alpha)
    return point.real, point.imag


def on_edges(shape):
    return shapely.points(shapely.get_coordinates(shapely.segmentize(shape, 0.1)))


def wanted_of(plate, port):
    """Depth and area of each band's overlap."""
    wanted = {}
    into = port.intersection(plate.track)
    if into.area > 1e-6:
        off = plate.off(on_edges(into))
        wanted["track"] = [np.max(off) - np.min(off), into.area]
    deep = plate.oil - shapely.distance(port, shapely.Point(0, 0))
    if deep > 1e-6:
        circle = plate.oil * np.exp(1j * np.linspace(0, 2 * np.pi, SIDES, endpoint=False))
        wanted["oil"] = [deep, port.intersection(ring(circle)).area]
    for name, band in plate.beyond.items():
        rest = port.difference(band)
        if rest.area > 1e-6:
            wanted[name] = [np.max(shapely.distance(on_edges(rest), band)), rest.area]
    return wanted


def hang(plate, openings, alpha):
    """The share over the openings, and how far the seal's middle lies within what holds it."""
    middle = plate.middle(alpha)
    disc = middle.buffer(plate.radius, quad_segs=32)
    left = disc.difference(openings)
    share = 1 - left.area / disc.area
    if left.is_empty:
        return share, -plate.radius
    hull = left.convex_hull
    edge = hull.exterior if hull.geom_type == "Polygon" else hull
    away = shapely.distance(edge, middle)
    return share, away if hull.contains(middle) else -away


def compare(plate, case, answer):
    """Everything that differs, in words."""
    port = shapely.Polygon(case["outline"])
    wanted, says = wanted_of(plate, port), []
    for name in ("track", "oil", "land", "bore"):
        got, want = answer[name], wanted.get(name)
        if got is None or want is None:
            # Shallower than the tolerance either may be none.
            depth = (got or want or [0.0])[0]
            if depth > DEPTH_TOLERANCE:
                says.append(f"{name}: got {got}, wanted {want}")
            continue
        if not abs(got[0] - want[0]) <= DEPTH_TOLERANCE:
            says.append(f"{name}: depth {got[0]}, wanted {want[0]}")
        if not abs(got[1] - want[1]) <= AREA_TOLERANCE * port.length:
            says.append(f"{name}: area {got[1]}, wanted {want[1]}")
    openings = port
    if case["beside"]:
        openings = openings.union(shapely.Polygon(case["beside"]))
    around = port.buffer(plate.radius)
    near = [a for a in np.linspace(0, 2 * np.pi, STEPS, endpoint=False) if around.contains(plate.middle(a))]
    found = [hang(plate, openings, alpha) for alpha in near]
    # Once more, finely, where most is in the air and where the seal is held least.
    for worst in (lambda at: at[1][0], lambda at: -at[1][1]) if near else ():
        alpha = max(zip(near, found), key=worst)[0]
        step = 2 * np.pi / STEPS
        found += [hang(plate, openings, fine) for fine in np.linspace(alpha - step, alpha + step, 41)]
    most = max((share for share, _ in found), default=0.0)
    held = min((held for _, held in found), default=plate.radius)
    got = answer["overhang"]
    if got is None:
        if most > SHARE_TOLERANCE:
            says.append(f"overhang: none, wanted {most}")
        return says
    share, theta, drops = got
    at = hang(plate, openings, np.radians(theta) / 3)[0]
    if not abs(share - at) <= SHARE_TOLERANCE:
        says.append(f"overhang: {share} at {theta}, there it is {at}")
    if not share >= most - SHARE_TOLERANCE:
        says.append(f"overhang: {share}, wanted {most}")
    if abs(held) > HULL_TOLERANCE and drops != (held < 0):
        says.append(f"drops: {drops}, the middle is {held} mm within what holds it")
    return says


def main():
    rng = np.random.default_rng(545)
    cases, plates = [], []
    for _ in range(ENGINES):
        engine = random_engine(rng)
        plate = Plate(engine)
        for _ in range(PORTS):
            case = {**engine, "outline": random_port(rng, engine), "beside": None}
            port = shapely.Polygon(case["outline"])
            if rng.integers(3) == 0:
                beside = random_port(rng, engine)
                if shapely.Polygon(beside).distance(port) > 0.5:
                    case["beside"] = beside
            cases.append(case)
            plates.append(plate)
    asked = "\n".join(map(json.dumps, cases))
    command = ["cargo", "run", "--quiet", "-p", "pitleaf-core", "--example", "reference_keep_clear"]
    answers = subprocess.run(command, input=asked, stdout=subprocess.PIPE, text=True, check=True)
    answers = [json.loads(line) for line in answers.stdout.splitlines()]
    if len(answers) != len(cases):
        sys.exit(f"{len(answers)} answers to {len(cases)} cases")
    failed = 0
    for number, (plate, case, answer) in enumerate(zip(plates, cases, answers)):
        says = compare(plate, case, answer)
        if says:
            failed += 1
            print(f"case {number}: {'; '.join(says)}: {json.dumps(case)}")
    met = {name: sum(a[name] is not None for a in answers) for name in ("track", "oil", "land", "bore", "overhang")}
    drops = sum(a["overhang"] is not None and a["overhang"][2] for a in answers)
    print(f"{len(cases)} ports: {failed} differ; runs into {met}, {drops} let a corner seal drop in")
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
