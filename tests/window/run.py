#!/usr/bin/env python3
"""Checks the program in real windows, on a screen without a monitor: what tests without a desktop cannot see.

Prints a line for each check, keeps pictures, and ends with 1 if a check failed. It needs these packages:

    apt-get install xvfb openbox xdotool xclip x11-utils imagemagick weston python3-xlib dbus-daemon python3-gi
"""

import argparse
import os
import shutil
import sys

# Before our own files are read, so that nothing is left beside them.
sys.dont_write_bytecode = True

import designs
import logs
import starts
from desk import Desk, Failed, Hand
from trial import Trial

NEEDED = ["Xvfb", "openbox", "xdotool", "xclip", "xprop", "import", "setpriv", "weston", "dbus-daemon"]
CHECKS = {check.__name__: check for check in starts.CHECKS + designs.CHECKS + logs.CHECKS}


def held(check, desk, program):
    """Runs one check; returns whether it held, and says so."""
    trial = Trial(desk, program)
    try:
        check(trial)
    except (Failed, OSError) as error:
        desk.picture(f"failed-{check.__name__}")
        print(f"FAILED {check.__name__}: {check.__doc__}\n       {error}", flush=True)
        return False
    finally:
        trial.close()
    print(f"ok {check.__name__}: {check.__doc__}", flush=True)
    return True


def main():
    reader = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    reader.add_argument("program", help="the program to check")
    reader.add_argument("folder", help="where pictures are kept")
    reader.add_argument("check", nargs="*", help=f"what is checked, else everything: {', '.join(CHECKS)}")
    reader.add_argument("--pause", type=float, default=Hand.pause, help="seconds between two acts; more for a slow machine or a debug build")
    told = reader.parse_args()
    unknown = [name for name in told.check if name not in CHECKS]
    missing = [name for name in NEEDED if shutil.which(name) is None]
    if unknown or missing:
        reader.error(f"no such check: {unknown}" if unknown else f"these commands are missing: {missing}")
    Hand.pause = told.pause
    os.makedirs(told.folder, exist_ok=True)
    desk = Desk(os.path.abspath(told.folder))
    try:
        chosen = [CHECKS[name] for name in told.check] or CHECKS.values()
        results = [held(check, desk, os.path.abspath(told.program)) for check in chosen]
    finally:
        desk.close()
    print(f"{sum(results)} of {len(results)} checks held; pictures are in {told.folder}")
    return 0 if all(results) else 1


if __name__ == "__main__":
    sys.exit(main())
