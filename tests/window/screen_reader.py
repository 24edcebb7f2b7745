#!/usr/bin/env python3
"""Checks what a reader of the screen is told: over AT-SPI, from a program on a screen without a monitor.

Prints a line for each check and what was counted, and ends with 1 if a check failed. It needs these packages:

    apt-get install xvfb openbox xdotool x11-utils imagemagick dbus-daemon at-spi2-core gir1.2-atspi-2.0 python3-gi
"""

import argparse
import collections
import os
import subprocess
import sys
import time

# Before our own files are read, so that nothing is left beside them.
sys.dont_write_bytecode = True

import places
from desk import Desk, Failed, wait_for
from program import Home, Program

LAUNCHER = "/usr/libexec/at-spi-bus-launcher"
# What a maker can press, move or type into.
CONTROLS = {"push button", "button", "radio button", "check box", "slider", "text", "entry", "menu item", "check menu item", "toggle button"}
# What must be there on the page of the design, with a table of a curve open.
WANTED = {"menu bar", "menu item", "heading", "slider", "radio button", "table", "table row", "table cell", "column header", "landmark"}


def switch_on():
    """Tells programs that a reader of the screen is there."""
    for name in ("IsEnabled", "ScreenReaderEnabled"):
        subprocess.run(
            ["gdbus", "call", "--session", "--dest", "org.a11y.Bus", "--object-path", "/org/a11y/bus"]
            + ["--method", "org.freedesktop.DBus.Properties.Set", "org.a11y.Status", name, "<true>"],
            check=True,
            stdout=subprocess.DEVNULL,
        )


def below(thing):
    """Returns everything below a thing, in the order in which it is read."""
    for place in range(thing.get_child_count()):
        child = thing.get_child_at_index(place)
        if child is not None:
            yield child
            yield from below(child)


def application(atspi):
    desktop = atspi.get_desktop(0)
    for place in range(desktop.get_child_count()):
        child = desktop.get_child_at_index(place)
        # In a session of its own it is the only one.
        if child is not None and child.get_child_count() > 0:
            return child
    return None


def ring(atspi, program):
    """Returns the things of the program by role."""
    app = wait_for("the program among those that a reader of the screen knows", lambda: application(atspi))
    wait_for("its controls", lambda: any(thing.get_role_name() == "slider" for thing in below(app)))
    by_role = collections.defaultdict(list)
    for thing in below(app):
        by_role[thing.get_role_name()].append(thing)
    return by_role


def named(thing):
    return bool((thing.get_name() or "").strip()) or any(
        relation.get_n_targets() for relation in (thing.get_relation_set() or []) if "LABELLED_BY" in str(relation.get_relation_type())
    )


def checks(atspi, by_role):
    """Yields each check with whether it held and what was counted."""
    controls = [thing for role in CONTROLS for thing in by_role[role]]
    nameless = [thing for thing in controls if not named(thing)]
    yield "every control has a name", not nameless, f"{len(controls)} controls, {len(nameless)} without a name"
    missing = sorted(role for role in WANTED if not by_role[role])
    yield "roles are those of what is seen", not missing, f"missing: {missing}" if missing else f"{len(WANTED)} kinds"
    milk = [thing for thing in by_role["slider"] if thing.get_name() == "Milk"]
    told = milk and (milk[0].get_description() or "")
    yield "a slider says its unit", bool(told) and told.endswith(" L"), f"Milk: {told!r}"
    cells = len(by_role["table cell"])
    yield "a curve is a table with rows and cells", cells >= 10, f"{len(by_role['table row'])} rows, {cells} cells"


def announced(atspi, glib, hand):
    """Returns what is said by itself after a choice was changed."""
    said = []
    listener = atspi.EventListener.new(lambda event: said.append(str(event.any_data)))
    listener.register("object:announcement")
    hand.click(places.MILK_BOX)
    hand.keys(*places.ALL)
    hand.type("7.5")
    hand.keys(*places.ENTER)
    loop = glib.MainLoop()
    glib.timeout_add(4000, loop.quit)
    loop.run()
    return said


def main():
    reader = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    reader.add_argument("program", help="the program to check")
    reader.add_argument("folder", help="where pictures are kept")
    told = reader.parse_args()
    if "CHECKED_IN_A_SESSION" not in os.environ:
        # A session of its own, so that nothing of the real desktop is read.
        os.environ["CHECKED_IN_A_SESSION"] = "1"
        os.execvp("dbus-run-session", ["dbus-run-session", "--", sys.executable, *sys.argv])
    import gi

    gi.require_version("Atspi", "2.0")
    from gi.repository import Atspi, GLib

    os.makedirs(told.folder, exist_ok=True)
    desk = Desk(os.path.abspath(told.folder))
    launcher = subprocess.Popen([LAUNCHER, "--launch-immediately"], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    home = Home()
    failed = 0
    try:
        time.sleep(1.0)
        switch_on()
        bus = os.environ["DBUS_SESSION_BUS_ADDRESS"]
        program = Program(os.path.abspath(told.program), home, DBUS_SESSION_BUS_ADDRESS=bus)
        hand = program.window()
        Atspi.init()
        by_role = ring(Atspi, program)
        tables = [thing for role in ("push button", "button") for thing in by_role[role] if "show as a table" in (thing.get_name() or "")]
        if tables:
            tables[0].do_action(0)
            time.sleep(2.0)
            by_role = ring(Atspi, program)
        desk.picture("screen-reader")
        for name, held, counted in checks(Atspi, by_role):
            failed += not held
            print(f"{'ok' if held else 'FAILED'} {name}: {counted}", flush=True)
        news = announced(Atspi, GLib, hand)
        held = any("Milk" in words for words in news)
        failed += not held
        print(f"{'ok' if held else 'FAILED'} the last change is said by itself: {news[:3]}", flush=True)
        print("counted: " + ", ".join(f"{len(things)} {role}" for role, things in sorted(by_role.items())))
        program.process.terminate()
    except Failed as error:
        failed += 1
        print(f"FAILED {error}")
    finally:
        launcher.terminate()
        desk.close()
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
