"""The chambers' areas of random engines with an apex-seal offset against Shapely: bore less rotor.

Run from the repository's root, after `pip install -r tests/reference/requirements.txt`:

    python3 tests/reference/chamber_areas.py

Builds and asks `core/examples/reference_chamber_areas.rs`. Ends with 1 if an area differs by more than
1e-6 of the engine's greatest, or the three of an engine together from bore less rotor.
"""

import json
import subprocess
import sys

import numpy as np
from chambers import Engine

ENGINES = 300
STEPS = 36
TOLERANCE = 1e-6
SIDES = 4_000
PRESET = [15.0, 102.0, 3.0]


def random_engine(rng):
    while True:
        e, k, a = rng.uniform(5, 30), rng.uniform(4.6, 11), rng.uniform(0, 6)
        r = e * k
        if k >= 9 or a < 0.9 * (r - 3 * e) ** 2 / (9 * e - r):
            return [e, r, a]


def area(engine, k, theta):
    swept, sealed = engine.sectors(k, theta)
    return swept.area - sealed.area


def main():
    rng = np.random.default_rng(1782)
    engines = [PRESET] + [random_engine(rng) for _ in range(ENGINES - 1)]
    angles = [30.0 * step for step in range(STEPS)]
    asked = "\n".join(json.dumps({"engine": engine, "angles": angles}) for engine in engines)
    command = ["cargo", "run", "--quiet", "-p", "pitleaf-core", "--example", "reference_chamber_areas"]
    answers = subprocess.run(command, input=asked, stdout=subprocess.PIPE, text=True, check=True)
    answers = [json.loads(line) for line in answers.stdout.splitlines()]
    if len(answers) != ENGINES:
        sys.exit(f"{len(answers)} answers to {ENGINES} engines")
    worst_of_all, failed = 0.0, 0
    for measures, answer in zip(engines, answers):
        engine = Engine(*measures, 0.0, SIDES)
        got = np.array(answer["areas"])
        wanted = [area(engine, 0, np.radians(theta)) for theta in angles]
        differs = [np.max(np.abs(got[:, 0] - wanted))]
        for k in (1, 2):
            differs.append(abs(got[0, k] - area(engine, k, 0.0)))
        for turn in (0, 7, 19):
            rest = engine.whole_bore().difference(engine.whole_figure(np.radians(angles[turn])))
            differs.append(abs(got[turn].sum() - rest.area))
        differs.append(abs(answer["least"] - area(engine, 0, np.pi / 2)))
        differs.append(abs(answer["greatest"] - area(engine, 0, 2 * np.pi)))
        worst = max(differs) / answer["greatest"]
        worst_of_all = max(worst_of_all, worst)
        if not worst <= TOLERANCE:
            failed += 1
            print(f"e, R, a {measures}: differs by {worst:.2e} of the greatest area")
    print(f"{ENGINES} engines at {STEPS} angles: worst {worst_of_all:.2e} of the greatest area")
    least, greatest = answers[0]["least"], answers[0]["greatest"]
    print(f"the preset: {least:.4f} to {greatest:.4f} mm², {greatest / least:.3f} : 1")
    sys.exit(1 if failed else 0)


if __name__ == "__main__":
    main()
