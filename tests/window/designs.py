"""Changing and saving a design. Each function is one check; its first line says what must hold."""

import os

import places
from desk import wait_for
from dropping import drop
from trial import UNSAVED, UNTITLED, must

def slider(trial):
    """Dragging a slider marks the title as unsaved, and one undo takes the whole drag back."""
    program = trial.start()
    hand = program.window()
    program.has_name(UNTITLED)
    hand.drag(places.MILK_RAIL_HANDLE, places.MILK_RAIL_RIGHT)
    program.has_name(UNSAVED + UNTITLED)
    trial.desk.picture("dragged")
    hand.keys(*places.UNDO)
    program.has_name(UNTITLED)


def number_and_save(trial):
    """Where the desktop offers no file dialog a path is typed; a typed number is in the file then, and the mark goes."""
    program = trial.start()
    hand = program.window()
    trial.type_milk(hand, "7,5")
    program.has_name(UNSAVED + UNTITLED)
    path = trial.home.file("typed.vat.ron")
    trial.save(program, hand, path)
    trial.holds(path, "milk_l: 7.5")
    trial.type_milk(hand, "8")
    program.has_name(UNSAVED + UNTITLED)
    hand.keys(*places.SAVE)
    program.has_name(UNTITLED)
    trial.holds(path, "milk_l: 8")
    trial.holds(path + ".bak", "milk_l: 7.5")


def save_over(trial):
    """Saving under the name of a file that is there asks before it writes."""
    there = trial.home.file("there.vat.ron")
    with open(there, "w", encoding="utf-8") as file:
        file.write("what was there")
    program = trial.start()
    hand = program.window()
    trial.type_milk(hand, "7")
    hand.keys(*places.SAVE_AS)
    trial.type_path(hand, there)
    trial.asked(hand, "replace the file")
    hand.keys(*places.GIVE_UP)
    trial.answered(hand)
    program.has_name(UNSAVED + UNTITLED)
    trial.holds(there, "what was there")
    hand.keys(*places.SAVE_AS)
    trial.type_path(hand, there)
    trial.asked(hand, "replace the file after all")
    hand.keys(*places.FIRST_BUTTON)
    program.has_name(UNTITLED)
    trial.holds(there, "milk_l: 7")
    trial.holds(there + ".bak", "what was there")


def save_while_typing(trial):
    """Saving while a number is being typed saves that number."""
    program = trial.start()
    hand = program.window()
    path = trial.home.file("typing.vat.ron")
    trial.type_milk(hand, "7")
    trial.save(program, hand, path)
    hand.click(places.MILK_BOX)
    hand.keys(*places.ALL)
    hand.type("7.75")
    hand.keys(*places.SAVE)
    wait_for("the number in the file", lambda: "milk_l: 7.75" in trial.text(path))
    program.has_name(UNTITLED)


def changed_elsewhere(trial):
    """A file that another program changed is told of and not written over by saving."""
    program = trial.start()
    hand = program.window()
    path = trial.home.file("shared.vat.ron")
    trial.type_milk(hand, "7")
    trial.save(program, hand, path)
    theirs = trial.text(path).replace("milk_l: 7", "milk_l: 3")
    with open(path, "w", encoding="utf-8") as file:
        file.write(theirs)
    trial.type_milk(hand, "8")
    program.has_name(UNSAVED + UNTITLED)
    hand.keys(*places.SAVE)
    trial.told(hand, "changed elsewhere")
    program.has_name(UNSAVED + UNTITLED)
    must(trial.text(path) == theirs, "what the other program wrote is gone")


def clipboard(trial):
    """The plan is copied as text for other programs, and a title is pasted from another program."""
    program = trial.start()
    hand = program.window()
    hand.click(places.PAGE_PLAN)
    hand.click(places.PART_PAPER)
    hand.click(places.COPY_AS_TEXT)
    trial.desk.picture("plan-on-paper")
    text = wait_for("the plan on the clipboard", trial.desk.clipboard)
    must("A plan from a model, not a measurement" in text and len(text) > 1000, f"the clipboard holds: {text[:200]}")
    trial.desk.put_on_clipboard("Pasted curd")
    hand.click(places.TITLE_BOX)
    hand.keys("ctrl+v", *places.ENTER)
    program.has_name("• Pasted curd – Vatsketch")


def read_only(trial):
    """What cannot be written in a folder is told of in the window; the design stays open and unsaved, and can be saved elsewhere."""
    locked = trial.home.file("locked")
    os.mkdir(locked, 0o555)
    program = trial.start_as_ordinary_user()
    hand = program.window()
    trial.type_milk(hand, "6.5")
    program.has_name(UNSAVED + UNTITLED)
    hand.keys(*places.SAVE)
    trial.type_path(hand, os.path.join(locked, "never.vat.ron"))
    trial.told(hand, "cannot be written")
    must(program.runs() and program.name() == UNSAVED + UNTITLED, "the design does not count as unsaved any more")
    must(not os.listdir(locked), "something was written where nothing can be")
    path = trial.home.file("elsewhere.vat.ron")
    trial.save(program, hand, path)
    trial.holds(path, "milk_l: 6.5")


def read_only_home(trial):
    """A home in which nothing can be written is told of, and the window works all the same."""
    os.chmod(trial.home.path, 0o555)
    program = trial.start_as_ordinary_user()
    hand = program.window()
    trial.type_milk(hand, "6.5")
    program.has_name(UNSAVED + UNTITLED)
    trial.told(hand, "no copy can be kept")
    hand.keys(*places.UNDO)
    program.has_name(UNTITLED)


def dropped(trial):
    """A file that falls into the window is opened; with unsaved changes it asks first."""
    path = trial.home.file("a cheese & a half.vat.ron")
    with open(path, "w", encoding="utf-8") as file:
        file.write('(format: 4, title: "Fell from above")')
    program = trial.start()
    hand = program.window()
    drop(hand.window, path, places.MIDDLE)
    program.has_name("Fell from above – Vatsketch")
    trial.type_milk(hand, "7")
    drop(hand.window, path, places.MIDDLE)
    trial.asked(hand, "save before another is opened")


CHECKS = [slider, number_and_save, save_while_typing, save_over, changed_elsewhere, clipboard, dropped, read_only, read_only_home]
