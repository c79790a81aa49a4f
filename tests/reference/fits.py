"""ISO 286 limits against a public table, the package `isofits`.

Every class the package and the core share, in every step above 3 and up to 250 mm, goes through
core/examples/reference_joints.rs. Public tables contain wrong rows, so agreement decides nothing by
itself: the rows in WRONG differ because the package breaks the standard's own rule named beside them.
Ends with 1 at any other difference, and where a listed row no longer differs.
"""

import pathlib
import subprocess
import sys

from data import hole_data, shaft_data

ROOT = pathlib.Path(__file__).resolve().parents[2]
LETTERS = {"D", "E", "F", "G", "H", "J", "JS", "K", "M", "N", "P", "R", "S", "d", "e", "f", "g", "h", "j", "js", "k", "m", "n", "p", "r", "s"}
# (step's upper end in mm, class): the rule the package's row breaks.
WRONG = {
    (10, "K6"): "upper less lower deviation is IT6, 9 µm: the package's +2/−6 has only 8",
    (140, "f6"): "upper less lower deviation is IT6, 25 µm: the package's −43/−48 has only 5",
    (160, "f6"): "the same",
    (180, "f6"): "the same",
}


def cells():
    for table in (hole_data, shaft_data):
        for name, column in table.items():
            letters = name.rstrip("0123456789")
            if letters not in LETTERS or not 5 <= int(name[len(letters):]) <= 11:
                continue
            for over, to, cell in zip(table["over"], table["inc."], column):
                if 3 <= int(over) and int(to) <= 250:
                    upper, lower = (float(figure) for figure in cell.split("\n"))
                    yield int(to), name, lower, upper


def main():
    rows = list(cells())
    run = subprocess.run(
        ["cargo", "run", "--quiet", "-p", "pitleaf-core", "--example", "reference_joints"],
        cwd=ROOT, input="".join(f"limits {to} {name}\n" for to, name, _, _ in rows),
        capture_output=True, text=True, check=True,
    )
    answers = run.stdout.splitlines()
    assert len(answers) == len(rows), f"{len(rows)} questions, {len(answers)} answers"
    differ = {}
    for (to, name, lower, upper), answer in zip(rows, answers):
        got = answer if answer.startswith("refused") else tuple(float(figure) for figure in answer.split())
        if got != (lower, upper):
            differ[to, name] = (got, (lower, upper))
    for place in sorted(set(differ) ^ set(WRONG)):
        print(f"{place}: core and package {differ.get(place, 'agree')}", file=sys.stderr)
    classes = len({name for _, name, _, _ in rows})
    print(f"fits: {len(rows)} cells of {classes} classes, {len(differ)} differ, {len(WRONG)} known to be wrong")
    return 1 if set(differ) != set(WRONG) else 0


if __name__ == "__main__":
    sys.exit(main())
