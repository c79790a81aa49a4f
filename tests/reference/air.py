"""Pressure of the standard atmosphere (ISO 2533) against the library ambiance, from -500 to 6000 m.

ambiance takes geometric altitudes and makes them geopotential; ours are geopotential, so the reference
is asked at the geometric altitude that belongs to each. Ends with 1 at any difference.
"""

import pathlib
import random
import subprocess
import sys

from ambiance import CONST, Atmosphere

ROOT = pathlib.Path(__file__).resolve().parents[2]
SEED = 2533
ALTITUDES = 500
TOLERANCE = 1e-6


def reference(altitude):
    radius = CONST.r
    return float(Atmosphere(radius * altitude / (radius - altitude)).pressure[0])


def main():
    generator = random.Random(SEED)
    altitudes = [generator.uniform(-500.0, 6000.0) for _ in range(ALTITUDES)]
    run = subprocess.run(
        ["cargo", "run", "--quiet", "-p", "pitleaf-core", "--example", "reference_air"],
        cwd=ROOT, input="".join(f"{altitude!r}\n" for altitude in altitudes),
        capture_output=True, text=True, check=True,
    )
    answers = run.stdout.splitlines()
    assert len(answers) == ALTITUDES, f"{ALTITUDES} questions, {len(answers)} answers"
    failed, worst = 0, 0.0
    for altitude, answer in zip(altitudes, answers):
        expected = reference(altitude)
        off = abs(float(answer) / expected - 1)
        worst = max(worst, off)
        if off > TOLERANCE:
            failed += 1
            print(f"{altitude} m: got {answer} Pa, wanted {expected}", file=sys.stderr)
    print(f"air: {ALTITUDES} altitudes, {failed} differ, worst {worst:.1e}")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
