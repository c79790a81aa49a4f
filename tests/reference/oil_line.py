"""Pressure drop in oil lines against the library `fluids`.

Random lines, oils and flows from a fixed seed go through core/examples/reference_joints.rs: laminar,
turbulent and between, smooth and rough, with and without fittings. fluids gives the friction factor
(64/Re, and Colebrook's equation solved in closed form) and the two-K coefficients of the fittings.
Ends with 1 at any difference of more than one part in 10^8.
"""

import pathlib
import random
import subprocess
import sys
from math import pi

from fluids.fittings import Hooper2K
from fluids.friction import Colebrook, friction_laminar

ROOT = pathlib.Path(__file__).resolve().parents[2]
SEED = 7413
LINES = 500
TOLERANCE = 1e-8
# Our names, and those of fluids' table; entrance and exit are not in it: their constants by hand.
FITTINGS = {
    "Elbow 90°, screwed": "Elbow, 90°, Standard (R/D = 1), Screwed",
    "Elbow 90°, swept": "Elbow, 90°, Long-radius (R/D = 1.5), All types",
    "Elbow 45°": "Elbow, 45°, Standard (R/D = 1), All types",
    "Tee, straight through": "Tee, Run, Screwed",
    "Tee, into the branch": "Elbow, Used as, Standard, Screwed",
    "Ball valve, reduced": "Valve, Ball, Reduced trim, Beta = 0.9",
    "Entrance, sharp": (160.0, 0.5),
    "Exit": (0.0, 1.0),
}


def lines():
    generator = random.Random(SEED)
    for _ in range(LINES):
        bore = generator.uniform(2e-3, 25e-3)
        roughness = generator.choice([0.0, generator.uniform(0.0, 0.01) * bore])
        viscosity = 10 ** generator.uniform(-6.3, -3.3)
        density = generator.uniform(750.0, 1000.0)
        # By Reynolds number, so that every regime is met; a tenth of them in the transition.
        reynolds = generator.choice([10 ** generator.uniform(0.5, 5.0)] * 9 + [generator.uniform(2e3, 4e3)])
        # Within the flows the core takes, 1 mL/min to 500 L/min.
        flow = min(max(reynolds * viscosity * bore * pi / 4, 1.001e-6 / 60), 500e-3 / 60)
        fittings = {name: generator.randint(1, 4) for name in FITTINGS if generator.random() < 0.3}
        yield bore, generator.uniform(0.05, 10.0), roughness, viscosity, density, flow, fittings


def coefficient(name, reynolds, bore):
    theirs = FITTINGS[name]
    if isinstance(theirs, str):
        # fluids takes the bore in inches here, as the method was published.
        return Hooper2K(bore / 0.0254, reynolds, name=theirs)
    return theirs[0] / reynolds + theirs[1]


def wanted(bore, length, roughness, viscosity, density, flow, fittings):
    speed = flow / (pi / 4 * bore**2)
    reynolds = speed * bore / viscosity
    lost = sum(count * coefficient(name, reynolds, bore) for name, count in fittings.items())
    laminar, turbulent = friction_laminar(reynolds), Colebrook(reynolds, roughness / bore)
    if reynolds < 2000:
        factors = [laminar, laminar]
    elif reynolds > 4000:
        factors = [turbulent, turbulent]
    else:
        factors = sorted([laminar, turbulent])
    drops = [(factor * length / bore + lost) * density * speed**2 / 2 for factor in factors]
    return [reynolds, *drops]


def main():
    cases = list(lines())
    questions = "".join(
        "drop "
        + " ".join(repr(figure) for figure in case[:6])
        + " "
        + ";".join(f"{name}×{count}" for name, count in case[6].items())
        + "\n"
        for case in cases
    )
    run = subprocess.run(
        ["cargo", "run", "--quiet", "-p", "pitleaf-core", "--example", "reference_joints"],
        cwd=ROOT, input=questions, capture_output=True, text=True, check=True,
    )
    answers = run.stdout.splitlines()
    assert len(answers) == len(cases), f"{len(cases)} questions, {len(answers)} answers"
    regimes = {"laminar": 0, "transition": 0, "turbulent": 0}
    worst, failed = 0.0, 0
    for case, answer in zip(cases, answers):
        expected = wanted(*case)
        regimes["laminar" if expected[0] < 2000 else "turbulent" if expected[0] > 4000 else "transition"] += 1
        got = [float("nan")] if answer.startswith("refused") else [float(figure) for figure in answer.split()]
        off = max((abs(g / w - 1) for g, w in zip(got, expected, strict=False)), default=float("inf"))
        if len(got) != 3 or not off <= TOLERANCE:
            failed += 1
            print(f"{case}\n  got {answer}, wanted {expected}", file=sys.stderr)
        else:
            worst = max(worst, off)
    print(f"oil_line: {len(cases)} lines {regimes}, {failed} differ, worst of the rest {worst:.1e}")
    assert min(regimes.values()) > 20, "a regime hardly met"
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
