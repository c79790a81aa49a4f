"""The sweep of `port_sweep.rs` by GEOS: reads the case as JSON, times the intersections alone.

The chambers are built first, with the fewest sides (in steps of a third more) that bring every
fifth area to a millionth of the port's.
"""

import json
import pathlib
import sys
import time

import numpy as np
import shapely

sys.path.append(str(pathlib.Path(__file__).parents[2] / "tests" / "reference"))
from chambers import Engine  # noqa: E402

GOOD = 1e-6


def chambers(case, sides, thetas):
    """All chambers as polygons, for each angle the three in order. Where the cusps of a chamber make
    its sides cross, they are cut off."""
    engine = Engine(*case["engine"], case["inset"], sides)
    rings = [engine.chamber(k, np.radians(theta)) for theta in thetas for k in range(3)]
    return np.array([ring if ring.is_valid else shapely.make_valid(ring) for ring in rings])


def main():
    case = json.load(sys.stdin)
    port = shapely.Polygon(case["outline"])
    ours = np.array(case["areas"]).T.reshape(-1)
    count = len(ours) // 3
    thetas = np.arange(count) * 1080.0 / count
    sides = 100
    while True:
        some = chambers(case, sides, thetas[::5])
        found = shapely.area(shapely.intersection(port, some))
        wanted = np.array(case["areas"]).T[::5].reshape(-1)
        worst = np.max(abs(found - wanted)) / case["area"]
        if worst <= GOOD:
            break
        sides = sides * 4 // 3
        if sides > 20_000:
            sys.exit(f"areas differ by {worst:.1e} of the port's with {sides} sides")
    built = chambers(case, sides, thetas)
    best = np.inf
    for _ in range(3):
        start = time.perf_counter()
        shapely.intersection(port, built)
        best = min(best, time.perf_counter() - start)
    print(json.dumps({
        "version": shapely.geos_version_string,
        "seconds": best,
        "intersections": len(built),
        "sides": shapely.get_num_coordinates(built[0]).item() - 1,
        "worst": worst,
    }))


if __name__ == "__main__":
    main()
