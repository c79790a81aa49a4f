"""German number words against num2words.

Every whole number to 20,000 and 2,000 more up to 999,999 from a fixed seed go through
core/examples/say_german.rs. Run from anywhere: python tests/reference/say_german.py
"""

import pathlib
import subprocess
import sys

import numpy
from num2words import num2words

ROOT = pathlib.Path(__file__).resolve().parents[2]


def main():
    drawn = numpy.random.default_rng(20_261_126).integers(20_000, 1_000_000, 2_000)
    numbers = [*range(20_001), *(int(number) for number in drawn), 999_999]
    command = ["cargo", "run", "--quiet", "--package", "pitleaf-core", "--example", "say_german"]
    text = "\n".join(map(str, numbers)) + "\n"
    run = subprocess.run(
        command, cwd=ROOT, input=text, capture_output=True, text=True, check=True
    )
    answers = run.stdout.splitlines()
    assert len(answers) == len(numbers), f"{len(answers)} answers to {len(numbers)} numbers"
    wrong = 0
    for number, ours in zip(numbers, answers):
        # Its slip: before a noun it is "ein", as in its own "eintausend"; no grammar has "einstausend".
        theirs = num2words(number, lang="de").replace("einstausend", "eintausend")
        if ours != theirs:
            wrong += 1
            if wrong <= 10:
                print(f"{number}: ours {ours}, num2words {theirs}")
    print(f"{len(numbers)} numbers, {wrong} differ")
    sys.exit(wrong > 0)


if __name__ == "__main__":
    main()
