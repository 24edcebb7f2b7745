"""Starting and ending the program. Each function is one check; its first line says what must hold."""

import subprocess

import places
from desk import Compositor, wait_for
from settings_portal import DarkDesktop
from trial import UNSAVED, UNTITLED, must

# Exit code of the program where no window can be had.
NO_WINDOW = 4

def cold_start(trial):
    """The first start in an empty home opens one window with its title and its icon, and welcomes once: the second start does not."""
    trial.home.never_started()
    program = trial.start()
    hand = program.window()
    program.has_name(UNTITLED)
    must(len(program.windows()) == 1, f"{len(program.windows())} windows")
    shown = subprocess.run(["xprop", "-id", hand.window, "WM_CLASS", "_NET_WM_ICON"], capture_output=True, text=True, check=True).stdout
    must('"vatsketch"' in shown, "the desktop is not told the program's name")
    must("Icon (128 x 128)" in shown, "the window has not our icon")
    trial.asked(hand, "welcome")
    hand.keys(*places.GIVE_UP)
    trial.answered(hand)
    hand.keys(*places.QUIT)
    must(program.ended() == 0, "quitting does not end with exit code 0")
    must(program.words() == "", f"it printed: {program.words()}")
    again = trial.start()
    hand = again.window()
    again.has_name(UNTITLED)
    trial.answered(hand)


def welcome(trial):
    """From the welcome an example is opened by keys: the Tab key goes past what one may start from besides."""
    trial.home.never_started()
    program = trial.start()
    hand = program.window()
    program.has_name(UNTITLED)
    trial.asked(hand, "welcome with examples")
    hand.keys(*places.FIRST_EXAMPLE)
    program.has_name("Sour first, then dry – Vatsketch")
    trial.answered(hand)


def file_named(trial):
    """A file named at the start is opened; one that cannot be read is told of in the window."""
    path = trial.home.file("named.vat.ron")
    with open(path, "w", encoding="utf-8") as file:
        file.write('(format: 4, title: "Named at the start")')
    trial.start(path).has_name("Named at the start – Vatsketch")
    broken = trial.home.file("broken.vat.ron")
    with open(broken, "w", encoding="utf-8") as file:
        file.write("(format: 4, title: ")
    program = trial.start(broken)
    trial.told(program.window(), "cannot be read")
    program.has_name(UNTITLED)


def two_windows(trial):
    """Two windows at once keep their own designs, and what is killed in one is not offered while it still runs in the other."""
    one, two = trial.start(), trial.start()
    hand = one.window()
    trial.type_milk(hand, "5.5")
    one.has_name(UNSAVED + UNTITLED)
    other = two.window()
    must(two.name() == UNTITLED, "a change in one window marks the other")
    trial.type_milk(other, "4.5")
    two.has_name(UNSAVED + UNTITLED)
    wait_for("two recovery copies", lambda: len(trial.copies()) == 2)
    one.kill()
    three = trial.start()
    hand = three.window()
    trial.asked(hand, "recover one of two")
    hand.keys(*places.FIRST_BUTTON)
    three.has_name(UNSAVED + UNTITLED)
    path = trial.home.file("one.vat.ron")
    trial.save(three, hand, path)
    trial.holds(path, "milk_l: 5.5")
    must(two.name() == UNSAVED + UNTITLED and len(trial.copies()) == 1, "the other window's copy was touched")


def kill_and_recover(trial):
    """Work that was not saved when the program was killed is offered at the next start, and can be saved then."""
    first = trial.start()
    trial.type_milk(first.window(), "9.25")
    first.has_name(UNSAVED + UNTITLED)
    wait_for("a recovery copy", trial.copies)
    first.kill()
    second = trial.start()
    hand = second.window()
    trial.asked(hand, "recover")
    hand.keys(*places.FIRST_BUTTON)
    second.has_name(UNSAVED + UNTITLED)
    path = trial.home.file("recovered.vat.ron")
    trial.save(second, hand, path)
    trial.holds(path, "milk_l: 9.25")
    wait_for("the recovery copy to go", lambda: not trial.copies())


