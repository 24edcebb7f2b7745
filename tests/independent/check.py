#!/usr/bin/env python3
"""Holds the program to models of its own: the equations of the notes, written anew and solved by SciPy, with CoolProp and psychrolib for the air.

    check.py PROGRAM [DESIGNS] [--only NAME] [--seed N]

draws so many designs over the whole range of every input, asks the program, and prints of each quantity the difference that comes nearest to what is
allowed, what is allowed, and why. It ends with 1 if one is further off.
"""

import argparse
import sys

# The folder belongs to the sources.
sys.dont_write_bytecode = True

import compare
import numpy
from program import Program
from rows import ROWS


def main():
    asked = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    asked.add_argument("program")
    asked.add_argument("designs", nargs="?", type=int, default=200)
    asked.add_argument("--only", choices=[*compare.CHECKS, "spread"])
    asked.add_argument("--seed", type=int, default=20_260)
    asked = asked.parse_args()
    program = Program(asked.program)
    ranges = program.ranges()
    worst, differences, far = {}, {}, []

    def take(found):
        for name, expected, got, where in found:
            row = ROWS[name]
            off = row.off(expected, got)
            differences.setdefault(name, []).append(row.difference(expected, got))
            if not off <= worst.get(name, (-1.0,))[0]:
                worst[name] = (off, row.difference(expected, got), expected, got)
            if not off <= 1.0:
                far.append(name)
                print(f"TOO FAR {name}: expected {expected:.6g}, got {got:.6g}, {off:.2f} times what is allowed, at {where}", file=sys.stderr, flush=True)

    try:
        for number, (name, check) in enumerate(compare.CHECKS.items()):
            if asked.only in (None, name):
                for design in range(asked.designs):
                    take(check(numpy.random.default_rng([asked.seed, number, design]), program, ranges))
        if asked.only in (None, "spread"):
            take(compare.spread(None, program, ranges))
    except KeyboardInterrupt:
        print("interrupted: what was compared so far", file=sys.stderr)
    for name, row in ROWS.items():
        if name in worst:
            _, difference, expected, got = worst[name]
            unit = " %" if row.relative else ""
            allowed = 100.0 * row.most if row.relative else max(row.most, row.least)
            usual = numpy.quantile(differences[name], 0.95)
            print(
                f"{name}: {len(differences[name])} compared, 19 of 20 within {usual:.2g}{unit}, next to what is allowed {difference:.2g}{unit} "
                f"(expected {expected:.6g}, got {got:.6g}); allowed {allowed:g}{unit}: {row.why}"
            )
    return 1 if far or not worst else 0


if __name__ == "__main__":
    sys.exit(main())