def closing(trial):
    """Closing the window with unsaved changes asks first; discarding them ends the program and leaves no copy."""
    program = trial.start()
    hand = program.window()
    hand.drag(places.MILK_RAIL_HANDLE, places.MILK_RAIL_LEFT)
    program.has_name(UNSAVED + UNTITLED)
    hand.close()
    trial.asked(hand, "save before it closes")
    hand.keys(*places.SECOND_BUTTON)
    must(program.ended() == 0, "discarding does not end with exit code 0")
    must(not trial.copies(), "a copy was left behind")


def scale(trial):
    """At twice the scale everything is twice as large and still where the mouse finds it."""
    program = trial.start(WINIT_X11_SCALE_FACTOR="2")
    hand = program.window()
    program.has_name(UNTITLED)
    trial.desk.picture("twice-as-large")
    hand.drag(*([2 * at for at in place] for place in (places.MILK_RAIL_HANDLE, places.MILK_RAIL_RIGHT)))
    program.has_name(UNSAVED + UNTITLED)


def wayland(trial):
    """Under Wayland the window is named and drawn, without any help of X."""
    with Compositor(trial.home) as display:
        # The library writes every message that it sends, so that the name is seen without a screen.
        program = trial.start(DISPLAY=None, WAYLAND_DISPLAY=display, WAYLAND_DEBUG="1")
        wait_for("the name of the window", lambda: f'set_title("{UNTITLED}")' in program.words() or not program.runs())
        words = program.words()
        must(program.runs(), f"it ended: {words[-500:]}")
        must('set_app_id("vatsketch")' in words, "the desktop is not told the program's name")
        wait_for("a drawn window", lambda: ".attach(wl_buffer" in program.words().rpartition("set_title")[2])


def dark_desktop(trial):
    """Where the desktop wishes for dark colours, its settings portal is asked and the window is dark."""
    hand = trial.start().window()
    must(hand.brightness(places.CORNER) > places.BRIGHT, "the window is dark though nobody wishes it")
    with DarkDesktop() as bus:
        hand = trial.start(DBUS_SESSION_BUS_ADDRESS=bus).window()
        wait_for("dark colours", lambda: hand.brightness(places.CORNER) < places.DARK)
        trial.desk.picture("dark-as-the-desktop")


def one_sentence(program):
    """Holds a program that can open no window to one line and the exit code for it."""
    code = program.ended(60)
    # A driver that does not load says so in lines of its own.
    words = "\n".join(line for line in program.words().splitlines() if not line.startswith("libGL") and not line.startswith("libEGL"))
    must(code == NO_WINDOW, f"exit code {code}: {words}")
    must(words.startswith("vatsketch: ") and "\n" not in words, f"not one line: {words}")
    must("--help" in words, f"it does not say that the command line is left: {words}")


def no_display(trial):
    """Without a display one sentence says so, and the exit code is that for it."""
    one_sentence(trial.start(DISPLAY=None))
    one_sentence(trial.start(DISPLAY=":99999"))
    one_sentence(trial.start(DISPLAY=None, WAYLAND_DISPLAY="none"))


def no_graphics_driver(trial):
    """Without a graphics driver, or with one that does not load, one sentence says so, and the exit code is that for it."""
    one_sentence(trial.start(LIBGL_DRIVERS_PATH="/none", __GLX_VENDOR_LIBRARY_NAME="none", __EGL_VENDOR_LIBRARY_FILENAMES="/none"))
    one_sentence(trial.start(LIBGL_DRIVERS_PATH="/none"))


CHECKS = [cold_start, welcome, file_named, two_windows, kill_and_recover, closing, scale, wayland, dark_desktop, no_display, no_graphics_driver]
